// One measure of a leaf: a box for each reading that is due, kept as it was written, and the number that counts.

import { element, setAttribute, setChildren, setText } from "./dom.js";
import { fieldId, showIn } from "./visitfields.js";
import { dropReading, leafCalled, measuredBy, openingCalled, putReading, readingAt, today } from "./visitmodel.js";
import { capital } from "./text.js";
import { _, say, tongue } from "./words.js";

/** @typedef {{ opening: string, leaf: string }} LeafPlace */
/** @typedef {Astragal.Leaf & { unread?: Record<string, string> }} WrittenLeaf what no length is yet is kept beside the readings */

/**
 * @param {Astragal.Visit} visit
 * @param {LeafPlace} place
 */
export function leafAt(visit, place) {
  const opening = openingCalled(visit, place.opening);
  return /** @type {WrittenLeaf | undefined} */ (opening && leafCalled(opening, place.leaf));
}

/**
 * @param {Astragal.Field} field
 * @param {string} text
 * @param {string} units
 * @returns {{ mm: number, why: string }} why it is no such measure; empty where it is one
 */
export function readAs(field, text, units) {
  if (field.unit === "count") {
    const count = /^\d{1,2}$/.test(text.trim()) ? Number(text) : 0;
    const [least, most] = field.limits;
    return { mm: count, why: count < least || count > most ? _("Write a whole number between {least} and {most}.", { least, most }) : "" };
  }
  const { sound, fault, mm } = Astragal.kernel.written_length(text, units);
  if (sound) return { mm, why: say(Astragal.kernel.out_of_limits(field, mm, units), units) };
  const advice = units === "mm" ? _("Write a length such as 571 or 22 1/2 in.") : _("Write a length such as 22 1/2, 22.5 or 571 mm.");
  const slip = say(fault, units);
  return { mm, why: slip === "" ? advice : _("{fault}. {advice}", { fault: slip, advice }) };
}

/**
 * As it was written, where that still says the same; in other units the length itself.
 * @param {Astragal.Field} field
 * @param {Astragal.Reading} reading
 * @param {string} units
 */
function readingText(field, { typed, mm }, units) {
  const again = readAs(field, typed, units);
  if (again.why === "" && Math.abs(again.mm - mm) < 1e-6) return typed;
  return field.unit === "count" ? String(mm) : Astragal.kernel.write_length(mm, tongue(), units);
}

/**
 * @param {VisitPage} page
 * @param {string} id of the visit
 * @param {LeafPlace} place
 * @param {Astragal.Field} field
 * @param {string} spot
 * @param {string} named by what it is labelled where it is the only one
 */
function readingBox(page, id, place, field, spot, named) {
  const own = fieldId();
  const input = element("input", {
    id: own, type: "text", inputmode: field.unit === "count" ? "numeric" : "text", autocomplete: "off", spellcheck: "false",
    oninput: () => write(input.value), onfocus: () => input.select(), onblur: () => update(page.keep.now(id)),
  });
  const label = element("label", { for: own, class: spot === "" ? "reading-name" : "" }, spot === "" ? named : capital(Astragal.kernel.spot_words()[spot]));
  const key = `${field.id} ${spot}`;
  let why = "";

  /** @param {string} text */
  function write(text) {
    page.keep.change(id, (visit) => {
      const leaf = leafAt(visit, place);
      if (!leaf) return;
      const { [key]: before, ...unread } = leaf.unread ?? {};
      const read = readAs(field, text, visit.units);
      if (text.trim() === "" || read.why !== "") dropReading(leaf, field.id, spot);
      else putReading(leaf, { field: field.id, spot, typed: text.trim(), mm: read.mm, how: howOf(leaf, field.id), who: measuredBy(visit), on: today() });
      leaf.unread = text.trim() === "" || read.why === "" ? unread : { ...unread, [key]: text };
      if (Object.keys(leaf.unread).length === 0) delete leaf.unread;
    });
  }

  /** @param {Astragal.Visit | null} visit */
  function update(visit) {
    const leaf = visit && leafAt(visit, place);
    if (!visit || !leaf) return;
    const reading = readingAt(leaf, field.id, spot);
    const unread = leaf.unread?.[key] ?? "";
    showIn(input, reading ? readingText(field, reading, visit.units) : unread);
    why = unread === "" ? "" : readAs(field, unread, visit.units).why;
    if (why) input.setAttribute("aria-invalid", "true");
    else input.removeAttribute("aria-invalid");
  }

  return { label, input, update, why: () => why };
}

/**
 * How a measure of a leaf was come by; what is typed has been measured unless somebody says otherwise.
 * @param {Astragal.Leaf} leaf
 * @param {string} field
 */
function howOf(leaf, field) {
  return leaf.readings.find((reading) => reading.field === field)?.how ?? "measured";
}

// A change makes new openings, so what is wrong with one is known while it is the same.
/** @type {WeakMap<Astragal.Opening, Record<string, Astragal.Finding[]>>} */
const known = new WeakMap();

/**
 * What is wrong with what was measured of a leaf.
 * @param {VisitPage} page
 * @param {Astragal.Visit} visit
 * @param {LeafPlace} place
 */
export function findingsAt(page, visit, place) {
  const opening = openingCalled(visit, place.opening);
  if (!opening) return [];
  const found = known.get(opening)?.[visit.units] ?? Astragal.kernel.opening_findings(opening, page.catalog, visit.units);
  known.set(opening, { [visit.units]: found });
  return found.filter(({ leaf }) => leaf === place.leaf);
}

/**
 * @param {Astragal.Finding} finding
 * @param {string} units
 */
function findingLine({ says, again, grave }, units) {
  const line = element("p", { class: "finding" }, [say(says, units), say(again, units)].filter(Boolean).join(" "));
  line.classList.toggle("grave", grave);
  return line;
}

/**
 * The number that counts, and by which rule.
 * @param {Astragal.Used} used
 * @param {string} units
 */
function usedWords({ mm, rule }, units) {
  const length = Astragal.kernel.say_value(mm, "mm", tongue(), units);
  return _("{length} counts: {rule}", { length, rule: Astragal.kernel.say_phrase(rule, tongue(), units) });
}

/**
 * @param {VisitPage} page
 * @param {string} id of the visit
 * @param {LeafPlace} place
 * @param {Astragal.Field} field
 * @param {string[]} spots
 * @returns {VisitPart}
 */
export function readingPart(page, id, place, field, spots) {
  const name = field.name ?? "";
  const boxes = spots.map((spot) => readingBox(page, id, place, field, spot, name));
  const note = element("p", { class: "field-note", id: fieldId() });
  const used = element("p", { class: "used", id: fieldId() });
  const findings = element("div", { role: "status", id: fieldId() });
  const how = element("p", { class: "where", id: fieldId() }, field.how ?? "");
  const assumed = element("input", { type: "checkbox", onchange: () => setHow(assumed.checked ? "assumed" : "measured") });
  const assumedRow = element("label", { class: "tick-row" }, assumed, element("span", {}, _("Assumed, not measured")));
  const trade = field.trade ? element("span", { class: "trade" }, field.trade) : null;
  const single = spots.length === 1;
  const told = [note, used, findings];
  const node = single ? element("div", { class: "reading" }, boxes[0].label, trade, how, element("div", { class: "reading-boxes single" }, boxes[0].input, assumedRow), told)
    : element("fieldset", { class: "reading" }, element("legend", { class: "reading-name" }, name), trade, how,
      element("div", { class: "reading-boxes" }, boxes.map(({ label, input }) => element("div", { class: "reading-box" }, label, input))), told, assumedRow);
  for (const { input } of boxes) setAttribute(input, "aria-describedby", `${how.id} ${note.id} ${used.id} ${findings.id}`);

  /** @param {string} value */
  function setHow(value) {
    page.keep.change(id, (visit) => {
      for (const reading of leafAt(visit, place)?.readings ?? []) if (reading.field === field.id) reading.how = value;
    });
  }

  return {
    node,
    update(visit) {
      const leaf = leafAt(visit, place);
      if (!leaf) return;
      boxes.forEach((box) => box.update(visit));
      const readings = leaf.readings.filter((reading) => reading.field === field.id);
      const why = boxes.map((box) => box.why()).find((each) => each !== "") ?? "";
      const counted = Astragal.kernel.used_numbers(leaf)[field.id];
      // Diagonals only check the others.
      setText(used, counted && boxes.length > 2 ? usedWords(counted, visit.units) : "");
      setText(note, why);
      node.classList.toggle("wrong", why !== "");
      setChildren(findings, findingsAt(page, visit, place).filter((one) => one.field === field.id).map((one) => findingLine(one, visit.units)));
      assumedRow.hidden = readings.length === 0;
      assumed.checked = readings.length > 0 && howOf(leaf, field.id) !== "measured";
    },
  };
}
