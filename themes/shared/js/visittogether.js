// Two copies of a visit, this device's and a file's: what they have otherwise, and whose word stands where only one can.

import { element, setChildren } from "./dom.js";
import { leafWords } from "./leafform.js";
import { radioGroup } from "./radio.js";
import { openingCalled, openingName } from "./visitmodel.js";
import { _ } from "./words.js";

const FROM_FILE = "file";
const FROM_DEVICE = "device";

/** What the parts of a visit are called; whatever else differs is called as the file has it. */
/** @type {Record<string, string>} */
const PART_NAMES = {
  client: _("Client"), place: _("Place"), on: _("Date"), by: _("Measured by"), note: _("Note"), units: _("Units"), household: _("Who lives here"),
  room: _("Room"), socket: _("Where a charger finds a socket"), preset: _("A door like"), handle: _("Handle"),
  readings: _("Readings"), leaves: _("A leaf"), openings: _("A door"), proposals: _("A proposal"), agreed: _("What is agreed"),
  price: _("Price"), liked: _("The client likes this one"), remarks: _("What the client says to it"),
};

/**
 * A value as somebody reads it; the kernel hands it over as JSON.
 * @param {string} text
 */
function valueTold(text) {
  try {
    const value = JSON.parse(text);
    return typeof value === "string" ? value : text;
  } catch {
    return text;
  }
}

/**
 * @param {Astragal.Visit} visit
 * @param {Astragal.VisitDifference} difference
 */
function whereTold(visit, { opening, leaf, at }) {
  const found = opening === "" ? undefined : openingCalled(visit, opening);
  const [part] = at.split(".").slice(-1);
  return [found ? openingName(visit, found) : opening, leaf && leafWords(leaf), PART_NAMES[part] ?? part].filter(Boolean).join(", ");
}

/**
 * @param {Astragal.Visit} visit
 * @param {Astragal.VisitDifference} difference
 * @param {number} i
 * @param {(from: string) => void} choose
 */
function choiceOf(visit, difference, i, choose) {
  const group = radioGroup(`differs-${i}`, whereTold(visit, difference), [
    [FROM_FILE, _("The file: {value}", { value: valueTold(difference.mine) })],
    [FROM_DEVICE, _("This device: {value}", { value: valueTold(difference.theirs) })]], choose);
  group.show(FROM_FILE);
  return group.node;
}

/**
 * The two copies in one, with the chosen word where only one can stand; the other's is noted in the visit.
 * @param {Astragal.Visit} file
 * @param {Astragal.Visit} device
 * @param {Astragal.VisitDifference[]} fromDevice where this device's word stands
 */
export function putTogether(file, device, fromDevice) {
  const { kernel } = Astragal;
  const [mine, theirs] = [structuredClone(file), structuredClone(device)];
  for (const difference of fromDevice) {
    kernel.put_from(mine, device, difference);
    kernel.put_from(theirs, file, difference);
  }
  return kernel.merge_visits(mine, theirs, JSON.stringify).visit;
}

/**
 * @param {Astragal.Visit} file
 * @param {Astragal.Visit} device
 * @param {(visit: Astragal.Visit) => void} take
 */
export function differencesPart(file, device, take) {
  const { kernel } = Astragal;
  const { visit, differences } = kernel.merge_visits(file, device, JSON.stringify);
  const chosen = new Map(differences.filter((one) => kernel.can_choose(one)).map((one) => [one, FROM_FILE]));
  const added = differences.filter((one) => !chosen.has(one));
  const list = element("ul", { class: "moved-list" }, added.map((one) => element("li", {}, whereTold(visit, one))));
  const node = element("div", { class: "differences" });
  setChildren(node, [
    added.length === 0 ? null : element("div", {}, element("p", {}, element("strong", {}, _("In one of them only, and kept:"))), list),
    chosen.size === 0 ? null : element("p", {}, element("strong", {}, _("Written otherwise; whose word stands?"))),
    ...[...chosen.keys()].map((one, i) => choiceOf(visit, one, i, (from) => void chosen.set(one, from))),
    element("p", { class: "actions" }, element("button", {
      type: "button", class: "press",
      onclick: () => take(putTogether(file, device, [...chosen].filter(([, from]) => from === FROM_DEVICE).map(([one]) => one))),
    }, _("Put both together"))),
  ]);
  return node;
}
