// The short list at the foot of the shelf: what is on it, and its comparison; or which covering another is picked to stand beside.

import { listedCoverings } from "./beside.js";
import { element, setText } from "./dom.js";
import { activeOf, familyOf, MOST_CONFIGURATIONS } from "./state.js";
import { listed } from "./text.js";
import { _ } from "./words.js";

/**
 * @param {App} app
 * @returns {PagePart}
 */
export function createListBar(app) {
  const words = element("p", { role: "status" });
  const compare = element("button", { type: "button", class: "press", onclick: () => app.compareAll(listedCoverings(app)) });
  const back = element("button", { type: "button", class: "press quiet", onclick: () => app.toComparison() }, _("Back without one"));
  const node = element("section", { class: "list-bar", "aria-label": _("Your short list") }, words, compare, back);

  /** @param {string[]} names */
  function told(names) {
    if (names.length < 2) return _("On your short list: {coverings}. Mark a second one to compare them.", { coverings: listed(names) });
    if (names.length <= MOST_CONFIGURATIONS) return _("On your short list: {coverings}.", { coverings: listed(names) });
    return _("On your short list: {coverings}. The first four are compared.", { coverings: listed(names) });
  }

  return {
    node,
    update(state) {
      const names = listedCoverings(app).map(({ family }) => app.catalog.families[family].name);
      node.hidden = names.length === 0 && !state.picking;
      node.classList.toggle("said", !node.hidden);
      back.hidden = !state.picking;
      compare.hidden = state.picking || names.length < 2;
      if (node.hidden) setText(words, "");
      else if (state.picking) setText(words, _("Pick the covering to stand beside: {covering}", { covering: familyOf(app.catalog, activeOf(state)).name }));
      else setText(words, told(names));
      setText(compare, _("Compare {count}", { count: Math.min(names.length, MOST_CONFIGURATIONS) }));
    },
  };
}
