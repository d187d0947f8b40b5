// A look as paint: its pattern stands in the page, its colors in the style sheet, by the name that a drawing says.

import { setAttribute, shape } from "./dom.js";
import { createLayer, joined, spoken } from "./draw.js";

/**
 * @param {Element} svg
 * @param {Astragal.Look} look
 */
export function paint(svg, look) {
  setAttribute(svg, "data-look", Astragal.kernel.paint_name(look));
}

/**
 * @param {Astragal.Drawing} drawing
 * @param {Frame} [window]
 */
export function drawingNode(drawing, window = drawing) {
  const layer = createLayer("drawn");
  layer.draw(drawing.marks);
  const svg = shape("svg", { class: "drawing-sheet", viewBox: joined(window), role: "img", "aria-label": spoken(drawing) }, layer.group);
  paint(svg, drawing.look);
  return svg;
}
