/* The service worker: keeps the site on the device, and shows a page only with files of that page's own version. */
(function () {
  "use strict";
  var list = self.astragal;
  var scope = self.registration.scope;
  var OWN = "astragal " + scope + " ";
  var NOW = OWN + list.version;
  // Outlasts versions: that the reader wants all of the site on this device.
  var WISH = OWN + "wish";
  var TOGETHER = 6;

  function listed(path) {
    return Object.prototype.hasOwnProperty.call(list.files, path);
  }

  function pathOf(url) {
    var path = url.split(/[?#]/)[0].slice(scope.length);
    return path === "" || path.endsWith("/") ? path + "index.html" : path;
  }

  async function sumOf(bytes) {
    var sum = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes)).slice(0, 6);
    return btoa(String.fromCharCode.apply(null, Array.from(sum)));
  }

  /* A copy, as a page may not be answered with what a redirect has led to. */
  async function asked(path, cache) {
    var answer = await fetch(scope + path, { cache: cache });
    var bytes = await answer.arrayBuffer();
    var kind = answer.headers.get("Content-Type") || "";
    var copy = new Response(bytes, { status: answer.status, headers: { "Content-Type": kind } });
    return { copy: copy, sound: answer.ok && (await sumOf(bytes)) === list.files[path] };
  }

  /* A server that compares dates holds a file unchanged that is no younger than the copy asked about, or by less than a
     second: what is not sound is asked for once more, as if there were no copy. */
  async function fetched(path) {
    var got = await asked(path, "no-cache");
    return got.sound ? got : asked(path, "reload");
  }

  async function keep(path) {
    var store = await caches.open(NOW);
    if (await store.match(scope + path)) return;
    var got = await fetched(path);
    if (!got.sound) throw new Error(path);
    await store.put(scope + path, got.copy);
  }

  async function keepAll(paths) {
    for (var at = 0; at < paths.length; at += TOGETHER) await Promise.all(paths.slice(at, at + TOGETHER).map(keep));
  }

  async function wished() {
    return (await caches.has(WISH)) && Boolean(await (await caches.open(WISH)).match(scope));
  }

  async function install() {
    var all = Object.keys(list.files);
    var early = all.filter(function (path, place) { return !list.late.includes(place); });
    await keepAll((await wished()) ? all : early);
  }

  async function tidy() {
    var names = await caches.keys();
    var old = names.filter(function (name) { return name.startsWith(OWN) && name !== NOW && name !== WISH; });
    await Promise.all(old.map(function (name) { return caches.delete(name); }));
  }

  /* A page of another version has everything from the network, for as long as it is open. */
  function passing(client) {
    return scope + "?passing=" + client;
  }

  function unkept(url) {
    var tongue = Object.keys(list.words).find(function (code) {
      return list.words[code].root !== "" && url.startsWith(scope + list.words[code].root);
    });
    var code = tongue || list.first;
    var words = list.words[code];
    var home = scope + words.root;
    var page = '<!doctype html><html lang="' + code + '"><meta charset="utf-8">' + list.policy + "<title>" + words.unkept + "</title>"
      + '<meta name="viewport" content="width=device-width"><link rel="stylesheet" href="' + scope + list.style + '">'
      + '<body><div class="page"><main><h1>' + words.unkept + "</h1><p>" + words.later + '</p><p><a href="' + home
      + 'index.html">' + words.home + '</a></p><p><a href="' + home + 'try.html">' + words.door + "</a></p></main></div>";
    return new Response(page, { status: 503, headers: { "Content-Type": "text/html; charset=utf-8" } });
  }

  async function pageAnswer(event, store) {
    var path = pathOf(event.request.url);
    var kept = listed(path) && await store.match(scope + path);
    if (kept) return kept;
    try {
      if (listed(path)) {
        var got = await fetched(path);
        if (got.sound) {
          await store.put(scope + path, got.copy.clone());
          return got.copy;
        }
        self.registration.update().catch(function () { /* It is asked for again with the next page. */ });
      }
      await store.put(passing(event.resultingClientId), new Response(""));
      return await fetch(event.request);
    } catch (unreached) {
      return unkept(event.request.url);
    }
  }

  async function fileAnswer(event, store) {
    if (await store.match(passing(event.clientId))) return fetch(event.request);
    var path = pathOf(event.request.url);
    var kept = await store.match(scope + path);
    if (kept) return kept;
    try {
      await keep(path);
    } catch (unsound) {
      return Response.error();
    }
    return (await store.match(scope + path)) || Response.error();
  }

  async function answered(event) {
    var store = await caches.open(NOW);
    return event.request.mode === "navigate" ? pageAnswer(event, store) : fileAnswer(event, store);
  }

  async function wholly() {
    try {
      await keepAll(Object.keys(list.files));
      await (await caches.open(WISH)).put(scope, new Response(""));
      return true;
    } catch (unreached) {
      return false;
    }
  }

  async function told(event) {
    if (event.data.asks === "now") await self.skipWaiting();
    else if (event.data.asks === "whole") event.ports[0].postMessage(await wholly());
    else {
      var words = list.words[event.data.tongue] || list.words[list.first];
      event.ports[0].postMessage({ words: words, whole: await wished() });
    }
  }

  self.addEventListener("install", function (event) { event.waitUntil(install()); });
  self.addEventListener("activate", function (event) { event.waitUntil(tidy()); });
  self.addEventListener("message", function (event) { event.waitUntil(told(event)); });
  self.addEventListener("fetch", function (event) {
    var url = event.request.url;
    if (event.request.method !== "GET" || !url.startsWith(scope)) return;
    if (event.request.mode === "navigate" || listed(pathOf(url))) event.respondWith(answered(event));
  });
})();
