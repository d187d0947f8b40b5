// The shelf: every covering on this door, at one scale and one position.

import { around, element, setAttribute, setChildren, setText, shape } from "./dom.js";
import { createLayer, joined } from "./draw.js";
import { createWishes } from "./late.js";
import { fits, verdictOf } from "./now.js";
import { paint } from "./paint.js";
import { bareBox, unionOf } from "./sheetlayout.js";
import { activeOf, legsOf } from "./state.js";
import { slid } from "./swipe.js";
import { percent } from "./travel.js";
import { placeAtShare, sayShare, shareOf } from "./way.js";
import { _, doorName, say, sayFigure, verdictNode } from "./words.js";

/**
 * @param {Astragal.Family} family
 * @param {() => void} open
 */
function cardFor(family, open) {
  const layer = createLayer("moving");
  const picture = shape("svg", { class: "shelf-picture drawing-sheet", "aria-hidden": "true", focusable: "false" },
    shape("use", { href: "#shelf-door" }), layer.group);
  const verdict = element("span", { class: "shelf-verdict" });
  const facts = element("span", { class: "shelf-facts" });
  const why = element("span", { class: "shelf-why" });
  const node = element("li", { "data-family": family.id },
    element("button", { type: "button", class: "shelf-card", onclick: open },
      element("span", { class: "shelf-stand" }, picture),
      element("span", { class: "shelf-name" }, family.name), verdict, facts, why));
  return { family, layer, picture, verdict, facts, why, node, seen: false };
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
 * @param {Astragal.Answer} answer
 * @param {Astragal.Shares | null} shares
 * @param {string} units
 */
function factsOf(answer, shares, units) {
  if (!shares) return [element("span", { class: "shelf-why" }, say(answer.refusal, units))];
  const deep = answer.figures.projection_most;
  return [
    element("span", {}, around(_("{share} of the glass clear"), { share: element("b", { class: "number" }, percent(shares.visible)) })),
    deep ? element("span", {}, around(_("{depth} into the room"), { depth: element("b", { class: "number" }, sayFigure(deep, units)) })) : null,
  ];
}

/**
 * @param {App} app
 * @param {Astragal.Family[]} families
 * @param {(family: Astragal.Family) => Astragal.Configuration} shelved
 */
function createShelfDrawings(app, families, shelved) {
  const doorLayer = createLayer("still");
  // What is used elsewhere is styled by itself, not by what it stands in.
  const pattern = shape("svg", { class: "patterns", "aria-hidden": "true", width: 0, height: 0 },
    shape("defs", {}, shape("g", { id: "shelf-door", class: "drawing-sheet" }, doorLayer.group)));
  let window = "";

  /** @param {PageState} state */
  function drawDoor(state) {
    const marks = app.ask.doorFront(activeOf(state), state.units);
    doorLayer.draw(marks);
    const door = bareBox({ marks });
    // What hangs over the opening rises above the door.
    const heads = families.map((family) => app.ask.fit(shelved(family)).size.y1);
    window = joined(unionOf([door, ...heads.map((y1) => ({ ...door, y: -y1, height: y1 }))]));
  }

  return {
    pattern,
    drawDoor,
    /**
     * @param {ShelfCard} card
     * @param {PageState} state
     */
    draw(card, state) {
      const one = shelved(card.family);
      setAttribute(card.picture, "viewBox", window);
      paint(card.picture, Astragal.kernel.look_of(card.family, one.choices));
      card.layer.draw(app.ask.coveringFront(one, one.place, state.units));
    },
  };
}

/**
 * @param {App} app
 * @returns {LatePart}
 */
export function createShelf(app) {
  const offered = Object.values(app.catalog.families).filter((family) => !family.retired);
  const cards = offered.map((family) => cardFor(family, () => app.openFamily(shelved(family))));
  const wishes = createWishes(app);
  const slider = element("input", {
    type: "range", min: "0", max: "100", step: "1", id: "shelf-share",
    ...slid(() => moveAll(slider.valueAsNumber / 100), () => followShare(app.state())), onchange: () => app.settle(),
  });
  const output = element("output", { for: slider.id });
  const door = element("strong");
  const list = element("ol", { class: "shelf-cards" }, cards.map((card) => card.node));
  let share = shareOf(app.catalog, activeOf(app.state()));
  /** @type {Record<string, Ranked>} */
  let ranked = {};
  const drawings = createShelfDrawings(app, offered, shelved);
  const node = element("section", { class: "shelf", "aria-labelledby": "shelf-title" },
    element("div", { class: "section-head" }, element("h2", { id: "shelf-title", tabindex: "-1" }, _("Every covering on your door")),
      element("p", { class: "shelf-door" }, door, element("button", { type: "button", class: "text-button", onclick: () => app.goToStep("door") }, _("Measure your door")))),
    element("div", { class: "slider shelf-slider" },
      element("div", { class: "slider-head" }, element("label", { for: slider.id }, _("All at the same position")), output),
      element("div", { class: "track" }, element("div", { class: "run" }, slider))),
    wishes.node, drawings.pattern, list);
  // What is in view is drawn at once, the rest when nothing else is to be done.
  const watch = new IntersectionObserver((entries) => {
    for (const entry of entries) {
      const card = cards.find((one) => one.node === entry.target);
      if (card) card.seen = entry.isIntersecting;
      if (card?.seen) drawings.draw(card, app.state());
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
    const one = { ...active, family: family.id, choices: choices ?? {}, wishes: {} };
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

  /**
   * @param {ShelfCard} card
   * @param {PageState} state
   */
  function tell(card, state) {
    const one = shelved(card.family);
    const answer = app.ask.drawn(one);
    const told = verdictOf(answer, "pass_through");
    setChildren(card.verdict, [verdictNode(told, _("Handle: {verdict}", { verdict: told.words }))]);
    setChildren(card.facts, factsOf(answer, app.ask.sharesAt(one, one.place), state.units));
    setText(card.why, ranked[card.family.id]?.why ?? "");
  }

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
   * @param {PageState} state
   */
  function show(state) {
    for (const card of cards) {
      if (card.seen) drawings.draw(card, state);
      else app.whenQuiet(`shelf ${card.family.id}`, () => drawings.draw(card, app.state()));
      tell(card, state);
    }
  }

  app.rank = (given) => {
    ranked = Object.fromEntries(given.map((one) => [one.match.family, one]));
    drawings.drawDoor(app.state());
    order();
    show(app.state());
  };

  /**
   * @param {PageState} state
   * @param {boolean} settled
   */
  function update(state, settled) {
    followShare(state);
    if (settled) {
      setText(door, doorName(app.catalog, activeOf(state).door));
      drawings.drawDoor(state);
      order();
      wishes.update(state, true);
    }
    show(state);
  }

  return {
    node,
    // What is wanted stands above the coverings, which it would move if it came after them.
    async here() {
      await wishes.here();
      update(app.state(), true);
    },
    update,
  };
}
