// Sliders that a page is scrolled over.

/**
 * What a slider does under a finger: a browser lets it jump there before it is known whether the finger slides or swipes.
 * @param {() => void} moved what follows the slider
 * @param {() => void} putBack shows it where it was, since the page has been swiped
 */
export function slid(moved, putBack) {
  /** @type {PointerEvent | null} */
  let undecided = null;
  const decided = () => {
    if (!undecided) return;
    undecided = null;
    moved();
  };
  return {
    onpointerdown: (/** @type {PointerEvent} */ event) => (undecided = event.pointerType === "touch" ? event : null),
    onpointermove(/** @type {PointerEvent} */ { clientX, clientY }) {
      if (undecided && Math.abs(clientX - undecided.clientX) > Math.abs(clientY - undecided.clientY)) decided();
    },
    onpointerup: decided,
    onpointercancel() {
      undecided = null;
      putBack();
    },
    oninput: () => undecided || moved(),
  };
}
