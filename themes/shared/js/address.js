// The address follows the state, and the state the address.

function createAddress(app) {
  const { kernel } = Astragal;
  // What came of each configuration is noted in the link; the answers are at hand.
  const fragmentOf = (state) => kernel.encode_answered(linked(state), state.configurations.map((one) => app.ask.answer(one)), app.catalog);
  const bare = () => location.href.split("#")[0];

  function write(step) {
    const fragment = fragmentOf(app.state());
    if (location.hash.slice(1) === fragment) return;
    try {
      history[step === "push" ? "pushState" : "replaceState"](null, "", `#${fragment}`);
    } catch {
      // A browser that limits how often the address may change takes the next change.
    }
  }

  return {
    write,
    fragment: () => fragmentOf(app.state()),
    of: (state) => `${bare()}#${fragmentOf(state)}`,
    read: (fragment) => kernel.read_link(fragment, app.catalog),
    // What differs from what the link noted, once its state is the page's.
    changes: ({ noted, state }) => noted.flatMap((words, i) => words && kernel.changes_of(words, app.ask.answer(state.configurations[i]), i)).filter(Boolean),
  };
}

// As it was when the link was made, and as it is.
function changesTable(changes, { units, configurations }) {
  const letter = (change) => (configurations.length > 1 ? `${LETTERS[change.configuration]}: ` : "");
  return element("table", {},
    element("thead", {}, element("tr", {}, element("td"), element("th", { scope: "col" }, "As it was"), element("th", { scope: "col" }, "As it is"))),
    element("tbody", {}, changes.map((change) => element("tr", {},
      element("th", { scope: "row" }, capital(letter(change) + change.name)), element("td", {}, say(change.then, units)), element("td", {}, say(change.now, units))))));
}
