// What stands around the drawing: which of its views are shown, and whose.

import { element, setChildren } from "./dom.js";
import { radioGroup } from "./radio.js";
import { familyOf } from "./state.js";
import { LETTERS } from "./text.js";
import { _ } from "./words.js";

const VIEW_NAMES = { all: _("All three"), elevation: _("Elevation"), section: _("Section"), plan: _("Plan") };

/**
 * @param {App} app
 * @returns {Switch}
 */
export function viewSwitch(app) {
  const group = radioGroup("view", _("Drawing"), Object.entries(VIEW_NAMES), (/** @type {string} */ view) => app.stage.show(view));
  group.node.classList.add("views");
  group.show("all");
  return group;
}

/**
 * @param {App} app
 * @returns {PagePart}
 */
export function createTabs(app) {
  const node = element("div", { class: "tabs", role: "group", "aria-label": _("Configurations") });
  return {
    node,
    update(state) {
      node.hidden = state.configurations.length < 2;
      setChildren(node, state.configurations.map((one, i) =>
        element("button", { type: "button", "aria-pressed": String(i === state.active), onclick: () => app.show(i) },
          element("span", { class: "letter" }, LETTERS[i]), familyOf(app.catalog, one).name)));
    },
  };
}
