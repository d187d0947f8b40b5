// Up to four configurations side by side: one scale, one position, what differs first.

import { around, element, setChildren, setText } from "./dom.js";
import { wholeAnswer } from "./figures.js";
import { verdictOf } from "./now.js";
import { drawingNode } from "./paint.js";
import { ruler, scaleFor, toScale } from "./sheet.js";
import { bareBox, bareMarks, unionOf } from "./sheetlayout.js";
import { sideways } from "./sideways.js";
import { activeOf, familyOf } from "./state.js";
import { slid } from "./swipe.js";
import { elevationOf } from "./table.js";
import { capital, LETTERS } from "./text.js";
import { percent } from "./travel.js";
import { placeAtShare, sayShare, shareOf } from "./way.js";
import { _, _several, choicesInWords, doorName, isKey, say, sayFigure, tongue, verdictNode } from "./words.js";

/** @typedef {{ name: string, cells: string[], draw: (at: number) => Child, key: boolean, differs: boolean }} Row */

// Two side by side on a phone leave no room for dimensions that can be read; the table has them.
const NARROW = matchMedia("(max-width: 64rem)");
const COMPARED = { width: 184, height: 80 };

/**
 * A row: its name, a cell for each configuration, whether they differ, and whether nearly everyone asks for it.
 * @param {string} name
 * @param {string[]} cells
 * @param {(at: number) => Child} draw
 * @param {boolean} key
 */
function rowOf(name, cells, draw, key) {
  return { name: capital(name), cells, draw, key, differs: cells.some((cell) => cell !== cells[0]) };
}

/**
 * @param {Astragal.Answer[]} answers
 * @param {"figures" | "verdicts"} kind
 */
function idsIn(answers, kind) {
  return [...new Set(answers.flatMap((answer) => Object.keys(answer[kind])))];
}

/**
 * What a figure or verdict of one of the answers is called.
 * @param {Astragal.Answer[]} answers
 * @param {"figures" | "verdicts"} kind
 * @param {string} id
 */
function nameOf(answers, kind, id) {
  return answers.map((answer) => answer[kind][id]?.name).find(Boolean) ?? "";
}

/**
 * @param {Astragal.Answer[]} answers
 * @param {string} units
 */
function figureRows(answers, units) {
  return idsIn(answers, "figures").map((id) => {
    const cells = answers.map((answer) => (answer.figures[id] ? sayFigure(answer.figures[id], units) : ""));
    return rowOf(nameOf(answers, "figures", id), cells, (i) => cells[i], isKey(id));
  });
}

/** @param {Astragal.Answer[]} answers */
function verdictRows(answers) {
  return idsIn(answers, "verdicts").map((id) => {
    const told = answers.map((answer) => verdictOf(answer, id));
    return rowOf(nameOf(answers, "verdicts", id), told.map((one) => one.words), (i) => verdictNode(told[i]), true);
  });
}

/** @param {Row} row */
function rowNode({ name, cells, draw }) {
  return element("tr", {}, element("th", { scope: "row" }, name),
    cells.map((cell, i) => element("td", { class: "number", "data-letter": LETTERS[i] }, cell === "" ? "–" : draw(i))));
}

/**
 * What differs first.
 * @param {App} app
 * @param {PageState} state
 * @param {Row[]} rows
 * @param {string} caption
 */
function comparedTable(app, state, rows, caption) {
  const head = state.configurations.map((one, i) => element("th", { scope: "col" }, `${LETTERS[i]} · ${familyOf(app.catalog, one).name}`));
  const part = (/** @type {string} */ title, /** @type {boolean} */ differs) => {
    const own = rows.filter((row) => row.differs === differs);
    if (own.length === 0) return null;
    return element("tbody", { class: differs ? "differs" : "agrees" },
      element("tr", { class: "part" }, element("th", { colspan: head.length + 1, scope: "rowgroup" }, title)), own.map(rowNode));
  };
  return element("table", {}, element("caption", { class: "unseen" }, caption),
    element("thead", {}, element("tr", {}, element("td"), head)), part(_("What differs"), true), part(_("The same in all"), false));
}

/**
 * The verdicts and what nearly everyone asks for; the rest on request, on paper at once.
 * @param {App} app
 * @param {PageState} state
 * @param {boolean} opened
 */
function comparisonTables(app, state, opened) {
  const answers = state.configurations.map((one) => wholeAnswer(app, one));
  const rows = [...verdictRows(answers), ...figureRows(answers, state.units)];
  const more = rows.filter((row) => !row.key);
  return [
    comparedTable(app, state, rows.filter((row) => row.key), _("The configurations compared")),
    element("details", { class: "more", open: opened }, element("summary", {}, _several("{count} more figure", "{count} more figures", { count: more.length })),
      comparedTable(app, state, more, _("The other figures compared"))),
  ];
}

/**
 * @param {App} app
 * @param {PageState} state
 */
function comparedDrawings(app, state) {
  const share = shareOf(app.catalog, activeOf(state));
  return state.configurations.map((one) => elevationOf(app.ask, one, placeAtShare(app.catalog, one, share), state.units));
}

/**
 * @param {Astragal.Drawing} drawing
 * @returns {Astragal.Drawing}
 */
function bareDrawing(drawing) {
  return { ...drawing, ...bareBox(drawing), marks: bareMarks(drawing.marks) };
}

/**
 * @param {App} app
 * @param {PageState} state
 * @param {number} i
 * @param {Astragal.Drawing} drawing
 * @param {Frame} window
 */
function comparedColumn(app, state, i, drawing, window) {
  const configuration = state.configurations[i];
  const letter = LETTERS[i];
  const active = i === state.active;
  const answer = wholeAnswer(app, configuration);
  const place = placeAtShare(app.catalog, configuration, shareOf(app.catalog, activeOf(state)));
  const clear = app.ask.sharesAt(configuration, place);
  const words = [doorName(app.catalog, configuration.door), ...choicesInWords(app.catalog, configuration)].join(" · ");
  return element("article", { class: active ? "column active" : "column", "aria-label": _("Configuration {letter}", { letter }) },
    element("div", { class: "stand" }, drawingNode(drawing, window)),
    element("h3", {}, element("span", { class: "letter" }, letter), familyOf(app.catalog, configuration).name),
    element("p", { class: "column-words" }, words),
    clear ? element("p", { class: "column-clear" }, around(_("{share} of the glass clear"), { share: element("b", { class: "number" }, percent(clear.visible)) }))
      : element("p", { class: "refusal" }, say(answer.refusal, state.units)),
    element("p", { class: "column-actions" },
      element("button", { type: "button", class: "text-button", disabled: active, onclick: () => done(() => app.show(i)) }, active ? _("On the drawing table") : _("Work on this one")),
      element("button", { type: "button", class: "text-button", "aria-label": _("Remove {letter}", { letter }), onclick: () => done(() => app.remove(i)) }, _("Remove"))));
}

/**
 * The columns are made anew, and would take the focus with them.
 * @param {() => void} task
 */
function done(task) {
  task();
  document.getElementById("compare-title")?.focus({ preventScroll: true });
}

/** @type {Pages} */
function comparisonPages(app, state) {
  const drawings = comparedDrawings(app, state);
  const window = unionOf(drawings);
  const scale = scaleFor(window, state.units, COMPARED.width / drawings.length - 3, COMPARED.height);
  const columns = drawings.map((drawing, i) => element("div", {}, toScale(drawingNode(drawing), window, scale),
    element("p", {}, element("b", {}, `${LETTERS[i]} · ${familyOf(app.catalog, state.configurations[i]).name}`))));
  return [element("article", { class: "sheet-page comparison-page" },
    element("h2", {}, _("Side by side")),
    element("p", {}, _("All at the same position: {place}. Scale {scale}.", {
      place: sayShare(shareOf(app.catalog, activeOf(state))),
      scale: Astragal.kernel.scale_words(scale, tongue(), state.units),
    })),
    element("div", { class: "sheet-columns" }, columns),
    comparisonTables(app, state, true),
    ruler(state.units))];
}

/**
 * @param {App} app
 * @returns {PagePart}
 */
export function createCompared(app) {
  const columns = element("div", { class: "compared" });
  const tables = element("div", { class: "compare-tables" });
  const slider = element("input", {
    type: "range", min: "0", max: "100", step: "1", id: "compare-share",
    ...slid(() => app.moveTo(placeAtShare(app.catalog, activeOf(app.state()), slider.valueAsNumber / 100)), showCompared),
    onchange: () => app.settle(),
  });
  const output = element("output", { for: slider.id });
  const bar = element("div", { class: "slider compare-slider" },
    element("div", { class: "slider-head" }, element("label", { for: slider.id }, _("All at the same position")), output),
    element("div", { class: "track" }, element("div", { class: "run" }, slider)));

  function showCompared() {
    const share = shareOf(app.catalog, activeOf(app.state()));
    slider.value = String(Math.round(share * 100));
    slider.setAttribute("aria-valuetext", sayShare(share));
    setText(output, sayShare(share));
  }

  const print = element("button", { type: "button", class: "press quiet", onclick: () => app.print(comparisonPages) }, _("Print the comparison"));
  const { turner, swiped, follow } = sideways(_("The configurations compared"), columns, tables);
  const node = element("div", { class: "compare-full" }, bar, turner, swiped, element("p", { class: "actions" }, print));

  NARROW.addEventListener("change", () => update(app.state()));

  /** @param {PageState} state */
  function update(state) {
    showCompared();
    const drawn = comparedDrawings(app, state);
    const drawings = NARROW.matches ? drawn.map(bareDrawing) : drawn;
    // Equal windows on the paper make equal scales on the screen.
    const window = unionOf(drawings);
    setChildren(columns, drawings.map((drawing, i) => comparedColumn(app, state, i, drawing, window)));
    const opened = tables.querySelector("details")?.open ?? false;
    setChildren(tables, comparisonTables(app, state, opened));
    swiped.style.setProperty("--columns", String(drawings.length));
    follow(drawings.length);
  }

  return { node, update };
}
