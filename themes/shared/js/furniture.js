// What stands around the page's steps: the units, and notices.

import { element, setChildren } from "./dom.js";
import { radioGroup } from "./radio.js";
import { capital, LETTERS } from "./text.js";
import { _, say } from "./words.js";

/**
 * @param {App} app
 * @returns {Switch}
 */
export function unitsSwitch(app) {
  const group = radioGroup("units", _("Units"), [["in", _("Inches")], ["mm", _("Millimeters")]], app.pickUnits);
  group.node.classList.add("units");
  return group;
}

/**
 * As it was when the link was made, and as it is.
 * @param {Astragal.Difference[]} changes
 * @param {PageState} state
 */
function changesTable(changes, { units, configurations }) {
  const head = (/** @type {string} */ words) => element("th", { scope: "col" }, words);
  const row = (/** @type {Astragal.Difference} */ change) => {
    const name = capital(change.name);
    const letter = LETTERS[change.configuration];
    return element("tr", {}, element("th", { scope: "row" }, configurations.length > 1 ? _("{letter}: {name}", { letter, name }) : name),
      element("td", {}, say(change.then, units)), element("td", {}, say(change.now, units)));
  };
  return element("table", {},
    element("thead", {}, element("tr", {}, element("td"), head(_("As it was")), head(_("As it is")))),
    element("tbody", {}, changes.map(row)));
}

/**
 * @param {App} app
 * @param {Address} address
 * @returns {Notice}
 */
export function createNotice(app, address) {
  const words = element("div");
  const node = element("div", { class: "notice", role: "alert", hidden: true }, words,
    element("button", { type: "button", class: "text-button", onclick: () => (node.hidden = true) }, _("Close")));

  /** @param {HTMLElement[]} parts */
  function show(parts) {
    node.hidden = parts.length === 0;
    setChildren(words, parts);
  }

  return {
    node,
    say: (text) => show([element("p", {}, text)]),
    // What is wrong with a link that has been opened, and what no longer comes of it.
    tell(opened) {
      const state = app.state();
      const parts = opened.problems.map((problem) => element("p", {}, say(problem, state.units)));
      const changes = address.changes(opened);
      if (changes.length > 0) {
        parts.push(element("p", {}, _("What is behind this link has changed since it was made:")), changesTable(changes, state));
      }
      show(parts);
    },
  };
}
