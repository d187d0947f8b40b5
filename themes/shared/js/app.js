// The configurator: one store, the parts that show it, and the steps in which they come onto the page.

import { createActions } from "./actions.js";
import { createAddress } from "./address.js";
import { createBeside } from "./beside.js";
import { element, later, onFrame, quietQueue, setText } from "./dom.js";
import { createNotice, createTabs, keepFocusClear, unitsSwitch, viewSwitch } from "./furniture.js";
import { createHandwork, createTold } from "./late.js";
import { createNow, spokenNow } from "./now.js";
import { createPaper } from "./paper.js";
import { createShare, keptFragment } from "./share.js";
import { createTravel } from "./sliders.js";
import { createStage } from "./stage.js";
import { activeOf, createStore, stateFrom } from "./state.js";
import { samePlace } from "./travel.js";
import { createAsker } from "./views.js";
import { _ } from "./words.js";

/** @type {End[]} */
const ENDS = ["open", "closed"];

const PARTS = {
  tabs: createTabs,
  handwork: createHandwork,
  told: createTold,
  travel: createTravel,
  now: createNow,
  beside: createBeside,
  share: createShare,
};

/**
 * @typedef {{ [Name in keyof typeof PARTS]: ReturnType<typeof PARTS[Name]> }} Parts
 * @typedef {{ parts: Parts, units: Switch, views: Switch, status: HTMLElement }} Bench
 */

/**
 * The steps in which the parts come onto the page, from the top down.
 * @param {App} app
 * @param {Bench} bench
 */
function joinPage(app, { parts, units, views, status }) {
  const table = element("div", { class: "drawing-table" },
    parts.tabs.node,
    app.stage.node,
    element("div", { class: "under-sheet" }, parts.now.node, parts.travel.node));
  const toolbar = element("div", { class: "toolbar" }, views.node, units.node);
  const controls = element("div", { class: "controls" }, toolbar);
  keepFocusClear(app, table);
  const workbench = element("div", { class: "workbench" }, table, controls);
  return [
    () => app.root.replaceChildren(app.notice.node, workbench),
    () => controls.append(parts.handwork.node),
    () => controls.append(parts.told.node),
    () => app.root.append(parts.beside.node, parts.share.node, status, app.paper.node),
  ];
}

/**
 * @param {App} app
 * @param {Bench} bench
 */
function createShowing(app, { parts, units, status }) {
  const { tabs, handwork, told, travel, now, beside, share } = parts;
  // A movement changes what these show; nothing else on the page.
  const placed = [travel, now, beside, share];
  const all = [tabs, ...placed, handwork, told];
  const speak = later(700, () => setText(status, spokenNow(app, app.state())));
  let turn = 0;

  // What goes with a whole drawing, once it stands.
  function besideDrawing() {
    units.show(app.state().units);
    speak();
  }

  /** @param {PagePart[]} wanted */
  function drawing(wanted) {
    app.stage.draw(app.state(), true);
    besideDrawing();
    wanted.forEach((part) => part.update(app.state(), true));
  }

  return {
    besideDrawing,
    everything: () => drawing(all),
    placed: () => drawing(placed),
    // The drawing follows in the frame in which the hand moves; slider and words take turns, a frame each.
    moved() {
      app.stage.draw(app.state(), false);
      turn = 1 - turn;
      [travel, now][turn].update(app.state(), false);
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
  const kept = keptFragment();
  const fragment = location.hash.slice(1);
  const opened = address.read(fragment || kept);
  const store = createStore(stateFrom(opened.state));
  const parts = /** @type {Parts} */ ({});
  const status = element("p", { class: "unseen", role: "status" });
  /** @type {ReturnType<typeof createShowing>} */
  let showing;
  let dragging = false;
  const active = () => activeOf(store.get());
  Object.assign(app, createActions(app, store, address), /** @type {Partial<App>} */ ({
    fresh: fragment === "" && kept === "",
    ask: createAsker(catalog, () => store.get().household),
    notice: createNotice(app, address),
    address: () => address.of(store.get()),
    addressOf: address.of,
    fragment: address.fragment,
    whenQuiet: quietQueue(),
    dragging: () => dragging,
    beginDrag(moves) {
      dragging = true;
      parts.travel.focus(moves);
    },
    endDrag(before) {
      dragging = false;
      if (!samePlace(before, active().place)) address.write("push");
      showing.placed();
    },
    endDrawings: () => ENDS.map((end) => app.ask.endDrawings(active(), end, store.get().units)),
    focusField: (id) => app.stage.focus(id),
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
  app.stage = createStage(app);
  app.paper = createPaper(app);
  /** @type {(() => void)[]} */
  let page = [];
  // Laid out at once, or the last step of all would have to lay out everything.
  const put = (/** @type {number} */ at) => () => {
    page[at]();
    return root.offsetHeight;
  };
  inSteps([
    ...Object.entries(PARTS).map(([name, create]) => () => void Object.assign(parts, { [name]: create(app) })),
    () => {
      const bench = { parts, status, units: unitsSwitch(app), views: viewSwitch(app) };
      showing = createShowing(app, bench);
      page = joinPage(app, bench);
    },
    ...store.get().configurations.map((one) => () => void app.ask.drawn(one)),
    () => app.notice.tell(opened),
    ...Object.keys(PARTS).map((name) => () => parts[/** @type {keyof Parts} */ (name)].update(app.state(), true)),
    ...ENDS.map((end) => () => app.ask.endDrawings(active(), end, app.state().units)),
    put(0),
    ...app.stage.drawSteps(app.state()),
    () => {
      followStore(app, store, address, showing);
      followWindow(app, fragment, kept);
      showing.besideDrawing();
    },
    // What stands below comes after it, or it would be moved.
    () => parts.handwork.here(),
    put(1),
    () => parts.told.here(),
    put(2),
    put(3),
    // Whoever prints with the browser's own command waits for nothing.
    () => void app.paper.ready().catch(() => null),
  ]);
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
 * @param {string} kept what it shows without a link
 */
function followWindow(app, first, kept) {
  const reread = () => {
    if (location.hash.slice(1) !== app.fragment()) app.notice.tell(app.open(location.hash.slice(1) || kept));
  };
  // Whoever went on or back meanwhile is already elsewhere.
  if (location.hash.slice(1) !== first) reread();
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
}

// What the page already says is painted first; the configurator's place is kept clear meanwhile.
function startAfterPaint() {
  requestAnimationFrame(() => setTimeout(start));
}

if (document.readyState === "loading") document.addEventListener("DOMContentLoaded", startAfterPaint);
else startAfterPaint();
