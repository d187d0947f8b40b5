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

function valueAlong(leg, share) {
  const start = leg.start[leg.moves];
  return start + (leg.end[leg.moves] - start) * Math.min(1, Math.max(0, share));
}

function percent(share) {
  return `${Math.round(share * 100)} %`;
}

function sayPart(family, leg, place) {
  const share = shareAlong(leg, place);
  if (leg.moves === "tilt") return `tilted ${Math.round(place.tilt)}°`;
  if (family.mechanism === "draw") {
    if (share <= 0) return "drawn back";
    return share >= 1 ? "drawn across" : `${percent(share)} drawn across`;
  }
  if (leg.moves === "upper") {
    if (share <= 0) return "all the way up";
    return share >= 1 ? "lowered onto the bottom rail" : `${percent(share)} lowered`;
  }
  if (share <= 0) return "raised";
  return share >= 1 ? "all the way down" : `${percent(share)} down`;
}

// One share from open to closed, so that unlike coverings can stand at the same position.
function shareOf(catalog, configuration) {
  const moves = movesOf(catalog, configuration);
  if (moves.length === 0) return 0;
  if (moves[0].moves !== "tilt") return shareAlong(moves[0], configuration.place);
  const numbers = Astragal.kernel.resolve(familyOf(catalog, configuration), configuration.choices);
  const open = Astragal.kernel.open_position(numbers).tilt;
  const closed = Astragal.kernel.closed_position(numbers).tilt;
  if (open === closed) return 0;
  return Math.min(1, Math.max(0, (configuration.place.tilt - open) / (closed - open)));
}

function placeAtShare(catalog, configuration, share) {
  const numbers = Astragal.kernel.resolve(familyOf(catalog, configuration), configuration.choices);
  return Astragal.kernel.position_at(numbers, share);
}

function sameNumber(a, b) {
  return Math.abs(a - b) < 1e-9;
}

function samePlace(a, b) {
  return sameNumber(a.lower, b.lower) && sameNumber(a.upper, b.upper) && sameNumber(a.tilt, b.tilt);
}

// What is drawn back or raised cannot tilt or open from the top: such a move first brings it down.
function placeMoved(legs, place, moves, value) {
  const next = { ...place, [moves]: value };
  const leg = legs.find((one) => one.moves === moves);
  if (moves === "tilt" && leg && !sameNumber(place.lower, leg.start.lower)) next.lower = leg.start.lower;
  return next;
}
