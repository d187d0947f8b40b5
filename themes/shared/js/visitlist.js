// What to photograph on the door: what is still assumed and shows in a picture.

import { listed } from "./text.js";
import { _ } from "./words.js";

// Each picture with the measurements that it settles.
const PHOTOS = [
  { words: _("The handle from the side, with a ruler held against the door"), settles: ["handle.gap", "handle.projection"] },
  { words: _("The handle from above, with the door's edge in the picture"), settles: ["handle.grip_length", "backset"] },
  { words: _("The hinge side, with the door closed"), settles: ["stile_hinge", "leaf_thickness"] },
  { words: _("The wall beside the door, with the tape from the door's edge to it"), settles: ["wall_gap", "reveal", "casing_projection"] },
  { words: _("From the floor to the handle, with the tape upright"), settles: ["handle_height", "floor_gap"] },
  { words: _("The bead around the glass, close and from the side"), settles: ["bead_projection", "bead_width", "glass_recess"] },
  { words: _("Where the two leaves meet, from above"), settles: ["meeting_gap", "astragal_width", "astragal_projection"] },
  { words: _("What is above the door: frame, casing and ceiling"), settles: ["head_gap", "casing_width", "ceiling_height"] },
];

/**
 * The pictures that are still of use, each with what it settles; the whole door is always one.
 * @param {Astragal.Configuration} one
 */
export function photosWanted({ door, measured }) {
  const open = new Map(Astragal.kernel.asked_groups(door).flatMap(({ fields }) => fields)
    .filter(({ id }) => !measured.includes(id)).map(({ id, name }) => [id, name ?? ""]));
  const wanted = PHOTOS.map(({ words, settles }) => ({ words, names: settles.filter((id) => open.has(id)).map((id) => open.get(id) ?? "") }));
  return [
    { words: _("The whole door from the room, closed"), assumed: "" },
    ...wanted.filter(({ names }) => names.length > 0)
      .map(({ words, names }) => ({ words, assumed: _("Still assumed: {measures}", { measures: listed(names) }) })),
  ];
}
