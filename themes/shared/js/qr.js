// A QR code of plain bytes (ISO/IEC 18004, byte mode), drawn as one SVG path.

import { shape } from "./dom.js";

// Level M, versions 1 to 25: error correction codewords a block, and the number of blocks.
// A larger code no longer reads well from a sheet of paper.
const QR_CORRECTION = [10, 16, 26, 18, 24, 16, 18, 22, 22, 26, 30, 22, 22, 24, 24, 28, 28, 26, 26, 26, 26, 28, 28, 28, 28];
const QR_BLOCKS = [1, 1, 1, 2, 2, 4, 4, 4, 5, 5, 5, 8, 9, 9, 10, 10, 11, 13, 14, 16, 17, 17, 18, 20, 21];
const QR_LEVEL = 0;

/** @typedef {ReturnType<typeof emptyGrid>} Grid */

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
 * @param {number} a
 * @param {number} b
 */
function fieldProduct(a, b) {
  let product = 0;
  for (let bit = 7; bit >= 0; bit--) {
    product = (product << 1) ^ ((product >>> 7) * 0x11d);
    product ^= ((b >>> bit) & 1) * a;
  }
  return product;
}

/** @param {number} degree */
function correctionDivisor(degree) {
  const divisor = new Uint8Array(degree);
  divisor[degree - 1] = 1;
  let root = 1;
  for (let i = 0; i < degree; i++) {
    for (let j = 0; j < degree; j++) {
      divisor[j] = fieldProduct(divisor[j], root) ^ (j + 1 < degree ? divisor[j + 1] : 0);
    }
    root = fieldProduct(root, 2);
  }
  return divisor;
}

/**
 * @param {number[]} block
 * @param {Uint8Array} divisor
 */
function correctionOf(block, divisor) {
  const remainder = new Array(divisor.length).fill(0);
  for (const byte of block) {
    const factor = byte ^ remainder.shift();
    remainder.push(0);
    divisor.forEach((value, i) => (remainder[i] ^= fieldProduct(value, factor)));
  }
  return remainder;
}

/** @param {number} version */
function alignmentPlaces(version) {
  if (version === 1) return [];
  const count = Math.floor(version / 7) + 2;
  const last = version * 4 + 10;
  const step = Math.ceil((last - 6) / (count * 2 - 2)) * 2;
  return [6, ...Array.from({ length: count - 1 }, (_, i) => last - step * (count - 2 - i))];
}

/**
 * The codewords a version holds are what its patterns leave free: counted, not tabled.
 * @param {number} version
 */
function freeWords(version) {
  const grid = emptyGrid(version * 4 + 17);
  putPatterns(grid, version);
  const free = grid.fixed.reduce((sum, row) => sum + row.filter((fixed) => !fixed).length, 0);
  return Math.floor(free / 8);
}

/** @param {number} version */
function dataBytes(version) {
  return freeWords(version) - QR_CORRECTION[version - 1] * QR_BLOCKS[version - 1];
}

/** @param {number} version */
function lengthBits(version) {
  return version < 10 ? 8 : 16;
}

/**
 * The smallest version that holds so many bytes, or 0.
 * @param {number} length
 */
function versionFor(length) {
  for (let version = 1; version <= QR_BLOCKS.length; version++) {
    if (length * 8 + 4 + lengthBits(version) <= dataBytes(version) * 8) return version;
  }
  return 0;
}

/**
 * @param {Uint8Array} bytes
 * @param {number} version
 */
function dataWords(bytes, version) {
  /** @type {number[]} */
  const bits = [];
  const put = (/** @type {number} */ value, /** @type {number} */ count) => {
    for (let i = count - 1; i >= 0; i--) bits.push((value >>> i) & 1);
  };
  put(4, 4);
  put(bytes.length, lengthBits(version));
  bytes.forEach((byte) => put(byte, 8));
  const room = dataBytes(version) * 8;
  put(0, Math.min(4, room - bits.length));
  put(0, (8 - (bits.length % 8)) % 8);
  for (let pad = 0xec; bits.length < room; pad ^= 0xfd) put(pad, 8);
  return Array.from({ length: bits.length / 8 }, (_, i) =>
    bits.slice(i * 8, i * 8 + 8).reduce((byte, bit) => byte * 2 + bit, 0));
}

/**
 * @param {number[]} words
 * @param {number} version
 */
function withCorrection(words, version) {
  const count = QR_BLOCKS[version - 1];
  const degree = QR_CORRECTION[version - 1];
  const total = freeWords(version);
  const shortBlocks = count - (total % count);
  const shortLength = Math.floor(total / count) - degree;
  const divisor = correctionDivisor(degree);
  const blocks = [];
  for (let i = 0, from = 0; i < count; i++) {
    const length = shortLength + (i < shortBlocks ? 0 : 1);
    const data = words.slice(from, from + length);
    blocks.push({ data, correction: correctionOf(data, divisor) });
    from += length;
  }
  const woven = [];
  for (let i = 0; i <= shortLength; i++) {
    for (const block of blocks) if (i < block.data.length) woven.push(block.data[i]);
  }
  for (let i = 0; i < degree; i++) for (const block of blocks) woven.push(block.correction[i]);
  return woven;
}

/** @param {number} size */
function emptyGrid(size) {
  return {
    size,
    dark: Array.from({ length: size }, () => new Uint8Array(size)),
    fixed: Array.from({ length: size }, () => new Uint8Array(size)),
  };
}

/**
 * @param {Grid} grid
 * @param {number} x
 * @param {number} y
 * @param {unknown} dark
 */
function setFixed(grid, x, y, dark) {
  if (x < 0 || y < 0 || x >= grid.size || y >= grid.size) return;
  grid.dark[y][x] = dark ? 1 : 0;
  grid.fixed[y][x] = 1;
}

/**
 * @param {Grid} grid
 * @param {number} cx
 * @param {number} cy
 */
function putFinder(grid, cx, cy) {
  for (let dy = -4; dy <= 4; dy++) {
    for (let dx = -4; dx <= 4; dx++) {
      const ring = Math.max(Math.abs(dx), Math.abs(dy));
      setFixed(grid, cx + dx, cy + dy, ring !== 2 && ring !== 4);
    }
  }
}

/**
 * @param {Grid} grid
 * @param {number} version
 */
function putAlignment(grid, version) {
  const places = alignmentPlaces(version);
  const last = places.length - 1;
  places.forEach((cy, row) => places.forEach((cx, column) => {
    const onFinder = (row === 0 && (column === 0 || column === last)) || (row === last && column === 0);
    if (onFinder) return;
    for (let dy = -2; dy <= 2; dy++) {
      for (let dx = -2; dx <= 2; dx++) setFixed(grid, cx + dx, cy + dy, Math.max(Math.abs(dx), Math.abs(dy)) !== 1);
    }
  }));
}

/**
 * @param {number} value
 * @param {number} steps
 * @param {number} divisor
 * @param {number} shift
 */
function checked(value, steps, divisor, shift) {
  let remainder = value;
  for (let i = 0; i < steps; i++) remainder = (remainder << 1) ^ ((remainder >>> (steps - 1)) * divisor);
  return (value << shift) | remainder;
}

/**
 * @param {Grid} grid
 * @param {number} mask
 */
function putFormat(grid, mask) {
  const bits = checked((QR_LEVEL << 3) | mask, 10, 0x537, 10) ^ 0x5412;
  const bit = (/** @type {number} */ i) => (bits >>> i) & 1;
  const size = grid.size;
  for (let i = 0; i <= 5; i++) setFixed(grid, 8, i, bit(i));
  setFixed(grid, 8, 7, bit(6));
  setFixed(grid, 8, 8, bit(7));
  setFixed(grid, 7, 8, bit(8));
  for (let i = 9; i < 15; i++) setFixed(grid, 14 - i, 8, bit(i));
  for (let i = 0; i < 8; i++) setFixed(grid, size - 1 - i, 8, bit(i));
  for (let i = 8; i < 15; i++) setFixed(grid, 8, size - 15 + i, bit(i));
  setFixed(grid, 8, size - 8, 1);
}

/**
 * @param {Grid} grid
 * @param {number} version
 */
function putVersion(grid, version) {
  if (version < 7) return;
  const bits = checked(version, 12, 0x1f25, 12);
  for (let i = 0; i < 18; i++) {
    const far = grid.size - 11 + (i % 3);
    const near = Math.floor(i / 3);
    setFixed(grid, far, near, (bits >>> i) & 1);
    setFixed(grid, near, far, (bits >>> i) & 1);
  }
}

/**
 * @param {Grid} grid
 * @param {number} version
 */
function putPatterns(grid, version) {
  for (let i = 0; i < grid.size; i++) {
    setFixed(grid, 6, i, i % 2 === 0);
    setFixed(grid, i, 6, i % 2 === 0);
  }
  putFinder(grid, 3, 3);
  putFinder(grid, grid.size - 4, 3);
  putFinder(grid, 3, grid.size - 4);
  putAlignment(grid, version);
  putFormat(grid, 0);
  putVersion(grid, version);
}

/**
 * @param {Grid} grid
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
 * @param {Grid} grid
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
 * @param {Grid} grid
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
