// What may be asked of the configurator: each a step from one state to the next.

import { isCorrected } from "./corrected.js";
import { later } from "./dom.js";
import { askedOnMine, keptAs } from "./keep.js";
import {
  activeOf, endPlace, familyOf, legsOf, stateFrom, withAnother, withChange, withChoice, withCompared, withCovering,
  withDoor, withFamily, withHandle, withoutOne, withPicking, withPlace, withPreset, withShown, withStep, withUnits,
} from "./state.js";
import { _ } from "./words.js";

/**
 * @param {App} app
 * @param {Store} store
 * @param {Address} address
 * @returns {Actions}
 */
export function createActions(app, store, address) {
  const { catalog } = app;
  const now = () => activeOf(store.get());
  const legs = () => legsOf(catalog, now());
  const set = store.set;
  // What is kept is lost by no other door.
  const isMeasured = () => (now().measured.length > 0 || isCorrected(catalog, now().door)) && !keptAs(now().door);

  /**
   * Another door in the place of this one: what was measured by hand is a tap away as long as that one stays as it is.
   * @param {PageState} next
   * @param {boolean} lost whether anything measured gives way
   * @param {string} words
   */
  function changeDoor(next, lost, words) {
    const before = store.get();
    set(next, "push");
    const taken = now().door;
    if (lost) {
      app.undo.offer(words, () => set({ ...before, step: store.get().step }, "push"), () => now().door === taken);
    }
  }

  /**
   * Another part of the page, and the reader with it.
   * @param {PageState} next
   * @param {string} id of the part's title
   */
  function goToPart(next, id) {
    set(next, "push");
    app.whenShown(() => {
      const title = document.getElementById(id);
      title?.scrollIntoView({ block: "start" });
      title?.focus({ preventScroll: true });
      // What grows above it, as the parts come, may push it out of sight below.
      app.whenQuiet("arrived", () => {
        if (title && title === document.activeElement && title.getBoundingClientRect().top > innerHeight) title.scrollIntoView();
      });
    });
  }

  const compare = (/** @type {PageState} */ next) => goToPart(next, "compare-title");

  return {
    state: store.get,
    change: set,
    family: () => familyOf(catalog, now()),
    legs,
    pickDoor: (id) => changeDoor(withPreset(catalog, store.get(), id), isMeasured(),
      _("{door} has taken the place of your measurements.", { door: catalog.doors[id].name })),
    pickHandle: (id) => changeDoor(withHandle(catalog, store.get(), id), now().measured.some((name) => name.startsWith("handle.")),
      _("{handle} has taken the place of what was measured.", { handle: catalog.handles[id].name })),
    takeDoor({ door, measured }, name) {
      const next = withDoor(store.get(), door, measured);
      changeDoor({ ...next, typed: {}, drafts: {} }, isMeasured(), _("{door} has taken the place of your measurements.", { door: name }));
    },
    goToStep(step) {
      set(withStep(store.get(), step), "push");
      app.root.scrollIntoView({ block: "start" });
    },
    openFamily(one) {
      if (store.get().picking) {
        compare(withStep(withCovering(withAnother(store.get()), one), "details"));
        return;
      }
      set(withStep(withCovering(store.get(), one), "details"), "push");
      app.root.scrollIntoView({ block: "start" });
    },
    rank: () => undefined,
    pickUnits: (units) => set(withUnits(store.get(), units), "push"),
    pickFamily: (id) => set(withFamily(catalog, store.get(), id), "push"),
    pickOption: (choice, option) => set(withChoice(catalog, store.get(), choice, option), "push"),
    make: (change) => set(withChange(catalog, store.get(), change), "push"),
    move: (leg, value) => set(withPlace(store.get(), Astragal.kernel.moved_to(legs(), now().place, leg.moves, value)), "move"),
    moveTo: (place) => set(withPlace(store.get(), place), "move"),
    goTo: (end) => set(withPlace(store.get(), endPlace(catalog, now(), end)), "push"),
    settle: later(450, () => address.write("push")),
    another: () => set(withAnother(store.get()), "push"),
    pickAnother: () => goToPart(withPicking(store.get()), "shelf-title"),
    toComparison: () => compare(withStep(store.get(), "details")),
    compareAll(coverings) {
      const before = store.get();
      compare(withCompared(before, coverings));
      const taken = store.get().configurations;
      if (before.configurations.length > 1) {
        app.undo.offer(_("Your short list has taken the place of what was compared."), () => set(before, "push"),
          () => store.get().configurations.every((one, i) => one.family === taken[i]?.family));
      }
    },
    remove: (index) => set(withoutOne(store.get(), index), "push"),
    show: (index) => set(withShown(store.get(), index), "push"),
    open(fragment) {
      const opened = address.read(fragment);
      set(stateFrom(opened.state), "opened");
      if (askedOnMine(fragment)) address.write("replace");
      if (store.get().configurations.length > 1 && askedOnMine(fragment)) compare(store.get());
      return opened;
    },
  };
}
