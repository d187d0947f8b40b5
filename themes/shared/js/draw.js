// Marks to SVG: the same runs and classes as on the static pages (configurator/drawing/svg.py), where each run is a path.

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
  const half = `a${placed([r, r])} 0 1 0 `;
  return `M${placed([x - r, y])}${half}${short(2 * r)} 0${half}${short(-2 * r)} 0z`;
}

/** @param {number[]} points */
function placed(points) {
  return points.map(short).join(" ");
}

/** @param {Astragal.Mark} mark */
function markPath({ shape, points }) {
  if (shape === "circle") return circlePath(points);
  return `M${placed(points)}${shape === "polygon" ? "z" : ""}`;
}

/**
 * The element that shows a run: a path, whose style a browser works out anew with each outline, only where it must be.
 * @param {Run} run
 */
function tagOf({ shape, marks }) {
  if (marks.length > 1 || shape === "circle") return "path";
  return shape === "text" || shape === "polygon" ? shape : "polyline";
}

/**
 * A text that is turned moves without being turned anew.
 * @param {Astragal.Mark} mark
 * @returns {Attributes}
 */
function textAttributes({ points, anchor, turn }) {
  const [x, y, size] = points.map(short);
  const at = turn === 0 ? { x, y } : { x: -y, y: x, transform: "rotate(-90)" };
  return { ...at, "font-size": size, "text-anchor": anchor };
}

/**
 * @param {Run} run
 * @returns {Attributes}
 */
function shapeAttributes(run) {
  const { marks, fade } = run;
  const faint = fade < 1 ? { "fill-opacity": Math.round(fade * 1000) / 1000 } : {};
  return { ...(tagOf(run) === "path" ? { d: marks.map(markPath).join("") } : { points: placed(marks[0].points) }), ...faint };
}

/**
 * A row of equal bars is one dashed line along its axis.
 * @param {Run} run
 * @returns {Attributes}
 */
function barAttributes({ role, fade, marks }) {
  const [across, thick, pitch] = marks[0].points.slice(4);
  return { class: role, points: placed(marks[0].points.slice(0, 4)), "stroke-width": across, "stroke-dasharray": `${thick} ${pitch - thick}`, opacity: fade };
}

/**
 * @param {Run} run
 * @returns {Attributes}
 */
function attributesOf(run) {
  if (run.shape === "bars") return barAttributes(run);
  return { class: run.role, ...(run.shape === "text" ? textAttributes(run.marks[0]) : shapeAttributes(run)) };
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
  return a.shape === b.shape && a.text === b.text && a.anchor === b.anchor && a.turn === b.turn
    && a.points.length === b.points.length && a.points.every((value, i) => value === b.points[i]);
}

/**
 * @param {Run} a
 * @param {Run} b
 */
function sameRun(a, b) {
  return a.role === b.role && a.fade === b.fade && a.marks.length === b.marks.length
    && a.marks.every((mark, i) => sameMark(mark, b.marks[i]));
}

/**
 * Whether one node can show the one and then the other.
 * @param {Run} a
 * @param {Run} b
 */
function alike(a, b) {
  return a.role === b.role && tagOf(a) === tagOf(b);
}

/**
 * A layer remembers its runs, so that drawing again touches only what has moved.
 * @param {string} name
 * @returns {Layer}
 */
export function createLayer(name) {
  const group = shape("g", { class: name });
  /** @type {ShownRun[]} */
  let shown = [];

  /**
   * What is alike from either end keeps its node: what comes or goes in between changes nothing else. In between, a
   * node of the same kind is dressed anew: to take one away and lay out another is more work.
   * @param {Run[]} runs
   */
  function fit(runs) {
    let head = 0;
    let end = runs.length;
    let was = shown.length;
    while (head < end && head < was && alike(runs[head], shown[head])) head += 1;
    for (; head < end && head < was && alike(runs[end - 1], shown[was - 1]); end -= 1) was -= 1;
    const next = shown[was]?.node ?? null;
    const between = shown.slice(head, was);
    const fitting = runs.slice(head, end).map((run, i) => {
      const old = between[i];
      if (old && tagOf(old) === tagOf(run)) return old;
      const node = shape(tagOf(run));
      if (old) old.node.replaceWith(node);
      else group.insertBefore(node, next);
      return { ...run, marks: [], attributes: {}, node };
    });
    between.slice(end - head).forEach(({ node }) => node.remove());
    shown.splice(head, was - head, ...fitting);
  }

  return {
    group,
    draw(/** @type {Astragal.Mark[]} */ marks) {
      const runs = runsOf(marks);
      fit(runs);
      shown = runs.map((run, i) => {
        const before = shown[i];
        if (sameRun(run, before)) return before;
        const { node } = before;
        const attributes = attributesOf(run);
        dress(node, attributes, before.attributes);
        const [{ text }] = run.marks;
        // What stands in it is changed in place: another text node would be styled anew, and all round it.
        if (text !== before.marks[0]?.text) (node.firstChild ?? node).textContent = text;
        return { ...run, attributes, node };
      });
    },
  };
}

/** @param {number[]} given */
function circleSpan([x, y, r]) {
  return [x - r, y - r, x + r, y + r];
}

/** @param {Frame} box */
export function joined(box) {
  return placed([box.x, box.y, box.width, box.height]);
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
