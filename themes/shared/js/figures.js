// What you get: verdicts, figures and cautions in words, each figure's working one tap away.

function verdictItem(verdict, units) {
  return element("li", {},
    element("p", { class: "verdict-line" }, element("span", {}, capital(verdict.name)), verdictNode(verdict.state)),
    element("p", { class: "why" }, say(verdict.why, units)));
}

function figureItem(figure, units, opened) {
  const rule = capital(Astragal.kernel.say_rule(figure, ENGLISH, units));
  const sum = Astragal.kernel.say_sum(figure, ENGLISH, units);
  return element("details", { class: "figure", "data-figure": figure.id, open: opened },
    element("summary", {}, element("span", { class: "figure-name" }, capital(figure.name)), element("b", { class: "number" }, sayFigure(figure, units))),
    element("div", { class: "working" }, element("p", {}, rule), element("p", { class: "sum" }, sum)));
}

function cautionItem(caution, units) {
  return element("li", {}, say(caution.text, units), element("cite", {}, caution.source));
}

function createFigures(app) {
  const verdicts = element("ul", { class: "verdicts" });
  const refusal = element("p", { class: "refusal", hidden: true });
  const keyFigures = element("div", { class: "figure-list" });
  const restWords = element("summary");
  const restFigures = element("div", { class: "figure-list" });
  const rest = element("details", { class: "more" }, restWords, restFigures);
  const cautions = element("ul", { class: "cautions" });
  const cautionBlock = element("div", {}, element("h3", {}, "Take care"), cautions);
  const sound = element("div", {}, verdicts, element("h3", {}, "Figures"),
    element("p", { class: "note" }, "Open a figure to see how it was worked out."), keyFigures, rest);
  const node = element("section", { class: "panel", "aria-labelledby": "panel-figures" },
    element("h2", { id: "panel-figures" }, "What you get"), refusal, sound, cautionBlock);

  function opened() {
    return new Set([...sound.querySelectorAll(".figure[open]")].map((one) => one.dataset.figure));
  }

  return {
    node,
    update(state) {
      const answer = app.ask.answer(activeOf(state));
      refusal.hidden = fits(answer);
      setText(refusal, say(answer.refusal, state.units));
      sound.hidden = !fits(answer);
      const open = opened();
      setChildren(verdicts, Object.values(answer.verdicts).map((one) => verdictItem(one, state.units)));
      const items = (list) => list.map((one) => figureItem(one, state.units, open.has(one.id)));
      const figures = Object.values(answer.figures);
      const others = figures.filter((one) => !isKey(one.id));
      setChildren(keyFigures, items(figures.filter((one) => isKey(one.id))));
      setChildren(restFigures, items(others));
      setText(restWords, `${others.length} more figures`);
      cautionBlock.hidden = answer.cautions.length === 0;
      setChildren(cautions, answer.cautions.map((one) => cautionItem(one, state.units)));
    },
  };
}

const fits = (answer) => !Astragal.kernel.is_said(answer.refusal);

function verdictState(answer) {
  return fits(answer) ? answer.verdicts.pass_through.state : "does not fit";
}

// The line under the drawing: what of the glass is clear just now, and the handle.
function createNow(app) {
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
      const answer = app.ask.answer(configuration);
      setChildren(verdict, [fits(answer) ? "At the handle: " : "", verdictNode(verdictState(answer))]);
    },
  };
}

// What a screen reader hears once the hand rests.
function spokenNow(app, state) {
  const configuration = activeOf(state);
  const answer = app.ask.answer(configuration);
  if (!fits(answer)) return `${app.family().name}: ${say(answer.refusal, state.units)}`;
  const now = app.ask.sharesAt(configuration, configuration.place);
  const verdict = answer.verdicts.pass_through;
  return [
    sayPlace(app.catalog, configuration),
    `${percent(now.visible)} of the glass clear`,
    `${capital(verdict.name)}: ${verdict.state}`,
  ].join(". ");
}
