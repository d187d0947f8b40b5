// The travel: what moves, how far, and in which words.

import { closedPlace, legsOf, numbersOf, openPlace } from "./state.js";
import { capital } from "./text.js";
import { ENGLISH } from "./words.js";

export const shareAlong = (leg, place) => Astragal.kernel.share_along(leg, place);

// In whole thousandths: no hand is finer, and the link stays short.
export function valueAlong(leg, share) {
  const start = leg.start[leg.moves];
  const value = start + (leg.end[leg.moves] - start) * Math.min(1, Math.max(0, share));
  return Math.round(value * 1000) / 1000;
}

export function percent(share) {
  return `${Math.round(share * 100)} %`;
}

export const sayPart = (leg, place) => Astragal.kernel.say_phrase(Astragal.kernel.part_place(leg, place), ENGLISH, "mm");

// Where every part stands, in one phrase.
export function sayPlace(catalog, configuration) {
  return capital(Astragal.kernel.place_words(legsOf(catalog, configuration), configuration.place));
}

// One share from open to closed, so that unlike coverings can stand at the same position.
export function shareOf(catalog, configuration) {
  const [leg] = legsOf(catalog, configuration);
  if (!leg) return 0;
  if (leg.moves !== "tilt") return shareAlong(leg, configuration.place);
  const open = openPlace(catalog, configuration).tilt;
  const closed = closedPlace(catalog, configuration).tilt;
  return open === closed ? 0 : Math.min(1, Math.max(0, (configuration.place.tilt - open) / (closed - open)));
}

export function sayShare(share) {
  if (share <= 0) return "open";
  return share >= 1 ? "closed" : `${percent(share)} closed`;
}

export function placeAtShare(catalog, configuration, share) {
  return Astragal.kernel.position_at(numbersOf(catalog, configuration), share);
}

export function samePlace(a, b) {
  return ["lower", "upper", "tilt"].every((part) => Math.abs(a[part] - b[part]) < 1e-9);
}
