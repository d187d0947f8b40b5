// What you get, in words: the panel whose verdicts, figures and cautions come in a script of their own.

import { element } from "./dom.js";

/**
 * @param {App} app
 * @returns {PagePart}
 */
export function createTold(app) {
  const node = element("section", { class: "panel", "aria-labelledby": "panel-figures" },
    element("h2", { id: "panel-figures" }, "What you get"));
  return latePart(app, node, async () => (await import("./figures.js")).createFigures(app));
}

/**
 * A part whose node stands at once and is filled by a part that is fetched when first shown.
 * @param {App} app
 * @param {HTMLElement} node
 * @param {() => Promise<PagePart>} fetch
 * @returns {PagePart}
 */
export function latePart(app, node, fetch) {
  /** @type {PagePart | null} */
  let late = null;
  /** @type {Promise<void> | null} */
  let coming = null;
  return {
    node,
    update(state, settled) {
      if (late) late.update(state, settled);
      else coming ??= app.fetched(fetch(), (part) => {
        late = part;
        node.append(part.node);
        part.update(app.state(), true);
      }).then(() => void (coming = null));
    },
  };
}
