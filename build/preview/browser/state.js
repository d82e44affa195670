// What a reader has done to a page, kept over a reload: how far they have
// scrolled, which parts are open, what is ticked and written, how far a
// recording was heard.

const key = "stillroom-preview:" + location.pathname;

const parts = (selector) => [...document.querySelectorAll(selector)].filter((e) => !e.closest("[data-preview]"));
const fields = "input:not([type=file], [type=password]), select, textarea";

// keep keeps it for the page that is loaded next.
export function keep() {
  const state = {
    at: Date.now(),
    scroll: [scrollX, scrollY],
    open: parts("details").map((d) => d.open),
    fields: parts(fields).map((f) => (isBox(f) ? f.checked : f.value)),
    heard: parts("audio, video").map((m) => m.currentTime),
    focus: parts("a, button, summary, " + fields).indexOf(document.activeElement),
  };
  sessionStorage.setItem(key, JSON.stringify(state));
}

const isBox = (field) => field.type === "checkbox" || field.type === "radio";

// restore brings back what was kept a moment ago. The page's own scripts have
// run by then, and are told as if the reader had done it.
export function restore() {
  const state = JSON.parse(sessionStorage.getItem(key));
  sessionStorage.removeItem(key);
  if (!state || Date.now() - state.at > 10_000) return;
  const each = (selector, values, set) => {
    const found = parts(selector);
    if (found.length === values.length) found.forEach((e, i) => set(e, values[i]));
  };
  each("details", state.open, (d, open) => (d.open = open));
  each(fields, state.fields, setField);
  each("audio, video", state.heard, (m, time) => time && (m.currentTime = time));
  parts("a, button, summary, " + fields)[state.focus]?.focus({ preventScroll: true });
  scrollTo({ left: state.scroll[0], top: state.scroll[1], behavior: "instant" });
}

function setField(field, value) {
  const name = isBox(field) ? "checked" : "value";
  if (field[name] === value) return;
  field[name] = value;
  field.dispatchEvent(new Event("input", { bubbles: true }));
  field.dispatchEvent(new Event("change", { bubbles: true }));
}
