// The visits as this device keeps them: written as they are changed, agreed upon between tabs, and never lost silently.

import { mergedVisit } from "./visitmerge.js";

// So many milliseconds after the first change that is not written yet, all of them are.
const WRITTEN_WITHIN = 300;

/**
 * A visit that is open: as it is here, and as it was when this page and the device last agreed.
 * @typedef {{ visit: Astragal.Visit, base: Astragal.Visit | null, state: KeepState }} OpenVisit
 */

/**
 * @param {unknown} error
 * @returns {KeepState}
 */
function refusalOf(error) {
  return error instanceof Error && error.name === "QuotaExceededError" ? "full" : "refused";
}

/**
 * @param {VisitStore} store
 * @param {(task: () => void, milliseconds: number) => void} [wait]
 * @returns {VisitKeep}
 */
export function createVisitKeep(store, wait = (task, milliseconds) => void setTimeout(task, milliseconds)) {
  /** @type {Map<string, OpenVisit>} */
  const open = new Map();
  /** @type {Set<string>} */
  const changed = new Set();
  /** @type {Array<(id: string, given: GivenWay[]) => void>} */
  const followers = [];
  let waiting = false;
  /** @type {Promise<void>} */
  let writing = Promise.resolve();

  /**
   * @param {string} id
   * @param {GivenWay[]} [given]
   */
  function tell(id, given = []) {
    followers.forEach((follower) => follower(id, given));
  }

  /** @param {string} id */
  async function writeOne(id) {
    const one = open.get(id);
    if (!one) return;
    const mine = one.visit;
    /** @type {GivenWay[]} */
    let given = [];
    let gone = false;
    try {
      const kept = await store.update(id, (found) => {
        gone = !found && one.base !== null;
        if (gone) return null;
        const merged = found ? mergedVisit(one.base ?? {}, mine, found) : { value: mine, given: [] };
        given = merged.given;
        return merged.value;
      });
      if (kept) agree(one, mine, kept);
      // What has been changed since is not written yet, nor what waits for its turn.
      const stands = one.visit === one.base ? "kept" : "writing";
      one.state = gone ? "gone" : stands;
    } catch (error) {
      changed.add(id);
      one.state = refusalOf(error);
    }
    tell(id, given);
  }

  /**
   * What this page has gone on with since stays.
   * @param {OpenVisit} one
   * @param {Astragal.Visit} since
   * @param {Astragal.Visit} kept
   */
  function agree(one, since, kept) {
    one.visit = one.visit === since ? kept : mergedVisit(since, one.visit, kept).value;
    one.base = kept;
  }

  /** Writes whatever is not written yet. */
  function flush() {
    waiting = false;
    const ids = [...changed];
    changed.clear();
    writing = writing.then(async () => {
      for (const id of ids) await writeOne(id);
    });
    return writing;
  }

  function soon() {
    if (waiting) return;
    waiting = true;
    wait(() => void flush(), WRITTEN_WITHIN);
  }

  /**
   * Another tab has written it, or taken it away.
   * @param {string} id
   */
  async function reread(id) {
    const one = open.get(id);
    if (!one) {
      tell(id);
      return;
    }
    await writing;
    const found = await store.read(id).catch(() => one.base);
    // Whoever took it away has taken that back.
    if (found && one.state === "gone") one.state = "kept";
    if (found && !isDone(one, found)) {
      const { value, given } = mergedVisit(one.base ?? {}, one.visit, found);
      Object.assign(one, { visit: value, base: found });
      tell(id, given);
      return;
    }
    if (!found && one.base) one.state = "gone";
    tell(id);
  }

  /**
   * @param {OpenVisit} one
   * @param {Astragal.Visit} found
   */
  function isDone(one, found) {
    return JSON.stringify(one.base) === JSON.stringify(found);
  }

  store.follow((id) => void reread(id));

  /**
   * @param {Astragal.Visit} visit
   * @param {Astragal.Visit | null} base
   */
  function hold(visit, base) {
    /** @type {OpenVisit} */
    const one = { visit, base, state: base ? "kept" : "writing" };
    open.set(visit.id, one);
    return one;
  }

  /**
   * @param {string} id
   * @param {OpenVisit} one
   */
  function toWrite(id, one) {
    if (one.state !== "gone") {
      changed.add(id);
      if (one.state === "kept") one.state = "writing";
      soon();
    }
    tell(id);
  }

  /** Those that are open, but for what somebody else has taken away. */
  function here() {
    return [...open.values()].filter(({ state }) => state !== "gone").map(({ visit }) => visit);
  }

  return {
    async list() {
      const kept = await store.all();
      return [...here(), ...kept.filter(({ id }) => !open.has(id))];
    },
    here,
    async open(id) {
      const known = open.get(id);
      if (known) return known.visit;
      const found = await store.read(id);
      return found ? hold(found, found).visit : null;
    },
    now: (id) => open.get(id)?.visit ?? null,
    state: (id) => open.get(id)?.state ?? "kept",
    begin(visit) {
      toWrite(visit.id, hold(visit, null));
      return flush();
    },
    change(id, task) {
      const one = open.get(id);
      if (!one) return;
      const next = structuredClone(one.visit);
      task(next);
      one.visit = next;
      toWrite(id, one);
    },
    keepAgain(id) {
      const one = open.get(id);
      if (!one) return Promise.resolve();
      Object.assign(one, { base: null, state: "writing" });
      toWrite(id, one);
      return flush();
    },
    async remove(id) {
      await flush();
      const wasKept = open.get(id)?.base;
      await store.update(id, () => null).catch((error) => {
        // What was never kept needs no deleting.
        if (wasKept) throw error;
      });
      open.delete(id);
      changed.delete(id);
      tell(id);
    },
    flush,
    follow: (follower) => void followers.push(follower),
  };
}
