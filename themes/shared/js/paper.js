// The pages that a printer is given; what draws them comes in a script of its own.

import { element, setChildren } from "./dom.js";

/**
 * @param {App} app
 * @returns {Paper}
 */
export function createPaper(app) {
  const node = element("div", { class: "sheets", "aria-hidden": "true" });
  /** @type {Pages | null} */
  let usual = null;
  /** @type {Pages | null} */
  let wanted = null;
  return {
    node,
    async ready() {
      usual = (await import("./sheet.js")).sheetPages;
    },
    want(pages) {
      wanted = pages;
    },
    fill() {
      const pages = wanted ?? usual;
      if (pages) setChildren(node, pages(app, app.state()));
    },
    empty() {
      wanted = null;
      node.replaceChildren();
    },
  };
}
