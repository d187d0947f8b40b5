/* What page.js does besides where the whole site is ours: over a wire, it fetches what keeps the site on the device. */
(function () {
  "use strict";
  if (!navigator.serviceWorker || location.protocol.indexOf("http") !== 0) return;
  var script = document.createElement("script");
  script.src = document.currentScript.src.replace("page.js", "device.js");
  document.addEventListener("DOMContentLoaded", function () { document.head.append(script); });
})();
