// How words look on the page.

// What the configurations are called.
export const LETTERS = ["A", "B", "C", "D"];

/** @param {string} text */
export function capital(text) {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
