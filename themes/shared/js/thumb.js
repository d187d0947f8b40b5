// A door in a few lines, for the cards to choose from.

import { shape } from "./dom.js";
import { joined, short } from "./draw.js";
import { isPair, leafHeight, leafWidth } from "./fields.js";

/**
 * @param {number} x
 * @param {number} y
 * @param {number} width
 * @param {number} height
 */
function boxPath(x, y, width, height) {
  return `M${short(x)} ${short(y)}h${short(width)}v${short(height)}h${short(-width)}z`;
}

/**
 * @param {Astragal.Door} door
 * @param {number} x
 * @param {boolean} hingeLeft
 */
function leafPath(door, x, hingeLeft) {
  const glassX = x + (hingeLeft ? door.stile_hinge : door.stile_latch) + door.bead_width;
  const glassY = door.rail_top + door.bead_width;
  let d = boxPath(x, 0, leafWidth(door), leafHeight(door)) + boxPath(glassX, glassY, door.glass_width, door.glass_height);
  for (let i = 1; i < door.muntin_columns; i++) {
    d += `M${short(glassX + door.glass_width * i / door.muntin_columns)} ${short(glassY)}v${short(door.glass_height)}`;
  }
  for (let i = 1; i < door.muntin_rows; i++) {
    d += `M${short(glassX)} ${short(glassY + door.glass_height * i / door.muntin_rows)}h${short(door.glass_width)}`;
  }
  return d;
}

/**
 * @param {Astragal.Door} door
 * @param {number} x
 */
function sidelightPath(door, x) {
  const frame = (door.sidelight_width - door.sidelight_glass_width) / 2;
  return boxPath(x, 0, door.sidelight_width, leafHeight(door))
    + boxPath(x + frame, door.rail_top, door.sidelight_glass_width, door.glass_height);
}

/**
 * All doors stand on one floor and to one scale; the window is as high as the highest door is likely to be.
 * @param {Astragal.Door} door
 */
export function doorThumb(door) {
  const width = leafWidth(door);
  const height = leafHeight(door);
  const left = door.hinge_side === "left";
  const span = { from: 0, to: width };
  let d = leafPath(door, 0, left);
  if (isPair(door)) {
    d += leafPath(door, left ? width : -width, !left);
    if (left) span.to += width;
    else span.from -= width;
  }
  if (door.layout === "sidelights") {
    d += sidelightPath(door, -door.sidelight_width) + sidelightPath(door, width);
    span.from -= door.sidelight_width;
    span.to += door.sidelight_width;
  }
  const axis = left ? width - door.backset : door.backset;
  const top = height - 2500;
  const box = { x: span.from - 25, y: top, width: span.to - span.from + 50, height: 2525 };
  return shape("svg", { class: "door-thumb", viewBox: joined(box), "aria-hidden": "true", focusable: "false" },
    shape("path", { d }), shape("circle", { cx: axis, cy: short(height + door.floor_gap - door.handle_height), r: 36 }));
}
