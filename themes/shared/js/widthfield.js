// The ordered width, where it is set by hand: as wide as the leaf allows, or less.

import { element, setAttribute, setText } from "./dom.js";
import { activeOf, withWish } from "./state.js";
import { _, say, tongue } from "./words.js";

const WIDTH = "width_wanted";

/**
 * @param {App} app
 * @returns {PagePart}
 */
export function createWidthField(app) {
  const { kernel } = Astragal;
  const input = element("input", {
    id: "field-ordered-width", type: "text", autocomplete: "off", spellcheck: "false", "aria-describedby": "ordered-width-note",
    oninput: () => take(input.value), onchange: () => app.settle(),
  });
  const note = element("p", { class: "field-note", id: "ordered-width-note" });
  const back = element("button", { type: "button", class: "text-button back", onclick: () => app.change(withWish(app.state(), WIDTH, 0), "push") }, _("As the leaf allows"));
  const node = element("div", { class: "length ordered-width" }, element("label", { for: input.id }, _("Ordered width, where you set it")),
    element("span", { class: "entry" }, input), note, back);

  const written = (/** @type {number} */ mm) => kernel.write_length(mm, tongue(), app.state().units);
  // What the leaf allows, and the least that such a covering is made in.
  const most = () => app.ask.drawn({ ...activeOf(app.state()), wishes: {} }).figures.order_width?.value ?? 0;
  const least = () => kernel.resolve(app.family(), activeOf(app.state()).choices).width_least;

  /** @param {string} text */
  function take(text) {
    const { sound, mm, fault } = kernel.written_length(text, app.state().units);
    const within = sound && mm >= least() && mm <= most();
    setAttribute(input, "aria-invalid", !within);
    if (within) app.change(withWish(app.state(), WIDTH, mm), "none");
    else setText(note, (sound ? "" : say(fault, app.state().units)) || bounds());
  }

  function bounds() {
    return _("This leaf allows {most}; the least is {least}.", {
      most: kernel.say_value(most(), "mm", tongue(), app.state().units),
      least: kernel.say_value(least(), "mm", tongue(), app.state().units),
    });
  }

  return {
    node,
    update(state) {
      const one = activeOf(state);
      const wished = one.wishes[WIDTH] ?? 0;
      const answer = app.ask.drawn(one);
      node.hidden = kernel.is_said(answer.refusal) || answer.size.mount !== "on-leaf";
      if (node.hidden) return;
      if (document.activeElement !== input) {
        input.value = written(wished || (answer.figures.order_width?.value ?? 0));
        input.removeAttribute("aria-invalid");
      }
      setText(note, bounds());
      back.hidden = wished === 0;
    },
  };
}
