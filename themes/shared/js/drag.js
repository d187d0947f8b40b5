// Taking hold of a rail on the drawing itself, by mouse, pen or finger.

const TILT_SWEEP = 320;

function centreOf(box) {
  return [(box.x0 + box.x1) / 2, (box.y0 + box.y1) / 2];
}

// How a part travels in a view: the way of its centre from one end of its leg to the other, on the paper.
function wayOf(app, configuration, units, view, leg) {
  const at = (value) => {
    const place = { ...configuration.place, [leg.moves]: value };
    return extentOf(app.ask.drawing(view, configuration, place, units).marks, `part-${leg.moves}`);
  };
  const from = at(leg.start[leg.moves]);
  const to = at(leg.end[leg.moves]);
  if (!from || !to) return null;
  const [x0, y0] = centreOf(from);
  const [x1, y1] = centreOf(to);
  const way = [x1 - x0, y1 - y0];
  if (Math.hypot(...way) > 60) return way;
  return leg.moves === "tilt" && view !== "plan" ? [0, TILT_SWEEP] : null;
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

function holdFor(app, drawing, shift, view, leg, unit) {
  const state = app.state();
  const extent = extentOf(drawing.marks, `part-${leg.moves}`);
  const way = extent && wayOf(app, currentOf(state), state.units, view, leg);
  if (!way) return null;
  const centre = centreOf(extent);
  const upright = Math.abs(way[1]) >= Math.abs(way[0]);
  const marks = view === "elevation" ? gripMarks(centre[0] + shift.dx, centre[1] + shift.dy, unit, upright) : [];
  const node = shape("g", { class: upright ? "hold upright" : "hold level", "data-moves": leg.moves },
    holdArea(extent, shift, unit), ...marks);
  node.addEventListener("pointerdown", (event) => startDrag(app, event, node, leg, way));
  return { node, view, moves: leg.moves, centre };
}

// The tilt's hold covers the whole covering, so the rails' holds lie over it.
function holdsFor(app, drawings, layout, only, unit) {
  const legs = [...app.legs()].sort((a, b) => (b.moves === "tilt") - (a.moves === "tilt"));
  const shownViews = VIEWS.filter((view) => only === "all" || only === view);
  return shownViews
    .flatMap((view) => legs.map((leg) => holdFor(app, drawings[view], layout.shifts[view], view, leg, unit)))
    .filter(Boolean);
}

function startDrag(app, event, hold, leg, way) {
  if (event.button !== 0) return;
  event.preventDefault();
  const from = app.stage.toMillimetres(event);
  const before = currentOf(app.state()).place;
  const startShare = shareAlong(leg, before);
  const length = way[0] * way[0] + way[1] * way[1];
  const svg = app.stage.svg;
  svg.setPointerCapture(event.pointerId);
  svg.classList.add("dragging");
  hold.classList.add("held");
  app.setDragging(true);
  app.travel.focus(leg.moves);

  const move = (moved) => {
    const [x, y] = app.stage.toMillimetres(moved);
    const share = startShare + ((x - from[0]) * way[0] + (y - from[1]) * way[1]) / length;
    app.move(leg.moves, valueAlong(leg, share), "none");
  };
  const end = () => {
    svg.removeEventListener("pointermove", move);
    svg.removeEventListener("pointerup", end);
    svg.removeEventListener("pointercancel", end);
    svg.classList.remove("dragging");
    hold.classList.remove("held");
    app.setDragging(false);
    app.settle(before);
  };
  svg.addEventListener("pointermove", move);
  svg.addEventListener("pointerup", end);
  svg.addEventListener("pointercancel", end);
}
