// The order as a table for a sheet of cells: one line a piece, lengths in millimeters, as the command line writes it.

import { say } from "./words.js";

// What a sheet of cells takes for a formula where a text begins with it.
const FORMULA_SIGNS = ["=", "+", "-", "@", "\t", "\r"];

/** @param {string} text */
function quotedCell(text) {
  return /[",\r\n]/.test(text) ? `"${text.replaceAll("\"", "\"\"")}"` : text;
}

/**
 * A fact as a cell: a number as such, else its words.
 * @param {Astragal.Fact} told
 * @param {string} units
 */
function factCell({ value }, units) {
  const [[number, unit], ...more] = [...Object.values(value.terms), ["", "text"]];
  if (value.text === "{value}" && more.length === 1 && unit !== "name" && unit !== "text") {
    const whole = String(Math.round(Number(number) * 1000) / 1000);
    return unit === "count" || whole.includes(".") ? whole : `${whole}.0`;
  }
  const text = say(value, units);
  return FORMULA_SIGNS.includes(text.charAt(0)) ? `'${text}` : text;
}

/**
 * @param {Astragal.Making[]} made
 * @param {string} units
 */
export function orderCsv(made, units) {
  const pieces = made.map((making) => new Map(Astragal.kernel.all_facts(making).map((told) => [told.id, factCell(told, units)])));
  const columns = [...new Set(pieces.flatMap((piece) => [...piece.keys()]))];
  const lines = [columns, ...pieces.map((piece) => columns.map((column) => piece.get(column) ?? ""))];
  return `${lines.map((line) => line.map(quotedCell).join(",")).join("\n")}\n`;
}
