// The address follows the state, and the state the address.

import { askedOnMine, keptLink } from "./keep.js";
import { shortListed } from "./marking.js";
import { linked, stateFrom, withCompared } from "./state.js";

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

  /**
   * Coverings on my door, as the showroom's pages ask for them; one that is not known is left out.
   * @param {string[]} families
   */
  function onMine(families) {
    const opened = kernel.read_link(keptLink(), app.catalog);
    const known = families.filter((id) => app.catalog.families[id]);
    if (known.length === 0) return opened;
    const { typed, drafts, picking, ...state } = withCompared(stateFrom(opened.state), known.map((id) => shortListed(app.catalog, id)));
    return { ...opened, state, noted: state.configurations.map(() => "") };
  }

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
    // Without a link it is my door, where one is kept.
    read(fragment) {
      const asked = askedOnMine(fragment);
      return asked ? onMine(asked) : kernel.read_link(fragment || keptLink(), app.catalog);
    },
    // What differs from what the link noted, once its state is the page's.
    changes: ({ noted, state }) => noted.flatMap((words, i) =>
      (words === "" ? [] : kernel.changes_of(words, app.ask.drawn(state.configurations[i]), i))),
  };
}
