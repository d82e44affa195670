// Lighthouse, as a phone on a slow line: at least 0.99 in each of its groups but speed, where 0.9 will do.   node lighthouse.mjs SITE PAGE...
// Speed is measured on this machine: one that is busy can only make it look worse, so the best of three tries counts.
import * as chrome from 'chrome-launcher';
import lighthouse from 'lighthouse';
import { flags, program } from './browser.mjs';
import { serve } from './serve.mjs';
import { report } from './site.mjs';

const [root, ...pages] = process.argv.slice(2);
const groups = ['performance', 'accessibility', 'best-practices', 'seo'];
const enough = 0.99;
const fast = 0.9; // on a machine that other checks share

const server = await serve(root);
const browser = await chrome.launch({ chromePath: program, chromeFlags: ['--headless=new', ...flags] });

// judge runs Lighthouse once and returns the groups that fall short, with the audits that cost them.
async function judge(page) {
  const { lhr } = await lighthouse(server.url + page, { port: browser.port, logLevel: 'silent', onlyCategories: groups });
  if (lhr.runtimeError) return [{ group: 'run', fault: `${page}: ${lhr.runtimeError.message}` }];
  return Object.values(lhr.categories).filter(c => !(c.score >= (c.id === 'performance' ? fast : enough))).map(c => {
    const cost = c.auditRefs.filter(r => lhr.audits[r.id].score !== null && lhr.audits[r.id].score < (r.weight ? 1 : 0.9)).map(r => lhr.audits[r.id]);
    return { group: c.id, fault: `${page}: ${c.id} ${c.score}: ${cost.map(a => `${a.id} ${a.displayValue ?? ''}`.trim()).join(', ')}` };
  });
}

const faults = [];
for (const page of pages) {
  let short = await judge(page);
  for (let again = 2; again > 0 && short.length && short.every(s => s.group === 'performance'); again--) short = await judge(page);
  faults.push(...short.map(s => s.fault));
}
await browser.kill();
server.close();
report(faults, pages.length, 'pages');
