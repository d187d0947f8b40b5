// The grid of a QR code with the patterns by which a reader finds its way.

// Level M, as the format says it.
const QR_LEVEL = 0;

/** @typedef {ReturnType<typeof emptyGrid>} Grid */

/** @param {number} version */
function alignmentPlaces(version) {
  if (version === 1) return [];
  const count = Math.floor(version / 7) + 2;
  const last = version * 4 + 10;
  const step = Math.ceil((last - 6) / (count * 2 - 2)) * 2;
  return [6, ...Array.from({ length: count - 1 }, (_, i) => last - step * (count - 2 - i))];
}

/** @param {number} size */
export function emptyGrid(size) {
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
export function putFormat(grid, mask) {
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
export function putPatterns(grid, version) {
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
