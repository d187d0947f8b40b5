// A page that is read shows its covering on my door: drawn, with its verdict and the figures that settle it.

import { element, setChildren, setText, shape } from "./dom.js";
import { createLayer, joined } from "./draw.js";
import { wholeAnswer } from "./figures.js";
import { isRead, keptConfiguration, keptLink, keptState } from "./keep.js";
import { shortListed } from "./marking.js";
import { fits, verdictOf } from "./now.js";
import { bareBox, unionOf } from "./sheetlayout.js";
import { familyOf, legsOf, stateFrom } from "./state.js";
import { slid } from "./swipe.js";
import { capital } from "./text.js";
import { sayPlace } from "./travel.js";
import { createAsker } from "./views.js";
import { placeAtShare, shareOf } from "./way.js";
import { _, choicesInWords, doorName, say, sayFigure, verdictNode } from "./words.js";

// What settles it, in the order of the page of a covering on a door.
const SETTLING = ["visible_glass_open", "light_closed", "stack_height", "projection_most", "order_width", "order_height"];
const FIRST_SHARE = 0.4;

/**
 * What of the configurator answers for coverings that nobody works on.
 * @param {() => PageState} state
 */
export function readingApp(state) {
  const { catalog } = Astragal;
  return /** @type {App} */ ({ catalog, state, ask: createAsker(catalog, () => state().household) });
}

/**
 * A covering on its door, moved by a slider.
 * @param {App} app
 * @param {Astragal.Configuration} configuration
 * @param {{ caption: string, place: Astragal.Position, head?: number }} shown what stands below it, where it is at
 *   first, and up to which height it is seen, so that several have one scale
 */
export function movingFigure(app, configuration, { caption, place: first, head = app.ask.fit(configuration).size.y1 }) {
  const { units } = app.state();
  const door = createLayer("still");
  const covering = createLayer("moving");
  const marks = app.ask.doorFront(configuration, units);
  door.draw(marks);
  const box = bareBox({ marks });
  const picture = shape("svg", { class: "drawing-sheet", role: "img", viewBox: joined(unionOf([box, { ...box, y: -head, height: head }])) }, door.group, covering.group);
  const slider = element("input", {
    type: "range", min: "0", max: "100", step: "1", value: Math.round(shareOf(app.catalog, { ...configuration, place: first }) * 100),
    "aria-label": _("Position, from open to closed"), ...slid(follow, follow),
  });

  function follow() {
    show(placeAtShare(app.catalog, configuration, slider.valueAsNumber / 100));
  }

  /** @param {Astragal.Position} at */
  function show(at) {
    const one = { ...configuration, place: at };
    covering.draw(app.ask.coveringFront(one, one.place, units));
    const place = sayPlace(app.catalog, one);
    slider.setAttribute("aria-valuetext", place);
    picture.setAttribute("aria-label", _("{covering}: {place}", { covering: familyOf(app.catalog, one).name, place }));
  }

  show(first);
  const travel = legsOf(app.catalog, configuration).length === 0 ? null
    : element("label", { class: "travel" }, element("span", {}, _("Open")), slider, element("span", {}, _("Closed")));
  return element("figure", { class: "drawing mover" }, element("div", { class: "frames" }, picture), travel,
    element("figcaption", {}, caption));
}

/**
 * @param {App} app
 * @param {Astragal.Configuration} configuration
 */
function settling(app, configuration) {
  const { units } = app.state();
  const answer = wholeAnswer(app, configuration);
  const told = verdictNode(verdictOf(answer, "pass_through"));
  const why = fits(answer) ? answer.verdicts.pass_through.why : answer.refusal;
  const figures = SETTLING.map((id) => answer.figures[id]).filter(Boolean);
  return element("div", {}, element("div", { class: "judgment" }, told, element("div", {}, element("p", {}, say(why, units)))),
    element("p", { class: "note" }, choicesInWords(app.catalog, configuration).join(" · ")),
    figures.length === 0 ? null : element("dl", { class: "measures" }, figures.map((figure) =>
      element("div", {}, element("dt", {}, capital(figure.name)), element("dd", {}, sayFigure(figure, units))))),
    answer.cautions.length === 0 ? null : element("ul", { class: "cautions" }, answer.cautions.map((one) =>
      element("li", {}, say(one.text, units), element("cite", {}, one.source)))));
}

/** @param {HTMLElement} place */
export function showOnMine(place) {
  const holder = /** @type {HTMLElement} */ (place.querySelector("[data-place]"));
  const note = /** @type {HTMLElement} */ (place.querySelector("[role=status]"));
  let shown = "";
  /** @type {PageState} */
  let state;
  const app = readingApp(() => state);

  /** @param {Astragal.Configuration} configuration */
  function figureOnMine(configuration) {
    return movingFigure(app, configuration, {
      caption: _("From the room, as you measured it: {door}.", { door: doorName(app.catalog, configuration.door) }),
      place: placeAtShare(app.catalog, configuration, FIRST_SHARE),
    });
  }

  function show() {
    const link = keptLink();
    const listed = shortListed(app.catalog, String(place.dataset.family));
    const asked = JSON.stringify([link, listed]);
    if (link === "" || asked === shown) return;
    shown = asked;
    if (!isRead(link)) {
      setChildren(holder, []);
      setText(note, _("What this device keeps of your door can no longer be read. Measure it again, or open its link."));
      return;
    }
    setText(note, "");
    state = stateFrom(keptState(link));
    const configuration = { ...keptConfiguration(link), ...listed };
    setChildren(holder, [fits(app.ask.drawn(configuration)) ? figureOnMine(configuration) : null, settling(app, configuration)]);
  }

  Astragal.kept.follow(show);
  show();
}
