// The plain fields of a visit's form: each shows what the visit has and writes what is typed, at once.

import { element, setText } from "./dom.js";

let fieldsMade = 0;

/** An id that no other field of the page has. */
export function fieldId() {
  fieldsMade += 1;
  return `visit-field-${fieldsMade}`;
}

/**
 * A field that is written in is left alone.
 * @param {HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement} input
 * @param {string} text
 */
export function showIn(input, text) {
  if (input.value !== text && document.activeElement !== input) input.value = text;
}

/**
 * @param {string} label
 * @param {Attributes} attributes of the field; `rows` make it one of several lines
 * @param {(visit: Astragal.Visit) => string} read
 * @param {(text: string) => void} write
 * @returns {VisitPart}
 */
export function wordsField(label, attributes, read, write) {
  const id = fieldId();
  const own = { id, autocomplete: "off", ...attributes, oninput: () => write(input.value) };
  /** @type {HTMLInputElement | HTMLTextAreaElement} */
  const input = attributes.rows ? element("textarea", own) : element("input", { type: "text", ...own });
  return {
    node: element("div", { class: "visit-words" }, element("label", { for: id }, label), input),
    update: (visit) => showIn(input, read(visit)),
  };
}

/**
 * @param {string} label
 * @param {string[][]} options each a value and its words
 * @param {(visit: Astragal.Visit) => string} read
 * @param {(value: string) => void} write
 * @returns {VisitPart}
 */
export function pickField(label, options, read, write) {
  const id = fieldId();
  const select = element("select", { id, onchange: () => write(select.value) },
    options.map(([value, words]) => element("option", { value }, words)));
  return {
    node: element("div", { class: "visit-words" }, element("label", { for: id }, label), select),
    update(visit) {
      if (select.value !== read(visit)) select.value = read(visit);
    },
  };
}

/**
 * A part of the form that opens; what is in it is made when it is first opened.
 * @param {Attributes} attributes
 * @param {() => VisitPart[]} make
 * @param {(visit: Astragal.Visit) => { name: string, note: string }} told what its line says
 * @param {() => Astragal.Visit | null} now
 */
export function foldedPart(attributes, make, told, now) {
  const name = element("strong");
  const note = element("span", { class: "why" });
  const body = element("div", { class: "folded" });
  /** @type {VisitPart[]} */
  let parts = [];

  function fill() {
    if (parts.length > 0 || !node.open) return;
    parts = make();
    body.append(...parts.map((part) => part.node));
    const visit = now();
    if (visit) parts.forEach((part) => part.update(visit));
  }

  const node = element("details", { ...attributes, ontoggle: fill }, element("summary", {}, name, note), body);
  return {
    node,
    open() {
      node.open = true;
      fill();
    },
    update(/** @type {Astragal.Visit} */ visit) {
      const words = told(visit);
      setText(name, words.name);
      setText(note, words.note);
      parts.forEach((part) => part.update(visit));
    },
  };
}
