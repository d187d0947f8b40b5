/* The site on this device: has it kept, tells of a newer one, and keeps all of it where the reader asks for that. */
(function () {
  "use strict";
  var workers = navigator.serviceWorker;
  var home = new URL("../", document.currentScript.src).href;
  var controlled = Boolean(workers.controller);

  function ask(worker, what, then) {
    var line = new MessageChannel();
    line.port1.onmessage = function (event) { then(event.data); };
    worker.postMessage({ asks: what, tongue: document.documentElement.lang }, [line.port2]);
  }

  function told(name, place) {
    var box = document.createElement("p");
    var text = document.createElement("span");
    var button = document.createElement("button");
    box.className = name;
    text.setAttribute("role", "status");
    button.type = "button";
    box.append(text, " ", button);
    place.append(box);
    return { text: text, button: button };
  }

  function tellNewer(worker) {
    ask(worker, "words", function (answer) {
      if (document.querySelector(".newer")) return;
      var bar = told("newer", document.body);
      bar.text.textContent = answer.words.newer;
      bar.button.textContent = answer.words.show;
      bar.button.addEventListener("click", function () { worker.postMessage({ asks: "now" }); });
    });
  }

  function offerWhole(worker) {
    ask(worker, "words", function (answer) {
      var line = told("whole", document.querySelector(".title-block .strip"));
      line.button.textContent = answer.words.keep;
      function show(text, wanted) {
        line.text.textContent = text;
        line.button.hidden = !wanted;
      }
      show(answer.whole ? answer.words.kept : "", !answer.whole);
      line.button.addEventListener("click", function () {
        show(answer.words.keeping, false);
        ask(worker, "whole", function (done) { show(done ? answer.words.kept : answer.words.failed, !done); });
      });
    });
  }

  function follow(worker) {
    worker.addEventListener("statechange", function () {
      if (worker.state === "installed" && controlled) tellNewer(worker);
    });
  }

  /* A browser asks for a newer one by itself with each page, which may be on its way before this runs. */
  function watch(registration) {
    if (registration.waiting && controlled) tellNewer(registration.waiting);
    if (registration.installing) follow(registration.installing);
    registration.addEventListener("updatefound", function () { follow(registration.installing); });
  }

  // Two versions never share a page: where the newer one takes over, the page is read again.
  workers.addEventListener("controllerchange", function () {
    if (controlled) location.reload();
  });
  workers.register(home + "sw.js", { updateViaCache: "none" }).then(function (registration) {
    if (!registration) return;
    watch(registration);
    if (controlled && navigator.onLine) registration.update().catch(function () { /* It is asked for with the next page. */ });
    workers.ready.then(function (ready) { offerWhole(ready.active); });
  }).catch(function () { /* Where a browser keeps nothing, the site is read as it comes. */ });
})();
