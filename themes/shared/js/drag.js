// Taking hold of a rail on the drawing itself, by mouse, pen or finger.

// Turning has no way of its own on the paper: this many millimetres of hand turn it from end to end.
const TILT_SWEEP = 400;
const LEAST_WAY = 60;

function centreOf(box) {
  return [(box.x0 + box.x1) / 2, (box.y0 + box.y1) / 2];
}

// How a part travels in each view: the way of its centre, on the paper, from one end of its leg to the other.
function waysOf(app, leg) {
  const state = app.state();
  const configuration = activeOf(state);
  const at = (value) => app.ask.drawings(configuration, placeMoved(app.family(), leg, configuration.place, value), state.units);
  const from = at(leg.start[leg.moves]);
  const to = at(leg.end[leg.moves]);
  return Object.fromEntries(VIEWS.map((view) => [view, wayBetween(from[view], to[view], view, leg.moves)]));
}

function wayBetween(from, to, view, moves) {
  const start = extentOf(from.marks, `part-${moves}`);
  const end = extentOf(to.marks, `part-${moves}`);
  if (!start || !end) return null;
  const [x0, y0] = centreOf(start);
  const [x1, y1] = centreOf(end);
  if (Math.hypot(x1 - x0, y1 - y0) > LEAST_WAY) return [x1 - x0, y1 - y0];
  return moves === "tilt" && view !== "plan" ? [0, TILT_SWEEP] : null;
}

// A disc with two arrow heads; its size is that of a finger on the screen, not of anything on the door.
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

// The grip sits on the active leaf's covering, even where a second leaf's goes with it.
function onActiveLeaf(app, extent) {
  const width = leafWidth(activeOf(app.state()).door);
  const x0 = Math.max(extent.x0, 0);
  const x1 = Math.min(extent.x1, width);
  const apart = app.ask.answer(activeOf(app.state())).size.mount === "on-leaf";
  return apart && x1 > x0 ? { ...extent, x0, x1 } : extent;
}

function holdArea(extent, shift, unit) {
  const grow = (low, high) => Math.max(0, (unit - (high - low)) / 2);
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

function holdFor(app, drawing, shift, view, leg, way, unit) {
  const extent = extentOf(drawing.marks, `part-${leg.moves}`);
  if (!extent || !way) return null;
  const middle = (span) => centreOf(view === "elevation" ? onActiveLeaf(app, span) : span);
  const centre = middle(extent);
  const upright = Math.abs(way[1]) >= Math.abs(way[0]);
  const marks = view === "elevation" ? gripMarks(centre[0] + shift.dx, centre[1] + shift.dy, unit, upright) : [];
  const node = shape("g", { class: upright ? "hold upright" : "hold level", "data-moves": leg.moves },
    holdArea(extent, shift, unit), ...marks);
  node.addEventListener("pointerdown", (event) => startDrag(app, event, node, leg, way));
  return { node, view, moves: leg.moves, middle, centre };
}

// The tilt's hold covers the whole covering, so the rails' holds lie over it.
function holdsFor(app, drawings, layout, only, unit) {
  const legs = [...app.legs()].sort((a, b) => (b.moves === "tilt") - (a.moves === "tilt"));
  const shownViews = VIEWS.filter((view) => only === "all" || only === view);
  return legs
    .flatMap((leg) => {
      const ways = waysOf(app, leg);
      return shownViews.map((view) => holdFor(app, drawings[view], layout.shifts[view], view, leg, ways[view], unit));
    })
    .filter(Boolean);
}

function startDrag(app, event, hold, leg, way) {
  if (event.button !== 0) return;
  event.preventDefault();
  const toSheet = app.stage.toSheet();
  const onSheet = ({ clientX, clientY }) => new DOMPoint(clientX, clientY).matrixTransform(toSheet);
  const from = onSheet(event);
  const before = activeOf(app.state()).place;
  const startShare = shareAlong(leg, before);
  const length = way[0] * way[0] + way[1] * way[1];
  const svg = app.stage.svg;
  svg.setPointerCapture(event.pointerId);
  svg.classList.add("dragging");
  hold.classList.add("held");
  app.beginDrag(leg.moves);

  const move = (moved) => {
    const to = onSheet(moved);
    const share = startShare + ((to.x - from.x) * way[0] + (to.y - from.y) * way[1]) / length;
    app.move(leg, valueAlong(leg, share), "none");
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
