// Pass it on: the address holds everything. Nothing is sent.

import { copyText, element, setChildren, setText } from "./dom.js";
import { radioGroup } from "./radio.js";
import { _ } from "./words.js";

/**
 * @param {App} app
 * @returns {PagePart}
 */
export function createTaking(app) {
  const address = element("textarea", { id: "share-address", readonly: true, rows: "4", spellcheck: "false", onfocus: () => address.select() });
  const said = element("p", { class: "note", role: "status" });
  const code = element("div", { class: "code" });
  const codeButton = element("button", { type: "button", class: "press quiet", "aria-expanded": "false", onclick: () => showCode(Boolean(code.hidden)) }, _("Show as a code to scan"));
  const copy = element("button", { type: "button", class: "press", onclick: copyAddress }, _("Copy the link"));
  const visit = element("a", { class: "press quiet" }, _("Put it to a visit"));
  const sheet = radioGroup("paper", _("Which sheet"),
    [["client", _("For me, one page")], ["workroom", _("For workroom and installer")],
      ["order", _("Order to the workroom")], ["install", _("Installer's sheet")]], app.paper.choose);
  const print = element("button", { type: "button", class: "press quiet", onclick: () => app.print() }, _("Print the sheet"));
  const node = element("section", { class: "share", "aria-labelledby": "share-title" },
    element("div", { class: "section-head" }, element("h2", { id: "share-title" }, _("Take it with you"))),
    element("div", { class: "share-grid" },
      element("div", {}, element("h3", {}, _("The link")),
        element("label", { for: address.id, class: "note" }, _("It holds the door, the covering and the position. Nothing is sent to anyone.")),
        address, element("p", { class: "actions" }, copy, codeButton), said, code),
      element("div", {}, element("h3", {}, _("On paper")),
        element("p", { class: "note" }, _("Drawn to scale, on A4 or Letter. Print at 100%, without fitting to the page.")),
        sheet.node, element("p", { class: "actions" }, print)),
      element("div", {}, element("h3", {}, _("For a whole house")),
        element("p", { class: "note" }, _("A visit keeps several doors with their readings and proposals, on this device.")),
        element("p", { class: "actions" }, visit))));
  code.hidden = true;

  /** @param {boolean} wanted */
  function showCode(wanted) {
    code.hidden = !wanted;
    codeButton.setAttribute("aria-expanded", String(wanted));
    setText(codeButton, wanted ? _("Hide the code") : _("Show as a code to scan"));
    if (!wanted) return;
    app.fetched(import("./qr.js"), ({ qrDrawing }) => {
      const drawn = qrDrawing(address.value, _("A code that holds this link"));
      setChildren(code, [drawn ?? element("p", { class: "note" }, _("The link is too long for a code. Copy it instead."))]);
    });
  }

  async function copyAddress() {
    await copyText(address.value);
    setText(said, _("The link is copied."));
  }

  return {
    node,
    update() {
      sheet.show(app.paper.kind());
      const next = app.address();
      visit.setAttribute("href", `visits.html#${next.split("#")[1]}`);
      if (address.value === next) return;
      address.value = next;
      setText(said, "");
      if (!code.hidden) showCode(true);
    },
  };
}
