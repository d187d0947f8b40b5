// Where a page of the site is opened by others: where the site stands in public, if its pages say so, else where this one is.

function publicHome() {
  return /** @type {HTMLLinkElement | null} */ (document.querySelector("link[rel=canonical]"))?.href ?? "";
}

/** Where the site stands in public, with a closing slash; nothing where its pages do not say. */
export function publicRoot() {
  return publicHome() === "" ? "" : new URL(".", publicHome()).href;
}

/** Whether others can open a link to this site. */
export function canBeOpened() {
  return publicHome() !== "" || location.protocol !== "file:";
}

/**
 * @param {string} name of the page
 * @param {string} fragment
 */
export function openedByOthers(name, fragment) {
  return `${new URL(name, publicHome() || location.href.split("#")[0]).href}#${fragment}`;
}
