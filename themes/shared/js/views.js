// The kernel's answers and drawings for a configuration, each asked for once while nothing changes.

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

function createAsker(catalog) {
  const { kernel } = Astragal;
  const door = remembered(12, (configuration) => doorOf(catalog, configuration));
  const doorKey = (one) => JSON.stringify([one.door, one.changes, one.handle]);
  const fitKey = (one) => JSON.stringify([doorKey(one), one.family, one.choices]);
  const asDoor = (one) => door(doorKey(one), one);
  const answers = remembered(60, (one) => kernel.ask(asDoor(one), familyOf(catalog, one), one.choices, catalog.household));
  const refused = remembered(12, (one) => kernel.ruled_out(asDoor(one), familyOf(catalog, one), one.choices, catalog.household));
  return {
    door: asDoor,
    answer: (one) => answers(fitKey(one), one),
    ruledOut: (one) => refused(fitKey(one), one),
    drawing: (view, one, place, units) =>
      kernel[view](asDoor(one), familyOf(catalog, one), one.choices, place, catalog.household, units),
    sharesAt(one, place) {
      const answer = this.answer(one);
      if (answer.refusal !== "") return null;
      const family = familyOf(catalog, one);
      const pieces = kernel.covering_pieces(family.mechanism, kernel.resolve(family, one.choices), answer.size, place);
      return kernel.glass_shares(asDoor(one), answer.size.mount === "over-opening", pieces);
    },
  };
}
