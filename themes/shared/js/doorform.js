// Your door: start from one like it, then correct what the tape says otherwise.

import { element, setText } from "./dom.js";
import { isPair } from "./fields.js";
import { fieldOf } from "./lengthfield.js";
import { radioGroup } from "./radio.js";
import { activeOf, onSameDoor } from "./state.js";
import { doorThumb } from "./thumb.js";
import { _, _several, doorName } from "./words.js";

/** @param {App} app */
function doorCards(app) {
  const cards = Object.values(app.catalog.doors).map((door) => {
    const input = element("input", { type: "radio", name: "door", value: door.id, onchange: () => app.pickDoor(door.id) });
    return { door, input, label: element("label", { class: "card" }, input, doorThumb(door), element("span", {}, door.name)) };
  });
  return {
    node: element("div", { class: "cards door-cards" }, cards.map((card) => card.label)),
    show(/** @type {string} */ id) {
      cards.forEach((card) => (card.input.checked = card.door.id === id));
    },
  };
}

/** @param {App} app */
function handlePicker(app) {
  const select = element("select", { id: "field-handle", onchange: () => app.pickHandle(select.value) },
    Object.values(app.catalog.handles).map((handle) => element("option", { value: handle.id }, handle.name)));
  const passive = element("input", { type: "checkbox", onchange: () => app.setWord("passive_handle", passive.checked) });
  const passiveRow = element("label", { class: "tick-row" }, passive, element("span", {}, _("The other leaf has a handle too")));
  return {
    node: element("div", { class: "length wide" },
      element("label", { for: select.id }, _("A handle like")),
      element("span", { class: "entry" }, select), passiveRow),
    update(/** @type {Astragal.Door} */ door) {
      select.value = door.handle.id;
      passive.checked = door.passive_handle;
      passiveRow.hidden = !isPair(door);
    },
  };
}

/**
 * @param {string} title
 * @param {HTMLElement[]} first
 * @param {HTMLElement[]} more
 * @param {string} moreTitle
 */
function lengthGroup(title, first, more, moreTitle) {
  const rest = more.length === 0 ? null : element("details", { class: "more" },
    element("summary", {}, moreTitle), element("div", { class: "length-grid" }, more));
  return element("fieldset", { class: "lengths" }, element("legend", {}, title),
    first.length === 0 ? null : element("div", { class: "length-grid" }, first), rest);
}

/**
 * @param {App} app
 * @returns {DoorForm}
 */
export function createDoorForm(app) {
  const cards = doorCards(app);
  const chosen = element("strong");
  const chooser = element("details", { class: "chooser" },
    element("summary", {}, element("span", { class: "label" }, _("A door like yours")), chosen),
    element("fieldset", { class: "plain-set" }, element("legend", { class: "unseen" }, _("A door like yours")), cards.node));
  const words = Object.entries(Astragal.kernel.door_words()).map(([id, { name, options }]) =>
    ({ id, group: radioGroup(id, name, Object.entries(options), (value) => app.setWord(id, value)) }));
  const handle = handlePicker(app);
  const together = element("p", { class: "note" });
  const groups = element("div", { class: "length-groups" });
  const node = element("section", { class: "panel", "aria-labelledby": "panel-door" },
    element("h2", { id: "panel-door" }, _("Your door")), chooser, together,
    element("div", { class: "eithers" }, words.map((one) => one.group.node)), groups);
  /** @type {PagePart[]} */
  let fields = [];
  let built = "";

  /** @param {Astragal.Door} door */
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
      words.forEach(({ id, group }) => group.show(/** @type {any} */ (door)[id]));
      handle.update(door);
      fields.forEach((field) => field.update(state, true));
      const count = onSameDoor(state).filter(Boolean).length;
      together.hidden = count < 2;
      setText(together, _several(
        "{count} of the compared configurations stands on this door: a correction here corrects it.",
        "{count} of the compared configurations stand on this door: a correction here corrects them all.", { count }));
    },
  };
}
