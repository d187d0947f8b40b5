// Columns that a narrow screen shows two by two: how many there are and which are seen stands above, the rest is a swipe away.

import { element, onFrame, setAttribute, setText } from "./dom.js";
import { _ } from "./words.js";

/**
 * @param {string} name what a screen reader calls the columns
 * @param {HTMLElement} columns each child a column
 * @param {HTMLElement} below what is swiped along with them
 */
export function sideways(name, columns, below) {
  const count = element("p", { role: "status" });
  const turn = (/** @type {string} */ words, /** @type {string} */ sign, /** @type {number} */ by) =>
    element("button", { type: "button", class: "press quiet", "aria-label": words, onclick: () => go(by) }, sign);
  const back = turn(_("The one before"), "←", -1);
  const on = turn(_("The next one"), "→", 1);
  const turner = element("div", { class: "turner", role: "group", "aria-label": name }, back, count, on);
  const swiped = element("div", { class: "swiped", tabindex: "0", role: "region", "aria-label": name, onscroll: onFrame(show) }, columns, below);
  let all = 0;

  // Which of the columns are seen as good as whole.
  function seen() {
    const box = swiped.getBoundingClientRect();
    const whole = [...columns.children].map((column) => column.getBoundingClientRect())
      .map(({ left, right, width }) => Math.min(right, box.right) - Math.max(left, box.left) > width * 0.9);
    return { first: whole.indexOf(true), last: whole.lastIndexOf(true) };
  }

  function show() {
    const { first, last } = seen();
    turner.hidden = swiped.scrollWidth <= swiped.clientWidth + 1;
    if (turner.hidden || first < 0) return;
    setText(count, first === last ? _("{first} of {count}", { first: first + 1, count: all })
      : _("{first} to {last} of {count}", { first: first + 1, last: last + 1, count: all }));
    // A button that is disabled under a finger would take the focus with it.
    setAttribute(back, "aria-disabled", first === 0);
    setAttribute(on, "aria-disabled", last === all - 1);
  }

  /** @param {number} by */
  function go(by) {
    const [one, two] = columns.children;
    const step = two.getBoundingClientRect().left - one.getBoundingClientRect().left;
    const calm = matchMedia("(prefers-reduced-motion: reduce)").matches;
    swiped.scrollBy({ left: by * step, behavior: calm ? "instant" : "smooth" });
  }

  new ResizeObserver(show).observe(swiped);
  return {
    turner,
    swiped,
    /** @param {number} wanted */
    follow(wanted) {
      all = wanted;
      show();
    },
  };
}
