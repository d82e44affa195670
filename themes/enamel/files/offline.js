// What a reader opens of the recipes is kept in their browser, for where there
// is no network. Figures of canning change: so the site is always asked first,
// past every cache on the way, and a copy always says that it is one.
//
// The notice is written into the text of the copy, as the browser is given it:
// so it needs no script, is heard and printed, and no style can be without it.
// A page that has no place for it is not kept.
const store = "stillroom-1", lost = "/offline.html";
const place = /<main\b[^>]*>/, recipe = /^\/recipes\/[a-z0-9-]+\/(card\/)?$/;
const day = 24 * 60 * 60 * 1000;
const most = 80; // pages
const oldest = 180; // days: last year's copy is not read this year
const again = 7; // days, after which a copy is asked for anew when its reader is on the site
const patience = 4000; // milliseconds until a copy is shown while the site is still awaited

const savedAt = (page) => Number(page.headers.get("x-saved"));
const midnight = (time) => new Date(time).setHours(0, 0, 0, 0);
// age counts nights, as readers do. It is below 0 if the clock of the device was put back.
const age = (page) => Math.round((midnight(Date.now()) - midnight(savedAt(page))) / day);
// shown tells the copies that may be read from those that are too old, of no day, or thrown away meanwhile.
const shown = (page) => page && age(page) < oldest;
const pathOf = ({ url }) => new URL(url).pathname;
const pages = async (cache) => (await cache.keys()).map(pathOf).filter((path) => path === lost || recipe.test(path));
const fetchNew = (path) => fetch(path, { cache: "no-cache", redirect: "manual" });

// opened keeps what was opened before there was a worker to keep it.
async function opened() {
  for (const path of (await clients.matchAll({ includeUncontrolled: true })).map(pathOf)) {
    if (recipe.test(path) && !(await caches.match(path))) await note(path, fetchNew(path));
  }
}

addEventListener("install", (event) => {
  skipWaiting();
  event.waitUntil(note(lost, fetchNew(lost)).then(opened));
});

// Nothing is answered until this is done. What was on its way meanwhile is looked for a little later.
addEventListener("activate", (event) => event.waitUntil((async () => {
  for (const name of await caches.keys()) if (name !== store && name.startsWith("stillroom-")) await caches.delete(name);
  await clients.claim();
  setTimeout(() => opened().catch(() => {}), 3000);
})()));

// Recordings, feeds and whatever else is neither a page nor part of one goes its own way.
addEventListener("fetch", (event) => {
  const { request } = event, { origin, pathname } = new URL(request.url);
  if (request.method !== "GET" || origin !== location.origin || request.headers.has("range")) return;
  if (request.mode === "navigate" && /(\/|\.html)$/.test(pathname)) event.respondWith(read(event, pathname));
  else if (pathname.startsWith("/assets/")) event.respondWith(caches.match(request, { ignoreVary: true }).then((asset) => asset ?? fetch(request)));
});

async function read(event, path) {
  const answer = fetch(event.request, { cache: "no-cache" }), keeps = recipe.test(path);
  const page = answer.then((page) => page.clone());
  event.waitUntil((keeps ? note(path, page) : page).then(tend).catch(() => {}));
  let copy = keeps && (await caches.match(path));
  if (!shown(copy)) copy = null;
  try {
    if (!copy) return await answer;
    const page = await Promise.race([answer, new Promise((late) => setTimeout(late, patience))]);
    if (page && page.status < 500 && page.status !== 429) return page;
  } catch {}
  return copy ? told(path, copy) : list();
}

// note keeps a page that was answered, or forgets one that is no more. What a
// host in trouble says of a page is not news of it. One that comes late does not
// take the place of what was asked for after it.
let turn = 0;
const taken = new Map(); // of each address, the turn in which its newest answer was asked for
async function note(path, answer) {
  const asked = ++turn, page = await answer, newest = () => taken.get(path) === asked;
  const gone = page.type === "opaqueredirect" || page.status === 404 || page.status === 410;
  if (!(page.ok || gone) || taken.get(path) > asked) return;
  taken.set(path, asked);
  const cache = await caches.open(store);
  const html = page.ok ? await page.text() : "";
  if (place.test(html)) await keep(cache, path, html, new Headers(page.headers), newest);
  else if (newest()) await cache.delete(path);
}

async function keep(cache, path, html, headers, newest) {
  html = html.replace(/<source\b[^>]*>/g, "").replace(/ srcset="[^"]*"/g, ""); // one size of each picture
  for (const name of ["content-encoding", "content-length", "vary"]) headers.delete(name);
  headers.set("x-saved", Date.now());
  const put = () => cache.put(path, new Response(html, { headers }));
  if (!newest()) return;
  try {
    await put().catch(() => makeRoom(cache).then(put));
  } catch {
    return cache.delete(path); // there is no room: no copy is better than the one before
  }
  if (!newest()) return cache.delete(path); // it may have come over what was asked for later
  await gather(cache, html).catch(() => {}); // the words can be read without the rest
  await forget(cache, -most);
}

// forget throws away the copies that were kept first, up to a place in their row.
async function forget(cache, end) {
  for (const old of (await pages(cache)).filter((path) => path !== lost).slice(0, end)) await cache.delete(old);
}

// makeRoom gives up the older half of what is kept for what is read now.
async function makeRoom(cache) {
  await forget(cache, Math.ceil((await pages(cache)).length / 2));
  await sweep(cache);
}

// parts are the files that a page or a style asks for. Their names tell their bytes.
const parts = (text) => (text.match(/["(]\/assets\/[\w.-]+/g) ?? []).map((found) => found.slice(1));

async function gather(cache, text) {
  for (const path of parts(text)) {
    if (await cache.match(path)) continue;
    const asset = await fetch(path);
    if (!asset.ok) continue;
    await cache.put(path, asset.clone());
    if (path.endsWith(".css")) await gather(cache, await asset.text());
  }
}

// tend, once in the life of a worker, asks anew for old copies, and throws away
// what is too old to be read. If the site has no worker any more, it leaves.
let tended;
async function tend() {
  if (tended) return;
  tended = true;
  if ([404, 410].includes((await fetch(location, { method: "HEAD", cache: "no-store" })).status)) return leave();
  const cache = await caches.open(store);
  let left = navigator.connection?.saveData ? 0 : 10;
  for (const path of await pages(cache)) {
    const copy = await cache.match(path);
    if (!copy) continue;
    const days = age(copy);
    if (!(days >= 0 && days < again) && left-- > 0) await note(path, fetchNew(path)).catch(() => {});
    else if (path !== lost && !shown(copy)) await cache.delete(path);
  }
  await sweep(cache);
}

const textOf = async (cache, path) => (await (await cache.match(path))?.text()) ?? "";

// sweep throws away the files that no copy needs.
async function sweep(cache) {
  const wanted = new Set();
  for (const path of await pages(cache)) {
    for (const part of parts(await textOf(cache, path))) {
      wanted.add(part);
      if (part.endsWith(".css")) parts(await textOf(cache, part)).forEach((p) => wanted.add(p));
    }
  }
  for (const path of (await cache.keys()).map(pathOf)) if (path.startsWith("/assets/") && !wanted.has(path)) await cache.delete(path);
}

async function leave() {
  await caches.delete(store);
  await registration.unregister();
}

const dated = (page) => new Intl.DateTimeFormat("en-GB", { dateStyle: "long" }).format(savedAt(page));
const ago = (days) => ["today", "yesterday"][days] ?? (days < 0 ? "by a clock that has been put back since" : `${days} days ago`);

async function told(path, copy) {
  const html = await copy.text(), date = dated(copy);
  const notice = `<section class="saved" aria-label="Saved copy"><p><strong>You are reading a copy that was saved on ${date} (${ago(age(copy))}).</strong> The site does not answer, so nobody has asked whether it has changed since. Advice on canning changes, and a recipe can be corrected or withdrawn: before you can from it, <a href="${path}">look again</a> when you are online.</p></section>`;
  return new Response(
    html.replace("<title>", `<title>Copy of ${date}: `).replace(place, (main) => main + notice),
    { headers: copy.headers },
  );
}

// list is the page that stands for all that was not kept.
async function list() {
  const cache = await caches.open(store), page = await cache.match(lost), items = [];
  if (!page) return Response.error();
  for (const path of (await pages(cache)).reverse()) {
    const copy = await cache.match(path);
    if (path === lost || path.endsWith("/card/") || !shown(copy)) continue;
    const name = /<title>([^<]*?)( · [^·<]*)?</.exec(await copy.text())?.[1] ?? path;
    items.push(`<li><a href="${path}">${name}</a> saved on ${dated(copy)}</li>`);
  }
  const html = await page.text();
  const body = items.length ? html.replace(/(<div id="kept">).*?(?=<\/div>)/s, (_, div) => `${div}<ul>${items.join("")}</ul>`) : html;
  return new Response(body, { status: 503, statusText: "Offline", headers: page.headers });
}
