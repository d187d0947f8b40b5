// Up to four configurations side by side; what compares them comes when there is a second.

import { element } from "./dom.js";
import { latePart } from "./late.js";
import { shortListed } from "./marking.js";
import { MOST_CONFIGURATIONS } from "./state.js";
import { _ } from "./words.js";

/**
 * The coverings of the short list that are still offered under their names, as they were marked.
 * @param {App} app
 */
export function listedCoverings(app) {
  const { marks } = Astragal.kept.read();
  return marks.filter(({ family }) => app.catalog.families[family]).map(({ family }) => shortListed(app.catalog, family));
}

/**
 * @param {App} app
 * @returns {PagePart}
 */
export function createBeside(app) {
  const empty = element("p", { class: "note" },
    _("Put coverings on your short list, or pick a second one from the shelf: they stand here side by side, at one scale and one position. Up to four."));
  const add = element("button", { type: "button", class: "press quiet", onclick: () => app.pickAnother() }, _("Compare with another"));
  const same = element("button", { type: "button", class: "press quiet", onclick: () => app.another() }, _("The same with other choices"));
  const list = element("button", { type: "button", class: "press", onclick: () => app.compareAll(listedCoverings(app)) }, _("Compare your short list"));
  const node = element("section", { class: "compare", id: "compare", "aria-labelledby": "compare-title" },
    element("div", { class: "section-head" }, element("h2", { id: "compare-title", tabindex: "-1" }, _("Side by side")),
      element("p", { class: "actions" }, list, add, same)), empty);
  const compared = latePart(app, element("div"), async () => (await import("./compare.js")).createCompared(app));
  node.append(compared.node);

  /** @param {PageState} state */
  function show({ configurations }) {
    const families = configurations.map((one) => one.family);
    const listed = listedCoverings(app).slice(0, MOST_CONFIGURATIONS);
    empty.hidden = families.length > 1;
    add.hidden = same.hidden = families.length >= MOST_CONFIGURATIONS;
    list.hidden = listed.length < 2 || (listed.length === families.length && listed.every((one) => families.includes(one.family)));
    compared.node.hidden = families.length < 2;
  }

  return {
    node,
    async update(state, settled) {
      if (settled) show(state);
      if (compared.node.hidden) return;
      await compared.here();
      await compared.update(state, settled);
    },
  };
}
