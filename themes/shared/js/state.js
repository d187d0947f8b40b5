// The whole state, and pure functions from one state to the next.
//
// { units, active, household, configurations: [{ door, family, choices, place, measured }], typed, drafts }
// The first four are what a link holds. `typed` keeps each length as its writer spelled it,
// `drafts` what is not (yet) a sound length, with the reason.

const MOST_CONFIGURATIONS = 4;

function stateFrom(opened) {
  return { ...opened, typed: {}, drafts: {} };
}

function linked({ units, active, household, configurations }) {
  return { units, active, household, configurations };
}

function activeOf(state) {
  return state.configurations[state.active];
}

function familyOf(catalog, configuration) {
  return catalog.families[configuration.family];
}

function numbersOf(catalog, configuration) {
  return Astragal.kernel.resolve(familyOf(catalog, configuration), configuration.choices);
}

function legsOf(catalog, configuration) {
  return Astragal.kernel.family_legs(familyOf(catalog, configuration), numbersOf(catalog, configuration));
}

function openPlace(catalog, configuration) {
  return Astragal.kernel.open_position(numbersOf(catalog, configuration));
}

function closedPlace(catalog, configuration) {
  return Astragal.kernel.closed_position(numbersOf(catalog, configuration));
}

function measured(state, id) {
  const { door } = activeOf(state);
  if (id.startsWith("handle.")) return door.handle[id.slice(7)];
  if (id.startsWith("household.")) return state.household[id.slice(10)];
  return door[id];
}

function presetValue(catalog, state, id) {
  const { door } = activeOf(state);
  if (id.startsWith("handle.")) return catalog.handles[door.handle.id][id.slice(7)];
  if (id.startsWith("household.")) return catalog.household[id.slice(10)];
  return catalog.doors[door.id][id];
}

function isCorrected(catalog, door) {
  const { handle, ...rest } = door;
  const { handle: presetHandle, ...preset } = catalog.doors[door.id];
  return JSON.stringify([rest, handle]) !== JSON.stringify([preset, presetHandle]);
}

function withActive(state, change) {
  const configurations = state.configurations.map((one, i) => (i === state.active ? { ...one, ...change } : one));
  return { ...state, configurations };
}

function onSameDoor(state) {
  const door = JSON.stringify(activeOf(state).door);
  return state.configurations.map((one) => JSON.stringify(one.door) === door);
}

// Configurations compared on one and the same door stay on it when it is corrected.
function withDoor(state, door, measured = activeOf(state).measured) {
  const same = onSameDoor(state);
  return { ...state, configurations: state.configurations.map((one, i) => (same[i] ? { ...one, door, measured } : one)) };
}

function withPreset(catalog, state, id) {
  return { ...withDoor(state, catalog.doors[id], []), typed: {}, drafts: {} };
}

function withHandle(catalog, state, id) {
  const { door, measured } = activeOf(state);
  const others = measured.filter((name) => !name.startsWith("handle."));
  return { ...withDoor(state, { ...door, handle: catalog.handles[id] }, withName(others, "handle")), drafts: {} };
}

// What was measured is spelled out in the link, even where it is what the preset has.
function withName(names, name) {
  return [...new Set([...names, name])];
}

// A word or a count of the door: what it now has of new parts gets a usual size.
function withDoorWord(state, id, value) {
  const { kernel } = Astragal;
  const before = activeOf(state).door;
  const door = kernel.with_new_parts(before, { ...before, [id]: value });
  return kernel.is_said(kernel.first_denied(door)) ? state : { ...withDoor(state, door, withName(activeOf(state).measured, id)), drafts: {} };
}

function withLength(state, id, mm) {
  if (id.startsWith("household.")) return { ...state, household: { ...state.household, [id.slice(10)]: mm } };
  const { door } = activeOf(state);
  if (id.startsWith("handle.")) return withDoor(state, { ...door, handle: { ...door.handle, [id.slice(7)]: mm } });
  return withDoor(state, { ...door, [id]: mm });
}

function withoutKey(record, key) {
  const { [key]: _, ...rest } = record;
  return rest;
}

// Why a text cannot be this field's length; empty where it can.
function objection(state, field, { sound, fault, mm }) {
  if (!sound) {
    const advice = `Write a length such as ${state.units === "mm" ? "571 or 22 1/2 in" : "22 1/2, 22.5 or 571 mm"}.`;
    return fault === "" ? advice : `${capital(fault)}. ${advice}`;
  }
  const { kernel } = Astragal;
  const why = say(kernel.out_of_limits(field, mm, state.units), state.units)
    || say(kernel.first_denied(activeOf(withLength(state, field.id, mm)).door), state.units);
  return why === "" ? "" : `${why} The drawing keeps the last sound measurement.`;
}

// Takes what was typed: a sound length moves the door, anything else waits in the field with its reason.
function withTyped(state, field, text) {
  const length = Astragal.kernel.written_length(text, state.units);
  const why = objection(state, field, length);
  if (why) return { ...state, drafts: { ...state.drafts, [field.id]: { text, why } } };
  const { mm } = length;
  const typed = { ...state.typed, [field.id]: { text, units: state.units, mm } };
  const next = withLength(state, field.id, mm);
  const { door, measured } = activeOf(next);
  return { ...withDoor(next, door, withName(measured, field.id)), typed, drafts: withoutKey(state.drafts, field.id) };
}

function withPresetLength(catalog, state, id) {
  const next = withLength(state, id, presetValue(catalog, state, id));
  const { door, measured } = activeOf(next);
  const others = measured.filter((name) => name !== id);
  return { ...withDoor(next, door, others), typed: withoutKey(state.typed, id), drafts: withoutKey(state.drafts, id) };
}

function textOf(state, id) {
  if (state.drafts[id]) return state.drafts[id].text;
  const mm = measured(state, id);
  const typed = state.typed[id];
  if (typed && typed.mm === mm && typed.units === state.units) return typed.text;
  return Astragal.kernel.write_length(mm, state.units);
}

function withUnits(state, units) {
  return { ...state, units, drafts: {} };
}

function withFamily(catalog, state, family) {
  const next = withActive(state, { family, choices: {} });
  return withActive(next, { place: openPlace(catalog, activeOf(next)) });
}

function endPlace(catalog, configuration, end) {
  return (end === "open" ? openPlace : closedPlace)(catalog, configuration);
}

// A place kept from other choices may name parts that these do not move.
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

function withChoice(catalog, state, choice, option) {
  const next = withActive(state, { choices: { ...activeOf(state).choices, [choice]: option } });
  return withActive(next, { place: fittedPlace(catalog, activeOf(next)) });
}

function withPlace(state, place) {
  return withActive(state, { place });
}

function withAnother(state) {
  if (state.configurations.length >= MOST_CONFIGURATIONS) return state;
  const configurations = [...state.configurations, { ...activeOf(state) }];
  return { ...state, configurations, active: configurations.length - 1, drafts: {} };
}

function withoutOne(state, index) {
  const configurations = state.configurations.filter((_, i) => i !== index);
  if (configurations.length === 0) return state;
  const active = Math.min(state.active > index ? state.active - 1 : state.active, configurations.length - 1);
  return { ...state, configurations, active, drafts: {}, typed: {} };
}

function withShown(state, index) {
  return { ...state, active: index, drafts: {}, typed: {} };
}

function createStore(first) {
  let state = first;
  const followers = [];
  return {
    get: () => state,
    // `step` says how the address follows: "push", "replace" or "none".
    set(next, step) {
      if (next === state) return;
      state = next;
      followers.forEach((follower) => follower(state, step));
    },
    follow: (follower) => followers.push(follower),
  };
}
