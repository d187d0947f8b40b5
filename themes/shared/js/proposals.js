// The page of proposals. What shows them works with the configurator's scripts, which have the drawings and all figures.

import { configuratorDesks } from "./borrowed.js";

/** @param {HTMLElement} root what it says meanwhile, and where nothing can be fetched, stands in the page */
async function openProposals(root) {
  const [wait, failed] = root.querySelectorAll("p");
  wait.hidden = false;
  /** @type {{ createProposals(root: HTMLElement): void } | null} */
  const desk = await configuratorDesks().then((desks) => desks.proposalDesk()).catch(() => null);
  if (desk) return desk.createProposals(root);
  wait.hidden = true;
  failed.hidden = false;
}

const proposalsRoot = document.getElementById("proposals");
if (proposalsRoot) void openProposals(proposalsRoot);
