// Your door: start from one like it, then correct what the tape says otherwise.

function radioGroup(name, legend, options, pick) {
  const inputs = options.map(([value, words]) => {
    const input = element("input", { type: "radio", name, value, onchange: () => pick(value) });
    return { value, input, label: element("label", {}, input, element("span", {}, words)) };
  });
  return {
    node: element("fieldset", { class: "either" },
      element("legend", {}, legend),
      element("div", { class: "either-options" }, inputs.map((one) => one.label))),
    show(value) {
      inputs.forEach((one) => (one.input.checked = one.value === value));
    },
  };
}

function doorCards(app) {
  const cards = Object.values(app.catalog.doors).map((door) => {
    const input = element("input", { type: "radio", name: "door", value: door.id, onchange: () => app.pickDoor(door.id) });
    return { door, input, label: element("label", { class: "card" }, input, doorThumb(door), element("span", {}, door.name)) };
  });
  return {
    node: element("div", { class: "cards door-cards" }, cards.map((card) => card.label)),
    show(id) {
      cards.forEach((card) => (card.input.checked = card.door.id === id));
    },
  };
}

function handlePicker(app) {
  const select = element("select", { id: "field-handle", onchange: () => app.pickHandle(select.value) },
    Object.values(app.catalog.handles).map((handle) => element("option", { value: handle.id }, handle.name)));
  const passive = element("input", { type: "checkbox", onchange: () => app.setWord("passive_handle", passive.checked) });
  const passiveRow = element("label", { class: "tick-row" }, passive, element("span", {}, "The other leaf has a handle too"));
  return {
    node: element("div", { class: "length wide" },
      element("label", { for: select.id }, "A handle like"),
      element("span", { class: "entry" }, select), passiveRow),
    update(door) {
      select.value = door.handle.id;
      passive.checked = door.passive_handle;
      passiveRow.hidden = !isPair(door);
    },
  };
}

function lengthGroup(title, first, more, moreTitle) {
  const rest = more.length === 0 ? null : element("details", { class: "more" },
    element("summary", {}, moreTitle), element("div", { class: "length-grid" }, more));
  return element("fieldset", { class: "lengths" }, element("legend", {}, title),
    first.length === 0 ? null : element("div", { class: "length-grid" }, first), rest);
}

function createDoorForm(app) {
  const cards = doorCards(app);
  const chosen = element("strong");
  const chooser = element("details", { class: "chooser" },
    element("summary", {}, element("span", { class: "label" }, "A door like yours"), chosen),
    element("fieldset", { class: "plain-set" }, element("legend", { class: "unseen" }, "A door like yours"), cards.node));
  const words = Object.entries(Astragal.kernel.door_words()).map(([id, { name, options }]) =>
    [id, radioGroup(id, name, Object.entries(options), (value) => app.setWord(id, value))]);
  const handle = handlePicker(app);
  const together = element("p", { class: "note" });
  const groups = element("div", { class: "length-groups" });
  const node = element("section", { class: "panel", "aria-labelledby": "panel-door" },
    element("h2", { id: "panel-door" }, "Your door"), chooser, together,
    element("div", { class: "eithers" }, words.map(([, one]) => one.node)), groups);
  let fields = [];
  let built = "";

  function build(door) {
    const wanted = Astragal.kernel.asked_groups(door);
    const key = wanted.flatMap((group) => group.fields.map((field) => field.id)).join();
    if (key === built) return;
    built = key;
    const opened = [...groups.querySelectorAll("details")].map((one) => one.open);
    fields = [];
    groups.replaceChildren(...wanted.map((group) => {
      const made = group.fields.map((field) => fieldOf(app, field));
      fields.push(...made);
      const nodes = made.map((one) => one.node);
      const first = nodes.slice(0, group.first);
      return lengthGroup(group.name, group.id === "handle" ? [handle.node, ...first] : first, nodes.slice(group.first), group.more);
    }));
    groups.querySelectorAll("details").forEach((one, i) => (one.open = opened[i] ?? false));
  }

  return {
    node,
    chooser,
    update(state) {
      const { door } = activeOf(state);
      build(door);
      cards.show(door.id);
      setText(chosen, doorName(app.catalog, door));
      words.forEach(([id, one]) => one.show(door[id]));
      handle.update(door);
      fields.forEach((field) => field.update(state));
      const shared = onSameDoor(state).filter(Boolean).length;
      together.hidden = shared < 2;
      setText(together, `${shared} of the compared configurations stand on this door: a correction here corrects them all.`);
    },
  };
}
