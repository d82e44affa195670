// Chromium, as the checks start it.
import { execFileSync } from 'node:child_process';
import { chromium } from 'playwright-core';
import { serve } from './serve.mjs';

export const program = execFileSync('which', ['chromium-headless-shell'], { encoding: 'utf8' }).trim();

// flags keep the browser from talking to anybody but the server that it is given; no sandbox, so that root can run it.
export const flags = [
  '--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run',
  '--disable-background-networking', '--disable-component-update', '--disable-sync',
];

// start gives a browser with these flags and more; a process has one of each sort, which ends with it.
const started = new Map();
export async function start(...more) {
  const sort = more.join(' ');
  if (!(await started.get(sort))?.isConnected()) started.set(sort, chromium.launch({ executablePath: program, args: [...flags, ...more] }));
  return started.get(sort);
}

// visit serves the site, opens each page in a fresh context, two at a time, and hands it, loaded, to look, which returns
// its faults. prepare, if given, runs before the page is asked for.
export async function visit(root, pages, options, look, prepare = async () => {}) {
  const server = await serve(root);
  const browser = await start();
  const faults = pages.map(() => []);
  let next = 0;
  const worker = async () => {
    while (next < pages.length) {
      const i = next++;
      const context = await browser.newContext(options);
      const tab = await context.newPage();
      await prepare(tab);
      const response = await tab.goto(server.url + pages[i], { waitUntil: 'load' });
      const found = response.ok() || pages[i] === '/404.html';
      faults[i] = found ? await look(tab, pages[i]) : [`${pages[i]}: answered ${response.status()}`];
      await context.close();
    }
  };
  await Promise.all([worker(), worker()]);
  server.close();
  return faults.flat();
}
