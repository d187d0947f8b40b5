// The travel as sliders: one a moving part, with where it meets the handle marked on it.

import { element, setAttribute, setChildren, setText } from "./dom.js";
import { activeOf, closedPlace, openPlace } from "./state.js";
import { slid } from "./swipe.js";
import { capital } from "./text.js";
import { samePlace, sayPart, shareAlong, valueAlong } from "./travel.js";
import { _, verdictNode } from "./words.js";

/**
 * The stretch of a leg on which the covering and the handle meet, or null.
 * @param {Astragal.Answer} answer
 * @param {Astragal.Leg} leg
 */
function meeting(answer, leg) {
  const verdict = answer.verdicts.pass_through;
  if (!verdict || verdict.state === "clears" || verdict.moves !== leg.moves) return null;
  return { from: Math.min(verdict.start, verdict.end), to: Math.max(verdict.start, verdict.end), state: verdict.state };
}

/** @param {ReturnType<typeof meeting>} span */
function meetingMark(span) {
  if (!span) return null;
  const words = span.state === "blocked" ? _("Blocked by the handle here") : _("Guide by hand past the handle here");
  return element("div", { class: `meeting ${span.state}`, style: `--from:${span.from};--to:${span.to}` },
    element("span", { class: "meeting-band", "aria-hidden": "true" }),
    verdictNode({ state: span.state, words }));
}

/**
 * @param {HTMLInputElement} input
 * @param {Astragal.Leg} leg
 * @param {Astragal.Position} place
 */
function showShare(input, leg, place) {
  const share = String(Math.round(shareAlong(leg, place) * 100));
  if (input.value !== share) input.value = share;
}

/**
 * @param {App} app
 * @param {Astragal.Leg} leg
 */
function sliderRow(app, leg) {
  const name = capital(leg.words.part);
  const input = element("input", {
    type: "range", min: "0", max: "100", step: "1", id: `travel-${leg.moves}`,
    ...slid(() => app.move(leg, valueAlong(leg, input.valueAsNumber / 100)), () => showShare(input, leg, activeOf(app.state()).place)),
    onchange: () => app.settle(),
  });
  const output = element("output", { for: input.id });
  const mark = element("div", { class: "meeting-place" });
  const node = element("div", { class: "slider" },
    element("div", { class: "slider-head" }, element("label", { for: input.id }, name), output),
    element("div", { class: "track" }, element("div", { class: "run" }, input), mark));
  return { leg, input, output, mark, node };
}

/**
 * @param {App} app
 * @returns {TravelBar}
 */
export function createTravel(app) {
  const rows = element("div", { class: "slider-rows" });
  const openButton = element("button", { type: "button", class: "end", onclick: () => app.goTo("open") }, _("Open"));
  const closedButton = element("button", { type: "button", class: "end", onclick: () => app.goTo("closed") }, _("Closed"));
  const still = element("p", { class: "still" }, _("Nothing moves: the cloth is held between two rods."));
  const node = element("div", { class: "travel-bar", role: "group", "aria-label": _("Move the covering") },
    element("div", { class: "ends" }, openButton, closedButton), rows, still);
  /** @type {ReturnType<typeof sliderRow>[]} */
  let sliders = [];
  let built = "";
  /** @type {Record<End, Astragal.Position>} */
  let ends;

  /** @param {Astragal.Leg[]} legs */
  function build(legs) {
    const key = JSON.stringify([app.family().id, legs]);
    if (key === built) return;
    built = key;
    sliders = legs.map((leg) => sliderRow(app, leg));
    rows.replaceChildren(...sliders.map((row) => row.node));
    still.hidden = legs.length > 0;
    openButton.hidden = closedButton.hidden = legs.length === 0;
  }

  /** @param {Astragal.Configuration} configuration */
  function showPlace(configuration) {
    for (const { leg, input, output } of sliders) {
      const words = sayPart(leg, configuration.place);
      showShare(input, leg, configuration.place);
      setAttribute(input, "aria-valuetext", words);
      setText(output, words);
    }
    setAttribute(openButton, "aria-pressed", samePlace(configuration.place, ends.open));
    setAttribute(closedButton, "aria-pressed", samePlace(configuration.place, ends.closed));
  }

  return {
    node,
    update(state, settled) {
      const configuration = activeOf(state);
      if (settled) {
        build(app.legs());
        ends = { open: openPlace(app.catalog, configuration), closed: closedPlace(app.catalog, configuration) };
        const answer = app.ask.drawn(configuration);
        for (const row of sliders) setChildren(row.mark, [meetingMark(meeting(answer, row.leg))]);
      }
      showPlace(configuration);
    },
    focus(moves) {
      sliders.find((row) => row.leg.moves === moves)?.input.focus({ preventScroll: true });
    },
  };
}
