// Towards the visit: what is sent ahead, what to bring and to photograph, and how to reach the showroom.

import { copyText, element, setChildren, setText } from "./dom.js";
import { drawingNode } from "./paint.js";
import { pictureOf } from "./picture.js";
import { activeOf } from "./state.js";
import { elevationOf } from "./table.js";
import { photosWanted } from "./visitlist.js";
import { isPublic, visitText, visitTitle } from "./visitwords.js";
import { _ } from "./words.js";

/** @typedef {{ words: string, href: string }} ReachLine */

/**
 * How to reach the showroom, as far as it says.
 * @param {Astragal.Reach} contact
 * @returns {ReachLine[]}
 */
export function reachLines({ address, telephone, mail }) {
  return [
    { words: address.join(", "), href: "" },
    { words: telephone, href: `tel:${telephone.replaceAll(/[^+0-9]/g, "")}` },
    { words: mail, href: `mailto:${mail}` },
  ].filter(({ words }) => words !== "");
}

/**
 * The opening hours; nothing where the showroom gives none.
 * @param {Astragal.Reach} contact
 */
export function hoursList({ hours }) {
  return hours.length === 0 ? null : element("dl", { class: "hours" }, hours.map(({ days, time }) => [element("dt", {}, days), element("dd", {}, time)]));
}

/** @param {App} app */
function showroomPart({ catalog }) {
  const lines = reachLines(catalog.contact);
  const hours = hoursList(catalog.contact);
  if (lines.length === 0 && !hours) return null;
  return element("div", { class: "visit-showroom" }, element("h3", {}, catalog.showroom),
    lines.map(({ words, href }) => element("p", {}, href === "" ? words : element("a", { href }, words))), hours);
}

/**
 * The device's own way to hand things on; it takes a picture along where it can.
 * @param {App} app
 */
async function shareVisit(app) {
  const state = app.state();
  const one = activeOf(state);
  const told = { title: visitTitle(app, one), text: visitText(app, state) };
  const picture = await pictureOf(drawingNode(elevationOf(app.ask, one, one.place, state.units)));
  const files = picture ? [new File([picture], "door.png", { type: "image/png" })] : [];
  const whole = { ...told, files };
  try {
    await navigator.share(files.length > 0 && navigator.canShare?.(whole) ? whole : told);
  } catch {
    // Whoever closes the device's sheet shares nothing.
  }
}

/**
 * @param {App} app
 * @returns {PagePart}
 */
export function createVisit(app) {
  const { mail } = app.catalog.contact;
  const said = element("p", { class: "note", role: "status" });
  const alone = element("p", { class: "note" }, _("This page was opened from a disk, so its link opens on this device only: the words go without it."));
  const write = element("a", { class: "press" }, mail === "" ? _("Write a mail with it") : _("Write to the showroom"));
  const share = element("button", { type: "button", class: "press quiet", onclick: () => shareVisit(app) }, _("Share with this device"));
  const copy = element("button", { type: "button", class: "press quiet", onclick: copyWords }, _("Copy the words"));
  const photos = element("ul", { class: "photo-list" });
  const node = element("section", { class: "visit-part", "aria-labelledby": "visit-title" },
    element("div", { class: "section-head" }, element("h2", { id: "visit-title" }, _("Bring this to the showroom"))),
    element("div", { class: "share-grid" },
      element("div", {}, element("h3", {}, _("Send it ahead")),
        element("p", { class: "note" }, _("Your own mail or your device sends it, once you have read it: door, covering, size and link.")), alone,
        element("p", { class: "actions" }, write, share, copy), said, showroomPart(app)),
      element("div", {}, element("h3", {}, _("Photograph and bring")),
        element("p", { class: "note" }, _("What nobody has measured yet on your door is assumed. A picture with a ruler in it settles it.")), photos)));
  share.hidden = !("share" in navigator);

  async function copyWords() {
    await copyText(visitText(app, app.state()));
    setText(said, _("The words are copied."));
  }

  return {
    node,
    update(state) {
      const one = activeOf(state);
      const letter = new URLSearchParams({ subject: visitTitle(app, one), body: visitText(app, state).replaceAll("\n", "\r\n") });
      // A mail program reads a plus sign as it stands.
      write.setAttribute("href", `mailto:${mail}?${letter.toString().replaceAll("+", "%20")}`);
      alone.hidden = isPublic(app.address());
      setText(said, "");
      setChildren(photos, photosWanted(one).map(({ words, assumed }) =>
        element("li", {}, words, assumed === "" ? null : element("span", { class: "why" }, assumed))));
    },
  };
}
