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
  const fit = (one) => `${numberOf(one.door)} ${one.family} ${JSON.stringify(one.choices)} ${numberOf(household())}`;
  const answers = remembered(80, (one) => kernel.ask(one.door, familyOf(catalog, one), one.choices, household()));
  const refusals = remembered(12, (one) => kernel.ruled_out(one.door, familyOf(catalog, one), one.choices));
  const answer = (one) => answers(fit(one), one);
  const resolved = remembered(12, (one) => kernel.resolve(familyOf(catalog, one), one.choices));

  function namesOf(one, place) {
    return {
      family: familyOf(catalog, one).name,
      door: catalog.doors[one.door.id].name,
      place: kernel.place_words(answer(one), place),
    };
  }

  function sceneAt(one, place) {
    return kernel.scene(one.door, familyOf(catalog, one), one.choices, place);
  }

  const doorScenes = remembered(12, (one) => sceneAt(one, one.place));

  // The scene at another position: only the covering is worked out anew.
  function movedScene(one, place) {
    const family = familyOf(catalog, one);
    const key = fit(one);
    const covering = kernel.covering_scene(one.door, family.mechanism, resolved(key, one), answer(one).size, place);
    return { ...doorScenes(key, one), covering };
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
    endDrawings: (one, end, units) => ends(`${fit(one)} ${end} ${units}`, one, end, units),
    ruledOut: (one) => refusals(fit(one), one),
    elevation: (one, place, units) => kernel.elevation_of(movedDraft(one, place, units)),
    // How many of a drawing's first marks no position changes.
    stillCount: (view, one, units) => kernel.door_marks(view, draftOf(one, doorScenes(fit(one), one), one.place, units)).length,
    // What lies over them, by view: all that a drag has to draw anew.
    movingMarks: (one, place, units, annotated) => kernel.moving_marks(movedDraft(one, place, units), annotated),
    // What of the glass is clear, and what of view and light comes through; null where the family cannot go on the door.
    sharesAt(one, place) {
      const { refusal, size } = answer(one);
      if (refusal !== "") return null;
      const family = familyOf(catalog, one);
      const pieces = kernel.covering_pieces(family.mechanism, resolved(fit(one), one), size, place);
      return kernel.glass_shares(one.door, size.mount === "over-opening", pieces);
    },
  };
}
