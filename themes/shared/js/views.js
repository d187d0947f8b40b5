// The kernel's answers and drawings, each asked for once while nothing that goes in has changed.

import { endPlace, familyOf } from "./state.js";
import { tongue } from "./words.js";

/** @type {View[]} */
export const VIEWS = ["elevation", "section", "plan"];

/**
 * @template Thing
 * @param {(view: View) => Thing} make
 * @returns {ByView<Thing>}
 */
export function byView(make) {
  return { elevation: make("elevation"), section: make("section"), plan: make("plan") };
}

/**
 * @template {unknown[]} Inputs
 * @template Found
 * @param {number} limit
 * @param {(...inputs: Inputs) => Found} work
 * @returns {(key: string, ...inputs: Inputs) => Found}
 */
export function remembered(limit, work) {
  /** @type {Map<string, Found>} */
  const known = new Map();
  return (key, ...inputs) => {
    if (!known.has(key)) {
      if (known.size >= limit) known.delete([...known.keys()][0]);
      known.set(key, work(...inputs));
    }
    return /** @type {Found} */ (known.get(key));
  };
}

/**
 * @param {Astragal.PageCatalog} catalog
 * @param {() => Astragal.Household} household
 * @returns {Asker}
 */
export function createAsker(catalog, household) {
  const { kernel } = Astragal;
  // A state's objects never change, so each is known by a number of its own.
  const numbered = new WeakMap();
  let count = 0;
  const numberOf = (/** @type {object} */ thing) => {
    if (!numbered.has(thing)) numbered.set(thing, (count += 1));
    return numbered.get(thing);
  };
  const key = (/** @type {Astragal.Configuration} */ one) => `${numberOf(one.door)} ${one.family} ${JSON.stringify(one.choices)}`;
  // Hung once, and the other leaf's covering with it: whatever moves only asks for the pieces anew.
  const leaves = remembered(24, (/** @type {Astragal.Configuration} */ one) => kernel.dressed_leaves(kernel.hung(one.door, familyOf(catalog, one), one.choices)));
  const leavesOf = (/** @type {Astragal.Configuration} */ one) => leaves(key(one), one);
  const fitOf = (/** @type {Astragal.Configuration} */ one) => leavesOf(one)[0];
  const answers = remembered(80, (/** @type {Astragal.Configuration} */ one) => kernel.ask_drawn(fitOf(one), household()));
  const refusals = remembered(12, (/** @type {Astragal.Configuration} */ one) => kernel.ruled_out(one.door, familyOf(catalog, one), one.choices));
  const asked = (/** @type {Astragal.Configuration} */ one) => `${key(one)} ${numberOf(household())}`;
  const drawn = (/** @type {Astragal.Configuration} */ one) => answers(asked(one), one);

  /**
   * @param {Astragal.Configuration} one
   * @param {Astragal.Position} place
   */
  function namesOf(one, place) {
    return {
      family: familyOf(catalog, one).name,
      door: catalog.doors[one.door.id].name,
      place: kernel.place_words(fitOf(one).legs, place, tongue()),
    };
  }

  const doorScenes = remembered(12, (/** @type {Astragal.Configuration} */ one) => kernel.scene_at(fitOf(one), one.place));

  /**
   * The scene at another position: only the covering is worked out anew.
   * @param {Astragal.Configuration} one
   * @param {Astragal.Position} place
   */
  function movedScene(one, place) {
    return { ...doorScenes(key(one), one), covering: kernel.covering_scene(leavesOf(one), place) };
  }

  /**
   * @param {Astragal.Configuration} one
   * @param {Astragal.Scene} scene
   * @param {Astragal.Position} place
   * @param {string} units
   */
  function draftOf(one, scene, place, units) {
    return kernel.drafted(one.door, { scene, answer: drawn(one), names: namesOf(one, place) }, tongue(), units);
  }

  const movedDraft = (/** @type {Astragal.Configuration} */ one, /** @type {Astragal.Position} */ place, /** @type {string} */ units) =>
    draftOf(one, movedScene(one, place), place, units);

  /**
   * @param {Astragal.Configuration} one
   * @param {Astragal.Position} place
   * @param {string} units
   */
  function drawings(one, place, units) {
    const draft = movedDraft(one, place, units);
    return { elevation: kernel.elevation_of(draft), section: kernel.section_of(draft), plan: kernel.plan_of(draft) };
  }

  const ends = remembered(12, (/** @type {Astragal.Configuration} */ one, /** @type {End} */ end, /** @type {string} */ units) =>
    drawings(one, endPlace(catalog, one, end), units));

  return {
    key: asked,
    fit: fitOf,
    drawn,
    drawings,
    endDrawings: (one, end, units) => ends(`${asked(one)} ${end} ${units}`, one, end, units),
    ruledOut: (one) => refusals(key(one), one),
    elevation: (one, place, units) => kernel.elevation_of(movedDraft(one, place, units)),
    // How many of a drawing's first marks no position changes.
    stillCount: (view, one, units) => kernel.door_marks(view, draftOf(one, doorScenes(key(one), one), one.place, units)).length,
    // What lies over them, by view: all that a drag has to draw anew.
    movingMarks: (one, place, units, annotated) => kernel.moving_marks(movedDraft(one, place, units), annotated),
    // What of the glass is clear, and what of view and light comes through; null where the family cannot go on the door.
    sharesAt(one, place) {
      const pieces = kernel.pieces_at(fitOf(one), place);
      return pieces.length === 0 ? null : kernel.glass_shares(fitOf(one), pieces);
    },
  };
}
