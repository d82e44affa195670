// What a reader's browser keeps: a recipe that was opened is there without a network, and says that it is a copy.
//   node offline.mjs SITE [PICTURES]
// The site is served over https under a certificate made here, since nothing is kept otherwise.
// Sources: W3C Service Workers; RFC 9110, 15.5.5 and 15.5.11 (404, 410); W3C Web Application Manifest, by Chromium itself.
import { execFileSync } from 'node:child_process';
import { createHash, X509Certificate } from 'node:crypto';
import fs from 'node:fs';
import https from 'node:https';
import os from 'node:os';
import path from 'node:path';
import { chromium } from 'playwright-core';
import { flags, program } from './browser.mjs';
import { answer } from './serve.mjs';
import { read, report } from './site.mjs';

const [root, pictures] = process.argv.slice(2);
const recipes = fs.readdirSync(path.join(root, 'recipes')).filter(name => fs.existsSync(path.join(root, 'recipes', name, 'recipe.json')));
const [kept, never, gone] = recipes.map(name => `/recipes/${name}/`);
const faults = [];
const say = fault => faults.push(fault);
// want ends the visit at the first fault: what comes after builds on it.
function want(ok, fault) {
  if (!ok) throw new Error(fault);
}

// The site as it is, but for what a test has happen to a page.
const changed = new Map();
function change(request, response) {
  const what = changed.get(new URL(request.url, 'http://localhost').pathname);
  if (!what) return answer(path.resolve(root), request, response);
  if (typeof what === 'number') response.writeHead(what, { 'Content-Type': 'text/html' }).end(`<title>${what}</title><h1>${what}</h1>`);
  else what(response);
}

const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'stillroom-offline-'));
const [key, cert] = [path.join(folder, 'key.pem'), path.join(folder, 'cert.pem')];
execFileSync('openssl', ['req', '-x509', '-newkey', 'ec', '-pkeyopt', 'ec_paramgen_curve:P-256', '-nodes', '-keyout', key, '-out', cert, '-days', '2', '-subj', '/CN=localhost'], { stdio: 'ignore' });
// The browser trusts this key: what comes with a doubtful certificate it would not put into its own cache.
const trusted = createHash('sha256').update(new X509Certificate(fs.readFileSync(cert)).publicKey.export({ type: 'spki', format: 'der' })).digest('base64');
let server, port = 0;
async function serve() {
  server = https.createServer({ key: fs.readFileSync(key), cert: fs.readFileSync(cert) }, change);
  await new Promise(ready => server.listen(port, '127.0.0.1', ready));
  port = server.address().port;
}
const stop = () => new Promise(done => { server.closeAllConnections(); server.close(done); });

await serve();
const browser = await chromium.launch({ executablePath: program, args: [...flags, `--ignore-certificate-errors-spki-list=${trusted}`] });
const context = await browser.newContext({ viewport: { width: 390, height: 844 } });
const tab = await context.newPage();
tab.setDefaultTimeout(20_000);
tab.on('pageerror', e => say(`the script fails: ${e.message}`));
const go = address => tab.goto(`https://127.0.0.1:${port}${address}`, { waitUntil: 'load' });
const notice = async () => (await tab.locator('.saved').allInnerTexts()).join(' ').replace(/\s+/g, ' ');
const copies = () => tab.evaluate(async () => (await Promise.all((await caches.keys()).map(async name => (await (await caches.open(name)).keys()).map(r => new URL(r.url).pathname)))).flat());
// until waits for what a worker does in its own time.
async function until(what, ok) {
  for (let i = 0; i < 100; i++) {
    if (await ok()) return;
    await tab.waitForTimeout(100);
  }
  want(false, `in ten seconds ${what} did not come about`);
}
const has = address => async () => (await copies()).includes(address);
const lacks = address => async () => !(await copies()).includes(address);

try {
  await look();
} catch (e) {
  say(e.message.split('\n')[0]);
}
await browser.close();
server.close();
fs.rmSync(folder, { recursive: true });
report(faults, 1, 'reader');

async function look() {
  // The first page, opened before there is a worker.
  await go(kept);
  await until('a copy of the first page', has(kept));
  want(!await notice(), 'a page from the site says that it is a copy');
  want((await copies()).every(p => !/\.(mp3|m4a|ogg|vtt)$/.test(p)), 'a recording was kept');

  // The manifest, by the rules of the browser.
  const cdp = await context.newCDPSession(tab);
  const { errors, url, data } = await cdp.send('Page.getAppManifest');
  want(data && url.endsWith('/manifest.webmanifest'), 'Chromium finds no manifest');
  want(!errors.length, `the manifest: ${errors.map(e => e.message)}`);
  const { installabilityErrors } = await cdp.send('Page.getInstallabilityErrors');
  const hindered = installabilityErrors.map(e => e.errorId).filter(id => id !== 'in-incognito');
  want(!hindered.length, `cannot be installed: ${hindered}`);

  // The network is gone, and the server too.
  await stop();
  await context.setOffline(true);
  await go(kept);
  const day = new Intl.DateTimeFormat('en-GB', { dateStyle: 'long' }).format(new Date());
  want((await notice()).includes(`a copy that was saved on ${day}`), `offline the page says "${await notice()}"`);
  want((await tab.title()).startsWith(`Copy of ${day}: `), `offline the title is "${await tab.title()}"`);
  want(await tab.locator('main > :first-child.saved').count() === 1, 'the notice is not the first thing of the page');
  want(await tab.evaluate(() => getComputedStyle(document.querySelector('h1')).fontFamily.includes('Besley') && [...document.images].filter(i => i.loading !== 'lazy').every(i => i.naturalWidth > 0)), 'the copy has lost its style or its picture');
  await tab.emulateMedia({ media: 'print' });
  want(await tab.isVisible('.saved'), 'a printed copy does not say that it is one');
  await tab.emulateMedia({ media: 'screen' });
  await shot('copy');

  // What was never opened.
  const answered = await go(never);
  want(answered.status() === 503, `a page that was not kept answers ${answered.status()} offline`);
  want(await tab.locator(`#kept a[href="${kept}"]`).count() === 1 && (await tab.innerText('#kept')).includes(day), `what is kept is told as "${await tab.innerText('#kept')}"`);
  want(await tab.locator(`#kept a[href="${never}"]`).count() === 0, 'what was not kept is listed');
  await shot('never');

  // The network is back, and the page has changed.
  const corrected = read(root, `${kept.slice(1)}index.html`).replace(/<h1>[^<]*/, '<h1>Put right');
  changed.set(kept, response => response.writeHead(200, { 'Content-Type': 'text/html; charset=utf-8', 'Cache-Control': 'max-age=600' }).end(corrected));
  await serve();
  await context.setOffline(false);
  await go(kept);
  want((await tab.innerText('h1')) === 'Put right' && !await notice(), 'back online, the page is still that of before');

  // A host lets browsers keep the page for ten minutes: no copy in secret.
  await stop();
  await go(kept);
  want((await tab.innerText('h1')) === 'Put right' && /saved on/.test(await notice()), 'a page from the browser\'s own cache does not say that it is a copy');
  await serve();

  // A host in trouble, and one that is slow.
  changed.set(kept, 500);
  await go(kept);
  want(/saved on/.test(await notice()), 'the copy is not shown where the host fails');
  changed.set(kept, response => setTimeout(() => response.writeHead(200, { 'Content-Type': 'text/html; charset=utf-8' }).end(corrected.replace('Put right', 'Late')), 5500));
  await go(kept);
  want(/saved on/.test(await notice()), 'the copy is not shown where the host is slow');
  await until('keeping what came late', () => tab.evaluate(async p => (await (await caches.match(p))?.text() ?? '').includes('<h1>Late'), kept));

  // What is gone, or has no place for the notice, is not kept.
  await go(gone);
  await until('a copy', has(gone));
  changed.set(gone, 410);
  want((await go(gone)).status() === 410, 'what is gone is still shown');
  await until('forgetting what is gone', lacks(gone));
  changed.set(kept, response => response.writeHead(200, { 'Content-Type': 'text/html' }).end('<title>x</title><h1>x</h1>'));
  await go(kept);
  await until('forgetting a page without a place for the notice', lacks(kept));
  changed.clear();

  // The site has no worker any more: its last one takes everything away.
  changed.set('/offline.js', response => response.writeHead(200, { 'Content-Type': 'text/javascript' }).end(goodbye()));
  await tab.evaluate(async () => (await navigator.serviceWorker.getRegistration()).update());
  await until('the end of the worker', () => tab.evaluate(async () => !(await navigator.serviceWorker.getRegistration()) && !(await caches.keys()).length));
}

function goodbye() {
  return fs.readFileSync(new URL('../../themes/enamel/files/goodbye.js', import.meta.url), 'utf8');
}

// shot leaves pictures, in both colours, for eyes.
async function shot(name) {
  if (!pictures) return;
  for (const colorScheme of ['light', 'dark']) {
    await tab.emulateMedia({ colorScheme });
    await tab.screenshot({ path: path.join(pictures, `${name}-${colorScheme}.png`) });
  }
}
