// The whole state, and pure functions from one state to the next.
//
// { units, active, step, needs, household, configurations: [{ door, family, choices, place }], typed, drafts, picking }
// The first six are what a link holds. `typed` keeps each length as its writer spelled it,
// `drafts` what is not (yet) a sound length, with the reason; `picking` says that the shelf is open to pick one to compare.

export const MOST_CONFIGURATIONS = 4;
// A state's objects never change, so what comes of some picks is known while these are.
/** @type {WeakMap<Record<string, string>, { family: Astragal.Family, numbers: Record<string, number> }>} */
const resolved = new WeakMap();

/**
 * @param {Astragal.State} opened
 * @returns {PageState}
 */
export function stateFrom(opened) {
  return { ...opened, typed: {}, drafts: {}, picking: false };
}

/**
 * @param {Astragal.State} state
 * @returns {Astragal.State}
 */
export function linked({ units, active, step, needs, household, configurations }) {
  return { units, active, step, needs, household, configurations };
}

/** @param {PageState} state */
export function activeOf(state) {
  return state.configurations[state.active];
}

/**
 * @param {Astragal.PageCatalog} catalog
 * @param {Astragal.Configuration} configuration
 */
export function familyOf(catalog, configuration) {
  return catalog.families[configuration.family];
}

/**
 * @param {Astragal.PageCatalog} catalog
 * @param {Astragal.Configuration} configuration
 */
export function numbersOf(catalog, configuration) {
  const family = familyOf(catalog, configuration);
  const known = resolved.get(configuration.choices);
  if (known?.family === family) return known.numbers;
  const numbers = Astragal.kernel.resolve(family, configuration.choices);
  resolved.set(configuration.choices, { family, numbers });
  return numbers;
}

/**
 * @param {Astragal.PageCatalog} catalog
 * @param {Astragal.Configuration} configuration
 */
export function legsOf(catalog, configuration) {
  return Astragal.kernel.family_legs(familyOf(catalog, configuration), numbersOf(catalog, configuration));
}

/**
 * @param {Astragal.PageCatalog} catalog
 * @param {Astragal.Configuration} configuration
 */
export function openPlace(catalog, configuration) {
  return Astragal.kernel.open_position(numbersOf(catalog, configuration));
}

/**
 * @param {Astragal.PageCatalog} catalog
 * @param {Astragal.Configuration} configuration
 */
export function closedPlace(catalog, configuration) {
  return Astragal.kernel.closed_position(numbersOf(catalog, configuration));
}

/**
 * @param {PageState} state
 * @param {string} id
 * @returns {number}
 */
export function measured(state, id) {
  const { door, household } = /** @type {any} */ ({ ...activeOf(state), household: state.household });
  if (id.startsWith("handle.")) return door.handle[id.slice(7)];
  if (id.startsWith("household.")) return household[id.slice(10)];
  return door[id];
}

/**
 * @param {PageState} state
 * @param {Partial<Astragal.Configuration>} change
 */
function withActive(state, change) {
  const configurations = state.configurations.map((one, i) => (i === state.active ? { ...one, ...change } : one));
  return { ...state, configurations };
}

/** @param {PageState} state */
export function onSameDoor(state) {
  const door = JSON.stringify(activeOf(state).door);
  return state.configurations.map((one) => JSON.stringify(one.door) === door);
}

/**
 * @param {string[]} names
 * @param {string} name
 */
export function withName(names, name) {
  return [...new Set([...names, name])];
}

/**
 * Configurations compared on one and the same door stay on it when it is corrected.
 * @param {PageState} state
 * @param {Astragal.Door} door
 * @param {string[]} measured what was measured on it: spelled out in the link, even where it is what the preset has
 */
export function withDoor(state, door, measured = activeOf(state).measured) {
  const same = onSameDoor(state);
  return { ...state, configurations: state.configurations.map((one, i) => (same[i] ? { ...one, door, measured } : one)) };
}

/**
 * @param {Astragal.PageCatalog} catalog
 * @param {PageState} state
 * @param {string} id
 */
export function withPreset(catalog, state, id) {
  return { ...withDoor(state, catalog.doors[id], []), typed: {}, drafts: {} };
}

/**
 * @param {Astragal.PageCatalog} catalog
 * @param {PageState} state
 * @param {string} id
 */
export function withHandle(catalog, state, id) {
  const { door, measured } = activeOf(state);
  const others = measured.filter((name) => !name.startsWith("handle."));
  return { ...withDoor(state, { ...door, handle: catalog.handles[id] }, withName(others, "handle")), drafts: {} };
}

/**
 * @param {PageState} state
 * @param {string} units
 */
export function withUnits(state, units) {
  return { ...state, units, drafts: {} };
}

/**
 * @param {Astragal.PageCatalog} catalog
 * @param {PageState} state
 * @param {string} family
 */
export function withFamily(catalog, state, family) {
  const next = withActive(state, { family, choices: {}, wishes: {} });
  return withActive(next, { place: openPlace(catalog, activeOf(next)) });
}

/**
 * @param {Astragal.PageCatalog} catalog
 * @param {Astragal.Configuration} configuration
 * @param {End} end
 */
export function endPlace(catalog, configuration, end) {
  return (end === "open" ? openPlace : closedPlace)(catalog, configuration);
}

/**
 * A place kept from other choices may name parts that these do not move.
 * @param {Astragal.PageCatalog} catalog
 * @param {Astragal.Configuration} configuration
 */
function fittedPlace(catalog, configuration) {
  const moves = legsOf(catalog, configuration).map((leg) => leg.moves);
  const open = openPlace(catalog, configuration);
  const { place } = configuration;
  return {
    lower: moves.includes("lower") ? place.lower : open.lower,
    upper: moves.includes("upper") ? place.upper : 0,
    tilt: moves.includes("tilt") ? place.tilt : open.tilt,
    coarse: false,
  };
}

/**
 * @param {Astragal.PageCatalog} catalog
 * @param {PageState} state
 * @param {string} choice
 * @param {string} option
 */
export function withChoice(catalog, state, choice, option) {
  const next = withActive(state, { choices: { ...activeOf(state).choices, [choice]: option } });
  return withActive(next, { place: fittedPlace(catalog, activeOf(next)) });
}

/**
 * Another covering in the place of the one that is worked on.
 * @param {PageState} state
 * @param {Astragal.Configuration} one
 */
export function withCovering(state, { family, choices, wishes, place }) {
  return withActive(state, { family, choices, wishes, place });
}

/**
 * @param {PageState} state
 * @param {string} need
 * @param {boolean} wanted
 */
export function withNeeds(state, need, wanted) {
  const others = state.needs.filter((one) => one !== need);
  return { ...state, needs: wanted ? [...others, need] : others };
}

/**
 * A number set by hand, or as the mount finds it where it is 0.
 * @param {PageState} state
 * @param {string} name
 * @param {number} mm
 */
export function withWish(state, name, mm) {
  const { [name]: gone, ...rest } = activeOf(state).wishes;
  return withActive(state, { wishes: mm > 0 ? { ...rest, [name]: mm } : rest });
}

/**
 * A change of the kernel's made: its picks, what is set by hand, another handle.
 * @param {Astragal.PageCatalog} catalog
 * @param {PageState} state
 * @param {Astragal.Change} change
 */
export function withChange(catalog, state, change) {
  const { kernel } = Astragal;
  const { door, choices, wishes, measured: names } = activeOf(state);
  const next = withActive(state, { choices: kernel.changed_picks(choices, change), wishes: kernel.changed_wishes(wishes, change) });
  const placed = withActive(next, { place: fittedPlace(catalog, activeOf(next)) });
  const set = kernel.changed_measures(change);
  return set.length === 0 ? placed : withDoor(placed, kernel.changed_door(door, change), set.reduce(withName, names));
}

/**
 * @param {PageState} state
 * @param {string} step
 */
export function withStep(state, step) {
  return { ...state, step, picking: false };
}

/**
 * The shelf, to pick the one that comes beside what is worked on.
 * @param {PageState} state
 */
export function withPicking(state) {
  return { ...withStep(state, "coverings"), picking: true };
}

/**
 * Coverings side by side on the door that is worked on, in the place of what was compared.
 * @param {PageState} state
 * @param {Pick<Astragal.Configuration, "family" | "choices" | "wishes" | "place">[]} coverings
 */
export function withCompared(state, coverings) {
  const one = activeOf(state);
  const configurations = coverings.slice(0, MOST_CONFIGURATIONS).map(({ family, choices, wishes, place }) => ({ ...one, family, choices, wishes, place }));
  const active = Math.max(0, configurations.findIndex(({ family }) => family === one.family));
  return { ...withStep(state, "details"), configurations, active, drafts: {} };
}

/**
 * @param {PageState} state
 * @param {Astragal.Position} place
 */
export function withPlace(state, place) {
  return withActive(state, { place });
}

/** @param {PageState} state */
export function withAnother(state) {
  if (state.configurations.length >= MOST_CONFIGURATIONS) return state;
  const configurations = [...state.configurations, { ...activeOf(state) }];
  return { ...state, configurations, active: configurations.length - 1, drafts: {} };
}

/**
 * @param {PageState} state
 * @param {number} index
 */
export function withoutOne(state, index) {
  const configurations = state.configurations.filter((_, i) => i !== index);
  if (configurations.length === 0) return state;
  const active = Math.min(state.active > index ? state.active - 1 : state.active, configurations.length - 1);
  return { ...state, configurations, active, drafts: {}, typed: {} };
}

/**
 * @param {PageState} state
 * @param {number} index
 */
export function withShown(state, index) {
  return { ...state, active: index, drafts: {}, typed: {} };
}

/**
 * @param {PageState} first
 * @returns {Store}
 */
export function createStore(first) {
  let state = first;
  /** @type {((state: PageState, step: Step) => void)[]} */
  const followers = [];
  return {
    get: () => state,
    // `step` says how the address follows: "push", "replace" or "none"; "opened" follows the address.
    set(next, step) {
      if (next === state) return;
      state = next;
      followers.forEach((follower) => follower(state, step));
    },
    follow: (follower) => void followers.push(follower),
  };
}
