// Whether the browser asks for no more than the model of build/visit_test.go says: a page of each kind on a first visit,
// and on a second one after which all that may not be kept for good is asked for anew. It is told on standard input, as
// JSON, what the model says of each page: {"/path/": {"first": [files], "second": [files]}}.   node visits.mjs SITE
// The screen has three dots to the pixel, for which the model reckons. Headers are those of /headers.json.
import fs from 'node:fs';
import http from 'node:http';
import path from 'node:path';
import { chromium } from 'playwright-core';
import { flags, program } from './browser.mjs';
import { answer } from './serve.mjs';
import { read, report } from './site.mjs';

const root = path.resolve(process.argv[2]);
const model = JSON.parse(fs.readFileSync(0, 'utf8'));
const rules = JSON.parse(read(root, 'headers.json')).headers;
const asked = [];

// withHeaders answers as a host that does what /headers.json says; a later rule overrules those before it.
function withHeaders(request, response) {
  const { pathname } = new URL(request.url, 'http://localhost');
  asked.push(decodeURIComponent(pathname.slice(1).replace(/(^|\/)$/, '$1index.html')));
  const set = {};
  const file = pathname.replace(/\/$/, '/index.html');
  for (const rule of rules) {
    const [before, after] = rule.path.split('*');
    const takesIn = after === undefined ? file === before : file.length >= before.length + after.length && file.startsWith(before) && file.endsWith(after);
    if (takesIn) Object.assign(set, rule.set);
  }
  delete set['Strict-Transport-Security']; // this host speaks plain HTTP
  const plain = response.writeHead.bind(response);
  response.writeHead = (status, headers) => plain(status, { ...headers, ...set });
  answer(root, request, response);
}

// isPrintOf tells whether a file is another print of a picture, and no heavier: the model takes the heaviest.
function isPrintOf(file, known) {
  const [name, other] = [file, known].map(f => /^assets\/([^.]+)\.[0-9a-f]+\.(webp|jpg|png)$/.exec(f)?.[1]);
  return name !== undefined && name === other && size(file) <= size(known);
}

const size = file => fs.statSync(path.join(root, file), { throwIfNoEntry: false })?.size ?? Infinity;

// quiet waits until nothing more is asked for. A recording is never all there, so that the line is never idle.
async function quiet() {
  for (let before = -1; before !== asked.length;) {
    before = asked.length;
    await new Promise(later => setTimeout(later, 100));
  }
}

const server = http.createServer(withHeaders);
await new Promise(ready => server.listen(0, '127.0.0.1', ready));
const site = `http://127.0.0.1:${server.address().port}`;
const browser = await chromium.launch({ executablePath: program, args: flags });
const faults = [];
for (const [page, { first, second }] of Object.entries(model)) {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, deviceScaleFactor: 3 });
  for (const [visit, list] of Object.entries({ first, second })) {
    asked.length = 0;
    const tab = await context.newPage();
    await tab.goto(site + page, { waitUntil: 'load' });
    await tab.evaluate(async () => {
      for (let y = 0; y < document.documentElement.scrollHeight; y += innerHeight) { // pictures that wait to be seen
        scrollTo(0, y);
        await new Promise(requestAnimationFrame);
      }
    });
    await quiet();
    await tab.close();
    if (!asked.length) faults.push(`${page}: nothing was asked for on the ${visit} visit`);
    for (const file of new Set(asked)) {
      if (!list.some(known => known === file || isPrintOf(file, known))) faults.push(`${page}: the ${visit} visit asks for ${file}, of which the model knows nothing`);
      const times = asked.filter(f => f === file).length;
      if (times > 1 && !/\.(mp3|m4a|ogg|opus)$/.test(file)) faults.push(`${page}: the ${visit} visit asks ${times} times for ${file}`);
    }
  }
  await context.close();
}
await browser.close();
report(faults, Object.keys(model).length * 2, 'visits');
