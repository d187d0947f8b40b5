// Links that are damaged, old or strange: the page opens with what can be read of them, and says what it could not.

import assert from "node:assert/strict";
import { test } from "node:test";

import { withTyped } from "../../themes/shared/js/measuring.js";
import { activeOf, linked, stateFrom, withAnother, withFamily } from "../../themes/shared/js/state.js";

const { kernel, catalog } = Astragal;
const opened = (fragment) => kernel.decode(fragment, catalog);
const fresh = () => stateFrom(opened("").state);
const GLASS = kernel.field_called("glass_width");

function twoMeasured() {
  const one = withTyped(fresh(), GLASS, "23");
  const family = Object.keys(catalog.families).find((id) => id !== activeOf(one).family && !catalog.families[id].retired);
  return withFamily(catalog, withAnother(one), family);
}

// What a state is drawn from.
function parts(state) {
  return state.configurations.map(({ door, family }) => [door.id, door.glass_width, family]);
}

test("a link opens as the state that it was made of", () => {
  const state = twoMeasured();
  const { state: again, problems } = opened(kernel.encode(linked(state), catalog));
  assert.deepEqual(problems, []);
  assert.deepEqual(parts(again), parts(state));
  assert.deepEqual(again.household, state.household);
});

test("nothing opens with the showroom's own beginning, and without a word", () => {
  assert.deepEqual(opened("").problems, []);
  assert.deepEqual(parts(opened("").state), parts(fresh()));
});

test("a link that is cut short anywhere opens with a drawing", () => {
  const whole = kernel.encode(linked(twoMeasured()), catalog);
  for (let length = 0; length < whole.length; length++) {
    const { state } = opened(whole.slice(0, length));
    const one = activeOf(stateFrom(state));
    const answer = kernel.ask_fit(kernel.hung(one.door, catalog.families[one.family], one.choices), state.household);
    assert.equal(typeof kernel.is_said(answer.refusal), "boolean");
  }
});

test("a link with a letter wrong opens, and a strange one is told of", () => {
  const whole = kernel.encode(linked(twoMeasured()), catalog);
  for (let at = 0; at < whole.length; at++) assert.ok(activeOf(opened(`${whole.slice(0, at)}~${whole.slice(at + 1)}`).state));
  for (const strange of ["?", "2/in", "no/such/thing", "1/in/no-such-door:no-such-covering"]) {
    assert.notEqual(opened(strange).problems.length, 0, strange);
  }
});

test("what a door measures outlives a covering that is gone", () => {
  const state = withTyped(fresh(), GLASS, "23");
  const { [activeOf(state).family]: _, ...families } = catalog.families;
  const opening = [catalog.opening[0], Object.keys(families)[0]];
  const { state: again, problems } = kernel.decode(kernel.encode(linked(state), catalog), { ...catalog, families, opening });
  assert.notEqual(problems.length, 0);
  assert.ok(families[activeOf(again).family]);
  assert.equal(activeOf(again).door.glass_width, activeOf(state).door.glass_width);
});
