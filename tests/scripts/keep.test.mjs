// Doors that a device keeps: known again by every measurement, called by the name they were given.

import assert from "node:assert/strict";
import { test } from "node:test";

import { askedOnMine, calledDoor, isRead, keptAs, keptConfiguration, keptLink, keptName } from "../../themes/shared/js/keep.js";
import { activeOf, linked, stateFrom, withAnother, withFamily, withPreset, withShown } from "../../themes/shared/js/state.js";
import { withTyped } from "../../themes/shared/js/measuring.js";

const { kernel, catalog } = Astragal;
const fresh = () => stateFrom(kernel.decode("", catalog).state);
const linkOf = (state) => kernel.encode(linked(state), catalog);
const typed = (text) => withTyped(fresh(), kernel.field_called("glass_width"), text);
const keep = (doors, mine = "") => (Astragal.kept = { read: () => ({ doors, mine, marks: [] }) });

test("the door that goes along is the one called mine, or none", () => {
  const doors = ["a", "b", "c"].map((id) => ({ id, name: "", link: `link of ${id}` }));
  for (const { id, link } of doors) {
    keep(doors, id);
    assert.equal(keptLink(), link);
  }
  keep(doors, "z");
  assert.equal(keptLink(), "");
});

test("a door is the kept one of the same measurements, and no other", () => {
  const doors = ["22", "22 1/16", "23"].map((text) => ({ id: text, name: "", link: linkOf(typed(text)) }));
  keep([{ id: "spoilt", name: "Spoilt", link: "2/in/nowhere/zzzz" }, ...doors]);
  for (const { id } of doors) assert.equal(keptAs(activeOf(typed(id)).door)?.id, id);
  assert.equal(keptAs(activeOf(typed("22 1/32")).door), undefined);
  assert.equal(keptAs(activeOf(withPreset(catalog, fresh(), Object.keys(catalog.doors).at(-1))).door), undefined);
});

test("a length that is no whole part of what a link spells is known again", () => {
  const { door } = activeOf(typed("22"));
  keep([{ id: "one", name: "", link: linkOf(typed("22")) }]);
  assert.equal(keptAs({ ...door, glass_width: door.glass_width + 1e-9 })?.id, "one");
});

test("a door is called by its kept name, or else as the showroom calls it", () => {
  const { door } = activeOf(typed("22"));
  keep([{ id: "one", name: "Garden side", link: linkOf(typed("22")) }]);
  assert.equal(calledDoor(catalog, door), "Garden side");
  keep([{ id: "one", name: "", link: linkOf(typed("22")) }]);
  const unnamed = calledDoor(catalog, door);
  keep([]);
  assert.equal(unnamed, calledDoor(catalog, door));
  assert.notEqual(unnamed, "");
  assert.deepEqual([keptName({ name: "Garden side" }), keptName({ name: "" })], ["Garden side", "My door"]);
});

test("a kept link is worked on where it was left, and a spoilt one is nobody's door", () => {
  const families = Object.keys(catalog.families).slice(0, 2);
  const pair = withFamily(catalog, withAnother(withFamily(catalog, fresh(), families[0])), families[1]);
  families.forEach((family, i) => assert.equal(keptConfiguration(linkOf(withShown(pair, i))).family, family));
  assert.ok(isRead(linkOf(pair)));
  assert.ok(!isRead("2/in/nowhere/zzzz"));
});

test("an address asks for coverings on my door only where it says so", () => {
  assert.deepEqual(askedOnMine("mine/roller-shade+plisse"), ["roller-shade", "plisse"]);
  assert.deepEqual(askedOnMine("mine/roller-shade"), ["roller-shade"]);
  for (const other of ["", "roller-shade", linkOf(fresh()), "not/mine/roller-shade"]) assert.equal(askedOnMine(other), null);
});
