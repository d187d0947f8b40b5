// A visit, its openings and their readings: what a fresh one is, and how one is found and changed.

import { _ } from "./words.js";

/** Eight bytes as text: enough that no two of a showroom's are the same. */
export function freshId() {
  return [...crypto.getRandomValues(new Uint8Array(8))].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}

/** The day, as the calendar on the wall has it. */
export function today() {
  const now = new Date();
  return [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, "0")).join("-");
}

/** @param {string} on an ISO day */
export function dayInWords(on) {
  const day = new Date(`${on}T12:00`);
  return Number.isNaN(day.getTime()) ? on : day.toLocaleDateString(document.documentElement.lang, { dateStyle: "medium" });
}

/**
 * @param {Astragal.PageCatalog} catalog
 * @returns {Astragal.Visit}
 */
export function freshVisit({ units, household }) {
  return {
    version: 1, id: freshId(), client: "", place: "", on: today(), units, note: "", household: { ...household }, openings: [], revisions: [],
  };
}

/**
 * @param {string} id
 * @param {Astragal.Door} door the preset that stands for what nobody measured
 * @returns {Astragal.Leaf}
 */
function freshLeaf(id, { layout, swing, hinge_side, handle, passive_handle }) {
  const hasHandle = id === "active" || (id === "other" && passive_handle);
  // What another leaf does not tell is as the active one has it.
  return { id, words: id === "active" ? { layout, swing, hinge_side } : {}, handle: hasHandle ? handle.id : "", note: "", readings: [] };
}

/**
 * @param {Astragal.PageCatalog} catalog
 * @param {string} [preset]
 * @returns {Astragal.Opening}
 */
export function freshOpening(catalog, preset = catalog.opening[0]) {
  const door = catalog.doors[preset];
  const leaves = Astragal.kernel.leaves_of(door.layout).map((id) => freshLeaf(id, door));
  return { id: freshId(), room: "", note: "", socket: "", preset, leaves, proposals: [], agreed: [] };
}

/**
 * Another door stands for what nobody measured; what was measured stays.
 * @param {Astragal.Opening} opening
 * @param {Astragal.Door} door
 */
export function setPreset(opening, door) {
  opening.preset = door.id;
  const { words, handle } = freshLeaf("active", door);
  const active = leafCalled(opening, "active");
  if (active) Object.assign(active, { words: { ...active.words, ...words }, handle });
  setLayout(opening, door);
}

/**
 * A word of what an opening is; the leaves that it now has besides are added, what was measured stays.
 * @param {Astragal.Opening} opening
 * @param {Astragal.Door} door its preset
 * @param {string} name
 * @param {string} word
 */
export function setWordOf(opening, door, name, word) {
  const active = leafCalled(opening, "active");
  if (active) active.words[name] = word;
  setLayout(opening, { ...door, layout: active?.words.layout ?? door.layout });
}

/**
 * @param {Astragal.Opening} opening
 * @param {Astragal.Door} door
 */
function setLayout(opening, door) {
  const wanted = Astragal.kernel.leaves_of(door.layout);
  opening.leaves = [
    ...wanted.map((id) => leafCalled(opening, id) ?? freshLeaf(id, door)),
    ...opening.leaves.filter(({ id, readings }) => !wanted.includes(id) && readings.length > 0),
  ];
}

/**
 * @param {Astragal.Opening} opening
 * @param {string} id
 */
export function leafCalled(opening, id) {
  return opening.leaves.find((leaf) => leaf.id === id);
}

/**
 * @param {Astragal.Visit} visit
 * @param {string} id
 */
export function openingCalled(visit, id) {
  return visit.openings.find((opening) => opening.id === id);
}

/**
 * The newest reading of a spot: what was read on another day stays beside it.
 * @param {Astragal.Leaf} leaf
 * @param {string} field
 * @param {string} spot
 */
export function readingAt(leaf, field, spot) {
  return leaf.readings.filter((reading) => reading.field === field && reading.spot === spot)
    .reduce((/** @type {Astragal.Reading | undefined} */ newest, reading) => (newest && newest.on > reading.on ? newest : reading), undefined);
}

/**
 * @param {Astragal.Leaf} leaf
 * @param {Astragal.Reading} reading
 */
export function putReading(leaf, reading) {
  const known = readingAt(leaf, reading.field, reading.spot);
  if (known?.on === reading.on) Object.assign(known, reading);
  else leaf.readings.push(reading);
}

/**
 * @param {Astragal.Leaf} leaf
 * @param {string} field
 * @param {string} spot
 */
export function dropReading(leaf, field, spot) {
  const gone = readingAt(leaf, field, spot);
  leaf.readings = leaf.readings.filter((reading) => reading !== gone);
}

/**
 * Takes the last entry that says the same out of a list; one that is there no longer stays away.
 * @param {unknown[]} list
 * @param {unknown} entry
 */
export function dropLast(list, entry) {
  const place = list.map((one) => JSON.stringify(one)).lastIndexOf(JSON.stringify(entry));
  if (place >= 0) list.splice(place, 1);
}

/**
 * Who measures; the readings have it from here as they are taken.
 * @param {Astragal.Visit} visit
 */
export function measuredBy(visit) {
  return /** @type {Astragal.Visit & { by?: string }} */ (visit).by ?? "";
}

/**
 * Which of a visit's openings it is, counted from 1.
 * @param {Astragal.Visit} visit
 * @param {Astragal.Opening} opening
 */
export function openingNumber(visit, opening) {
  return 1 + visit.openings.findIndex(({ id }) => id === opening.id);
}

/**
 * What an opening is called: its room, or which of them it is.
 * @param {Astragal.Visit} visit
 * @param {Astragal.Opening} opening
 */
export function openingName(visit, opening) {
  return opening.room || _("Door {number}", { number: openingNumber(visit, opening) });
}

/**
 * The units of a visit from now on; a reading that named none keeps those in which it was written.
 * @param {Astragal.Visit} visit
 * @param {string} units
 */
export function setUnits(visit, units) {
  const isAsTyped = (/** @type {Astragal.Reading} */ { typed, mm }, /** @type {string} */ how) => Math.abs(Astragal.kernel.written_length(typed, how).mm - mm) < 1e-6;
  for (const reading of visit.openings.flatMap(({ leaves }) => leaves).flatMap(({ readings }) => readings)) {
    if (!isCounted(reading.field) && isAsTyped(reading, visit.units) && !isAsTyped(reading, units)) reading.typed += ` ${visit.units}`;
  }
  visit.units = units;
}

/** @param {string} field */
function isCounted(field) {
  return Astragal.kernel.visit_field(field)[0]?.unit === "count";
}
