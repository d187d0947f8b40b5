/* What this device keeps, and only when it is asked to: doors under names of one's own, and a short list of coverings. */
(function () {
  "use strict";
  var KEY = "astragal-kept";
  /* Where the one door was kept when there could be no more: it still goes along, without a name. */
  var FORMER = "astragal-kept-door";
  var SHADE = "astragal-shade";
  var NAME_MOST = 60;
  var LINK_MOST = 6000;
  var followers = [];
  var seen;

  function storage(task) {
    try { return task(window.localStorage); } catch (refused) { return null; }
  }

  function parsed(text) {
    try { return JSON.parse(text) || {}; } catch (spoilt) { return {}; }
  }

  function listOf(value, isSound, key) {
    var known = {};
    return (Array.isArray(value) ? value : []).filter(function (one) {
      var sound = one && isSound(one) && !Object.prototype.hasOwnProperty.call(known, one[key]);
      if (sound) known[one[key]] = true;
      return sound;
    });
  }

  function isLink(value) {
    return typeof value === "string" && value.length <= LINK_MOST;
  }

  function isDoor(one) {
    return typeof one.id === "string" && /^[0-9]{1,9}$/.test(one.id) && isLink(one.link) && one.link !== "" &&
      typeof one.name === "string" && one.name.length <= NAME_MOST;
  }

  function isMark(one) {
    return typeof one.family === "string" && /^[a-z0-9-]{1,80}$/.test(one.family) && isLink(one.link);
  }

  function raw(key) {
    return storage(function (box) { return box.getItem(key); }) || "";
  }

  function former() {
    var link = raw(FORMER);
    return link ? { doors: [{ id: "1", name: "", link: link }] } : {};
  }

  /* Whoever reads a link of it asks the link's own reader, which nothing breaks. */
  function read() {
    var text = raw(KEY);
    var found = text ? parsed(text) : former();
    var doors = listOf(found.doors, isDoor, "id");
    var mine = doors.filter(function (one) { return one.id === found.mine; })[0] || doors[0];
    return { doors: doors, mine: mine ? mine.id : "", marks: listOf(found.marks, isMark, "family") };
  }

  function tell() {
    seen = raw(KEY);
    followers.forEach(function (follower) { follower(); });
  }

  function write(next) {
    var done = storage(function (box) {
      if (next.doors.length + next.marks.length === 0) box.removeItem(KEY);
      else box.setItem(KEY, JSON.stringify(next));
      box.removeItem(FORMER);
      return true;
    });
    tell();
    return Boolean(done);
  }

  /* What another tab has kept meanwhile is read anew each time, so that none undoes the other's work. */
  function change(task) {
    var next = read();
    task(next);
    return write(next);
  }

  /* A covering into the short list, or out of it. */
  function turn(family, link) {
    return change(function (now) {
      var others = now.marks.filter(function (one) { return one.family !== family; });
      now.marks = others.length < now.marks.length ? others : others.concat({ family: family, link: link });
    });
  }

  function clear() {
    storage(function (box) { box.removeItem(SHADE); });
    document.querySelectorAll("[name=shade-kept]").forEach(function (box) { box.checked = false; });
    return write({ doors: [], mine: "", marks: [] });
  }

  function look() {
    if (raw(KEY) !== seen) tell();
  }

  seen = raw(KEY);
  window.addEventListener("storage", look);
  window.addEventListener("pageshow", look);
  document.addEventListener("visibilitychange", look);

  window.Astragal = window.Astragal || {};
  Astragal.kept = {
    nameMost: NAME_MOST,
    read: read,
    change: change,
    turn: turn,
    clear: clear,
    follow: function (follower) { followers.push(follower); }
  };
})();
