// What a reader's browser must not keep or show: an address that answers 404, more than there is room for, and what is too old.
//   node offline-limits.mjs SITE
// Sources: W3C Service Workers, 5.4.4 (put) and 5.4.6 (keys, in the order of putting); WHATWG Storage (quota); RFC 9110, 15.5.5 (404).
// How old and how many a copy may be is our own: common practice, no source.
import { read } from './site.mjs';
import { changed, code, page, recipesOf, visit, want } from './unplugged.mjs';

const [root] = process.argv.slice(2);
const [first, second, third, fourth, fifth] = recipesOf(root);
const day = 24 * 60 * 60 * 1000;
await visit(root, async reader => {
  await reader.go(first);
  await reader.keepsFirst(first);
  await missing(reader);
  await late(reader);
  await ageing(reader);
  await full(reader);
  await many(reader);
});

// missing: what answers 404 is neither kept nor covered by a copy; whoever asks for it offline gets the list.
async function missing(reader) {
  const nowhere = '/recipes/no-such-recipe/';
  want((await reader.go(nowhere)).status() === 404, `${nowhere} does not answer 404 through the worker`);
  changed.set(first, 404);
  want((await reader.go(first)).status() === 404, 'a recipe that is gone is shown from its copy');
  await reader.forgets(first, 'a recipe that answers 404');
  changed.clear();
  await away(reader, async () => {
    want((await reader.go(first)).status() === 503, 'a recipe that was gone is shown offline');
    want((await reader.go(nowhere)).status() === 503, 'an address that never was is shown offline');
    want(await reader.tab.locator(`#kept a[href="${nowhere}"]`).count() === 0, 'an address that never was is listed as kept');
  });
  want(!(await reader.copies()).includes(nowhere), 'a page that answered 404 was kept');
}

// late: a page that comes after the news that it is gone, but was asked for before, is not kept.
async function late(reader) {
  let answered, release;
  const [asked, held] = [new Promise(done => (answered = done)), new Promise(done => (release = done))];
  const whole = read(root, `${fifth.slice(1)}index.html`);
  changed.set(fifth, async response => {
    response.writeHead(200, { 'Content-Type': 'text/html; charset=utf-8', 'Cache-Control': 'no-store' }).write(whole.slice(0, -10));
    answered();
    await held;
    response.end(whole.slice(-10));
  });
  const other = await reader.context.newPage();
  const opened = other.goto(reader.origin + fifth, { waitUntil: 'load' });
  await asked;
  changed.set(fifth, 404);
  want((await reader.go(fifth)).status() === 404, 'a page that is gone waits for one that was asked for before');
  release();
  await opened;
  await reader.tab.waitForTimeout(1000);
  want(!(await reader.copies()).includes(fifth), 'a page that came late is kept, although it is gone since');
  await other.close();
  changed.clear();
}

// ageing: a copy says its day whatever its age, and at 180 days is not shown. Days are counted as nights.
async function ageing(reader) {
  await reader.go(first);
  await reader.keeps(first);
  const at = new Date().setHours(12, 0, 0, 0);
  const days = [[0, 'today'], [1, 'yesterday'], [179, '179 days ago'], [-3, 'by a clock that has been put back since']];
  await away(reader, async () => {
    for (const [n, words] of days) {
      const date = new Intl.DateTimeFormat('en-GB', { dateStyle: 'long' }).format(at - n * day);
      await redate(reader, first, at - n * day);
      await reader.go(first);
      want((await reader.notice()).includes(`a copy that was saved on ${date} (${words})`), `after ${n} days the copy says "${await reader.notice()}"`);
    }
    await redate(reader, first, new Date().setHours(0, 0, 0, 0) - 1);
    await reader.go(first);
    want((await reader.notice()).includes('(yesterday)'), `a copy of before midnight says "${await reader.notice()}"`);
    for (const saved of [at - 180 * day, at - 400 * day, 'some day', null]) {
      await redate(reader, first, saved);
      want((await reader.go(first)).status() === 503, `a copy saved ${saved} is shown`);
      want(await reader.tab.locator(`#kept a[href="${first}"]`).count() === 0, `a copy saved ${saved} is listed`);
    }
  });
}

// redate gives a copy another day. It is the copies of the site's own pages that a page may reach.
function redate(reader, path, saved) {
  return reader.tab.evaluate(async ([path, saved]) => {
    const cache = await caches.open((await caches.keys())[0]), copy = await cache.match(path), headers = new Headers(copy.headers);
    if (saved === null) headers.delete('x-saved');
    else headers.set('x-saved', saved);
    await cache.put(path, new Response(await copy.text(), { headers }));
  }, [path, saved]);
}

// full: where there is no room, older copies give way; and if that is not enough, the copy before does not outlive its page.
async function full(reader) {
  const { tab, context, origin } = reader;
  for (const path of [first, second, third]) {
    await reader.go(path);
    await reader.keeps(path);
  }
  const cdp = await context.newCDPSession(tab);
  const { usage } = await cdp.send('Storage.getUsageAndQuota', { origin });
  await cdp.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: Math.ceil(usage) + 2000 });
  await reader.go(fourth);
  await reader.keeps(fourth);
  want(!(await reader.copies()).includes(first), 'the oldest copy is still there, although there was no room');
  await cdp.send('Storage.overrideQuotaForOrigin', { origin });
  for (const path of [first, second, fourth]) { // so that it is not among the older half
    await reader.go(path);
    await reader.until(`${path} to be the last that was kept`, async () => (await reader.copies()).filter(p => p.startsWith('/recipes/')).at(-1) === path);
  }
  await cdp.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1 });
  changed.set(fourth, page(read(root, `${fourth.slice(1)}index.html`).replace(/<h1>[^<]*/, '<h1>Put right')));
  await reader.go(fourth);
  want(await tab.innerText('h1') === 'Put right', 'the page is not shown where there is no room for its copy');
  await reader.forgets(fourth, 'a copy that could not be renewed');
  await away(reader, async () => want((await reader.go(fourth)).status() === 503, 'a copy from before the correction is shown'));
  await cdp.send('Storage.overrideQuotaForOrigin', { origin });
  changed.clear();
}

// many: of more pages than are kept, those stay that were opened last.
async function many(reader) {
  changed.set('/offline.js', code(read(root, 'offline.js').replace(/\b80\b/, '2')));
  await reader.tab.evaluate(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    const taken = new Promise(done => navigator.serviceWorker.addEventListener('controllerchange', done));
    await registration.update();
    await taken;
  });
  for (const path of [first, second, first, fifth]) {
    await reader.go(path);
    await reader.keeps(path);
  }
  await reader.forgets(second, 'the copy that was opened first');
  want((await reader.copies()).includes(first), 'a copy that was opened again went before one that was not');
}

// away does something while there is no network.
async function away(reader, what) {
  await reader.stop();
  await reader.context.setOffline(true);
  await what();
  await reader.serve();
  await reader.context.setOffline(false);
}
