// The ways on which a reader hands words on herself: her own mail, her device's own sheet.

/**
 * The address that opens a mail to be sent.
 * @param {string} to empty where she says to whom
 * @param {string} subject
 * @param {string} body lines end as text ends them
 */
export function mailTo(to, subject, body) {
  const letter = new URLSearchParams({ subject, body: body.replaceAll("\n", "\r\n") });
  // A mail program reads a plus sign as it stands.
  return `mailto:${to}?${letter.toString().replaceAll("+", "%20")}`;
}

/**
 * Opens the device's own sheet.
 * @param {ShareData} told
 */
export async function handOn(told) {
  try {
    await navigator.share(told);
  } catch {
    // Whoever closes the device's sheet shares nothing.
  }
}
