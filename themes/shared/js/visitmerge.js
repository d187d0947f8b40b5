// Two who write one visit: what only one of them has changed is taken over; where both have, the last to write stays,
// and what gives way to it is told.

/** @typedef {{ path: string[], stays: unknown, gives: unknown }} GivenWay */

/**
 * @param {unknown} one
 * @returns {one is Record<string, unknown>}
 */
function isRecord(one) {
  return typeof one === "object" && one !== null && !Array.isArray(one);
}

/**
 * By what an entry of a list is known again: its id, or for a reading of what and of which day it is.
 * @param {unknown} entry
 */
function entryKey(entry) {
  if (!isRecord(entry)) return "";
  if (typeof entry.id === "string") return entry.id;
  return typeof entry.field === "string" ? `${entry.field} ${entry.spot} ${entry.on}` : "";
}

/** @param {unknown[]} list */
function isKeyed(list) {
  const keys = list.map(entryKey);
  return !keys.includes("") && new Set(keys).size === keys.length;
}

/**
 * @param {unknown} one
 * @param {unknown} other
 */
function isSame(one, other) {
  return JSON.stringify(one) === JSON.stringify(other);
}

/**
 * What comes of two that were both made of a third.
 * @param {unknown} base
 * @param {unknown} mine the last to be written
 * @param {unknown} theirs
 * @param {string[]} path where it stands, for what is told
 * @param {GivenWay[]} given what has given way; more is added to it
 * @returns {unknown}
 */
function mergedValue(base, mine, theirs, path, given) {
  if (isSame(mine, theirs) || isSame(base, theirs)) return mine;
  if (isSame(base, mine)) return theirs;
  if (isRecord(mine) && isRecord(theirs)) return mergedRecord(isRecord(base) ? base : {}, mine, theirs, path, given);
  if (Array.isArray(mine) && Array.isArray(theirs)) {
    const before = Array.isArray(base) ? base : [];
    if ([mine, theirs, before].every(isKeyed)) return mergedList(before, mine, theirs, path, given);
    // A list that only grows, such as that of what was changed when.
    if ([mine, theirs].every((list) => isSame(list.slice(0, before.length), before))) {
      return [...theirs, ...mine.slice(before.length)];
    }
  }
  // What one has taken away and the other has gone on with is not lost.
  if (mine === undefined) return theirs;
  if (theirs !== undefined) given.push({ path, stays: mine, gives: theirs });
  return mine;
}

/**
 * @param {Record<string, unknown>} base
 * @param {Record<string, unknown>} mine
 * @param {Record<string, unknown>} theirs
 * @param {string[]} path
 * @param {GivenWay[]} given
 */
function mergedRecord(base, mine, theirs, path, given) {
  const keys = [...new Set([...Object.keys(theirs), ...Object.keys(mine)])];
  const pairs = keys.map((key) => /** @type {[string, unknown]} */ (
    [key, mergedValue(ownPart(base, key), ownPart(mine, key), ownPart(theirs, key), [...path, key], given)]));
  return Object.fromEntries(pairs.filter(([, value]) => value !== undefined));
}

/**
 * @param {Record<string, unknown>} record
 * @param {string} key
 */
function ownPart(record, key) {
  return Object.hasOwn(record, key) ? record[key] : undefined;
}

/**
 * @param {unknown[]} base
 * @param {unknown[]} mine
 * @param {unknown[]} theirs
 * @param {string[]} path
 * @param {GivenWay[]} given
 */
function mergedList(base, mine, theirs, path, given) {
  const by = (/** @type {unknown[]} */ list) => Object.fromEntries(list.map((entry) => [entryKey(entry), entry]));
  const [before, ours, others] = [by(base), by(mine), by(theirs)];
  // In the order of the last to write, with what the other has added at its end.
  const keys = [...new Set([...mine, ...theirs].map(entryKey))];
  return keys.map((key) => mergedValue(ownPart(before, key), ownPart(ours, key), ownPart(others, key), [...path, key], given))
    .filter((entry) => entry !== undefined);
}

/**
 * What comes of two copies of a visit that were both made of a third, and what has given way.
 * @template {object} Kind
 * @param {object} base nothing where there was none
 * @param {Kind} mine the last to be written
 * @param {Kind} theirs
 * @returns {{ value: Kind, given: GivenWay[] }}
 */
export function mergedVisit(base, mine, theirs) {
  /** @type {GivenWay[]} */
  const given = [];
  return { value: /** @type {Kind} */ (mergedValue(base, mine, theirs, [], given)), given };
}
