// The answer to proposals: what is marked, in words, and the ways on which a client hands it on herself.

import { copyText, element, setChildren, setText } from "./dom.js";
import { handOn, mailTo } from "./handon.js";
import { canBeOpened, openedByOthers } from "./publicpage.js";
import { _, say } from "./words.js";

/** @typedef {{ room: string, names: string[] }} AnsweredDoor */

/**
 * What is marked and said, door by door.
 * @param {Astragal.ProposalSet} held
 * @param {Astragal.ProposalAnswer} answer
 * @param {AnsweredDoor[]} doors
 */
function answeredLines(held, answer, doors) {
  return doors.map(({ room, names }, i) => {
    const at = held.openings[i].proposals.findIndex(({ tag }) => tag === answer.openings[i].liked);
    return { room, liked: at < 0 ? _("nothing marked") : names[at] ?? "", remark: answer.openings[i].remark };
  });
}

/**
 * @param {Astragal.ProposalSet} held
 * @param {Astragal.ProposalAnswer} answer
 * @param {AnsweredDoor[]} doors
 * @param {() => void} changed
 */
export function answerPart(held, answer, doors, changed) {
  const { kernel, catalog } = Astragal;
  const { mail } = catalog.contact;
  const list = element("dl", { class: "measures answered" });
  const remark = element("textarea", { id: "remark-all", rows: 3, maxlength: kernel.remark_most(), oninput: write });
  remark.value = answer.remark;
  const letter = element("a", { class: "press" }, mail === "" ? _("Write a mail with it") : _("Write to the showroom"));
  const share = element("button", { type: "button", class: "press quiet", onclick: () => handOn({ title: title(), text: words() }) }, _("Share with this device"));
  const copy = element("button", { type: "button", class: "press quiet", onclick: copyLink }, _("Copy the link of the answer"));
  const said = element("p", { class: "note", role: "status" });
  const wrong = element("p", { class: "notice", role: "alert", hidden: true });
  const code = element("output", { class: "answer-code" });
  const ways = element("div", {}, element("p", { class: "actions" }, letter, share, copy), said,
    element("p", {}, _("Or read this code out on the telephone; it holds your marks, but not your remarks."), " "), element("p", {}, code));
  share.hidden = !("share" in navigator);

  function write() {
    answer.remark = kernel.seen_text(remark.value);
    changed();
  }

  const title = () => _("Our answer to the proposals of {showroom}", { showroom: catalog.showroom });
  // Where nobody else can open a link, its own letters can still be copied onto the page of visits.
  const link = () => {
    const fragment = kernel.encode_answer(answer).link;
    return canBeOpened() ? openedByOthers("visits.html", fragment) : fragment;
  };
  const words = () => [
    title(), ...answeredLines(held, answer, doors).map(({ room, liked, remark: own }) => [_("{room}: {liked}", { room, liked }), own].filter(Boolean).join("\n")),
    ...(answer.remark === "" ? [] : [answer.remark]), link(),
  ].join("\n\n");

  async function copyLink() {
    await copyText(link());
    setText(said, _("The link of your answer is copied."));
  }

  return {
    node: element("section", { class: "panel client-answer", "aria-labelledby": "your-answer" }, element("h2", { id: "your-answer" }, _("Your answer")), list,
      element("div", { class: "client-words" }, element("label", { for: remark.id }, _("Anything else")), remark), wrong, ways),
    update() {
      const { refused } = kernel.encode_answer(answer);
      wrong.hidden = !kernel.is_said(refused);
      ways.hidden = !wrong.hidden;
      setText(wrong, say(refused, "mm"));
      setChildren(list, answeredLines(held, answer, doors).map(({ room, liked }) => element("div", {}, element("dt", {}, room), element("dd", {}, liked))));
      setText(said, "");
      setText(code, kernel.spaced_code(kernel.answer_code(held, answer)));
      if (wrong.hidden) letter.setAttribute("href", mailTo(mail, title(), words()));
    },
  };
}
