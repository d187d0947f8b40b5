// Views laid out on one sheet.

import { unionOf } from "./sheetlayout.js";
import { byView } from "./views.js";

const SHEET_GAP = 70;

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
