// Words for verdicts, figures and configurations.

// The style sheet puts each state's shape before its word.
function verdictNode(state, about = "", words = state) {
  return element("span", { class: `verdict ${state.replaceAll(" ", "-")}` },
    about ? element("span", { class: "unseen" }, `${about}: `) : null, words);
}

function capital(text) {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

// What nearly everyone asks for; the rest follows on request.
const KEY_FIGURES = [
  "order_width", "order_height", "visible_glass_open", "light_closed", "view_closed",
  "stack_height", "projection_most", "handle_gap", "swing_covered", "clear_width_covered",
];

const isKey = (id) => KEY_FIGURES.includes(id);

const ENGLISH = { language: "en", said: {} };

// What the kernel tells, as it reads; nothing where it is silent.
function say(message, units) {
  return Astragal.kernel.say(message, ENGLISH, units);
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
    return `${capital(choice.name)}: ${(picked ?? choice.options[0]).name}`;
  });
}
