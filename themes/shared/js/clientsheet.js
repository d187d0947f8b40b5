// The sheet for the client: one page with a large drawing, a few figures in plain words, and room for notes.

import { element } from "./dom.js";
import { wholeAnswer } from "./figures.js";
import { fits } from "./now.js";
import { drawingNode } from "./paint.js";
import { inDays, letterOf, linkBlock, scaleFor, sheetCautions, toScale } from "./sheet.js";
import { bareBox } from "./sheetlayout.js";
import { familyOf } from "./state.js";
import { elevationOf } from "./table.js";
import { sayPlace } from "./travel.js";
import { hoursList, reachLines } from "./visit.js";
import { _, choicesInWords, doorName, say, sayFigure, tongue, toldOf, verdictNode } from "./words.js";

const LARGE = { width: 92, height: 138 };
const LINES = 5;

/** @typedef {{ name: string, told: Child }} Line */

/**
 * What the covering takes when it is open: to the side, or above.
 * @param {Record<string, Astragal.Figure>} figures
 * @param {string} units
 * @returns {Line[]}
 */
function stackLine({ side_stack, stack_height }, units) {
  if (side_stack) return [{ name: _("How wide it stacks at the side when open"), told: sayFigure(side_stack, units) }];
  return stack_height.value > 0 ? [{ name: _("How high it stacks when open"), told: sayFigure(stack_height, units) }] : [];
}

/**
 * The few figures that a client asks for, in plain words.
 * @param {Astragal.Answer} answer
 * @param {string} units
 * @returns {Line[]}
 */
export function plainLines({ figures, verdicts }, units) {
  const passing = verdicts.pass_through;
  const shareOf = (/** @type {number} */ share) => Astragal.kernel.say_value(share, figures.visible_glass_open.unit, tongue(), units);
  return [
    { name: _("Size to order"), told: _("{width} wide, {height} high", { width: sayFigure(figures.order_width, units), height: sayFigure(figures.order_height, units) }) },
    ...stackLine(figures, units),
    { name: _("How much of the glass it hides when open"), told: shareOf(1 - figures.visible_glass_open.value) },
    { name: _("How far it stands off the door at most"), told: sayFigure(figures.projection_most, units) },
    ...(passing ? [{ name: _("Does it pass the handle?"), told: verdictNode(toldOf(passing)) }] : []),
    { name: _("How much light comes through when closed"), told: sayFigure(figures.light_closed, units) },
  ].slice(0, LINES);
}

/**
 * The door with its covering as it stands now, as large as the page has room for.
 * @param {App} app
 * @param {Astragal.Configuration} one
 * @param {string} units
 */
function largeDrawing(app, one, units) {
  const marks = [...app.ask.doorFront(one, units), ...app.ask.coveringFront(one, one.place, units)];
  const box = bareBox({ marks });
  const scale = scaleFor(box, units, LARGE.width, LARGE.height);
  const svg = toScale(drawingNode({ ...elevationOf(app.ask, one, one.place, units), marks }), box, scale);
  return element("figure", { class: "client-drawing" }, svg,
    element("figcaption", {}, _("{place}. Scale {scale}.", { place: sayPlace(app.catalog, one), scale: Astragal.kernel.scale_words(scale, tongue(), units) })));
}

/**
 * @param {App} app
 * @param {Astragal.Configuration} one
 * @param {string} units
 */
function toldBlock(app, one, units) {
  const answer = wholeAnswer(app, one);
  if (!fits(answer)) return element("p", { class: "refusal" }, say(answer.refusal, units));
  const price = Astragal.kernel.price_words(familyOf(app.catalog, one), tongue());
  const lines = [...plainLines(answer, units), ...(price === "" ? [] : [{ name: _("Price level"), told: price }])];
  return element("dl", { class: "client-figures" }, lines.map(({ name, told }) =>
    element("div", {}, element("dt", {}, name), element("dd", {}, told))));
}

/** @param {App} app */
function showroomBlock({ catalog }) {
  return element("div", { class: "client-showroom" }, element("b", {}, catalog.showroom),
    reachLines(catalog.contact).map(({ words }) => element("p", {}, words)), hoursList(catalog.contact));
}

/**
 * @param {App} app
 * @param {PageState} state
 * @param {number} index
 */
function clientPage(app, state, index) {
  const one = state.configurations[index];
  const answer = wholeAnswer(app, one);
  return element("article", { class: "sheet-page client-page" },
    element("header", {},
      element("div", {}, element("h2", {}, `${letterOf(state, index)}${familyOf(app.catalog, one).name}`), element("p", {}, doorName(app.catalog, one.door))),
      element("p", {}, app.catalog.showroom, element("br"), inDays(new Date()))),
    element("div", { class: "client-main" }, largeDrawing(app, one, state.units),
      element("div", {}, toldBlock(app, one, state.units), element("p", { class: "client-choices" }, choicesInWords(app.catalog, one).join(" · ")),
        answer.cautions.length === 0 ? null : element("section", {}, element("h3", {}, _("Take care")), sheetCautions(answer, state.units)))),
    element("section", { class: "client-notes" }, element("h3", {}, _("Notes"))),
    element("footer", {}, showroomBlock(app), linkBlock(app.addressOf({ ...state, step: "details", configurations: [one], active: 0 }))));
}

/** @type {Pages} */
export function clientPages(app, state) {
  return state.configurations.map((_one, i) => clientPage(app, state, i));
}
