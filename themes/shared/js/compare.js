// Up to four configurations side by side: one scale, one position, what differs first.

const LETTERS = ["A", "B", "C", "D"];

// A row: its name, a cell for each configuration, whether they differ, and whether nearly everyone asks for it.
function rowOf(name, cells, draw, key) {
  return { name: capital(name), cells, draw, key, differs: cells.some((cell) => cell !== cells[0]) };
}

function idsIn(answers, kind) {
  return [...new Set(answers.flatMap((answer) => Object.keys(answer[kind])))];
}

const oneOf = (answers, kind, id) => answers.find((answer) => answer[kind][id])[kind][id];

function figureRows(answers, units) {
  return idsIn(answers, "figures").map((id) => {
    const cells = answers.map((answer) => (answer.figures[id] ? sayFigure(answer.figures[id], units) : ""));
    return rowOf(oneOf(answers, "figures", id).name, cells, (cell) => cell, isKey(id));
  });
}

function verdictRows(answers) {
  return idsIn(answers, "verdicts").map((id) => {
    const cells = answers.map((answer) => (fits(answer) ? answer.verdicts[id]?.state ?? "" : "does not fit"));
    return rowOf(oneOf(answers, "verdicts", id).name, cells, (cell) => verdictNode(cell), true);
  });
}

function rowNode({ name, cells, draw }) {
  return element("tr", {}, element("th", { scope: "row" }, name),
    cells.map((cell) => element("td", { class: "number" }, cell === "" ? "–" : draw(cell))));
}

// What differs first.
function comparedTable(app, state, rows, caption) {
  const head = state.configurations.map((one, i) => element("th", { scope: "col" }, `${LETTERS[i]} · ${familyOf(app.catalog, one).name}`));
  const part = (title, differs) => {
    const own = rows.filter((row) => row.differs === differs);
    if (own.length === 0) return null;
    return element("tbody", { class: differs ? "differs" : "agrees" },
      element("tr", { class: "part" }, element("th", { colspan: head.length + 1, scope: "rowgroup" }, title)), own.map(rowNode));
  };
  return element("div", { class: "table", tabindex: "0", role: "region", "aria-label": caption },
    element("table", {}, element("caption", { class: "unseen" }, caption),
      element("thead", {}, element("tr", {}, element("td"), head)), part("What differs", true), part("The same in all", false)));
}

// The verdicts and what nearly everyone asks for; the rest on request, on paper at once.
function comparisonTables(app, state, opened) {
  const answers = state.configurations.map((one) => app.ask.answer(one));
  const rows = [...verdictRows(answers), ...figureRows(answers, state.units)];
  const more = rows.filter((row) => !row.key);
  return [
    comparedTable(app, state, rows.filter((row) => row.key), "The configurations compared"),
    element("details", { class: "more", open: opened }, element("summary", {}, `${more.length} more figures`),
      comparedTable(app, state, more, "The other figures compared")),
  ];
}

function comparedDrawings(app, state) {
  const share = shareOf(app.catalog, activeOf(state));
  return state.configurations.map((one) => app.ask.elevation(one, placeAtShare(app.catalog, one, share), state.units));
}

function comparedColumn(app, state, i, drawing, window) {
  const configuration = state.configurations[i];
  const active = i === state.active;
  const answer = app.ask.answer(configuration);
  const place = placeAtShare(app.catalog, configuration, shareOf(app.catalog, activeOf(state)));
  const clear = app.ask.sharesAt(configuration, place);
  const words = [doorName(app.catalog, configuration.door), ...choicesInWords(app.catalog, configuration)].join(" · ");
  return element("article", { class: active ? "column active" : "column", "aria-label": `Configuration ${LETTERS[i]}` },
    element("div", { class: "stand" }, drawingNode(drawing, window)),
    element("h3", {}, element("span", { class: "letter" }, LETTERS[i]), familyOf(app.catalog, configuration).name),
    element("p", { class: "column-words" }, words),
    clear ? element("p", { class: "column-clear" }, element("b", { class: "number" }, percent(clear.visible)), " of the glass clear")
      : element("p", { class: "refusal" }, say(answer.refusal, state.units)),
    element("p", { class: "column-actions" },
      element("button", { type: "button", class: "text-button", disabled: active, onclick: () => app.show(i) }, active ? "On the drawing table" : "Work on this one"),
      element("button", { type: "button", class: "text-button", "aria-label": `Remove ${LETTERS[i]}`, onclick: () => app.remove(i) }, "Remove")));
}

function createCompare(app) {
  const columns = element("div", { class: "compared" });
  const tables = element("div", { class: "compare-tables" });
  const slider = element("input", {
    type: "range", min: "0", max: "100", step: "1", id: "compare-share",
    oninput: () => app.moveAll(slider.valueAsNumber / 100), onchange: () => app.settle(),
  });
  const output = element("output", { for: slider.id });
  const bar = element("div", { class: "slider compare-slider" },
    element("div", { class: "slider-head" }, element("label", { for: slider.id }, "All at the same position"), output),
    element("div", { class: "track" }, element("div", { class: "run" }, slider)));
  const print = element("button", { type: "button", class: "press quiet", onclick: () => app.print("comparison") }, "Print the comparison");
  const full = element("div", { class: "compare-full" }, bar, columns, tables, element("p", { class: "actions" }, print));
  const empty = element("p", { class: "note" },
    "Add a second covering, or the same one with another choice: they stand here side by side, at one scale and one position. Up to four.");
  const add = element("button", { type: "button", class: "press quiet", onclick: () => app.another() }, "Add another to compare");
  const node = element("section", { class: "compare", id: "compare", "aria-labelledby": "compare-title" },
    element("div", { class: "section-head" }, element("h2", { id: "compare-title" }, "Side by side"), add), empty, full);

  return {
    node,
    update(state) {
      const many = state.configurations.length > 1;
      empty.hidden = many;
      full.hidden = !many;
      add.hidden = state.configurations.length >= MOST_CONFIGURATIONS;
      if (!many) return;
      const share = shareOf(app.catalog, activeOf(state));
      slider.value = String(Math.round(share * 100));
      slider.setAttribute("aria-valuetext", sayShare(share));
      setText(output, sayShare(share));
      const drawings = comparedDrawings(app, state);
      // Equal windows on the paper make equal scales on the screen.
      const window = unionOf(drawings);
      columns.style.setProperty("--columns", drawings.length);
      setChildren(columns, drawings.map((drawing, i) => comparedColumn(app, state, i, drawing, window)));
      const opened = tables.querySelector("details")?.open ?? false;
      setChildren(tables, comparisonTables(app, state, opened));
    },
  };
}
