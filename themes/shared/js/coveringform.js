// Its covering: one family, and its choices with the reason beside each that the door rules out.

import { element, setChildren, setText, shape } from "./dom.js";
import { createLayer } from "./draw.js";
import { markButton, shortListed } from "./marking.js";
import { verdictOf } from "./now.js";
import { paint } from "./paint.js";
import { activeOf, MOST_CONFIGURATIONS } from "./state.js";
import { capital } from "./text.js";
import { remembered } from "./views.js";
import { createWidthField } from "./widthfield.js";
import { _, say, verdictNode } from "./words.js";

const refusals = remembered(12, (/** @type {App} */ app, /** @type {Astragal.Configuration} */ one) =>
  Astragal.kernel.ruled_out(one.door, app.family(), one.choices));

/** @param {App} app */
function familyCards(app) {
  const cards = Object.values(app.catalog.families).map((family) => {
    const input = element("input", { type: "radio", name: "family", value: family.id, onchange: () => app.pickFamily(family.id) });
    const verdict = element("span", { class: "card-verdict" });
    const label = element("label", { class: "card" }, input, element("span", {}, family.name), verdict);
    return { family, input, verdict, label, shown: "" };
  });
  return {
    node: element("div", { class: "cards family-cards" }, cards.map((card) => card.label)),
    update(/** @type {Astragal.Configuration} */ configuration) {
      for (const card of cards) {
        card.input.checked = card.family.id === configuration.family;
        card.label.hidden = card.family.retired && !card.input.checked;
      }
    },
    // A verdict for each family on this door, worked out in the quiet after the drawing has been shown.
    judge(/** @type {Astragal.Configuration} */ configuration) {
      for (const card of cards) {
        if (card.family.retired) continue;
        app.whenQuiet(`family ${card.family.id}`, () => {
          const own = card.family.id === configuration.family;
          const answer = app.ask.drawn(own ? configuration : { ...configuration, family: card.family.id, choices: {}, wishes: {} });
          const told = verdictOf(answer, "pass_through");
          if (card.shown !== told.state) setChildren(card.verdict, [verdictNode(told, _("Handle: {verdict}", { verdict: told.words }))]);
          card.shown = told.state;
        });
      }
    },
  };
}

/**
 * @param {Astragal.Family} family
 * @param {Record<string, string>} choices
 */
function swatchNode(family, choices) {
  const { side, look, marks } = Astragal.kernel.swatch_of(family, choices);
  const layer = createLayer("drawn");
  layer.draw(marks);
  const svg = shape("svg", { class: "chip drawing-sheet", viewBox: `0 0 ${side} ${side}`, "aria-hidden": "true", focusable: "false" }, layer.group);
  paint(svg, look);
  return svg;
}

/**
 * @param {App} app
 * @param {Astragal.Choice} choice
 * @param {Astragal.Option} option
 */
function optionRow(app, choice, option) {
  const id = `option-${choice.id}-${option.id}`;
  const why = element("span", { class: "why", id: `${id}-why` });
  const input = element("input", {
    type: "radio", name: `choice-${choice.id}`, value: option.id, id, "aria-describedby": why.id,
    onchange: () => app.pickOption(choice.id, option.id),
  });
  const swatch = option.look.color ? swatchNode(app.family(), { [choice.id]: option.id }) : null;
  const label = element("label", { for: id }, input, swatch, element("span", { class: "option-name" }, capital(option.name)), why);
  return { choice, option, input, label, why };
}

/**
 * Whether a covering stands on the short list with other picks than it has now.
 * @param {App} app
 * @param {Astragal.Configuration} one
 */
function isListedOtherwise(app, { family, choices, wishes }) {
  const mark = Astragal.kept.read().marks.find((each) => each.family === family);
  if (!mark) return false;
  const listed = shortListed(app.catalog, family);
  const picks = (/** @type {Record<string, string>} */ picked) => Astragal.kernel.full_choices(app.catalog.families[family], picked);
  return JSON.stringify([picks(choices), wishes]) !== JSON.stringify([picks(listed.choices), listed.wishes]);
}

/**
 * @param {App} app
 * @returns {PagePart}
 */
export function createCoveringForm(app) {
  const cards = familyCards(app);
  const chosen = element("strong");
  const choices = element("div", { class: "choice-sets" });
  const width = createWidthField(app);
  const beside = element("button", { type: "button", class: "press quiet", onclick: () => app.pickAnother() }, _("Compare with another"));
  const mark = markButton(app, () => activeOf(app.state()));
  const renew = element("button", { type: "button", class: "text-button", onclick: renewMark }, _("Put it on the short list with these choices"));
  const gone = element("p", { class: "gone", hidden: true });
  const node = element("section", { class: "panel", "aria-labelledby": "panel-covering" },
    element("h2", { id: "panel-covering" }, _("Its covering")),
    element("details", { class: "chooser" },
      element("summary", {}, element("span", { class: "label" }, _("Covering")), chosen),
      element("fieldset", { class: "plain-set" }, element("legend", { class: "unseen" }, _("Covering")), cards.node)),
    gone, choices, width.node,
    element("p", { class: "actions" }, mark.node, renew, beside));
  /** @type {ReturnType<typeof optionRow>[]} */
  let rows = [];
  let built = "";

  function renewMark() {
    const one = activeOf(app.state());
    const done = Astragal.kept.change((now) => {
      now.marks = now.marks.map((each) => (each.family === one.family ? { ...each, link: app.linkOf(one) } : each));
    });
    if (!done) app.undo.refused();
    mark.node.focus();
  }

  /** @param {Astragal.Family} family */
  function build(family) {
    if (built === family.id) return;
    built = family.id;
    rows = [];
    setChildren(choices, family.choices.map((choice) => {
      const own = choice.options.map((option) => optionRow(app, choice, option));
      rows.push(...own);
      return element("fieldset", { class: "options" }, element("legend", {}, capital(choice.name)), own.map((row) => row.label));
    }));
  }

  /**
   * @param {ReturnType<typeof optionRow>} row
   * @param {Astragal.Configuration} configuration
   * @param {ReturnType<typeof refusals>} ruledOut
   * @param {string} units
   */
  function showRow(row, configuration, ruledOut, units) {
    const picked = Astragal.kernel.full_choices(app.family(), configuration.choices)[row.choice.id];
    const reason = ruledOut[row.choice.id]?.[row.option.id];
    row.input.checked = picked === row.option.id;
    row.input.disabled = Boolean(reason);
    row.label.classList.toggle("no", Boolean(reason));
    row.label.hidden = row.option.retired && !row.input.checked;
    setText(row.why, reason ? say(reason, units) : (row.option.retired ? _("No longer offered.") : ""));
  }

  return {
    node,
    update(state) {
      const configuration = activeOf(state);
      const family = app.family();
      build(family);
      mark.show(Astragal.kept.read().marks);
      renew.hidden = !isListedOtherwise(app, configuration);
      beside.hidden = state.configurations.length >= MOST_CONFIGURATIONS;
      cards.update(configuration);
      setText(chosen, family.name);
      gone.hidden = !family.retired;
      setText(gone, family.retired ? _("{covering} is no longer offered. It is shown as it was.", { covering: family.name }) : "");
      const ruledOut = refusals(app.ask.key(configuration), app, configuration);
      rows.forEach((row) => showRow(row, configuration, ruledOut, state.units));
      width.update(state, true);
      cards.judge(configuration);
    },
  };
}
