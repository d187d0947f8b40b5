// Where a visit is agreed and its papers are made: a line of its form. What is behind it works with the configurator's
// scripts, which have the drawings and all figures, and is fetched when it is opened.

import { element, setChildren, setText } from "./dom.js";
import { foldedPart } from "./visitfields.js";
import { _, _several } from "./words.js";

const visitsScript = /** @type {HTMLScriptElement | null} */ (document.currentScript)?.src;

/**
 * Runs one of the configurator's scripts.
 * @param {string} name
 * @returns {Promise<void>}
 */
function runScript(name) {
  return new Promise((done, failed) => {
    const script = element("script", { src: new URL(name, visitsScript || location.href).href });
    script.onload = () => done();
    script.onerror = () => {
      script.remove();
      failed(new Error(name));
    };
    document.head.append(script);
  });
}

/** @returns {Promise<{ createVisitDesk(page: VisitPage, id: string): VisitPart }>} */
async function fetchDesk() {
  if (!Astragal.page?.visitDesk) {
    for (const name of ["astragal.js", "astragal-papers.js"]) await runScript(name);
  }
  return Astragal.page.visitDesk();
}

/**
 * @param {VisitPage} page
 * @param {string} id of the visit
 * @returns {VisitPart}
 */
function lateDesk(page, id) {
  const wait = element("p", { class: "note", role: "status" }, _("The drawings and figures are being fetched…"));
  const node = element("div", {}, wait);
  /** @type {VisitPart | null} */
  let desk = null;

  async function come() {
    try {
      desk = (await fetchDesk()).createVisitDesk(page, id);
      setChildren(node, [desk.node]);
      const visit = page.keep.now(id);
      if (visit) desk.update(visit);
    } catch {
      setText(wait, _("The drawings and figures could not be fetched. Load the page again when there is a signal."));
    }
  }

  void come();
  return { node, update: (visit) => desk?.update(visit) };
}

/**
 * @param {VisitPage} page
 * @param {string} id of the visit
 * @returns {VisitPart}
 */
export function deskPlace(page, id) {
  const fold = foldedPart({ class: "desk" }, () => [lateDesk(page, id)], ({ openings }) => {
    const count = openings.filter(({ agreed }) => agreed.length > 0).length;
    return { name: _("Agreement and papers"), note: count === 0 ? _("Nothing is agreed yet.") : _several("{count} door agreed", "{count} doors agreed", { count }) };
  }, () => page.keep.now(id));
  return { node: element("section", { class: "panel" }, fold.node), update: fold.update };
}
