// Lengths as people write them. Millimetres are kept exact; what was typed is kept beside them.

const MM_PER_INCH = 25.4;
const FRACTIONS = { "½": "1/2", "¼": "1/4", "¾": "3/4", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8" };
const NUMBER = String.raw`\d+(?:\.\d+)?|\.\d+`;
const METRIC = new RegExp(`^(${NUMBER})\\s*(mm|cm|m)$`);
const IMPERIAL = new RegExp(`^(?:(${NUMBER})\\s*')?\\s*-?\\s*(?:(${NUMBER})?(?:[\\s-]*(\\d+)\\s*/\\s*(\\d+))?\\s*"?)$`);
const LONE_FRACTION = /^(\d+)\s*\/\s*(\d+)\s*"?$/;

function plainSpelling(text) {
  let plain = text.trim().toLowerCase();
  for (const [sign, spelled] of Object.entries(FRACTIONS)) plain = plain.replaceAll(sign, ` ${spelled}`);
  return plain
    .replace(/[′’‘]/g, "'")
    .replace(/[″”“]|''/g, '"')
    .replace(/,/g, ".")
    .replace(/\s*(?:feet|foot|ft)\.?/g, "'")
    .replace(/\s*(?:inches|inch|ins|in)\.?/g, '"')
    .replace(/\s+/g, " ")
    .trim();
}

function inchesOf(plain) {
  const lone = LONE_FRACTION.exec(plain);
  if (lone) return Number(lone[2]) === 0 ? null : Number(lone[1]) / Number(lone[2]);
  const parts = IMPERIAL.exec(plain);
  if (!parts || (parts[1] === undefined && parts[2] === undefined)) return null;
  const fraction = parts[3] === undefined ? 0 : Number(parts[3]) / Number(parts[4]);
  const inches = Number(parts[2] ?? 0) + fraction;
  // No tape shows 22 5/4, nor 6 feet 13 inches.
  if (fraction >= 1 || (parts[1] !== undefined && inches >= 12)) return null;
  return Number(parts[1] ?? 0) * 12 + inches;
}

// Returns millimetres, or null where the text is not a length. A bare number is in the units shown.
function parseLength(text, units) {
  const plain = plainSpelling(text);
  if (plain === "") return null;
  if (units === "mm" && new RegExp(`^(?:${NUMBER})$`).test(plain)) return Number(plain);
  const metric = METRIC.exec(plain);
  if (metric) return Number(metric[1]) * { mm: 1, cm: 10, m: 1000 }[metric[2]];
  const inches = inchesOf(plain);
  return inches === null ? null : inches * MM_PER_INCH;
}

function trimmed(value, digits) {
  return String(Number(value.toFixed(digits)));
}

function fractionOf(inches) {
  const sixteenths = Math.round(inches * 16);
  if (Math.abs(sixteenths / 16 - inches) > 1e-6) return null;
  const whole = Math.floor(sixteenths / 16);
  let top = sixteenths % 16;
  let bottom = 16;
  while (top > 0 && top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  if (top === 0) return String(whole);
  return whole === 0 ? `${top}/${bottom}` : `${whole} ${top}/${bottom}`;
}

// The text of a field: never rounded so far that reading it back would move the drawing.
function writeLength(mm, units) {
  if (units === "mm") return trimmed(mm, 2);
  const inches = mm / MM_PER_INCH;
  return fractionOf(inches) ?? trimmed(inches, 3);
}
