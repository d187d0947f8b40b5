// The papers of a visit: looked at on the page, and printed as they stand there.

import { element, setChildren } from "./dom.js";
import { orderCsv } from "./ordercsv.js";
import { paperNode } from "./paperblocks.js";
import { priceStock } from "./price.js";
import { inDays } from "./sheet.js";
import { _, say, tongue } from "./words.js";

/**
 * Where a paper of a visit is written.
 * @param {VisitPage} page
 * @param {Astragal.Visit} visit
 * @returns {Astragal.Desk}
 */
function visitDeskOf({ catalog, home }, { units, client }) {
  return { words: tongue(), units, client, showroom: catalog.showroom, day: inDays(new Date()), link: "", home };
}

/**
 * Makes a paper of a visit; of what is ordered, where it is about that.
 * @typedef {(page: VisitPage, visit: Astragal.Visit, commissions: Astragal.Commission[]) => Astragal.Paper} MakePaper
 */

/** @type {Record<string, { name: string, make: MakePaper }>} */
const VISIT_PAPERS = {
  order: {
    name: _("Order to the workroom"),
    make: (page, visit, commissions) => Astragal.kernel.order_paper(commissions, visitDeskOf(page, visit)),
  },
  install: {
    name: _("Installer's sheet"),
    make: (page, visit, commissions) => Astragal.kernel.install_paper(commissions, visitDeskOf(page, visit)),
  },
  measure: {
    name: _("Measuring sheets of these doors"),
    make: (page, visit) => Astragal.kernel.measuring_paper(Astragal.kernel.visit_sheets(visit, page.catalog), { ...visitDeskOf(page, visit), client: "" }),
  },
  blank: {
    name: _("Blank measuring sheet"),
    make: (page, visit) => Astragal.kernel.measuring_paper(Astragal.kernel.blank_sheets(page.catalog), { ...visitDeskOf(page, visit), client: "" }),
  },
};

/**
 * A showroom that shows no prices in money has none on its site: the command makes its quotes.
 * @param {Astragal.PriceStock} prices
 * @returns {{ name: string, make: MakePaper }}
 */
function quoteOf(prices) {
  return {
    name: _("Quote"),
    make: ({ catalog }, visit) => Astragal.kernel.quote_paper(Astragal.kernel.visit_quote(visit, catalog, prices, catalog.showroom, inDays(new Date()))),
  };
}

const MADE_OF_ORDER = ["order", "install"];

/** @param {string} text */
function saveTable(text) {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([text], { type: "text/csv" }));
  link.download = "order.csv";
  link.click();
  // The browser has taken it over by the next task.
  setTimeout(() => URL.revokeObjectURL(link.href), 1000);
}

/**
 * @param {VisitPage} page
 * @param {string} id of the visit
 * @returns {VisitPart}
 */
export function visitPapers(page, id) {
  const notes = element("ul", { class: "order-notes" });
  const shown = element("div", { class: "paper-shown" });
  const prices = priceStock();
  /** @type {Record<string, { name: string, make: MakePaper }>} */
  const papers = prices ? { quote: quoteOf(prices), ...VISIT_PAPERS } : VISIT_PAPERS;
  const buttons = Object.entries(papers).map(([kind, { name }]) =>
    element("button", { type: "button", class: "press quiet", "data-paper": kind, "aria-pressed": "false", onclick: () => choose(kind === chosen ? "" : kind) }, name));
  const print = element("button", { type: "button", class: "press", onclick: () => window.print() }, _("Print"));
  const table = element("button", { type: "button", class: "press quiet", onclick: saveOrder }, _("Save the order as a table"));
  const after = element("p", { class: "actions" }, print, table);
  const none = element("p", { class: "note" }, _("Nothing is agreed or liked yet, so there is nothing to order."));
  let chosen = "";

  /** @param {string} kind */
  function choose(kind) {
    chosen = kind;
    const visit = page.keep.now(id);
    if (visit) update(visit);
  }

  function saveOrder() {
    const visit = page.keep.now(id);
    if (visit) saveTable(orderCsv(Astragal.kernel.makings(Astragal.kernel.ordered_of(visit, page.catalog).commissions), visit.units));
  }

  /** @param {Astragal.Visit} visit */
  function update(visit) {
    buttons.forEach((button) => button.setAttribute("aria-pressed", String(button.dataset.paper === chosen)));
    const ordered = MADE_OF_ORDER.includes(chosen) ? Astragal.kernel.linked_order(visit, page.catalog, page.linkOf) : null;
    const empty = ordered?.commissions.length === 0;
    setChildren(notes, (ordered?.notes ?? []).map((note) => element("li", {}, say(note, visit.units))));
    none.hidden = !empty;
    after.hidden = chosen === "" || empty;
    table.hidden = chosen !== "order";
    const paper = chosen === "" || empty ? null : papers[chosen].make(page, visit, ordered?.commissions ?? []);
    setChildren(shown, paper ? [element("div", { class: "paper-frame", role: "region", "aria-label": papers[chosen].name, tabindex: "0" }, paperNode(paper, visit.units))] : []);
  }

  return {
    node: element("section", { "aria-labelledby": `papers-${id}` }, element("h3", { id: `papers-${id}` }, _("Papers")),
      element("p", { class: "note" }, _("Each is shown here and printed as it stands; letter and A4 both keep its drawings to scale.")),
      element("p", { class: "actions" }, buttons), notes, none, after, shown),
    update,
  };
}
