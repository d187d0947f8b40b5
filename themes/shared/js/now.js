// What stands under the drawing: what of the glass is clear just now, and the handle.

import { around, element, setChildren, setText } from "./dom.js";
import { activeOf } from "./state.js";
import { capital } from "./text.js";
import { percent, sayPlace } from "./travel.js";
import { _, say, toldOf, verdictNode } from "./words.js";

export const fits = (/** @type {Astragal.Answer} */ answer) => !Astragal.kernel.is_said(answer.refusal);

/**
 * A verdict's state and its words; no words where the covering has no such verdict.
 * @param {Astragal.Answer} answer
 * @param {string} id
 * @returns {Told}
 */
export function verdictOf(answer, id) {
  if (!fits(answer)) return { state: "does not fit", words: _("does not fit") };
  const verdict = answer.verdicts[id];
  return verdict ? toldOf(verdict) : { state: "", words: "" };
}

/**
 * The line under the drawing: what of the glass is clear just now, and the handle.
 * @param {App} app
 * @returns {PagePart}
 */
export function createNow(app) {
  const glass = element("b", { class: "number" });
  const light = element("b", { class: "number" });
  const verdict = element("span", { class: "now-verdict" });
  const shares = element("span", { class: "now-shares" },
    element("span", {}, around(_("{share} of the glass clear"), { share: glass })),
    element("span", {}, around(_("{share} of the light"), { share: light })));
  const node = element("div", { class: "now" }, element("div", { class: "now-line" }, shares, verdict));
  return {
    node,
    update(state, settled) {
      const configuration = activeOf(state);
      const now = app.ask.sharesAt(configuration, configuration.place);
      if (now) {
        setText(glass, percent(now.visible));
        setText(light, percent(now.light));
      }
      if (!settled) return;
      shares.hidden = !now;
      const answer = app.ask.drawn(configuration);
      const node = verdictNode(verdictOf(answer, "pass_through"));
      setChildren(verdict, fits(answer) ? around(_("At the handle: {verdict}"), { verdict: node }) : [node]);
    },
  };
}

/**
 * What a screen reader hears once the hand rests.
 * @param {App} app
 * @param {PageState} state
 */
export function spokenNow(app, state) {
  const configuration = activeOf(state);
  const answer = app.ask.drawn(configuration);
  if (!fits(answer)) return _("{covering}: {reason}", { covering: app.family().name, reason: say(answer.refusal, state.units) });
  const now = app.ask.sharesAt(configuration, configuration.place);
  const verdict = answer.verdicts.pass_through;
  return _("{place}. {share} of the glass clear. {question}: {verdict}", {
    place: sayPlace(app.catalog, configuration),
    share: percent(now?.visible ?? 0),
    question: capital(verdict.name),
    verdict: toldOf(verdict).words,
  });
}
