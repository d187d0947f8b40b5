// The travel: what moves, how far, and in which words.

import { legsOf } from "./state.js";
import { capital } from "./text.js";
import { tongue } from "./words.js";

/**
 * @param {Astragal.Leg} leg
 * @param {Astragal.Position} place
 */
export function shareAlong(leg, place) {
  return Astragal.kernel.share_along(leg, place);
}

/**
 * Where a position has one of the parts that move: "lower", "upper" or "tilt".
 * @param {Astragal.Position} place
 * @param {string} moves
 */
export function partAt(place, moves) {
  return place[/** @type {"lower" | "upper" | "tilt"} */ (moves)];
}

/**
 * In whole thousandths: no hand is finer, and the link stays short.
 * @param {number} value
 */
export function fine(value) {
  return Math.round(value * 1000) / 1000;
}

/**
 * @param {Astragal.Leg} leg
 * @param {number} share
 */
export function valueAlong(leg, share) {
  const start = partAt(leg.start, leg.moves);
  const value = start + (partAt(leg.end, leg.moves) - start) * Math.min(1, Math.max(0, share));
  return fine(value);
}

/** @param {number} share */
export function percent(share) {
  return Astragal.kernel.say_one_term([share, "percent"], tongue(), "mm");
}

/**
 * @param {Astragal.Leg} leg
 * @param {Astragal.Position} place
 */
export function sayPart(leg, place) {
  return Astragal.kernel.say_phrase(Astragal.kernel.part_place(leg, place), tongue(), "mm");
}

/**
 * Where every part stands, in one phrase.
 * @param {Astragal.PageCatalog} catalog
 * @param {Astragal.Configuration} configuration
 */
export function sayPlace(catalog, configuration) {
  return capital(Astragal.kernel.place_words(legsOf(catalog, configuration), configuration.place, tongue()));
}

/**
 * @param {Astragal.Position} a
 * @param {Astragal.Position} b
 */
export function samePlace(a, b) {
  return ["lower", "upper", "tilt"].every((part) => Math.abs(partAt(a, part) - partAt(b, part)) < 1e-9);
}
