// The printed sheet: drawings in true millimetres of paper, title block, figures, cautions, date and link.

const PAPER = { width: 184, height: 132 };
const SCALES = {
  mm: [[5, "1:5"], [10, "1:10"], [20, "1:20"], [25, "1:25"], [50, "1:50"], [100, "1:100"]],
  in: [[8, "1 1/2 in = 1 ft"], [12, "1 in = 1 ft"], [16, "3/4 in = 1 ft"], [24, "1/2 in = 1 ft"], [32, "3/8 in = 1 ft"], [48, "1/4 in = 1 ft"], [96, "1/8 in = 1 ft"]],
};

function scaleFor(box, units, width, height) {
  const fitting = SCALES[units].find(([scale]) => box.width / scale <= width && box.height / scale <= height);
  return fitting ?? SCALES[units][SCALES[units].length - 1];
}

function toScale(svg, box, scale) {
  svg.setAttribute("viewBox", joined(box));
  svg.setAttribute("width", `${short(box.width / scale)}mm`);
  svg.setAttribute("height", `${short(box.height / scale)}mm`);
  return svg;
}

// All three views on one paper, as they stand on the drawing table.
function sheetDrawing(app, configuration, units) {
  const drawings = app.ask.drawings(configuration, configuration.place, units);
  const { shifts, whole } = arranged(drawings);
  const groups = VIEWS.map((view) => {
    const layer = createLayer("drawn");
    layer.draw(drawings[view].marks);
    layer.group.setAttribute("transform", `translate(${short(shifts[view].dx)} ${short(shifts[view].dy)})`);
    return layer.group;
  });
  const [scale, words] = scaleFor(whole, units, PAPER.width, PAPER.height);
  const svg = toScale(shape("svg", { class: "drawing-sheet", role: "img", "aria-label": drawings.elevation.title }, groups), whole, scale);
  return { svg, words };
}

// A line to lay a ruler on: no printer is trusted to keep the scale.
function ruler(units) {
  const [length, words] = units === "mm" ? [100, "100 mm"] : [101.6, "4 in"];
  return element("p", { class: "ruler" }, element("span", { style: `width:${length}mm` }), `This line is ${words} long when the scale is true.`);
}

function titleBlock(app, configuration, scaleWords, letter) {
  const cell = (name, ...words) => element("div", {}, element("span", { class: "label" }, name), element("p", {}, words));
  const today = new Date().toLocaleDateString(document.documentElement.lang || "en", { dateStyle: "long" });
  return element("div", { class: "sheet-block" },
    cell("Covering", element("b", {}, `${letter}${familyOf(app.catalog, configuration).name}`), element("br"), choicesInWords(app.catalog, configuration).join(" · ")),
    cell("Door", element("b", {}, doorName(app.catalog, configuration.door))),
    cell("Position", sayPlace(app.catalog, configuration)),
    cell("Scale", scaleWords),
    cell("Date", today),
    cell("Showroom", document.querySelector(".wordmark")?.textContent.trim() ?? ""));
}

function sheetFigures(answer, units) {
  return element("dl", { class: "sheet-figures" }, Object.values(answer.figures).map((figure) =>
    element("div", {}, element("dt", {}, capital(figure.name)), element("dd", {}, sayFigure(figure, units)))));
}

function sheetPage(app, state, configuration, index) {
  const answer = app.ask.answer(configuration);
  const { svg, words } = sheetDrawing(app, configuration, state.units);
  const letter = state.configurations.length > 1 ? `${LETTERS[index]} · ` : "";
  const link = app.addressOf({ ...state, configurations: [configuration], active: 0 });
  const code = qrDrawing(link, "A code that holds this link");
  const verdicts = element("ul", { class: "sheet-verdicts" }, Object.values(answer.verdicts).map((one) =>
    element("li", {}, `${capital(one.name)}: `, verdictNode(one.state), one.state === "clears" ? "" : ` ${one.why}`)));
  const cautions = answer.cautions.length === 0 ? null : element("ul", { class: "sheet-cautions" },
    answer.cautions.map((one) => element("li", {}, `${one.text} (${one.source})`)));
  const body = answer.refusal !== "" ? element("p", { class: "refusal" }, answer.refusal)
    : [verdicts, sheetFigures(answer, state.units)];
  return element("article", { class: "sheet-page" },
    element("div", { class: "sheet-drawing" }, svg),
    titleBlock(app, configuration, words, letter),
    element("div", { class: "sheet-body" }, element("div", {}, body, cautions),
      element("div", { class: "sheet-link" }, code, element("p", { class: "link-words" }, link))),
    ruler(state.units));
}

function comparisonPage(app, state) {
  const drawings = comparedDrawings(app, state);
  const window = unionOf(drawings);
  const [scale, words] = scaleFor(window, state.units, PAPER.width / drawings.length - 3, 90);
  const columns = drawings.map((drawing, i) => element("div", {}, toScale(drawingNode(drawing), window, scale),
    element("p", {}, element("b", {}, `${LETTERS[i]} · ${familyOf(app.catalog, state.configurations[i]).name}`))));
  return element("article", { class: "sheet-page comparison-page" },
    element("h2", {}, "Side by side"),
    element("p", {}, `All ${sayShare(shareOf(app.catalog, activeOf(state)))}. Scale ${words}.`),
    element("div", { class: "sheet-columns" }, columns),
    comparisonTable(app, state, state.configurations.map((one) => app.ask.answer(one))),
    ruler(state.units));
}

function createSheets(app) {
  const node = element("div", { class: "sheets", "aria-hidden": "true" });
  let wanted = "sheets";
  return {
    node,
    want(what) {
      wanted = what;
    },
    fill() {
      const state = app.state();
      setChildren(node, wanted === "comparison" ? [comparisonPage(app, state)]
        : state.configurations.map((one, i) => sheetPage(app, state, one, i)));
    },
    empty() {
      wanted = "sheets";
      node.replaceChildren();
    },
  };
}
