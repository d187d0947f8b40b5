// All visits that this device keeps, and how another comes: begun here, or opened from a file.

import { element, setChildren, setText } from "./dom.js";
import { visitName } from "./visitform.js";
import { fetchExample } from "./visitexample.js";
import { visitFileText, visitOfFile } from "./visitfile.js";
import { dayInWords, freshId, freshVisit } from "./visitmodel.js";
import { _, _several, say } from "./words.js";

/** @param {Astragal.Visit} visit */
function visitRow(visit) {
  const told = [visit.client && visit.place, dayInWords(visit.on),
    _several("{count} door", "{count} doors", { count: visit.openings.length })].filter(Boolean).join(" · ");
  return element("li", {}, element("a", { class: "visit-row", href: `#v=${visit.id}` },
    element("strong", {}, visitName(visit)), element("span", { class: "why" }, told)));
}

/**
 * A file of a visit that is kept already, and differs.
 * @param {VisitPage} page
 * @param {Astragal.Visit} known
 * @param {Astragal.Visit} visit the file's
 * @param {(visit: Astragal.Visit) => void} begin
 */
function twiceNotice(page, known, visit, begin) {
  const place = element("div");

  /** @param {Astragal.Visit} both */
  function take(both) {
    page.keep.change(known.id, (draft) => void Object.assign(draft, both));
    page.show(known.id);
  }

  void import("./visittogether.js").then(({ differencesPart }) => setChildren(place, [differencesPart(visit, known, take)]));
  return element("div", { class: "notice" },
    element("p", {}, _("{visit} is on this device already, and the file differs from it.", { visit: visitName(known) })), place,
    element("p", { class: "actions" },
      element("button", { type: "button", class: "press quiet", onclick: () => begin({ ...visit, id: freshId() }) }, _("Keep it as a second visit"))),
    element("p", { class: "note" }, _("Together, both keep their doors and readings; where only one word can stand, the other is noted in the visit.")));
}

/**
 * @param {VisitPage} page
 */
export function createVisitList(page) {
  const list = element("ul", { class: "visit-rows" });
  const none = element("p", { class: "note" }, _("No visit is kept on this device yet."));
  const refused = element("div", { class: "notice", role: "alert", hidden: true },
    element("p", {}, _("This browser keeps nothing for this page. You can work here all the same, and save each visit as a file before you close the page.")));
  const wrong = element("p", { class: "field-note wrong-file", role: "alert" });
  const file = element("input", { type: "file", id: "visit-open", accept: ".json,application/json", onchange: openFile });
  const twice = element("div", { role: "alert" });
  const node = element("section", { class: "visit-list", "aria-labelledby": "visit-list-title" },
    element("div", { class: "section-head" }, element("h2", { id: "visit-list-title", tabindex: "-1" }, _("On this device"))),
    refused, none, list,
    element("div", { class: "visit-begin" },
      element("p", {}, element("button", { type: "button", class: "press", onclick: begin }, _("Begin a visit"))),
      element("div", {}, element("label", { for: file.id }, _("Open a file")), file, wrong)),
    page.examples.length === 0 ? null : element("div", { class: "visit-example" }, page.examples.map(exampleButton),
      element("p", { class: "note" }, _("An invented house, measured and proposed, to look at and to try things on. It stays as you leave it; once you delete it, it opens afresh."))),
    twice);

  /**
   * @param {string} name
   * @param {number} place
   */
  function exampleButton(name, place) {
    const words = page.examples.length === 1 ? _("Open the example") : _("Open the example {name}", { name });
    return element("button", { type: "button", class: "press quiet", onclick: () => openExample(page.scripts[place]) }, words);
  }

  /**
   * An example that is kept is opened as it stands, whatever has become of it.
   * @param {string} script
   */
  async function openExample(script) {
    try {
      const { visit } = await fetchExample(script);
      const known = await page.keep.open(visit.id).catch(() => null);
      if (known) page.show(visit.id);
      else await beginWith(visit);
    } catch {
      setText(wrong, _("The example could not be fetched. Try again when there is a signal."));
    }
  }

  function begin() {
    return beginWith(freshVisit(page.catalog));
  }

  async function openFile() {
    const picked = file.files?.[0];
    if (!picked) return;
    const { visit, slips } = await visitOfFile(picked);
    file.value = "";
    const why = slips.slice(0, 3).map(({ says }) => say(says, page.catalog.units)).join("; ");
    setText(wrong, why === "" ? "" : _("This file is not opened: {why}.", { why }));
    if (why === "") await take(visit);
  }

  /**
   * Nothing that is kept gives way to a file unasked.
   * @param {Astragal.Visit} visit
   */
  async function take(visit) {
    const known = await page.keep.open(visit.id).catch(() => null);
    if (!known) await beginWith(visit);
    else if (visitFileText(known) === visitFileText(visit)) page.show(visit.id);
    else setChildren(twice, [twiceNotice(page, known, visit, beginWith)]);
  }

  /** @param {Astragal.Visit} visit */
  async function beginWith(visit) {
    await page.keep.begin(visit);
    page.show(visit.id);
  }

  return {
    node,
    async update() {
      /** @type {Astragal.Visit[]} */
      let visits = [];
      try {
        visits = await page.keep.list();
        refused.hidden = true;
      } catch {
        visits = page.keep.here();
        refused.hidden = false;
      }
      setChildren(twice, []);
      none.hidden = visits.length > 0;
      setChildren(list, visits.map(visitRow));
    },
  };
}
