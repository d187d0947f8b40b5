// The state of the page: each step gives a new one and leaves the old as it was.

import assert from "node:assert/strict";
import { test } from "node:test";

import {
  activeOf, createStore, legsOf, linked, MOST_CONFIGURATIONS, onSameDoor, openPlace, stateFrom, withAnother, withChange, withChoice,
  withCompared, withFamily, withHandle, withNeeds, withoutOne, withPicking, withPlace, withPreset, withShown, withStep, withUnits,
  withWish,
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

test("whichever is removed, what is shown stays shown, or else what takes its place", () => {
  for (let count = 2; count <= MOST_CONFIGURATIONS; count++) {
    const configurations = Object.keys(catalog.families).slice(0, count).map((family) => ({ ...activeOf(fresh()), family }));
    for (let active = 0; active < count; active++) {
      for (let gone = 0; gone < count; gone++) {
        const next = withoutOne({ ...fresh(), configurations, active }, gone);
        assert.deepEqual(next.configurations, configurations.filter((one) => one !== configurations[gone]));
        const shown = gone === active ? configurations[gone + 1] ?? configurations[gone - 1] : configurations[active];
        assert.equal(activeOf(next), shown, `${gone} of ${count} while ${active} is shown`);
      }
    }
  }
});

test("what was typed for one is not what another measures", () => {
  const typed = { ...withAnother(fresh()), typed: { glass_width: "22 1/2" }, drafts: { glass_height: { text: "wide", why: "" } } };
  const others = [withShown(typed, 0), withoutOne(typed, 1), withPreset(catalog, typed, other(catalog.doors, activeOf(typed).door.id))];
  others.forEach((next) => assert.deepEqual([next.typed, next.drafts], [{}, {}]));
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

test("of another door nothing is measured yet, and of another handle what was measured beside it", () => {
  const state = fresh();
  const measured = ["glass_width", "handle.gap", "handle", "handle.projection", "stile"];
  const read = { ...state, configurations: [{ ...activeOf(state), measured }] };
  assert.deepEqual(activeOf(withPreset(catalog, read, other(catalog.doors, activeOf(read).door.id))).measured, []);
  const { door, measured: kept } = activeOf(withHandle(catalog, read, other(catalog.handles, activeOf(read).door.handle.id)));
  assert.deepEqual(kept, ["glass_width", "handle", "stile"]);
  assert.equal(door.handle, catalog.handles[door.handle.id]);
});

test("another covering starts open with no choice of the one before", () => {
  const state = withWish(fresh(), "width_wanted", 800);
  const next = withFamily(catalog, state, other(catalog.families, activeOf(state).family));
  assert.deepEqual([activeOf(next).choices, activeOf(next).wishes], [{}, {}]);
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
        const rest = { ...kernel.open_position(kernel.resolve(family, choices)), upper: 0 };
        for (const [part, kept] of [["lower", 0.5], ["upper", 0.25], ["tilt", 10]]) {
          assert.equal(place[part], moves.includes(part) ? kept : rest[part], `${family.id} ${option.id} ${part}`);
        }
      }
    }
  }
});

test("the same picks are another thing on another covering", () => {
  const choices = {};
  for (const family of Object.values(catalog.families)) {
    const one = { ...activeOf(fresh()), family: family.id, choices };
    const numbers = kernel.resolve(family, {});
    assert.deepEqual(legsOf(catalog, one), kernel.family_legs(family, numbers), family.id);
    assert.deepEqual(openPlace(catalog, one), kernel.open_position(numbers), family.id);
  }
});

test("a wish stands beside the others until it is given back to the mount", () => {
  const wished = withWish(withWish(fresh(), "width_wanted", 80), "spacer_wanted", 120);
  assert.deepEqual(activeOf(wished).wishes, { width_wanted: 80, spacer_wanted: 120 });
  assert.deepEqual(activeOf(withWish(wished, "width_wanted", 90)).wishes, { width_wanted: 90, spacer_wanted: 120 });
  assert.deepEqual(activeOf(withWish(wished, "width_wanted", 0)).wishes, { spacer_wanted: 120 });
});

test("a need comes after those that were told before, and goes without them", () => {
  const [first, second, third] = Object.keys(kernel.needs());
  const wanted = [third, first, second].reduce((state, need) => withNeeds(state, need, true), fresh());
  assert.deepEqual(wanted.needs, [third, first, second]);
  assert.deepEqual(withNeeds(wanted, first, false).needs, [third, second]);
  assert.deepEqual(withNeeds(wanted, second, true).needs, wanted.needs);
});

test("a change is made on what it names and nowhere else", () => {
  const state = withWish(withAnother(fresh()), "width_wanted", 80);
  const [beside, one] = state.configurations;
  const { choices: [choice] } = Object.values(catalog.families).find((family) => family.id === one.family);
  const picked = withChange(catalog, state, { picks: { [choice.id]: choice.options.at(-1).id }, numbers: {} });
  assert.equal(activeOf(picked).choices[choice.id], choice.options.at(-1).id);
  assert.deepEqual([activeOf(picked).door, activeOf(picked).measured, activeOf(picked).wishes], [one.door, one.measured, one.wishes]);
  assert.equal(picked.configurations[0], beside);
  const held = withChange(catalog, state, { picks: {}, numbers: { handle_gap: 90 } });
  assert.deepEqual([activeOf(held).choices, activeOf(held).wishes], [one.choices, one.wishes]);
  assert.deepEqual(held.configurations.map(({ door }) => door.handle.gap), [90, 90]);
  assert.deepEqual(activeOf(held).measured, ["handle.gap", "handle.projection"]);
});

test("coverings are compared on the door that is worked on, as many as there can be", () => {
  const state = withHandle(catalog, fresh(), other(catalog.handles, activeOf(fresh()).door.handle.id));
  const families = Object.keys(catalog.families).slice(0, MOST_CONFIGURATIONS + 1);
  const coverings = families.map((id, i) => activeOf(withWish(withFamily(catalog, fresh(), id), "width_wanted", 40 + i)));
  const next = withCompared(withFamily(catalog, state, families[1]), coverings);
  assert.deepEqual(next.configurations.map((one) => one.family), families.slice(0, MOST_CONFIGURATIONS));
  next.configurations.forEach((one, i) => assert.deepEqual({ ...one, door: coverings[i].door, measured: coverings[i].measured }, coverings[i]));
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
