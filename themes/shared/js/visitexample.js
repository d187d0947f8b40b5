// The showroom's example visits: each lies beside the page as a script, which comes when it is opened, from a disk too.

import { runScript } from "./borrowed.js";
import { visitOfText } from "./visitfile.js";

/**
 * @param {string} address of its script
 * @returns {Promise<Astragal.ReadVisit>}
 */
export async function fetchExample(address) {
  await runScript(new URL(address, location.href).href);
  return visitOfText(Astragal.kernel.unpacked_text(Astragal.example ?? ""));
}
