// One proposal as a leaf: drawn on its door, judged, in a few plain figures, with what the consultant says to it.

import { plainLines } from "./clientsheet.js";
import { element, setChildren } from "./dom.js";
import { wholeAnswer } from "./figures.js";
import { cautionItem } from "./guidance.js";
import { fits, verdictOf } from "./now.js";
import { movingFigure } from "./onmine.js";
import { paint } from "./paint.js";
import { namedPrice } from "./price.js";
import { familyOf } from "./state.js";
import { capital, listed } from "./text.js";
import { _, choicesInWords, say, toldOf, verdictNode } from "./words.js";

/** @typedef {{ proposal: Astragal.SetProposal, title: string, name: string, liked: boolean, head: number, like: () => void }} Leafed */

/**
 * @param {Astragal.Answer} answer
 * @param {string} units
 */
function toldFigures(answer, units) {
  const lines = plainLines({ ...answer, verdicts: {} }, units);
  const verdicts = Object.values(answer.verdicts);
  const binding = Astragal.kernel.binding_cautions(answer.cautions);
  return [
    element("dl", { class: "client-figures" }, lines.map(({ name, told }) => element("div", {}, element("dt", {}, name), element("dd", {}, told)))),
    binding.length === 0 ? null : element("div", {}, element("h4", {}, _("Take care")),
      element("ul", { class: "cautions" }, binding.map((one) => cautionItem(one, units)))),
    element("details", { class: "more" }, element("summary", {}, _("How it works on this door")),
      element("ul", { class: "verdicts" }, verdicts.map((verdict) => element("li", {},
        element("p", { class: "verdict-line" }, element("span", {}, capital(verdict.name)), verdictNode(toldOf(verdict))),
        element("p", { class: "why" }, say(verdict.why, units)))))),
  ];
}

/**
 * On which leaves it goes, where that was said.
 * @param {string[]} leaves
 */
function leavesTold(leaves) {
  const names = Astragal.kernel.leaf_names();
  return leaves.length === 0 ? null : element("p", { class: "why" }, _("It goes on: {leaves}.", { leaves: listed(leaves.map((leaf) => names[leaf])) }));
}

/**
 * @param {App} app
 * @param {Astragal.Configuration} one
 * @param {number} head
 */
function drawnLeaf(app, one, head) {
  const figure = movingFigure(app, one, { caption: choicesInWords(app.catalog, one).join(" · "), place: one.place, head });
  const picture = figure.querySelector("svg");
  if (picture) paint(picture, Astragal.kernel.look_of(familyOf(app.catalog, one), one.choices));
  return figure;
}

/**
 * The link of one configuration alone, as it was read.
 * @param {App} app
 * @param {Astragal.Configuration} one
 */
function closerLook(app, one) {
  const { units, household } = app.state();
  const state = { units, household, active: 0, step: "details", needs: [], configurations: [one] };
  return element("a", { href: `try.html#${Astragal.kernel.encode_answered(state, [app.ask.drawn(one)], app.catalog)}` }, _("Look at it closely"));
}

/**
 * @param {App} app
 * @param {Astragal.Configuration} one
 * @param {Leafed} given
 */
export function proposalLeaf(app, one, { proposal, title, name, liked, head, like }) {
  const { units } = app.state();
  const drawn = app.ask.drawn(one);
  const told = element("div", { class: "leaf-told" });
  const input = element("input", { type: "radio", name, value: proposal.tag, checked: liked, onchange: like });
  const node = element("article", { class: "client-leaf", "data-proposal": proposal.tag },
    element("h3", {}, title),
    fits(drawn) ? drawnLeaf(app, one, head) : null,
    leavesTold(proposal.leaves),
    proposal.note === "" ? null : element("blockquote", { class: "told-words" }, element("p", {}, proposal.note)),
    proposal.price === "" ? null : element("p", { class: "leaf-price" }, _("Price: {price}", { price: namedPrice(proposal.price) })),
    element("div", { class: "leaf-verdict" }, element("span", {}, _("At the handle")), verdictNode(verdictOf(drawn, "pass_through"))),
    told,
    proposal.otherwise && !Astragal.kernel.over_opening(app.ask.fit(one))
      ? element("p", { class: "why" }, _("The figures are those of the leaf with the handle. The other leaf measures a little otherwise, and its piece is made to that.")) : null,
    element("p", {}, closerLook(app, one)),
    element("label", { class: "this-one" }, input, element("span", {}, _("This one"), element("span", { class: "unseen" }, title))));
  return {
    node,
    /** What takes its time: every question is asked. */
    fill() {
      const answer = wholeAnswer(app, one);
      setChildren(told, fits(answer) ? toldFigures(answer, units) : [element("p", { class: "refusal" }, say(answer.refusal, units))]);
    },
    unmark: () => void (input.checked = false),
  };
}
