/* Pages that are read, with what this device keeps: a door of one's own to go on with, and the marks of the short list. */
(function () {
  "use strict";
  var kept = Astragal.kept;

  function each(selector, task) {
    document.querySelectorAll(selector).forEach(task);
  }

  function showDoor(now) {
    var mine = now.doors.filter(function (one) { return one.id === now.mine; })[0];
    each("[data-mine]", function (node) { node.hidden = !mine; });
    each("[data-mine-name]", function (node) { node.textContent = mine && mine.name || node.dataset.mineName; });
    each("[data-mine-href]", function (link) {
      link.dataset.otherHref = link.dataset.otherHref || link.getAttribute("href");
      link.setAttribute("href", mine ? link.dataset.mineHref : link.dataset.otherHref);
    });
  }

  function showMarks(now) {
    var families = now.marks.map(function (one) { return one.family; });
    each("[data-mark]", function (button) {
      button.hidden = false;
      button.setAttribute("aria-pressed", String(families.indexOf(button.dataset.mark) >= 0));
    });
    each("[data-listed]", function (node) { node.hidden = families.length === 0; });
    each("[data-list-href]", function (link) { link.setAttribute("href", link.dataset.listHref + families.join("+")); });
    each("[data-list-count]", function (node) { node.textContent = families.length; });
  }

  function show() {
    var now = kept.read();
    showDoor(now);
    showMarks(now);
    each("[data-on-mine]", now.doors.length > 0 ? fetchFor : function () {});
  }

  function turn(button) {
    var done = kept.turn(button.dataset.mark, "");
    each("[data-mark-refused]", function (node) { node.hidden = done; });
  }

  /* The configurator's scripts work out how a covering stands on the kept door; nobody else is sent them. */
  function fetchFor(place) {
    if (place.dataset.fetched) return;
    place.dataset.fetched = "yes";
    place.dataset.onMine.split(" ").forEach(function (address) {
      var script = document.createElement("script");
      script.src = address;
      script.async = false;
      document.head.appendChild(script);
    });
  }

  each("[data-mark]", function (button) {
    button.addEventListener("click", function () { turn(button); });
  });
  kept.follow(show);
  show();
})();
