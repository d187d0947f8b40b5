// The shelf: every covering on this door, at one scale and one position.

import { around, element, inSlices, setAttribute, setChildren, setText, shape } from "./dom.js";
import { createLayer, joined } from "./draw.js";
import { calledDoor } from "./keep.js";
import { createGeneralWords, createWishes } from "./late.js";
import { markButton } from "./marking.js";
import { fits, verdictOf } from "./now.js";
import { paint } from "./paint.js";
import { bareBox, unionOf } from "./sheetlayout.js";
import { activeOf, legsOf } from "./state.js";
import { slid } from "./swipe.js";
import { percent } from "./travel.js";
import { placeAtShare, sayShare, shareOf } from "./way.js";
import { _, say, sayFigure, verdictNode } from "./words.js";

/**
 * @param {Astragal.Family} family
 * @param {() => void} open
 * @param {ReturnType<typeof markButton>} mark
 */
function cardFor(family, open, mark) {
  const layer = createLayer("moving");
  const picture = shape("svg", { class: "shelf-picture drawing-sheet", "aria-hidden": "true", focusable: "false" },
    shape("use", { href: "#shelf-door" }), layer.group);
  const verdict = element("span", { class: "shelf-verdict" });
  const glass = element("b", { class: "number" });
  const depth = element("b", { class: "number" });
  const clear = element("span", {}, around(_("{share} of the glass clear"), { share: glass }));
  const deep = element("span", {}, around(_("{depth} into the room"), { depth }));
  const refusal = element("span", { class: "shelf-refusal" });
  const facts = element("span", { class: "shelf-facts" }, clear, deep, refusal);
  const why = element("span", { class: "shelf-why" });
  const node = element("li", { "data-family": family.id },
    element("button", { type: "button", class: "shelf-card", onclick: open },
      element("span", { class: "shelf-stand" }, picture),
      element("span", { class: "shelf-name" }, family.name), verdict, facts, why), mark.node);
  const words = { glass, depth, clear, deep, refusal };
  // What is drawn and what is told are each known by what they were made from.
  return { family, mark, layer, picture, verdict, words, why, node, seen: false, drawn: "", told: "", judged: "" };
}

/** @typedef {ReturnType<typeof cardFor>} ShelfCard */

// What clears the handle stands before what is guided past it, that before what is blocked, and last what does not fit.
const STANDING = new Map([["clears", 0], ["blocked", 2]]);
const GUIDED = 1;
const UNFIT = 3;

/**
 * Where a covering stands while nobody has said what matters: by the handle, and then by the glass that it leaves clear.
 * @param {Astragal.Answer} answer
 */
function standing(answer) {
  const { state } = verdictOf(answer, "pass_through");
  const place = fits(answer) ? STANDING.get(state) ?? GUIDED : UNFIT;
  return place * 10 - (answer.figures.visible_glass_open?.value ?? 0);
}

/**
 * @param {ShelfCard} card
 * @param {Astragal.Answer} answer
 * @param {Astragal.Shares | null} shares
 * @param {string} units
 */
function tellFacts({ words }, answer, shares, units) {
  const deepest = answer.figures.projection_most;
  words.clear.hidden = !shares;
  words.deep.hidden = !shares || !deepest;
  words.refusal.hidden = Boolean(shares);
  if (shares) setText(words.glass, percent(shares.visible));
  else setText(words.refusal, say(answer.refusal, units));
  if (deepest) setText(words.depth, sayFigure(deepest, units));
}

/**
 * @param {ShelfCard} card
 * @param {Told} told
 */
function tellVerdict(card, told) {
  if (card.judged === told.words) return;
  card.judged = told.words;
  setChildren(card.verdict, [verdictNode(told, _("Handle: {verdict}", { verdict: told.words }))]);
}

/**
 * @param {App} app
 * @param {(family: Astragal.Family) => Astragal.Configuration} shelved
 */
function createShelfDrawings(app, shelved) {
  const doorLayer = createLayer("still");
  // What is used elsewhere is styled by itself, not by what it stands in.
  const pattern = shape("svg", { class: "patterns", "aria-hidden": "true", width: 0, height: 0 },
    shape("defs", {}, shape("g", { id: "shelf-door", class: "drawing-sheet" }, doorLayer.group)));
  let drawn = "";
  /** @type {Frame} */
  let box;

  return {
    pattern,
    /** @param {PageState} state */
    drawDoor(state) {
      const one = activeOf(state);
      const key = `${app.ask.doorKey(one.door)} ${state.units}`;
      if (key === drawn) return;
      drawn = key;
      const marks = app.ask.doorFront(one, state.units);
      doorLayer.draw(marks);
      box = bareBox({ marks });
    },
    /**
     * All are seen through one window.
     * @param {ShelfCard[]} cards
     */
    frame(cards) {
      // What hangs over the opening rises above the door.
      const heads = cards.map(({ family }) => app.ask.fit(shelved(family)).size.y1);
      const window = joined(unionOf([box, ...heads.map((y1) => ({ ...box, y: -y1, height: y1 }))]));
      for (const { picture } of cards) setAttribute(picture, "viewBox", window);
    },
    /**
     * @param {ShelfCard} card
     * @param {string} key what it is drawn from
     */
    draw(card, key) {
      if (card.drawn === key) return;
      const one = shelved(card.family);
      card.drawn = key;
      paint(card.picture, Astragal.kernel.look_of(card.family, one.choices));
      card.layer.draw(app.ask.coveringFront(one, one.place, app.state().units));
    },
  };
}

/**
 * @param {App} app
 * @returns {LatePart}
 */
export function createShelf(app) {
  const offered = Object.values(app.catalog.families).filter((family) => !family.retired);
  const cards = offered.map((family) => cardFor(family, () => app.openFamily(shelved(family)), markButton(app, () => shelved(family))));
  const wishes = createWishes(app);
  const guidance = createGeneralWords(app);
  const slider = element("input", {
    type: "range", min: "0", max: "100", step: "1", id: "shelf-share",
    ...slid(() => moveAll(slider.valueAsNumber / 100), () => followShare(app.state())), onchange: () => app.settle(),
  });
  const output = element("output", { for: slider.id });
  const door = element("strong");
  const list = element("ol", { class: "shelf-cards" }, cards.map((card) => card.node));
  let share = shareOf(app.catalog, activeOf(app.state()));
  // As a search spells them, so that what hangs is known again.
  const first = Object.fromEntries(offered.map((family) => [family.id, Astragal.kernel.full_choices(family, {})]));
  /** @type {Record<string, Ranked>} */
  let ranked = {};
  const drawings = createShelfDrawings(app, shelved);
  const node = element("section", { class: "shelf", "aria-labelledby": "shelf-title" },
    element("div", { class: "section-head" }, element("h2", { id: "shelf-title", tabindex: "-1" }, _("Every covering on your door")),
      element("p", { class: "shelf-door" }, door, element("button", { type: "button", class: "text-button", onclick: () => app.goToStep("door") }, _("Measure your door")))),
    element("div", { class: "slider shelf-slider" },
      element("div", { class: "slider-head" }, element("label", { for: slider.id }, _("All at the same position")), output),
      element("div", { class: "track" }, element("div", { class: "run" }, slider))),
    wishes.node, drawings.pattern, list, guidance.node);
  let arranging = 0;
  // What is in view is shown at once, the rest when nothing else is to be done. One that is put away is not out of view.
  const watch = new IntersectionObserver((entries) => {
    for (const { target, isIntersecting, boundingClientRect } of entries) {
      const card = cards.find((one) => one.node === target);
      if (!card || boundingClientRect.height === 0) continue;
      card.seen = isIntersecting;
      if (card.seen) show(card);
    }
  });

  /**
   * A family as it stands on the shelf: with the picks that answer best what is wanted, those worked on, or its first.
   * @param {Astragal.Family} family
   * @returns {Astragal.Configuration}
   */
  function shelved(family) {
    const active = activeOf(app.state());
    const choices = ranked[family.id]?.match.choices;
    if (active.family === family.id && !choices) return active;
    const one = { ...active, family: family.id, choices: choices ?? first[family.id], wishes: {} };
    return { ...one, place: placeAtShare(app.catalog, one, share) };
  }

  cards.forEach((card) => watch.observe(card.node));

  /** @param {number} to */
  function moveAll(to) {
    share = to;
    app.moveTo(placeAtShare(app.catalog, activeOf(app.state()), to));
  }

  /** @param {PageState} state */
  function followShare(state) {
    // What does not move has no position of its own that the others could take.
    const active = activeOf(state);
    if (legsOf(app.catalog, active).length > 0 && Math.abs(shareOf(app.catalog, active) - share) > 0.005) share = shareOf(app.catalog, active);
    setAttribute(slider, "aria-valuetext", sayShare(share));
    if (slider.valueAsNumber !== Math.round(share * 100)) slider.value = String(Math.round(share * 100));
    setText(output, sayShare(share));
  }

  /** @param {ShelfCard} card */
  function tell(card) {
    setText(card.why, ranked[card.family.id]?.why() ?? "");
    const { units } = app.state();
    const one = shelved(card.family);
    const key = `${app.ask.key(one)} ${JSON.stringify(one.place)} ${units}`;
    if (card.told === key) return key;
    card.told = key;
    const answer = app.ask.drawn(one);
    tellVerdict(card, verdictOf(answer, "pass_through"));
    tellFacts(card, answer, app.ask.sharesAt(one, one.place), units);
    return key;
  }

  /** @param {ShelfCard} card */
  function show(card) {
    drawings.draw(card, tell(card));
  }

  const inView = () => cards.filter((card) => card.seen);

  /** @param {ShelfCard} card */
  function standingOf({ family }) {
    return ranked[family.id] ? -ranked[family.id].match.weight : standing(app.ask.drawn(shelved(family)));
  }

  function order() {
    const wanted = cards.toSorted((a, b) => standingOf(a) - standingOf(b));
    // Moving a node takes the focus from it, so only what stands elsewhere is moved.
    wanted.forEach((card, i) => {
      if (list.children[i] !== card.node) list.insertBefore(card.node, list.children[i] ?? null);
    });
  }

  /**
   * First what is in view, then what is told of the rest; pictures out of view wait until nothing else is to be done.
   * Each is worked out by itself, but written together with the others, so that a browser lays them out once.
   * @returns {Promise<void>} comes when all stand in their order, or are arranged anew
   */
  function arrange() {
    const turn = (arranging += 1);
    const asked = (/** @type {ShelfCard} */ { family }) => () => app.ask.drawn(shelved(family));
    return new Promise((done) => {
      const wanted = () => turn === arranging || done();
      const step = () => {
        tasks.shift()?.();
        return tasks.length > 0;
      };
      const tasks = [
        ...inView().map(asked),
        () => {
          drawings.drawDoor(app.state());
          inView().forEach(show);
        },
        ...cards.map(asked),
        () => {
          cards.forEach(tell);
          drawings.frame(cards);
          order();
          done();
          app.whenQuiet("shelf", () => {
            tasks.push(...cards.map((card) => () => show(card)));
            inSlices(step, wanted);
          });
        },
      ];
      inSlices(step, wanted);
    });
  }

  app.rank = (given) => {
    ranked = Object.fromEntries(given.map((one) => [one.match.family, one]));
    if (given.length > 0) order();
    arrange();
  };

  /**
   * @param {PageState} state
   * @param {boolean} settled
   */
  function update(state, settled) {
    followShare(state);
    if (!settled) {
      inView().forEach(show);
      return;
    }
    setText(door, calledDoor(app.catalog, activeOf(state).door));
    const { marks } = Astragal.kept.read();
    cards.forEach((card) => card.mark.show(marks));
    wishes.update(state, true);
    guidance.update(state, true);
    return arrange();
  }

  return {
    node,
    // What is wanted stands above the coverings, which it would move if it came after them.
    async here() {
      await wishes.here();
      await update(app.state(), true);
    },
    update,
  };
}
