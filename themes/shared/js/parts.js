// Later scripts, each fetched when it is first wanted: by a script element, as a page on a disk may fetch in no other way.
// Where a module asks for another with import(), the joined script calls this instead.

const own = /** @type {HTMLScriptElement | null} */ (document.currentScript)?.src || location.href;

/** @type {Map<string, Promise<void>>} */
const fetched = new Map();

/** @param {string} name */
function fetchOnce(name) {
  const known = fetched.get(name) ?? new Promise((done, failed) => {
    const script = document.createElement("script");
    script.src = new URL(Astragal.late[name], own).href;
    script.onload = () => done();
    // What could not be had now may be had when it is wanted again.
    script.onerror = () => {
      fetched.delete(name);
      script.remove();
      failed(new Error(script.src));
    };
    document.head.append(script);
  });
  fetched.set(name, known);
  return known;
}

/**
 * Returns what all scripts let out, once these have run, one after the other.
 * @param {string[]} names
 */
export async function fetchPart(names) {
  for (const name of names) await fetchOnce(name);
  return Astragal.page;
}
