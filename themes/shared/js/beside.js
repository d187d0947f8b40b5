// Up to four configurations side by side; what compares them comes when there is a second.

import { element } from "./dom.js";
import { latePart } from "./late.js";
import { MOST_CONFIGURATIONS } from "./state.js";
import { _ } from "./words.js";

/**
 * @param {App} app
 * @returns {PagePart}
 */
export function createBeside(app) {
  const empty = element("p", { class: "note" },
    _("Add a second covering, or the same one with another choice: they stand here side by side, at one scale and one position. Up to four."));
  const add = element("button", { type: "button", class: "press quiet", onclick: () => app.another() }, _("Add another to compare"));
  const node = element("section", { class: "compare", id: "compare", "aria-labelledby": "compare-title" },
    element("div", { class: "section-head" }, element("h2", { id: "compare-title" }, _("Side by side")), add), empty);
  const compared = latePart(app, element("div"), async () => (await import("./compare.js")).createCompared(app));
  node.append(compared.node);
  return {
    node,
    update(state, settled) {
      const many = state.configurations.length > 1;
      empty.hidden = many;
      add.hidden = state.configurations.length >= MOST_CONFIGURATIONS;
      compared.node.hidden = !many;
      if (many) compared.update(state, settled);
    },
  };
}
