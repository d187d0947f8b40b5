// Where each measurement lies on the drawing, for those that no drawing dimensions by itself.

// Places on the paper of a leaf hung on the left; `turn` mirrors them for one hung on the right.
function placesOf(door) {
  const width = leafWidth(door);
  const bottom = -door.floor_gap;
  const top = bottom - leafHeight(door);
  return {
    width, bottom, top,
    glass: door.stile_hinge + door.bead_width,
    bead: door.stile_hinge,
    latch: width - door.stile_latch,
    axis: width - door.backset,
    middle: door.stile_hinge + door.bead_width + door.glass_width * 0.5,
    low: bottom - door.rail_bottom / 2,
    handle: -door.handle_height,
    paneTop: top + door.rail_top + door.bead_width,
  };
}

// [view, direction, from, to, at, where the thing measured is]
const FOCUS_PLACES = {
  glass_width: (door, p) => ["elevation", "across", p.glass, p.glass + door.glass_width, p.paneTop + door.glass_height * 0.62, p.paneTop + door.glass_height * 0.62],
  glass_height: (door, p) => ["elevation", "upright", p.paneTop, p.paneTop + door.glass_height, p.middle, p.middle],
  handle_height: (door, p) => ["elevation", "upright", p.handle, 0, p.axis, p.axis],
  stile_hinge: (door, p) => ["elevation", "across", 0, p.bead, p.low, p.low],
  stile_latch: (door, p) => ["elevation", "across", p.latch, p.width, p.low, p.low],
  rail_top: (door, p) => ["elevation", "upright", p.top, p.top + door.rail_top, p.middle, p.middle],
  rail_bottom: (door, p) => ["elevation", "upright", p.bottom - door.rail_bottom, p.bottom, p.middle, p.middle],
  bead_width: (door, p) => ["elevation", "across", p.bead, p.glass, p.handle, p.handle],
  backset: (door, p) => ["elevation", "across", p.axis, p.width, p.handle - 160, p.handle],
  muntin_width: (door, p) => ["elevation", "upright", muntinTop(door, p), muntinTop(door, p) + door.muntin_width, p.middle, p.middle],
  head_gap: (door, p) => ["elevation", "upright", p.top - door.head_gap, p.top, p.middle, p.middle],
  floor_gap: (door, p) => ["elevation", "upright", p.bottom, 0, p.middle, p.middle],
  ceiling_height: (door, p) => ["elevation", "upright", Math.max(p.top - 150, -door.ceiling_height), 0, p.middle, p.middle],
  casing_width: (door, p) => ["elevation", "across", -door.casing_width, 0, p.low, p.low],
  meeting_gap: (door, p) => ["elevation", "across", p.width, p.width + door.meeting_gap, p.low, p.low],
  astragal_width: (door, p) => ["elevation", "across", p.width + (door.meeting_gap - door.astragal_width) / 2, p.width + (door.meeting_gap + door.astragal_width) / 2, p.low, p.low],
  sidelight_width: (door, p) => ["elevation", "across", p.width, p.width + door.sidelight_width, p.low, p.low],
  sidelight_glass_width: (door, p) => {
    const frame = (door.sidelight_width - door.sidelight_glass_width) / 2;
    return ["elevation", "across", p.width + frame, p.width + door.sidelight_width - frame, p.handle, p.handle];
  },
  stop_lap: (door, p) => ["elevation", "across", 0, door.stop_lap, p.low, p.low],
  "handle.grip_length": (door, p) => ["elevation", "across", p.axis - door.handle.grip_length, p.axis, p.handle - 160, p.handle],
  "household.shoulder_height": (door, p) => ["elevation", "upright", "household", 0, p.middle, p.middle],
  leaf_thickness: (door, p) => ["plan", "upright", -door.leaf_thickness, 0, p.bead / 2, p.bead / 2],
  bead_projection: (door, p) => ["plan", "upright", 0, door.bead_projection, p.bead, p.bead],
  glass_recess: (door, p) => ["plan", "upright", -door.glass_recess, 0, p.middle, p.middle],
  muntin_projection: (door, p) => ["plan", "upright", 0, door.muntin_projection, p.middle, p.middle],
  "handle.gap": (door, p) => ["plan", "upright", 0, door.handle.gap, p.axis - door.handle.grip_length / 2, p.axis],
  "handle.projection": (door, p) => ["plan", "upright", 0, door.handle.projection, p.width + 60, p.axis],
  wall_gap: (door) => ["plan", "across", -door.wall_gap, 0, door.leaf_thickness, 0],
  reveal: (door) => ["plan", "upright", 0, door.reveal, -40, -40],
  casing_projection: (door) => ["plan", "upright", door.reveal, door.reveal + door.casing_projection, -40 - door.casing_width, -40],
  astragal_projection: (door, p) => ["plan", "upright", 0, door.astragal_projection, p.width, p.width],
};

function muntinTop(door, p) {
  return p.paneTop + (door.glass_height - (door.muntin_rows - 1) * door.muntin_width) / door.muntin_rows;
}

// Marks of the measurement's own dimension line, by view, with letters of a size (mm).
function ownDimension(state, id, size) {
  const place = FOCUS_PLACES[id];
  if (!place) return {};
  const { door } = activeOf(state);
  const { kernel } = Astragal;
  const [view, direction, from, to, at, origin] = place(door, placesOf(door));
  const start = from === "household" ? -measured(state, id) : from;
  const notes = kernel.blank_notes(size, state.units);
  const turn = (x) => (door.hinge_side === "left" ? x : leafWidth(door) - x);
  if (direction === "across") {
    kernel.dim_across(notes, [turn(start), turn(to)], kernel.tier(at, origin), kernel.said(notes, measured(state, id), "after", ""));
  } else {
    const label = kernel.said(notes, measured(state, id), "above", "");
    kernel.dim_upright(notes, [start, to], kernel.tier(turn(at), turn(origin)), label);
  }
  return { [view]: kernel.noted(notes) };
}

// The marks to bring forward for a field: the drawings' own dimension where it shows, or else one made for it.
function focusMarks(state, drawings, id, size, far) {
  if (far) return ownDimension(state, id, size);
  const role = `focus-${id}`;
  const own = Object.fromEntries(VIEWS.map((view) =>
    [view, drawings[view].marks.filter((mark) => mark.role.split(" ").includes(role))]));
  if (VIEWS.some((view) => own[view].length > 0)) return own;
  return ownDimension(state, id, size);
}
