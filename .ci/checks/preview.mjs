// A site while it is written: the preview beside an editor, on a desk.   node preview.mjs PROGRAM [SAVES]
// PROGRAM is stillroom. With a number of SAVES the time from each save to the painted page is printed as well; the site
// may be one that has many recipes: SITE in the environment.
// Sources: the contract, 4 (preview); WCAG 2.2, 4.1.3 status messages; CSP level 3.
import { spawn, execFileSync } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import readline from 'node:readline';
import axe from 'axe-core';
import { chromium } from 'playwright-core';
import { flags, program } from './browser.mjs';
import { report } from './site.mjs';

const [stillroom, saves] = process.argv.slice(2);
const as = { argv0: 'stillroom' };
const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'preview-'));
const site = process.env.SITE ?? path.join(folder, 'larder');
if (!process.env.SITE) execFileSync(stillroom, ['start', site], { ...as, stdio: 'ignore' });

const preview = spawn(stillroom, ['preview', site, '--address', '127.0.0.1:0'], { ...as, stdio: ['ignore', 'pipe', 'pipe'], env: { ...process.env, XDG_CACHE_HOME: folder } });
let said = '';
preview.stderr.on('data', text => { said += text; });
const url = (await readline.createInterface({ input: preview.stdout })[Symbol.asyncIterator]().next()).value;

const faults = [];
let damaged = false; // then the first fault ends a check
const note = fault => faults.push(fault);
const say = fault => { note(fault); if (damaged) throw new Error(fault); };
const page = '/recipes/blackberry-jam/';
const file = path.join(site, 'content/recipes/blackberry-jam.md');
const asWritten = fs.readFileSync(file, 'utf8');
const picture = path.join(site, 'content/pictures/blackberry-jam.jpg');
const asTaken = fs.readFileSync(picture);

// save writes a file as editors do: beside it, and then over it.
function save(text) {
  fs.writeFileSync(file + '.part', text);
  fs.renameSync(file + '.part', file);
}
const edited = (old, by) => {
  if (!asWritten.includes(old)) throw new Error(`the recipe has no "${old}"`);
  return asWritten.replace(old, by);
};

const browser = await chromium.launch({ executablePath: program, args: flags });
const tab = await browser.newPage({ viewport: { width: 1280, height: 900 } });
tab.setDefaultTimeout(60_000);
let refused = 0; // answers 503, which the browser notes by itself
tab.on('pageerror', e => note(`the script fails: ${e.message}`));
tab.on('console', m => m.type() === 'error' && (m.text().includes('503') ? refused++ : note(`console: ${m.text()}`)));
tab.on('request', r => r.url().startsWith(url) || r.url().startsWith('data:') || note(`something is asked for elsewhere: ${r.url()}`));

// shown waits until the page satisfies a test, and says a fault if it never does.
const shown = (what, test, arg) => tab.waitForFunction(test, arg, { polling: 20 }).catch(() => say(`it never comes about: ${what}`));
const has = text => shown(`a page with "${text}"`, t => document.body?.innerText.replace(/\s+/g, ' ').includes(t), text);
// slips are what the preview says on the page, each with the part that it stands by.
const slips = () => tab.evaluate(() => [...document.querySelectorAll('stillroom-slip')].map(s => s.shadowRoot.textContent.replace(/\s+/g, ' ')));
const isAt = (selector, text) => tab.evaluate(([s, t]) => [...document.querySelectorAll(s)].some(e => e.textContent.includes(t)), [selector, text]);

// open opens the page, whose picture may be printed only now.
async function open() {
  await tab.goto(url + page.slice(1), { waitUntil: 'load' });
  await shown('the picture as it is published', () => document.querySelector('.print source, .print [srcset]'));
  await tab.waitForLoadState('load');
}

const checks = {
  async 'a save keeps what the reader has done'() {
    await tab.click('#cook'); // the large type, with boxes to tick
    await tab.locator('.ledger .tick').first().check();
    await tab.evaluate(() => { for (const d of document.querySelectorAll('main details')) d.open = true; });
    await tab.evaluate(() => document.querySelector('#method').scrollIntoView({ behavior: 'instant' }));
    await tab.evaluate(() => { window.before = scrollY; });
    const before = await tab.evaluate(() => [scrollY, document.querySelectorAll('main details[open]').length]);
    save(edited('Wash your hands', 'Scrub your hands'));
    await has('Scrub your hands');
    await tab.waitForTimeout(1500); // until the page has settled
    await has('Scrub your hands');
    const after = await tab.evaluate(() => [scrollY, document.querySelectorAll('main details[open]').length]);
    if (Math.abs(after[0] - before[0]) > 8 || !before[0]) say(`the page was scrolled to ${before[0]}, and is to ${after[0]}`);
    if (after[1] !== before[1]) say(`${before[1]} parts were open, and ${after[1]} are`);
    if (!await tab.locator('.ledger .tick').first().isChecked()) say('the tick is gone');
    await tab.click('#cook');
  },
  async 'a finding stands at its value until it is put right'() {
    save(edited('above 6,000 ft: 20 min', 'above 6,000 ft: 10 min'));
    await shown('the error in the table', () => document.querySelector('table.scale td[data-preview-mark="error"]')?.textContent.includes('10'));
    const found = (await slips()).filter(s => s.includes('[time-short]') || s.includes('time-short'));
    for (const part of ['Error', '10 min is under the tested 15 min', 'Write 15 min or more', 'above 6,000 ft: 10 min', 'content/recipes/blackberry-jam.md:38:27', 'So Easy to Preserve']) {
      if (!found[0]?.includes(part)) say(`the slip says "${found[0]}", without "${part}"`);
    }
    save(edited('2 cups (400 g)', '3 cups (400 g)'));
    await shown('the findings at another place alone', () => document.querySelector('.ledger li[data-preview-mark]') && !document.querySelector('td[data-preview-mark]'));
    save(asWritten);
    await shown('a page without findings', () => !document.querySelector('stillroom-slip, [data-preview-mark]'));
  },
  async 'the panel lists what was found in the site'() {
    save(edited('headspace: 1/4 in', 'headspace: 1/2 in'));
    await shown('the finding', () => document.querySelector('[data-preview-mark="error"]'));
    await tab.goto(url + 'about/', { waitUntil: 'load' });
    await tab.getByRole('button', { name: /^Preview/ }).click();
    const panel = tab.getByRole('dialog', { name: 'What was found' });
    const entry = panel.getByText('1/2 in of headspace where the tested process leaves 1/4 in');
    await entry.click();
    for (const scheme of ['light', 'dark']) {
      await tab.emulateMedia({ colorScheme: scheme });
      await tab.evaluate(axe.source);
      const bad = await tab.evaluate(() => axe.run({ include: [['stillroom-tag']] }, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa'] }));
      for (const v of bad.violations) say(`the panel (${scheme}): ${v.id}: ${v.nodes[0].html}`);
    }
    await panel.getByRole('link', { name: 'Show it on the page' }).first().click();
    await shown('the slip in sight', () => {
      const slip = document.querySelector('stillroom-slip[id^="finding-headspace"]')?.getBoundingClientRect();
      return location.pathname === '/recipes/blackberry-jam/' && slip && slip.top > 0 && slip.bottom < innerHeight;
    });
    await tab.getByRole('button', { name: 'Close' }).click();
    save(asWritten);
    await shown('a page without findings', () => !document.querySelector('stillroom-slip'));
  },
  async 'the panel stays as it is while pictures are printed and pages come anew'() {
    save(edited('headspace: 1/4 in', 'headspace: 1/2 in'));
    await shown('the finding', () => document.querySelector('[data-preview-mark="error"]'));
    await tab.waitForTimeout(1000); // until the page has settled
    const panel = tab.getByRole('dialog', { name: 'What was found' });
    await tab.getByRole('button', { name: /^Preview/ }).click();
    await panel.getByText('1/2 in of headspace where the tested process leaves 1/4 in').click();
    const entries = () => tab.evaluate(() => document.querySelector('stillroom-tag').shadowRoot.querySelectorAll('.list details[open]').length);
    await tab.evaluate(() => { window.isTheSame = true; document.querySelector('stillroom-tag').shadowRoot.querySelector('.list').scrollTop = 30; });
    const was = await tab.evaluate(() => document.querySelector('.print img').src);
    fs.copyFileSync(path.join(site, 'content/pictures/sauerkraut.jpg'), picture); // it is to be printed
    await shown('the picture as it was printed anew', old => document.querySelector('.print img').src !== old && document.querySelector('.print source, .print [srcset]'), was);
    await tab.waitForTimeout(1000);
    if (!await tab.evaluate(() => window.isTheSame)) say('the page was loaded anew for a picture');
    if (await entries() !== 1) say(`after a picture, ${await entries()} entries are open`);
    save(edited('headspace: 1/4 in', 'headspace: 1/2 in').replace('name: Blackberry', '# Ripe ones.\nname: Blackberry'));
    await shown('the entry a line further down', () => document.querySelector('stillroom-tag').shadowRoot.querySelector('details[open] .place')?.textContent.includes(':33:'));
    await tab.reload({ waitUntil: 'load' });
    await shown('the entry still open', () => document.querySelector('stillroom-tag').shadowRoot.querySelector('dialog[open] details[open]'));
    const scroll = await tab.evaluate(() => document.querySelector('stillroom-tag').shadowRoot.querySelector('.list').scrollTop);
    if (scroll !== 30) say(`the panel was scrolled to 30, and is to ${scroll}`);
    await tab.getByRole('button', { name: 'Close' }).click();
  },
  async 'a file that cannot be read, and its last page'() {
    save(edited('kind: jam', 'kind: jam: dark'));
    await has('This file cannot be read');
    if (!await isAt('.here', 'kind: jam: dark')) say('the line is not shown');
    await tab.getByRole('link', { name: /as it was/ }).click();
    await has('There are two kinds of blackberry day');
    if (!(await slips()).some(s => s.includes('as it was'))) say('the page as it was looks like the page that is');
    await tab.goBack();
    await has('This file cannot be read');
    save(edited('kind: jam', 'kind: jam # dark'));
    await has('There are two kinds of blackberry day');
  },
  async 'a draft is marked, on its page and where it is named'() {
    save(edited('kind: jam', 'kind: jam\nstatus: draft'));
    await shown('the mark of a draft', () => document.querySelector('main > stillroom-slip')?.shadowRoot.textContent.includes('A draft'));
    await tab.goto(url + 'recipes/', { waitUntil: 'load' });
    await shown('the mark beside its link', () => document.querySelector('a[href="/recipes/blackberry-jam/"] stillroom-held'));
    save(asWritten);
    await shown('a list without it', () => !document.querySelector('stillroom-held'));
  },
};
for (const [name, check] of Object.entries(checks)) {
  const before = faults.length;
  save(asWritten);
  fs.writeFileSync(picture, asTaken);
  await open().then(check).catch(e => say(e.message.split('\n')[0]));
  for (let i = before; i < faults.length; i++) faults[i] = `${name}: ${faults[i]}`;
}

// damages are ways in which the preview's scripts may be wrong: what stands in a file, what is put in its place, and
// what the check that looks at it has to say.
const damages = [
  ['state.js', '(d.open = open)', 'open', 'a save keeps what the reader has done', 'parts were open'],
  ['slips.js', 'make("span", { class: "rule" }, mark.rule)', '""', 'a finding stands at its value until it is put right', 'the slip says'],
  ['tag.js', '}, "Close")', '})', 'the panel lists what was found in the site', 'button-name'],
  ['preview.js', '&& !sameWords(before, after)', '', 'the panel stays as it is while pictures are printed and pages come anew', 'loaded anew for a picture'],
  ['tag.js', 'this.kept ?? this.reading()', 'this.reading()', 'the panel stays as it is while pictures are printed and pages come anew', 'the entry still open'],
  ['preview.js', 'line.onmessage = told', 'line.onmessage = null', 'a file that cannot be read, and its last page', 'a page with "This file cannot be read"'],
  ['slips.js', 'apart("stillroom-held"', 'apart("stillroom-hold"', 'a draft is marked, on its page and where it is named', 'the mark beside its link'],
];
if (!faults.length) for (const damage of damages) await notice(...damage);

// notice does a damage, and says a fault if the check does not find it.
async function notice(name, old, by, check, says) {
  const at = `${url}.stillroom/${name}`;
  const text = await (await fetch(at)).text();
  await tab.route(at, route => route.fulfill({ contentType: 'text/javascript', body: text.replace(old, by) }));
  save(asWritten);
  fs.writeFileSync(picture, asTaken);
  tab.setDefaultTimeout(2000);
  damaged = true;
  await open().then(checks[check]).catch(() => {});
  damaged = false;
  tab.setDefaultTimeout(60_000);
  await tab.unroute(at);
  const found = faults.splice(0);
  if (!text.includes(old)) say(`${name} does not hold ${old}`);
  else if (!found.some(f => f.includes(says))) say(`${check}: ${by} in place of ${old} goes unseen: ${found}`);
}

if (saves) await measure(Number(saves)).catch(e => say(e.message.split('\n')[0]));

// measure saves over and over. The browser tells when it has painted the page that holds the number of the save.
async function measure(times) {
  await tab.addInitScript(() => {
    window.painted = {};
    const look = () => {
      const n = document.querySelector('.headnote')?.textContent.match(/save (\d+)/)?.[1];
      if (n) window.painted[n] ??= performance.timeOrigin + performance.now();
      requestAnimationFrame(look);
    };
    look();
  });
  await open();
  const took = [];
  for (let i = 0; i < times; i++) {
    await tab.waitForTimeout(200);
    const text = edited('There are two kinds', `At save ${i} there are two kinds`);
    const at = performance.timeOrigin + performance.now();
    save(text);
    await tab.waitForFunction(n => window.painted?.[n], String(i), { polling: 20 });
    took.push(await tab.evaluate(n => window.painted[n], String(i)) - at);
  }
  took.sort((a, b) => a - b);
  console.log(`from a save to the painted page, ms: least ${took[0].toFixed(0)}, median ${took[times >> 1].toFixed(0)}, most ${took.at(-1).toFixed(0)}`);
  save(asWritten);
}

await browser.close();
const ended = new Promise(done => preview.on('exit', done));
preview.kill('SIGINT');
const status = await ended;
if (status !== 0) say(`interrupted, the preview ends with ${status}: ${said}`);
fs.rmSync(folder, { recursive: true });
report(faults, Object.keys(checks).length, 'uses of the preview');
