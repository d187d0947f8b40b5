// The order to the workroom and the installer's sheet: the kernel's blocks as elements, for a printer.

import { element } from "./dom.js";
import { drawingNode } from "./paint.js";
import { inDays, linkBlock, ruler, toScale } from "./sheet.js";
import { familyOf } from "./state.js";
import { _, say, tongue } from "./words.js";

/** @typedef {(block: Astragal.Block, units: string) => Child} PutBlock */

/**
 * Arithmetic is told as it stands.
 * @param {Astragal.Message} cell
 * @param {Astragal.Column} column
 * @param {string} units
 */
function cellWords(cell, column, units) {
  return column.side === "sum" ? Astragal.kernel.say_phrase(cell, tongue(), units) : say(cell, units);
}

/** @type {PutBlock} */
function putTable({ columns, rows, text }, units) {
  const side = (/** @type {Astragal.Column} */ column) => (column.side === "end" ? { class: "end" } : {});
  const headed = columns.some(({ name }) => name.text !== "");
  const whole = columns.reduce((sum, { wide }) => sum + wide, 0);
  return element("table", headed ? {} : { class: "bare" },
    text.text === "" ? null : element("caption", {}, say(text, units)),
    element("colgroup", {}, columns.map(({ wide }) => element("col", { style: `width:${(100 * wide / whole).toFixed(2)}%` }))),
    headed ? element("thead", {}, element("tr", {}, columns.map((column) => element("th", { scope: "col", ...side(column) }, say(column.name, units))))) : null,
    element("tbody", {}, rows.map(({ cells, kind }) => element("tr", kind === "" ? {} : { class: kind },
      cells.map((cell, i) => element("td", side(columns[i]), cellWords(cell, columns[i], units)))))));
}

/** @type {PutBlock} */
function putDrawings({ drawings }, units) {
  return element("div", { class: "drawings" }, drawings.map(({ caption, drawing, scale }) =>
    element("figure", {}, toScale(drawingNode(drawing), drawing, scale),
      caption.text === "" ? null : element("figcaption", {}, say(caption, units)))));
}

/**
 * @param {string} kind
 * @returns {PutBlock}
 */
function putPoints(kind) {
  return ({ items }, units) => element("ul", { class: kind }, items.map((item) => element("li", {}, say(item, units))));
}

/** @type {PutBlock} */
function putSignatures({ items }, units) {
  return element("div", {}, items.map((item) =>
    element("div", { class: "signature" }, element("span", {}, say(item, units)), element("span", {}, _("Date")))));
}

/** @type {Record<number, "h1" | "h2" | "h3">} */
const LEVELS = { 1: "h1", 2: "h2", 3: "h3" };

/** @type {Record<string, PutBlock>} */
const BLOCKS = {
  title: ({ size, text }, units) => element(LEVELS[size], {}, say(text, units)),
  text: ({ text }, units) => element("p", {}, say(text, units)),
  caution: ({ text }, units) => element("p", { class: "caution" }, say(text, units)),
  list: putPoints("points"),
  ticks: putPoints("ticks"),
  table: putTable,
  drawing: putDrawings,
  code: ({ code, text }, units) => element("div", { class: "code" }, element("p", {}, say(text, units)), linkBlock(code)),
  signatures: putSignatures,
  room: ({ size, text }, units) => element("div", { class: "room" }, element("p", {}, say(text, units)), element("div", { class: "lines", style: `height:${size}mm` })),
  page: () => element("div", { class: "page" }),
};

/**
 * @param {Astragal.Paper} paper
 * @param {string} units
 */
export function paperNode(paper, units) {
  return element("article", { class: "paper" }, paper.blocks.map((block) => BLOCKS[block.kind](block, units)), ruler(units),
    element("p", { class: "foot" }, say(paper.foot, units)));
}

/**
 * What is compared as something to be made: what cannot hang is told on the paper with its reason.
 * @param {App} app
 * @param {PageState} state
 * @returns {Astragal.Commission[]}
 */
function commissions({ catalog }, { configurations, household }) {
  const { kernel } = Astragal;
  return configurations.map((one) => ({
    opening: "", room: "", socket: "", controls: {}, links: {}, count: 1, note: "", household,
    leaves: kernel.hung_both(kernel.hung_with(one.door, familyOf(catalog, one), one.choices, one.wishes)),
  }));
}

/**
 * @param {App} app
 * @param {PageState} state
 * @returns {Astragal.Desk}
 */
function desk(app, state) {
  return { words: tongue(), units: state.units, client: "", showroom: app.catalog.showroom, day: inDays(new Date()), link: app.addressOf({ ...state, step: "details" }), home: "" };
}

/** @type {Pages} */
export function orderPages(app, state) {
  return [paperNode(Astragal.kernel.order_paper(commissions(app, state), desk(app, state)), state.units)];
}

/** @type {Pages} */
export function installPages(app, state) {
  return [paperNode(Astragal.kernel.install_paper(commissions(app, state), desk(app, state)), state.units)];
}
