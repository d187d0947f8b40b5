// What may be asked of the configurator: each a step from one state to the next.

import { later } from "./dom.js";
import {
  activeOf, endPlace, familyOf, legsOf, stateFrom, withAnother, withChange, withChoice, withCovering, withFamily, withHandle,
  withoutOne, withPlace, withPreset, withShown, withStep, withUnits,
} from "./state.js";

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
  return {
    state: store.get,
    change: set,
    family: () => familyOf(catalog, now()),
    legs,
    pickDoor: (id) => set(withPreset(catalog, store.get(), id), "push"),
    pickHandle: (id) => set(withHandle(catalog, store.get(), id), "push"),
    goToStep(step) {
      set(withStep(store.get(), step), "push");
      app.root.scrollIntoView({ block: "start" });
    },
    openFamily(one) {
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
    remove: (index) => set(withoutOne(store.get(), index), "push"),
    show: (index) => set(withShown(store.get(), index), "push"),
    open(fragment) {
      const opened = address.read(fragment);
      set(stateFrom(opened.state), "opened");
      return opened;
    },
  };
}
