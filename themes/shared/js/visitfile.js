// A visit as a file: the same visit is the same text, and what this page knows nothing of goes along.

// Bytes: what is larger is not even read.
const FILE_MOST = 8_000_000;

/** @param {Astragal.Visit} visit */
export function visitFileText(visit) {
  return `${JSON.stringify(visit, null, 2)}\n`;
}

/** @param {Astragal.Visit} visit */
export function visitFileName({ client, on }) {
  const words = `${client} ${on}`.normalize("NFC").replaceAll(/[^\p{L}\p{N}]+/gu, "-").replaceAll(/^-+|-+$/g, "").toLowerCase();
  return `${words.slice(0, 60) || "visit"}.visit.json`;
}

/**
 * Hands a visit over as a file.
 * @param {Astragal.Visit} visit
 */
export function saveVisitFile(visit) {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([visitFileText(visit)], { type: "application/json" }));
  link.download = visitFileName(visit);
  link.click();
  // The browser has taken it over by the next task.
  setTimeout(() => URL.revokeObjectURL(link.href), 1000);
}

/**
 * Of which kind a parsed value is, as the kernel's reader asks it.
 * @param {unknown} value
 */
function kindOf(value) {
  if (Array.isArray(value)) return "list";
  if (typeof value === "object") return value === null ? "nothing" : "entry";
  return /** @type {Record<string, string>} */ ({ string: "text", number: "number", boolean: "flag" })[typeof value] ?? "nothing";
}

/**
 * @param {string} text
 * @returns {unknown} nothing where it is no JSON
 */
function parsedFile(text) {
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ""));
  } catch {
    return null;
  }
}

/**
 * The visit that a file holds, or what is wrong with it; whatever the file.
 * @param {Blob} file
 * @returns {Promise<Astragal.ReadVisit>}
 */
export async function visitOfFile(file) {
  return visitOfText(file.size > FILE_MOST ? "" : await file.text());
}

/**
 * @param {string} text of a file
 * @returns {Astragal.ReadVisit}
 */
export function visitOfText(text) {
  return Astragal.kernel.read_visit(parsedFile(text), kindOf);
}
