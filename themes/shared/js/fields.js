// What the tape takes: each field with its place, what is possible and what is usual (mm).

// [id, name, where the tape goes, least possible, most possible, least usual, most usual]
const GLASS_FIELDS = [
  ["glass_width", "Glass width", "Clear glass between the beads, at its narrowest.", 100, 1500, 300, 800],
  ["glass_height", "Glass height", "Clear glass between the beads, top to bottom.", 200, 3000, 800, 2100],
  ["bead_width", "Bead width", "Width of the moulding around the glass.", 0, 80, 8, 30],
  ["bead_projection", "Bead projection", "How far the bead stands out of the leaf; 0 when flush.", 0, 40, 0, 15],
  ["glass_recess", "Glass recess", "From the leaf's face back to the glass.", 0, 80, 5, 30],
];
const LEAF_FIELDS = [
  ["stile_hinge", "Hinge stile", "From the leaf's hinge edge to the bead.", 20, 400, 60, 180],
  ["stile_latch", "Latch stile", "From the bead to the edge with the handle.", 20, 400, 60, 180],
  ["rail_top", "Top rail", "From the bead up to the leaf's top edge.", 20, 600, 70, 220],
  ["rail_bottom", "Bottom rail", "From the leaf's bottom edge up to the bead.", 20, 1600, 120, 400],
  ["leaf_thickness", "Leaf thickness", "The leaf's own depth, at its edge.", 20, 120, 35, 75],
];
const HANDLE_FIELDS = [
  ["handle_height", "Handle height", "From the floor to the handle's axis.", 300, 1800, 850, 1100],
  ["backset", "Backset", "From the latch edge to the handle's axis.", 15, 200, 24, 75],
  ["handle.gap", "Gap behind the handle", "Free depth between the leaf and the grip.", 0, 150, 15, 60],
  ["handle.projection", "Handle projection", "From the leaf's face to the front of the grip.", 5, 200, 40, 90],
  ["handle.grip_length", "Grip length", "From the axis to the lever's tip, or the knob's radius.", 5, 300, 20, 150],
];
const AROUND_FIELDS = [
  ["wall_gap", "Side wall", "From the hinge edge to the wall beside it.", 0, 5000, 30, 3000],
  ["head_gap", "Gap at the head", "From the leaf's top edge to the head of the opening.", 0, 200, 2, 40],
  ["ceiling_height", "Ceiling height", "From the floor to the ceiling.", 1900, 6000, 2300, 3200],
  ["floor_gap", "Gap at the floor", "Under the leaf.", 0, 150, 3, 30],
  ["reveal", "Reveal", "How far the leaf lies behind the wall's face.", 0, 500, 0, 200],
  ["casing_width", "Casing width", "Width of the trim around the opening; 0 for none.", 0, 300, 0, 120],
  ["casing_projection", "Casing projection", "How far the trim stands out of the wall.", 0, 100, 0, 30],
];
const PAIR_FIELDS = [
  ["meeting_gap", "Gap between the leaves", "Between the two closed leaves.", 0, 60, 2, 10],
  ["astragal_width", "Astragal width", "The moulding over the joint; 0 for none.", 0, 150, 0, 60],
  ["astragal_projection", "Astragal projection", "How far it stands out of the leaf.", 0, 60, 0, 25],
];
const SIDELIGHT_FIELDS = [
  ["sidelight_width", "Sidelight width", "Each fixed side panel, frame included.", 100, 1500, 250, 600],
  ["sidelight_glass_width", "Sidelight glass", "Clear glass in the side panel.", 50, 1400, 150, 450],
];
const OUT_SWING_FIELDS = [
  ["stop_lap", "Stop", "How far the stop laps the room face.", 0, 60, 8, 25],
];
const MUNTIN_FIELDS = [
  ["muntin_width", "Muntin width", "Width of a bar between two lites.", 5, 80, 15, 35],
  ["muntin_projection", "Muntin projection", "How far it stands out of the leaf; below 0 when it lies back.", -60, 40, -25, 15],
];

const FIELD_ROWS = [
  GLASS_FIELDS, LEAF_FIELDS, HANDLE_FIELDS, AROUND_FIELDS,
  PAIR_FIELDS, SIDELIGHT_FIELDS, OUT_SWING_FIELDS, MUNTIN_FIELDS,
];

function fieldOf([id, name, where, least, most, usualLeast, usualMost]) {
  return { id, name, where, least, most, usualLeast, usualMost };
}

const FIELDS = new Map(FIELD_ROWS.flat().map((row) => [row[0], fieldOf(row)]));

const LAYOUTS = [
  ["single", "Single leaf"],
  ["pair", "Pair"],
  ["fixed-pair", "Pair, one leaf fixed"],
  ["sidelights", "Leaf with sidelights"],
];
const LITE_COUNTS = { muntin_columns: [1, 6], muntin_rows: [1, 8] };
const WORDS = {
  layout: LAYOUTS.map((row) => row[0]),
  swing: ["in", "out"],
  hinge_side: ["left", "right"],
};

// Returns the field groups that a door of this layout, swing and glazing has.
function fieldGroups(door) {
  const more = [];
  if (door.layout === "pair" || door.layout === "fixed-pair") more.push(...PAIR_FIELDS);
  if (door.layout === "sidelights") more.push(...SIDELIGHT_FIELDS);
  if (door.swing === "out") more.push(...OUT_SWING_FIELDS);
  const glass = [...GLASS_FIELDS];
  if (door.muntin_columns > 1 || door.muntin_rows > 1) glass.push(...MUNTIN_FIELDS);
  return {
    glass: glass.map(fieldOf),
    leaf: LEAF_FIELDS.map(fieldOf),
    handle: HANDLE_FIELDS.map(fieldOf),
    around: [...AROUND_FIELDS, ...more].map(fieldOf),
  };
}

// Why a length cannot be, in words; empty where it can.
function impossible(field, mm, units) {
  if (mm >= field.least && mm <= field.most) return "";
  const span = `${sayField(field.least, units)} and ${sayField(field.most, units)}`;
  return `${field.name} must lie between ${span}. The drawing keeps the last sound measurement.`;
}

function unlikely(field, mm, units) {
  if (mm >= field.usualLeast && mm <= field.usualMost) return "";
  const span = `${sayField(field.usualLeast, units)} to ${sayField(field.usualMost, units)}`;
  return `Unusual: most are ${span}. Measure again, or leave it if it is so.`;
}

function sayField(mm, units) {
  if (units === "mm") return `${mm} mm`;
  return `${writeLength(Math.round((mm / MM_PER_INCH) * 8) / 8 * MM_PER_INCH, "in")} in`;
}

// What measurements deny each other, as [field, words] of the first that does; null when all agree.
function contradiction(door) {
  const bars = Math.max(door.muntin_columns * door.muntin_width / door.glass_width,
    door.muntin_rows * door.muntin_width / door.glass_height);
  const leafHeight = door.rail_top + door.rail_bottom + door.glass_height + door.bead_width * 2;
  const width = door.stile_hinge + door.stile_latch + door.glass_width + door.bead_width * 2;
  if (bars > 0.7) return ["muntin_width", "The bars leave hardly any glass between them."];
  if (leafHeight + door.floor_gap + door.head_gap > door.ceiling_height) {
    return ["ceiling_height", "The leaf would stand higher than the ceiling."];
  }
  if (door.handle_height > leafHeight + door.floor_gap - 50) {
    return ["handle_height", "The handle would sit above the leaf."];
  }
  if (door.backset > width - 20) return ["backset", "The handle would sit beyond the leaf."];
  if (door.handle.gap > door.handle.projection - 3) {
    return ["handle.gap", "The gap behind the grip cannot be deeper than the handle's projection."];
  }
  if (door.layout === "sidelights" && door.sidelight_glass_width > door.sidelight_width - 20) {
    return ["sidelight_glass_width", "The side panel's glass would be wider than the panel."];
  }
  return null;
}
