// The configurator's scripts on another page, which has its drawings and figures from them rather than a second time.

const borrowing = /** @type {HTMLScriptElement | null} */ (document.currentScript)?.src;

/**
 * Runs a script of the site, one of the configurator's by its file.
 * @param {string} file
 * @returns {Promise<void>}
 */
export function runScript(file) {
  return new Promise((done, failed) => {
    const script = document.createElement("script");
    script.src = new URL(file, borrowing || location.href).href;
    script.onload = () => done();
    script.onerror = () => {
      script.remove();
      failed(new Error(file));
    };
    document.head.append(script);
  });
}

/**
 * What the configurator has for other pages: `visitDesk` and `proposalDesk`.
 * @returns {Promise<Record<string, () => Promise<any>>>}
 */
export async function configuratorDesks() {
  if (!Astragal.page?.visitDesk) {
    for (const file of [Astragal.late.app, Astragal.late.papers]) await runScript(file);
  }
  return Astragal.page;
}
