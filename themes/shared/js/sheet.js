// The sheet for workroom and installer: drawings in true millimeters of paper, title block, figures, cautions, date, link.

import { element } from "./dom.js";
import { joined, short } from "./draw.js";
import { wholeAnswer } from "./figures.js";
import { fits } from "./now.js";
import { drawingNode } from "./paint.js";
import { qrDrawing } from "./qr.js";
import { familyOf } from "./state.js";
import { capital, LETTERS } from "./text.js";
import { sayPlace } from "./travel.js";
import { _, choicesInWords, doorName, say, sayFigure, toldOf, tongue, verdictNode } from "./words.js";

/**
 * @param {Frame} box
 * @param {string} units
 * @param {number} width
 * @param {number} height
 */
export function scaleFor(box, units, width, height) {
  const known = Astragal.kernel.usual_scales(units);
  return known.find((scale) => box.width / scale <= width && box.height / scale <= height) ?? known[known.length - 1];
}

/**
 * @param {SVGSVGElement} svg
 * @param {Frame} box
 * @param {number} scale
 */
export function toScale(svg, box, scale) {
  svg.setAttribute("viewBox", joined(box));
  svg.setAttribute("width", `${short(box.width / scale)}mm`);
  svg.setAttribute("height", `${short(box.height / scale)}mm`);
  return svg;
}

/**
 * A line to lay a ruler on: no printer is trusted to keep the scale.
 * @param {string} units
 */
export function ruler(units) {
  const mm = units === "mm" ? 100 : 101.6;
  const length = Astragal.kernel.say_value(mm, "mm", tongue(), units);
  return element("p", { class: "ruler" }, element("span", { style: `width:${mm}mm` }), _("This line is {length} long when the scale is true.", { length }));
}

/**
 * A drawing at a true scale, with the words under it.
 * @param {Astragal.Drawing} drawing
 * @param {number} scale
 * @param {string} caption
 */
function scaled(drawing, scale, caption) {
  return element("figure", {}, toScale(drawingNode(drawing), drawing, scale), caption === "" ? null : element("figcaption", {}, caption));
}

/** @param {Date} date */
export function inDays(date) {
  return date.toLocaleDateString(tongue().language, { dateStyle: "long" });
}

/**
 * The link, and the code that holds it.
 * @param {string} link
 */
export function linkBlock(link) {
  return element("div", { class: "sheet-link" }, qrDrawing(link, _("A code that holds this link")), element("p", {}, link));
}

/**
 * What a sheet is of: the covering with its picks, on which door, where it stands.
 * @typedef {{ app: App, state: PageState, one: Astragal.Configuration, letter: string }} Subject
 */

/**
 * @param {Subject} subject
 * @param {string[]} scales
 */
function titleBlock({ app, one, letter }, scales) {
  const cell = (/** @type {string} */ name, /** @type {Child[]} */ ...words) => element("div", {}, element("span", { class: "label" }, name), element("p", {}, words));
  return element("div", { class: "sheet-block" },
    cell(_("Covering"), element("b", {}, `${letter}${familyOf(app.catalog, one).name}`), element("br"), choicesInWords(app.catalog, one).join(" · ")),
    cell(_("Door"), element("b", {}, doorName(app.catalog, one.door))),
    cell(_("Position"), sayPlace(app.catalog, one)),
    cell(_("Scale"), scales.join(" · ")),
    cell(_("Date"), inDays(new Date())),
    cell(_("Showroom"), app.catalog.showroom));
}

/**
 * The drawings: three views on shared axes, and at a quarter the place that decides.
 * @param {Subject} subject
 */
function drawingsPage(subject) {
  const { app, state, one } = subject;
  const { kernel } = Astragal;
  const sheet = kernel.workroom_sheet(app.ask.draft(one, one.place, state.units));
  const [scale, close] = [sheet.scale, sheet.close_scale].map((one) => kernel.scale_words(one, tongue(), state.units));
  return element("article", { class: "sheet-page drawings-page" },
    element("div", { class: "sheet-row" }, scaled(sheet.views, sheet.scale, ""),
      scaled(sheet.upright, sheet.close_scale, _("At the handle, cut upright, {scale}", { scale: close }))),
    element("div", { class: "sheet-row" },
      scaled(sheet.level, sheet.close_scale, _("At the handle, cut level, {scale}", { scale: close })), titleBlock(subject, [scale])),
    ruler(state.units));
}

/**
 * @param {Astragal.Answer} answer
 * @param {string} units
 */
function sheetFigures(answer, units) {
  return element("dl", { class: "sheet-figures" }, Object.values(answer.figures).map((figure) =>
    element("div", {}, element("dt", {}, capital(figure.name)), element("dd", {}, sayFigure(figure, units)))));
}

/**
 * @param {Astragal.Answer} answer
 * @param {string} units
 */
function sheetVerdicts(answer, units) {
  return element("ul", { class: "sheet-verdicts" }, Object.values(answer.verdicts).map((one) =>
    element("li", {}, element("b", {}, capital(one.name)), " ", verdictNode(toldOf(one)), element("br"), say(one.why, units))));
}

/**
 * @param {Astragal.Answer} answer
 * @param {string} units
 */
export function sheetCautions(answer, units) {
  return element("ul", { class: "sheet-cautions" }, answer.cautions.map((one) =>
    element("li", {}, _("{caution} ({source})", { caution: say(one.text, units), source: one.source }))));
}

/**
 * Everything in words and figures.
 * @param {Subject} subject
 */
function figuresPage({ app, state, one, letter }) {
  const answer = wholeAnswer(app, one);
  const { units } = state;
  return element("article", { class: "sheet-page" },
    element("h2", { class: "sheet-head" }, `${letter}${familyOf(app.catalog, one).name} · ${doorName(app.catalog, one.door)}`, element("span", {}, `${app.catalog.showroom} · ${inDays(new Date())}`)),
    element("div", { class: "sheet-told" },
      fits(answer) ? sheetVerdicts(answer, units) : element("p", { class: "refusal" }, say(answer.refusal, units)),
      element("div", {}, sheetCautions(answer, units), linkBlock(app.addressOf({ ...state, step: "details", configurations: [one], active: 0 })))),
    fits(answer) ? sheetFigures(answer, units) : null);
}

/**
 * A letter before the name where several are compared.
 * @param {PageState} state
 * @param {number} index
 */
export function letterOf(state, index) {
  return state.configurations.length > 1 ? `${LETTERS[index]} · ` : "";
}

/** @type {Pages} */
export function sheetPages(app, state) {
  return state.configurations.flatMap((one, i) => {
    const subject = { app, state, one, letter: letterOf(state, i) };
    return fits(app.ask.drawn(one)) ? [drawingsPage(subject), figuresPage(subject)] : [figuresPage(subject)];
  });
}
