// The pages that a printer is given; what draws them comes in scripts of their own.

import { element, setChildren } from "./dom.js";

/**
 * @param {App} app
 * @returns {Paper}
 */
export function createPaper(app) {
  const node = element("div", { class: "sheets", "aria-hidden": "true" });
  /** @type {Record<string, Pages>} */
  let kinds = {};
  let kind = "client";
  /** @type {Pages | null} */
  let wanted = null;
  return {
    node,
    kind: () => kind,
    choose(next) {
      kind = next;
    },
    async ready() {
      kinds = await (await import("./papers.js")).papers();
    },
    want(pages) {
      wanted = pages;
    },
    fill() {
      const pages = wanted ?? kinds[kind];
      if (pages) setChildren(node, pages(app, app.state()));
    },
    empty() {
      wanted = null;
      node.replaceChildren();
    },
  };
}
