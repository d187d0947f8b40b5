// The page of proposals: what a link from the showroom holds, door by door, with marks, remarks and the answer. Nothing is sent.

import { element, inSlices } from "./dom.js";
import { fits } from "./now.js";
import { readingApp } from "./onmine.js";
import { leafed } from "./leafing.js";
import { answerPart } from "./proposalanswer.js";
import { proposalLeaf } from "./proposalleaf.js";
import { inDays } from "./sheet.js";
import { familyOf, stateFrom } from "./state.js";
import { _, doorName, say } from "./words.js";

// What was marked in this tab is there again when the page is loaded anew.
const KEPT_ANSWER = "astragal-answer";

/**
 * The answer that was begun to these proposals, or a fresh one.
 * @param {Astragal.ProposalSet} held
 * @returns {Astragal.ProposalAnswer}
 */
function begunAnswer(held) {
  const fresh = Astragal.kernel.fresh_answer(held);
  const tags = (/** @type {Astragal.ProposalAnswer} */ { visit, mark, openings }) => [visit, mark, ...openings.map(({ opening }) => opening)].join();
  try {
    const { held: kept } = Astragal.kernel.read_answer(sessionStorage.getItem(KEPT_ANSWER) ?? "");
    return tags(kept) === tags(fresh) ? kept : fresh;
  } catch {
    return fresh;
  }
}

/** @param {Astragal.ProposalAnswer} answer */
function keepAnswer(answer) {
  try {
    sessionStorage.setItem(KEPT_ANSWER, Astragal.kernel.encode_answer(answer).link);
  } catch {
    // A browser that keeps nothing begins anew.
  }
}

/**
 * @param {string} room
 * @param {number} place
 */
export function roomName(room, place) {
  return room || _("Door {number}", { number: place + 1 });
}

/**
 * One door with all that is proposed for it.
 * @param {Astragal.SetOpening} opening
 * @param {number} place
 * @param {Astragal.AnsweredOpening} answered
 * @param {() => void} changed
 */
function doorPart(opening, place, answered, changed) {
  const { catalog } = Astragal;
  const { state: opened, problems } = Astragal.kernel.set_door(opening, catalog);
  const state = stateFrom(opened);
  const app = readingApp(() => state);
  const room = roomName(opening.room, place);
  const title = `door-${place}`;
  const heads = opened.configurations.filter((one) => fits(app.ask.drawn(one))).map((one) => app.ask.fit(one).size.y1);
  const names = Astragal.kernel.told_apart(opened.configurations.map((one) => familyOf(catalog, one).name)).map((told) => say(told, state.units));
  const leaves = opened.configurations.map((one, i) => proposalLeaf(app, one, {
    proposal: opening.proposals[i], title: names[i], name: `like-${place}`, liked: answered.liked === opening.proposals[i].tag, head: Math.max(...heads),
    like() {
      answered.liked = opening.proposals[i].tag;
      undo.hidden = false;
      changed();
    },
  }));
  const undo = element("button", { type: "button", class: "text-button", hidden: answered.liked === "", onclick: unlike }, _("None of these after all"));
  const remark = element("textarea", { id: `remark-${place}`, rows: 3, maxlength: Astragal.kernel.remark_most(), oninput: write });
  remark.value = answered.remark;

  function unlike() {
    answered.liked = "";
    undo.hidden = true;
    leaves.forEach((leaf) => leaf.unmark());
    changed();
    remark.focus();
  }

  function write() {
    answered.remark = Astragal.kernel.seen_text(remark.value);
    changed();
  }

  const door = opened.configurations[0]?.door;
  const node = element("section", { class: "client-door panel", "aria-labelledby": title },
    element("h2", { id: title }, room), door ? element("p", { class: "note" }, doorName(catalog, door)) : null,
    problems.map((problem) => element("p", { class: "notice" }, say(problem, state.units))),
    leaves.length === 0 ? null : leafed(_("Proposals: {room}", { room }), leaves.map((leaf) => leaf.node)),
    element("p", {}, undo),
    element("div", { class: "client-words" }, element("label", { for: remark.id }, _("Your remarks on this door")), remark));
  return { node, room, leaves, names };
}

/** @param {string} on an ISO day, or whatever a link has there */
function dayTold(on) {
  const day = new Date(`${on}T12:00`);
  return Number.isNaN(day.getTime()) ? on : inDays(day);
}

/** @param {string} why */
function nothingShown(why) {
  return element("div", { class: "prose" }, element("p", { class: "notice" }, why),
    element("p", {}, _("Proposals come as a link that the showroom sends you. Open it whole: some mail programs cut long lines.")),
    element("p", { class: "actions" }, element("a", { class: "press", href: "index.html" }, Astragal.catalog.showroom),
      element("a", { href: "try.html" }, _("Try coverings on your own door"))));
}

/** @param {Astragal.ProposalSet} held */
function proposalsNode(held) {
  const answer = begunAnswer(held);
  const doors = held.openings.map((opening, i) => doorPart(opening, i, answer.openings[i], changed));
  // A leaf's questions take their time: what is drawn already can be turned meanwhile.
  const waiting = doors.flatMap(({ leaves }) => leaves);
  inSlices(() => {
    waiting.shift()?.fill();
    return waiting.length > 0;
  }, () => true);
  const sending = answerPart(held, answer, doors, changed);

  function changed() {
    keepAnswer(answer);
    sending.update();
  }

  sending.update();
  return element("div", { class: "client-set" },
    element("div", { class: "client-letter" },
      held.client === "" ? null : element("p", {}, element("strong", {}, _("For {client}", { client: held.client }))),
      held.words === "" ? null : element("p", { class: "told-words" }, held.words),
      element("p", { class: "note" }, [Astragal.catalog.showroom, dayTold(held.on)].filter(Boolean).join(" · ")),
      element("p", { class: "note" }, _("Mark the one that you like for each door. Nothing leaves this device before you send it yourself."))),
    doors.map(({ node }) => node), sending.node);
}

/** @param {HTMLElement} root */
export function createProposals(root) {
  function show() {
    const fragment = location.hash.slice(1);
    const { held, refused } = Astragal.kernel.read_set(fragment);
    const why = fragment === "" ? _("There are no proposals in this address.") : say(refused, "mm");
    root.replaceChildren(Astragal.kernel.is_said(refused) ? nothingShown(why) : proposalsNode(held));
  }

  window.addEventListener("hashchange", show);
  show();
}
