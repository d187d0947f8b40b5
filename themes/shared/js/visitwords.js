// What goes ahead to the showroom, in words.

import { wholeAnswer } from "./figures.js";
import { fits } from "./now.js";
import { familyOf } from "./state.js";
import { capital, LETTERS } from "./text.js";
import { sayPlace } from "./travel.js";
import { _, choicesInWords, doorName, say, sayFigure, toldOf } from "./words.js";

/** Whether a link opens on another device too. */
export const isPublic = (/** @type {string} */ link) => !link.startsWith("file:");

/**
 * @param {App} app
 * @param {Astragal.Configuration} one
 */
export function visitTitle(app, one) {
  return _("{covering} on our door: {door}", { covering: familyOf(app.catalog, one).name, door: doorName(app.catalog, one.door) });
}

/**
 * @param {App} app
 * @param {Astragal.Configuration} one
 * @param {string} units
 */
function toldLines(app, one, units) {
  const answer = wholeAnswer(app, one);
  if (!fits(answer)) return [say(answer.refusal, units)];
  const { figures, verdicts } = answer;
  return [
    _("Size to order: {width} wide, {height} high", { width: sayFigure(figures.order_width, units), height: sayFigure(figures.order_height, units) }),
    ...Object.values(verdicts).map((verdict) => _("{question}: {answer}", { question: capital(verdict.name), answer: toldOf(verdict).words })),
  ];
}

/**
 * Each configuration in a few lines, and the link that opens them.
 * @param {App} app
 * @param {PageState} state
 */
export function visitText(app, state) {
  const several = state.configurations.length > 1;
  const told = state.configurations.map((one, i) => [
    `${several ? `${LETTERS[i]} · ` : ""}${visitTitle(app, one)}`,
    ...choicesInWords(app.catalog, one),
    _("Position: {place}", { place: sayPlace(app.catalog, one) }),
    ...toldLines(app, one, state.units),
  ].join("\n"));
  const link = app.address();
  return [...told, ...(isPublic(link) ? [link] : [])].join("\n\n");
}
