// Where the tape goes: a small drawing beside each measurement, from the door as it is.

import { setAttribute, shape } from "./dom.js";
import { createLayer, joined } from "./draw.js";
import { activeOf, measured } from "./state.js";
import { remembered } from "./views.js";
import { tongue } from "./words.js";

// All small drawings of a door are drawn from one draft.
const drafts = remembered(2, (/** @type {Astragal.Door} */ door, /** @type {string} */ units) =>
  Astragal.kernel.tape_draft(door, tongue(), units));

/**
 * @param {App} app
 * @param {Astragal.Field} field
 */
export function createTapePlace(app, field) {
  const layer = createLayer("place");
  const svg = shape("svg", { class: "tape-place drawing-sheet", "aria-hidden": "true", focusable: "false" }, layer.group);
  let drawn = "";

  function draw() {
    const state = app.state();
    const { door } = activeOf(state);
    const key = app.ask.doorKey(door);
    // What lies in a group that is closed is drawn once that is opened.
    if (key === drawn || svg.closest("details:not([open])")) return;
    drawn = key;
    const drawing = Astragal.kernel.tape_place(drafts(`${key} ${state.units}`, door, state.units), state.household, field, measured(state, field.id));
    setAttribute(svg, "viewBox", joined(drawing));
    layer.draw(drawing.marks);
  }

  return { node: svg, update: () => app.whenQuiet(`place ${field.id}`, draw) };
}
