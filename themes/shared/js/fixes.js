// What would mend what does not clear: changes that the kernel has made and asked again, each one tap away.

import { element, inSlices, setChildren, setText } from "./dom.js";
import { wholeAsked } from "./figures.js";
import { activeOf } from "./state.js";
import { capital, listed } from "./text.js";
import { _, say } from "./words.js";

const LOOKING = _("Looking for what would fix it…");

/**
 * Looks for what mends a configuration in slices that block no frame.
 * @param {Astragal.Search} search
 * @param {() => boolean} wanted whether it is still asked for
 * @param {() => void} tell at the beginning, each time that more has been tried, and at the end
 */
function lookOn(search, wanted, tell) {
  const { kernel } = Astragal;
  let ended = -1;
  const step = () => {
    if (!search.done) kernel.search_on(search);
    return !search.done;
  };
  inSlices(step, wanted, () => {
    if (search.trials.length === ended && !search.done) return;
    ended = search.trials.length;
    tell();
  });
}

/**
 * What a fix mends, in the words of the verdict.
 * @param {Astragal.Answer} answer
 * @param {string} verdict
 */
function mended(answer, verdict) {
  return answer.verdicts[verdict]?.name ?? _("Whether it can go on this door");
}

/**
 * @param {Astragal.Search} search
 * @param {number} count
 */
function noteOf({ done, first, plight }, count) {
  if (count > 0) return _("Each has been tried on this door. Tap one to see it on the drawing; it can be undone.");
  if (!done) return LOOKING;
  const verdicts = listed(plight.flatMap(({ troubles }) => troubles.map((verdict) => mended(first.answer, verdict))));
  return _("Nothing that was tried on this door would fix this: {verdicts}.", { verdicts });
}

/**
 * @param {App} app
 * @returns {PagePart}
 */
export function createFixes(app) {
  const list = element("div");
  const tried = element("p", { class: "tried", role: "status" });
  const undo = element("button", { type: "button", class: "press quiet", onclick: takeBack }, _("Undo"));
  const triedRow = element("div", { class: "tried-row", hidden: true }, tried, undo);
  const note = element("p", { class: "note", "aria-live": "polite" });
  const found = element("div", { hidden: true }, element("h2", { id: "panel-fixes" }, _("What would fix it")), note, list);
  const node = element("section", { class: "panel fixes-panel", "aria-labelledby": "panel-fixes" }, triedRow, found);
  let key = "";
  let told = "";
  /** @type {{ before: PageState, key: string } | null} */
  let made = null;

  /** @param {Astragal.Fix} fix */
  function makeFix(fix) {
    const before = app.state();
    app.make(fix.change);
    made = { before, key: app.ask.key(activeOf(app.state())) };
    setText(tried, _("Tried: {change}", { change: say(fix.says, before.units) }));
    triedRow.hidden = node.hidden = false;
    undo.focus();
  }

  function takeBack() {
    if (made) app.change(made.before, "push");
    made = null;
    triedRow.hidden = true;
    list.querySelector("button")?.focus();
  }

  /**
   * @param {Astragal.Fix} fix
   * @param {string} units
   */
  function fixRow(fix, units) {
    const costs = fix.costs.map((cost) => say(cost, units)).join(" ");
    return element("li", {}, element("button", { type: "button", class: "fix", onclick: () => makeFix(fix) },
      element("span", {}, say(fix.says, units)), costs ? element("span", { class: "why" }, costs) : null));
  }

  /**
   * @param {Astragal.Search} search
   * @param {string} units
   */
  function show(search, units) {
    const fixes = Astragal.kernel.fixes_found(search);
    const words = JSON.stringify([fixes, units, search.done]);
    if (words === told) return;
    told = words;
    const { answer } = search.first;
    const verdicts = [...new Set(fixes.map((fix) => fix.verdict))];
    found.hidden = search.plight.every((plight) => plight.troubles.length === 0);
    node.hidden = found.hidden && triedRow.hidden;
    setText(note, noteOf(search, fixes.length));
    setChildren(list, verdicts.map((verdict) => element("div", {}, element("h3", {}, capital(mended(answer, verdict))),
      element("ul", { class: "fix-list" }, fixes.filter((fix) => fix.verdict === verdict).map((fix) => fixRow(fix, units))))));
  }

  /**
   * Once the page stands: what is worked out first is what everybody looks at.
   * @param {PageState} state
   * @param {string} sought
   */
  async function look(state, sought) {
    // Who goes elsewhere meanwhile looks anew when coming back.
    const wanted = () => {
      if (key === sought && app.state().step !== "details") key = "";
      return key === sought;
    };
    await app.standing;
    const asked = wanted() ? await wholeAsked(app, activeOf(state)) : null;
    if (asked && wanted()) {
      const search = Astragal.kernel.search_for(asked);
      lookOn(search, wanted, () => show(search, state.units));
    } else if (key === sought) key = "";
  }

  return {
    node,
    update(state) {
      const one = activeOf(state);
      if (made && made.key !== app.ask.key(one)) made = null;
      triedRow.hidden = made === null;
      const sought = `${app.ask.key(one)} ${state.units}`;
      if (sought === key) return;
      key = sought;
      told = "";
      setText(note, LOOKING);
      setChildren(list, []);
      void look(state, sought);
    },
  };
}
