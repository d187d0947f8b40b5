// What a visit comes to: what is agreed for each door, and the papers that are made of it.

import { element, later } from "./dom.js";
import { agreementPart } from "./visitagreed.js";
import { visitPapers } from "./visitpapers.js";

// Milliseconds without a change, after which all is worked out anew.
const RESTED = 400;

/**
 * @param {VisitPage} page
 * @param {string} id of the visit
 * @returns {VisitPart}
 */
export function createVisitDesk(page, id) {
  const parts = [agreementPart(page, id), visitPapers(page, id)];
  const node = element("div", { class: "desk-parts" }, parts.map((part) => part.node));
  let shown = "";

  /** @param {Astragal.Visit} visit */
  function show(visit) {
    const now = JSON.stringify(visit);
    if (now === shown) return;
    shown = now;
    parts.forEach((part) => part.update(visit));
  }

  const showRested = later(RESTED, () => {
    const visit = page.keep.now(id);
    if (visit) show(visit);
  });
  return {
    node,
    update(visit) {
      if (shown === "") show(visit);
      else showRested();
    },
  };
}
