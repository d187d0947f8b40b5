// Two copies of one visit that were both made of a third: neither's work is lost, and whoever gives way is told.

import assert from "node:assert/strict";
import { test } from "node:test";

import { mergedVisit } from "../../themes/shared/js/visitmerge.js";

const reading = (field, spot, on, typed) => ({ field, spot, on, typed });
const base = () => ({
  title: "House by the mill",
  address: { street: "Mill Lane", town: "Weir" },
  openings: [
    { id: "study", room: "Study", readings: [reading("glass_width", "top", "2026-03-12", "22")] },
    { id: "hall", room: "Hall", readings: [] },
    { id: "attic", room: "Attic", readings: [] },
  ],
  notes: ["Comes on Monday", "Comes on Monday"],
});

// What somebody does to a visit, each in a place of its own.
const EDITS = {
  "changes a text": (visit) => (visit.title = "House by the weir"),
  "writes into a part": (visit) => (visit.address.town = "Over"),
  "adds to a part": (visit) => (visit.address.floor = "2"),
  "takes out of a part": (visit) => delete visit.address.street,
  "renames an opening": (visit) => (visit.openings.find(({ id }) => id === "hall").room = "Entrance"),
  "adds an opening": (visit) => visit.openings.push({ id: "kitchen", room: "Kitchen", readings: [] }),
  "takes an opening away": (visit) => (visit.openings = visit.openings.filter(({ id }) => id !== "attic")),
  "reads at another spot": (visit) => visit.openings[0].readings.push(reading("glass_width", "bottom", "2026-03-12", "22 1/8")),
  "reads on another day": (visit) => visit.openings[0].readings.push(reading("glass_width", "top", "2026-04-02", "21 7/8")),
  "reads another measure": (visit) => visit.openings[0].readings.push(reading("glass_height", "top", "2026-03-12", "64")),
  "adds a note": (visit) => visit.notes.push("Rang twice"),
  "adds a part": (visit) => (visit.letter = { text: "Thank you" }),
};
const edited = (...names) => {
  const visit = base();
  names.forEach((name) => EDITS[name](visit));
  return visit;
};
/** A visit whatever the order of its parts. */
const anyOrder = (visit) => {
  const spelled = (value) => (Array.isArray(value) ? value.map(spelled).toSorted() : value && typeof value === "object"
    ? JSON.stringify(Object.entries(value).map(([key, part]) => [key, spelled(part)]).toSorted()) : JSON.stringify(value));
  return spelled(visit);
};

test("what only one of them has done is taken over, whichever wrote last", () => {
  for (const name of Object.keys(EDITS)) {
    assert.deepEqual(mergedVisit(base(), edited(name), base()), { value: edited(name), given: [] }, name);
    assert.deepEqual(mergedVisit(base(), base(), edited(name)), { value: edited(name), given: [] }, name);
  }
});

test("what they have done in two places is all there, and nobody gives way", () => {
  for (const one of Object.keys(EDITS)) {
    for (const other of Object.keys(EDITS)) {
      if (one === other) continue;
      const { value, given } = mergedVisit(base(), edited(one), edited(other));
      assert.equal(anyOrder(value), anyOrder(edited(one, other)), `one ${one}, the other ${other}`);
      assert.deepEqual(given, [], `one ${one}, the other ${other}`);
    }
  }
});

test("what both have done alike is done once", () => {
  for (const name of Object.keys(EDITS)) {
    assert.deepEqual(mergedVisit(base(), edited(name), edited(name)), { value: edited(name), given: [] }, name);
  }
});

test("where both have written the same, the last to write stays, and where that was is told", () => {
  const written = (text) => ({ ...base(), title: text, address: { ...base().address, town: text },
    openings: base().openings.map((opening) => ({ ...opening, readings: opening.readings.map((one) => ({ ...one, typed: text })) })) });
  const { value, given } = mergedVisit(base(), written("mine"), written("theirs"));
  assert.deepEqual(value, written("mine"));
  const paths = given.map(({ path }) => path.join("/")).toSorted();
  assert.deepEqual(paths, ["address/town", "openings/study/readings/glass_width top 2026-03-12/typed", "title"]);
  assert.ok(given.every(({ stays, gives }) => stays === "mine" && gives === "theirs"));
});

test("a part that both have begun has what either wrote into it", () => {
  const begun = (part) => ({ ...base(), letter: part });
  const { value, given } = mergedVisit(base(), begun({ text: "Thank you" }), begun({ answered: "2026-04-02" }));
  assert.deepEqual([value.letter, given], [{ answered: "2026-04-02", text: "Thank you" }, []]);
});

test("what one has taken away and the other has gone on with is not lost, and nobody gives way", () => {
  const gone = { ...base(), openings: base().openings.filter(({ id }) => id !== "hall") };
  delete gone.title;
  const on = edited("renames an opening", "changes a text");
  for (const { value, given } of [mergedVisit(base(), gone, on), mergedVisit(base(), on, gone)]) {
    assert.equal(anyOrder(value), anyOrder(on));
    assert.deepEqual(given, []);
  }
});

test("openings stand as the last to write has them, those of the other after them", () => {
  const added = (...ids) => ({ ...base(), openings: [...base().openings, ...ids.map((id) => ({ id, room: id, readings: [] }))].toReversed() });
  const { value } = mergedVisit(base(), added("loft"), { ...base(), openings: [{ id: "cellar", room: "", readings: [] }, ...base().openings] });
  assert.deepEqual(value.openings.map(({ id }) => id), ["loft", "attic", "hall", "study", "cellar"]);
});

test("a list in which one name stands twice is taken whole, and what gives way is told", () => {
  const twice = (room) => ({ openings: [{ id: "hall", room }, { id: "hall", room: "Other" }] });
  const { value, given } = mergedVisit(twice("Hall"), twice("Entrance"), twice("Porch"));
  assert.deepEqual(value, twice("Entrance"));
  assert.deepEqual(given, [{ path: ["openings"], stays: twice("Entrance").openings, gives: twice("Porch").openings }]);
});

test("a list without names that both have gone on with has the other's lines first, each once", () => {
  const noted = (...lines) => ({ ...base(), notes: [...base().notes, ...lines] });
  const { value, given } = mergedVisit(base(), noted("mine", "mine too"), noted("theirs"));
  assert.deepEqual([value, given], [noted("theirs", "mine", "mine too"), []]);
  const rewritten = { ...base(), notes: ["Comes on Tuesday"] };
  assert.deepEqual(mergedVisit(base(), rewritten, noted("theirs")).given,
    [{ path: ["notes"], stays: rewritten.notes, gives: noted("theirs").notes }]);
});
