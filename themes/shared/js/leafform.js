// One leaf or sidelight of an opening: what is measured of it, place by place.

import { element } from "./dom.js";
import { findingsAt, leafAt, readingPart } from "./readingfield.js";
import { foldedPart, pickField, wordsField } from "./visitfields.js";
import { openingCalled } from "./visitmodel.js";
import { capital } from "./text.js";
import { _, _several } from "./words.js";

/** @typedef {{ id: string, name: string, fields: Astragal.Field[] }} LeafGroup */

/** @param {string} leaf */
export function leafWords(leaf) {
  return capital(Astragal.kernel.leaf_names()[leaf] ?? leaf);
}

/**
 * Where what only a visit takes is asked.
 * @param {string} id
 */
function placeOf(id) {
  return ["glass", "leaf"].find((group) => id.startsWith(`${group}_`)) ?? "around";
}

/**
 * What is measured of a leaf, by the place where it is taken.
 * @param {VisitPage} page
 * @param {Astragal.Opening} opening
 * @param {string} leaf
 * @returns {LeafGroup[]}
 */
export function askedOf(page, opening, leaf) {
  const door = Astragal.kernel.leaf_door(opening, "active", page.catalog);
  const asked = Astragal.kernel.asked_of_leaf(door, leaf);
  const groups = Astragal.kernel.asked_groups(door);
  const placed = new Set(groups.flatMap(({ fields }) => fields.map(({ id }) => id)));
  return groups.map(({ id, name, fields }) => {
    const own = new Set(fields.map((field) => field.id));
    return { id, name, fields: asked.filter((field) => own.has(field.id) || (!placed.has(field.id) && placeOf(field.id) === id)) };
  }).filter(({ fields }) => fields.length > 0);
}

/**
 * How many of some measures a leaf has a reading of.
 * @param {Astragal.Leaf | undefined} leaf
 * @param {Astragal.Field[]} fields
 */
export function takenOf(leaf, fields) {
  const taken = new Set(leaf?.readings.map(({ field }) => field));
  return fields.filter(({ id }) => taken.has(id)).length;
}

/**
 * How many of some measures have been taken, and how many of them somebody should look at.
 * @param {VisitPage} page
 * @param {Astragal.Visit} visit
 * @param {import("./readingfield.js").LeafPlace} place
 * @param {Astragal.Field[]} fields
 */
function lineWords(page, visit, place, fields) {
  const ids = new Set(fields.map(({ id }) => id));
  const wrong = new Set(findingsAt(page, visit, place).map(({ field }) => field).filter((field) => ids.has(field))).size;
  const told = _several("{taken} of {count} measure", "{taken} of {count} measures", { taken: takenOf(leafAt(visit, place), fields), count: fields.length });
  return wrong === 0 ? told : `${_several("{count} to look at", "{count} to look at", { count: wrong })} · ${told}`;
}

/**
 * @param {VisitPage} page
 * @param {string} id of the visit
 * @param {import("./readingfield.js").LeafPlace} place
 * @returns {VisitPart}
 */
export function leafForm(page, id, place) {
  const groups = element("div", { class: "leaf-groups" });
  const handles = [["", _("None")], ...Object.values(page.catalog.handles).map((handle) => [handle.id, handle.name])];
  const handle = place.leaf.endsWith("-sidelight") ? null : pickField(_("A handle like"), place.leaf === "active" ? handles.slice(1) : handles,
    (visit) => leafAt(visit, place)?.handle ?? "",
    (value) => page.keep.change(id, (visit) => Object.assign(leafAt(visit, place) ?? {}, { handle: value })));
  const note = wordsField(_("Note on this leaf"), { rows: 2 }, (visit) => leafAt(visit, place)?.note ?? "",
    (text) => page.keep.change(id, (visit) => Object.assign(leafAt(visit, place) ?? {}, { note: text })));
  /** @type {Map<string, ReturnType<typeof foldedPart>>} */
  const parts = new Map();
  let built = "";

  /** @param {LeafGroup} group */
  function groupPart({ name, fields }) {
    return foldedPart({ class: "more-lengths" },
      () => fields.map((field) => readingPart(page, id, place, field, Astragal.kernel.spots_of(field.id))),
      (visit) => ({ name, note: lineWords(page, visit, place, fields) }),
      () => page.keep.now(id));
  }

  /** @param {LeafGroup[]} wanted */
  function build(wanted) {
    const key = JSON.stringify(wanted.map((group) => group.fields.map((field) => field.id)));
    if (key === built) return;
    built = key;
    const open = [...parts].filter(([, part]) => part.node.open).map(([name]) => name);
    parts.clear();
    for (const group of wanted) parts.set(group.id, groupPart(group));
    groups.replaceChildren(...[...parts.values()].map((part) => part.node));
    for (const name of open) parts.get(name)?.open();
  }

  return {
    node: element("div", { class: "leaf-form" }, handle?.node, groups, note.node),
    update(visit) {
      const opening = openingCalled(visit, place.opening);
      if (!opening || !leafAt(visit, place)) return;
      build(askedOf(page, opening, place.leaf));
      handle?.update(visit);
      note.update(visit);
      parts.forEach((part) => part.update(visit));
    },
  };
}

/**
 * A leaf's line: what it is, and how much of it has been measured.
 * @param {VisitPage} page
 * @param {Astragal.Visit} visit
 * @param {import("./readingfield.js").LeafPlace} place
 */
export function leafLine(page, visit, place) {
  const opening = openingCalled(visit, place.opening);
  const fields = opening ? askedOf(page, opening, place.leaf).flatMap((group) => group.fields) : [];
  return { name: leafWords(place.leaf), note: lineWords(page, visit, place, fields) };
}
