// What the tape takes, from what is typed to the door: a sound length moves it, anything else waits with its reason.

import { activeOf, measured, withDoor, withName } from "./state.js";
import { capital } from "./text.js";
import { _, say, tongue } from "./words.js";

/**
 * @param {Astragal.PageCatalog} catalog
 * @param {PageState} state
 * @param {string} id
 * @returns {number}
 */
export function presetValue(catalog, state, id) {
  const { door } = activeOf(state);
  const { handles, household, doors } = /** @type {any} */ (catalog);
  if (id.startsWith("handle.")) return handles[door.handle.id][id.slice(7)];
  if (id.startsWith("household.")) return household[id.slice(10)];
  return doors[door.id][id];
}

/**
 * A word or a count of the door: what it now has of new parts gets a usual size.
 * @param {PageState} state
 * @param {string} id
 * @param {string | number | boolean} value
 */
export function withDoorWord(state, id, value) {
  const { kernel } = Astragal;
  const before = activeOf(state).door;
  const door = kernel.with_new_parts(before, { ...before, [id]: value });
  return kernel.is_said(kernel.first_denied(door)) ? state : { ...withDoor(state, door, withName(activeOf(state).measured, id)), drafts: {} };
}

/**
 * @param {PageState} state
 * @param {string} id
 * @param {number} mm
 */
function withLength(state, id, mm) {
  if (id.startsWith("household.")) return { ...state, household: { ...state.household, [id.slice(10)]: mm } };
  const { door } = activeOf(state);
  if (id.startsWith("handle.")) return withDoor(state, { ...door, handle: { ...door.handle, [id.slice(7)]: mm } });
  return withDoor(state, { ...door, [id]: mm });
}

/**
 * @param {Record<string, any>} record
 * @param {string} key
 */
function withoutKey(record, key) {
  const { [key]: gone, ...rest } = record;
  return rest;
}

/**
 * Why a text cannot be this field's length; empty where it can.
 * @param {PageState} state
 * @param {Astragal.Field} field
 * @param {Astragal.Length} length
 */
function objection(state, field, { sound, fault, mm }) {
  if (!sound) {
    const advice = state.units === "mm" ? _("Write a length such as 571 or 22 1/2 in.") : _("Write a length such as 22 1/2, 22.5 or 571 mm.");
    const slip = say(fault, state.units);
    return slip === "" ? advice : _("{fault}. {advice}", { fault: slip, advice });
  }
  const { kernel } = Astragal;
  const reason = say(kernel.out_of_limits(field, mm, state.units), state.units)
    || say(kernel.first_denied(activeOf(withLength(state, field.id, mm)).door), state.units);
  return reason === "" ? "" : _("{reason} The drawing keeps the last sound measurement.", { reason });
}

/**
 * Takes what was typed: a sound length moves the door, anything else waits in the field with its reason.
 * @param {PageState} state
 * @param {Astragal.Field} field
 * @param {string} text
 */
export function withTyped(state, field, text) {
  const length = Astragal.kernel.written_length(text, state.units);
  const why = objection(state, field, length);
  if (why) return { ...state, drafts: { ...state.drafts, [field.id]: { text, why } } };
  const { mm } = length;
  const typed = { ...state.typed, [field.id]: { text, units: state.units, mm } };
  const next = withLength(state, field.id, mm);
  const { door, measured: names } = activeOf(next);
  return { ...withDoor(next, door, withName(names, field.id)), typed, drafts: withoutKey(state.drafts, field.id) };
}

/**
 * @param {Astragal.PageCatalog} catalog
 * @param {PageState} state
 * @param {string} id
 */
export function withPresetLength(catalog, state, id) {
  const next = withLength(state, id, presetValue(catalog, state, id));
  const { door, measured: names } = activeOf(next);
  const others = names.filter((name) => name !== id);
  return { ...withDoor(next, door, others), typed: withoutKey(state.typed, id), drafts: withoutKey(state.drafts, id) };
}

/**
 * @param {PageState} state
 * @param {string} id
 */
export function textOf(state, id) {
  if (state.drafts[id]) return state.drafts[id].text;
  const mm = measured(state, id);
  const typed = state.typed[id];
  if (typed && typed.mm === mm && typed.units === state.units) return typed.text;
  return Astragal.kernel.write_length(mm, tongue(), state.units);
}

/**
 * @param {App} app
 * @returns {Measuring}
 */
export function createMeasuring(app) {
  return {
    setWord(id, value) {
      const next = withDoorWord(app.state(), id, value);
      if (next === app.state()) app.refuse();
      else app.change(next, "push");
    },
    typeLength: (field, text) => app.change(withTyped(app.state(), field, text), "none"),
    presetLength: (field) => app.change(withPresetLength(app.catalog, app.state(), field.id), "push"),
  };
}
