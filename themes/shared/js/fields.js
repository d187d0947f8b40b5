// What the tape takes: each field with its name, where it is measured, and what is usual (mm).
// What is possible at all comes from the kernel, which reads links by the same limits.

const GLASS_FIELDS = [
  ["glass_width", "Glass width", "Clear glass between the beads, at its narrowest.", 300, 800],
  ["glass_height", "Glass height", "Clear glass between the beads, top to bottom.", 800, 2100],
  ["bead_width", "Bead width", "The moulding around the glass.", 8, 60],
  ["bead_projection", "Bead projection", "How far the bead stands out of the leaf; 0 when flush.", 0, 20],
  ["glass_recess", "Glass recess", "From the leaf's face back to the glass.", 5, 40],
];
const MUNTIN_FIELDS = [
  ["muntin_width", "Muntin width", "The bar between two lites.", 15, 40],
  ["muntin_projection", "Muntin projection", "How far the bar stands out of the leaf; 0 when flush.", 0, 20],
];
const LEAF_FIELDS = [
  ["stile_hinge", "Hinge stile", "From the leaf's hinge edge to the bead.", 60, 180],
  ["stile_latch", "Latch stile", "From the bead to the edge with the handle.", 60, 180],
  ["rail_top", "Top rail", "From the bead up to the leaf's top edge.", 70, 250],
  ["rail_bottom", "Bottom rail", "From the leaf's bottom edge up to the bead.", 90, 1200],
  ["leaf_thickness", "Leaf thickness", "The leaf's own depth, at its edge.", 35, 75],
];
const HANDLE_FIELDS = [
  ["handle_height", "Handle height", "From the floor to the handle's axis.", 850, 1100],
  ["backset", "Backset", "From the latch edge to the handle's axis.", 24, 75],
  ["handle.gap", "Gap behind the handle", "Free depth between the leaf and the grip.", 15, 70],
  ["handle.projection", "Handle projection", "From the leaf's face to the front of the grip.", 25, 90],
  ["handle.grip_length", "Grip length", "Lever: axis to tip. Knob: its radius. Pull: half its width.", 5, 150],
];
const AROUND_FIELDS = [
  ["wall_gap", "Side wall", "From the hinge edge to the wall beside it.", 30, 3000],
  ["head_gap", "Gap at the head", "Above the leaf, up to the frame.", 2, 15],
  ["floor_gap", "Gap at the floor", "Under the leaf.", 3, 30],
  ["ceiling_height", "Ceiling height", "From the floor to the ceiling.", 2300, 3500],
  ["reveal", "Reveal", "How far the leaf lies behind the wall's face.", 0, 200],
  ["casing_width", "Casing width", "The trim around the opening; 0 for none.", 0, 120],
  ["casing_projection", "Casing projection", "How far the trim stands out of the wall.", 0, 30],
];
const PAIR_FIELDS = [
  ["meeting_gap", "Gap between the leaves", "Between the closed leaves.", 2, 10],
  ["astragal_width", "Astragal width", "The moulding over the joint; 0 for none.", 0, 70],
  ["astragal_projection", "Astragal projection", "How far it stands out of the leaf.", 0, 25],
];
const SIDELIGHT_FIELDS = [
  ["sidelight_width", "Sidelight width", "Each side panel, frame included.", 250, 600],
  ["sidelight_glass_width", "Sidelight glass", "Clear glass in the side panel.", 120, 450],
];
const OUT_SWING_FIELDS = [
  ["stop_lap", "Stop", "How far the stop laps the leaf's room face.", 8, 25],
];
const HOUSEHOLD_FIELDS = [
  ["household.shoulder_height", "Shoulder height", "Of whoever works the covering most.", 1100, 1600],
  ["household.person_height", "Height of the person inside", "Whom the covering should hide.", 1400, 2000],
  ["household.person_distance", "Their distance from the glass", "Standing back in the room.", 300, 5000],
  ["household.outside_eye", "Eye height outside", "Of whoever might look in.", 1300, 1850],
  ["household.outside_distance", "Their distance from the glass", "On the terrace, or across the street.", 500, 50000],
  ["household.outside_level", "Ground outside", "Against your floor; with a minus where it lies lower.", -3000, 1000],
];

const LAYOUTS = [
  ["single", "Single leaf"],
  ["pair", "Pair"],
  ["fixed-pair", "Pair, one fixed"],
  ["sidelights", "With sidelights"],
];
const LITES = { muntin_columns: 6, muntin_rows: 8 };

function limitsOf(id) {
  const { kernel } = Astragal;
  if (id.startsWith("handle.")) return kernel.handle_limits()[id.slice(7)];
  if (id.startsWith("household.")) return kernel.household_limits()[id.slice(10)];
  return kernel.door_limits()[id];
}

function fieldOf([id, name, where, usualLeast, usualMost]) {
  const [least, most] = limitsOf(id);
  return { id, name, where, least, most, usualLeast, usualMost };
}

// Returns the groups of fields that a door of this layout, swing and glazing has.
function fieldGroups(door) {
  const glass = [...GLASS_FIELDS];
  if (door.muntin_columns > 1 || door.muntin_rows > 1) glass.push(...MUNTIN_FIELDS);
  const around = [...AROUND_FIELDS];
  if (isPair(door)) around.push(...PAIR_FIELDS);
  if (door.layout === "sidelights") around.push(...SIDELIGHT_FIELDS);
  if (door.swing === "out") around.push(...OUT_SWING_FIELDS);
  return { glass, leaf: LEAF_FIELDS, handle: HANDLE_FIELDS, around, household: HOUSEHOLD_FIELDS };
}

function isPair(door) {
  return door.layout === "pair" || door.layout === "fixed-pair";
}

// Why a length cannot be, in words; empty where it can.
function impossible(field, mm, units) {
  if (mm >= field.least && mm <= field.most) return "";
  return `${field.name} must lie ${Astragal.kernel.say_span(field.least, field.most, units)}.`;
}

function unlikely(field, mm, units) {
  if (mm >= field.usualLeast && mm <= field.usualMost) return "";
  const span = Astragal.kernel.say_span(field.usualLeast, field.usualMost, units);
  return `Unusual: most are ${span}. Measure again, or leave it if it is so.`;
}

const leafWidth = (door) => door.stile_hinge + door.stile_latch + door.glass_width + door.bead_width * 2;
const leafHeight = (door) => door.rail_top + door.rail_bottom + door.glass_height + door.bead_width * 2;

// What the measurements deny each other, in words; empty where they agree.
function contradiction(door) {
  const across = (door.muntin_columns - 1) * door.muntin_width;
  const up = (door.muntin_rows - 1) * door.muntin_width;
  const top = leafHeight(door) + door.floor_gap;
  if (across >= door.glass_width * 0.8 || up >= door.glass_height * 0.8) return "The muntins would leave hardly any glass between them.";
  if (top + door.head_gap > door.ceiling_height) return "The leaf would stand higher than the ceiling.";
  if (door.handle_height > top - 50) return "The handle would sit above the leaf.";
  if (door.backset >= leafWidth(door) / 2) return "The handle would sit past the middle of the leaf.";
  if (door.glass_recess + 4 > door.leaf_thickness) return "The glass would lie behind the leaf's other face.";
  if (door.handle.gap >= door.handle.projection) return "The gap behind the grip must be less than the handle's whole projection.";
  if (door.handle.plate_thickness > door.handle.gap) return "The handle's plate would reach the grip.";
  if (door.layout === "sidelights" && door.sidelight_glass_width >= door.sidelight_width) return "The side panel's glass would be wider than the panel.";
  return "";
}
