// All that this device keeps of mine, and how it is cleared.

import { element, setText } from "./dom.js";
import { createDoorList } from "./mydoors.js";
import { listed } from "./text.js";
import { _ } from "./words.js";

/**
 * @param {App} app
 * @returns {PagePart}
 */
export function createKeeping(app) {
  const doors = createDoorList(app);
  const list = element("p", { class: "note" });
  const clear = element("button", { type: "button", class: "press quiet", onclick: clearAll }, _("Clear all that is kept"));
  const node = element("section", { class: "keeping", "aria-labelledby": "keeping-title" },
    element("div", { class: "section-head" }, element("h2", { id: "keeping-title", tabindex: "-1" }, _("On this device"))),
    element("div", { class: "share-grid" },
      element("div", {}, element("h3", {}, _("My doors")), doors.node),
      element("div", {}, element("h3", {}, _("Short list")), list,
        element("h3", {}, _("All of it")),
        element("p", { class: "note" }, _("Nothing is kept unless you ask for it, and nothing is sent. Doors, short list and the light you read by stay in this browser until you clear them here, or clear the data of this site in the browser.")),
        element("p", { class: "actions" }, clear))));

  function clearAll() {
    const { doors: gone, mine, marks } = Astragal.kept.read();
    if (!Astragal.kept.clear()) return;
    document.getElementById("keeping-title")?.focus();
    app.undo.offer(_("Nothing is kept on this device any more."), () => Astragal.kept.change((now) => {
      now.doors = [...gone, ...now.doors.filter((one) => gone.every((before) => before.id !== one.id))];
      now.mine = mine || now.mine;
      now.marks = [...marks, ...now.marks.filter((one) => marks.every((before) => before.family !== one.family))];
    }));
  }

  return {
    node,
    update(state, settled) {
      const { doors: kept, marks } = Astragal.kept.read();
      const names = marks.map(({ family }) => app.catalog.families[family]?.name).filter(Boolean);
      setText(list, names.length > 0 ? _("On your short list: {coverings}.", { coverings: listed(names) }) : _("Your short list is empty."));
      clear.hidden = kept.length + marks.length === 0;
      doors.update(state, settled);
    },
  };
}
