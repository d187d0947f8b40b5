// What you get: verdicts, figures and cautions in words, each figure's working one tap away.

import { element, setChildren, setText } from "./dom.js";
import { cautionItem, createGuidance } from "./guidance.js";
import { fits } from "./now.js";
import { activeOf } from "./state.js";
import { capital } from "./text.js";
import { remembered } from "./views.js";
import { _, _several, isKey, say, sayFigure, tongue, toldOf, verdictNode } from "./words.js";

const answers = remembered(80, (/** @type {App} */ app, /** @type {Astragal.Configuration} */ one) =>
  Astragal.kernel.ask_fit(app.ask.fit(one), app.state().household));

/**
 * All that the kernel tells of a configuration.
 * @param {App} app
 * @param {Astragal.Configuration} one
 */
export function wholeAnswer(app, one) {
  return answers(app.ask.key(one), app, one);
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
  const sound = element("div", {}, verdicts, element("h3", {}, _("Figures")),
    element("p", { class: "note" }, _("Open a figure to see how it was worked out.")), keyFigures, rest);
  const guidance = createGuidance();
  const node = element("div", {}, refusal, sound, cautionBlock, guidance.node);

  function opened() {
    return new Set([...sound.querySelectorAll(".figure[open]")].map((one) => one.getAttribute("data-figure")));
  }

  return {
    node,
    update(state) {
      const answer = wholeAnswer(app, activeOf(state));
      refusal.hidden = fits(answer);
      setText(refusal, say(answer.refusal, state.units));
      sound.hidden = !fits(answer);
      const open = opened();
      setChildren(verdicts, Object.values(answer.verdicts).map((one) => verdictItem(one, state.units)));
      const items = (/** @type {Astragal.Figure[]} */ list) => list.map((one) => figureItem(one, state.units, open.has(one.id)));
      const figures = Object.values(answer.figures);
      const others = figures.filter((one) => !isKey(one.id));
      setChildren(keyFigures, items(figures.filter((one) => isKey(one.id))));
      setChildren(restFigures, items(others));
      setText(restWords, _several("{count} more figure", "{count} more figures", { count: others.length }));
      const binding = Astragal.kernel.binding_cautions(answer.cautions);
      cautionBlock.hidden = binding.length === 0;
      setChildren(cautions, binding.map((one) => cautionItem(one, state.units)));
      guidance.show(Astragal.kernel.general_cautions(answer.cautions), state.units);
    },
  };
}
