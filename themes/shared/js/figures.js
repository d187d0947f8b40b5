// What you get: verdicts, figures and cautions in words, each figure's working one tap away.

import { element, inSlices, setChildren, setText } from "./dom.js";
import { cautionItem, createGuidance } from "./guidance.js";
import { fits } from "./now.js";
import { activeOf } from "./state.js";
import { capital } from "./text.js";
import { remembered } from "./views.js";
import { _, _several, isKey, say, sayFigure, tongue, toldOf, verdictNode } from "./words.js";

// A covering over its travel is much to keep, so it is kept of the last few.
const begun = remembered(4, (/** @type {App} */ app, /** @type {Astragal.Configuration} */ one) =>
  Astragal.kernel.asking(app.ask.fit(one), app.state().household));
const answers = remembered(80, (/** @type {App} */ app, /** @type {Astragal.Configuration} */ one) => {
  const asking = begun(app.ask.key(one), app, one);
  while (Astragal.kernel.ask_next(asking));
  return asking.answer;
});

/**
 * All that the kernel tells of a configuration.
 * @param {App} app
 * @param {Astragal.Configuration} one
 */
export function wholeAnswer(app, one) {
  return answers(app.ask.key(one), app, one);
}

/**
 * The same with what it was asked of, in slices that block no finger; null where nobody asks for it any more.
 * @param {App} app
 * @param {Astragal.Configuration} one
 * @returns {Promise<Astragal.Asking | null>}
 */
export function wholeAsked(app, one) {
  const key = app.ask.key(one);
  const asking = begun(key, app, one);
  return new Promise((tell) => {
    let more = true;
    inSlices(() => (more = Astragal.kernel.ask_next(asking)), () => {
      const wanted = key === app.ask.key(activeOf(app.state()));
      if (!wanted) tell(null);
      return wanted;
    }, () => more || tell(asking));
  });
}

/**
 * @param {Astragal.Verdict} verdict
 * @param {string} units
 */
function verdictItem(verdict, units) {
  return element("li", {},
    element("p", { class: "verdict-line" }, element("span", {}, capital(verdict.name)), verdictNode(toldOf(verdict))),
    element("p", { class: "why" }, say(verdict.why, units)));
}

/**
 * @param {Astragal.Figure} figure
 * @param {string} units
 * @param {boolean} opened
 */
function figureItem(figure, units, opened) {
  const rule = capital(Astragal.kernel.say_rule(figure, tongue(), units));
  const sum = Astragal.kernel.say_sum(figure, tongue(), units);
  return element("details", { class: "figure", "data-figure": figure.id, open: opened },
    element("summary", {}, element("span", { class: "figure-name" }, capital(figure.name)), element("b", { class: "number" }, sayFigure(figure, units))),
    element("div", { class: "working" }, element("p", {}, rule), element("p", { class: "sum" }, sum)));
}

/**
 * @param {App} app
 * @returns {PagePart}
 */
export function createFigures(app) {
  const verdicts = element("ul", { class: "verdicts" });
  const refusal = element("p", { class: "refusal", hidden: true });
  const keyFigures = element("div", { class: "figure-list" });
  const restWords = element("summary");
  const restFigures = element("div", { class: "figure-list" });
  const rest = element("details", { class: "more" }, restWords, restFigures);
  const cautions = element("ul", { class: "cautions" });
  const cautionBlock = element("div", {}, element("h3", {}, _("Take care")), cautions);
  const price = element("div", { class: "price" });
  const sound = element("div", {}, verdicts, price, element("h3", {}, _("Figures")),
    element("p", { class: "note" }, _("Open a figure to see how it was worked out.")), keyFigures, rest);
  const guidance = createGuidance();
  const node = element("div", {}, refusal, sound, cautionBlock, guidance.node);

  let told = "";

  function opened() {
    return new Set([...sound.querySelectorAll(".figure[open]")].map((one) => one.getAttribute("data-figure")));
  }

  /** What comes later is of what is worked on by then. */
  function showPrice() {
    void app.fetched(import("./price.js"), ({ priceTold }) => {
      const opened = Boolean(price.querySelector("details")?.open);
      setChildren(price, priceTold(app, activeOf(app.state()), app.state().units, opened));
    });
  }

  /**
   * @param {Astragal.Answer} answer
   * @param {string} units
   */
  function show(answer, units) {
    refusal.hidden = fits(answer);
    setText(refusal, say(answer.refusal, units));
    sound.hidden = !fits(answer);
    showPrice();
    const open = opened();
    setChildren(verdicts, Object.values(answer.verdicts).map((one) => verdictItem(one, units)));
    const items = (/** @type {Astragal.Figure[]} */ list) => list.map((one) => figureItem(one, units, open.has(one.id)));
    const figures = Object.values(answer.figures);
    const others = figures.filter((one) => !isKey(one.id));
    setChildren(keyFigures, items(figures.filter((one) => isKey(one.id))));
    setChildren(restFigures, items(others));
    setText(restWords, _several("{count} more figure", "{count} more figures", { count: others.length }));
    const binding = Astragal.kernel.binding_cautions(answer.cautions);
    cautionBlock.hidden = binding.length === 0;
    setChildren(cautions, binding.map((one) => cautionItem(one, units)));
    guidance.show(Astragal.kernel.general_cautions(answer.cautions), units);
  }

  return {
    node,
    async update(state) {
      const wanted = `${app.ask.key(activeOf(state))} ${state.units}`;
      const asked = wanted === told ? null : await wholeAsked(app, activeOf(state));
      if (!asked || told === wanted) return;
      told = wanted;
      show(asked.answer, state.units);
    },
  };
}
