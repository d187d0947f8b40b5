// Which opening of which visit was last worked on in this tab, and which of its proposals was opened, if one was: what
// the configurator brings back goes there first.

const PLACE = "astragal-visit-place";

/**
 * @param {string} visit
 * @param {string} opening
 * @param {string} [proposal]
 */
export function rememberPlace(visit, opening, proposal = "") {
  try {
    sessionStorage.setItem(PLACE, `${visit} ${opening} ${proposal}`);
  } catch {
    // A browser that keeps nothing asks where it goes.
  }
}

export function rememberedPlace() {
  try {
    const [visit, opening, proposal = ""] = (sessionStorage.getItem(PLACE) ?? "").split(" ");
    return { visit, opening, proposal };
  } catch {
    return { visit: "", opening: "", proposal: "" };
  }
}
