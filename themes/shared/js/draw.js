// Marks to SVG: the same runs, paths and classes as on the static pages (configurator/drawing/svg.py).

import { shape } from "./dom.js";
import { _ } from "./words.js";

// Shapes that are an element each.
const ALONE = ["text", "bars"];

/** @param {Astragal.Mark} mark */
function canJoin({ shape, fade, role }) {
  return !ALONE.includes(shape) && (fade === 0 || fade === 1 || Astragal.kernel.is_tone(role));
}

/** @param {Astragal.Mark[]} marks */
function runsOf(marks) {
  /** @type {Run[]} */
  const runs = [];
  /** @type {Run | null} */
  let last = null;
  for (const mark of marks) {
    if (last && canJoin(mark) && last.role === mark.role && last.fade === mark.fade) last.marks.push(mark);
    else runs.push((last = { role: mark.role, fade: mark.fade, shape: mark.shape, marks: [mark] }));
    if (!canJoin(mark)) last = null;
  }
  return runs;
}

/** @param {number} value */
export function short(value) {
  return Math.round(value * 10) / 10;
}

/** @param {number[]} given */
function circlePath([x, y, r]) {
  return `M${short(x - r)} ${short(y)}a${short(r)} ${short(r)} 0 1 0 ${short(2 * r)} 0a${short(r)} ${short(r)} 0 1 0 ${short(-2 * r)} 0z`;
}

/** @param {Astragal.Mark} mark */
function markPath({ shape, points }) {
  if (shape === "circle") return circlePath(points);
  if (shape === "bars") return `M${points[0]} ${points[1]}L${points[2]} ${points[3]}`;
  let x = short(points[0]);
  let y = short(points[1]);
  let d = `M${x} ${y}`;
  for (let i = 2; i < points.length; i += 2) {
    const nextX = short(points[i]);
    const nextY = short(points[i + 1]);
    if (nextY !== y) d += nextX === x ? `V${nextY}` : `L${nextX} ${nextY}`;
    else if (nextX !== x) d += `H${nextX}`;
    x = nextX;
    y = nextY;
  }
  return shape === "polygon" ? `${d}z` : d;
}

/** @param {Run} run */
function runNode(run) {
  return shape(run.shape === "text" ? "text" : "path");
}

/**
 * @param {Astragal.Mark} mark
 * @returns {Attributes}
 */
function textAttributes({ points, anchor, turn }) {
  const [x, y, size] = points.map(short);
  const turned = turn === 0 ? {} : { transform: `rotate(${turn} ${x} ${y})` };
  return { x, y, "font-size": size, "text-anchor": anchor, ...turned };
}

/**
 * @param {Run} run
 * @returns {Attributes}
 */
function pathAttributes({ marks, fade }) {
  const faint = fade < 1 ? { "fill-opacity": Math.round(fade * 1000) / 1000 } : {};
  return { d: marks.map(markPath).join(""), ...faint };
}

/**
 * A row of equal bars is one dashed line along its axis.
 * @param {Run} run
 * @returns {Attributes}
 */
function barAttributes({ role, fade, marks }) {
  const [across, thick, pitch] = marks[0].points.slice(4);
  return { class: role, d: markPath(marks[0]), "stroke-width": across, "stroke-dasharray": `${thick} ${pitch - thick}`, opacity: fade };
}

/**
 * @param {Run} run
 * @returns {Attributes}
 */
function attributesOf(run) {
  if (run.shape === "bars") return barAttributes(run);
  return { class: run.role, ...(run.shape === "text" ? textAttributes(run.marks[0]) : pathAttributes(run)) };
}

/**
 * @param {Element} node
 * @param {Attributes} attributes
 * @param {Attributes} worn
 */
function dress(node, attributes, worn) {
  for (const [name, value] of Object.entries(attributes)) if (worn[name] !== value) node.setAttribute(name, value);
  for (const name of Object.keys(worn)) if (!(name in attributes)) node.removeAttribute(name);
}

/**
 * @param {Astragal.Mark} a
 * @param {Astragal.Mark} b
 */
function sameMark(a, b) {
  if (a.shape !== b.shape || a.text !== b.text || a.anchor !== b.anchor || a.turn !== b.turn) return false;
  if (a.points.length !== b.points.length) return false;
  for (let i = 0; i < a.points.length; i++) if (a.points[i] !== b.points[i]) return false;
  return true;
}

/**
 * @param {Run} a
 * @param {Run} b
 */
function sameRun(a, b) {
  if (a.role !== b.role || a.fade !== b.fade || a.marks.length !== b.marks.length) return false;
  return a.marks.every((mark, i) => sameMark(mark, b.marks[i]));
}

/**
 * A layer remembers its runs, so that drawing again touches only what has moved.
 * @param {string} name
 * @returns {Layer}
 */
export function createLayer(name) {
  const group = shape("g", { class: name });
  /** @type {Run[]} */
  let shown = [];

  /** @param {Run[]} runs */
  function fit(runs) {
    const same = (/** @type {Run} */ run, /** @type {number} */ i) => shown[i] && (run.shape === "text") === (shown[i].shape === "text");
    const kept = runs.findIndex((run, i) => !same(run, i));
    const from = kept < 0 ? runs.length : kept;
    while (group.childElementCount > from) group.lastElementChild?.remove();
    shown = shown.slice(0, from);
    runs.slice(from).forEach((run) => group.append(runNode(run)));
  }

  return {
    group,
    draw(/** @type {Astragal.Mark[]} */ marks) {
      const runs = runsOf(marks);
      fit(runs);
      runs.forEach((run, i) => {
        const before = shown[i];
        const same = before && sameRun(run, before);
        if (same) {
          run.attributes = before.attributes;
          return;
        }
        run.attributes = attributesOf(run);
        dress(group.children[i], run.attributes, before?.attributes ?? {});
        if (run.shape === "text") group.children[i].textContent = run.marks[0].text;
      });
      shown = runs;
    },
  };
}

/** @param {number[]} given */
function circleSpan([x, y, r]) {
  return [x - r, y - r, x + r, y + r];
}

/** @param {Frame} box */
export function joined(box) {
  return [box.x, box.y, box.width, box.height].map(short).join(" ");
}

/**
 * What a drawing is called where it cannot be seen.
 * @param {Astragal.Drawing} drawing
 */
export function spoken({ title, desc }) {
  return _("{title}. {description}", { title, description: desc });
}

/**
 * The rectangle that the shapes fill.
 * @param {Astragal.Mark[]} marks
 * @returns {Extent}
 */
export function extentOf(marks) {
  const box = { x0: Infinity, x1: -Infinity, y0: Infinity, y1: -Infinity };
  for (const mark of marks) {
    // Bars lie on something larger.
    if (mark.shape === "text" || mark.shape === "bars") continue;
    const points = mark.shape === "circle" ? circleSpan(mark.points) : mark.points;
    for (let i = 0; i + 1 < points.length; i += 2) {
      box.x0 = Math.min(box.x0, points[i]);
      box.x1 = Math.max(box.x1, points[i]);
      box.y0 = Math.min(box.y0, points[i + 1]);
      box.y1 = Math.max(box.y1, points[i + 1]);
    }
  }
  return box;
}
