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

// sameWords reports whether two sources differ in nothing but their pictures,
// which no script of the page reads.
export function sameWords(before, after) {
  return wordsOf(before) === wordsOf(after);
}

const pictures = "picture, img, link[as=image], meta[property^='og:image'], script[type='application/ld+json']";

function wordsOf(source) {
  const copy = source.documentElement.cloneNode(true);
  for (const picture of copy.querySelectorAll(pictures)) picture.remove();
  return copy.outerHTML.replace(/\s+/g, " "); // there may be a line less
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

// planChildren leaves those alone that both have, and pairs those between them
// as they come.
function planChildren(live, before, after, acts) {
  const was = [...before.childNodes], becomes = [...after.childNodes], shown = childrenOf(live, was);
  if (!shown) return false;
  let i = 0, j = 0;
  for (const [gone, there] of [...common(was, becomes), [was.length, becomes.length]]) {
    const next = shown[gone] ?? shown.at(-1)?.nextSibling ?? null;
    for (; i < gone || j < there; i++, j++) {
      const old = i < gone ? was[i] : null, now = j < there ? becomes[j] : null, place = shown[i];
      if (old && now && alike(old, now)) {
        if (!plan(place, old, now, acts)) return false;
        continue;
      }
      if (runs(old ?? live) || runs(now ?? live)) return false;
      if (now) acts.push(() => live.insertBefore(document.importNode(now, true), old ? place : next));
      if (old) acts.push(() => place.remove());
    }
    i = gone + 1;
    j = there + 1;
  }
  return true;
}

// common pairs the children that both have, each by its number: those at the
// beginning and at the end, and as many as can be of what is between.
function common(was, becomes) {
  const most = Math.min(was.length, becomes.length), pairs = [];
  let first = 0, last = 0;
  while (first < most && was[first].isEqualNode(becomes[first])) pairs.push([first, first++]);
  while (last < most - first && was.at(-1 - last).isEqualNode(becomes.at(-1 - last))) last++;
  for (const [i, j] of longest(was.slice(first, was.length - last), becomes.slice(first, becomes.length - last))) pairs.push([first + i, first + j]);
  for (; last > 0; last--) pairs.push([was.length - last, becomes.length - last]);
  return pairs;
}

// longest gives the longest common subsequence of two lists, by numbers; none if
// that would take too long.
function longest(a, b) {
  if (a.length * b.length > 10_000) return [];
  const isSame = a.map((x) => b.map((y) => x.isEqualNode(y)));
  const left = Array.from({ length: a.length + 1 }, () => new Array(b.length + 1).fill(0)); // of what follows
  for (let i = a.length - 1; i >= 0; i--) {
    for (let j = b.length - 1; j >= 0; j--) left[i][j] = isSame[i][j] ? left[i + 1][j + 1] + 1 : Math.max(left[i + 1][j], left[i][j + 1]);
  }
  const pairs = [];
  for (let i = 0, j = 0; i < a.length && j < b.length;) {
    if (isSame[i][j]) pairs.push([i++, j++]);
    else if (left[i + 1][j] >= left[i][j + 1]) i++;
    else j++;
  }
  return pairs;
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
