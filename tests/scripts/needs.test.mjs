// Why a covering stands where it does, for every covering there is: each need is given or given up, each other pick is told.

import assert from "node:assert/strict";
import { test } from "node:test";

import { standsFor } from "../../themes/shared/js/needs.js";

const { kernel, catalog } = Astragal;
const known = kernel.needs();
const NEEDS = Object.keys(known);
globalThis.document = { documentElement: { lang: "en" } };
const listed = (words) => new Intl.ListFormat("en", { type: "conjunction" }).format(words);
const named = (needs) => listed(needs.map((need) => known[need].name));

test("each need is either given or given up, in the order in which it was wanted", () => {
  const [family] = Object.values(catalog.families);
  const choices = kernel.full_choices(family, {});
  for (const wanted of [NEEDS.slice(0, 1), NEEDS.slice(0, 4), NEEDS.toReversed()]) {
    for (let count = 0; count <= wanted.length; count++) {
      const [met, lost] = [wanted.slice(0, count), wanted.slice(count)];
      const told = [met.length > 0 ? `Gives ${named(met)}.` : "", lost.length > 0 ? `Gives up ${named(lost)}.` : ""];
      assert.equal(standsFor({ met, choices }, wanted, family), told.filter(Boolean).join(" "));
    }
  }
});

test("a pick is told where it is another than the first, with its option's name", () => {
  for (const family of Object.values(catalog.families)) {
    const first = kernel.full_choices(family, {});
    for (const choice of family.choices) {
      for (const option of choice.options) {
        const told = standsFor({ met: [], choices: { ...first, [choice.id]: option.id } }, [], family);
        assert.equal(told, option.id === first[choice.id] ? "" : `With ${choice.name}: ${option.name}.`, `${family.id} ${option.id}`);
      }
    }
    const all = Object.fromEntries(family.choices.map(({ id, options }) => [id, options.at(-1).id]));
    const others = family.choices.filter(({ id }) => all[id] !== first[id]).map(({ name, options }) => `${name}: ${options.at(-1).name}`);
    assert.equal(standsFor({ met: [], choices: all }, [], family), others.length > 0 ? `With ${listed(others)}.` : "", family.id);
  }
});
