// The short list: a mark on a covering, which this device keeps with the picks that it was marked with.

import { element, setAttribute, setText } from "./dom.js";
import { isRead, keptConfiguration } from "./keep.js";
import { placeAtShare } from "./way.js";
import { _ } from "./words.js";

// Half closed, as the page of all coverings shows them.
const MARKED_SHARE = 0.5;

/**
 * A covering as it was marked; one that a page marked, or that no longer reads, as it comes.
 * @param {Astragal.PageCatalog} catalog
 * @param {string} family
 * @returns {Pick<Astragal.Configuration, "family" | "choices" | "wishes" | "place">}
 */
export function shortListed(catalog, family) {
  const mark = Astragal.kept.read().marks.find((one) => one.family === family);
  if (mark?.link && isRead(mark.link)) {
    // The door that it was marked on is not what was marked.
    const { door, measured, ...one } = keptConfiguration(mark.link);
    if (one.family === family) return one;
  }
  const fresh = { family, choices: {}, wishes: {} };
  return { ...fresh, place: placeAtShare(catalog, /** @type {Astragal.Configuration} */ (fresh), MARKED_SHARE) };
}

/**
 * A covering's mark: in or out of the short list. What it is called stays, whether it is pressed tells the rest.
 * @param {App} app
 * @param {() => Astragal.Configuration} configuration
 */
export function markButton(app, configuration) {
  const named = element("span", { class: "unseen" });
  const node = element("button", { type: "button", class: "mark", onclick: turn }, element("span", { "aria-hidden": "true" }, _("Short list")), named);

  function turn() {
    const one = configuration();
    if (!Astragal.kept.turn(one.family, app.linkOf(one))) app.undo.refused();
  }

  return {
    node,
    /** @param {KeptMark[]} marks */
    show(marks) {
      const { family } = configuration();
      setAttribute(node, "aria-pressed", String(marks.some((one) => one.family === family)));
      setText(named, _("Short list: {covering}", { covering: app.catalog.families[family].name }));
    },
  };
}
