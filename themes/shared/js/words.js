// Words for verdicts, figures and configurations.

import { isCorrected } from "./corrected.js";
import { element } from "./dom.js";
import { capital } from "./text.js";

/**
 * The style sheet puts each state's shape before its words; `heard` takes their place for whoever only hears them.
 * @param {Told} told
 * @param {string} [heard]
 */
export function verdictNode({ state, words }, heard = "") {
  return element("span", { class: `verdict ${state.replaceAll(" ", "-")}` },
    heard ? [element("span", { class: "unseen" }, heard), element("span", { "aria-hidden": "true" }, words)] : words);
}

// What nearly everyone asks for; the rest follows on request.
const KEY_FIGURES = [
  "order_width", "order_height", "visible_glass_open", "light_closed", "view_closed",
  "stack_height", "projection_most", "handle_gap", "swing_covered", "clear_width_covered",
];

export const isKey = (/** @type {string} */ id) => KEY_FIGURES.includes(id);

/** The page's language; what its scripts say is put into it when they are made. */
export const tongue = () => Astragal.catalog.words;

/**
 * Words of the page, with their {terms} put in. Scripts are made for a language, so the text is in it already.
 * @param {string} text
 * @param {Record<string, string | number>} terms
 */
export function _(text, terms = {}) {
  return withTerms(text, terms);
}

/**
 * @param {string} text
 * @param {Record<string, string | number>} terms
 */
function withTerms(text, terms) {
  return Object.entries(terms).reduce((told, [name, term]) => told.replaceAll(`{${name}}`, String(term)), text);
}

/**
 * The same of as many things as the term `count` says.
 * @param {string} one
 * @param {string} many
 * @param {{ count: number } & Record<string, string | number>} terms
 */
export function _several(one, many, terms) {
  return withTerms(Astragal.kernel.in_form(`${one}\u0000${many}`, terms.count, tongue()), terms);
}

/**
 * What the kernel tells, as it reads; nothing where it is silent.
 * @param {Astragal.Message} message
 * @param {string} units
 */
export function say(message, units) {
  return Astragal.kernel.say(message, tongue(), units);
}

/**
 * A verdict's state, and its words within a sentence.
 * @param {Astragal.Verdict} verdict
 * @returns {Told}
 */
export function toldOf({ state, says }) {
  return { state, words: Astragal.kernel.say_phrase(says, tongue(), "mm") };
}

/**
 * @param {Astragal.Figure} figure
 * @param {string} units
 */
export function sayFigure(figure, units) {
  return Astragal.kernel.say_value(figure.value, figure.unit, tongue(), units);
}

/**
 * @param {Astragal.PageCatalog} catalog
 * @param {Astragal.Door} door
 */
export function doorName(catalog, door) {
  const name = catalog.doors[door.id].name;
  return isCorrected(catalog, door) ? _("{door}, as measured", { door: name }) : name;
}

/**
 * @param {Astragal.PageCatalog} catalog
 * @param {Astragal.Configuration} configuration
 */
export function choicesInWords(catalog, configuration) {
  return catalog.families[configuration.family].choices.map((choice) => {
    const picked = choice.options.find((option) => option.id === configuration.choices[choice.id]);
    return _("{choice}: {option}", { choice: capital(choice.name), option: (picked ?? choice.options[0]).name });
  });
}
