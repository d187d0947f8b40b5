// Views laid out on one sheet, and the windows through which they are seen.

import { extentOf } from "./draw.js";
import { byView } from "./views.js";

const SHEET_GAP = 70;
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
 * Section to the right of the elevation at the same heights, plan below it at the same widths.
 * @param {ByView<Frame>} views
 * @returns {SheetLayout}
 */
export function arranged(views) {
  const { kernel } = Astragal;
  // The kernel asks no more of a drawing than its window.
  const { elevation, section, plan } = /** @type {Drawings} */ (views);
  const shifts = {
    elevation: { dx: 0, dy: 0 },
    section: { dx: kernel.section_shift(elevation, section, SHEET_GAP), dy: 0 },
    plan: { dx: 0, dy: kernel.plan_shift(elevation, plan, SHEET_GAP) },
  };
  const boxes = byView((view) => {
    const { x, y, width, height } = views[view];
    return { x: x + shifts[view].dx, y: y + shifts[view].dy, width, height };
  });
  return { shifts, boxes, whole: unionOf(Object.values(boxes)) };
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
