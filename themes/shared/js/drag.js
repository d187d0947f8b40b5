// Taking hold of a rail on the drawing itself, by mouse, pen or finger.

import { shape } from "./dom.js";
import { short } from "./draw.js";
import { activeOf } from "./state.js";
import { partAt, shareAlong, valueAlong } from "./travel.js";
import { byView, VIEWS } from "./views.js";

// Turning has no way of its own on the paper: this many millimeters of hand turn it from end to end.
const TILT_SWEEP = 400;
const LEAST_WAY = 60;

// What is taken hold of in a view: none where it is not to be had, or has no way there.
/** @typedef {{ held: Astragal.Hold | null, view: View, leg: Astragal.Leg, way: number[] | null }} Grasp */

/** @param {Extent} box */
export function centerOf(box) {
  return [(box.x0 + box.x1) / 2, (box.y0 + box.y1) / 2];
}

/**
 * A hold as a view shows it on the paper: elevation, section and plan look along z, x and y.
 * @param {Astragal.Hold} hold
 * @param {View} view
 * @returns {Extent}
 */
export function onPaper({ x0, x1, y0, y1, z0, z1 }, view) {
  if (view === "elevation") return { x0, x1, y0: -y1, y1: -y0 };
  return view === "section" ? { x0: z0, x1: z1, y0: -y1, y1: -y0 } : { x0, x1, y0: z0, y1: z1 };
}

/**
 * How a part travels in each view: the way of its center, on the paper, from one end of its leg to the other.
 * @param {App} app
 * @param {Astragal.Leg} leg
 */
function waysOf(app, leg) {
  const configuration = activeOf(app.state());
  const legs = app.legs();
  const at = (/** @type {number} */ value) => app.ask.hold(configuration, Astragal.kernel.moved_to(legs, configuration.place, leg.moves, value), leg);
  const from = at(partAt(leg.start, leg.moves));
  const to = at(partAt(leg.end, leg.moves));
  return byView((view) => (from && to ? wayBetween(onPaper(from, view), onPaper(to, view), view, leg.way) : null));
}

/**
 * @param {Extent} start
 * @param {Extent} end
 * @param {View} view
 * @param {string} way
 */
function wayBetween(start, end, view, way) {
  const [x0, y0] = centerOf(start);
  const [x1, y1] = centerOf(end);
  if (way === "turn") return view === "plan" ? null : [0, TILT_SWEEP];
  return Math.hypot(x1 - x0, y1 - y0) > LEAST_WAY ? [x1 - x0, y1 - y0] : null;
}

/**
 * A disc with two arrow heads; its size is that of a finger on the screen, not of anything on the door.
 * @param {number} x
 * @param {number} y
 * @param {number} unit
 * @param {boolean} upright
 */
function gripMarks(x, y, unit, upright) {
  const r = unit * 0.32;
  const far = r * 0.62;
  const near = r * 0.24;
  const wide = r * 0.32;
  const heads = upright
    ? [[[-wide, -near], [0, -far], [wide, -near]], [[-wide, near], [0, far], [wide, near]]]
    : [[[-near, -wide], [-far, 0], [-near, wide]], [[near, -wide], [far, 0], [near, wide]]];
  const d = heads.map((head) => `M${head.map(([dx, dy]) => `${short(x + dx)} ${short(y + dy)}`).join("L")}`).join("");
  return [
    shape("circle", { class: "grip", cx: short(x), cy: short(y), r: short(r) }),
    shape("path", { class: "grip-heads", d }),
  ];
}

/**
 * @param {Extent} extent
 * @param {Shift} shift
 * @param {number} unit
 */
function holdArea(extent, shift, unit) {
  const grow = (/** @type {number} */ low, /** @type {number} */ high) => Math.max(0, (unit - (high - low)) / 2);
  const dx = grow(extent.x0, extent.x1);
  const dy = grow(extent.y0, extent.y1);
  return shape("rect", {
    class: "hold-area",
    x: short(extent.x0 - dx + shift.dx),
    y: short(extent.y0 - dy + shift.dy),
    width: short(extent.x1 - extent.x0 + dx * 2),
    height: short(extent.y1 - extent.y0 + dy * 2),
  });
}

/**
 * @param {App} app
 * @param {Grasp} grasp
 * @param {Shift} shift
 * @param {number} unit
 */
function holdFor(app, { held, view, leg, way }, shift, unit) {
  if (!held || !way) return null;
  const extent = onPaper(held, view);
  const center = centerOf(extent);
  const upright = Math.abs(way[1]) >= Math.abs(way[0]);
  const marks = view === "elevation" ? gripMarks(center[0] + shift.dx, center[1] + shift.dy, unit, upright) : [];
  const node = shape("g", { class: upright ? "hold upright" : "hold level", "data-moves": leg.moves },
    holdArea(extent, shift, unit), ...marks);
  node.addEventListener("pointerdown", (event) => startDrag(app, event, node, leg, way));
  return { node, view, leg, center };
}

/**
 * The tilt's hold covers the whole covering, so the rails' holds lie over it.
 * @param {App} app
 * @param {SheetLayout} layout
 * @param {string} only
 * @param {number} unit
 */
export function holdsFor(app, layout, only, unit) {
  const configuration = activeOf(app.state());
  const legs = [...app.legs()].sort((a, b) => Number(b.way === "turn") - Number(a.way === "turn"));
  const shownViews = VIEWS.filter((view) => only === "all" || only === view);
  return legs
    .flatMap((leg) => {
      const ways = waysOf(app, leg);
      const held = app.ask.hold(configuration, configuration.place, leg);
      return shownViews.map((view) => holdFor(app, { held, view, leg, way: ways[view] }, layout.shifts[view], unit));
    })
    .filter((hold) => hold !== null);
}

/**
 * @param {App} app
 * @param {PointerEvent} event
 * @param {SVGElement} hold
 * @param {Astragal.Leg} leg
 * @param {number[]} way
 */
function startDrag(app, event, hold, leg, way) {
  if (event.button !== 0) return;
  event.preventDefault();
  const toSheet = app.stage.toSheet();
  const onSheet = (/** @type {PointerEvent} */ { clientX, clientY }) => new DOMPoint(clientX, clientY).matrixTransform(toSheet);
  const from = onSheet(event);
  const before = activeOf(app.state()).place;
  const startShare = shareAlong(leg, before);
  const length = way[0] * way[0] + way[1] * way[1];
  const svg = app.stage.svg;
  svg.setPointerCapture(event.pointerId);
  svg.classList.add("dragging");
  hold.classList.add("held");
  app.beginDrag(leg.moves);

  const move = (/** @type {PointerEvent} */ moved) => {
    const to = onSheet(moved);
    const share = startShare + ((to.x - from.x) * way[0] + (to.y - from.y) * way[1]) / length;
    app.move(leg, valueAlong(leg, share));
  };
  const end = () => {
    svg.removeEventListener("pointermove", move);
    svg.removeEventListener("pointerup", end);
    svg.removeEventListener("pointercancel", end);
    svg.classList.remove("dragging");
    hold.classList.remove("held");
    app.endDrag(before);
  };
  svg.addEventListener("pointermove", move);
  svg.addEventListener("pointerup", end);
  svg.addEventListener("pointercancel", end);
}
