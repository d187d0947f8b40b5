// The drawing table: elevation, section and plan on one sheet, to one scale, on shared axes.

import { arranged } from "./arranged.js";
import { element, shape } from "./dom.js";
import { createLayer, joined, short, spoken } from "./draw.js";
import { paint } from "./paint.js";
import { bareBox, unionOf } from "./sheetlayout.js";
import { activeOf } from "./state.js";
import { byView, VIEWS } from "./views.js";

const FINGER = 44;
// Letters smaller than this on the screen say nothing: the sheet is then shown without its annotation.
const LEAST_LETTERS = 7;
const FOCUS_LETTERS = 13;

/**
 * The windows of the views without their annotation, the same at every position.
 * @param {Drawings[]} manyDrawings
 */
function bareWindows(manyDrawings) {
  return byView((view) => unionOf(manyDrawings.map((drawings) => bareBox(drawings[view]))));
}

/**
 * @param {App} app
 * @param {Lights} lights
 * @returns {Stage}
 */
export function createStage(app, lights) {
  const still = byView(() => createLayer("still"));
  const moving = byView(() => createLayer("moving"));
  const focused = byView(() => createLayer("in-focus"));
  const under = byView((view) => shape("g", {}, still[view].group));
  const groups = byView((view) => shape("g", {}, moving[view].group, focused[view].group));
  const holdLayer = shape("g", { class: "holds" });
  // Two sheets, one over the other: a drag leaves the lower one as it was laid out and painted.
  const lower = shape("svg", { class: "stage-sheet drawing-sheet", "aria-hidden": "true" }, ...VIEWS.map((view) => under[view]));
  const svg = shape("svg", { class: "stage-sheet moving-sheet drawing-sheet" }, ...VIEWS.map((view) => groups[view]), holdLayer);
  const node = element("div", { class: "sheet-frame" }, element("div", { class: "sheet-inner" }, lower, svg));
  /** @type {Drawings} */
  let shown;
  /** @type {SheetLayout} */
  let layout;
  /** @type {Pick<typeof import("./drag.js"), "holdsFor" | "slideHolds"> | null} */
  let hands = null;
  /** @type {ReturnType<typeof import("./drag.js").holdsFor>} */
  let holds = [];
  // As the browser has laid it out: asking it for that would make it lay out again.
  let room = { width: 0, height: 0 };
  let only = "all";
  let field = "";
  let far = false;
  /** @type {typeof import("./focus.js").focusMarks | null} */
  let marksOf = null;

  const isShown = (/** @type {View} */ view) => only === "all" || only === view;
  const boxOf = (/** @type {SheetLayout} */ sheet) => (only === "all" ? sheet.whole : sheet.boxes[/** @type {View} */ (only)]);
  const millimetresPerPixel = (/** @type {Frame} */ box) => Math.max(box.width / room.width, box.height / room.height);
  const letters = () => shown.elevation.marks.find((mark) => mark.shape === "text")?.points[2] ?? 56;

  function lay() {
    const full = arranged(shown);
    far = letters() / millimetresPerPixel(boxOf(full)) < LEAST_LETTERS;
    layout = far ? arranged(bareWindows([shown, ...app.ask.endDrawings(activeOf(app.state()), app.state().units)])) : full;
    node.classList.toggle("far", far);
    for (const sheet of [lower, svg]) sheet.setAttribute("viewBox", joined(boxOf(layout)));
    for (const view of VIEWS) {
      const { dx, dy } = layout.shifts[view];
      for (const group of [under[view], groups[view]]) {
        group.setAttribute("transform", `translate(${short(dx)} ${short(dy)})`);
        group.classList.toggle("put-away", !isShown(view));
      }
    }
  }

  function describe() {
    for (const view of VIEWS) {
      groups[view].setAttribute("role", "img");
      groups[view].setAttribute("aria-label", spoken(shown[view]));
    }
  }

  function showFocus() {
    const size = Math.max(letters(), FOCUS_LETTERS * millimetresPerPixel(boxOf(layout)));
    /** @type {Partial<ByView<Astragal.Mark[]>>} */
    const own = field === "" || !marksOf ? {} : marksOf(app.state(), shown, field, size, far);
    // From outside left and right are exchanged, and nobody measures there.
    for (const view of VIEWS) focused[view].draw(view === "elevation" && lights.fromOutside() ? [] : own[view] ?? []);
    node.classList.toggle("has-focus", field !== "");
  }

  function placeHolds() {
    // What is fetched may come when the step is over, or in the middle of a drag.
    if (room.width === 0 || app.dragging()) return;
    if (!hands) {
      app.fetched(import("./drag.js"), ({ holdsFor, slideHolds }) => {
        hands = { holdsFor, slideHolds };
        placeHolds();
      });
      return;
    }
    // Nor does a hand reach the rails through the glass.
    const reached = VIEWS.filter((view) => isShown(view) && !(view === "elevation" && lights.fromOutside()));
    holds = hands.holdsFor(app, layout, reached, FINGER * millimetresPerPixel(boxOf(layout)));
    holdLayer.replaceChildren(...holds.map((hold) => hold.node));
  }

  /**
   * @param {Astragal.Configuration} one
   * @param {string} units
   */
  function drawAll(one, units) {
    shown = app.ask.drawings(one, one.place, units);
    paint(svg, shown.elevation.look);
    const counts = app.ask.stillCounts(one, units);
    for (const view of VIEWS) {
      still[view].draw(shown[view].marks.slice(0, counts[view]));
      moving[view].draw(shown[view].marks.slice(counts[view]));
    }
    describe();
    settle();
  }

  function settle() {
    if (!shown || app.dragging() || room.width === 0) return;
    lay();
    showFocus();
    app.inTurn("holds", placeHolds);
  }

  // Before it is painted, so that it is never seen as it was laid out for another size.
  new ResizeObserver(([{ contentRect }]) => {
    room = contentRect;
    settle();
  }).observe(svg);

  return {
    node,
    svg,
    draw: (state) => drawAll(activeOf(state), state.units),
    move(state, views) {
      const one = activeOf(state);
      const seen = only === "all" ? views : [/** @type {View} */ (only)];
      const marks = app.ask.movingMarks(seen, one, one.place, state.units, !far);
      seen.forEach((view, i) => moving[view].draw(marks[i]));
      hands?.slideHolds(app, holds, one);
    },
    show(view) {
      only = view;
      settle();
    },
    focus(id) {
      field = id;
      if (marksOf) showFocus();
      else app.fetched(import("./focus.js"), ({ focusMarks }) => {
        marksOf = focusMarks;
        showFocus();
      });
    },
    // From the screen to millimeters on the sheet; asked for once a drag, since asking makes the browser lay out.
    toSheet: () => (svg.getScreenCTM() ?? new DOMMatrix()).inverse(),
  };
}
