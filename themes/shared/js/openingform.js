// One opening of a visit: what it is, its leaves as they are measured, and what is proposed for it.

import { element } from "./dom.js";
import { leafForm, leafLine } from "./leafform.js";
import { proposalList } from "./proposalform.js";
import { radioGroup } from "./radio.js";
import { foldedPart, pickField, wordsField } from "./visitfields.js";
import { openingCalled, openingName, setPreset, setWordOf, leafCalled } from "./visitmodel.js";
import { _, _several } from "./words.js";

/**
 * What an opening is, in words of the door's table.
 * @param {VisitPage} page
 * @param {string} id of the visit
 * @param {string} at of the opening
 * @returns {VisitPart}
 */
function openingWords(page, id, at) {
  const change = (/** @type {(opening: Astragal.Opening) => void} */ task) => page.keep.change(id, (visit) => {
    const opening = openingCalled(visit, at);
    if (opening) task(opening);
  });
  const field = (/** @type {string} */ label, /** @type {"room" | "note" | "socket"} */ name, /** @type {Attributes} */ attributes) =>
    wordsField(label, attributes, (visit) => openingCalled(visit, at)?.[name] ?? "", (text) => change((opening) => {
      opening[name] = text;
    }));
  const room = field(_("Room"), "room", {});
  const preset = pickField(_("A door like"), Object.values(page.catalog.doors).map((door) => [door.id, door.name]),
    (visit) => openingCalled(visit, at)?.preset ?? "", (value) => change((opening) => setPreset(opening, page.catalog.doors[value])));
  const words = Object.entries(Astragal.kernel.door_words()).map(([name, { name: legend, options }]) => ({
    name,
    group: radioGroup(`${name}-${at}`, legend, Object.entries(options),
      (value) => change((opening) => setWordOf(opening, page.catalog.doors[opening.preset], name, value))),
  }));
  const socket = field(_("Where a charger finds a socket"), "socket", {});
  const control = pickField(_("Control side, seen from the room"), [["", _("Not said: away from the handle")], ["left", _("Left")], ["right", _("Right")]],
    (visit) => openingCalled(visit, at)?.control ?? "", (value) => change((opening) => void (opening.control = value)));
  const note = field(_("Note on this door"), "note", { rows: 2 });
  return {
    node: element("div", { class: "opening-words" }, element("div", { class: "visit-pair" }, room.node, preset.node),
      element("p", { class: "note" }, _("All that nobody has measured yet is as that door has it.")),
      element("div", { class: "eithers" }, words.map((word) => word.group.node)),
      element("div", { class: "visit-pair" }, socket.node, control.node, note.node)),
    update(visit) {
      const opening = openingCalled(visit, at);
      if (!opening) return;
      [room, preset, socket, control, note].forEach((part) => part.update(visit));
      const now = leafCalled(opening, "active")?.words ?? {};
      words.forEach(({ name, group }) => group.show(now[name]));
    },
  };
}

/**
 * @param {VisitPage} page
 * @param {string} id of the visit
 * @param {string} at of the opening
 */
function openingParts(page, id, at) {
  const leaves = element("div", { class: "leaves" });
  /** @type {Map<string, ReturnType<typeof foldedPart>>} */
  let parts = new Map();
  /** @type {VisitPart} */
  const leafList = {
    node: leaves,
    update(visit) {
      const wanted = openingCalled(visit, at)?.leaves.map((leaf) => leaf.id) ?? [];
      if (wanted.join() !== [...parts.keys()].join()) {
        parts = new Map(wanted.map((leaf) => [leaf, parts.get(leaf) ?? foldedPart({ class: "leaf", "data-leaf": leaf },
          () => [leafForm(page, id, { opening: at, leaf })],
          (now) => leafLine(page, now, { opening: at, leaf }), () => page.keep.now(id))]));
        leaves.replaceChildren(...[...parts.values()].map((part) => part.node));
      }
      parts.forEach((part) => part.update(visit));
    },
  };
  return [openingWords(page, id, at), leafList, proposalList(page, id, at), removing(page, id, at)];
}

/**
 * @param {VisitPage} page
 * @param {string} id of the visit
 * @param {string} at of the opening
 * @returns {VisitPart}
 */
function removing(page, id, at) {
  function remove() {
    const visit = page.keep.now(id);
    const opening = visit && openingCalled(visit, at);
    if (!visit || !opening) return;
    const place = visit.openings.findIndex((one) => one.id === at);
    page.keep.change(id, (draft) => {
      draft.openings = draft.openings.filter((one) => one.id !== at);
    });
    page.offer(_("{door} is no longer in this visit.", { door: openingName(visit, opening) }), () => page.keep.change(id, (draft) => {
      if (!openingCalled(draft, at)) draft.openings.splice(place, 0, opening);
    }));
  }
  const button = element("button", { type: "button", class: "text-button", onclick: remove }, _("Take this door out of the visit"));
  return { node: element("p", { class: "opening-out" }, button), update: () => undefined };
}

/**
 * @param {Astragal.Opening} opening
 */
function proposedWords({ proposals }) {
  return proposals.length === 0 ? "" : _several("{count} proposal", "{count} proposals", { count: proposals.length });
}

/**
 * @param {VisitPage} page
 * @param {string} id of the visit
 * @param {string} at of the opening
 */
export function openingForm(page, id, at) {
  return foldedPart({ class: "one-door", "data-opening": at }, () => openingParts(page, id, at), (visit) => {
    const opening = openingCalled(visit, at);
    if (!opening) return { name: "", note: "" };
    const door = page.catalog.doors[opening.preset]?.name ?? opening.preset;
    return { name: openingName(visit, opening), note: [door, proposedWords(opening)].filter(Boolean).join(" · ") };
  }, () => page.keep.now(id));
}
