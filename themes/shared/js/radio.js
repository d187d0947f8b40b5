// One of a few, as a set of buttons.

import { element } from "./dom.js";

/**
 * @param {string} name
 * @param {string} legend
 * @param {string[][]} options  each a value and its words
 * @param {(value: string) => void} pick
 * @returns {Switch}
 */
export function radioGroup(name, legend, options, pick) {
  const inputs = options.map(([value, words]) => {
    const input = element("input", { type: "radio", name, value, onchange: () => pick(value) });
    return { value, input, label: element("label", {}, input, element("span", {}, words)) };
  });
  return {
    node: element("fieldset", { class: "either" },
      element("legend", {}, legend),
      element("div", { class: "either-options" }, inputs.map((one) => one.label))),
    show(value) {
      inputs.forEach((one) => (one.input.checked = one.value === value));
    },
  };
}
