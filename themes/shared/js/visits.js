// The page of visits: all that this device keeps, one of them opened, and what comes from the configurator or from a file.

import { element, onFrame, setChildren, setText } from "./dom.js";
import { createBrought } from "./visitbrought.js";
import { createVisitForm, visitName } from "./visitform.js";
import { createVisitKeep } from "./visitkeep.js";
import { createVisitList } from "./visitrows.js";
import { rememberedPlace } from "./visitplace.js";
import { createVisitStore } from "./visitstore.js";
import { publicRoot } from "./publicpage.js";
import { openingCalled, openingName, today } from "./visitmodel.js";
import { _ } from "./words.js";

const VISIT = "v=";

/** One line at the foot of the screen: what was done, and the way back. */
function createOffer() {
  const words = element("p", { role: "status" });
  const back = element("button", { type: "button", class: "press quiet", onclick: takeBack }, _("Undo"));
  const close = element("button", { type: "button", class: "text-button", onclick: () => offer("", null) }, _("Close"));
  const node = element("div", { class: "foot-bar" }, element("div", { class: "undo" }, words, back, close));
  /** @type {(() => void) | null} */
  let undo = null;

  /**
   * @param {string} text
   * @param {(() => void) | null} task
   */
  function offer(text, task) {
    undo = task;
    setText(words, text);
    words.parentElement?.classList.toggle("said", text !== "");
    back.hidden = !task;
    close.hidden = text === "";
  }

  function takeBack() {
    const task = undo;
    offer(_("Taken back."), null);
    close.focus();
    task?.();
  }

  offer("", null);
  return { node, offer };
}

/**
 * What has given way where two windows have written at once, in words.
 * @param {Astragal.Visit} visit
 * @param {GivenWay} given
 */
function givenWords(visit, { path, stays, gives }) {
  const opening = path[0] === "openings" ? openingCalled(visit, path[1]) : undefined;
  const told = (/** @type {unknown} */ value) => (typeof value === "object" ? JSON.stringify(value) : String(value));
  return _("Written twice, {where}: “{stays}” stays, “{gives}” gave way.",
    { where: opening ? openingName(visit, opening) : visitName(visit), stays: told(stays), gives: told(gives) });
}

/** @param {HTMLElement} root */
function createVisitPage(root) {
  const { node: foot, offer } = createOffer();
  const keep = createVisitKeep(createVisitStore());
  const place = element("div");
  /** @type {VisitPage} */
  const page = {
    catalog: Astragal.catalog,
    home: publicRoot(),
    linkOf: Astragal.kernel.opening_link,
    examples: (root.dataset.examples ?? "").split(" ").filter(Boolean),
    scripts: (root.dataset.scripts ?? "").split(" "),
    keep,
    offer,
    show: (id) => void (location.hash = `${VISIT}${id}`),
    showAll: () => void (location.hash = ""),
    tellGiven,
  };
  const list = createVisitList(page);
  let shown = "";
  /** @type {VisitPart | null} */
  let form = null;

  /**
   * What has given way is noted in the visit itself, and so in its file.
   * @param {string} id
   * @param {GivenWay[]} given
   */
  function tellGiven(id, given) {
    const visit = keep.now(id);
    if (!visit || given.length === 0) return;
    const told = given.map((each) => givenWords(visit, each));
    keep.change(id, (draft) => void draft.revisions.push(...told.map((what) => ({ on: today(), who: "", what }))));
    offer(told.join(" "), null);
  }

  const update = onFrame(() => {
    const visit = keep.now(shown);
    if (form && visit) form.update(visit);
  });

  /** @param {string} id */
  async function showVisit(id) {
    const visit = await keep.open(id).catch(() => null);
    if (!visit) {
      page.showAll();
      offer(_("That visit is not on this device."), null);
      return;
    }
    shown = id;
    form = createVisitForm(page, id);
    form.update(visit);
    setChildren(place, [form.node]);
    const { visit: last, opening } = rememberedPlace();
    const door = place.querySelector(`[data-opening="${opening}"]`);
    if (last === id) door?.setAttribute("open", "");
    // What is in it is made at once, and not when the browser comes to tell that it is open.
    door?.dispatchEvent(new Event("toggle"));
    if (page.brought) showBrought();
    else place.querySelector("h2")?.focus();
  }

  /** What has come from the configurator is shown where it is now, rather than the top of the visit. */
  function showBrought() {
    const card = place.querySelector(`[data-proposal="${page.brought}"]`);
    page.brought = "";
    card?.scrollIntoView({ block: "start" });
    /** @type {HTMLElement | null | undefined} */ (card?.querySelector("h4"))?.focus({ preventScroll: true });
  }

  /**
   * An answer to proposals opens the visit that it is about.
   * @param {string} fragment
   */
  async function showAnswered(fragment) {
    const { held } = Astragal.kernel.read_answer(fragment);
    const visits = await keep.list().catch(() => keep.here());
    const visit = visits.find((one) => Astragal.kernel.visit_tag(one) === held.visit);
    if (visit) {
      page.answer = fragment;
      page.show(visit.id);
      return;
    }
    page.showAll();
    offer(_("This is a client’s answer, but its visit is not on this device. Open the visit where it is kept, and paste the link there."), null);
  }

  /**
   * A page that is left has no time to write: a link to another page waits until everything is on the device.
   * @param {MouseEvent} event
   */
  async function leaveWritten(event) {
    const link = /** @type {Element} */ (event.target).closest("a");
    const leaves = link?.protocol === location.protocol && link.pathname !== location.pathname;
    const opensBeside = event.button !== 0 || event.ctrlKey || event.metaKey || event.shiftKey || event.altKey;
    if (!link || !leaves || opensBeside || keep.state(shown) !== "writing") return;
    event.preventDefault();
    await keep.flush();
    location.assign(link.href);
  }

  /** @param {boolean} opened whether the reader has come from another part of the page */
  async function route(opened) {
    await keep.flush();
    const fragment = decodeURIComponent(location.hash.slice(1));
    shown = "";
    form = null;
    if (fragment.startsWith(VISIT)) {
      await showVisit(fragment.slice(VISIT.length));
      return;
    }
    if (Astragal.kernel.is_token_link(fragment, "a")) {
      await showAnswered(fragment);
      return;
    }
    const brought = /^\d/.test(fragment) ? createBrought(page, fragment) : null;
    setChildren(place, [brought?.node, list.node]);
    await Promise.all([list.update(), brought?.update()]);
    if (!opened) return;
    root.scrollIntoView({ block: "start" });
    place.querySelector("h2")?.focus({ preventScroll: true });
  }

  keep.follow((id, given) => {
    tellGiven(id, given);
    if (id === shown) update();
    else if (shown === "") void list.update();
  });
  root.replaceChildren(place, foot);
  root.addEventListener("click", (event) => void leaveWritten(event));
  window.addEventListener("hashchange", () => void route(true));
  // Whoever closes the page, or lays the phone aside, has what was typed last written too.
  window.addEventListener("pagehide", () => void keep.flush());
  document.addEventListener("visibilitychange", () => void keep.flush());
  void route(false);
}

const visitsRoot = document.getElementById("visits");
if (visitsRoot) createVisitPage(visitsRoot);
