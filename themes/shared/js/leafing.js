// Leaves that are turned one at a time on a phone, by a finger, buttons or arrow keys, and lie side by side on a desk.

import { element, onFrame, setText } from "./dom.js";
import { _ } from "./words.js";

// What takes the arrow keys for itself.
const TAKES_ARROWS = ["INPUT", "TEXTAREA"];

/**
 * @param {string} name what the leaves are of
 * @param {HTMLElement[]} leaves
 */
export function leafed(name, leaves) {
  const told = element("span", { class: "leaf-number", role: "status" });
  const before = element("button", { type: "button", class: "press quiet", onclick: () => turnUp(at() - 1) }, _("Back"));
  const next = element("button", { type: "button", class: "press quiet", onclick: () => turnUp(at() + 1) }, _("Next"));
  const row = element("div", { class: "leaves", role: "group", tabindex: "0", "aria-label": name, onkeydown: turnByKey }, leaves);
  const turner = element("p", { class: "leaf-turner", hidden: leaves.length < 2 }, before, told, next);

  // How far apart two leaves lie; on a desk, where all are seen, nothing is turned.
  const pitch = () => (leaves.length < 2 ? 0 : leaves[1].offsetLeft - leaves[0].offsetLeft);
  const at = () => (pitch() > 0 ? Math.round(row.scrollLeft / pitch()) : 0);

  /** @param {number} place */
  function turnTo(place) {
    const calm = matchMedia("(prefers-reduced-motion: reduce)").matches;
    row.scrollTo({ left: Math.max(0, Math.min(leaves.length - 1, place)) * pitch(), behavior: calm ? "auto" : "smooth" });
  }

  /**
   * Another leaf is read from its top.
   * @param {number} place
   */
  function turnUp(place) {
    if (row.getBoundingClientRect().top < 0) turner.scrollIntoView({ block: "start" });
    turnTo(place);
  }

  /** @param {KeyboardEvent} event */
  function turnByKey(event) {
    const by = { ArrowLeft: -1, ArrowRight: 1 }[event.key];
    if (by === undefined || TAKES_ARROWS.includes(/** @type {Element} */ (event.target).tagName)) return;
    event.preventDefault();
    turnTo(at() + by);
  }

  const tell = onFrame(() => {
    setText(told, _("{number} of {count}", { number: at() + 1, count: leaves.length }));
    before.disabled = at() === 0;
    next.disabled = at() === leaves.length - 1;
  });
  row.addEventListener("scroll", tell, { passive: true });
  tell();
  return element("div", { class: "leafing" }, turner, row);
}
