// Up to four configurations side by side: one scale, one position, what differs first.

const LETTERS = ["A", "B", "C", "D"];

function comparedFigures(answers, units) {
  const ids = [...new Set(answers.flatMap((answer) => Object.keys(answer.figures)))];
  return ids.sort((a, b) => isKey(b) - isKey(a)).map((id) => {
    const named = answers.find((answer) => answer.figures[id]).figures[id];
    const cells = answers.map((answer) => (answer.figures[id] ? sayFigure(answer.figures[id], units) : "–"));
    return { name: capital(named.name), cells, differs: cells.some((cell) => cell !== cells[0]) };
  });
}

function comparedVerdicts(answers) {
  const ids = [...new Set(answers.flatMap((answer) => Object.keys(answer.verdicts)))];
  return ids.map((id) => {
    const named = answers.find((answer) => answer.verdicts[id]).verdicts[id];
    const states = answers.map((answer) => answer.verdicts[id]?.state ?? "does not fit");
    return { name: capital(named.name), states, differs: states.some((state) => state !== states[0]) };
  });
}

function comparisonTable(app, state, answers) {
  const head = element("thead", {}, element("tr", {}, element("td"),
    state.configurations.map((one, i) => element("th", { scope: "col" }, `${LETTERS[i]} · ${familyOf(app.catalog, one).name}`))));
  const verdictRow = (row) => element("tr", {}, element("th", { scope: "row" }, row.name), row.states.map((one) => element("td", {}, verdictNode(one))));
  const figureRow = (row) => element("tr", {}, element("th", { scope: "row" }, row.name), row.cells.map((cell) => element("td", { class: "number" }, cell)));
  const verdicts = comparedVerdicts(answers);
  const figures = comparedFigures(answers, state.units);
  const part = (title, differs) => {
    const rows = [...verdicts.filter((row) => row.differs === differs).map(verdictRow), ...figures.filter((row) => row.differs === differs).map(figureRow)];
    if (rows.length === 0) return null;
    const across = state.configurations.length + 1;
    return element("tbody", { class: differs ? "differs" : "agrees" },
      element("tr", { class: "part" }, element("th", { colspan: across, scope: "rowgroup" }, title)), rows);
  };
  return element("table", {}, element("caption", { class: "unseen" }, "The configurations compared, figure by figure"), head,
    part("What differs", true), part("The same in all", false));
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
      : element("p", { class: "refusal" }, answer.refusal),
    element("p", { class: "column-actions" },
      element("button", { type: "button", class: "text-button", disabled: active, onclick: () => app.show(i) }, active ? "On the drawing table" : "Work on this one"),
      element("button", { type: "button", class: "text-button", "aria-label": `Take ${LETTERS[i]} away`, onclick: () => app.remove(i) }, "Take away")));
}

function createCompare(app) {
  const columns = element("div", { class: "compared" });
  const table = element("div", { class: "table", tabindex: "0", role: "region", "aria-label": "Comparison of the figures" });
  const slider = element("input", {
    type: "range", min: "0", max: "100", step: "1", id: "compare-share",
    oninput: () => app.moveAll(slider.valueAsNumber / 100), onchange: () => app.settle(),
  });
  const output = element("output", { for: slider.id });
  const bar = element("div", { class: "slider compare-slider" },
    element("div", { class: "slider-head" }, element("label", { for: slider.id }, "All at the same position"), output),
    element("div", { class: "track" }, element("div", { class: "run" }, slider)));
  const print = element("button", { type: "button", class: "press quiet", onclick: () => app.print("comparison") }, "Print the comparison");
  const full = element("div", { class: "compare-full" }, bar, columns, table, element("p", { class: "actions" }, print));
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
      setChildren(table, [comparisonTable(app, state, state.configurations.map((one) => app.ask.answer(one)))]);
    },
  };
}
