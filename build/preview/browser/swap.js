// A page that was saved anew takes the place of the one that is shown. Only
// what differs between the two sources is touched, so that scrolling, ticks,
// open parts and what scripts have made stay as they are. Where a script has
// altered just what differs, nothing is touched at all: the page has to be
// loaded.

// swap makes of live, which before became, what after is; all are documents. It
// gives false, and has done nothing, if it cannot.
export function swap(live, before, after) {
  const acts = [];
  if (!plan(live.documentElement, before.documentElement, after.documentElement, acts)) return false;
  for (const act of acts) act();
  return true;
}

// bare takes out of a source what the preview has put into it.
export function bare(source) {
  for (const own of source.querySelectorAll("head > [data-preview]")) own.remove();
  return source;
}

// plan notes what there is to do.
function plan(live, before, after, acts) {
  if (before.isEqualNode(after) || before.nodeName === "NOSCRIPT") return true;
  if (!alike(before, after) || !alike(live, before) || runs(before) || runs(after)) return false;
  if (before.nodeType === Node.ELEMENT_NODE) {
    return planAttributes(live, before, after, acts) && planChildren(live, before, after, acts);
  }
  if (live.data !== before.data) return false;
  acts.push(() => (live.data = after.data));
  return true;
}

const alike = (a, b) => a.nodeType === b.nodeType && a.nodeName === b.nodeName;

// A script has run; another one in its place would not.
const runs = (node) => node.nodeName === "SCRIPT" && (!node.type || node.type === "module" || node.src);

// Whether a part is open or a box ticked is the reader's choice.
const choices = ["open", "checked", "selected", "value"];

function planAttributes(live, before, after, acts) {
  for (const name of new Set([...before.getAttributeNames(), ...after.getAttributeNames()])) {
    const value = after.getAttribute(name);
    if (value === before.getAttribute(name) || choices.includes(name)) continue;
    if (live.getAttribute(name) !== before.getAttribute(name)) return false;
    acts.push(() => (value === null ? live.removeAttribute(name) : live.setAttribute(name, value)));
  }
  return true;
}

// planChildren leaves those alone with which the children begin and end alike,
// and pairs the others as they come.
function planChildren(live, before, after, acts) {
  const was = [...before.childNodes], becomes = [...after.childNodes], shown = childrenOf(live, was);
  if (!shown) return false;
  const most = Math.min(was.length, becomes.length);
  let first = 0, last = 0;
  while (first < most && was[first].isEqualNode(becomes[first])) first++;
  while (last < most - first && was.at(-1 - last).isEqualNode(becomes.at(-1 - last))) last++;
  const gone = was.length - last, there = becomes.length - last;
  const next = shown[gone] ?? shown.at(-1)?.nextSibling ?? null;
  for (let i = first; i < Math.max(gone, there); i++) {
    const paired = i < gone && i < there && alike(was[i], becomes[i]);
    if (paired && !plan(shown[i], was[i], becomes[i], acts)) return false;
    if (paired) continue;
    if (runs(was[i] ?? live) || runs(becomes[i] ?? live)) return false;
    if (i < there) acts.push(() => live.insertBefore(document.importNode(becomes[i], true), i < gone ? shown[i] : next));
    if (i < gone) acts.push(() => shown[i].remove());
  }
  return true;
}

// childrenOf finds the children that were in the source among those that there
// are now: scripts add some of their own. It gives null if one is missing.
function childrenOf(live, was) {
  const found = [];
  let child = live.firstChild;
  for (const w of was) {
    while (child && !(alike(child, w) && child.id === w.id)) child = child.nextSibling;
    if (!child) return null;
    found.push(child);
    child = child.nextSibling;
  }
  return found;
}
