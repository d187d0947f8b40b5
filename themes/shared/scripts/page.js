/* The little that static pages do by themselves: day or evening, sorted tables, a sieve with a search, a moving drawing. */
(function () {
  "use strict";
  var root = document.documentElement;
  var KEPT = "astragal-shade";

  function kept() {
    try { return localStorage.getItem(KEPT) || ""; } catch (refused) { return ""; }
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

  function shadeSwitch(box) {
    var ticked = box.querySelector("[name=shade-kept]");
    var now = kept();
    if (now) {
      box.querySelector('[value="' + now + '"]').checked = true;
      ticked.checked = true;
    }
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
    return typeof one === "string" && typeof other === "string" ? one.localeCompare(other) : one - other;
  }

  function sortBy(table, head, column) {
    var turned = head.getAttribute("aria-sort") === "ascending" ? -1 : 1;
    var body = table.tBodies[0];
    var rows = Array.prototype.slice.call(body.rows);
    table.querySelectorAll("[aria-sort]").forEach(function (other) { other.removeAttribute("aria-sort"); });
    head.setAttribute("aria-sort", turned > 0 ? "ascending" : "descending");
    rows.map(function (row, place) { return { row: row, place: place, value: sortValue(row, column) }; })
      .sort(function (a, b) {
        if (a.value === Infinity || b.value === Infinity) return (a.value === Infinity) - (b.value === Infinity);
        return compare(a.value, b.value) * turned || a.place - b.place;
      })
      .forEach(function (entry) { body.appendChild(entry.row); });
  }

  function sortable(table) {
    Array.prototype.forEach.call(table.tHead.rows[0].cells, function (head, column) {
      var button = document.createElement("button");
      button.type = "button";
      button.className = "sort";
      while (head.firstChild) button.appendChild(head.firstChild);
      head.appendChild(button);
      button.addEventListener("click", function () { sortBy(table, head, column); });
    });
  }

  function wordsOf(text) {
    var plain = text.toLowerCase().normalize("NFD").replace(/[\u0300-\u036f]/g, "");
    return plain.split(/[^\p{L}\p{M}\p{N}]+/u).filter(Boolean);
  }

  /* Somebody who still types has written but the beginning; a plural finds the singular. */
  function begins(known, word) {
    return known.startsWith(word) || (word.startsWith(known) && /^e?s$/.test(word.slice(known.length)));
  }

  /* One letter may be wrong, missing, too many or swapped with the next; a short word has to be all there. */
  function nearly(known, word) {
    var at = 0;
    while (at < word.length && known[at] === word[at]) at += 1;

    function goesOn(from, after) {
      var rest = word.slice(after);
      return word.length < 5 ? known.slice(from) === rest : known.slice(from).startsWith(rest);
    }

    return word.length > 2 && (goesOn(at + 1, at + 1) || goesOn(at + 1, at) || goesOn(at, at + 1) ||
      (known[at] === word[at + 1] && known[at + 1] === word[at] && goesOn(at + 2, at + 2)));
  }

  function sieve(form) {
    var list = document.getElementById("found");
    var items = Array.prototype.slice.call(list.children);
    var known = items.map(function (item) { return wordsOf(item.dataset.words); });
    var field = form.elements.words;
    var idle = wordsOf(field.dataset.idle);
    var orders = form.elements.order;

    /* A slip is forgiven only where nothing is spelled like that, so that "clean" does not find what is clear. */
    function having(word) {
      function by(test) {
        return known.map(function (own) { return own.some(function (one) { return test(one, word); }); });
      }
      var spelled = by(begins);
      return spelled.indexOf(true) < 0 ? by(nearly) : spelled;
    }

    function order() {
      var key = orders.value;
      var sorted = items.slice();
      if (key) sorted.sort(function (a, b) { return Number(a.dataset[key]) - Number(b.dataset[key]); });
      sorted.forEach(function (item) { list.appendChild(item); });
    }

    function apply() {
      var wants = Array.prototype.map.call(form.querySelectorAll(":checked[name=want]"), function (box) { return box.value; });
      var words = wordsOf(field.value).filter(function (word) { return idle.indexOf(word) < 0; });
      var hits = words.map(having);
      var shown = 0;
      items.forEach(function (item, place) {
        item.hidden = !hits.every(function (hit) { return hit[place]; }) ||
          !wants.every(function (want) { return item.dataset.wants.split(" ").indexOf(want) >= 0; });
        if (!item.hidden) shown += 1;
      });
      var said = form.elements.tally.dataset;
      form.elements.tally.textContent = shown === 1 ? said.one : shown ? said.many.replace("{count}", shown) : said.none;
    }

    form.addEventListener("input", apply);
    form.addEventListener("submit", function (event) { event.preventDefault(); });
    apply();
    if (orders) {
      orders.addEventListener("change", order);
      order();
    }
  }

  function mover(figure) {
    var slider = figure.querySelector("input");
    var frames = figure.querySelectorAll("svg .frame");
    var words = slider.dataset.words.split("|");
    function show() {
      frames.forEach(function (frame, place) { frame.classList.toggle("now", place === Number(slider.value)); });
      slider.setAttribute("aria-valuetext", words[slider.value]);
    }
    slider.addEventListener("input", show);
    show();
  }

  /* The page in another language opens at the same place, and with the same configuration. */
  function keepsPlace(link) {
    link.addEventListener("click", function () { link.hash = location.hash; });
  }

  document.addEventListener("DOMContentLoaded", function () {
    document.querySelectorAll(".shade").forEach(shadeSwitch);
    document.querySelectorAll("[data-sortable]").forEach(sortable);
    document.querySelectorAll("#sieve").forEach(sieve);
    document.querySelectorAll(".tongues a").forEach(keepsPlace);
    document.querySelectorAll("[data-mover]").forEach(mover);
  });
})();
