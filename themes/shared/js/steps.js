// The page's steps: to measure, to choose, to look closely, to take along. One can start at any of them.

import { element, setText } from "./dom.js";
import { calledDoor } from "./keep.js";
import { familyOf, activeOf } from "./state.js";
import { _ } from "./words.js";

/** @type {Record<string, { name: string, onward: string }>} */
const STEP_WORDS = {
  door: { name: _("Door"), onward: _("Measure your door") },
  coverings: { name: _("Coverings"), onward: _("See every covering on this door") },
  details: { name: _("Details"), onward: _("Look at this one closely") },
  take: { name: _("Take along"), onward: _("Take it along") },
};
const ORDER = Object.keys(STEP_WORDS);

/**
 * @param {App} app
 * @returns {PagePart}
 */
export function createSteps(app) {
  const buttons = ORDER.map((step) => element("button", { type: "button", onclick: () => app.goToStep(step) }, STEP_WORDS[step].name));
  const node = element("nav", { class: "step-nav", "aria-label": _("Steps") }, element("ol", {}, buttons.map((button) => element("li", {}, button))));
  return {
    node,
    update({ step }) {
      buttons.forEach((button, i) => {
        if (ORDER[i] === step) button.setAttribute("aria-current", "step");
        else button.removeAttribute("aria-current");
      });
      // What led here is hidden now, and would take the focus with it.
      if (document.activeElement?.closest("[hidden]")) buttons[ORDER.indexOf(step)].focus({ preventScroll: true });
    },
  };
}

/**
 * What stands at the end of a step: the way on, and the way back.
 * @param {App} app
 * @returns {PagePart}
 */
export function createOnward(app) {
  const words = element("p", { class: "onward-words" });
  const back = element("button", { type: "button", class: "press quiet", onclick: () => app.goToStep(ORDER[place() - 1]) });
  const on = element("button", { type: "button", class: "press", onclick: () => app.goToStep(ORDER[place() + 1]) });
  const node = element("div", { class: "onward" }, words, element("p", { class: "actions" }, on, back));
  const place = () => ORDER.indexOf(app.state().step);
  return {
    node,
    update(state) {
      const at = place();
      const one = activeOf(state);
      back.hidden = at === 0;
      on.hidden = at === ORDER.length - 1;
      if (!back.hidden) setText(back, STEP_WORDS[ORDER[at - 1]].onward);
      if (!on.hidden) setText(on, STEP_WORDS[ORDER[at + 1]].onward);
      setText(words, _("{covering} on your door: {door}", { covering: familyOf(app.catalog, one).name, door: calledDoor(app.catalog, one.door) }));
      words.hidden = state.step === "coverings";
    },
  };
}
