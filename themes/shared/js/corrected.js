// Whether a door is still as the showroom has it.

/**
 * @param {Astragal.PageCatalog} catalog
 * @param {Astragal.Door} door
 */
export function isCorrected(catalog, door) {
  const { handle, ...rest } = door;
  const { handle: presetHandle, ...preset } = catalog.doors[door.id];
  return JSON.stringify([rest, handle]) !== JSON.stringify([preset, presetHandle]);
}
