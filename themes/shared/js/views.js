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
      const [oldest] = known.keys();
      if (known.size >= limit) known.delete(oldest);
      known.set(key, work(...inputs));
    }
    return /** @type {Found} */ (known.get(key));
  };
}

/**
 * @param {Astragal.PageCatalog} catalog
 * @param {() => Astragal.Household} household
 * @returns {Omit<Asker, keyof TableAsker>}
 */
export function createAsker(catalog, household) {
  const { kernel } = Astragal;
  // A shelf of all coverings, with their first picks and with better ones, is moved without hanging any of them anew.
  const most = 20 + 3 * Object.keys(catalog.families).length;
  // A state's objects never change, so each is known by a number of its own.
  const numbered = new WeakMap();
  let count = 0;
  const numberOf = (/** @type {object} */ thing) => {
    if (!numbered.has(thing)) numbered.set(thing, (count += 1));
    return numbered.get(thing);
  };
  const key = (/** @type {Astragal.Configuration} */ one) => `${numberOf(one.door)} ${one.family} ${JSON.stringify([one.choices, one.wishes])}`;
  // Hung once, and the other leaf's covering with it: whatever moves only asks for the pieces anew.
  const leaves = remembered(most, (/** @type {Astragal.Configuration} */ one) => kernel.dressed_leaves(kernel.hung_with(one.door, familyOf(catalog, one), one.choices, one.wishes)));
  const leavesOf = (/** @type {Astragal.Configuration} */ one) => leaves(key(one), one);
  const fitOf = (/** @type {Astragal.Configuration} */ one) => leavesOf(one)[0];
  const answers = remembered(most, (/** @type {Astragal.Configuration} */ one) => kernel.ask_drawn(fitOf(one), household()));
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

  // What is drawn without its title, as while it moves, has no use for names.
  const nameless = { family: "", door: "", place: "" };
  const doorScenes = remembered(most, (/** @type {Astragal.Configuration} */ one) => kernel.scene_at(fitOf(one), one.place));

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
   * @param {Astragal.Position} place
   * @param {string} units
   */
  function movedDraft(one, place, units, names = nameless) {
    return kernel.drafted(one.door, { scene: movedScene(one, place), answer: drawn(one), names }, tongue(), units);
  }

  const draft = (/** @type {Astragal.Configuration} */ one, /** @type {Astragal.Position} */ place, /** @type {string} */ units) =>
    movedDraft(one, place, units, namesOf(one, place));

  return {
    key: asked,
    doorKey: (door) => `${numberOf(door)} ${numberOf(household())}`,
    fit: fitOf,
    drawn,
    draft,
    movedDraft,
    // How the door and its covering look from the room, without any annotation: what stays, and what moves.
    doorFront: (one, units) => kernel.door_front(movedDraft(one, one.place, units)),
    coveringFront: (one, place, units) => kernel.covering_front(movedDraft(one, place, units)),
    // What of the glass is clear, and what of view and light comes through; null where the family cannot go on the door.
    sharesAt(one, place) {
      const pieces = kernel.pieces_at(fitOf(one), place);
      return pieces.length === 0 ? null : kernel.glass_shares(fitOf(one), pieces);
    },
  };
}
