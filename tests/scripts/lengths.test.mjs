// Lengths that are typed: what is sound moves the door, what is not waits with its reason.

import assert from "node:assert/strict";
import { test } from "node:test";

import { presetValue, textOf, withDoorWord, withPresetLength, withTyped } from "../../themes/shared/js/measuring.js";
import { activeOf, measured, stateFrom, withUnits } from "../../themes/shared/js/state.js";

const { kernel, catalog } = Astragal;
const fresh = (units) => withUnits(stateFrom(kernel.decode("", catalog).state), units);
const GLASS = kernel.field_called("glass_width");
const LEVEL = kernel.field_called("household.outside_level");

test("a length is taken in the page's units or in its own", () => {
  for (const [units, text, mm] of [
    ["in", "22 1/2", 571.5], ["in", "571 mm", 571], ["in", "22,5", 571.5], ["in", "22½", 571.5],
    ["mm", "571", 571], ["mm", "22 1/2 in", 571.5], ["mm", "22 1/2", 571.5], ["mm", "57,1 cm", 571],
  ]) {
    const state = withTyped(fresh(units), GLASS, text);
    assert.ok(Math.abs(measured(state, GLASS.id) - mm) < 1e-9, `${text}: ${measured(state, GLASS.id)}`);
    assert.deepEqual(state.drafts, {});
  }
});

test("what was typed stays as it was typed until something else changes the length", () => {
  const typed = withTyped(fresh("in"), GLASS, "22.5");
  assert.equal(textOf(typed, GLASS.id), "22.5");
  const again = withPresetLength(catalog, typed, GLASS.id);
  assert.equal(textOf(again, GLASS.id), kernel.write_length(presetValue(catalog, again, GLASS.id), catalog.words, "in"));
});

test("what is no length waits in its field, and the door keeps the last sound one", () => {
  const before = withTyped(fresh("in"), GLASS, "22");
  for (const text of ["", "wide", "22 5/4", "--22", "1e3"]) {
    const state = withTyped(before, GLASS, text);
    assert.equal(measured(state, GLASS.id), measured(before, GLASS.id), text);
    assert.equal(textOf(state, GLASS.id), text);
    assert.notEqual(state.drafts[GLASS.id].why, "");
  }
});

test("a length out of its limits is refused with the limits", () => {
  const state = withTyped(fresh("in"), GLASS, "2");
  assert.match(state.drafts[GLASS.id].why, /must lie/);
});

test("a sound length ends the waiting", () => {
  const state = withTyped(withTyped(fresh("in"), GLASS, "wide"), GLASS, "23");
  assert.deepEqual(state.drafts, {});
});

test("a minus is a minus", () => {
  const state = withTyped(fresh("in"), LEVEL, "-300 mm");
  assert.equal(measured(state, LEVEL.id), -300);
});

test("a door that gets a new part gets it in a usual size", () => {
  const state = fresh("in");
  const single = withDoorWord(state, "layout", "single");
  const pair = withDoorWord(single, "layout", "sidelights");
  assert.ok(activeOf(pair).door.sidelight_width > 0);
});

test("a door cannot be given words that contradict its measurements", () => {
  const state = fresh("in");
  assert.equal(withDoorWord(state, "muntin_columns", 400), state);
});
