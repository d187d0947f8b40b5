// The configurator's scripts on another page, which has its drawings and figures from them rather than a second time.

const borrowing = /** @type {HTMLScriptElement | null} */ (document.currentScript)?.src;

/**
 * Runs a script of the site, one of the configurator's by its name.
 * @param {string} name
 * @returns {Promise<void>}
 */
export function runScript(name) {
  return new Promise((done, failed) => {
    const script = document.createElement("script");
    script.src = new URL(name, borrowing || location.href).href;
    script.onload = () => done();
    script.onerror = () => {
      script.remove();
      failed(new Error(name));
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
    for (const name of ["astragal.js", "astragal-papers.js"]) await runScript(name);
  }
  return Astragal.page;
}
