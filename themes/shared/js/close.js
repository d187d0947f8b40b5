// The place that decides: the covering as it passes the handle, cut level and upright, at 1:4.

import { element, setChildren } from "./dom.js";
import { fits } from "./now.js";
import { drawingNode } from "./paint.js";
import { activeOf } from "./state.js";
import { _ } from "./words.js";

// Millimeters of the door to one of the page.
const CLOSE_SCALE = 4;

/**
 * @param {string} name
 * @param {Astragal.Drawing} drawing
 */
function closeFigure(name, drawing) {
  const svg = drawingNode(drawing);
  svg.style.width = `${drawing.width / CLOSE_SCALE}mm`;
  return element("figure", { class: "close-figure" },
    element("div", { class: "close-sheet", tabindex: "0", role: "region", "aria-label": name }, svg), element("figcaption", {}, name));
}

/**
 * @param {App} app
 * @returns {PagePart}
 */
export function createClose(app) {
  const figures = element("div", { class: "close-figures" });
  const node = element("section", { class: "panel", "aria-labelledby": "panel-close" },
    element("h2", { id: "panel-close" }, _("Where it passes the handle")),
    element("p", { class: "note" }, _("As it stands now, at a quarter of its true size where the screen keeps its own.")), figures);
  return {
    node,
    update(state) {
      const { kernel } = Astragal;
      const one = activeOf(state);
      node.hidden = !fits(app.ask.drawn(one));
      if (node.hidden) return;
      const draft = app.ask.draft(one, one.place, state.units);
      setChildren(figures, [
        closeFigure(_("Cut level, from above"), kernel.detail_handle_of(draft)),
        closeFigure(_("Cut upright, from the side"), kernel.detail_upright_of(draft)),
      ]);
    },
  };
}
