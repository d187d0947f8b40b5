// One measurement: what is typed stays as typed, what cannot be is explained beside it.

import { element, setText } from "./dom.js";
import { presetValue, textOf } from "./measuring.js";
import { activeOf, measured } from "./state.js";
import { createTapePlace } from "./tapeplace.js";
import { _, say, tongue } from "./words.js";

/**
 * The unit shown beside a text: none where the text names its own.
 * @param {string} text
 * @param {string} units
 */
function unitBeside(text, units) {
  if (/[\p{L}"'′″]/u.test(text)) return "";
  return units === "mm" ? units : _("in");
}

/**
 * @param {number} mm
 * @param {string} units
 */
function withUnit(mm, units) {
  const text = Astragal.kernel.write_length(mm, tongue(), units);
  return `${text} ${unitBeside(text, units)}`.trimEnd();
}

/**
 * Where a number comes from that nobody has measured yet, where it is not the door's own source.
 * @param {Astragal.PageCatalog} catalog
 * @param {PageState} state
 * @param {string} id
 */
function originOf(catalog, state, id) {
  const { door, measured: names } = activeOf(state);
  return names.includes(id) ? "" : catalog.presets[door.id].marks[id] ?? "";
}

/**
 * @param {App} app
 * @param {Astragal.Field} field
 * @returns {PagePart}
 */
function lengthField(app, field) {
  const id = `field-${field.id.replace(".", "-")}`;
  let entered = false;
  const input = element("input", {
    id, type: "text", autocomplete: "off", spellcheck: "false",
    "aria-describedby": `${id}-trade ${id}-origin ${id}-where ${id}-note`,
    oninput: () => app.typeLength(field, input.value),
    onchange: () => app.settle(),
    onfocus() {
      // What is typed takes the place of what stands there: nobody has to wipe it out first.
      input.select();
      app.focusField(field.id);
    },
    onpointerdown() {
      entered = document.activeElement !== input;
    },
    /** @param {MouseEvent} event */
    onmouseup(event) {
      // A browser may place the caret, and so undo the selection, as the button that entered the field is lifted.
      if (!entered) return;
      event.preventDefault();
      input.select();
      entered = false;
    },
    onblur() {
      app.focusField("");
      // A measurement that confirms the preset is no change to the browser, but belongs into the link.
      if (app.state().typed[field.id]) app.settle();
    },
  });
  const unit = element("span", { class: "unit", "aria-hidden": "true" });
  const note = element("p", { class: "field-note", id: `${id}-note` });
  const back = element("button", { type: "button", class: "text-button back", onclick: () => app.presetLength(field) });
  const origin = element("span", { class: "assumed", id: `${id}-origin` });
  const place = createTapePlace(app, field);
  const node = element("div", { class: "length drawn" }, place.node,
    element("p", { class: "length-name" }, element("label", { for: id }, field.name),
      element("span", { class: "trade", id: `${id}-trade` }, field.trade ?? ""), origin),
    element("span", { class: "entry" }, input, unit),
    element("p", { class: "where", id: `${id}-where` }, field.how), note, back);
  return {
    node,
    update(state) {
      const draft = state.drafts[field.id];
      const mm = measured(state, field.id);
      const preset = presetValue(app.catalog, state, field.id);
      const text = textOf(state, field.id);
      if (input.value !== text) input.value = text;
      const unusual = draft ? "" : say(Astragal.kernel.out_of_usual(field, mm, state.units), state.units);
      setText(unit, unitBeside(text, state.units));
      setText(note, draft ? draft.why : unusual);
      node.classList.toggle("wrong", Boolean(draft));
      node.classList.toggle("unusual", unusual !== "");
      if (draft) input.setAttribute("aria-invalid", "true");
      else input.removeAttribute("aria-invalid");
      setText(origin, originOf(app.catalog, state, field.id));
      place.update();
      back.hidden = preset === mm && !draft;
      setText(back, _("Back to {length}", { length: withUnit(preset, state.units) }));
    },
  };
}

/**
 * @param {App} app
 * @param {Astragal.Field} field
 * @returns {PagePart}
 */
function countField(app, { id, name, trade, usual, limits }) {
  const counts = Array.from({ length: (usual ?? limits)[1] }, (none, i) => String(i + 1));
  const select = element("select", { id: `field-${id}`, onchange: () => app.setWord(id, Number(select.value)) },
    counts.map((count) => element("option", { value: count }, count)));
  return {
    node: element("div", { class: "length" },
      element("p", { class: "length-name" }, element("label", { for: select.id }, name), element("span", { class: "trade" }, trade ?? "")),
      element("span", { class: "entry" }, select)),
    update(state) {
      const count = measured(state, id);
      if (count > counts.length) select.append(element("option", { value: count }, String(count)));
      select.value = String(count);
    },
  };
}

/**
 * @param {App} app
 * @param {Astragal.Field} field
 * @returns {PagePart}
 */
export function fieldOf(app, field) {
  return (field.unit === "count" ? countField : lengthField)(app, field);
}
