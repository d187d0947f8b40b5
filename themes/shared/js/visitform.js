// One visit: who and where, its doors one after the other, and what is done with all of it.

import { element, setChildren, setText } from "./dom.js";
import { openingForm } from "./openingform.js";
import { radioGroup } from "./radio.js";
import { clientPart } from "./visitclient.js";
import { deskPlace } from "./visitdeskplace.js";
import { saveVisitFile } from "./visitfile.js";
import { wordsField } from "./visitfields.js";
import { freshOpening, measuredBy, setUnits } from "./visitmodel.js";
import { _, _several } from "./words.js";

/**
 * What a visit is called: its client, or its place.
 * @param {Astragal.Visit} visit
 */
export function visitName({ client, place }) {
  return client || place || _("A visit without a name");
}

/**
 * Whether what stands here is on the device, and what helps where it is not.
 * @param {VisitPage} page
 * @param {string} id
 * @returns {VisitPart}
 */
function keepLine(page, id) {
  const words = element("p");
  const save = element("button", { type: "button", class: "press quiet", onclick: saveNow }, _("Save a file"));
  const again = element("button", { type: "button", class: "press quiet", onclick: () => page.keep.keepAgain(id) }, _("Keep it after all"));
  const calm = element("p", { class: "keep-line" });
  const trouble = element("div", { class: "notice", role: "alert", hidden: true }, words, element("p", { class: "actions" }, again, save));
  const TOLD = {
    kept: _("Kept on this device, and nowhere else."),
    writing: _("Being written…"),
    full: _("This device has no room left: what you write is on this page only. Save it as a file before you close the page."),
    refused: _("This browser keeps nothing for this page: what you write is on this page only. Save it as a file before you close the page."),
    gone: _("This visit has been deleted in another window. What stands here is on this page only."),
  };

  function saveNow() {
    const visit = page.keep.now(id);
    if (visit) saveVisitFile(visit);
  }

  return {
    node: element("div", {}, calm, trouble),
    update() {
      const state = page.keep.state(id);
      const fine = state === "kept" || state === "writing";
      setText(fine ? calm : words, TOLD[state]);
      calm.hidden = !fine;
      trouble.hidden = fine;
      again.hidden = state !== "gone";
      trouble.dataset.state = state;
      calm.dataset.state = state;
    },
  };
}

/**
 * @param {VisitPage} page
 * @param {string} id
 * @returns {VisitPart}
 */
function whoAndWhere(page, id) {
  const field = (/** @type {string} */ label, /** @type {"client" | "place" | "on" | "note"} */ name, /** @type {Attributes} */ attributes) =>
    wordsField(label, attributes, (visit) => visit[name], (text) => page.keep.change(id, (visit) => {
      visit[name] = text;
    }));
  const fields = [field(_("Client"), "client", {}), field(_("Place"), "place", {}), field(_("Date"), "on", { type: "date" }),
    wordsField(_("Measured by"), {}, measuredBy, (text) => page.keep.change(id, (visit) => void Object.assign(visit, { by: text })))];
  const note = field(_("What the client wants, and who lives here"), "note", { rows: 3 });
  const units = radioGroup("visit-units", _("Units"), [["in", _("Inches")], ["mm", _("Millimeters")]], (value) => page.keep.change(id, (visit) => setUnits(visit, value)));
  return {
    node: element("section", { class: "panel", "aria-labelledby": "visit-who" }, element("h2", { id: "visit-who" }, _("Who and where")),
      element("div", { class: "visit-pair" }, fields.map((part) => part.node), units.node), note.node),
    update(visit) {
      [...fields, note].forEach((part) => part.update(visit));
      units.show(visit.units);
    },
  };
}

/**
 * @param {VisitPage} page
 * @param {string} id
 * @returns {VisitPart}
 */
function openingList(page, id) {
  const list = element("div", { class: "openings" });
  const count = element("p", { class: "why" });
  /** @type {Map<string, ReturnType<typeof openingForm>>} */
  let forms = new Map();

  function add() {
    const opening = freshOpening(page.catalog);
    page.keep.change(id, (visit) => void visit.openings.push(opening));
    const now = page.keep.now(id);
    if (now) update(now);
    const form = forms.get(opening.id);
    form?.open();
    /** @type {HTMLElement | null | undefined} */ (form?.node.querySelector("input"))?.focus();
  }

  /** @param {Astragal.Visit} visit */
  function update(visit) {
    const wanted = visit.openings.map((opening) => opening.id);
    if (wanted.join() !== [...forms.keys()].join()) {
      forms = new Map(wanted.map((at) => [at, forms.get(at) ?? openingForm(page, id, at)]));
      setChildren(list, [...forms.values()].map((form) => form.node));
    }
    setText(count, visit.openings.length === 0 ? _("None yet.") : _several("{count} door", "{count} doors", { count: visit.openings.length }));
    forms.forEach((form) => form.update(visit));
  }

  return {
    node: element("section", { class: "panel", "aria-labelledby": "visit-doors" },
      element("div", { class: "section-head" }, element("h2", { id: "visit-doors" }, _("Doors")), count), list,
      element("p", { class: "actions" }, element("button", { type: "button", class: "press", onclick: add }, _("Add a door")))),
    update,
  };
}

/**
 * What has given way, and whatever else was noted.
 * @returns {VisitPart}
 */
function revisionList() {
  const list = element("ul");
  const node = element("details", { class: "more-lengths" }, element("summary", {}, element("strong", {}, _("What was changed when"))), list);
  return {
    node,
    update({ revisions }) {
      node.hidden = revisions.length === 0;
      setChildren(list, revisions.map(({ on, who, what }) => element("li", {}, [on, who, what].filter(Boolean).join(" · "))));
    },
  };
}

/**
 * @param {VisitPage} page
 * @param {string} id
 * @returns {VisitPart}
 */
export function createVisitForm(page, id) {
  const title = element("h2", { class: "visit-name", tabindex: "-1" });
  const ask = element("div", { class: "notice", role: "group", hidden: true },
    element("p", {}, _("Delete this visit from this device? A file that you have saved stays.")),
    element("p", { class: "actions" },
      element("button", { type: "button", class: "press", onclick: remove }, _("Delete it")),
      element("button", { type: "button", class: "press quiet", onclick: () => showAsk(false) }, _("Leave it"))));
  const askButton = element("button", { type: "button", class: "press quiet", onclick: () => showAsk(true) }, _("Delete this visit"));
  const parts = [keepLine(page, id), whoAndWhere(page, id), openingList(page, id), clientPart(page, id), deskPlace(page, id), revisionList()];
  const save = element("button", { type: "button", class: "press quiet", onclick: saveNow }, _("Save a file"));
  const node = element("article", { class: "one-visit" }, element("p", { class: "crumb" }, element("a", { href: "#" }, _("All visits"))), title,
    parts.map((part) => part.node),
    element("section", { class: "panel", "aria-labelledby": "visit-file" }, element("h2", { id: "visit-file" }, _("The whole visit")),
      element("p", { class: "note" }, _("The file holds everything, the client’s name too. Another device opens it on this page; nothing is sent.")),
      element("p", { class: "actions" }, save, askButton), ask));

  /** @param {boolean} wanted */
  function showAsk(wanted) {
    ask.hidden = !wanted;
    askButton.hidden = wanted;
    if (wanted) ask.querySelector("button")?.focus();
    else askButton.focus();
  }

  function saveNow() {
    const visit = page.keep.now(id);
    if (visit) saveVisitFile(visit);
  }

  async function remove() {
    const visit = page.keep.now(id);
    if (!visit) return;
    await page.keep.remove(id);
    page.showAll();
    page.offer(_("{visit} is deleted from this device.", { visit: visitName(visit) }), () => void page.keep.begin(visit));
  }

  return {
    node,
    update(visit) {
      setText(title, visitName(visit));
      parts.forEach((part) => part.update(visit));
    },
  };
}
