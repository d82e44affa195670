// The preview's own part of a page: it shows what was found at the parts that
// are meant, and the page anew whenever it becomes another one.
import { bare, sameWords, swap } from "./swap.js";
import { keep, restore } from "./state.js";
import { clearSlips, showSlips } from "./slips.js";
import { goTo, Tag } from "./tag.js";

const own = "/.stillroom/";
const noted = document.getElementById("stillroom-notes");
const last = new URLSearchParams(location.search).has("last");

// The source of the page as it is shown, before any script has touched it: this
// one is the first to run.
let before = bare(document.cloneNode(true));
let page = noted.dataset.version;
let notes = noted.dataset.notes;

const tag = new Tag(own, last);

function note(text) {
  const said = JSON.parse(text);
  showSlips(said);
  tag.show(said);
}

// Whether the page has scripts of its own, which may have read what has changed
// since.
const hasScripts = () => document.querySelector("script[src]:not([data-preview])") !== null;
const isPlaying = () => [...document.querySelectorAll("audio, video")].some((m) => !m.paused);

// settle loads the page anew when its author has stopped for a moment, so that
// its own scripts run on what it has become. Nothing moves while it does.
let settling;
function settle() {
  clearTimeout(settling);
  settling = setTimeout(() => (isPlaying() ? settle() : reload()), 700);
}

function reload() {
  keep();
  location.reload();
}

// take shows the page as it is now.
async function take() {
  const answer = await fetch(location.href, { headers: { Accept: "text/html" } });
  const after = new DOMParser().parseFromString(await answer.text(), "text/html");
  const said = after.getElementById("stillroom-notes");
  clearSlips();
  if (!said || !swap(document, before, bare(after))) return reload();
  const isRead = hasScripts() && !sameWords(before, after);
  before = after;
  page = said.dataset.version;
  notes = said.dataset.notes;
  note(said.textContent);
  document.dispatchEvent(new Event("stillroom-swapped"));
  if (isRead) settle();
}

// One change after the other: the next is looked at when the last is shown.
let busy = Promise.resolve();
function told(event) {
  const now = JSON.parse(event.data);
  busy = busy.then(async () => {
    if (now.html !== page) await take();
    else if (now.version !== notes) {
      notes = now.version;
      note(JSON.stringify(now.notes));
    }
  }).catch(() => tag.lost());
}

// A browser has six lines to a server and no more: a page that is not seen gives
// its own back, and asks again when it is.
let line;
function listen() {
  line?.close();
  const query = new URLSearchParams({ page: location.pathname, html: page, notes });
  if (last) query.set("last", "");
  line = new EventSource(own + "events?" + query);
  line.onopen = () => tag.found();
  line.onmessage = told;
  line.onerror = () => tag.lost();
}

function seen() {
  if (document.visibilityState === "visible") return listen();
  line?.close();
}

note(noted.textContent);
document.addEventListener("visibilitychange", seen);
addEventListener("pagehide", () => line?.close());
addEventListener("pageshow", (event) => event.persisted && seen());
document.addEventListener("DOMContentLoaded", () => {
  restore();
  const slip = document.getElementById(location.hash.slice(1));
  if (slip?.localName === "stillroom-slip") goTo(slip);
});
seen();
