// A drawing as a picture: its colors written into it, painted on a canvas; nothing is fetched.

import { element, shape } from "./dom.js";

const ACROSS = 1200;
const LOOKS = ["fill", "fill-opacity", "stroke", "stroke-width", "stroke-dasharray", "stroke-linejoin", "vector-effect", "font-family", "font-weight"];

/**
 * Style sheets do not reach into a picture.
 * @param {SVGSVGElement} svg
 */
function writeLooks(svg) {
  for (const node of /** @type {NodeListOf<SVGElement>} */ (svg.querySelectorAll("path, polygon, polyline, text"))) {
    const look = getComputedStyle(node);
    const worn = LOOKS.map((name) => [name, look.getPropertyValue(name)]);
    worn.forEach(([name, value]) => node.style.setProperty(name, value));
  }
}

/**
 * What cloth is filled with stands elsewhere on the page.
 * @param {SVGSVGElement} svg
 */
function takePatterns(svg) {
  const markup = new XMLSerializer().serializeToString(svg);
  const named = [...document.querySelectorAll("svg.patterns pattern")].filter(({ id }) => markup.includes(`#${id}`));
  svg.prepend(shape("defs", {}, named.map((one) => /** @type {Element} */ (one.cloneNode(true)))));
}

/**
 * @param {SVGSVGElement} svg
 * @param {number} width
 * @param {number} height
 */
function sourceOf(svg, width, height) {
  // Only what stands on the page has looks.
  const host = element("div", { class: "unseen" }, svg);
  document.body.append(host);
  writeLooks(svg);
  takePatterns(svg);
  const ground = getComputedStyle(host).getPropertyValue("--ground").trim() || "#fff";
  host.remove();
  svg.setAttribute("width", String(width));
  svg.setAttribute("height", String(height));
  return { ground, source: `data:image/svg+xml,${encodeURIComponent(new XMLSerializer().serializeToString(svg))}` };
}

/**
 * A PNG picture of a drawing; null where this browser makes none.
 * @param {SVGSVGElement} svg
 * @returns {Promise<Blob | null>}
 */
export async function pictureOf(svg) {
  const { width, height } = svg.viewBox.baseVal;
  const canvas = element("canvas", { width: ACROSS, height: Math.round((ACROSS * height) / width) });
  const paint = canvas.getContext("2d");
  const { ground, source } = sourceOf(svg, canvas.width, canvas.height);
  const image = new Image();
  image.src = source;
  try {
    await image.decode();
  } catch {
    return null;
  }
  if (!paint) return null;
  paint.fillStyle = ground;
  paint.fillRect(0, 0, canvas.width, canvas.height);
  paint.drawImage(image, 0, 0);
  return new Promise((done) => canvas.toBlob(done, "image/png"));
}
