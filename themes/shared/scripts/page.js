/* The little that static pages do by themselves: day or evening, sorted tables, a moving drawing. */
(function () {
  "use strict";
  var root = document.documentElement;
  var KEPT = "astragal-shade";

  function kept() {
    try { return /^(light|dark|)$/.exec(localStorage.getItem(KEPT) || "")[0]; } catch (unknown) { return ""; }
  }

  function keep(value, wanted) {
    try {
      if (wanted) localStorage.setItem(KEPT, value);
      else localStorage.removeItem(KEPT);
    } catch (refused) { /* A browser that keeps nothing still shows the page. */ }
  }

  function shade(value) {
    if (value) root.dataset.shade = value;
    else delete root.dataset.shade;
  }

  root.classList.add("scripted");
  shade(kept());
  // What is asked for in the head is there before anything shows. Not every device has a face that could stand in.
  document.fonts.forEach(function (face) { face.load().catch(Boolean); });

  function shadeSwitch(box) {
    var ticked = box.querySelector("[name=shade-kept]");
    function show() {
      var value = kept();
      shade(value);
      box.querySelector('[value="' + value + '"]').checked = true;
      ticked.checked = value;
    }
    show();
    // What is kept, or forgotten, in another tab holds here too.
    window.addEventListener("storage", function (event) {
      if (event.key === KEPT) show();
    });
    box.addEventListener("change", function () {
      var value = box.querySelector("[name=shade]:checked").value;
      shade(value);
      keep(value, ticked.checked && value);
    });
  }

  function sortValue(row, column) {
    var cell = row.cells[column];
    if (!cell) return Infinity;
    return cell.dataset.value === undefined ? cell.textContent.trim() : Number(cell.dataset.value);
  }

  function compare(one, other) {
    return one.localeCompare && other.localeCompare ? one.localeCompare(other) : one - other;
  }

  function sortBy(table, head, column) {
    var turned = head.getAttribute("aria-sort") === "ascending" ? -1 : 1;
    var body = table.tBodies[0];
    var rows = Array.from(body.rows);
    table.querySelectorAll("[aria-sort]").forEach(function (other) { other.removeAttribute("aria-sort"); });
    head.setAttribute("aria-sort", turned > 0 ? "ascending" : "descending");
    rows.map(function (row, place) { return { row: row, place: place, value: sortValue(row, column) }; })
      .sort(function (a, b) {
        if (a.value === Infinity || b.value === Infinity) return (a.value === Infinity) - (b.value === Infinity);
        return compare(a.value, b.value) * turned || a.place - b.place;
      })
      .forEach(function (entry) { body.append(entry.row); });
  }

  function sortable(table) {
    Array.from(table.tHead.rows[0].cells, function (head, column) {
      var button = document.createElement("button");
      button.type = "button";
      button.className = "sort";
      while (head.firstChild) button.append(head.firstChild);
      head.append(button);
      button.addEventListener("click", function () { sortBy(table, head, column); });
    });
  }

  function mover(figure) {
    var slider = figure.querySelector("input");
    // A group for each position, in each drawing; a shutter has a frame of its own.
    var frames = figure.querySelectorAll("g.frame");
    var words = slider.dataset.words.split("|");
    function show() {
      frames.forEach(function (frame, place) {
        frame.classList.toggle("now", place % words.length === slider.valueAsNumber);
      });
      slider.setAttribute("aria-valuetext", words[slider.value]);
    }
    slider.addEventListener("input", show);
    // A slider jumps to the finger before it is known whether the page is being swiped.
    var before = slider.value;
    slider.addEventListener("pointerdown", function () { before = slider.value; });
    slider.addEventListener("pointercancel", function () {
      slider.value = before;
      show();
    });
    // A browser that goes back to this page puts the slider where it was left, and tells nobody.
    window.addEventListener("pageshow", show);
    show();
  }

  /* The page in another language opens at the same place, and with the same configuration. */
  function keepsPlace(link) {
    link.addEventListener("click", function () { link.hash = location.hash; });
  }

  /* Paper opens nothing: what opens on the screen is printed open, and closed again. */
  function printsOpen() {
    var closed = [];
    window.addEventListener("beforeprint", function () {
      closed = Array.from(document.querySelectorAll("main details:not([open])"));
      closed.forEach(function (one) { one.open = true; });
    });
    window.addEventListener("afterprint", function () {
      closed.forEach(function (one) { one.open = false; });
    });
  }

  document.addEventListener("DOMContentLoaded", function () {
    if (!document.getElementById("configurator")) printsOpen();
    document.querySelectorAll(".shade").forEach(shadeSwitch);
    document.querySelectorAll("[data-sortable]").forEach(sortable);
    document.querySelectorAll(".tongues a").forEach(keepsPlace);
    document.querySelectorAll("[data-mover]").forEach(mover);
  });
})();
