// The marks that show on the drawing what a field measures.

import { activeOf, measured } from "./state.js";
import { byView, VIEWS } from "./views.js";
import { tongue } from "./words.js";

/**
 * The marks to bring forward for a field: the drawings' own dimension where it shows, or else one made for it.
 * @param {PageState} state
 * @param {Drawings} drawings
 * @param {string} id
 * @param {number} size
 * @param {boolean} far
 * @returns {Partial<ByView<Astragal.Mark[]>>}
 */
export function focusMarks(state, drawings, id, size, far) {
  const role = `focus-${id}`;
  const own = byView((view) => drawings[view].marks.filter((mark) => mark.role.split(" ").includes(role)));
  if (!far && VIEWS.some((view) => own[view].length > 0)) return own;
  const { kernel } = Astragal;
  const field = kernel.field_called(id);
  const notes = kernel.blank_notes(size, tongue(), state.units);
  const marks = kernel.own_dimension(notes, activeOf(state).door, field, measured(state, id));
  return field.drawn ? { [field.drawn[0]]: marks } : {};
}
