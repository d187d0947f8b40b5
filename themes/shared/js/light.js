// The elevation by day, in the evening, and from the street at night with the room lit.

import { element, setText } from "./dom.js";
import { radioGroup } from "./radio.js";
import { activeOf } from "./state.js";
import { _, say } from "./words.js";

const LIGHT_NAMES = { day: _("By day"), evening: _("In the evening"), street: _("From the street") };

/**
 * How the elevation is drawn in a light: all of it, the marks that no position changes, those that move, and in words
 * what it takes for granted.
 * @param {() => Astragal.Household} household
 * @returns {Record<string, LightView>}
 */
function lightViews(household) {
  const { kernel } = Astragal;
  return {
    day: {
      whole: (draft) => kernel.elevation_of(draft),
      still: (draft) => kernel.door_marks("elevation", draft),
      moving: (draft, annotated) => kernel.elevation_marks(draft, annotated),
      words: () => [],
    },
    evening: {
      whole: (draft) => kernel.evening_of(draft),
      still: (draft) => kernel.evening_door(draft),
      moving: (draft, annotated) => kernel.evening_marks(draft, annotated),
      words: () => kernel.evening_words(),
    },
    street: {
      whole: (draft) => kernel.street_of(draft, household()),
      still: (draft) => kernel.street_still(draft, household()),
      moving: (draft, annotated) => kernel.street_marks(draft, household(), annotated),
      words: (draft) => kernel.street_words(draft, household()),
    },
  };
}

/**
 * Which light is chosen, and in words what is seen in it.
 * @param {App} app
 * @returns {Lights}
 */
export function createLights(app) {
  const views = lightViews(() => app.state().household);
  let chosen = "day";
  const group = radioGroup("light", _("Seen"), Object.entries(LIGHT_NAMES), (/** @type {string} */ light) => {
    chosen = light;
    app.rest(false);
  });
  group.node.classList.add("views");
  group.show(chosen);
  const seen = element("p");
  const granted = element("p");
  const more = element("details", { class: "more" }, element("summary", {}, _("What this takes for granted")), granted);
  const node = element("div", { class: "light-words" }, seen, more);
  const here = () => (app.state().step === "details" ? chosen : "day");
  return {
    switch: group.node,
    view: () => views[here()],
    fromOutside: () => here() === "street",
    node,
    update(state, settled) {
      if (!settled) return;
      const one = activeOf(state);
      const [first = "", ...others] = views[here()].words(app.ask.movedDraft(one, one.place, state.units))
        .map((told) => say(told, state.units));
      node.hidden = first === "";
      more.hidden = others.length === 0;
      setText(seen, first);
      setText(granted, others.join(" "));
    },
  };
}
