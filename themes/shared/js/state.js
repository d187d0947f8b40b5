// The whole state, and pure functions from one state to the next.
//
// state = { configurations: [configuration], current, units, share, typed, drafts }
// configuration = { door, changes, handle, family, choices, place }
// `changes` holds what differs from the preset; handle measurements as `handle.<name>`.
// `typed` keeps each length as its writer spelled it; `drafts` what is not (yet) a sound length.

const MOST_CONFIGURATIONS = 4;

function freshConfiguration(catalog, doorId, familyId) {
  const configuration = { door: doorId, changes: {}, handle: "", family: familyId, choices: {}, place: null };
  return { ...configuration, place: openPlace(catalog, configuration) };
}

function freshState(catalog, units) {
  const doorId = Object.keys(catalog.doors)[0];
  const family = Object.values(catalog.families).find((one) => !one.retired);
  return {
    configurations: [freshConfiguration(catalog, doorId, family.id)],
    current: 0,
    units,
    typed: {},
    drafts: {},
  };
}

function currentOf(state) {
  return state.configurations[state.current];
}

// The kernel's door: the preset with its handle and the corrected measurements.
function doorOf(catalog, configuration) {
  const preset = catalog.doors[configuration.door];
  const handle = { ...(catalog.handles[configuration.handle] ?? preset.handle) };
  const door = { ...preset };
  for (const [field, value] of Object.entries(configuration.changes)) {
    if (field.startsWith("handle.")) handle[field.slice(7)] = value;
    else door[field] = value;
  }
  return { ...door, handle };
}

function measured(door, field) {
  return field.startsWith("handle.") ? door.handle[field.slice(7)] : door[field];
}

function familyOf(catalog, configuration) {
  return catalog.families[configuration.family];
}

function openPlace(catalog, configuration) {
  const family = familyOf(catalog, configuration);
  return Astragal.kernel.open_position(Astragal.kernel.resolve(family, configuration.choices));
}

function withConfiguration(state, index, configuration) {
  const configurations = state.configurations.map((one, i) => (i === index ? configuration : one));
  return { ...state, configurations };
}

function withCurrent(state, change) {
  return withConfiguration(state, state.current, { ...currentOf(state), ...change });
}

function sameDoor(a, b) {
  return a.door === b.door && a.handle === b.handle && JSON.stringify(a.changes) === JSON.stringify(b.changes);
}

// Configurations compared on one and the same door stay on it when it is corrected.
function withDoorChange(state, change) {
  const before = currentOf(state);
  const configurations = state.configurations.map((one, i) =>
    (i === state.current || sameDoor(one, before) ? { ...one, ...change } : one));
  return { ...state, configurations };
}

function withDoor(state, door) {
  return { ...withDoorChange(state, { door, changes: {}, handle: "" }), typed: {}, drafts: {} };
}

function withHandle(catalog, state, handle) {
  const own = currentOf(state).changes;
  const changes = Object.fromEntries(Object.entries(own).filter(([field]) => !field.startsWith("handle.")));
  const preset = catalog.doors[currentOf(state).door].handle.id === handle;
  return { ...withDoorChange(state, { changes, handle: preset ? "" : handle }), drafts: {} };
}

// A value equal to the preset's is no change, so that a link stays short.
function withMeasure(catalog, state, field, value) {
  const configuration = currentOf(state);
  const preset = measured(doorOf(catalog, { ...configuration, changes: {} }), field);
  const changes = { ...configuration.changes };
  if (preset === value) delete changes[field];
  else changes[field] = value;
  return withDoorChange(state, { changes });
}

function withoutKey(record, key) {
  const { [key]: dropped, ...rest } = record;
  return rest;
}

// Takes what was typed: a sound length moves the door, anything else waits beside the field with its reason.
function withTyped(catalog, state, fieldId, text) {
  const field = FIELDS.get(fieldId);
  const mm = parseLength(text, state.units);
  const waiting = (why) => ({ ...state, drafts: { ...state.drafts, [fieldId]: { text, why } } });
  if (mm === null) {
    const example = state.units === "mm" ? "571 mm" : "22 1/2 or 22.5";
    return waiting(`Write a length such as ${example}.`);
  }
  const why = impossible(field, mm, state.units);
  if (why) return waiting(why);
  const next = withMeasure(catalog, state, fieldId, mm);
  const clash = contradiction(doorOf(catalog, currentOf(next)));
  if (clash) return waiting(`${clash[1]} The drawing keeps the last sound measurement.`);
  const typed = { ...state.typed, [fieldId]: { text: text.trim(), units: state.units, mm } };
  return { ...next, typed, drafts: withoutKey(state.drafts, fieldId) };
}

function textOf(state, fieldId, mm) {
  const draft = state.drafts[fieldId];
  if (draft) return draft.text;
  const typed = state.typed[fieldId];
  if (typed && typed.mm === mm && typed.units === state.units) return typed.text;
  return writeLength(mm, state.units);
}

function withUnits(state, units) {
  return { ...state, units, drafts: {} };
}

function withFamily(catalog, state, family) {
  const next = withCurrent(state, { family, choices: {} });
  return withCurrent(next, { place: openPlace(catalog, currentOf(next)) });
}

function withChoice(catalog, state, choice, option) {
  const next = withCurrent(state, { choices: { ...currentOf(state).choices, [choice]: option } });
  return withCurrent(next, { place: fittedPlace(catalog, currentOf(next)) });
}

// A place kept from other choices may name parts that these do not move.
function fittedPlace(catalog, configuration) {
  const moves = movesOf(catalog, configuration).map((leg) => leg.moves);
  const open = openPlace(catalog, configuration);
  const place = configuration.place;
  return {
    lower: moves.includes("lower") ? place.lower : open.lower,
    upper: moves.includes("upper") ? place.upper : 0,
    tilt: moves.includes("tilt") ? place.tilt : open.tilt,
    coarse: false,
  };
}

function movesOf(catalog, configuration) {
  return Astragal.kernel.legs(Astragal.kernel.resolve(familyOf(catalog, configuration), configuration.choices));
}

function withPlace(state, change) {
  return withCurrent(state, { place: { ...currentOf(state).place, ...change, coarse: false } });
}

function withAnother(state) {
  if (state.configurations.length >= MOST_CONFIGURATIONS) return state;
  const copy = currentOf(state);
  return {
    ...state,
    configurations: [...state.configurations, { ...copy, choices: { ...copy.choices } }],
    current: state.configurations.length,
    drafts: {},
  };
}

function withoutOne(state, index) {
  if (state.configurations.length === 1) return state;
  const configurations = state.configurations.filter((_, i) => i !== index);
  const current = Math.min(state.current > index ? state.current - 1 : state.current, configurations.length - 1);
  return { ...state, configurations, current, drafts: {} };
}

function withShown(state, index) {
  return { ...state, current: index, drafts: {}, typed: {} };
}

function createStore(first) {
  let state = first;
  const followers = [];
  return {
    get: () => state,
    // `step` says how the address follows: "push", "replace" or "none".
    set(next, step) {
      if (next === state) return;
      const before = state;
      state = next;
      followers.forEach((follower) => follower(state, before, step));
    },
    follow: (follower) => followers.push(follower),
  };
}
