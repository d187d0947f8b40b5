// The address follows the state, and the state the address.

import { linked } from "./state.js";

/**
 * @param {App} app
 * @returns {Address}
 */
export function createAddress(app) {
  const fragmentOf = (/** @type {Astragal.State} */ state) => Astragal.kernel.encode(linked(state), app.catalog);
  const bare = () => location.href.split("#")[0];

  return {
    write(step) {
      const fragment = fragmentOf(app.state());
      if (location.hash.slice(1) === fragment) return;
      try {
        history[step === "push" ? "pushState" : "replaceState"](null, "", `#${fragment}`);
      } catch {
        // A browser that limits how often the address may change takes the next change.
      }
    },
    fragment: () => fragmentOf(app.state()),
    of: (state) => `${bare()}#${fragmentOf(state)}`,
    read: (fragment) => Astragal.kernel.decode(fragment, app.catalog),
  };
}
