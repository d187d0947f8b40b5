// What is proposed for an opening: each covering with its picks, a note, a price by hand, and the way to and from the configurator.

import { element, setChildren, setText } from "./dom.js";
import { leafWords } from "./leafform.js";
import { wordsField } from "./visitfields.js";
import { freshId, openingCalled } from "./visitmodel.js";
import { rememberPlace } from "./visitplace.js";
import { capital } from "./text.js";
import { _, say } from "./words.js";

/**
 * @param {Astragal.PageCatalog} catalog
 * @param {Astragal.Proposal} proposal
 */
export function coveringName({ families }, { family }) {
  return families[family]?.name ?? family;
}

/**
 * @param {Astragal.PageCatalog} catalog
 * @param {Astragal.Proposal} proposal
 */
function picksInWords({ families }, { family, choices }) {
  return (families[family]?.choices ?? []).map((choice) => {
    const picked = choice.options.find((option) => option.id === choices[choice.id]) ?? choice.options[0];
    return _("{choice}: {option}", { choice: capital(choice.name), option: picked.name });
  });
}

/**
 * A covering as the configurator's link holds it, as a proposal.
 * @param {Astragal.Configuration} one
 * @returns {Astragal.Proposal}
 */
export function proposalOf({ family, choices, wishes, place }) {
  return { id: freshId(), family, choices, wishes, leaves: [], place, note: "", price: "", liked: false, remarks: "" };
}

/**
 * What opens in the configurator: the opening as it has been measured, with some of its proposals.
 * @param {VisitPage} page
 * @param {Astragal.Visit} visit
 * @param {Astragal.Opening} opening
 * @param {Astragal.Proposal[]} proposals
 */
function configuratorLink(page, visit, opening, proposals) {
  return `try.html#${Astragal.kernel.opening_link(visit, opening, proposals, page.catalog)}`;
}

/**
 * A decimal number as it is kept: digits and a point.
 * @param {string} text
 */
export function priceOf(text) {
  const plain = text.replaceAll(/[\s'’]/g, "").replace(/,(?=\d{1,2}$)/, ".").replaceAll(",", "");
  return /^\d{1,9}(\.\d{1,2})?$/.test(plain) ? plain : "";
}

/**
 * On which leaves of its opening a proposal goes, where that is to be chosen.
 * @param {VisitPage} page
 * @param {string} id of the visit
 * @param {string} at of the opening
 * @param {(visit: Astragal.Visit) => Astragal.Proposal | undefined} find
 * @param {(changes: Partial<Astragal.Proposal>) => void} change
 * @returns {VisitPart}
 */
function leavesPick(page, id, at, find, change) {
  const { kernel } = Astragal;
  const rows = element("div", { class: "leaf-ticks" });
  const node = element("fieldset", { class: "proposal-leaves" }, element("legend", {}, _("It goes on")), rows);
  /** @type {Map<string, HTMLInputElement>} */
  let ticks = new Map();

  function write() {
    const leaves = [...ticks].filter(([, tick]) => tick.checked).map(([leaf]) => leaf);
    if (leaves.length > 0) change({ leaves });
    const visit = page.keep.now(id);
    if (visit) update(visit);
  }

  /** @param {string[]} there */
  function build(there) {
    if (there.join() === [...ticks.keys()].join()) return;
    ticks = new Map(there.map((leaf) => [leaf, element("input", { type: "checkbox", onchange: write })]));
    setChildren(rows, [...ticks].map(([leaf, tick]) => element("label", { class: "tick-row" }, tick, element("span", {}, leafWords(leaf)))));
  }

  /** @param {Astragal.Visit} visit */
  function update(visit) {
    const opening = openingCalled(visit, at);
    const proposal = find(visit);
    if (!opening || !proposal) return;
    const there = kernel.leaves_to_choose(opening, proposal, page.catalog);
    const chosen = kernel.leaves_chosen(opening, proposal, page.catalog);
    node.hidden = there.length === 0;
    build(there);
    ticks.forEach((tick, leaf) => void (tick.checked = chosen.includes(leaf)));
  }

  return { node, update };
}

/**
 * @param {VisitPage} page
 * @param {string} id of the visit
 * @param {string} at of the opening
 * @param {string} which of the proposals
 */
function proposalCard(page, id, at, which) {
  const find = (/** @type {Astragal.Visit} */ visit) => openingCalled(visit, at)?.proposals.find((one) => one.id === which);
  const change = (/** @type {Partial<Astragal.Proposal>} */ changes) =>
    page.keep.change(id, (visit) => Object.assign(find(visit) ?? {}, changes));
  const name = element("h4", { tabindex: "-1" });
  const picks = element("p", { class: "why" });
  const leaves = leavesPick(page, id, at, find, change);
  const note = wordsField(_("Your note to it"), { rows: 2 }, (visit) => find(visit)?.note ?? "", (text) => change({ note: text }));
  const price = wordsField(_("Price"), { inputmode: "decimal" }, (visit) => find(visit)?.price ?? "", (text) => {
    wrong.hidden = text.trim() === "" || priceOf(text) !== "";
    change({ price: priceOf(text) });
  });
  const wrong = element("p", { class: "field-note", role: "status", hidden: true }, _("Write the price in digits, such as 1250 or 1250.50; other words are not kept."));
  const liked = element("input", { type: "checkbox", onchange: () => change({ liked: liked.checked }) });
  const remarks = wordsField(_("What the client says to it"), { rows: 2 }, (visit) => find(visit)?.remarks ?? "", (text) => change({ remarks: text }));
  const open = element("a", { class: "press quiet", onclick: () => rememberPlace(id, at, which) }, _("Open in the configurator"));
  const node = element("li", { class: "proposal", "data-proposal": which }, name, picks,
    leaves.node, element("div", { class: "visit-pair" }, note.node, element("div", {}, price.node, wrong)),
    element("label", { class: "tick-row" }, liked, element("span", {}, _("The client likes this one"))), remarks.node,
    element("p", { class: "actions" }, open, element("button", { type: "button", class: "text-button", onclick: remove }, _("Take it out"))));

  function remove() {
    const visit = page.keep.now(id);
    const proposal = visit && find(visit);
    if (!visit || !proposal) return;
    const place = openingCalled(visit, at)?.proposals.indexOf(proposal) ?? 0;
    page.keep.change(id, (draft) => {
      const opening = openingCalled(draft, at);
      if (opening) opening.proposals = opening.proposals.filter((one) => one.id !== which);
    });
    page.offer(_("{covering} is no longer proposed.", { covering: coveringName(page.catalog, proposal) }), () => page.keep.change(id, (draft) => {
      if (!find(draft)) openingCalled(draft, at)?.proposals.splice(place, 0, proposal);
    }));
  }

  return {
    node,
    update(/** @type {Astragal.Visit} */ visit) {
      const opening = openingCalled(visit, at);
      const proposal = find(visit);
      if (!opening || !proposal) return;
      setText(name, say(Astragal.kernel.proposal_names(opening, page.catalog)[which], visit.units));
      setText(picks, picksInWords(page.catalog, proposal).join(" · "));
      [leaves, note, price, remarks].forEach((part) => part.update(visit));
      liked.checked = proposal.liked;
      open.setAttribute("href", configuratorLink(page, visit, opening, [proposal]));
    },
  };
}

/**
 * @param {VisitPage} page
 * @param {string} id of the visit
 * @param {string} at of the opening
 * @returns {VisitPart}
 */
export function proposalList(page, id, at) {
  const list = element("ol", { class: "proposals" });
  const choose = element("a", { class: "press", onclick: () => rememberPlace(id, at) }, _("Choose a covering for this door"));
  const beside = element("a", { class: "press quiet", onclick: () => rememberPlace(id, at) }, _("Compare the proposals"));
  /** @type {Map<string, ReturnType<typeof proposalCard>>} */
  let cards = new Map();
  return {
    node: element("section", { class: "proposals-part" }, element("h3", {}, _("Proposals")),
      element("p", { class: "note" }, _("The configurator opens with this door as measured. Its last step, “Take along”, puts what you have chosen here.")),
      list, element("p", { class: "actions" }, choose, beside)),
    update(visit) {
      const opening = openingCalled(visit, at);
      if (!opening) return;
      const wanted = opening.proposals.map((proposal) => proposal.id);
      if (wanted.join() !== [...cards.keys()].join()) {
        cards = new Map(wanted.map((which) => [which, cards.get(which) ?? proposalCard(page, id, at, which)]));
        setChildren(list, [...cards.values()].map((card) => card.node));
      }
      cards.forEach((card) => card.update(visit));
      choose.setAttribute("href", configuratorLink(page, visit, opening, []));
      beside.hidden = wanted.length < 2;
      if (!beside.hidden) beside.setAttribute("href", configuratorLink(page, visit, opening, opening.proposals));
    },
  };
}
