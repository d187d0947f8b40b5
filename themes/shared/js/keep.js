// What of the device's keeping (scripts/kept.js) the configurator asks: kept doors as the link's own reader finds them.

import { remembered } from "./views.js";
import { _, doorName } from "./words.js";

// An address of the showroom's pages: my door, and after a slash the coverings on it.
const MINE = "mine/";

const readLink = remembered(40, (/** @type {string} */ link) => Astragal.kernel.read_link(link, Astragal.catalog));

/** @param {string} link */
function opened(link) {
  return readLink(link, link);
}

/**
 * Whether a kept link still reads; what a spoilt one opens is nobody's door.
 * @param {string} link
 */
export function isRead(link) {
  return opened(link).problems.length === 0;
}

/** The link of the door that goes along; empty where none is kept. */
export function keptLink() {
  const { doors, mine } = Astragal.kept.read();
  return doors.find((one) => one.id === mine)?.link ?? "";
}

/**
 * The coverings that an address of the showroom's pages asks for on my door; null where it is a link, or nothing.
 * @param {string} fragment
 */
export function askedOnMine(fragment) {
  return fragment.startsWith(MINE) ? fragment.slice(MINE.length).split("+") : null;
}

/** @param {string} link */
export function keptState(link) {
  return opened(link).state;
}

/**
 * The configuration that a kept link works on.
 * @param {string} link
 */
export function keptConfiguration(link) {
  const state = keptState(link);
  return state.configurations[state.active];
}

/** @param {KeptDoor} kept */
export function keptName(kept) {
  return kept.name || _("My door");
}

/**
 * A door as one text; a link spells numbers, so what is equal but for the last digits is the same.
 * @param {Astragal.Door} door
 */
function doorText(door) {
  return JSON.stringify(door, (_, value) => (typeof value === "number" ? Math.round(value * 1e4) / 1e4 : value));
}

/**
 * The kept door that a door is, measurement by measurement; undefined where it is none.
 * @param {Astragal.Door} door
 */
export function keptAs(door) {
  const text = doorText(door);
  return Astragal.kept.read().doors.find(({ link }) => isRead(link) && doorText(keptConfiguration(link).door) === text);
}

/**
 * A door by the name that it is kept under, or else by the one it was taken from.
 * @param {Astragal.PageCatalog} catalog
 * @param {Astragal.Door} door
 */
export function calledDoor(catalog, door) {
  const kept = keptAs(door);
  return kept?.name ? kept.name : doorName(catalog, door);
}
