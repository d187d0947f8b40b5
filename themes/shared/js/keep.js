// The one thing that this device may keep: a door with its covering, and only when it is asked to.

const KEEP_KEY = "astragal-kept-door";

/**
 * @template Kept
 * @param {(box: Storage) => Kept} task
 */
function storage(task) {
  try {
    return task(window.localStorage);
  } catch {
    return null;
  }
}

/** What is kept; empty where nothing is, or where this browser keeps nothing. */
export function keptFragment() {
  return storage((box) => box.getItem(KEEP_KEY)) ?? "";
}

/**
 * Keeps a fragment, or forgets what is kept where it is empty; returns whether this browser did.
 * @param {string} fragment
 */
export function keepFragment(fragment) {
  return Boolean(storage((box) => {
    if (fragment === "") box.removeItem(KEEP_KEY);
    else box.setItem(KEEP_KEY, fragment);
    return true;
  }));
}
