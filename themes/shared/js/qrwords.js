// The codewords of a QR code: its bytes, and what corrects them (ISO/IEC 18004, byte mode).

import { emptyGrid, putPatterns } from "./qrgrid.js";

// Level M, versions 1 to 25: error correction codewords a block, and the number of blocks.
// A larger code no longer reads well from a sheet of paper.
const QR_CORRECTION = [10, 16, 26, 18, 24, 16, 18, 22, 22, 26, 30, 22, 22, 24, 24, 28, 28, 26, 26, 26, 26, 28, 28, 28, 28];
const QR_BLOCKS = [1, 1, 1, 2, 2, 4, 4, 4, 5, 5, 5, 8, 9, 9, 10, 10, 11, 13, 14, 16, 17, 17, 18, 20, 21];

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
export function versionFor(length) {
  for (let version = 1; version <= QR_BLOCKS.length; version++) {
    if (length * 8 + 4 + lengthBits(version) <= dataBytes(version) * 8) return version;
  }
  return 0;
}

/**
 * @param {Uint8Array} bytes
 * @param {number} version
 */
export function dataWords(bytes, version) {
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
export function withCorrection(words, version) {
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
