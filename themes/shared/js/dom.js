// Elements are built here and nowhere else; text from data only ever becomes text nodes.

const SVG_SPACE = "http://www.w3.org/2000/svg";

function fill(node, attributes, children) {
  for (const [name, value] of Object.entries(attributes)) {
    if (name.startsWith("on")) node.addEventListener(name.slice(2), value);
    else if (value === true) node.setAttribute(name, "");
    else if (value !== false && value !== null && value !== undefined) node.setAttribute(name, String(value));
  }
  const shown = children.flat(2).filter((child) => child !== null && child !== undefined && child !== false);
  node.append(...shown.map((child) => (typeof child === "string" ? Astragal.kernel.typeset(child) : child)));
  return node;
}

function element(name, attributes = {}, ...children) {
  return fill(document.createElement(name), attributes, children);
}

function shape(name, attributes = {}, ...children) {
  return fill(document.createElementNS(SVG_SPACE, name), attributes, children);
}

// Writing what already stands there would make the browser lay it out again.
function setAttribute(node, name, value) {
  if (node.getAttribute(name) !== String(value)) node.setAttribute(name, value);
}

function setText(node, words) {
  const text = Astragal.kernel.typeset(words);
  if (node.textContent === text) return;
  if (node.firstChild) node.firstChild.data = text;
  else node.textContent = text;
}

// Replacing only what differs keeps the focus and an open working where they are.
function setChildren(node, children) {
  node.replaceChildren(...children.flat().filter(Boolean));
}

function later(milliseconds, task) {
  let timer = 0;
  return (...values) => {
    clearTimeout(timer);
    timer = setTimeout(() => task(...values), milliseconds);
  };
}

// Many changes, one painted frame.
function onFrame(task) {
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
