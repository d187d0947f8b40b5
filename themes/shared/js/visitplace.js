// Which opening of which visit was last worked on in this tab: what the configurator brings back goes there first.

const PLACE = "astragal-visit-place";

/**
 * @param {string} visit
 * @param {string} opening
 */
export function rememberPlace(visit, opening) {
  try {
    sessionStorage.setItem(PLACE, `${visit} ${opening}`);
  } catch {
    // A browser that keeps nothing asks where it goes.
  }
}

export function rememberedPlace() {
  try {
    const [visit, opening] = (sessionStorage.getItem(PLACE) ?? "").split(" ");
    return { visit, opening };
  } catch {
    return { visit: "", opening: "" };
  }
}
