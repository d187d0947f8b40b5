// Your door: start from one like it, then correct what the tape says otherwise.

function doorThumb(door) {
  const width = door.stile_hinge + door.stile_latch + door.glass_width + door.bead_width * 2;
  const height = door.rail_top + door.rail_bottom + door.glass_height + door.bead_width * 2;
  const left = door.hinge_side === "left";
  const paths = [leafThumb(door, 0, width, height, left)];
  let from = 0;
  let to = width;
  if (door.layout === "pair" || door.layout === "fixed-pair") {
    paths.push(leafThumb(door, left ? width : -width, width, height, !left));
    if (left) to += width;
    else from -= width;
  }
  if (door.layout === "sidelights") {
    const side = (door.sidelight_width - door.sidelight_glass_width) / 2;
    for (const x of [-door.sidelight_width, width]) {
      paths.push(boxPath(x, 0, door.sidelight_width, height));
      paths.push(boxPath(x + side, door.rail_top, door.sidelight_glass_width, door.glass_height));
    }
    from -= door.sidelight_width;
    to += door.sidelight_width;
  }
  const axis = left ? width - door.backset : door.backset;
  return shape("svg", { class: "door-thumb", viewBox: `${from - 30} -30 ${to - from + 60} ${height + 60}`, "aria-hidden": "true", focusable: "false" },
    shape("path", { d: paths.join("") }),
    shape("circle", { cx: axis, cy: height + door.floor_gap - door.handle_height, r: 34 }));
}

function boxPath(x, y, width, height) {
  return `M${short(x)} ${short(y)}h${short(width)}v${short(height)}h${short(-width)}z`;
}

function leafThumb(door, x, width, height, hingeLeft) {
  const glassX = x + (hingeLeft ? door.stile_hinge : door.stile_latch) + door.bead_width;
  const glassY = door.rail_top + door.bead_width;
  let d = boxPath(x, 0, width, height) + boxPath(glassX, glassY, door.glass_width, door.glass_height);
  for (let i = 1; i < door.muntin_columns; i++) d += `M${short(glassX + door.glass_width * i / door.muntin_columns)} ${short(glassY)}v${short(door.glass_height)}`;
  for (let i = 1; i < door.muntin_rows; i++) d += `M${short(glassX)} ${short(glassY + door.glass_height * i / door.muntin_rows)}h${short(door.glass_width)}`;
  return d;
}

function radioGroup(app, name, legend, options, pick) {
  const inputs = options.map(([value, words]) => {
    const input = element("input", { type: "radio", name, value, onchange: () => pick(value) });
    return { value, input, label: element("label", {}, input, element("span", {}, words)) };
  });
  const node = element("fieldset", { class: "either" },
    element("legend", {}, legend),
    element("div", { class: "either-options" }, inputs.map((one) => one.label)));
  return {
    node,
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

function lengthField(app, field) {
  const id = `field-${field.id.replace(".", "-")}`;
  const input = element("input", {
    id, type: "text", inputmode: "text", autocomplete: "off", spellcheck: "false",
    "aria-describedby": `${id}-where ${id}-note`,
    oninput: () => app.type(field.id, input.value),
    onchange: () => app.leaveField(field.id),
    onfocus: () => app.focusField(field.id),
    onblur: () => app.focusField(null),
  });
  const unit = element("span", { class: "unit", "aria-hidden": "true" });
  const note = element("p", { class: "field-note", id: `${id}-note` });
  const back = element("button", { type: "button", class: "back", onclick: () => app.presetField(field.id) });
  const node = element("div", { class: "length" },
    element("label", { for: id }, field.name),
    element("span", { class: "entry" }, input, unit),
    element("p", { class: "where", id: `${id}-where` }, field.where),
    note, back);
  return {
    node,
    update(state, door, preset) {
      showLength(state, field, measured(door, field.id), { input, unit, note, node });
      const was = measured(preset, field.id);
      back.hidden = was === measured(door, field.id) && !state.drafts[field.id];
      setText(back, `Back to ${writeLength(was, state.units)} ${state.units}`);
    },
  };
}

function showLength(state, field, mm, { input, unit, note, node }) {
  const draft = state.drafts[field.id];
  const text = textOf(state, field.id, mm);
  if (input.value.trim() !== text.trim() && (document.activeElement !== input || !draft)) input.value = text;
  const unusual = draft ? "" : unlikely(field, mm, state.units);
  setText(unit, /[a-z"']/i.test(input.value) ? "" : state.units);
  setText(note, draft ? draft.why : unusual);
  node.classList.toggle("wrong", Boolean(draft));
  node.classList.toggle("unusual", unusual !== "");
  if (draft) input.setAttribute("aria-invalid", "true");
  else input.removeAttribute("aria-invalid");
}

function countField(app, id, name) {
  const [least, most] = LITE_COUNTS[id];
  const input = element("select", { id: `field-${id}`, onchange: () => app.measure(id, Number(input.value)),
    onfocus: () => app.focusField(id), onblur: () => app.focusField(null) },
  Array.from({ length: most - least + 1 }, (_, i) => element("option", { value: least + i }, String(least + i))));
  return {
    node: element("div", { class: "length" }, element("label", { for: input.id }, name), element("span", { class: "entry" }, input)),
    update(state, door) {
      input.value = String(door[id]);
    },
  };
}

function fieldSection(title, first, more) {
  return element("fieldset", { class: "lengths" },
    element("legend", {}, title),
    element("div", { class: "length-grid" }, first),
    more.length === 0 ? null : element("details", { class: "more" },
      element("summary", {}, "More measurements"),
      element("div", { class: "length-grid" }, more)));
}

function handlePicker(app) {
  const select = element("select", { id: "field-handle", onchange: () => app.pickHandle(select.value),
    onfocus: () => app.focusField("handle"), onblur: () => app.focusField(null) },
  Object.values(app.catalog.handles).map((handle) => element("option", { value: handle.id }, handle.name)));
  const passive = element("input", { type: "checkbox", id: "field-passive", onchange: () => app.measure("passive_handle", passive.checked) });
  const passiveRow = element("label", { class: "tick-row" }, passive, "The other leaf has a handle too");
  return {
    node: element("div", { class: "handle-pick" },
      element("div", { class: "length" }, element("label", { for: select.id }, "Handle like"), element("span", { class: "entry" }, select)),
      passiveRow),
    update(state, door) {
      select.value = door.handle.id;
      passive.checked = door.passive_handle;
      passiveRow.hidden = door.layout !== "pair" && door.layout !== "fixed-pair";
    },
  };
}

function createDoorForm(app) {
  const cards = doorCards(app);
  const chosen = element("strong");
  const chooser = element("details", { class: "chooser" },
    element("summary", {}, element("span", { class: "label" }, "A door like yours"), chosen),
    element("fieldset", { class: "plain-set" }, element("legend", { class: "unseen" }, "A door like yours"), cards.node));
  const layout = radioGroup(app, "layout", "Leaves", LAYOUTS, (value) => app.measure("layout", value));
  const swing = radioGroup(app, "swing", "It opens", [["in", "Into the room"], ["out", "Outwards"]], (value) => app.measure("swing", value));
  const hand = radioGroup(app, "hinge_side", "Hinges, seen from the room", [["left", "Left"], ["right", "Right"]], (value) => app.measure("hinge_side", value));
  const handle = handlePicker(app);
  const columns = countField(app, "muntin_columns", "Lites across");
  const rows = countField(app, "muntin_rows", "Lites up");
  const together = element("p", { class: "together" });
  const sections = element("div", { class: "length-sections" });
  const node = element("section", { class: "panel", "aria-labelledby": "panel-door" },
    element("h2", { id: "panel-door" }, "Your door"),
    chooser, together,
    element("div", { class: "eithers" }, layout.node, swing.node, hand.node),
    sections);
  let fields = [];
  let built = "";

  function build(door) {
    const groups = fieldGroups(door);
    const key = Object.values(groups).flat().map((field) => field.id).join();
    if (key === built) return;
    const opened = [...sections.querySelectorAll("details")].map((one) => one.open);
    built = key;
    const made = Object.fromEntries(Object.entries(groups).map(([name, list]) => [name, list.map((field) => lengthField(app, field))]));
    fields = Object.values(made).flat();
    const nodes = (list) => list.map((one) => one.node);
    sections.replaceChildren(
      fieldSection("The glass", nodes(made.glass.slice(0, 2)), [...nodes(made.glass.slice(2)), columns.node, rows.node]),
      fieldSection("The leaf around it", nodes(made.leaf.slice(0, 2)), nodes(made.leaf.slice(2))),
      fieldSection("The handle", [handle.node, ...nodes(made.handle.slice(0, 2))], nodes(made.handle.slice(2))),
      fieldSection("The opening and the room", nodes(made.around.slice(0, 1)), nodes(made.around.slice(1))));
    sections.querySelectorAll("details").forEach((one, i) => (one.open = opened[i] ?? false));
  }

  return {
    node,
    openChooser() {
      chooser.open = true;
    },
    closeChooser() {
      chooser.open = false;
    },
    update(state) {
      const configuration = currentOf(state);
      const door = app.ask.door(configuration);
      const preset = doorOf(app.catalog, { ...configuration, changes: {} });
      build(door);
      cards.show(configuration.door);
      const corrected = Object.keys(configuration.changes).length;
      const words = corrected === 0 ? "" : `, ${corrected} ${corrected === 1 ? "correction" : "corrections"}`;
      setText(chosen, app.catalog.doors[configuration.door].name + words);
      layout.show(door.layout);
      swing.show(door.swing);
      hand.show(door.hinge_side);
      handle.update(state, door);
      columns.update(state, door);
      rows.update(state, door);
      fields.forEach((field) => field.update(state, door, preset));
      const shared = state.configurations.filter((one) => sameDoor(one, configuration)).length;
      setText(together, shared > 1 ? `${shared} of the compared configurations stand on this door; a correction here corrects them all.` : "");
      together.hidden = shared < 2;
    },
  };
}
