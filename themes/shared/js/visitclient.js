// What a visit's client is shown, as a link that she opens, and her answer, which is taken over on a press and never unasked.

import { copyText, element, setChildren, setText } from "./dom.js";
import { handOn, mailTo } from "./handon.js";
import { canBeOpened, openedByOthers } from "./publicpage.js";
import { fieldId, foldedPart, wordsField } from "./visitfields.js";
import { dropLast, openingCalled, openingName, today } from "./visitmodel.js";
import { _, _several, say } from "./words.js";

/** @param {Astragal.Visit} visit */
function wordsToClient(visit) {
  return /** @type {Astragal.Visit & { letter?: string }} */ (visit).letter ?? "";
}

/**
 * @param {VisitPage} page
 * @param {string} id of the visit
 * @returns {VisitPart}
 */
function linkPart(page, id) {
  const { kernel } = Astragal;
  const words = wordsField(_("Your words to the client"), { rows: 3, maxlength: kernel.set_words_most() }, wordsToClient, (text) =>
    page.keep.change(id, (visit) => void Object.assign(visit, { letter: text })));
  const named = element("input", { type: "checkbox", onchange: again });
  const priced = element("input", { type: "checkbox", onchange: again });
  const place = element("textarea", { id: fieldId(), readonly: true, rows: 3, spellcheck: "false", onfocus: () => place.select() });
  const wrong = element("p", { class: "notice", role: "status" });
  const said = element("p", { class: "note", role: "status" });
  const letter = element("a", { class: "press quiet" }, _("Write a mail with it"));
  const share = element("button", { type: "button", class: "press quiet", onclick: () => handOn({ title: _("Proposals for your doors"), text: place.value }) }, _("Share with this device"));
  const copy = element("button", { type: "button", class: "press", onclick: copyLink }, _("Copy the link"));
  const ways = element("div", {}, element("div", { class: "visit-words" }, element("label", { for: place.id }, _("The link that the client opens")), place),
    element("p", { class: "actions" }, copy, letter, share), said);
  share.hidden = !("share" in navigator);

  async function copyLink() {
    await copyText(place.value);
    setText(said, _("The link is copied."));
  }

  function again() {
    const visit = page.keep.now(id);
    if (visit) update(visit);
  }

  /** @param {Astragal.Visit} visit */
  function update(visit) {
    words.update(visit);
    const wishes = { client: named.checked, prices: priced.checked, on: today(), words: wordsToClient(visit) };
    const { link, refused } = kernel.encode_set(kernel.set_of_visit(visit, wishes, page.catalog));
    const why = canBeOpened() ? say(refused, visit.units)
      : _("This page was opened from a disk and the showroom’s public address is not known, so no client could open a link. It is public_address in showroom.yaml.");
    wrong.hidden = why === "";
    setText(wrong, why);
    ways.hidden = why !== "";
    const next = openedByOthers("proposals.html", link);
    if (place.value !== next) setText(said, "");
    place.value = next;
    letter.setAttribute("href", mailTo("", _("Proposals for your doors"), [wordsToClient(visit), next].filter(Boolean).join("\n\n")));
  }

  return {
    node: element("section", {}, element("h3", {}, _("Proposals for the client")),
      element("p", { class: "note" }, _("The link holds the doors as measured, what is proposed, and your notes. Nothing is sent before you send it.")), words.node,
      element("label", { class: "tick-row" }, named, element("span", {}, _("With the client’s name"))),
      element("label", { class: "tick-row" }, priced, element("span", {}, _("With the prices that you have named"))), wrong, ways),
    update,
  };
}

/**
 * What was pasted as an answer to a visit: the link within whatever a mail holds, or a code.
 * @param {VisitPage} page
 * @param {Astragal.Visit} visit
 * @param {string} text
 * @returns {{ answer: Astragal.ProposalAnswer | null, why: string, older: boolean }}
 */
function answerGiven(page, visit, text) {
  const { kernel } = Astragal;
  const mark = kernel.set_mark(visit, page.catalog);
  const link = /a\d+~[^\s<>"]+/.exec(text);
  if (link) {
    const { held, refused } = kernel.read_answer(link[0]);
    if (kernel.is_said(refused)) return { answer: null, why: say(refused, visit.units), older: false };
    if (held.visit !== kernel.visit_tag(visit)) return { answer: null, why: _("This is the answer to another visit."), older: false };
    return { answer: held, why: "", older: held.mark !== mark };
  }
  const code = kernel.read_answer_code(text);
  if (kernel.is_said(code.refused)) return { answer: null, why: say(code.refused, visit.units), older: false };
  if (code.mark !== mark) {
    return { answer: null, why: _("This code is of another visit, or of proposals that have been changed since. Ask for the link of the answer."), older: false };
  }
  const told = kernel.set_of_visit(visit, { client: false, prices: false, on: "", words: "" }, page.catalog);
  return { answer: kernel.answer_of_code(told, code), why: "", older: false };
}

/**
 * What was there stays, and is followed by what is new.
 * @param {string} text
 * @param {string} more
 */
function followed(text, more) {
  return more === "" || text.includes(more) ? text : [text, more].filter(Boolean).join("\n");
}

/**
 * @param {Astragal.Visit} draft
 * @param {Astragal.ProposalAnswer} answer
 */
function takeOver(draft, answer) {
  const told = (/** @type {string} */ remark) => (remark === "" ? "" : _("The client: {remark}", { remark }));
  for (const row of Astragal.kernel.answered_rows(draft, answer)) {
    const opening = openingCalled(draft, row.opening);
    const liked = opening?.proposals.find((one) => one.id === row.proposal);
    if (liked) {
      opening?.proposals.forEach((one) => (one.liked = one === liked));
      liked.remarks = followed(liked.remarks, row.remark);
    } else if (opening) opening.note = followed(opening.note, told(row.remark));
    else draft.note = followed(draft.note, told(row.remark));
  }
  draft.note = followed(draft.note, told(answer.remark));
  draft.revisions.push({ on: today(), who: "", what: _("The client’s answer was taken over.") });
}

/**
 * What she says of a door, and what the visit has there so far.
 * @param {VisitPage} page
 * @param {Astragal.Visit} visit
 * @param {Astragal.AnsweredRow} row
 */
function answerLine(page, visit, row) {
  const opening = openingCalled(visit, row.opening);
  const liked = opening?.proposals.find((one) => one.id === row.proposal);
  const before = opening?.proposals.find((one) => one.liked);
  const names = opening ? Astragal.kernel.proposal_names(opening, page.catalog) : {};
  const gone = _("what she marked is no longer proposed");
  const picked = liked ? say(names[liked.id], visit.units) : row.asked ? gone : _("nothing marked");
  return element("li", {}, element("strong", {}, opening ? openingName(visit, opening) : _("A door that is no longer in this visit")), " ", picked,
    liked && before && before !== liked ? element("span", { class: "why" }, " ", _("until now marked here: {covering}", { covering: say(names[before.id], visit.units) })) : null,
    row.remark === "" ? null : element("p", { class: "told-words" }, row.remark));
}

/**
 * @param {VisitPage} page
 * @param {string} id of the visit
 * @returns {VisitPart}
 */
function answerTaking(page, id) {
  const input = element("textarea", { id: fieldId(), rows: 3, spellcheck: "false", oninput: show });
  const place = element("div", { class: "client-answered", role: "status" });
  input.value = page.answer ?? "";
  page.answer = "";

  function show() {
    const visit = page.keep.now(id);
    if (!visit || input.value.trim() === "") return setChildren(place, []);
    const { answer, why, older } = answerGiven(page, visit, input.value);
    if (!answer) return setChildren(place, [element("p", { class: "notice" }, why)]);
    const rows = Astragal.kernel.answered_rows(visit, answer);
    setChildren(place, [
      older ? element("p", { class: "notice" }, _("This answers proposals that have been changed since the link was made. What she marked is shown where it is still proposed.")) : null,
      element("ul", { class: "order-notes" }, rows.map((row) => answerLine(page, visit, row))),
      answer.remark === "" ? null : element("p", { class: "told-words" }, answer.remark),
      element("p", { class: "actions" }, element("button", { type: "button", class: "press", onclick: () => take(visit, answer) }, _("Take the answer over"))),
    ]);
  }

  /**
   * @param {Astragal.Visit} visit
   * @param {Astragal.ProposalAnswer} answer
   */
  function take(visit, answer) {
    const before = structuredClone(visit);
    page.keep.change(id, (draft) => takeOver(draft, answer));
    const after = structuredClone(page.keep.now(id) ?? before);
    input.value = "";
    setChildren(place, []);
    page.offer(_("The client’s answer is in the visit."), () => page.keep.change(id, (draft) => putBack(draft, before, after)));
  }

  return {
    node: element("section", {}, element("h3", {}, _("The client’s answer")),
      element("div", { class: "visit-words" }, element("label", { for: input.id }, _("Paste the link, the whole mail, or type the code")), input), place),
    update: () => input.value === "" || show(),
  };
}

/**
 * Puts back what an answer has changed of an entry, as far as nobody has changed it since.
 * @template {object} Entry
 * @param {Entry} draft
 * @param {Entry | undefined} before
 * @param {Entry | undefined} after
 * @param {Array<keyof Entry>} names
 */
function putPartsBack(draft, before, after, names) {
  if (!before || !after) return;
  for (const name of names) if (draft[name] === after[name]) draft[name] = before[name];
}

/**
 * Marks, remarks and notes as they were before an answer; whatever else was written meanwhile stays.
 * @param {Astragal.Visit} draft
 * @param {Astragal.Visit} before
 * @param {Astragal.Visit} after when the answer was taken over
 */
function putBack(draft, before, after) {
  putPartsBack(draft, before, after, ["note"]);
  dropLast(draft.revisions, after.revisions[after.revisions.length - 1]);
  for (const opening of draft.openings) {
    const [was, became] = [openingCalled(before, opening.id), openingCalled(after, opening.id)];
    putPartsBack(opening, was, became, ["note"]);
    for (const proposal of opening.proposals) {
      const same = (/** @type {Astragal.Proposal} */ { id }) => id === proposal.id;
      putPartsBack(proposal, was?.proposals.find(same), became?.proposals.find(same), ["liked", "remarks"]);
    }
  }
}

/**
 * @param {VisitPage} page
 * @param {string} id of the visit
 * @returns {VisitPart}
 */
export function clientPart(page, id) {
  const answered = Boolean(page.answer);
  const fold = foldedPart({ class: "desk" }, () => [linkPart(page, id), answerTaking(page, id)], ({ openings }) => {
    const count = openings.filter(({ proposals }) => proposals.some(({ liked }) => liked)).length;
    return { name: _("Proposals and the answer"), note: count === 0 ? _("Nothing is liked yet.") : _several("{count} door answered", "{count} doors answered", { count }) };
  }, () => page.keep.now(id));
  if (answered) fold.open();
  return { node: element("section", { class: "panel" }, fold.node), update: fold.update };
}
