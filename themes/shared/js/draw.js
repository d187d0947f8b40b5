// Marks to SVG: consecutive marks of one role become one path, as on the static pages.

function sameRun(a, b) {
  return a.role === b.role && a.fade === b.fade;
}

function runsOf(marks) {
  const runs = [];
  for (const mark of marks) {
    const last = runs[runs.length - 1];
    if (mark.shape !== "text" && last && last.marks[0].shape !== "text" && sameRun(last.marks[0], mark)) {
      last.marks.push(mark);
    } else {
      runs.push({ marks: [mark] });
    }
  }
  return runs;
}

function short(value) {
  return Math.round(value * 100) / 100;
}

function circlePath([cx, cy, r]) {
  return `M${short(cx - r)} ${short(cy)}a${short(r)} ${short(r)} 0 1 0 ${short(2 * r)} 0`
    + `a${short(r)} ${short(r)} 0 1 0 ${short(-2 * r)} 0z`;
}

function markPath(mark) {
  const p = mark.points;
  if (mark.shape === "circle") return circlePath(p);
  let d = `M${short(p[0])} ${short(p[1])}`;
  for (let i = 2; i < p.length; i += 2) d += `L${short(p[i])} ${short(p[i + 1])}`;
  return mark.shape === "polygon" ? `${d}z` : d;
}

function runNode(run) {
  return run.marks[0].shape === "text" ? shape("text") : shape("path");
}

function dress(node, run) {
  const mark = run.marks[0];
  node.setAttribute("class", mark.role);
  if (mark.fade > 0 || node.style.opacity !== "") node.style.setProperty("--fade", String(mark.fade));
  if (mark.shape !== "text") {
    node.setAttribute("d", run.marks.map(markPath).join(""));
    return;
  }
  const [x, y, size] = mark.points;
  node.setAttribute("x", String(short(x)));
  node.setAttribute("y", String(short(y)));
  node.setAttribute("font-size", String(short(size)));
  node.setAttribute("text-anchor", mark.anchor);
  if (mark.turn === 0) node.removeAttribute("transform");
  else node.setAttribute("transform", `rotate(${mark.turn} ${short(x)} ${short(y)})`);
  setText(node, mark.text);
}

function sameMark(a, b) {
  if (a.shape !== b.shape || a.role !== b.role || a.fade !== b.fade || a.text !== b.text) return false;
  if (a.anchor !== b.anchor || a.turn !== b.turn || a.points.length !== b.points.length) return false;
  for (let i = 0; i < a.points.length; i++) if (a.points[i] !== b.points[i]) return false;
  return true;
}

function sameMarks(a, b) {
  return a.length === b.length && a.every((mark, i) => sameMark(mark, b[i]));
}

// A layer remembers its runs, so that drawing it again touches only what has moved.
function createLayer() {
  const group = shape("g");
  let shown = [];
  return {
    group,
    draw(marks) {
      const runs = runsOf(marks);
      const kinds = (list) => list.map((run) => run.marks[0].shape === "text").join();
      if (kinds(runs) !== kinds(shown)) {
        group.replaceChildren(...runs.map(runNode));
        shown = [];
      }
      runs.forEach((run, i) => {
        if (!shown[i] || !sameMarks(run.marks, shown[i].marks)) dress(group.childNodes[i], run);
      });
      shown = runs;
    },
  };
}

function drawingNode(drawing, attributes = {}) {
  const layer = createLayer();
  layer.draw(drawing.marks);
  const box = [drawing.x, drawing.y, drawing.width, drawing.height].map(short).join(" ");
  return shape("svg", { viewBox: box, role: "img", "aria-label": `${drawing.title}. ${drawing.desc}`, ...attributes },
    layer.group);
}

// The rectangle that marks of a role fill, or null where there is none.
function extentOf(marks, role) {
  let box = null;
  for (const mark of marks) {
    if (!` ${mark.role} `.includes(` ${role} `) || mark.shape === "text") continue;
    const span = mark.shape === "circle" ? circleExtent(mark.points) : mark.points;
    for (let i = 0; i + 1 < span.length; i += 2) {
      box ??= { x0: span[i], x1: span[i], y0: span[i + 1], y1: span[i + 1] };
      box.x0 = Math.min(box.x0, span[i]);
      box.x1 = Math.max(box.x1, span[i]);
      box.y0 = Math.min(box.y0, span[i + 1]);
      box.y1 = Math.max(box.y1, span[i + 1]);
    }
  }
  return box;
}

function circleExtent([cx, cy, r]) {
  return [cx - r, cy - r, cx + r, cy + r];
}
