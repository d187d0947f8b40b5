// A QR code of plain bytes (ISO/IEC 18004, byte mode), drawn as one SVG path.

// For each version from 1: error correction codewords a block, and the number of blocks.
const QR_LEVELS = {
  M: {
    bits: 0,
    correction: [10, 16, 26, 18, 24, 16, 18, 22, 22, 26, 30, 22, 22, 24, 24, 28, 28, 26, 26, 26, 26, 28, 28, 28, 28, 28, 28, 28, 28, 28, 28, 28, 28, 28, 28, 28, 28, 28, 28, 28],
    blocks: [1, 1, 1, 2, 2, 4, 4, 4, 5, 5, 5, 8, 9, 9, 10, 10, 11, 13, 14, 16, 17, 17, 18, 20, 21, 23, 25, 26, 28, 29, 31, 33, 35, 37, 38, 40, 43, 45, 47, 49],
  },
  L: {
    bits: 1,
    correction: [7, 10, 15, 20, 26, 18, 20, 24, 30, 18, 20, 24, 26, 30, 22, 24, 28, 30, 28, 28, 28, 28, 30, 30, 26, 28, 30, 30, 30, 30, 30, 30, 30, 30, 30, 30, 30, 30, 30, 30],
    blocks: [1, 1, 1, 1, 1, 2, 2, 2, 2, 4, 4, 4, 4, 4, 6, 6, 6, 6, 7, 8, 8, 9, 9, 10, 12, 12, 12, 13, 14, 15, 16, 17, 18, 19, 19, 20, 21, 22, 24, 25],
  },
};

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

function fieldProduct(a, b) {
  let product = 0;
  for (let bit = 7; bit >= 0; bit--) {
    product = (product << 1) ^ ((product >>> 7) * 0x11d);
    product ^= ((b >>> bit) & 1) * a;
  }
  return product;
}

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

function correctionOf(block, divisor) {
  const remainder = new Array(divisor.length).fill(0);
  for (const byte of block) {
    const factor = byte ^ remainder.shift();
    remainder.push(0);
    divisor.forEach((value, i) => (remainder[i] ^= fieldProduct(value, factor)));
  }
  return remainder;
}

function alignmentPlaces(version) {
  if (version === 1) return [];
  const count = Math.floor(version / 7) + 2;
  const last = version * 4 + 10;
  const step = version === 32 ? 26 : Math.ceil((last - 6) / (count * 2 - 2)) * 2;
  return [6, ...Array.from({ length: count - 1 }, (_, i) => last - step * (count - 2 - i))];
}

// The codewords a version holds are what its patterns leave free: counted, not tabled.
function freeWords(version) {
  const grid = emptyGrid(version * 4 + 17);
  putPatterns(grid, version, QR_LEVELS.L);
  const free = grid.fixed.reduce((sum, row) => sum + row.filter((fixed) => !fixed).length, 0);
  return Math.floor(free / 8);
}

function dataBytes(version, level) {
  const spent = level.correction[version - 1] * level.blocks[version - 1];
  return freeWords(version) - spent;
}

function chooseVersion(length) {
  for (const level of [QR_LEVELS.M, QR_LEVELS.L]) {
    for (let version = 1; version <= 40; version++) {
      const header = version < 10 ? 2 : 3;
      if (length + header <= dataBytes(version, level)) return { version, level };
    }
  }
  return null;
}

function dataWords(bytes, version, level) {
  const bits = [];
  const put = (value, count) => {
    for (let i = count - 1; i >= 0; i--) bits.push((value >>> i) & 1);
  };
  put(4, 4);
  put(bytes.length, version < 10 ? 8 : 16);
  bytes.forEach((byte) => put(byte, 8));
  const room = dataBytes(version, level) * 8;
  put(0, Math.min(4, room - bits.length));
  put(0, (8 - (bits.length % 8)) % 8);
  for (let pad = 0xec; bits.length < room; pad ^= 0xfd) put(pad, 8);
  return Array.from({ length: bits.length / 8 }, (_, i) =>
    bits.slice(i * 8, i * 8 + 8).reduce((byte, bit) => byte * 2 + bit, 0));
}

function withCorrection(words, version, level) {
  const count = level.blocks[version - 1];
  const degree = level.correction[version - 1];
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

function emptyGrid(size) {
  return {
    size,
    dark: Array.from({ length: size }, () => new Uint8Array(size)),
    fixed: Array.from({ length: size }, () => new Uint8Array(size)),
  };
}

function setFixed(grid, x, y, dark) {
  if (x < 0 || y < 0 || x >= grid.size || y >= grid.size) return;
  grid.dark[y][x] = dark ? 1 : 0;
  grid.fixed[y][x] = 1;
}

function putFinder(grid, cx, cy) {
  for (let dy = -4; dy <= 4; dy++) {
    for (let dx = -4; dx <= 4; dx++) {
      const ring = Math.max(Math.abs(dx), Math.abs(dy));
      setFixed(grid, cx + dx, cy + dy, ring !== 2 && ring !== 4);
    }
  }
}

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

function checked(value, steps, divisor, shift) {
  let remainder = value;
  for (let i = 0; i < steps; i++) remainder = (remainder << 1) ^ ((remainder >>> (steps - 1)) * divisor);
  return (value << shift) | remainder;
}

function putFormat(grid, level, mask) {
  const bits = checked((level.bits << 3) | mask, 10, 0x537, 10) ^ 0x5412;
  const bit = (i) => (bits >>> i) & 1;
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

function putPatterns(grid, version, level) {
  for (let i = 0; i < grid.size; i++) {
    setFixed(grid, 6, i, i % 2 === 0);
    setFixed(grid, i, 6, i % 2 === 0);
  }
  putFinder(grid, 3, 3);
  putFinder(grid, grid.size - 4, 3);
  putFinder(grid, 3, grid.size - 4);
  putAlignment(grid, version);
  putFormat(grid, level, 0);
  putVersion(grid, version);
}

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

function applyMask(grid, mask) {
  for (let y = 0; y < grid.size; y++) {
    for (let x = 0; x < grid.size; x++) {
      if (!grid.fixed[y][x] && QR_MASKS[mask](x, y) === 0) grid.dark[y][x] ^= 1;
    }
  }
}

function linePenalty(line) {
  let penalty = 0;
  for (const run of line.match(/0{5,}|1{5,}/g) ?? []) penalty += run.length - 2;
  for (let i = 0; i + 11 <= line.length; i++) {
    const part = line.slice(i, i + 11);
    if (part === "10111010000" || part === "00001011101") penalty += 40;
  }
  return penalty;
}

function penaltyOf(grid) {
  const { size, dark } = grid;
  let penalty = 0;
  let total = 0;
  for (let i = 0; i < size; i++) {
    penalty += linePenalty(dark[i].join("")) + linePenalty(dark.map((row) => row[i]).join(""));
    for (let j = 0; j < size; j++) {
      total += dark[i][j];
      if (i === 0 || j === 0) continue;
      const sum = dark[i][j] + dark[i - 1][j] + dark[i][j - 1] + dark[i - 1][j - 1];
      if (sum === 0 || sum === 4) penalty += 3;
    }
  }
  return penalty + Math.floor(Math.abs(total / (size * size) - 0.5) * 20) * 10;
}

// Returns rows of 0 and 1, or null where the text is too long for any code.
function qrModules(text) {
  const bytes = new TextEncoder().encode(text);
  const chosen = chooseVersion(bytes.length);
  if (!chosen) return null;
  const { version, level } = chosen;
  const grid = emptyGrid(version * 4 + 17);
  putPatterns(grid, version, level);
  putWords(grid, withCorrection(dataWords(bytes, version, level), version, level));
  let best = 0;
  let least = Infinity;
  for (let mask = 0; mask < 8; mask++) {
    applyMask(grid, mask);
    putFormat(grid, level, mask);
    const penalty = penaltyOf(grid);
    if (penalty < least) [best, least] = [mask, penalty];
    applyMask(grid, mask);
  }
  applyMask(grid, best);
  putFormat(grid, level, best);
  return grid.dark;
}

function qrDrawing(text, title) {
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
