// The travel: what moves, how far, and in which words.

const shareAlong = (leg, place) => Astragal.kernel.share_along(leg, place);

// In whole thousandths: no hand is finer, and the link stays short.
function valueAlong(leg, share) {
  const start = leg.start[leg.moves];
  const value = start + (leg.end[leg.moves] - start) * Math.min(1, Math.max(0, share));
  return Math.round(value * 1000) / 1000;
}

function percent(share) {
  return `${Math.round(share * 100)} %`;
}

const sayPart = (leg, place) => Astragal.kernel.say_phrase(Astragal.kernel.part_place(leg, place), ENGLISH, "mm");

// Where every part stands, in one phrase.
function sayPlace(catalog, configuration) {
  return capital(Astragal.kernel.place_words(legsOf(catalog, configuration), configuration.place));
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
