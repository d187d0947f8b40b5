// Elements are built here and nowhere else; text from data only ever becomes text nodes.

const SVG_SPACE = "http://www.w3.org/2000/svg";

/**
 * @template {Element} Kind
 * @param {Kind} node
 * @param {Attributes} attributes
 * @param {Child[]} children
 */
function fill(node, attributes, children) {
  for (const [name, value] of Object.entries(attributes)) {
    if (name.startsWith("on")) node.addEventListener(name.slice(2), value);
    // A page's policy lets an element have a style of its own from a script, but from no attribute.
    else if (name === "style") /** @type {HTMLElement} */ (/** @type {unknown} */ (node)).style.cssText = value;
    else if (value === true) node.setAttribute(name, "");
    else if (value !== false && value !== null && value !== undefined) node.setAttribute(name, String(value));
  }
  node.append(...shownOf(children).map((child) => (typeof child === "string" ? Astragal.kernel.typeset(child) : child)));
  return node;
}

/**
 * @param {Child[]} children
 * @returns {(Node | string)[]}
 */
function shownOf(children) {
  const all = /** @type {Child[]} */ (children.flat(2));
  return /** @type {(Node | string)[]} */ (all.filter((child) => child !== null && child !== undefined && child !== false));
}

/**
 * @template {keyof HTMLElementTagNameMap} Name
 * @param {Name} name
 * @param {Attributes} attributes
 * @param {Child[]} children
 */
export function element(name, attributes = {}, ...children) {
  return fill(document.createElement(name), attributes, children);
}

/**
 * @template {keyof SVGElementTagNameMap} Name
 * @param {Name} name
 * @param {Attributes} attributes
 * @param {Child[]} children
 */
export function shape(name, attributes = {}, ...children) {
  return fill(document.createElementNS(SVG_SPACE, name), attributes, children);
}

/**
 * Writing what already stands there would make the browser lay it out again.
 * @param {Element} node
 * @param {string} name
 * @param {unknown} value
 */
export function setAttribute(node, name, value) {
  if (node.getAttribute(name) !== String(value)) node.setAttribute(name, String(value));
}

/**
 * @param {Element} node
 * @param {string} words
 */
export function setText(node, words) {
  const text = Astragal.kernel.typeset(words);
  if (node.textContent === text) return;
  if (node.firstChild instanceof Text) node.firstChild.data = text;
  else node.textContent = text;
}

/**
 * @param {Element} node
 * @param {Child[]} children
 */
export function setChildren(node, children) {
  node.replaceChildren(...shownOf(children).filter((child) => child !== ""));
}

/**
 * A text's parts, with nodes in the places of its {terms}.
 * @param {string} text
 * @param {Record<string, Node>} nodes
 */
export function around(text, nodes) {
  return text.split(/\{(\w+)\}/).map((part, i) => (i % 2 ? nodes[part] : part));
}

/**
 * Copies a text, where the clipboard is not for pages too.
 * @param {string} text
 */
export async function copyText(text) {
  try {
    await navigator.clipboard.writeText(text);
  } catch {
    const before = /** @type {HTMLElement | null} */ (document.activeElement);
    const area = element("textarea", { class: "unseen" });
    area.value = text;
    document.body.append(area);
    area.select();
    document.execCommand("copy");
    area.remove();
    before?.focus();
  }
}

/**
 * Does a task once it has not been asked for during so many milliseconds.
 * @template {unknown[]} Values
 * @param {number} milliseconds
 * @param {(...values: Values) => void} task
 */
export function later(milliseconds, task) {
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let timer;
  return (/** @type {Values} */ ...values) => {
    clearTimeout(timer);
    timer = setTimeout(() => task(...values), milliseconds);
  };
}

/**
 * Does a task as soon as the browser has answered whoever waits: a timer would let it idle in between.
 * @param {() => void} task
 */
function soon(task) {
  const { port1, port2 } = new MessageChannel();
  port1.onmessage = () => {
    port1.close();
    task();
  };
  port2.postMessage(null);
}

// So many milliseconds at a time: a frame has more, on a slow phone too.
const SLICE = 5;

/**
 * A long piece of work in slices that block no finger.
 * @param {() => boolean} step a small step of it; returns whether more is to be done
 * @param {() => unknown} wanted whether it is still asked for
 * @param {() => void} [paused] what is done after each slice
 */
export function inSlices(step, wanted, paused = () => undefined) {
  function slice() {
    if (!wanted()) return;
    const until = performance.now() + SLICE;
    let more = true;
    while (more && performance.now() < until) more = step();
    paused();
    if (more) soon(slice);
  }
  soon(slice);
}

/**
 * Many changes, one painted frame.
 * @param {() => void} task
 */
export function onFrame(task) {
  let waiting = false;
  return () => {
    if (waiting) return;
    waiting = true;
    requestAnimationFrame(() => {
      waiting = false;
      task();
    });
  };
}

/**
 * Tasks one by one; one of the same key takes the other's place.
 * @param {(task: () => void) => void} wait what is waited for before each
 */
function taskQueue(wait) {
  /** @type {Map<string, () => void>} */
  const waiting = new Map();
  let running = false;
  function next() {
    const [entry] = waiting;
    running = Boolean(entry);
    if (!entry) return;
    waiting.delete(entry[0]);
    entry[1]();
    wait(next);
  }
  return (/** @type {string} */ key, /** @type {() => void} */ task) => {
    waiting.delete(key);
    waiting.set(key, task);
    if (!running) {
      running = true;
      wait(next);
    }
  };
}

/** Tasks for when nothing else is to be done. */
export function quietQueue() {
  return taskQueue(window.requestIdleCallback ?? ((task) => void setTimeout(task, 60)));
}

/** Tasks that are each small enough, but not all together: the browser answers whoever waits between them. */
export function turnQueue() {
  return taskQueue(soon);
}
