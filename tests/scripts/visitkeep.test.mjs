// Visits on a device: written soon, agreed upon between windows, never lost silently.

import assert from "node:assert/strict";
import { test } from "node:test";

import { createVisitKeep } from "../../themes/shared/js/visitkeep.js";
import { freshOpening, freshVisit, leafCalled, putReading, readingAt } from "../../themes/shared/js/visitmodel.js";

const { catalog } = Astragal;

/** A device that several windows share; `refuses` is the error of a device that keeps nothing, `busy` what it waits for. */
function createDevice() {
  const kept = new Map();
  const windows = [];
  const device = {
    kept,
    refuses: null,
    busy: Promise.resolve(),
    window() {
      const own = [];
      windows.push(own);
      const sure = () => {
        if (device.refuses) throw device.refuses;
      };
      return {
        async all() {
          sure();
          return [...kept.values()].map((visit) => structuredClone(visit));
        },
        async read(id) {
          sure();
          return structuredClone(kept.get(id) ?? null);
        },
        async update(id, task) {
          sure();
          await device.busy;
          const next = task(structuredClone(kept.get(id) ?? null));
          if (next) kept.set(id, structuredClone(next));
          else kept.delete(id);
          windows.filter((each) => each !== own).forEach((each) => each.forEach((follower) => follower(id)));
          return next;
        },
        follow: (follower) => own.push(follower),
      };
    },
  };
  return device;
}

/** A window in which time passes when the test says so. */
function createWindow(device) {
  const due = [];
  const keep = createVisitKeep(device.window(), (task, milliseconds) => {
    assert.ok(milliseconds < 1000);
    due.push(task);
  });
  const settled = async () => {
    for (let i = 0; i < 20; i++) await Promise.resolve();
  };
  return {
    keep,
    settled,
    async passes() {
      due.splice(0).forEach((task) => task());
      await keep.flush();
      await settled();
    },
  };
}

function houseOf(...rooms) {
  const visit = freshVisit(catalog);
  visit.openings = rooms.map((room) => ({ ...freshOpening(catalog), room }));
  return visit;
}

const widthAt = (visit, room, typed, mm) => putReading(leafCalled(visit.openings.find((one) => one.room === room), "active"),
  { field: "glass_width", spot: "top", typed, mm, how: "measured", who: "", on: "2026-03-12" });
const typedAt = (visit, room) => readingAt(leafCalled(visit.openings.find((one) => one.room === room), "active"), "glass_width", "top")?.typed;

test("what is written is on the device within a second, without anybody asking", async () => {
  const device = createDevice();
  const { keep, passes } = createWindow(device);
  const visit = houseOf("Study");
  await keep.begin(visit);
  keep.change(visit.id, (draft) => widthAt(draft, "Study", "19 7/8", 504.825));
  assert.equal(keep.state(visit.id), "writing");
  await passes();
  assert.equal(keep.state(visit.id), "kept");
  assert.equal(typedAt(device.kept.get(visit.id), "Study"), "19 7/8");
});

test("what waits for a slow device to write something else is not called kept", async () => {
  const device = createDevice();
  const { keep, settled } = createWindow(device);
  const visit = houseOf("Study");
  await keep.begin(visit);
  const gates = [];
  const busy = () => (device.busy = new Promise((open) => gates.push(open)));
  busy();
  keep.change(visit.id, (draft) => widthAt(draft, "Study", "19 7/8", 504.825));
  void keep.flush();
  await settled();
  keep.change(visit.id, (draft) => widthAt(draft, "Study", "19 3/4", 501.65));
  const all = keep.flush();
  busy();
  gates[0]();
  await settled();
  assert.equal(keep.state(visit.id), "writing");
  assert.equal(typedAt(device.kept.get(visit.id), "Study"), "19 7/8");
  gates[1]();
  await all;
  assert.equal(keep.state(visit.id), "kept");
  assert.equal(typedAt(device.kept.get(visit.id), "Study"), "19 3/4");
});

test("a second visit does not touch the first", async () => {
  const device = createDevice();
  const { keep, passes } = createWindow(device);
  const [one, other] = [houseOf("Study"), houseOf("Hall")];
  await keep.begin(one);
  await keep.begin(other);
  keep.change(other.id, (draft) => widthAt(draft, "Hall", "25 1/8", 638.175));
  await passes();
  assert.deepEqual(device.kept.get(one.id), one);
  assert.equal((await keep.list()).length, 2);
});

test("two windows that write different doors of one visit both keep theirs", async () => {
  const device = createDevice();
  const [left, right] = [createWindow(device), createWindow(device)];
  const visit = houseOf("Study", "Hall");
  await left.keep.begin(visit);
  await right.keep.open(visit.id);
  left.keep.change(visit.id, (draft) => widthAt(draft, "Study", "19 7/8", 504.825));
  right.keep.change(visit.id, (draft) => widthAt(draft, "Hall", "25 1/8", 638.175));
  await left.passes();
  await right.passes();
  await left.settled();
  for (const found of [device.kept.get(visit.id), left.keep.now(visit.id), right.keep.now(visit.id)]) {
    assert.deepEqual([typedAt(found, "Study"), typedAt(found, "Hall")], ["19 7/8", "25 1/8"]);
  }
});

test("where both have written one measure, what gives way is told", async () => {
  const device = createDevice();
  const [left, right] = [createWindow(device), createWindow(device)];
  const visit = houseOf("Study");
  await left.keep.begin(visit);
  await right.keep.open(visit.id);
  const told = [];
  right.keep.follow((id, given) => told.push(...given));
  left.keep.change(visit.id, (draft) => {
    draft.client = "Mrs Tansy";
  });
  right.keep.change(visit.id, (draft) => {
    draft.client = "Mrs A. Tansy";
  });
  await left.passes();
  await right.passes();
  assert.equal(device.kept.get(visit.id).client, "Mrs A. Tansy");
  assert.deepEqual(told, [{ path: ["client"], stays: "Mrs A. Tansy", gives: "Mrs Tansy" }]);
});

test("a door that one window takes out stays where the other has gone on measuring it", async () => {
  const device = createDevice();
  const [left, right] = [createWindow(device), createWindow(device)];
  const visit = houseOf("Study", "Hall");
  await left.keep.begin(visit);
  await right.keep.open(visit.id);
  left.keep.change(visit.id, (draft) => {
    draft.openings = draft.openings.slice(1);
  });
  right.keep.change(visit.id, (draft) => widthAt(draft, "Study", "19 7/8", 504.825));
  await left.passes();
  await right.passes();
  assert.equal(typedAt(device.kept.get(visit.id), "Study"), "19 7/8");
});

test("a visit that another window has deleted is not brought back unless somebody asks", async () => {
  const device = createDevice();
  const [left, right] = [createWindow(device), createWindow(device)];
  const visit = houseOf("Study");
  await left.keep.begin(visit);
  await right.keep.open(visit.id);
  await left.keep.remove(visit.id);
  await right.settled();
  assert.equal(right.keep.state(visit.id), "gone");
  right.keep.change(visit.id, (draft) => widthAt(draft, "Study", "19 7/8", 504.825));
  await right.passes();
  assert.equal(device.kept.size, 0);
  await right.keep.keepAgain(visit.id);
  assert.equal(typedAt(device.kept.get(visit.id), "Study"), "19 7/8");
  assert.equal(right.keep.state(visit.id), "kept");
});

test("a deleted visit leaves nothing behind", async () => {
  const device = createDevice();
  const { keep, passes } = createWindow(device);
  const visit = houseOf("Study");
  await keep.begin(visit);
  keep.change(visit.id, (draft) => widthAt(draft, "Study", "19 7/8", 504.825));
  await keep.remove(visit.id);
  await passes();
  assert.equal(device.kept.size, 0);
  assert.deepEqual(await keep.list(), []);
});

test("a device without room says so, and what was written is written once there is room", async () => {
  const device = createDevice();
  const { keep, passes } = createWindow(device);
  const visit = houseOf("Study");
  await keep.begin(visit);
  device.refuses = Object.assign(new Error("full"), { name: "QuotaExceededError" });
  keep.change(visit.id, (draft) => widthAt(draft, "Study", "19 7/8", 504.825));
  await passes();
  assert.equal(keep.state(visit.id), "full");
  assert.equal(typedAt(keep.now(visit.id), "Study"), "19 7/8");
  device.refuses = null;
  keep.change(visit.id, (draft) => {
    draft.place = "Weir Cottage";
  });
  await passes();
  assert.equal(keep.state(visit.id), "kept");
  assert.equal(typedAt(device.kept.get(visit.id), "Study"), "19 7/8");
});

test("a browser that keeps nothing can be worked in all the same", async () => {
  const device = createDevice();
  device.refuses = new Error("denied");
  const { keep, passes } = createWindow(device);
  const visit = houseOf("Study");
  await keep.begin(visit);
  await passes();
  assert.equal(keep.state(visit.id), "refused");
  await assert.rejects(keep.list());
  assert.deepEqual(keep.here(), [visit]);
});

test("what was read on another day stays beside what is read today", async () => {
  const visit = houseOf("Study");
  widthAt(visit, "Study", "19 7/8", 504.825);
  const leaf = leafCalled(visit.openings[0], "active");
  putReading(leaf, { field: "glass_width", spot: "top", typed: "20", mm: 508, how: "measured", who: "", on: "2027-03-12" });
  assert.deepEqual(leaf.readings.map(({ typed }) => typed), ["19 7/8", "20"]);
  assert.equal(typedAt(visit, "Study"), "20");
});

test("what a newer page has added to a visit survives two windows", async () => {
  const device = createDevice();
  const [left, right] = [createWindow(device), createWindow(device)];
  const visit = { ...houseOf("Study"), weather: { wind: "west" } };
  await left.keep.begin(visit);
  await right.keep.open(visit.id);
  left.keep.change(visit.id, (draft) => {
    draft.client = "Mrs Tansy";
  });
  right.keep.change(visit.id, (draft) => {
    draft.place = "Weir Cottage";
  });
  await left.passes();
  await right.passes();
  assert.deepEqual(device.kept.get(visit.id), { ...visit, client: "Mrs Tansy", place: "Weir Cottage" });
});
