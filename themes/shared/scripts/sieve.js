/* What the lists of coverings and doors do by themselves: they are searched, sifted and put in order. */
(function () {
  "use strict";

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
    var tallies = JSON.parse(form.elements.tally.dataset.told);

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
      form.elements.tally.textContent = tallies[shown];
    }

    form.addEventListener("input", apply);
    form.addEventListener("submit", function (event) { event.preventDefault(); });
    apply();
    if (orders) {
      orders.addEventListener("change", order);
      order();
    }
  }

  sieve(document.getElementById("sieve"));
})();
