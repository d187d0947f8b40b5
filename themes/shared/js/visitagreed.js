// What is agreed for each door: frozen with everything that it came of, and today's beside it, never one for the other.

import { element, setChildren } from "./dom.js";
import { namedPrice } from "./price.js";
import { capital } from "./text.js";
import { dayInWords, dropLast, openingCalled, openingName, today } from "./visitmodel.js";
import { _, say } from "./words.js";

/**
 * @param {string} name of the covering
 * @param {string} price
 */
function priced(name, price) {
  return price === "" ? name : _("{covering}, {price}", { covering: name, price: namedPrice(price) });
}

/** @param {string} leaf */
function leafTold(leaf) {
  return capital(Astragal.kernel.leaf_names()[leaf] ?? leaf);
}

/**
 * Which of the proposals is agreed, and the press that freezes it.
 * @param {VisitPage} page
 * @param {Astragal.Visit} visit
 * @param {Astragal.Opening} opening
 */
function agreeing(page, visit, opening) {
  const { kernel } = Astragal;
  const offered = opening.proposals.filter((proposal) => kernel.is_offered(proposal, page.catalog));
  if (offered.length === 0) return element("p", { class: "note" }, _("Nothing that can be agreed is proposed for this door."));
  const wanted = kernel.decided(opening)[0]?.id;
  const names = kernel.proposal_names(opening, page.catalog);
  const field = `agree-${opening.id}`;
  const select = element("select", { id: field }, offered.map((proposal) =>
    element("option", { value: proposal.id, selected: proposal.id === wanted }, priced(say(names[proposal.id], visit.units), proposal.price))));

  function agree() {
    const proposal = offered.find((one) => one.id === select.value);
    if (!proposal) return;
    const stamp = { on: today(), catalog: kernel.catalog_version(page.catalog) };
    const agreed = kernel.agreed_now(visit, opening, proposal, page.catalog, stamp);
    page.keep.change(visit.id, (draft) => void openingCalled(draft, opening.id)?.agreed.push(agreed));
    page.offer(_("{covering} is agreed for {door}.", { covering: agreed.covering.name, door: openingName(visit, opening) }), () =>
      page.keep.change(visit.id, (draft) => dropLast(openingCalled(draft, opening.id)?.agreed ?? [], agreed)));
  }

  return element("div", { class: "agreeing" },
    element("div", { class: "visit-words" }, element("label", { for: field }, _("Proposal")), select),
    element("button", { type: "button", class: "press quiet", onclick: agree }, opening.agreed.length === 0 ? _("Agree on it today") : _("Agree anew today")));
}

/**
 * The first figures, as agreed and as they come out today.
 * @param {Astragal.BesideToday[]} rows
 * @param {string} units
 */
function besideTable(rows, units) {
  const leaves = [...new Set(rows.map(({ leaf }) => leaf))];
  return element("table", { class: "beside-today" },
    element("thead", {}, element("tr", {}, [_("Figure"), _("Agreed"), _("Today")].map((name) => element("th", { scope: "col" }, name)))),
    leaves.map((at) => element("tbody", {},
      leaves.length > 1 ? element("tr", {}, element("th", { scope: "rowgroup", colspan: "3", class: "of-leaf" }, leafTold(at))) : null,
      rows.filter(({ leaf }) => leaf === at).map(({ name, then, now, moved }) => element("tr", moved ? { class: "moved" } : {},
        element("th", { scope: "row" }, capital(name)),
        element("td", {}, say(then, units)), element("td", {}, say(now, units), moved ? element("span", { class: "why" }, _("moved")) : null))))));
}

/**
 * @param {Astragal.Moved} moved
 * @param {string} units
 */
function movedLine({ kind, leaf, name, then, now }, units) {
  const told = (/** @type {Astragal.Message} */ words) => (kind === "price" ? namedPrice(say(words, units)) : say(words, units));
  const where = leaf === "" ? capital(name) : _("{leaf}, {what}", { leaf: leafTold(leaf), what: name });
  return element("li", {}, element("strong", {}, where), " ", _("agreed: {was}; today: {now}", { was: told(then), now: told(now) }));
}

/**
 * What was agreed last, as it was frozen, with today's beside it.
 * @param {VisitPage} page
 * @param {Astragal.Visit} visit
 * @param {Astragal.Opening} opening
 */
function agreedCard(page, visit, opening) {
  const agreed = opening.agreed[opening.agreed.length - 1];
  if (!agreed) return null;
  const { kernel } = Astragal;
  const now = kernel.agreed_today(visit, opening, agreed, page.catalog);
  const moved = kernel.moved_since(opening, agreed, now, page.catalog);
  const picks = agreed.covering.choices.flatMap(({ options }) => options.map(({ name }) => name));
  const before = opening.agreed.length - 1;
  return element("div", { class: "agreed" },
    element("p", {}, element("strong", {}, _("Agreed on {day}", { day: dayInWords(agreed.on) })), " ", priced(agreed.covering.name, agreed.price)),
    element("p", { class: "why" }, [...picks, _("catalog {version}", { version: agreed.catalog })].join(" · ")),
    before === 0 ? null : element("p", { class: "why" }, _("Agreed before that: {days}", { days: opening.agreed.slice(0, before).map(({ on }) => dayInWords(on)).join(" · ") })),
    besideTable(kernel.beside_today(agreed, now), visit.units),
    moved.length === 0 ? element("p", {}, _("Everything is as it was agreed."))
      : element("details", { open: true }, element("summary", {}, element("strong", {}, _("What is no longer as it was agreed"))),
        element("ul", { class: "moved-list" }, moved.map((one) => movedLine(one, visit.units)))));
}

/**
 * @param {VisitPage} page
 * @param {string} id of the visit
 * @returns {VisitPart}
 */
export function agreementPart(page, id) {
  const list = element("div", { class: "agreements" });
  return {
    node: element("section", { "aria-labelledby": `agreed-${id}` }, element("h3", { id: `agreed-${id}` }, _("What is agreed")),
      element("p", { class: "note" }, _("What is agreed is kept as it is on that day: measures, picks, figures and price. What changes later is told beside it.")), list),
    update(visit) {
      setChildren(list, visit.openings.map((opening) => element("section", { class: "agreement", "data-agreement": opening.id },
        element("h4", {}, openingName(visit, opening)), agreedCard(page, visit, opening), agreeing(page, visit, opening))));
    },
  };
}
