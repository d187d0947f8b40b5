// The configurator: one store, the parts that show it, each in its steps, and how they come onto the page.

import { createActions } from "./actions.js";
import { createAddress } from "./address.js";
import { element, later, onFrame, quietQueue, setText, turnQueue } from "./dom.js";
import { createNotice, unitsSwitch } from "./furniture.js";
import { askedOnMine, keptLink } from "./keep.js";
import {
  createBringing, createComparing, createEnlarged, createHandwork, createMending, createMyDoors, createOnDevice, createShare, createShortList, createTable,
  createTold,
} from "./late.js";
import { spokenNow } from "./now.js";
import { createPaper } from "./paper.js";
import { createShelf } from "./shelf.js";
import { createStore, stateFrom } from "./state.js";
import { createOnward, createSteps } from "./steps.js";
import { createUndo } from "./undo.js";
import { createAsker } from "./views.js";
import { _ } from "./words.js";

// The parts from the top down, each with the steps that show it and what a movement changes.
const PARTS = [
  { create: createShelf, steps: ["coverings"], moves: true, within: "page" },
  { create: createTable, steps: ["door", "details"], moves: true, within: "workbench" },
  { create: createMending, steps: ["details"], moves: false, within: "controls" },
  { create: createEnlarged, steps: ["details"], moves: true, within: "controls" },
  { create: createMyDoors, steps: ["door"], moves: false, within: "controls" },
  { create: createHandwork, steps: ["door", "details"], moves: false, within: "controls" },
  { create: createTold, steps: ["details"], moves: false, within: "controls" },
  { create: createComparing, steps: ["details"], moves: true, within: "page" },
  { create: createShare, steps: ["take"], moves: true, within: "page" },
  { create: createBringing, steps: ["take"], moves: true, within: "page" },
  { create: createOnDevice, steps: ["take"], moves: false, within: "page" },
  { create: createShortList, steps: ["coverings"], moves: false, within: "foot" },
  { create: createOnward, steps: ["door", "coverings", "details", "take"], moves: false, within: "page" },
];

/**
 * @typedef {{ part: PagePart | LatePart, steps: string[], moves: boolean, within: string }} Shown
 * @typedef {{ parts: Shown[], steps: PagePart, units: Switch, status: HTMLElement, places: Record<string, HTMLElement> }} Bench
 */

/**
 * Where the parts come: on the page, or side by side with what is set by hand.
 * @param {App} app
 * @param {Switch} units
 */
function createPlaces(app, units) {
  app.toolbar = element("div", { class: "toolbar" }, units.node);
  const controls = element("div", { class: "controls" });
  const workbench = element("div", { class: "workbench" }, controls);
  const foot = element("div", { class: "foot-bar" }, app.undo.node);
  return { page: element("div", { class: "step-parts" }, workbench), workbench, controls, foot };
}

/**
 * @param {App} app
 * @param {Bench} bench
 */
function createShowing(app, { parts, steps, units, status, places }) {
  const speak = later(700, () => setText(status, app.state().step === "coverings" ? "" : spokenNow(app, app.state())));
  const isShown = (/** @type {Shown} */ one) => one.steps.includes(app.state().step);
  const shown = () => parts.filter(isShown);

  function showStep() {
    app.root.dataset.step = app.state().step;
    for (const one of parts) if (!isShown(one)) one.part.node.hidden = true;
    places.workbench.hidden = !shown().some(({ within }) => within === "workbench" || within === "controls");
    steps.update(app.state(), true);
    units.show(app.state().units);
  }

  /** @param {Shown} one */
  function show(one) {
    if (!isShown(one)) return;
    one.part.node.hidden = false;
    one.part.update(app.state(), true);
  }

  /**
   * The first at once, each other in a task of its own; the page keeps its height meanwhile, and with it its place.
   * @param {Shown[]} wanted
   */
  function showInTurn([first, ...rest]) {
    if (first) show(first);
    app.root.classList.add("turning");
    for (const one of rest) app.inTurn(`part ${parts.indexOf(one)}`, () => show(one));
    app.inTurn("turned", () => app.root.classList.remove("turning"));
    speak();
  }

  return {
    shown,
    showStep,
    everything() {
      showStep();
      showInTurn(shown());
      app.undo.update();
      // While a door is measured, the shelf is made ready for it.
      if (app.state().step === "door") app.whenQuiet("shown", () => parts[0].part.update(app.state(), true));
    },
    placed() {
      showInTurn(shown().filter((one) => one.moves));
    },
    moved() {
      shown().find((one) => one.moves)?.part.update(app.state(), false);
    },
  };
}

/**
 * A move paints at once and little; what else it changes follows when the hand rests.
 * @param {App} app
 * @param {Store} store
 * @param {Address} address
 * @param {ReturnType<typeof createShowing>} showing
 */
function followStore(app, store, address, showing) {
  const moved = onFrame(showing.moved);
  const everything = onFrame(showing.everything);
  const rest = later(160, onFrame(showing.placed));
  store.follow((state, step) => {
    if (step === "move") {
      moved();
      if (!app.dragging()) rest();
      return;
    }
    if (step === "opened") {
      // The address is there already: slider and drawing are not to be seen behind it.
      showing.everything();
      return;
    }
    everything();
    if (step === "push" || step === "replace") address.write(step);
  });
}

/**
 * @param {HTMLElement} root
 * @param {Astragal.PageCatalog} catalog
 */
function createApp(root, catalog) {
  const app = /** @type {App} */ ({ root, catalog });
  const address = createAddress(app);
  const fragment = location.hash.slice(1);
  const opened = address.read(fragment);
  const store = createStore(stateFrom(opened.state));
  /** @type {ReturnType<typeof createShowing>} */
  let showing;
  /** @type {() => void} */
  let stands;
  Object.assign(app, createActions(app, store, address), /** @type {Partial<App>} */ ({
    fresh: fragment === "" && keptLink() === "",
    undo: createUndo(app),
    ask: /** @type {Asker} */ (createAsker(catalog, () => store.get().household)),
    notice: createNotice(app, address),
    address: () => address.of({ ...store.get(), step: "details" }),
    addressOf: address.of,
    fragment: address.fragment,
    linkOf: (one) => address.of({ ...store.get(), step: "coverings", configurations: [one], active: 0 }).split("#")[1],
    async whenShown(task) {
      showing.showStep();
      await Promise.all(showing.shown().map(({ part }) => "here" in part && part.here()));
      for (const { part } of showing.shown()) part.node.hidden = false;
      task();
    },
    whenQuiet: quietQueue(),
    inTurn: turnQueue(),
    standing: new Promise((done) => (stands = done)),
    dragging: () => false,
    focusField: () => undefined,
    rest(moved) {
      if (moved) address.write("push");
      showing.placed();
    },
    refuse() {
      app.notice.say(_("With the measurements as they are, that door cannot be. Correct the measurements first."));
      showing.everything();
    },
    fetched: (module, then) => module.then(then, () =>
      app.notice.say(_("A part of this page could not be fetched. Try again once there is a connection."))),
    print: (pages) => app.fetched(app.paper.ready(), () => {
      app.paper.want(pages ?? null);
      window.print();
    }),
  }));
  app.paper = createPaper(app);
  const units = unitsSwitch(app);
  const status = element("p", { class: "unseen", role: "status" });
  const steps = createSteps(app);
  const places = createPlaces(app, units);
  const begun = store.get();
  /** @type {Shown[]} */
  const parts = [];
  inSteps([
    ...PARTS.map(({ create, ...rest }) => () => void parts.push({ part: create(app), ...rest })),
    () => {
      showing = createShowing(app, { parts, steps, units, status, places });
      showing.showStep();
      app.notice.tell(opened);
    },
    ...store.get().configurations.map((one) => () => void app.ask.drawn(one)),
    ...PARTS.map((given, i) => async () => {
      const shown = await join(app, parts[i], places);
      if (shown && !places.page.isConnected) root.replaceChildren(app.notice.node, steps.node, app.toolbar, places.page);
      return root.offsetHeight;
    }),
    () => {
      followStore(app, store, address, showing);
      followWindow(app, fragment);
      Astragal.kept.follow(onFrame(showing.everything));
      root.append(places.foot, status, app.paper.node);
      // Whoever was quick has changed something before the page stood.
      if (store.get() !== begun) showing.everything();
      stands();
    },
    // Whoever prints with the browser's own command waits for nothing.
    () => void app.paper.ready().catch(() => null),
    () => lookAhead(app, parts),
  ]);
}

/**
 * A part comes onto the page once it is all there, so that nothing below it is moved; one of another step waits unseen.
 * @param {App} app
 * @param {Shown} one
 * @param {Record<string, HTMLElement>} places
 */
async function join(app, { part, steps, within }, places) {
  const shown = steps.includes(app.state().step);
  if (!shown) part.node.hidden = true;
  else if ("here" in part) await part.here();
  else part.update(app.state(), true);
  if (within === "workbench") places.workbench.prepend(part.node);
  else places[within].append(part.node);
  return shown;
}

/**
 * What the other steps show is fetched and made ready while nothing else is to be done, and so is the first address.
 * @param {App} app
 * @param {Shown[]} parts
 */
function lookAhead(app, parts) {
  parts.forEach(({ part }, i) => "here" in part && app.whenQuiet(`ahead ${i}`, () => void part.here()));
  app.whenQuiet("address", () => void app.fragment());
}

/**
 * A slow phone answers between one step and the next.
 * @param {(() => unknown)[]} steps
 */
async function inSteps([step, ...rest]) {
  await step();
  if (rest.length > 0) setTimeout(() => inSteps(rest));
}

/**
 * @param {App} app
 * @param {string} first what the page was opened with
 */
function followWindow(app, first) {
  const reread = () => {
    if (location.hash.slice(1) !== app.fragment()) app.notice.tell(app.open(location.hash.slice(1)));
  };
  // Whoever went on or back meanwhile is already elsewhere; what a page asked for on my door has a link from now on.
  if (location.hash.slice(1) !== first || askedOnMine(first)) reread();
  window.addEventListener("hashchange", reread);
  window.addEventListener("popstate", reread);
  // A keyboard on the screen takes half of it: the drawing makes room for the field.
  const seen = window.visualViewport;
  seen?.addEventListener("resize", () => app.root.classList.toggle("keyboard-up", seen.height < window.innerHeight * 0.7));
  window.addEventListener("beforeprint", () => app.paper.fill());
  window.addEventListener("afterprint", () => app.paper.empty());
}

function start() {
  const root = document.getElementById("configurator");
  if (root) createApp(root, Astragal.catalog);
  // A page to be read, whose covering is shown on my door.
  const place = /** @type {HTMLElement | null} */ (document.querySelector("[data-on-mine]"));
  if (place) import("./onmine.js").then(({ showOnMine }) => showOnMine(place));
}

// What the page already says is painted first; the configurator's place is kept clear meanwhile.
function startAfterPaint() {
  requestAnimationFrame(() => setTimeout(start));
}

if (document.readyState === "loading") document.addEventListener("DOMContentLoaded", startAfterPaint);
else startAfterPaint();
