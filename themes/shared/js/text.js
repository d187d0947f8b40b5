// How words look on the page.

// What the configurations are called.
export const LETTERS = ["A", "B", "C", "D"];

/** @param {string} text */
export function capital(text) {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

// Making one takes longer than a shelf full of sentences.
/** @type {Intl.ListFormat | undefined} */
let conjunction;

/**
 * Words in a row, as a sentence has them.
 * @param {string[]} words
 */
export function listed(words) {
  conjunction ??= new Intl.ListFormat(document.documentElement.lang, { type: "conjunction" });
  return conjunction.format(words);
}
