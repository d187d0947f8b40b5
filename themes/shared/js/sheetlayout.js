// The windows through which drawings are seen.

import { extentOf } from "./draw.js";

const ANNOTATION = ["dim", "tick", "dim-text", "label", "axis-line", "swing"];

/** @param {Frame[]} boxes */
export function unionOf(boxes) {
  const x = Math.min(...boxes.map((box) => box.x));
  const y = Math.min(...boxes.map((box) => box.y));
  return {
    x,
    y,
    width: Math.max(...boxes.map((box) => box.x + box.width)) - x,
    height: Math.max(...boxes.map((box) => box.y + box.height)) - y,
  };
}

/**
 * What is drawn of the thing itself.
 * @param {Astragal.Mark[]} marks
 */
export function bareMarks(marks) {
  return marks.filter((mark) => !mark.role.split(" ").some((role) => ANNOTATION.includes(role)));
}

/** @param {{ marks: Astragal.Mark[] }} drawing */
export function bareBox(drawing) {
  const { x0, x1, y0, y1 } = extentOf(bareMarks(drawing.marks));
  return { x: x0 - 30, y: y0 - 30, width: x1 - x0 + 60, height: y1 - y0 + 60 };
}
