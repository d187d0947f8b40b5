// The order as a table for a sheet of cells: the kernel's, as the command line writes it.

import { tongue } from "./words.js";

/** @param {string} text */
function quotedCell(text) {
  return /[",\r\n]/.test(text) ? `"${text.replaceAll("\"", "\"\"")}"` : text;
}

/**
 * @param {Astragal.Making[]} made
 * @param {string} units
 */
export function orderCsv(made, units) {
  const table = Astragal.kernel.order_table(made, tongue(), units);
  return `${table.map((line) => line.map(quotedCell).join(",")).join("\n")}\n`;
}
