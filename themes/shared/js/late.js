// Parts that are fetched when they are first shown; what stands at once keeps their place.

import { element } from "./dom.js";
import { _ } from "./words.js";

/**
 * @param {App} app
 * @param {HTMLElement} node
 * @param {() => Promise<PagePart>} fetch
 * @returns {LatePart}
 */
export function latePart(app, node, fetch) {
  /** @type {PagePart | null} */
  let late = null;
  /** @type {Promise<void> | null} */
  let coming = null;

  async function come() {
    await app.fetched(fetch(), async (part) => {
      late = part;
      node.append(part.node);
      await part.update(app.state(), true);
    });
    coming = null;
  }

  return {
    node,
    here: () => (late ? Promise.resolve() : (coming ??= come())),
    update(state, settled) {
      if (late) return late.update(state, settled);
      coming ??= come();
    },
  };
}

/**
 * The drawing table: elevation, section and plan, and the travel.
 * @param {App} app
 */
export function createTable(app) {
  return latePart(app, element("div", { class: "table-place" }), async () => (await import("./table.js")).createDrawingTable(app));
}

/**
 * What would mend what does not clear.
 * @param {App} app
 */
export function createMending(app) {
  return latePart(app, element("div"), async () => (await import("./fixes.js")).createFixes(app));
}

/**
 * What matters to the client, and which coverings answer it.
 * @param {App} app
 */
export function createWishes(app) {
  return latePart(app, element("div"), async () => (await import("./needs.js")).createNeeds(app));
}

/**
 * Several coverings side by side.
 * @param {App} app
 */
export function createComparing(app) {
  return latePart(app, element("div"), async () => (await import("./beside.js")).createBeside(app));
}

/**
 * What goes for nearly every covering, told once.
 * @param {App} app
 */
export function createGeneralWords(app) {
  return latePart(app, element("div"), async () => (await import("./guidance.js")).createGeneral());
}

/**
 * The place that decides, enlarged.
 * @param {App} app
 */
export function createEnlarged(app) {
  return latePart(app, element("div"), async () => (await import("./close.js")).createClose(app));
}

/**
 * What is taken along: the link, the paper, what this device keeps.
 * @param {App} app
 */
export function createShare(app) {
  return latePart(app, element("div"), async () => (await import("./share.js")).createTaking(app));
}

/**
 * Towards the visit: what is sent ahead, what to bring, and how to reach the showroom.
 * @param {App} app
 */
export function createBringing(app) {
  return latePart(app, element("div"), async () => (await import("./visit.js")).createVisit(app));
}

/**
 * The door and its covering, as they are set by hand.
 * @param {App} app
 */
export function createHandwork(app) {
  return latePart(app, element("div"), async () => (await import("./controls.js")).createControls(app));
}

/**
 * What you get: verdicts, figures and cautions in words.
 * @param {App} app
 */
export function createTold(app) {
  const node = element("section", { class: "panel", "aria-labelledby": "panel-figures" },
    element("h2", { id: "panel-figures" }, _("What you get")));
  return latePart(app, node, async () => (await import("./figures.js")).createFigures(app));
}

/**
 * The doors that this device keeps, above the one that is measured.
 * @param {App} app
 */
export function createMyDoors(app) {
  return latePart(app, element("div"), async () => (await import("./mydoors.js")).createDoorChooser(app));
}

/**
 * All that this device keeps, in one place.
 * @param {App} app
 */
export function createOnDevice(app) {
  return latePart(app, element("div"), async () => (await import("./ondevice.js")).createKeeping(app));
}

/**
 * The short list, at the foot of the shelf.
 * @param {App} app
 */
export function createShortList(app) {
  return latePart(app, element("div"), async () => (await import("./shortlist.js")).createListBar(app));
}
