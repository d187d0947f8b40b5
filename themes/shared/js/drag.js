// Taking hold of a rail on the drawing itself, by mouse, pen or finger.

import { setAttribute, shape } from "./dom.js";
import { short } from "./draw.js";
import { activeOf } from "./state.js";
import { partAt, shareAlong, valueAlong } from "./travel.js";
import { byView } from "./views.js";

// Turning has no way of its own on the paper: this many millimeters of hand turn it from end to end.
const TILT_SWEEP = 400;
const LEAST_WAY = 60;

// How large a grip is, in parts of a finger's width.
const GRIP = 0.32;
// Where on a covering that turns its grip may stand, in shares of its width and height; the sooner the better.
const GRIP_SPOTS = [[0.5, 0.5], [0.5, 0.25], [0.25, 0.5], [0.75, 0.5]];

/**
 * What is taken hold of in a view, and the areas of the holds that lie over it.
 * @typedef {{ extent: Extent, view: View, leg: Astragal.Leg, way: number[], over: Extent[] }} Grasp
 * @typedef {{ node: SVGElement, view: View, leg: Astragal.Leg, center: number[], seen: boolean }} Held
 */

/** @param {Extent} box */
function centerOf(box) {
  return [(box.x0 + box.x1) / 2, (box.y0 + box.y1) / 2];
}

/**
 * A hold as a view shows it on the paper: elevation, section and plan look along z, x and y.
 * @param {Astragal.Hold} hold
 * @param {View} view
 * @returns {Extent}
 */
function onPaper({ x0, x1, y0, y1, z0, z1 }, view) {
  if (view === "elevation") return { x0, x1, y0: -y1, y1: -y0 };
  return view === "section" ? { x0: z0, x1: z1, y0: -y1, y1: -y0 } : { x0, x1, y0: z0, y1: z1 };
}

/**
 * Where a hand takes hold of what a leg moves; null where it is not to be had.
 * @param {App} app
 * @param {Astragal.Configuration} one
 * @param {Astragal.Position} place
 * @param {Astragal.Leg} leg
 */
function holdAt(app, one, place, leg) {
  return Astragal.kernel.holds_at(app.ask.fit(one), place, leg)[0] ?? null;
}

/**
 * How a part travels in each view: the way of its center, on the paper, from one end of its leg to the other.
 * @param {App} app
 * @param {Astragal.Leg} leg
 */
function waysOf(app, leg) {
  const configuration = activeOf(app.state());
  const legs = app.legs();
  const at = (/** @type {number} */ value) => holdAt(app, configuration, Astragal.kernel.moved_to(legs, configuration.place, leg.moves, value), leg);
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
  const r = unit * GRIP;
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
 * A finger wide each way at least.
 * @param {Extent} extent
 * @param {number} unit
 * @returns {Extent}
 */
function grown({ x0, x1, y0, y1 }, unit) {
  const dx = Math.max(0, (unit - (x1 - x0)) / 2);
  const dy = Math.max(0, (unit - (y1 - y0)) / 2);
  return { x0: x0 - dx, x1: x1 + dx, y0: y0 - dy, y1: y1 + dy };
}

/**
 * @param {Extent} area
 * @param {Shift} shift
 */
function holdArea({ x0, x1, y0, y1 }, { dx, dy }) {
  return shape("rect", { class: "hold-area", x: short(x0 + dx), y: short(y0 + dy), width: short(x1 - x0), height: short(y1 - y0) });
}

/**
 * How far a point is from an area; 0 within it.
 * @param {number[]} point
 * @param {Extent} area
 */
function distance([x, y], { x0, x1, y0, y1 }) {
  return Math.hypot(Math.max(x0 - x, x - x1, 0), Math.max(y0 - y, y - y1, 0));
}

/**
 * Where a grip stands: in the middle, or beside it where another hold lies over the middle; null where one lies over all.
 * @param {Grasp} grasp
 * @param {number} unit
 */
function gripSpot({ extent: { x0, x1, y0, y1 }, over }, unit) {
  const spots = GRIP_SPOTS.map(([across, down]) => [x0 + (x1 - x0) * across, y0 + (y1 - y0) * down]);
  const room = (/** @type {number[]} */ spot) => Math.min(unit * GRIP, ...over.map((area) => distance(spot, area)));
  const best = spots.reduce((found, spot) => (room(spot) > room(found) ? spot : found));
  return room(best) > 0 ? best : null;
}

/**
 * @param {App} app
 * @param {Grasp} grasp
 * @param {Shift} shift
 * @param {number} unit
 * @returns {Held}
 */
function holdFor(app, grasp, shift, unit) {
  const { extent, view, leg, way } = grasp;
  const spot = view === "elevation" ? gripSpot(grasp, unit) : null;
  const upright = Math.abs(way[1]) >= Math.abs(way[0]);
  const marks = spot ? gripMarks(spot[0] + shift.dx, spot[1] + shift.dy, unit, upright) : [];
  const node = shape("g", { class: upright ? "hold upright" : "hold level", "data-moves": leg.moves },
    holdArea(grown(extent, unit), shift), ...marks);
  node.addEventListener("touchstart", keepTouch, { passive: false });
  node.addEventListener("pointerdown", (event) => startDrag(app, event, node, grasp));
  return { node, view, leg, center: centerOf(extent), seen: marks.length > 0 };
}

/**
 * What is to be taken hold of in a view, none of it where it is not to be had or has no way there.
 * @param {{ leg: Astragal.Leg, held: Astragal.Hold | null, ways: ByView<number[] | null> }[]} parts
 * @param {View} view
 * @param {number} unit
 * @returns {Grasp[]}
 */
function graspsIn(parts, view, unit) {
  const grasps = parts.flatMap(({ leg, held, ways }) => {
    const way = ways[view];
    return held && way ? [{ extent: onPaper(held, view), view, leg, way }] : [];
  });
  const turns = (/** @type {{ leg: Astragal.Leg }} */ { leg }) => leg.way === "turn";
  const rails = grasps.filter((grasp) => !turns(grasp));
  const areas = rails.map(({ extent }) => grown(extent, unit));
  // A part that turns is held all over the covering, so the rails' holds lie over it.
  return [...grasps.filter(turns).map((grasp) => ({ ...grasp, over: areas })), ...rails.map((grasp) => ({ ...grasp, over: [] }))];
}

/**
 * @param {App} app
 * @param {SheetLayout} layout
 * @param {View[]} views
 * @param {number} unit
 */
export function holdsFor(app, layout, views, unit) {
  const one = activeOf(app.state());
  const parts = app.legs().map((leg) => ({ leg, held: holdAt(app, one, one.place, leg), ways: waysOf(app, leg) }));
  return views.flatMap((view) => graspsIn(parts, view, unit).map((grasp) => holdFor(app, grasp, layout.shifts[view], unit)));
}

/**
 * In the middle of a drag the grips only follow their parts; areas that nobody sees wait until the hand rests.
 * @param {App} app
 * @param {Held[]} holds
 * @param {Astragal.Configuration} one
 */
export function slideHolds(app, holds, one) {
  for (const { node, view, leg, center } of holds.filter(({ seen }) => seen)) {
    const held = holdAt(app, one, one.place, leg);
    if (!held) continue;
    const [x, y] = centerOf(onPaper(held, view));
    setAttribute(node, "transform", `translate(${short(x - center[0])} ${short(y - center[1])})`);
  }
}

/**
 * The touch that takes hold of a part is no swipe: not every browser heeds what the style says of parts of a drawing.
 * @param {TouchEvent} event
 */
function keepTouch(event) {
  // One that stops a page still rolling cannot be kept.
  if (event.cancelable) event.preventDefault();
}

/**
 * @param {App} app
 * @param {PointerEvent} event
 * @param {SVGElement} hold
 * @param {Grasp} grasp
 */
function startDrag(app, event, hold, { leg, way, view }) {
  if (event.button !== 0 || app.dragging()) return;
  event.preventDefault();
  const toSheet = app.stage.toSheet();
  const onSheet = (/** @type {PointerEvent} */ { clientX, clientY }) => new DOMPoint(clientX, clientY).matrixTransform(toSheet);
  const from = onSheet(event);
  const before = activeOf(app.state()).place;
  const startShare = shareAlong(leg, before);
  const length = way[0] * way[0] + way[1] * way[1];
  const { svg } = app.stage;
  svg.setPointerCapture(event.pointerId);
  svg.classList.add("dragging");
  hold.classList.add("held");
  app.beginDrag(leg.moves, view);

  const end = () => {
    svg.classList.remove("dragging");
    hold.classList.remove("held");
    app.endDrag(before);
  };
  followPointer(svg, event.pointerId, {
    move(moved) {
      const to = onSheet(moved);
      const share = startShare + ((to.x - from.x) * way[0] + (to.y - from.y) * way[1]) / length;
      const value = valueAlong(leg, share);
      // A hand that goes on beyond the end moves nothing.
      if (value !== partAt(activeOf(app.state()).place, leg.moves)) app.move(leg, value);
    },
    end,
    // The browser has made another gesture of it.
    cancel() {
      app.moveTo(before);
      end();
    },
  });
}

/**
 * What one pointer does until it is lifted, whatever other fingers do meanwhile.
 * @param {SVGElement} svg
 * @param {number} pointer
 * @param {{ move: (event: PointerEvent) => void, end: () => void, cancel: () => void }} tasks
 */
function followPointer(svg, pointer, { move, end, cancel }) {
  const followed = new AbortController();
  const on = (/** @type {"pointermove" | "pointerup" | "pointercancel"} */ kind, /** @type {(event: PointerEvent) => void} */ task) =>
    svg.addEventListener(kind, (event) => event.pointerId === pointer && task(event), { signal: followed.signal });
  const last = (/** @type {() => void} */ task) => () => {
    followed.abort();
    task();
  };
  on("pointermove", move);
  on("pointerup", last(end));
  on("pointercancel", last(cancel));
}
