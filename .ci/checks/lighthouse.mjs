// Lighthouse, as a phone on a slow line: at least 0.99 in each of its groups.   node lighthouse.mjs SITE PAGE...
// The line is simulated, and the processor is this machine's, slowed down to a phone's: both are the same however busy
// the machine is. Pictures of the page as it comes up are not; they can only come late, so the best of a few tries counts.
import * as chrome from 'chrome-launcher';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import lighthouse from 'lighthouse';
import * as constants from 'lighthouse/core/config/constants.js';
import { flags, program } from './browser.mjs';
import { index, worked } from './cputime.mjs';
import { serve } from './serve.mjs';
import { report } from './site.mjs';

const [root, ...pages] = process.argv.slice(2);
const groups = ['performance', 'accessibility', 'best-practices', 'seo'];
const enough = 0.99;
const tries = 5;
// Lighthouse slows a fast desk machine, of index 1750 or so, four times down to a phone: docs/throttling.md there.
const phone = 1750 / 4;

const server = await serve(root);
const browser = await chrome.launch({ chromePath: program, chromeFlags: [...flags] });
const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'lighthouse-'));

// measure runs Lighthouse once.
async function measure(page) {
  const cpuSlowdownMultiplier = Math.max(1, index() / phone);
  const settings = {
    port: browser.port, logLevel: 'silent', onlyCategories: groups,
    throttling: { ...constants.throttling.mobileSlow4G, cpuSlowdownMultiplier },
    // the server beside us is no part of what is measured
    precomputedLanternData: { additionalRttByOrigin: { [server.url]: 0 }, serverResponseTimeByOrigin: { [server.url]: 0 } },
  };
  await lighthouse(server.url + page, { ...settings, gatherMode: folder });
  const trace = path.join(folder, 'defaultPass.trace.json');
  fs.writeFileSync(trace, JSON.stringify(worked(JSON.parse(fs.readFileSync(trace, 'utf8')))));
  return (await lighthouse(server.url + page, { ...settings, auditMode: folder })).lhr;
}

// judge returns the groups in which a page falls short, with the audits that cost them.
async function judge(page) {
  const lhr = await measure(page);
  if (lhr.runtimeError) return [{ group: 'run', fault: `${page}: ${lhr.runtimeError.message}` }];
  return Object.values(lhr.categories).filter(c => !(c.score >= enough)).map(c => {
    const cost = c.auditRefs.filter(r => lhr.audits[r.id].score !== null && lhr.audits[r.id].score < (r.weight ? 1 : 0.9)).map(r => lhr.audits[r.id]);
    return { group: c.id, fault: `${page}: ${c.id} ${c.score}: ${cost.map(a => `${a.id} ${a.displayValue ?? ''}`.trim()).join(', ')}` };
  });
}

const faults = [];
for (const page of pages) {
  let short = await judge(page);
  for (let again = tries - 1; again > 0 && short.length && short.every(s => s.group === 'performance'); again--) short = await judge(page);
  faults.push(...short.map(s => s.fault));
}
await browser.kill();
server.close();
fs.rmSync(folder, { recursive: true });
report(faults, pages.length, 'pages');
