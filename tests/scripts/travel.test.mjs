// The travel: shares along a leg and back, for every covering there is.

import assert from "node:assert/strict";
import { test } from "node:test";

import { activeOf, closedPlace, endPlace, legsOf, openPlace, stateFrom, withFamily, withPlace } from "../../themes/shared/js/state.js";
import { partAt, samePlace, sayPlace, shareAlong, valueAlong } from "../../themes/shared/js/travel.js";
import { placeAtShare, sayShare, shareOf } from "../../themes/shared/js/way.js";

const { kernel, catalog } = Astragal;
const first = stateFrom(kernel.decode("", catalog).state);
const each = Object.keys(catalog.families).map((id) => withFamily(catalog, first, id));

test("a share along a leg is found again at its place", () => {
  for (const state of each) {
    const one = activeOf(state);
    const legs = legsOf(catalog, one);
    for (const leg of legs) {
      for (const share of [0, 0.25, 0.5, 1]) {
        const place = { ...leg.start, [leg.moves]: valueAlong(leg, share) };
        assert.ok(Math.abs(shareAlong(leg, place) - share) < 2e-3, `${one.family} ${leg.moves} ${share}`);
      }
    }
  }
});

test("no hand moves a part past the ends of its way", () => {
  for (const state of each) {
    for (const leg of legsOf(catalog, activeOf(state))) {
      assert.equal(valueAlong(leg, -2), valueAlong(leg, 0));
      assert.equal(valueAlong(leg, 3), valueAlong(leg, 1));
      assert.ok(Math.abs(valueAlong(leg, 1) - partAt(leg.end, leg.moves)) <= 5e-4);
    }
  }
});

test("open and closed are the ends of one share for all coverings", () => {
  for (const state of each) {
    const one = activeOf(state);
    if (legsOf(catalog, one).length === 0) continue;
    assert.equal(shareOf(catalog, { ...one, place: openPlace(catalog, one) }), 0, one.family);
    assert.equal(shareOf(catalog, { ...one, place: closedPlace(catalog, one) }), 1, one.family);
    assert.ok(samePlace(placeAtShare(catalog, one, 0), openPlace(catalog, one)), one.family);
    assert.ok(samePlace(placeAtShare(catalog, one, 1), closedPlace(catalog, one)), one.family);
    for (const share of [0, 0.5, 0.95, 1]) {
      const there = shareOf(catalog, { ...one, place: placeAtShare(catalog, one, share) });
      assert.ok(Math.abs(there - share) < 1e-3, `${one.family} ${share}`);
    }
  }
});

test("the words for a place differ from end to end", () => {
  for (const state of each) {
    const one = activeOf(state);
    if (legsOf(catalog, one).length === 0) continue;
    const at = (end) => sayPlace(catalog, activeOf(withPlace(state, endPlace(catalog, one, end))));
    assert.notEqual(at("open"), at("closed"), one.family);
  }
  assert.deepEqual([0, 0.4, 1].map(sayShare), ["open", "40% closed", "closed"]);
});
