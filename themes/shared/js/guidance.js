// What is to be minded, and apart from it the general guidance: one line that opens.

import { element, setChildren } from "./dom.js";
import { _, say } from "./words.js";

/**
 * @param {Astragal.Caution} caution
 * @param {string} units
 */
export function cautionItem(caution, units) {
  return element("li", {}, say(caution.text, units), element("cite", {}, caution.source));
}

/** What goes for nearly every covering: one line that opens. */
export function createGuidance() {
  const list = element("ul", { class: "cautions" });
  const node = element("details", { class: "guidance" }, element("summary", {}, _("General guidance, for nearly every covering")), list);
  return {
    node,
    /**
     * @param {Astragal.Caution[]} cautions
     * @param {string} units
     */
    show(cautions, units) {
      node.hidden = cautions.length === 0;
      setChildren(list, cautions.map((one) => cautionItem(one, units)));
    },
  };
}

/**
 * All the general guidance there is.
 * @returns {PagePart}
 */
export function createGeneral() {
  const guidance = createGuidance();
  return { node: guidance.node, update: ({ units }) => guidance.show(Astragal.kernel.general_guidance(), units) };
}
