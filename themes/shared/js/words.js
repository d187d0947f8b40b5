// Words for verdicts, figures and configurations.

import { element } from "./dom.js";
import { familyOf, isCorrected } from "./state.js";
import { capital } from "./text.js";

/**
 * The style sheet puts each state's shape before its word.
 * @param {string} state
 * @param {string} [about]
 * @param {string} [words]
 */
export function verdictNode(state, about = "", words = state) {
  return element("span", { class: `verdict ${state.replaceAll(" ", "-")}` },
    about ? element("span", { class: "unseen" }, `${about}: `) : null, words);
}

// What nearly everyone asks for; the rest follows on request.
const KEY_FIGURES = [
  "order_width", "order_height", "visible_glass_open", "light_closed", "view_closed",
  "stack_height", "projection_most", "handle_gap", "swing_covered", "clear_width_covered",
];

export const isKey = (/** @type {string} */ id) => KEY_FIGURES.includes(id);

export const ENGLISH = { language: "en", said: {} };

/**
 * What the kernel tells, as it reads; nothing where it is silent.
 * @param {Astragal.Message} message
 * @param {string} units
 */
export function say(message, units) {
  return Astragal.kernel.say(message, ENGLISH, units);
}

/**
 * @param {Astragal.Figure} figure
 * @param {string} units
 */
export function sayFigure(figure, units) {
  return Astragal.kernel.say_value(figure.value, figure.unit, units);
}

/**
 * @param {Astragal.PageCatalog} catalog
 * @param {Astragal.Door} door
 */
export function doorName(catalog, door) {
  const name = catalog.doors[door.id].name;
  return isCorrected(catalog, door) ? `${name}, as measured` : name;
}

/**
 * @param {Astragal.PageCatalog} catalog
 * @param {Astragal.Configuration} configuration
 */
export function choicesInWords(catalog, configuration) {
  return familyOf(catalog, configuration).choices.map((choice) => {
    const picked = choice.options.find((option) => option.id === configuration.choices[choice.id]);
    return `${capital(choice.name)}: ${(picked ?? choice.options[0]).name}`;
  });
}
