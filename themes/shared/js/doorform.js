// @ts-nocheck
// Your door: start from one like it, then correct what the tape says otherwise.

import { element, setText } from "./dom.js";
import { fieldGroups, fieldOf, isPair, LAYOUTS } from "./fields.js";
import { countField, lengthField } from "./lengthfield.js";
import { radioGroup } from "./radio.js";
import { activeOf, onSameDoor } from "./state.js";
import { doorThumb } from "./thumb.js";
import { doorName } from "./words.js";

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

export function createDoorForm(app) {
  const cards = doorCards(app);
  const chosen = element("strong");
  const chooser = element("details", { class: "chooser" },
    element("summary", {}, element("span", { class: "label" }, "A door like yours"), chosen),
    element("fieldset", { class: "plain-set" }, element("legend", { class: "unseen" }, "A door like yours"), cards.node));
  const layout = radioGroup("layout", "Leaves", LAYOUTS, (value) => app.setWord("layout", value));
  const swing = radioGroup("swing", "It opens", [["in", "Into the room"], ["out", "Outwards"]], (value) => app.setWord("swing", value));
  const hand = radioGroup("hinge_side", "Hinges, seen from the room", [["left", "Left"], ["right", "Right"]], (value) => app.setWord("hinge_side", value));
  const handle = handlePicker(app);
  const counts = [countField(app, "muntin_columns", "Lites across"), countField(app, "muntin_rows", "Lites up")];
  const together = element("p", { class: "note" });
  const groups = element("div", { class: "length-groups" });
  const node = element("section", { class: "panel", "aria-labelledby": "panel-door" },
    element("h2", { id: "panel-door" }, "Your door"), chooser, together,
    element("div", { class: "eithers" }, layout.node, swing.node, hand.node), groups);
  let fields = [];
  let built = "";

  function build(door) {
    const wanted = fieldGroups(door);
    const key = Object.values(wanted).flat().map((row) => row[0]).join();
    if (key === built) return;
    built = key;
    const opened = [...groups.querySelectorAll("details")].map((one) => one.open);
    const made = Object.fromEntries(Object.entries(wanted).map(([name, rows]) => [name, rows.map((row) => lengthField(app, fieldOf(row)))]));
    fields = Object.values(made).flat();
    const nodes = (list, from, to) => list.slice(from, to).map((one) => one.node);
    const more = "More measurements";
    groups.replaceChildren(
      lengthGroup("The glass", nodes(made.glass, 0, 2), [...nodes(made.glass, 2), ...counts.map((one) => one.node)], more),
      lengthGroup("The leaf", nodes(made.leaf, 0, 4), nodes(made.leaf, 4), more),
      lengthGroup("The handle", [handle.node, ...nodes(made.handle, 0, 2)], nodes(made.handle, 2), more),
      lengthGroup("Around the door", nodes(made.around, 0, 2), nodes(made.around, 2), more),
      lengthGroup("The people", [], nodes(made.household, 0), "Heights and distances, for reach and sight lines"));
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
      layout.show(door.layout);
      swing.show(door.swing);
      hand.show(door.hinge_side);
      handle.update(door);
      counts.forEach((one) => one.update(door));
      fields.forEach((field) => field.update(state));
      const shared = onSameDoor(state).filter(Boolean).length;
      together.hidden = shared < 2;
      setText(together, `${shared} of the compared configurations stand on this door: a correction here corrects them all.`);
    },
  };
}
