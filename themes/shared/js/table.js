// The drawing table: three views, what they say just now, and the travel. Fetched when a covering is looked at closely.

import { element, later } from "./dom.js";
import { createLights } from "./light.js";
import { createNow } from "./now.js";
import { createTravel } from "./sliders.js";
import { createStage } from "./stage.js";
import { activeOf, endPlace } from "./state.js";
import { createTabs, viewSwitch } from "./tabs.js";
import { samePlace } from "./travel.js";
import { byView, remembered, VIEWS } from "./views.js";

// In one of so many frames of a drag the slider follows, in another the words, which nobody reads faster.
const TURNS = 4;
/** @type {End[]} */
const ENDS = ["open", "closed"];

/**
 * @param {Asker} ask
 * @param {Astragal.Configuration} one
 * @param {Astragal.Position} place
 * @param {string} units
 */
export function elevationOf(ask, one, place, units) {
  return Astragal.kernel.elevation_of(ask.draft(one, place, units));
}

/**
 * @param {Asker} ask
 * @param {Astragal.Configuration} one
 * @param {Astragal.Position} place
 * @param {string} units
 * @param {LightView} light
 * @returns {Drawings}
 */
function threeViews(ask, one, place, units, light) {
  const { kernel } = Astragal;
  const draft = ask.draft(one, place, units);
  return { elevation: light.whole(draft), section: kernel.section_of(draft), plan: kernel.plan_of(draft) };
}

/**
 * @param {App} app
 * @param {Lights} lights
 * @returns {TableAsker}
 */
function createTableAsker({ ask, catalog }, lights) {
  const { kernel } = Astragal;
  const ends = remembered(12, (/** @type {Astragal.Configuration} */ one, /** @type {End} */ end, /** @type {string} */ units) =>
    threeViews(ask, one, endPlace(catalog, one, end), units, lights.view()));
  return {
    drawings: (one, place, units) => threeViews(ask, one, place, units, lights.view()),
    endDrawings: (one, units) => ENDS.map((end) => ends(`${ask.key(one)} ${end} ${units}`, one, end, units)),
    // How many of each drawing's first marks no position changes.
    stillCounts(one, units) {
      const draft = ask.movedDraft(one, one.place, units);
      return byView((view) => (view === "elevation" ? lights.view().still(draft) : kernel.door_marks(view, draft)).length);
    },
    // What lies over them in some views: all that a drag has to draw anew.
    movingMarks(views, one, place, units, annotated) {
      const draft = ask.movedDraft(one, place, units);
      const marksIn = { elevation: lights.view().moving, section: kernel.section_marks, plan: kernel.plan_marks };
      return views.map((view) => marksIn[view](draft, annotated));
    },
  };
}

/**
 * Where the drawing lies over the controls, what takes the focus must scroll clear of it.
 * @param {App} app
 * @param {HTMLElement} table
 */
function keepFocusClear(app, table) {
  new ResizeObserver(() => {
    const over = table.offsetWidth > app.root.offsetWidth * 0.8 && getComputedStyle(table).position === "sticky";
    document.documentElement.style.scrollPaddingTop = over ? `${table.offsetHeight + 16}px` : "";
  }).observe(table);
}

/**
 * @param {App} app
 * @returns {PagePart}
 */
export function createDrawingTable(app) {
  const lights = createLights(app);
  Object.assign(app.ask, createTableAsker(app, lights));
  const stage = createStage(app, lights);
  const tabs = createTabs(app);
  const now = createNow(app);
  const travel = createTravel(app);
  app.toolbar.prepend(viewSwitch(app).node, lights.switch);
  let dragging = false;
  /** @type {View} */
  let held = "elevation";
  let turn = 0;
  // A hand that holds still, without letting go, sees and reads where it is.
  const paused = later(60, () => {
    stage.move(app.state(), VIEWS);
    [travel, now].forEach((part) => part.update(app.state(), false));
  });
  Object.assign(app, /** @type {Partial<App>} */ ({
    stage,
    dragging: () => dragging,
    beginDrag(moves, view) {
      dragging = true;
      held = view;
      travel.focus(moves);
    },
    endDrag(before) {
      dragging = false;
      held = "elevation";
      app.rest(!samePlace(before, activeOf(app.state()).place));
    },
    focusField: (id) => stage.focus(id),
  }));
  const node = element("div", { class: "drawing-table" }, tabs.node, stage.node,
    element("div", { class: "under-sheet" }, lights.node, now.node, travel.node));
  keepFocusClear(app, node);

  return {
    node,
    update(state, settled) {
      if (settled) {
        stage.draw(state);
        [tabs, lights, now, travel].forEach((part) => part.update(state, true));
        return;
      }
      turn = (turn + 1) % TURNS;
      // What is held follows in the frame in which the hand moves, each view beside it in every other one.
      const beside = VIEWS.filter((view) => view !== held);
      stage.move(state, [held, beside[turn % beside.length]]);
      if (turn === 0) travel.update(state, false);
      if (turn === TURNS / 2) now.update(state, false);
      paused();
    },
  };
}
