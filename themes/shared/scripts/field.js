/* In the one file for the field nothing is fetched: a script that the page asks for lies in it already, as a text. */
(function () {
  "use strict";
  var head = document.head;
  var append = head.append.bind(head);
  head.append = function (asked) {
    var held = asked.localName === "script" && document.getElementById(asked.src.split("/").pop());
    if (!held) {
      append(asked);
      return;
    }
    var script = document.createElement("script");
    script.textContent = held.textContent;
    append(script);
    Promise.resolve().then(asked.onload);
  };
})();
