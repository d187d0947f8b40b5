// The state of the page: each step gives a new one and leaves the old as it was.

import assert from "node:assert/strict";
import { test } from "node:test";

import {
  activeOf, createStore, linked, MOST_CONFIGURATIONS, onSameDoor, stateFrom, withAnother, withChoice, withFamily,
  withCompared, withHandle, withoutOne, withPicking, withPlace, withPreset, withShown, withStep, withUnits,
} from "../../themes/shared/js/state.js";

const { kernel, catalog } = Astragal;
const fresh = () => stateFrom(kernel.decode("", catalog).state);
const other = (known, id) => Object.keys(known).find((each) => each !== id);

test("a state keeps what it was when the next is made of it", () => {
  const state = fresh();
  const before = structuredClone(state);
  withAnother(withHandle(catalog, withUnits(state, "mm"), other(catalog.handles, activeOf(state).door.handle.id)));
  assert.deepEqual(state, before);
});

test("a configuration is added beside the others and shown, up to the most there can be", () => {
  let state = fresh();
  for (let i = 1; i < MOST_CONFIGURATIONS; i++) state = withAnother(state);
  assert.equal(state.configurations.length, MOST_CONFIGURATIONS);
  assert.equal(state.active, MOST_CONFIGURATIONS - 1);
  assert.equal(withAnother(state), state);
});

test("the last configuration stays, and one before the active one is removed without changing which is shown", () => {
  const state = fresh();
  assert.equal(withoutOne(state, 0), state);
  const three = withAnother(withAnother(state));
  const shown = withFamily(catalog, three, other(catalog.families, activeOf(three).family));
  assert.equal(activeOf(withoutOne(shown, 0)), activeOf(shown));
});

test("another door is given to all that stand on the same one, and to no other", () => {
  const pair = withAnother(fresh());
  const id = other(catalog.doors, activeOf(pair).door.id);
  const moved = withPreset(catalog, pair, id);
  assert.deepEqual(moved.configurations.map((one) => one.door.id), [id, id]);
  const apart = { ...pair, configurations: [pair.configurations[0], { ...pair.configurations[1], door: catalog.doors[id] }] };
  assert.deepEqual(onSameDoor(apart), [false, true]);
  const corrected = withHandle(catalog, apart, other(catalog.handles, activeOf(apart).door.handle.id));
  assert.equal(corrected.configurations[0].door, apart.configurations[0].door);
});

test("another covering starts open with no choice of the one before", () => {
  const state = fresh();
  const next = withFamily(catalog, state, other(catalog.families, activeOf(state).family));
  assert.deepEqual(activeOf(next).choices, {});
  const numbers = kernel.resolve(catalog.families[activeOf(next).family], {});
  assert.deepEqual(activeOf(next).place, kernel.open_position(numbers));
});

test("a part that a choice takes away moves no more", () => {
  for (const family of Object.values(catalog.families)) {
    for (const choice of family.choices) {
      for (const option of choice.options) {
        const start = withPlace(withFamily(catalog, fresh(), family.id), { lower: 0.5, upper: 0.25, tilt: 10, coarse: false });
        const { place, choices } = activeOf(withChoice(catalog, start, choice.id, option.id));
        const moves = kernel.family_legs(family, kernel.resolve(family, choices)).map((leg) => leg.moves);
        if (!moves.includes("upper")) assert.equal(place.upper, 0, `${family.id} ${option.id}`);
        if (moves.includes("lower")) assert.equal(place.lower, 0.5, `${family.id} ${option.id}`);
      }
    }
  }
});

test("coverings are compared on the door that is worked on, as many as there can be", () => {
  const state = withHandle(catalog, fresh(), other(catalog.handles, activeOf(fresh()).door.handle.id));
  const families = Object.keys(catalog.families).slice(0, MOST_CONFIGURATIONS + 1);
  const coverings = families.map((id) => activeOf(withFamily(catalog, fresh(), id)));
  const next = withCompared(withFamily(catalog, state, families[1]), coverings);
  assert.deepEqual(next.configurations.map((one) => one.family), families.slice(0, MOST_CONFIGURATIONS));
  assert.ok(next.configurations.every((one) => one.door === activeOf(state).door));
  assert.equal(next.active, 1);
  assert.equal(next.step, "details");
});

test("one is picked from the shelf only until another step is gone to", () => {
  const picking = withPicking(withStep(fresh(), "details"));
  assert.deepEqual([picking.step, picking.picking], ["coverings", true]);
  assert.equal(withStep(picking, "coverings").picking, false);
});

test("what a link holds is no more than what anybody else should see", () => {
  assert.deepEqual(Object.keys(linked(fresh())), ["units", "active", "step", "needs", "household", "configurations"]);
});

test("followers hear each change once, and none where nothing has changed", () => {
  const store = createStore(fresh());
  const heard = [];
  store.follow((state, step) => heard.push([state.units, step]));
  store.set(store.get(), "push");
  store.set(withUnits(store.get(), "mm"), "push");
  store.set(withShown(store.get(), 0), "none");
  assert.deepEqual(heard, [["mm", "push"], ["mm", "none"]]);
});
