// Your door: start from one like it, then correct what the tape says otherwise.

import { element, setChildren, setText } from "./dom.js";
import { isPair, leafHeight, leafWidth } from "./fields.js";
import { fieldOf } from "./lengthfield.js";
import { radioGroup } from "./radio.js";
import { activeOf, onSameDoor } from "./state.js";
import { doorThumb } from "./thumb.js";
import { _, _several, doorName, tongue } from "./words.js";

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
 * The measurements of one place that need not be taken first: a line that opens.
 * @param {Astragal.Group} group
 * @param {HTMLElement[]} nodes
 * @param {() => void} opened
 */
function moreOf(group, nodes, opened) {
  if (nodes.length === 0) return null;
  return element("details", { class: "more-lengths", "data-group": group.id, ontoggle: opened },
    element("summary", {}, element("span", {}, group.name),
      element("small", {}, _several("{count} more measurement", "{count} more measurements", { count: nodes.length }))),
    element("fieldset", { class: "lengths" }, element("legend", { class: "unseen" }, group.name),
      element("div", { class: "length-grid" }, nodes)));
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
  const origin = element("p", { class: "note" });
  const leaf = element("p", { class: "note leaf-size" });
  const groups = element("div", { class: "length-groups" });
  const node = element("section", { class: "panel", "aria-labelledby": "panel-door" },
    element("h2", { id: "panel-door" }, _("Your door")), chooser, origin, together,
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
    const open = new Set([...groups.querySelectorAll("details")].filter((one) => one.open).map((one) => one.dataset.group));
    fields = [];
    const node = (/** @type {Astragal.Field} */ field) => {
      const made = fieldOf(app, field);
      fields.push(made);
      return made.node;
    };
    const first = Astragal.kernel.deciding_fields(door);
    const ahead = first.filter((field) => !field.id.startsWith("handle"));
    const ofHandle = first.filter((field) => field.id.startsWith("handle"));
    setChildren(groups, [
      element("fieldset", { class: "lengths first-lengths" }, element("legend", {}, _("What decides most")),
        element("div", { class: "length-grid" }, ahead.map(node), handle.node, ofHandle.map(node)), leaf),
      element("p", { class: "note" }, _("All else keeps the numbers of the door above until you measure it.")),
      wanted.map((group) => moreOf(group, group.fields.filter((field) => !field.decides).map(node), showPlaces)),
    ]);
    groups.querySelectorAll("details").forEach((one) => (one.open = open.has(one.dataset.group)));
  }

  function showPlaces() {
    fields.forEach((field) => field.update(app.state(), true));
  }

  return {
    node,
    chooser,
    update(state) {
      const { door } = activeOf(state);
      const sized = (/** @type {number} */ mm) => Astragal.kernel.say_length(mm, tongue(), state.units);
      build(door);
      cards.show(door.id);
      setText(chosen, doorName(app.catalog, door));
      setText(origin, _("Until you measure, the numbers are those of this door: {source}. Those that come from elsewhere are marked.",
        { source: app.catalog.presets[door.id].source }));
      setText(leaf, _("Glass, molding and all about it come to a leaf {width} wide and {height} high. If your tape says otherwise, measure once more.",
        { width: sized(leafWidth(door)), height: sized(leafHeight(door)) }));
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
