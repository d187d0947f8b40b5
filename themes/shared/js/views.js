// The kernel's answers and drawings, each asked for once while nothing that goes in has changed.

const VIEWS = ["elevation", "section", "plan"];

function remembered(limit, work) {
  const known = new Map();
  return (key, ...inputs) => {
    if (!known.has(key)) {
      if (known.size >= limit) known.delete(known.keys().next().value);
      known.set(key, work(...inputs));
    }
    return known.get(key);
  };
}

function createAsker(catalog, household) {
  const { kernel } = Astragal;
  // A state's objects never change, so each is known by a number of its own.
  const numbered = new WeakMap();
  let count = 0;
  const numberOf = (thing) => {
    if (!numbered.has(thing)) numbered.set(thing, (count += 1));
    return numbered.get(thing);
  };
  const key = (one) => `${numberOf(one.door)} ${one.family} ${JSON.stringify(one.choices)}`;
  // Hung once, and the other leaf's covering with it: whatever moves only asks for the pieces anew.
  const leaves = remembered(24, (one) => kernel.dressed_leaves(kernel.hung(one.door, familyOf(catalog, one), one.choices)));
  const leavesOf = (one) => leaves(key(one), one);
  const fitOf = (one) => leavesOf(one)[0];
  const answers = remembered(80, (one) => kernel.ask_fit(fitOf(one), household()));
  const refusals = remembered(12, (one) => kernel.ruled_out(one.door, familyOf(catalog, one), one.choices));
  const asked = (one) => `${key(one)} ${numberOf(household())}`;
  const answer = (one) => answers(asked(one), one);

  function namesOf(one, place) {
    return {
      family: familyOf(catalog, one).name,
      door: catalog.doors[one.door.id].name,
      place: kernel.place_words(fitOf(one).legs, place),
    };
  }

  const doorScenes = remembered(12, (one) => kernel.scene_at(fitOf(one), one.place));

  // The scene at another position: only the covering is worked out anew.
  function movedScene(one, place) {
    return { ...doorScenes(key(one), one), covering: kernel.covering_scene(leavesOf(one), place) };
  }

  function draftOf(one, scene, place, units) {
    return kernel.drafted(one.door, { scene, answer: answer(one), names: namesOf(one, place) }, units);
  }

  const movedDraft = (one, place, units) => draftOf(one, movedScene(one, place), place, units);

  function drawings(one, place, units) {
    const draft = movedDraft(one, place, units);
    return { elevation: kernel.elevation_of(draft), section: kernel.section_of(draft), plan: kernel.plan_of(draft) };
  }

  const ends = remembered(12, (one, end, units) => drawings(one, endPlace(catalog, one, end), units));

  return {
    answer,
    drawings,
    endDrawings: (one, end, units) => ends(`${asked(one)} ${end} ${units}`, one, end, units),
    ruledOut: (one) => refusals(key(one), one),
    elevation: (one, place, units) => kernel.elevation_of(movedDraft(one, place, units)),
    // How many of a drawing's first marks no position changes.
    stillCount: (view, one, units) => kernel.door_marks(view, draftOf(one, doorScenes(key(one), one), one.place, units)).length,
    // What lies over them, by view: all that a drag has to draw anew.
    movingMarks: (one, place, units, annotated) => kernel.moving_marks(movedDraft(one, place, units), annotated),
    // Where a hand takes hold of what a leg moves; null where it is not to be had.
    hold: (one, place, leg) => kernel.holds_at(fitOf(one), place, leg)[0] ?? null,
    // What of the glass is clear, and what of view and light comes through; null where the family cannot go on the door.
    sharesAt(one, place) {
      const pieces = kernel.pieces_at(fitOf(one), place);
      return pieces.length === 0 ? null : kernel.glass_shares(fitOf(one), pieces);
    },
  };
}
