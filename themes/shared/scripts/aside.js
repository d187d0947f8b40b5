/* The service worker of a site that is being changed: forgets what an earlier one has kept, and goes. */
(function () {
  "use strict";
  async function goAside() {
    var own = "astragal " + self.registration.scope + " ";
    var names = await caches.keys();
    await Promise.all(names.filter(function (name) { return name.startsWith(own); })
      .map(function (name) { return caches.delete(name); }));
    await self.registration.unregister();
  }
  self.addEventListener("install", function () { self.skipWaiting(); });
  self.addEventListener("activate", function (event) { event.waitUntil(goAside()); });
})();
