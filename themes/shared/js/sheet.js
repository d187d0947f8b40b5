// The printed sheet: drawings in true millimeters of paper, title block, figures, cautions, date and link.

import { element, shape } from "./dom.js";
import { createLayer, joined, short } from "./draw.js";
import { wholeAnswer } from "./figures.js";
import { fits } from "./now.js";
import { paint } from "./paint.js";
import { qrDrawing } from "./qr.js";
import { arranged, bareBox } from "./sheetlayout.js";
import { familyOf } from "./state.js";
import { threeViews } from "./table.js";
import { capital, LETTERS } from "./text.js";
import { sayPlace } from "./travel.js";
import { VIEWS } from "./views.js";
import { _, choicesInWords, doorName, say, sayFigure, toldOf, tongue, verdictNode } from "./words.js";

const PAPER = { width: 126, height: 164 };

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
 * The arcs of the open leaves would halve the scale; how far they open is among the figures.
 * @param {Astragal.Drawing} plan
 */
function withoutArcs(plan) {
  const marks = plan.marks.filter((mark) => mark.role !== "swing");
  const { y, height } = bareBox({ ...plan, marks });
  const room = 2 * (marks.find((mark) => mark.shape === "text")?.points[2] ?? 0);
  return { ...plan, marks, y: y - room, height: height + 2 * room };
}

/**
 * All three views on one paper, as they stand on the drawing table.
 * @param {App} app
 * @param {Astragal.Configuration} configuration
 * @param {string} units
 */
function sheetDrawing(app, configuration, units) {
  const drawings = threeViews(app.ask, configuration, configuration.place, units);
  drawings.plan = withoutArcs(drawings.plan);
  const { shifts, whole } = arranged(drawings);
  const groups = VIEWS.map((view) => {
    const layer = createLayer("drawn");
    layer.draw(drawings[view].marks);
    layer.group.setAttribute("transform", `translate(${short(shifts[view].dx)} ${short(shifts[view].dy)})`);
    return layer.group;
  });
  const scale = scaleFor(whole, units, PAPER.width, PAPER.height);
  const sheet = shape("svg", { class: "drawing-sheet", role: "img", "aria-label": drawings.elevation.title }, groups);
  paint(sheet, drawings.elevation.look);
  const svg = toScale(sheet, whole, scale);
  return { svg, words: Astragal.kernel.scale_words(scale, tongue(), units) };
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
 * @param {App} app
 * @param {Astragal.Configuration} configuration
 * @param {string} scaleWords
 * @param {string} letter
 */
function titleBlock(app, configuration, scaleWords, letter) {
  const cell = (/** @type {string} */ name, /** @type {Child[]} */ ...words) => element("div", {}, element("span", { class: "label" }, name), element("p", {}, words));
  const today = new Date().toLocaleDateString(tongue().language, { dateStyle: "long" });
  return element("div", { class: "sheet-block" },
    cell(_("Covering"), element("b", {}, `${letter}${familyOf(app.catalog, configuration).name}`), element("br"), choicesInWords(app.catalog, configuration).join(" · ")),
    cell(_("Door"), element("b", {}, doorName(app.catalog, configuration.door))),
    cell(_("Position"), sayPlace(app.catalog, configuration)),
    cell(_("Scale"), scaleWords),
    cell(_("Date"), today),
    cell(_("Showroom"), document.querySelector(".wordmark")?.textContent?.trim() ?? ""));
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
 * @param {App} app
 * @param {PageState} state
 * @param {Astragal.Configuration} configuration
 * @param {number} index
 */
function sheetPage(app, state, configuration, index) {
  const answer = wholeAnswer(app, configuration);
  const { svg, words } = sheetDrawing(app, configuration, state.units);
  const letter = state.configurations.length > 1 ? `${LETTERS[index]} · ` : "";
  const link = app.addressOf({ ...state, configurations: [configuration], active: 0 });
  return element("article", { class: "sheet-page" },
    element("div", { class: "sheet-top" },
      element("div", { class: "sheet-drawing" }, svg),
      element("div", { class: "sheet-side" },
        fits(answer) ? sheetVerdicts(answer, state.units) : element("p", { class: "refusal" }, say(answer.refusal, state.units)),
        element("ul", { class: "sheet-cautions" }, answer.cautions.map((one) => element("li", {}, _("{caution} ({source})", { caution: say(one.text, state.units), source: one.source })))),
        element("div", { class: "sheet-link" }, qrDrawing(link, _("A code that holds this link")), element("p", {}, link)))),
    titleBlock(app, configuration, words, letter),
    fits(answer) ? sheetFigures(answer, state.units) : null,
    ruler(state.units));
}

/** @type {Pages} */
export function sheetPages(app, state) {
  return state.configurations.map((one, i) => sheetPage(app, state, one, i));
}
