// What was chosen in the configurator comes to a visit: to the door that it was opened for, to another, or to a new one.

import { element, setChildren, setText } from "./dom.js";
import { coveringName, proposalOf } from "./proposalform.js";
import { visitName } from "./visitform.js";
import { freshOpening, freshVisit, leafCalled, openingCalled, openingName, putReading, today } from "./visitmodel.js";
import { rememberedPlace, rememberPlace } from "./visitplace.js";
import { listed } from "./text.js";
import { _, say, tongue } from "./words.js";

const NEW = "new";

/**
 * A door of the configurator as an opening: what was measured on it is read here too.
 * @param {VisitPage} page
 * @param {Astragal.Configuration} one
 * @param {string} units
 */
function openingOf(page, { door, measured }, units) {
  const opening = freshOpening(page.catalog, door.id);
  const leaf = leafCalled(opening, "active");
  if (!leaf) return opening;
  leaf.words = { layout: door.layout, swing: door.swing, hinge_side: door.hinge_side };
  leaf.handle = door.handle.id;
  const known = new Map(Astragal.kernel.asked_of_leaf(door, "active").map((field) => [field.id, field]));
  for (const id of measured.filter((name) => known.has(name))) {
    const mm = id.startsWith("handle.") ? /** @type {any} */ (door.handle)[id.slice(7)] : /** @type {any} */ (door)[id];
    const typed = known.get(id)?.unit === "count" ? String(mm) : Astragal.kernel.write_length(mm, tongue(), units);
    putReading(leaf, { field: id, spot: Astragal.kernel.spots_of(id)[0], typed, mm, how: "measured", who: "", on: today() });
  }
  return opening;
}

/**
 * @param {VisitPage} page
 * @param {string} fragment the configurator's link
 */
export function createBrought(page, fragment) {
  const opened = Astragal.kernel.read_link(fragment, page.catalog);
  const { configurations, units } = opened.state;
  const names = [...new Set(configurations.map((one) => page.catalog.families[one.family].name))];
  const select = element("select", { id: "brought-to", onchange: () => void offerPlace() });
  const put = element("button", { type: "button", class: "press", onclick: putThere }, _("Put it there"));
  const instead = element("button", { type: "button", class: "press quiet", hidden: true, onclick: putInPlace });
  const what = element("p", {}, opened.problems.length > 0 ? opened.problems.map((problem) => say(problem, units)).join(" ")
    : _("From the configurator: {coverings}.", { coverings: listed(names) }));
  const choice = element("div", { class: "brought-choice" },
    element("div", { class: "visit-words" }, element("label", { for: select.id }, _("It is proposed for")), select), put, instead);
  const node = element("section", { class: "brought notice", "aria-label": _("From the configurator") }, what, choice);
  choice.hidden = opened.problems.length > 0;

  /** @param {Astragal.Visit} visit */
  function optionsOf(visit) {
    return element("optgroup", { label: visitName(visit) },
      visit.openings.map((opening) => element("option", { value: `${visit.id} ${opening.id}` }, openingName(visit, opening))),
      element("option", { value: `${visit.id} ${NEW}` }, _("A new door in this visit")));
  }

  async function putThere() {
    const [to, at] = select.value.split(" ");
    if (to === NEW) {
      const visit = freshVisit(page.catalog);
      await page.keep.begin(visit);
      add({ visit: visit.id, at: NEW });
    } else if (await page.keep.open(to)) add({ visit: to, at });
  }

  /** What was opened from a proposal may take that one's place, where it is put to the same door. */
  async function offerPlace() {
    const { visit: to, opening: at, proposal } = rememberedPlace();
    const here = select.value === `${to} ${at}` && proposal !== "" && configurations.length === 1;
    const visit = here ? await page.keep.open(to).catch(() => null) : null;
    const opening = visit && openingCalled(visit, at);
    const name = opening && Astragal.kernel.proposal_names(opening, page.catalog)[proposal];
    instead.hidden = !name;
    setText(instead, name ? _("Put it in place of {covering}", { covering: say(name, units) }) : "");
  }

  /** Note, price and answer stay: they are about the same place. */
  function putInPlace() {
    const { visit: to, opening: at, proposal } = rememberedPlace();
    const find = (/** @type {Astragal.Visit} */ visit) => openingCalled(visit, at)?.proposals.find((one) => one.id === proposal);
    const before = structuredClone(page.keep.now(to));
    const { family, choices, wishes, place } = configurations[0];
    page.keep.change(to, (draft) => void Object.assign(find(draft) ?? {}, { family, choices, wishes, place }));
    page.brought = proposal;
    page.show(to);
    page.offer(_("{coverings} put to the visit.", { coverings: listed(names) }), () => {
      const was = before && find(before);
      if (was) page.keep.change(to, (draft) => void Object.assign(find(draft) ?? {}, { family: was.family, choices: was.choices, wishes: was.wishes, place: was.place }));
    });
  }

  /** @param {{ visit: string, at: string }} place */
  function add({ visit: to, at }) {
    const fresh = openingOf(page, configurations[opened.state.active], units);
    page.keep.change(to, (draft) => {
      const known = openingCalled(draft, at);
      const opening = known ?? fresh;
      if (!known) draft.openings.push(opening);
      opening.proposals.push(...configurations.map(proposalOf));
      page.brought = opening.proposals[opening.proposals.length - configurations.length].id;
      rememberPlace(draft.id, opening.id);
    });
    page.show(to);
    page.offer(_("{coverings} put to the visit.", { coverings: listed(names) }), null);
  }

  return {
    node,
    async update() {
      const visits = await page.keep.list().catch(() => page.keep.here());
      const { visit, opening } = rememberedPlace();
      setChildren(select, [...visits.map(optionsOf), element("option", { value: `${NEW} ${NEW}` }, _("A new visit"))]);
      const wanted = `${visit} ${opening}`;
      if ([...select.options].some(({ value }) => value === wanted)) select.value = wanted;
      await offerPlace();
    },
  };
}
