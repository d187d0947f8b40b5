// The browser's side of the parity test: the same questions, the answers flattened the same way.

const ENGLISH = { language: "en", said: {}, decimal: ".", percent: "{share}%", plural: [1, 0, 1] };
const CRC_TABLE = Uint32Array.from({ length: 256 }, (_, n) => {
  for (let bit = 0; bit < 8; bit++) n = n & 1 ? 0xedb88320 ^ (n >>> 1) : n >>> 1;
  return n;
});

function crc32(text) {
  let crc = 0xffffffff;
  for (const byte of new TextEncoder().encode(text)) crc = CRC_TABLE[(crc ^ byte) & 255] ^ (crc >>> 8);
  return (crc ^ 0xffffffff) >>> 0;
}

function flatten(value, words, numbers) {
  if (typeof value === "number") numbers.push(value);
  else if (typeof value === "string") words.push(value);
  else if (Array.isArray(value)) {
    words.push(`[${value.length}`);
    for (const part of value) flatten(part, words, numbers);
  } else if (value !== null && typeof value === "object") {
    const names = Object.keys(value);
    words.push(`{${names.join(" ")}`);
    for (const name of names) flatten(value[name], words, numbers);
  } else words.push(String(value));
}

function base64(numbers) {
  const bytes = new Uint8Array(Float64Array.from(numbers).buffer);
  let text = "";
  for (let i = 0; i < bytes.length; i += 8192) text += String.fromCharCode(...bytes.subarray(i, i + 8192));
  return btoa(text);
}

function asked(one) {
  const { kernel, catalog } = Astragal;
  const { door, choices, place, household, units } = one;
  const family = catalog.families[one.family];
  const answer = kernel.ask(door, family, choices, household);
  const fit = kernel.hung(door, family, choices);
  const scene = kernel.scene_at(fit, place);
  const names = { family: family.name, door: door.name, place: kernel.place_words(answer.legs, place, ENGLISH) };
  const general = { units, active: 0, step: "details", needs: [], household };
  const state = { ...general, configurations: [{ door, family: family.id, choices, place, measured: [], wishes: {} }] };
  const link = kernel.encode(state, catalog);
  const told = {
    answer,
    scene,
    views: one.views.map((view) => kernel[`${view}_of`](kernel.drafted(door, { scene, answer, names }, ENGLISH, units), household)),
    moment: kernel.moment(fit, place),
    share: kernel.share_at(fit.numbers, place),
    way: [0, 0.45, 0.93, 1].map((share) => kernel.position_at(fit.numbers, share)),
    said: Object.values(answer.figures).map((figure) => kernel.say_working(figure, ENGLISH, units)),
    link,
    opened: kernel.decode(link, catalog),
  };
  if (one.thorough) {
    told.ruled_out = kernel.ruled_out(door, family, choices);
    told.matched = kernel.best_match(door, family, household, ["dark", "handle", "bending", "cleaning"]);
    told.pieces = kernel.asked_scene(fit, place);
    const { elevation_of, section_of, plan_of, sheet_of, workroom_sheet, subject } = kernel;
    const draft = kernel.drafted(door, subject(kernel.hung(door, family, choices), place, household, ENGLISH), ENGLISH, units);
    told.drawn = [elevation_of, section_of, plan_of, sheet_of, workroom_sheet].map((draw) => draw(draft));
  }
  return told;
}

// For a batch of values: what the words come to, how many numbers each has, and all the numbers.
function condensed(values) {
  const crcs = [];
  const counts = [];
  const numbers = [];
  for (const value of values) {
    const words = [];
    const before = numbers.length;
    flatten(value, words, numbers);
    crcs.push(crc32(words.join("\n")));
    counts.push(numbers.length - before);
  }
  return [crcs, counts, base64(numbers)];
}

function askedAll(text) {
  return condensed(JSON.parse(text).map(asked));
}

function openedAll(links) {
  return condensed(links.map((link) => Astragal.kernel.decode(link, Astragal.catalog)));
}

// The links of states, and the links of what those open to.
function linkedAll(text) {
  const { kernel, catalog } = Astragal;
  const links = JSON.parse(text).map((state) => kernel.encode(state, catalog));
  return [links, links.map((link) => kernel.encode(kernel.decode(link, catalog).state, catalog))];
}
