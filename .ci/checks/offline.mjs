// What a reader's browser keeps: a recipe that was opened is there without a network, and says that it is a copy.
//   node offline.mjs SITE [PICTURES]
// Sources: W3C Service Workers; RFC 9110, 15.5.5 and 15.5.11 (404, 410); W3C Web Application Manifest, by Chromium itself.
import fs from 'node:fs';
import path from 'node:path';
import { read } from './site.mjs';
import { changed, code, page, recipesOf, visit, want } from './unplugged.mjs';

const [root, pictures] = process.argv.slice(2);
const [kept, never, gone] = recipesOf(root);
await visit(root, look);

async function look(reader) {
  const { tab, context } = reader;
  // The first page, opened before there is a worker.
  await reader.go(kept);
  await reader.keepsFirst(kept);
  want(!await reader.notice(), 'a page from the site says that it is a copy');
  want((await reader.copies()).every(p => !/\.(mp3|m4a|ogg|vtt)$/.test(p)), 'a recording was kept');

  // The manifest, by the rules of the browser.
  const cdp = await context.newCDPSession(tab);
  const { errors, url, data } = await cdp.send('Page.getAppManifest');
  want(data && url.endsWith('/manifest.webmanifest'), 'Chromium finds no manifest');
  want(!errors.length, `the manifest: ${errors.map(e => e.message)}`);
  const { installabilityErrors } = await cdp.send('Page.getInstallabilityErrors');
  const hindered = installabilityErrors.map(e => e.errorId).filter(id => id !== 'in-incognito');
  want(!hindered.length, `cannot be installed: ${hindered}`);

  // The network is gone, and the server too.
  await reader.stop();
  await context.setOffline(true);
  await reader.go(kept);
  const day = new Intl.DateTimeFormat('en-GB', { dateStyle: 'long' }).format(new Date());
  want((await reader.notice()).includes(`a copy that was saved on ${day}`), `offline the page says "${await reader.notice()}"`);
  want((await tab.title()).startsWith(`Copy of ${day}: `), `offline the title is "${await tab.title()}"`);
  want(await tab.locator('main > :first-child.saved').count() === 1, 'the notice is not the first thing of the page');
  want(await tab.evaluate(() => getComputedStyle(document.querySelector('h1')).fontFamily.includes('Besley') && [...document.images].filter(i => i.loading !== 'lazy').every(i => i.naturalWidth > 0)), 'the copy has lost its style or its picture');
  await tab.emulateMedia({ media: 'print' });
  want(await tab.isVisible('.saved'), 'a printed copy does not say that it is one');
  await tab.emulateMedia({ media: 'screen' });
  await shot(tab, 'copy');

  // What was never opened.
  const answered = await reader.go(never);
  want(answered.status() === 503, `a page that was not kept answers ${answered.status()} offline`);
  want(await tab.locator(`#kept a[href="${kept}"]`).count() === 1 && (await tab.innerText('#kept')).includes(day), `what is kept is told as "${await tab.innerText('#kept')}"`);
  want(await tab.locator(`#kept a[href="${never}"]`).count() === 0, 'what was not kept is listed');
  await shot(tab, 'never');

  // The network is back, and the page has changed.
  const corrected = read(root, `${kept.slice(1)}index.html`).replace(/<h1>[^<]*/, '<h1>Put right');
  changed.set(kept, page(corrected, { 'Cache-Control': 'max-age=600' }));
  await reader.serve();
  await context.setOffline(false);
  await reader.go(kept);
  want((await tab.innerText('h1')) === 'Put right' && !await reader.notice(), 'back online, the page is still that of before');

  // A host lets browsers keep the page for ten minutes: no copy in secret.
  await reader.stop();
  await reader.go(kept);
  want((await tab.innerText('h1')) === 'Put right' && /saved on/.test(await reader.notice()), 'a page from the browser\'s own cache does not say that it is a copy');
  await reader.serve();

  // A host in trouble, and one that is slow.
  changed.set(kept, 500);
  await reader.go(kept);
  want(/saved on/.test(await reader.notice()), 'the copy is not shown where the host fails');
  changed.set(kept, response => setTimeout(() => page(corrected.replace('Put right', 'Late'))(response), 5500));
  await reader.go(kept);
  want(/saved on/.test(await reader.notice()), 'the copy is not shown where the host is slow');
  await reader.until('keeping what came late', () => tab.evaluate(async p => (await (await caches.match(p))?.text() ?? '').includes('<h1>Late'), kept));

  // What is gone, or has no place for the notice, is not kept.
  await reader.go(gone);
  await reader.keeps(gone);
  changed.set(gone, 410);
  want((await reader.go(gone)).status() === 410, 'what is gone is still shown');
  await reader.forgets(gone, 'what is gone');
  changed.set(kept, page('<title>x</title><h1>x</h1>'));
  await reader.go(kept);
  await reader.forgets(kept, 'a page without a place for the notice');
  changed.clear();

  // The site has no worker any more: its last one takes everything away.
  changed.set('/offline.js', code(goodbye()));
  await tab.evaluate(async () => (await navigator.serviceWorker.getRegistration()).update());
  await reader.until('the end of the worker', () => tab.evaluate(async () => !(await navigator.serviceWorker.getRegistration()) && !(await caches.keys()).length));
}

function goodbye() {
  return fs.readFileSync(new URL('../../themes/enamel/files/goodbye.js', import.meta.url), 'utf8');
}

// shot leaves pictures, in both colours, for eyes.
async function shot(tab, name) {
  if (!pictures) return;
  for (const colorScheme of ['light', 'dark']) {
    await tab.emulateMedia({ colorScheme });
    await tab.screenshot({ path: path.join(pictures, `${name}-${colorScheme}.png`) });
  }
}
