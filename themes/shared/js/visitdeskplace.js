// Where a visit is agreed and its papers are made: a line of its form. What is behind it works with the configurator's
// scripts, which have the drawings and all figures, and is fetched when it is opened.

import { configuratorDesks } from "./borrowed.js";
import { element, setChildren, setText } from "./dom.js";
import { foldedPart } from "./visitfields.js";
import { _, _several } from "./words.js";

/** @returns {Promise<{ createVisitDesk(page: VisitPage, id: string): VisitPart }>} */
async function fetchDesk() {
  return (await configuratorDesks()).visitDesk();
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
