// Verdicts by word and shape: a full disc clears, a half disc is guided by hand, a triangle warns, a struck square is blocked.

function verdictShape(state) {
  const marks = {
    clears: [shape("circle", { class: "full", cx: 10, cy: 10, r: 8 })],
    "guide by hand": [shape("circle", { cx: 10, cy: 10, r: 8 }), shape("path", { class: "full", d: "M10 2a8 8 0 0 1 0 16z" })],
    caution: [shape("path", { d: "M10 2.5L18.2 17H1.8z" }), shape("path", { d: "M10 8v4.5M10 14v1.2" })],
  };
  const struck = [shape("rect", { x: 2.5, y: 2.5, width: 15, height: 15 }), shape("path", { d: "M2.5 17.5l15-15" })];
  return shape("svg", { viewBox: "0 0 20 20", "aria-hidden": "true", focusable: "false" }, marks[state] ?? struck);
}

function verdictNode(state, about = "") {
  return element("span", { class: `verdict ${state.replaceAll(" ", "-")}` },
    verdictShape(state),
    about ? element("span", { class: "unseen" }, `${about}: `) : null,
    state);
}

function capital(text) {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function sayFigure(figure, units) {
  return Astragal.kernel.say_value(figure.value, figure.unit, units);
}

function doorName(catalog, door) {
  const name = catalog.doors[door.id].name;
  return isCorrected(catalog, door) ? `${name}, as measured` : name;
}

function choicesInWords(catalog, configuration) {
  return familyOf(catalog, configuration).choices.map((choice) => {
    const picked = choice.options.find((option) => option.id === configuration.choices[choice.id]);
    return `${choice.name}: ${(picked ?? choice.options[0]).name}`;
  });
}
