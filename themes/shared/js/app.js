// The configurator: one store, the parts that show it, and what they may ask for.

const ENDS = ["open", "closed"];
const VIEW_NAMES = { all: "All three", elevation: "Elevation", section: "Section", plan: "Plan" };

function quietQueue() {
  const waiting = new Map();
  const soon = window.requestIdleCallback ?? ((task) => setTimeout(task, 60));
  let running = false;
  function next() {
    const [entry] = waiting;
    running = Boolean(entry);
    if (!entry) return;
    waiting.delete(entry[0]);
    entry[1]();
    soon(next);
  }
  return (key, task) => {
    waiting.delete(key);
    waiting.set(key, task);
    if (!running) {
      running = true;
      soon(next);
    }
  };
}

function createActions(app, store, address) {
  const set = (next, step) => store.set(next, step);
  const settleSoon = later(450, () => address.write("push"));
  return {
    state: () => store.get(),
    family: () => familyOf(app.catalog, activeOf(store.get())),
    legs: () => legsOf(app.catalog, activeOf(store.get())),
    pickDoor: (id) => set(withPreset(app.catalog, store.get(), id), "push"),
    pickHandle: (id) => set(withHandle(app.catalog, store.get(), id), "push"),
    setWord(id, value) {
      const next = withDoorWord(store.get(), id, value);
      if (next === store.get()) app.refuse();
      else set(next, "push");
    },
    typeLength: (field, text) => set(withTyped(store.get(), field, text), "none"),
    presetLength: (field) => set(withPresetLength(app.catalog, store.get(), field.id), "push"),
    pickUnits: (units) => set(withUnits(store.get(), units), "push"),
    pickFamily: (id) => set(withFamily(app.catalog, store.get(), id), "push"),
    pickOption: (choice, option) => set(withChoice(app.catalog, store.get(), choice, option), "push"),
    move(leg, value) {
      const place = Astragal.kernel.moved_to(legsOf(app.catalog, activeOf(store.get())), activeOf(store.get()).place, leg.moves, value);
      set(withPlace(store.get(), place), "move");
    },
    moveAll: (share) => set(withPlace(store.get(), placeAtShare(app.catalog, activeOf(store.get()), share)), "move"),
    goTo(end) {
      set(withPlace(store.get(), endPlace(app.catalog, activeOf(store.get()), end)), "push");
    },
    settle: settleSoon,
    another: () => set(withAnother(store.get()), "push"),
    remove: (index) => set(withoutOne(store.get(), index), "push"),
    show: (index) => set(withShown(store.get(), index), "push"),
    open(fragment) {
      const opened = address.read(fragment);
      set(stateFrom(opened.state), "none");
      return opened;
    },
  };
}

function unitsSwitch(app) {
  const group = radioGroup("units", "Units", [["in", "Inches"], ["mm", "Millimetres"]], app.pickUnits);
  group.node.classList.add("units");
  return group;
}

function viewSwitch(app) {
  const group = radioGroup("view", "Drawing", Object.entries(VIEW_NAMES), (view) => app.stage.show(view));
  group.node.classList.add("views");
  group.show("all");
  return group;
}

function createTabs(app) {
  const node = element("div", { class: "tabs", role: "group", "aria-label": "Configurations" });
  return {
    node,
    update(state) {
      node.hidden = state.configurations.length < 2;
      setChildren(node, state.configurations.map((one, i) =>
        element("button", { type: "button", "aria-pressed": String(i === state.active), onclick: () => app.show(i) },
          element("span", { class: "letter" }, LETTERS[i]), familyOf(app.catalog, one).name)));
    },
  };
}

function createNotice(app, address) {
  const words = element("div");
  const node = element("div", { class: "notice", role: "alert", hidden: true }, words,
    element("button", { type: "button", class: "text-button", onclick: () => (node.hidden = true) }, "Close"));
  function show(parts) {
    node.hidden = parts.length === 0;
    setChildren(words, parts);
  }
  return {
    node,
    say: (text) => show([element("p", {}, text)]),
    // What is wrong with a link that has been opened, and what no longer comes of it.
    tell(opened) {
      const state = app.state();
      const parts = opened.problems.map((problem) => element("p", {}, say(problem, state.units)));
      const changes = address.changes(opened);
      if (changes.length > 0) {
        parts.push(element("p", {}, "What is behind this link has changed since it was made:"), changesTable(changes, state));
      }
      show(parts);
    },
  };
}

const PARTS = {
  tabs: createTabs,
  doorForm: createDoorForm,
  coveringForm: createCoveringForm,
  figures: createFigures,
  travel: createTravel,
  now: createNow,
  compare: createCompare,
  share: createShare,
};

// The steps in which the parts come onto the page, from the top down.
function joinPage(app, { tabs, doorForm, coveringForm, figures, travel, now, compare, share }) {
  const units = unitsSwitch(app);
  const views = viewSwitch(app);
  // A movement changes what these show; nothing else on the page.
  app.placed = [travel, now, compare, share];
  app.parts = [tabs, ...app.placed, doorForm, coveringForm, figures];
  app.travel = travel;
  app.now = now;
  app.units = units;
  const table = element("div", { class: "drawing-table" },
    tabs.node,
    app.stage.node,
    element("div", { class: "under-sheet" }, now.node, travel.node));
  const toolbar = element("div", { class: "toolbar" }, views.node, units.node);
  const controls = element("div", { class: "controls" }, toolbar, doorForm.node);
  keepFocusClear(app, table);
  app.status = element("p", { class: "unseen", role: "status" });
    app.sheets = createSheets(app);
  doorForm.chooser.open = app.fresh;
  const workbench = element("div", { class: "workbench" }, table, controls);
  return [
    () => app.root.replaceChildren(app.notice.node, workbench),
    () => controls.append(coveringForm.node),
    () => controls.append(figures.node),
    () => app.root.append(compare.node, share.node, app.status, app.sheets.node),
  ];
}

// What goes with a whole drawing, once it stands.
function showBesideDrawing(app) {
  app.units.show(app.state().units);
  app.speak();
}

function showDrawing(app) {
  app.stage.draw(app.state(), true);
  showBesideDrawing(app);
}

function showEverything(app) {
  showDrawing(app);
  app.parts.forEach((part) => part.update(app.state(), true));
}

// The drawing follows in the frame in which the hand moves; slider and words take turns, a frame each.
function createMove(app) {
  let turn = 0;
  return () => {
    const state = app.state();
    app.stage.draw(state, false);
    turn = 1 - turn;
    [app.travel, app.now][turn].update(state, false);
  };
}

function showPlaced(app) {
  showDrawing(app);
  app.placed.forEach((part) => part.update(app.state(), true));
}

// A move paints at once and little; what else it changes follows when the hand rests.
function followStore(app, store, address) {
  const moved = onFrame(createMove(app));
  const everything = onFrame(() => showEverything(app));
  const rest = later(160, onFrame(() => showPlaced(app)));
  store.follow((state, step) => {
    if (step === "move") {
      moved();
      if (!app.dragging()) rest();
      return;
    }
    everything();
    if (step === "push" || step === "replace") address.write(step);
  });
}

function createApp(root, catalog) {
  const app = { root, catalog, fresh: false };
  const address = createAddress(app);
  const kept = keptFragment();
  const fragment = location.hash.slice(1);
  app.fresh = fragment === "" && kept === "";
  const opened = address.read(fragment || kept);
  const store = createStore(stateFrom(opened.state));
  let dragging = false;
  app.ask = createAsker(catalog, () => store.get().household);
  Object.assign(app, createActions(app, store, address), {
    address: () => address.of(store.get()),
    addressOf: address.of,
    fragment: address.fragment,
    whenQuiet: quietQueue(),
    dragging: () => dragging,
    beginDrag(moves) {
      dragging = true;
      app.travel.focus(moves);
    },
    endDrag(before) {
      dragging = false;
      if (samePlace(before, activeOf(store.get()).place)) return;
      address.write("push");
      showPlaced(app);
    },
    endDrawings: () => ENDS.map((end) => app.ask.endDrawings(activeOf(store.get()), end, store.get().units)),
    focusField: (id) => app.stage.focus(id),
    refuse() {
      app.notice.say("With the measurements as they are, that door cannot be. Correct the measurements first.");
      showEverything(app);
    },
    speak: later(700, () => setText(app.status, spokenNow(app, store.get()))),
    print(what) {
      app.sheets.want(what);
      window.print();
    },
  });
  app.stage = createStage(app);
  app.notice = createNotice(app, address);
  const parts = {};
  let page = [];
  // Laid out at once, or the last step of all would have to lay out everything.
  const put = (at) => () => {
    page[at]();
    return root.offsetHeight;
  };
  inSteps([
    ...Object.entries(PARTS).map(([name, create]) => () => (parts[name] = create(app))),
    () => (page = joinPage(app, parts)),
    ...store.get().configurations.map((one) => () => app.ask.answer(one)),
    () => app.notice.tell(opened),
    ...Object.keys(PARTS).map((name) => () => parts[name].update(app.state(), true)),
    ...ENDS.map((end) => () => app.ask.endDrawings(activeOf(app.state()), end, app.state().units)),
    ...[0, 1, 2, 3].map(put),
    () => {
      followStore(app, store, address);
      followWindow(app);
    },
    ...app.stage.drawSteps(app.state()),
    () => showBesideDrawing(app),
  ]);
}

// A slow phone answers between one step and the next.
function inSteps([step, ...rest]) {
  step();
  if (rest.length > 0) setTimeout(() => inSteps(rest));
}

// Where the drawing lies over the controls, what takes the focus must scroll clear of it.
function keepFocusClear(app, table) {
  new ResizeObserver(() => {
    const over = table.offsetWidth > app.root.offsetWidth * 0.8;
    document.documentElement.style.scrollPaddingTop = over ? `${table.offsetHeight + 16}px` : "";
  }).observe(table);
}

function followWindow(app) {
  window.addEventListener("hashchange", () => {
    if (location.hash.slice(1) !== app.fragment()) app.notice.tell(app.open(location.hash));
  });
  window.addEventListener("popstate", () => {
    if (location.hash.slice(1) !== app.fragment()) app.notice.tell(app.open(location.hash));
  });
  // A keyboard on the screen takes half of it: the drawing makes room for the field.
  const seen = window.visualViewport;
  seen?.addEventListener("resize", () => app.root.classList.toggle("keyboard-up", seen.height < window.innerHeight * 0.7));
  window.addEventListener("beforeprint", () => app.sheets.fill());
  window.addEventListener("afterprint", () => app.sheets.empty());
}

function start() {
  const root = document.getElementById("configurator");
  if (root) createApp(root, Astragal.catalog);
}

// What the page already says is painted first; the configurator's place is kept clear meanwhile.
function startAfterPaint() {
  requestAnimationFrame(() => setTimeout(start));
}

if (document.readyState === "loading") document.addEventListener("DOMContentLoaded", startAfterPaint);
else startAfterPaint();
