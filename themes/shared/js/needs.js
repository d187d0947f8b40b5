// What matters to the client: her needs, by which the coverings are judged openly, and the picks that answer them best.

import { element, inSlices, setChildren, setText } from "./dom.js";
import { activeOf, withNeeds } from "./state.js";
import { capital, listed } from "./text.js";
import { _, _several, say } from "./words.js";

/**
 * The names of needs, in a sentence.
 * @param {string[]} needs
 */
function needNames(needs) {
  return listed(needs.map((need) => Astragal.kernel.needs()[need].name));
}

/**
 * How many meet all of it; where none does, which wish costs most.
 * @param {Astragal.Match[]} matches
 * @param {string[]} needs
 */
function sayWhole(matches, needs) {
  if (needs.length === 0) return "";
  const count = matches.filter((match) => match.met.length === needs.length).length;
  if (count > 0) return _several("{count} covering meets all of it.", "{count} coverings meet all of it.", { count });
  const worst = Astragal.kernel.costliest_wish(matches, needs);
  if (worst === "") return _("No covering meets all of it on this door.");
  return _("No covering meets all of it on this door. The wish that costs most: {need}.", { need: needNames([worst]) });
}

/**
 * Why a covering stands where it does: what it gives, what it gives up, and the picks that get it there.
 * @param {Astragal.Match} match
 * @param {string[]} needs
 * @param {Astragal.Family} family
 */
export function standsFor(match, needs, family) {
  const first = Astragal.kernel.full_choices(family, {});
  const lost = needs.filter((need) => !match.met.includes(need));
  const picks = family.choices
    .filter((choice) => match.choices[choice.id] !== first[choice.id])
    .map((choice) => _("{choice}: {option}", { choice: choice.name, option: choice.options.find((option) => option.id === match.choices[choice.id])?.name ?? "" }));
  return [
    match.met.length > 0 ? _("Gives {needs}.", { needs: needNames(match.met) }) : "",
    lost.length > 0 ? _("Gives up {needs}.", { needs: needNames(lost) }) : "",
    picks.length > 0 ? _("With {picks}.", { picks: listed(picks) }) : "",
  ].filter(Boolean).join(" ");
}

/**
 * Judges all families by their first picks, then by better ones, in slices that block no finger.
 * @param {Astragal.Matching[]} searches
 * @param {() => boolean} wanted whether it is still asked for
 * @param {(matches: Astragal.Match[]) => void} tell
 */
function judge(searches, wanted, tell) {
  const { kernel } = Astragal;
  const best = () => searches.map((search) => search.best[0]);
  let told = false;
  inSlices(() => {
    const first = searches.find((search) => search.best.length === 0);
    const next = first ?? searches.find((search) => !search.done);
    if (!next || (!first && !told)) tell(best());
    told = !first;
    if (next) kernel.match_on(next);
    return Boolean(next);
  }, wanted);
}

/**
 * @param {App} app
 * @param {string} need
 */
function needChip(app, need) {
  const { name } = Astragal.kernel.needs()[need];
  const input = element("input", { type: "checkbox", value: need, onchange: () => app.change(withNeeds(app.state(), need, input.checked), "push") });
  return { need, input, node: element("label", { class: "need" }, input, element("span", {}, capital(name))) };
}

/**
 * @param {App} app
 * @returns {PagePart}
 */
export function createNeeds(app) {
  const known = Astragal.kernel.needs();
  const chips = Object.keys(known).map((need) => needChip(app, need));
  const whole = element("p", { class: "note", role: "status" });
  const rules = element("dl", { class: "need-rules" });
  const node = element("fieldset", { class: "needs" }, element("legend", {}, _("What matters to you")),
    element("div", { class: "need-chips" }, chips.map((chip) => chip.node)), whole,
    element("details", { class: "more" }, element("summary", {}, _("How each is judged")), rules));
  let key = "";
  let units = "";

  return {
    node,
    update(state) {
      // While a shelf that nobody sees is made ready, nothing is judged.
      if (state.step !== "coverings") return;
      if (units !== state.units) setChildren(rules, Object.values(known).map(({ name, rule }) =>
        element("div", {}, element("dt", {}, capital(name)), element("dd", {}, capital(say(rule, state.units))))));
      ({ units } = state);
      chips.forEach((chip) => (chip.input.checked = state.needs.includes(chip.need)));
      const { door } = activeOf(state);
      const wanted = `${app.ask.doorKey(door)} ${state.needs.join()}`;
      if (wanted === key) return;
      key = wanted;
      if (state.needs.length === 0) {
        setText(whole, "");
        app.rank([]);
        return;
      }
      const searches = Object.values(app.catalog.families).filter((family) => !family.retired)
        .map((family) => Astragal.kernel.matching_for(door, family, state.household, state.needs));
      judge(searches, () => key === wanted && app.state().step === "coverings", (matches) => {
        setText(whole, sayWhole(matches, state.needs));
        app.rank(matches.map((match) => ({ match, why: () => standsFor(match, state.needs, app.catalog.families[match.family]) })));
      });
    },
  };
}
