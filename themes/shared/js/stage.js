// The drawing table: elevation, section and plan on one sheet, to one scale, on shared axes.

const SHEET_GAP = 140;
const FINGER = 44;

function joined(box) {
  return [box.x, box.y, box.width, box.height].map(short).join(" ");
}

function unionOf(boxes) {
  const x = Math.min(...boxes.map((box) => box.x));
  const y = Math.min(...boxes.map((box) => box.y));
  return {
    x,
    y,
    width: Math.max(...boxes.map((box) => box.x + box.width)) - x,
    height: Math.max(...boxes.map((box) => box.y + box.height)) - y,
  };
}

// Section to the right of the elevation at the same heights, plan below it at the same widths.
function arranged({ elevation, section, plan }) {
  const shifts = {
    elevation: { dx: 0, dy: 0 },
    section: { dx: elevation.x + elevation.width + SHEET_GAP - section.x, dy: 0 },
    plan: { dx: 0, dy: elevation.y + elevation.height + SHEET_GAP - plan.y },
  };
  const boxes = {};
  for (const [view, drawing] of Object.entries({ elevation, section, plan })) {
    boxes[view] = {
      x: drawing.x + shifts[view].dx,
      y: drawing.y + shifts[view].dy,
      width: drawing.width,
      height: drawing.height,
    };
  }
  return { shifts, boxes, whole: unionOf(Object.values(boxes)) };
}

function createStage(app) {
  const layers = Object.fromEntries(VIEWS.map((view) => [view, createLayer()]));
  const holdLayer = shape("g", { class: "holds" });
  const groups = Object.fromEntries(VIEWS.map((view) =>
    [view, shape("g", { role: "img", class: `view-${view}` }, layers[view].group)]));
  const svg = shape("svg", { class: "stage-sheet drawing-sheet", preserveAspectRatio: "xMidYMid meet" },
    ...VIEWS.map((view) => groups[view]), holdLayer);
  let shown = null;
  let holds = [];
  let layout = null;
  let only = "all";

  function frame() {
    const box = only === "all" ? layout.whole : layout.boxes[only];
    svg.setAttribute("viewBox", joined(box));
    for (const view of VIEWS) groups[view].classList.toggle("put-away", only !== "all" && only !== view);
    placeHolds();
  }

  function lay(drawings) {
    const next = arranged(drawings);
    const moved = !layout || JSON.stringify(next) !== JSON.stringify(layout);
    layout = next;
    if (!moved) return;
    for (const view of VIEWS) {
      const { dx, dy } = layout.shifts[view];
      groups[view].setAttribute("transform", `translate(${short(dx)} ${short(dy)})`);
    }
    frame();
  }

  function describe(drawings) {
    for (const view of VIEWS) groups[view].setAttribute("aria-label", `${drawings[view].title}. ${drawings[view].desc}`);
  }

  function millimetresPerPixel() {
    const matrix = svg.getScreenCTM();
    return matrix && matrix.a > 0 ? 1 / matrix.a : 1;
  }

  function placeHolds() {
    if (!shown || app.dragging()) return;
    holds = holdsFor(app, shown, layout, only, FINGER * millimetresPerPixel());
    holdLayer.replaceChildren(...holds.map((hold) => hold.node));
  }

  // In the middle of a drag the holds only follow their parts.
  function slideHolds() {
    for (const hold of holds) {
      const extent = extentOf(shown[hold.view].marks, `part-${hold.moves}`);
      if (!extent) continue;
      const [x, y] = centreOf(extent);
      hold.node.setAttribute("transform", `translate(${short(x - hold.centre[0])} ${short(y - hold.centre[1])})`);
    }
  }

  new ResizeObserver(onFrame(placeHolds)).observe(svg);

  return {
    svg,
    draw(state, still) {
      const configuration = currentOf(state);
      shown = Object.fromEntries(VIEWS.map((view) =>
        [view, app.ask.drawing(view, configuration, configuration.place, state.units)]));
      lay(shown);
      for (const view of VIEWS) layers[view].draw(shown[view].marks);
      if (!still) {
        slideHolds();
        return;
      }
      describe(shown);
      placeHolds();
    },
    show(view) {
      only = view;
      frame();
    },
    focus(field) {
      svg.querySelectorAll(".in-focus").forEach((node) => node.classList.remove("in-focus"));
      if (!field) return;
      svg.querySelectorAll(`.focus-${field.replace("handle.", "handle_")}`).forEach((node) => node.classList.add("in-focus"));
    },
    toMillimetres(event) {
      const point = new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse());
      return [point.x, point.y];
    },
    perPixel: millimetresPerPixel,
  };
}
