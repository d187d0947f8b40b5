// What is set by hand: the door and its covering.

import { createCoveringForm } from "./coveringform.js";
import { element } from "./dom.js";
import { createDoorForm } from "./doorform.js";
import { createMeasuring } from "./measuring.js";

/**
 * @param {App} app
 * @returns {PagePart}
 */
export function createControls(app) {
  Object.assign(app, createMeasuring(app));
  const door = createDoorForm(app);
  const covering = createCoveringForm(app);
  door.chooser.open = app.fresh;
  return {
    node: element("div", {}, door.node, covering.node),
    update(state, settled) {
      for (const [step, part] of Object.entries({ door, details: covering })) {
        part.node.hidden = state.step !== step;
        if (state.step === step) part.update(state, settled);
      }
    },
  };
}
