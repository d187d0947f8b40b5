// What stands around the drawing: switches, tabs and notices.

import { element, setChildren, setText } from "./dom.js";
import { radioGroup } from "./radio.js";
import { familyOf } from "./state.js";
import { LETTERS } from "./text.js";

const VIEW_NAMES = { all: "All three", elevation: "Elevation", section: "Section", plan: "Plan" };

/**
 * @param {App} app
 * @returns {Switch}
 */
export function unitsSwitch(app) {
  const group = radioGroup("units", "Units", [["in", "Inches"], ["mm", "Millimetres"]], app.pickUnits);
  group.node.classList.add("units");
  return group;
}

/**
 * @param {App} app
 * @returns {Switch}
 */
export function viewSwitch(app) {
  const group = radioGroup("view", "Drawing", Object.entries(VIEW_NAMES), (/** @type {string} */ view) => app.stage.show(view));
  group.node.classList.add("views");
  group.show("all");
  return group;
}

/**
 * @param {App} app
 * @returns {PagePart}
 */
export function createTabs(app) {
  const node = element("div", { class: "tabs", role: "group", "aria-label": "Configurations" });
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

/** @returns {Notice} */
export function createNotice() {
  const words = element("p");
  const node = element("div", { class: "notice", role: "alert", hidden: true }, words,
    element("button", { type: "button", class: "text-button", onclick: () => (node.hidden = true) }, "Close"));
  return {
    node,
    say(text) {
      node.hidden = text === "";
      setText(words, text);
    },
  };
}

/**
 * Where the drawing lies over the controls, what takes the focus must scroll clear of it.
 * @param {App} app
 * @param {HTMLElement} table
 */
export function keepFocusClear(app, table) {
  new ResizeObserver(() => {
    const over = table.offsetWidth > app.root.offsetWidth * 0.8;
    document.documentElement.style.scrollPaddingTop = over ? `${table.offsetHeight + 16}px` : "";
  }).observe(table);
}
