// The address follows the state, and the state the address.

import { linked } from "./state.js";

function canonicalAddress() {
  return /** @type {HTMLLinkElement | null} */ (document.querySelector("link[rel=canonical]"))?.href;
}

/**
 * @param {App} app
 * @returns {Address}
 */
export function createAddress(app) {
  const { kernel } = Astragal;
  // What came of each configuration is noted in the link; the answers are at hand.
  const fragmentOf = (/** @type {Astragal.State} */ state) =>
    kernel.encode_answered(linked(state), state.configurations.map((one) => app.ask.drawn(one)), app.catalog);
  // What was opened from a disk is handed on as it stands in public, where the page knows.
  const bare = () => ((location.protocol === "file:" && canonicalAddress()) || location.href).split("#")[0];

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
    read: (fragment) => kernel.read_link(fragment, app.catalog),
    // What differs from what the link noted, once its state is the page's.
    changes: ({ noted, state }) => noted.flatMap((words, i) =>
      (words === "" ? [] : kernel.changes_of(words, app.ask.drawn(state.configurations[i]), i))),
  };
}
