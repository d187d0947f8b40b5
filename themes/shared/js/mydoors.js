// My doors: those that this device keeps, under names of my own. A name goes into no link.

import { element, setChildren, setText } from "./dom.js";
import { isRead, keptAs, keptConfiguration, keptName } from "./keep.js";
import { activeOf } from "./state.js";
import { _, doorName } from "./words.js";

/**
 * @param {Keeping} kept
 * @param {string} id
 */
function doorOf(kept, id) {
  return kept.doors.find((one) => one.id === id);
}

/**
 * What may be done with kept doors; whatever takes something away can be taken back.
 * @param {App} app
 */
function createDoing(app) {
  const { kept } = Astragal;

  /** @param {boolean} done */
  const told = (done) => {
    if (!done) app.undo.refused();
    return done;
  };

  return {
    /** @param {string} name */
    keep(name) {
      const link = app.linkOf(activeOf(app.state()));
      return told(kept.change((now) => {
        const id = String(1 + Math.max(0, ...now.doors.map((one) => Number(one.id))));
        now.doors.push({ id, name, link });
        now.mine = id;
      }));
    },

    /** @param {KeptDoor} door */
    renew(door) {
      const put = (/** @type {string} */ link) => told(kept.change((now) => {
        const found = doorOf(now, door.id);
        if (found) found.link = link;
      }));
      if (!put(app.linkOf(activeOf(app.state())))) return;
      app.undo.offer(_("{door} is kept as it is measured now.", { door: keptName(door) }), () => put(door.link));
    },

    /**
     * @param {string} id
     * @param {string} name
     */
    rename: (id, name) => told(kept.change((now) => {
      const door = doorOf(now, id);
      if (door) door.name = name;
    })),

    /** @param {KeptDoor} door */
    forget(door) {
      const { mine, doors } = kept.read();
      const at = doors.findIndex((one) => one.id === door.id);
      const done = kept.change((now) => {
        now.doors = now.doors.filter((one) => one.id !== door.id);
      });
      if (!told(done)) return;
      app.undo.offer(_("{door} is no longer kept.", { door: keptName(door) }), () => told(kept.change((now) => {
        if (!doorOf(now, door.id)) now.doors.splice(at, 0, door);
        now.mine = mine;
      })));
    },

    /** @param {KeptDoor} door */
    open(door) {
      app.takeDoor(keptConfiguration(door.link), keptName(door));
      told(kept.change((now) => {
        now.mine = door.id;
      }));
    },
  };
}

/** @typedef {ReturnType<typeof createDoing>} Doing */

/**
 * @param {string} label
 * @param {string} words
 * @param {(name: string) => void} done
 */
function nameForm(label, words, done) {
  const input = element("input", { type: "text", maxlength: Astragal.kept.nameMost, autocomplete: "off", spellcheck: "false" });
  const form = element("form", {
    class: "name-form",
    onsubmit(/** @type {Event} */ event) {
      event.preventDefault();
      done(input.value.trim());
    },
  }, element("label", {}, element("span", {}, label), input), element("button", { type: "submit", class: "press quiet" }, words));
  return { form, input };
}

/**
 * A kept door: it is opened, named anew or given up.
 * @param {App} app
 * @param {Doing} doing
 * @param {KeptDoor} door
 * @param {{ mine: boolean, here: boolean }} how whether it goes along, and whether it is the one that is measured here
 */
function doorRow(app, doing, door, { mine, here }) {
  const name = keptName(door);
  const reads = isRead(door.link);
  const what = reads ? doorName(app.catalog, keptConfiguration(door.link).door) : _("It can no longer be read.");
  const rename = element("button", { type: "button", class: "text-button", "aria-label": _("Rename {door}", { door: name }), onclick: ask }, _("Rename"));
  const naming = nameForm(_("A new name for it"), _("Rename"), (text) => {
    if (text) doing.rename(door.id, text);
    else stop();
  });
  naming.form.hidden = true;
  naming.form.addEventListener("keydown", (event) => {
    if (event.key === "Escape") stop();
  });

  function ask() {
    naming.form.hidden = false;
    rename.hidden = true;
    naming.input.value = door.name;
    naming.input.focus();
    naming.input.select();
  }

  function stop() {
    naming.form.hidden = true;
    rename.hidden = false;
    rename.focus();
  }

  return element("li", { "data-kept": door.id },
    element("button", { type: "button", class: "kept-door", "aria-pressed": String(here), disabled: !reads, onclick: () => doing.open(door) },
      element("strong", {}, name), element("span", { class: "why" }, what), mine ? element("span", { class: "why" }, _("shown on every page")) : null),
    element("span", { class: "kept-doing" }, rename,
      element("button", { type: "button", class: "text-button", "aria-label": _("Forget {door}", { door: name }), onclick: () => doing.forget(door) }, _("Forget"))),
    naming.form);
}

/**
 * The list of kept doors, and what keeps the one that is measured.
 * @param {App} app
 * @returns {PagePart}
 */
export function createDoorList(app) {
  const doing = createDoing(app);
  const list = element("ul", { class: "kept-doors" });
  const renew = element("button", { type: "button", class: "press quiet", onclick: () => renewed && doing.renew(renewed) });
  const keeping = nameForm(_("A name for this door, such as the room it stands in"), _("Keep this door"), (name) => {
    if (doing.keep(name)) keeping.input.value = "";
  });
  const node = element("div", {}, list, renew, keeping.form,
    element("p", { class: "note" }, _("Names and doors stay on this device; no link holds a name.")));
  /** @type {KeptDoor | undefined} */
  let renewed;
  let shown = "";

  return {
    node,
    update(state) {
      const kept = Astragal.kept.read();
      const here = keptAs(activeOf(state).door);
      const mine = doorOf(kept, kept.mine);
      renewed = here ? undefined : mine;
      renew.hidden = !renewed;
      if (mine) setText(renew, _("Keep it in place of {door}", { door: keptName(mine) }));
      keeping.form.hidden = Boolean(here);
      list.hidden = kept.doors.length === 0;
      const text = JSON.stringify([kept.doors, kept.mine, here?.id]);
      const focused = node.contains(document.activeElement) ? document.activeElement : null;
      // A row that is written in is left alone.
      if (text === shown) return;
      shown = text;
      const at = focused?.closest("li")?.getAttribute("data-kept") ?? here?.id;
      setChildren(list, kept.doors.map((door) => doorRow(app, doing, door, { mine: door.id === kept.mine, here: door.id === here?.id })));
      // What was pressed is gone, and would take the focus with it.
      if (focused && !focused.isConnected || focused?.closest("[hidden]")) {
        const next = list.querySelector(`[data-kept="${at}"] button:enabled`) ?? list.querySelector("button:enabled") ?? keeping.input;
        /** @type {HTMLElement} */ (next).focus();
      }
    },
  };
}

/**
 * Above the form of the door that is measured: which of mine it is.
 * @param {App} app
 * @returns {PagePart}
 */
export function createDoorChooser(app) {
  const doors = createDoorList(app);
  const chosen = element("strong");
  const node = element("section", { class: "my-doors" }, element("details", { class: "chooser" },
    element("summary", {}, element("span", { class: "label" }, _("My doors")), chosen),
    doors.node));
  return {
    node,
    update(state, settled) {
      const here = keptAs(activeOf(state).door);
      setText(chosen, here ? keptName(here) : _("This one is not kept yet"));
      doors.update(state, settled);
    },
  };
}
