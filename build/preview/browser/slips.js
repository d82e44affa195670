// Slips of paper with what was found, at the parts of the page that are meant.
import look from "./look.js";

export const sheet = new CSSStyleSheet();
sheet.replaceSync(look);

// make builds an element; a string among its children is text.
export function make(tag, attributes = {}, ...children) {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  element.append(...children.filter((c) => c !== null && c !== undefined));
  return element;
}

// apart builds an element of the preview's own, which the styles of the page do
// not reach. What is in it stands in its shadow.
export function apart(name, ...children) {
  const host = make(name, { "data-preview": "" });
  const shadow = host.attachShadow({ mode: "open" });
  shadow.adoptedStyleSheets = [sheet];
  shadow.append(...children);
  return host;
}

export const words = { error: "Error", warning: "Warning", advice: "Advice" };
const capital = (text) => text.charAt(0).toUpperCase() + text.slice(1);
const sentence = (text) => capital(text) + (/[.!?…]$/.test(text) ? "" : ".");

// idOf names a finding in an address: #finding-time-short-23-18.
export const idOf = (mark) => "finding-" + mark.rule + mark.place.replace(/^.*?(:|$)/, "-").replace(":", "-");

// Whether the author has opened or closed a slip. An error is open at first.
const toggled = new Map(Object.entries(JSON.parse(sessionStorage.getItem("stillroom-slips") ?? "{}")));

// names gives each finding a name that it keeps while lines above it come and
// go: its rule, its file, and which of those it is.
export function names(marks) {
  const seen = {};
  return marks.map(({ rule, place }) => {
    const kind = `${rule} ${place.replace(/:.*/, "")}`;
    seen[kind] = (seen[kind] ?? 0) + 1;
    return `${kind} ${seen[kind]}`;
  });
}

// said is what a finding says: the message, what to do, the line, who says so.
export function said(mark) {
  const { line, source } = mark;
  return [
    mark.advice && make("p", {}, sentence(mark.advice)),
    line && make("pre", { tabindex: "0", "aria-label": "Line " + line.number },
      make("span", { class: "number" }, String(line.number)),
      make("code", {}, line.before.trimStart(), make("mark", {}, line.meant || " "), line.after)),
    ...(mark.notes ?? []).map((n) => make("p", {}, `${capital(n.message)}: ${n.place}`)),
    make("p", { class: "source" },
      make("span", { class: "place" }, mark.place), " ", make("span", { class: "rule" }, mark.rule), " ",
      source.address ? make("a", { href: source.address, target: "_blank", rel: "noopener noreferrer" }, source.title) : source.title),
  ].filter(Boolean);
}

export const heading = (mark) => [make("b", { class: "word" }, words[mark.severity]), " ", make("span", { class: "message" }, capital(mark.message))];

function slip(mark, name) {
  const details = make("details", { class: "slip " + mark.severity }, make("summary", {}, ...heading(mark)), ...said(mark));
  details.open = toggled.get(name) ?? mark.severity === "error";
  details.addEventListener("toggle", () => {
    toggled.set(name, details.open);
    sessionStorage.setItem("stillroom-slips", JSON.stringify(Object.fromEntries(toggled)));
  });
  const host = apart("stillroom-slip", details);
  host.id = idOf(mark);
  return host;
}

const notice = (text) => apart("stillroom-slip", make("p", { class: "slip notice" }, text));

// part finds the part of the page that is meant; null for the whole of it.
function part(spot = []) {
  let here = document;
  for (const [selector, nth, text] of spot) {
    const all = [...here.querySelectorAll(selector)].filter((e) => !text || e.textContent.trim().startsWith(text));
    if (!all[nth]) break;
    here = all[nth];
  }
  return here === document ? null : here;
}

// put puts a slip where it breaks nothing: below a table or a list of figures,
// in an entry of a list, and else after the part.
function put(host, target, tops) {
  const whole = target?.closest("table, dl");
  if (!target) tops.append(host);
  else if (whole) after(whole.closest(".wide") ?? whole, host);
  else if (target.localName === "li") target.append(host);
  else after(target, host);
}

// after puts a slip after those that stand there already.
function after(element, host) {
  while (element.nextElementSibling?.localName === "stillroom-slip") element = element.nextElementSibling;
  element.after(host);
}

let marked = [];

// showSlips shows what was found, in place of what was shown before.
export function showSlips(notes) {
  const focus = document.activeElement?.localName === "stillroom-slip" ? document.activeElement.id : null;
  clearSlips();
  const tops = document.createDocumentFragment();
  if (notes.held) tops.append(notice(notes.held === "draft" ? "A draft: readers do not see this page." : `Scheduled: readers see this page ${notes.held}.`));
  if (notes.old) tops.append(notice("This is the page as it was. The file cannot be read now."));
  const called = names(notes.marks);
  for (const [i, mark] of notes.marks.entries()) {
    const target = part(mark.spot);
    put(slip(mark, called[i]), target, tops);
    if (target && !target.hasAttribute("data-preview-mark")) {
      target.setAttribute("data-preview-mark", mark.severity);
      marked.push(target);
    }
  }
  (document.querySelector("main") ?? document.body).prepend(tops);
  showHeld(notes.links ?? {});
  if (focus) document.getElementById(focus)?.shadowRoot.querySelector("summary")?.focus({ preventScroll: true });
}

// showHeld tells which links lead to what readers do not see yet.
function showHeld(links) {
  if (Object.keys(links).length === 0) return;
  for (const a of document.querySelectorAll("main a[href^='/']")) {
    const why = links[a.pathname];
    if (why && a.textContent.trim()) a.append(apart("stillroom-held", make("span", { class: "held" }, why)));
  }
}

// clearSlips leaves the page as it would be without them.
export function clearSlips() {
  for (const host of document.querySelectorAll("stillroom-slip, stillroom-held")) host.remove();
  for (const target of marked) target.removeAttribute("data-preview-mark");
  marked = [];
}
