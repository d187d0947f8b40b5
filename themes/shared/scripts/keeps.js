/* What page.js does besides where the whole site is ours: over a wire, it fetches what keeps the site on the device. The
   build has the file's full name in place of this one. */
(function () {
  "use strict";
  if (!navigator.serviceWorker || !/^http/.test(location.protocol)) return;
  var script = document.createElement("script");
  script.src = new URL("device.js", document.currentScript.src);
  document.addEventListener("DOMContentLoaded", function () { document.head.append(script); });
})();
