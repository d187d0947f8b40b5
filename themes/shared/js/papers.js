// The papers there are, by the names under which they are chosen.

/** @returns {Promise<Record<string, Pages>>} */
export async function papers() {
  const [{ clientPages }, { sheetPages }, { installPages, orderPages }] = await Promise.all([
    import("./clientsheet.js"), import("./sheet.js"), import("./paperblocks.js")]);
  return { client: clientPages, workroom: sheetPages, order: orderPages, install: installPages };
}

/** What a visit agrees and prints: for the page of visits, which fetches the configurator's scripts for it. */
export function visitDesk() {
  return import("./visitdesk.js");
}

/** What a client is shown and answers: for the page of proposals. */
export function proposalDesk() {
  return import("./proposaldesk.js");
}
