// The address follows the state, and the state the address.

import { linked } from "./state.js";

/**
 * @param {App} app
 * @returns {Address}
 */
export function createAddress(app) {
  const { kernel } = Astragal;
  // What came of each configuration is noted in the link; the drawings have asked for it.
  const fragmentOf = (/** @type {Astragal.State} */ state) =>
    kernel.encode_answered(linked(state), state.configurations.map((one) => app.ask.drawn(one)), app.catalog);
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
    read: (fragment) => kernel.read_link(fragment, app.catalog),
    changes: ({ noted, state }) => noted.flatMap((words, i) =>
      (words === "" ? [] : kernel.changes_of(words, app.ask.drawn(state.configurations[i]), i))),
  };
}
