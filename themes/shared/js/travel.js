// The travel: what moves, how far, and in which words.

const PART_NAMES = {
  lower: { draw: "Leading edge", any: "Bottom rail" },
  upper: { any: "Upper rail" },
  tilt: { "louver-panel": "Louvers", "vane-roll": "Vanes", "banded-roll": "Bands", slatted: "Slats", draw: "Vanes", any: "Tilt" },
};

function partName(family, moves) {
  const names = PART_NAMES[moves];
  return names[family.mechanism] ?? names.any;
}

// How far along its leg a part stands, 0 to 1.
function shareAlong(leg, place) {
  const start = leg.start[leg.moves];
  const end = leg.end[leg.moves];
  return start === end ? 0 : (place[leg.moves] - start) / (end - start);
}

// In whole thousandths: no hand is finer, and the link stays short.
function valueAlong(leg, share) {
  const start = leg.start[leg.moves];
  const value = start + (leg.end[leg.moves] - start) * Math.min(1, Math.max(0, share));
  return Math.round(value * 1000) / 1000;
}

function percent(share) {
  return `${Math.round(share * 100)} %`;
}

function sayPart(family, leg, place) {
  const share = shareAlong(leg, place);
  if (leg.moves === "tilt") return Math.abs(place.tilt) < 0.5 ? "level" : `tilted ${Math.round(place.tilt)}°`;
  const words = { draw: ["drawn back", "drawn across", "drawn across"], upper: ["all the way up", "down on the bottom rail", "down"], lower: ["raised", "all the way down", "down"] };
  const [first, last, between] = words[family.mechanism === "draw" ? "draw" : leg.moves];
  if (share <= 0) return first;
  return share >= 1 ? last : `${percent(share)} ${between}`;
}

// Where every part stands, in one phrase.
function sayPlace(catalog, configuration) {
  const family = familyOf(catalog, configuration);
  const parts = legsOf(catalog, configuration).map((leg) => `${partName(family, leg.moves)} ${sayPart(family, leg, configuration.place)}`);
  return parts.length === 0 ? "Fixed" : parts.join(", ");
}

// One share from open to closed, so that unlike coverings can stand at the same position.
function shareOf(catalog, configuration) {
  const [leg] = legsOf(catalog, configuration);
  if (!leg) return 0;
  if (leg.moves !== "tilt") return shareAlong(leg, configuration.place);
  const open = openPlace(catalog, configuration).tilt;
  const closed = closedPlace(catalog, configuration).tilt;
  return open === closed ? 0 : Math.min(1, Math.max(0, (configuration.place.tilt - open) / (closed - open)));
}

function sayShare(share) {
  if (share <= 0) return "open";
  return share >= 1 ? "closed" : `${percent(share)} closed`;
}

function placeAtShare(catalog, configuration, share) {
  return Astragal.kernel.position_at(numbersOf(catalog, configuration), share);
}

function samePlace(a, b) {
  return ["lower", "upper", "tilt"].every((part) => Math.abs(a[part] - b[part]) < 1e-9);
}

// Vanes and bands tilt only when all is down, and hang closed while they roll.
const TILT_ONLY_DOWN = ["vane-roll", "banded-roll"];

function placeMoved(family, leg, place, value) {
  const next = { ...place, [leg.moves]: value, coarse: false };
  if (!TILT_ONLY_DOWN.includes(family.mechanism)) return next;
  if (leg.moves === "tilt") next.lower = leg.start.lower;
  if (leg.moves === "lower" && value < 1) next.tilt = leg.start.tilt;
  return next;
}
