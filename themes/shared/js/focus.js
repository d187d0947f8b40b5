// The marks to bring forward for a field: the drawings' own dimension where it shows, or else one made for it.
function focusMarks(state, drawings, id, size, far) {
  const role = `focus-${id}`;
  const own = Object.fromEntries(VIEWS.map((view) =>
    [view, drawings[view].marks.filter((mark) => mark.role.split(" ").includes(role))]));
  if (!far && VIEWS.some((view) => own[view].length > 0)) return own;
  const { kernel } = Astragal;
  const field = kernel.field_called(id);
  const notes = kernel.blank_notes(size, state.units);
  const marks = kernel.own_dimension(notes, activeOf(state).door, field, measured(state, id));
  return field.drawn ? { [field.drawn[0]]: marks } : {};
}
