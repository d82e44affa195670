// A reader in Chromium, the site under https, and a network that can be taken away: what the checks of the service worker share.
// The certificate is made here, since a browser keeps nothing otherwise.
import { execFileSync } from 'node:child_process';
import { createHash, X509Certificate } from 'node:crypto';
import fs from 'node:fs';
import https from 'node:https';
import os from 'node:os';
import path from 'node:path';
import { chromium } from 'playwright-core';
import { flags, program } from './browser.mjs';
import { answer } from './serve.mjs';
import { report } from './site.mjs';

// want ends the visit at the first fault: what comes after builds on it.
export function want(ok, fault) {
  if (!ok) throw new Error(fault);
}

// recipesOf gives the addresses of the recipes of a site.
export function recipesOf(root) {
  return fs.readdirSync(path.join(root, 'recipes')).filter(name => fs.existsSync(path.join(root, 'recipes', name, 'recipe.json'))).map(name => `/recipes/${name}/`);
}

// changed says what the host answers in the place of a file: a status, or what a function makes of it.
export const changed = new Map();
export const page = (text, more) => response => response.writeHead(200, { 'Content-Type': 'text/html; charset=utf-8', ...more }).end(text);
export const code = text => response => response.writeHead(200, { 'Content-Type': 'text/javascript' }).end(text);
function change(root, request, response) {
  const what = changed.get(new URL(request.url, 'http://localhost').pathname);
  if (!what) return answer(path.resolve(root), request, response);
  if (typeof what === 'number') response.writeHead(what, { 'Content-Type': 'text/html' }).end(`<title>${what}</title><main><h1>${what}</h1></main>`);
  else what(response);
}

// certificate gives a key, and the print by which the browser trusts it: what
// comes with a doubtful one it would not put into its own cache.
function certificate() {
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'stillroom-offline-'));
  const [keyFile, certFile] = [path.join(folder, 'key.pem'), path.join(folder, 'cert.pem')];
  execFileSync('openssl', ['req', '-x509', '-newkey', 'ec', '-pkeyopt', 'ec_paramgen_curve:P-256', '-nodes', '-keyout', keyFile, '-out', certFile, '-days', '2', '-subj', '/CN=localhost'], { stdio: 'ignore' });
  const [key, cert] = [fs.readFileSync(keyFile), fs.readFileSync(certFile)];
  fs.rmSync(folder, { recursive: true });
  return { key, cert, print: createHash('sha256').update(new X509Certificate(cert).publicKey.export({ type: 'spki', format: 'der' })).digest('base64') };
}

// visit has a reader look, and reports the first fault.
export async function visit(root, look) {
  const faults = [], { key, cert, print } = certificate();
  changed.clear(); // a visit before this one may have ended anywhere
  let server, port = 0;
  const serve = async () => {
    server = https.createServer({ key, cert }, (request, response) => change(root, request, response));
    await new Promise(ready => server.listen(port, '127.0.0.1', ready));
    port = server.address().port;
  };
  const stop = () => new Promise(done => { server.closeAllConnections(); server.close(done); });
  await serve();
  const browser = await chromium.launch({ executablePath: program, args: [...flags, `--ignore-certificate-errors-spki-list=${print}`] });
  const context = await browser.newContext({ viewport: { width: 390, height: 844 } });
  const tab = await context.newPage();
  tab.setDefaultTimeout(20_000);
  tab.on('pageerror', e => faults.push(`the script fails: ${e.message}`));
  try {
    await look(new Reader(tab, context, `https://127.0.0.1:${port}`, serve, stop));
  } catch (e) {
    faults.push(e.message.split('\n')[0]);
  }
  await browser.close();
  server.close();
  report(faults, 1, 'reader');
}

class Reader {
  constructor(tab, context, origin, serve, stop) {
    Object.assign(this, { tab, context, origin, serve, stop });
  }

  go(address) {
    return this.tab.goto(this.origin + address, { waitUntil: 'load' });
  }

  // keepsFirst waits until a worker that was not there when a page was opened has kept it, and answers from now on.
  async keepsFirst(address) {
    await this.keeps(address);
    await this.until('a worker that answers', () => this.tab.evaluate(() => navigator.serviceWorker.controller?.state === 'activated'));
  }

  async notice() {
    return (await this.tab.locator('.saved').allInnerTexts()).join(' ').replace(/\s+/g, ' ');
  }

  copies() {
    return this.tab.evaluate(async () => (await Promise.all((await caches.keys()).map(async name => (await (await caches.open(name)).keys()).map(r => new URL(r.url).pathname)))).flat());
  }

  // until waits for what a worker does in its own time.
  async until(what, ok) {
    for (let i = 0; i < 300; i++) {
      if (await ok()) return;
      await this.tab.waitForTimeout(100);
    }
    want(false, `in thirty seconds ${what} did not come about`);
  }

  keeps(address) {
    return this.until(`a copy of ${address}`, async () => (await this.copies()).includes(address));
  }

  forgets(address, why) {
    return this.until(`forgetting ${why}`, async () => !(await this.copies()).includes(address));
  }
}
