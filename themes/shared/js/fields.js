// What the form asks of a door stands in the kernel's table; here is what of a door's own size the pages draw.

/** @param {Astragal.Door} door */
export function isPair(door) {
  return door.layout.endsWith("pair");
}

/** @param {Astragal.Door} door */
export function leafWidth(door) {
  return Astragal.kernel.leaf_width(door);
}

/** @param {Astragal.Door} door */
export function leafHeight(door) {
  return Astragal.kernel.leaf_height(door);
}
