// Where a browser keeps visits: a database of its own, which no other site reads, and word to the other tabs.

const DATABASE = "astragal-visits";
const VISITS = "visits";

/**
 * @template Kind
 * @param {IDBRequest<Kind>} request
 * @returns {Promise<Kind>}
 */
function answered(request) {
  return new Promise((done, failed) => {
    request.onsuccess = () => done(request.result);
    request.onerror = () => failed(request.error);
  });
}

/** @returns {Promise<IDBDatabase>} */
async function openDatabase() {
  const request = indexedDB.open(DATABASE, 1);
  request.onupgradeneeded = () => void request.result.createObjectStore(VISITS, { keyPath: "id" });
  const database = await answered(request);
  // A newer page of the same site may want to renew it.
  database.onversionchange = () => database.close();
  return database;
}

/**
 * @param {(id: string) => void} heard
 * @returns {{ postMessage(id: string): void }}
 */
function createWord(heard) {
  try {
    const channel = new BroadcastChannel(DATABASE);
    channel.onmessage = ({ data }) => heard(String(data));
    return channel;
  } catch {
    return { postMessage: () => undefined };
  }
}

/** @returns {VisitStore} */
export function createVisitStore() {
  /** @type {Array<(id: string) => void>} */
  const followers = [];
  const word = createWord((id) => followers.forEach((follower) => follower(id)));

  /**
   * @template Kind
   * @param {IDBTransactionMode} mode
   * @param {(box: IDBObjectStore) => IDBRequest<Kind>} task
   * @returns {Promise<Kind>}
   */
  async function ask(mode, task) {
    const database = await openDatabase();
    try {
      return await answered(task(database.transaction(VISITS, mode).objectStore(VISITS)));
    } finally {
      database.close();
    }
  }

  return {
    async all() {
      const kept = await ask("readonly", (box) => box.getAll());
      return kept.sort((one, other) => other.at - one.at).map(({ visit }) => visit);
    },
    async read(id) {
      return (await ask("readonly", (box) => box.get(id)))?.visit ?? null;
    },
    async update(id, task) {
      const database = await openDatabase();
      try {
        const next = await updated(database, id, task);
        word.postMessage(id);
        return next;
      } finally {
        database.close();
      }
    },
    follow: (follower) => void followers.push(follower),
  };
}

/**
 * Reads and writes in one go, so that nobody else writes between; comes once it is written.
 * @param {IDBDatabase} database
 * @param {string} id
 * @param {(found: Astragal.Visit | null) => Astragal.Visit | null} task
 * @returns {Promise<Astragal.Visit | null>}
 */
function updated(database, id, task) {
  return new Promise((done, failed) => {
    const change = database.transaction(VISITS, "readwrite");
    const box = change.objectStore(VISITS);
    /** @type {Astragal.Visit | null} */
    let next = null;
    const request = box.get(id);
    request.onsuccess = () => {
      try {
        next = task(request.result?.visit ?? null);
        if (next) box.put({ id, visit: next, at: Date.now() });
        else box.delete(id);
      } catch (error) {
        failed(error);
        change.abort();
      }
    };
    change.oncomplete = () => done(next);
    change.onabort = () => failed(change.error ?? request.error);
    change.onerror = () => failed(change.error ?? request.error);
  });
}
