// What stands under the drawing: what of the glass is clear just now, and the handle.

import { element, setChildren, setText } from "./dom.js";
import { activeOf } from "./state.js";
import { capital } from "./text.js";
import { percent, sayPlace } from "./travel.js";
import { say, verdictNode } from "./words.js";

export const fits = (/** @type {Astragal.Answer} */ answer) => !Astragal.kernel.is_said(answer.refusal);

/** @param {Astragal.Answer} answer */
export function verdictState(answer) {
  return fits(answer) ? answer.verdicts.pass_through.state : "does not fit";
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
    element("span", {}, glass, " of the glass clear"), element("span", {}, light, " of the light"));
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
      setChildren(verdict, [fits(answer) ? "At the handle: " : "", verdictNode(verdictState(answer))]);
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
  if (!fits(answer)) return `${app.family().name}: ${say(answer.refusal, state.units)}`;
  const now = app.ask.sharesAt(configuration, configuration.place);
  const verdict = answer.verdicts.pass_through;
  return [
    sayPlace(app.catalog, configuration),
    `${percent(now?.visible ?? 0)} of the glass clear`,
    `${capital(verdict.name)}: ${verdict.state}`,
  ].join(". ");
}
