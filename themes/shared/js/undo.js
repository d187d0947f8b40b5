// What was just done can be taken back: one line at the foot of the screen, until something else is done.

import { element, setText } from "./dom.js";
import { _ } from "./words.js";

/**
 * @param {App} app
 * @returns {Undo}
 */
export function createUndo(app) {
  const words = element("p", { role: "status", tabindex: "-1" });
  const back = element("button", { type: "button", class: "press quiet", onclick: takeBack }, _("Undo"));
  const close = element("button", { type: "button", class: "text-button", onclick: () => show("") }, _("Close"));
  const node = element("div", { class: "undo" }, words, back, close);
  let undo = () => {};
  let step = "";
  let holds = () => true;

  /** @param {string} text */
  function show(text) {
    setText(words, text);
    node.classList.toggle("said", text !== "");
    close.hidden = text === "";
    back.hidden = true;
    step = text && app.state().step;
  }

  function takeBack() {
    show(_("Taken back."));
    close.focus();
    undo();
  }

  show("");
  return {
    node,
    refused: () => show(_("This browser did not keep it: it keeps nothing for this page, or has no room left.")),
    offer(text, task, stillHolds = () => true) {
      show(text);
      back.hidden = false;
      undo = task;
      holds = stillHolds;
    },
    // Taking it back would take back what was done since, too.
    update() {
      if (step && (back.hidden ? step !== app.state().step : !holds())) show("");
    },
  };
}
