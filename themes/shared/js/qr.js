// A QR code of plain bytes (ISO/IEC 18004, byte mode), drawn as one SVG path.

import { shape } from "./dom.js";
import { emptyGrid, putFormat, putPatterns } from "./qrgrid.js";
import { dataWords, versionFor, withCorrection } from "./qrwords.js";

/** @type {((x: number, y: number) => number)[]} */
const QR_MASKS = [
  (x, y) => (x + y) % 2,
  (x, y) => y % 2,
  (x) => x % 3,
  (x, y) => (x + y) % 3,
  (x, y) => (Math.floor(x / 3) + Math.floor(y / 2)) % 2,
  (x, y) => ((x * y) % 2) + ((x * y) % 3),
  (x, y) => (((x * y) % 2) + ((x * y) % 3)) % 2,
  (x, y) => (((x + y) % 2) + ((x * y) % 3)) % 2,
];

/**
 * @param {import("./qrgrid.js").Grid} grid
 * @param {number[]} words
 */
function putWords(grid, words) {
  let i = 0;
  for (let right = grid.size - 1; right >= 1; right -= 2) {
    if (right === 6) right = 5;
    const upward = ((right + 1) & 2) === 0;
    for (let step = 0; step < grid.size; step++) {
      const y = upward ? grid.size - 1 - step : step;
      for (const x of [right, right - 1]) {
        if (grid.fixed[y][x] || i >= words.length * 8) continue;
        grid.dark[y][x] = (words[i >>> 3] >>> (7 - (i & 7))) & 1;
        i += 1;
      }
    }
  }
}

/**
 * @param {import("./qrgrid.js").Grid} grid
 * @param {number} mask
 */
function applyMask(grid, mask) {
  for (let y = 0; y < grid.size; y++) {
    for (let x = 0; x < grid.size; x++) {
      if (!grid.fixed[y][x] && QR_MASKS[mask](x, y) === 0) grid.dark[y][x] ^= 1;
    }
  }
}

/**
 * Even squares confuse a reader most: the mask that leaves the fewest is taken.
 * @param {import("./qrgrid.js").Grid} grid
 */
function evenSquares(grid) {
  const { size, dark } = grid;
  let count = 0;
  for (let y = 1; y < size; y++) {
    for (let x = 1; x < size; x++) {
      const sum = dark[y][x] + dark[y - 1][x] + dark[y][x - 1] + dark[y - 1][x - 1];
      if (sum % 4 === 0) count += 1;
    }
  }
  return count;
}

/**
 * Returns rows of 0 and 1, or null where the text is too long for any code.
 * @param {string} text
 */
function qrModules(text) {
  const bytes = new TextEncoder().encode(text);
  const version = versionFor(bytes.length);
  if (version === 0) return null;
  const grid = emptyGrid(version * 4 + 17);
  putPatterns(grid, version);
  putWords(grid, withCorrection(dataWords(bytes, version), version));
  let best = 0;
  let least = Infinity;
  for (let mask = 0; mask < 8; mask++) {
    applyMask(grid, mask);
    putFormat(grid, mask);
    const penalty = evenSquares(grid);
    if (penalty < least) [best, least] = [mask, penalty];
    applyMask(grid, mask);
  }
  applyMask(grid, best);
  putFormat(grid, best);
  return grid.dark;
}

/**
 * @param {string} text
 * @param {string} title
 */
export function qrDrawing(text, title) {
  const rows = qrModules(text);
  if (!rows) return null;
  const quiet = 4;
  const size = rows.length + quiet * 2;
  let d = "";
  rows.forEach((row, y) => row.forEach((dark, x) => {
    if (dark) d += `M${x + quiet} ${y + quiet}h1v1h-1z`;
  }));
  return shape("svg", { viewBox: `0 0 ${size} ${size}`, class: "qr", role: "img", "aria-label": title },
    shape("rect", { width: size, height: size, class: "qr-ground" }),
    shape("path", { d, class: "qr-ink" }));
}
