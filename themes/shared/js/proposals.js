// The page of proposals. What shows them works with the configurator's scripts, which have the drawings and all figures.

import { configuratorDesks } from "./borrowed.js";
import { element, setText } from "./dom.js";
import { _ } from "./words.js";

/** @param {HTMLElement} root */
async function openProposals(root) {
  const wait = element("p", { class: "note", role: "status" }, _("The drawings and figures are being fetched…"));
  root.replaceChildren(wait);
  /** @type {{ createProposals(root: HTMLElement): void } | null} */
  const desk = await configuratorDesks().then((desks) => desks.proposalDesk()).catch(() => null);
  if (desk) desk.createProposals(root);
  else setText(wait, _("The drawings and figures could not be fetched. Load the page again when there is a signal."));
}

const proposalsRoot = document.getElementById("proposals");
if (proposalsRoot) void openProposals(proposalsRoot);
