// What the checks of a recipe page in use share: each is a name, a page and what a reader does there, in a fresh
// browser on a phone and on a desk. It hands its faults to say(), which puts the name of the use before each. A check may
// have patience for its page: so many milliseconds.
import { start } from './browser.mjs';
import { serve } from './serve.mjs';

const devices = {
  phone: { viewport: { width: 390, height: 844 }, hasTouch: true },
  desk: { viewport: { width: 1280, height: 900 } },
};

// use runs the checks, two at a time, on each device, and returns their faults and how many there were. Of a site that is
// damaged to have a fault, a regular expression, it runs only the use that the fault names, on a phone, until it is found.
export async function use(root, checks, fault) {
  const server = await serve(root);
  const browser = await start('--autoplay-policy=no-user-gesture-required');
  const runs = fault ? checks.filter(({ name }) => fault.startsWith(name + ': ')).map(check => ({ ...check, device: 'phone', patience: 5000 }))
    : Object.keys(devices).flatMap(device => checks.map(check => ({ ...check, device })));
  const wanted = fault && new RegExp(fault);
  const faults = runs.map(() => []);
  let next = 0;
  const worker = async () => {
    while (next < runs.length) {
      const i = next++;
      await one(browser, server.url, runs[i], faults[i], wanted);
    }
  };
  await Promise.all([worker(), worker()]);
  server.close();
  return { faults: faults.flat(), count: runs.length };
}

async function one(browser, url, { name, page, device, options = {}, patience = 20_000, prepare, look }, faults, wanted) {
  const context = await browser.newContext({ ...devices[device], ...options });
  const tab = await context.newPage();
  tab.setDefaultTimeout(patience);
  tab.setDefaultNavigationTimeout(30_000); // two pages load at a time, and other checks run beside
  let enough;
  const found = new Promise(resolve => { enough = resolve; });
  const say = fault => {
    faults.push(`${name}: ${fault} (${device})`);
    if (wanted?.test(faults.at(-1))) enough();
  };
  tab.on('pageerror', e => say(`the script fails: ${e.message}`));
  tab.on('console', m => m.type() === 'error' && say(`console: ${m.text()}`));
  const go = path => tab.goto(url + path, { waitUntil: 'load' });
  const visit = async () => {
    await prepare?.(tab);
    await go(page);
    await look({ tab, go, say, ...words(tab, say) });
  };
  await Promise.race([visit().catch(e => say(e.message.split('\n')[0])), found]);
  await context.close();
}

// words are what checks say most: what stands somewhere, and what should.
function words(tab, say) {
  const text = async selector => {
    const found = tab.locator(selector);
    return await found.count() ? (await found.first().innerText()).replace(/\s+/g, ' ').trim() : '';
  };
  return {
    text,
    // is says a fault unless an element's text is just this.
    async is(selector, wanted, what) {
      const found = await text(selector);
      if (found !== wanted) say(`${what}: "${found}", not "${wanted}"`);
    },
    // holds says a fault unless an element's text has this in it.
    async holds(selector, wanted, what) {
      const found = await text(selector);
      if (!found.includes(wanted)) say(`${what}: "${found}", without "${wanted}"`);
    },
    // told says a fault unless a status, which speaks up a little later, comes to have this in it.
    async told(selector, wanted, what) {
      await tab.waitForFunction(([s, w]) => document.querySelector(s).textContent.replace(/\s+/g, ' ').includes(w), [selector, wanted])
        .catch(async () => say(`${what}: "${await text(selector)}", without "${wanted}"`));
    },
    same(found, wanted, what) {
      if (JSON.stringify(found) !== JSON.stringify(wanted)) say(`${what}: ${JSON.stringify(found)}, not ${JSON.stringify(wanted)}`);
    },
    // amounts lists what the ledger says, without what stands in brackets or below.
    amounts: () => tab.$$eval('.ledger .amount > .q', all => all.map(e => e.textContent.replace(/\s+/g, ' '))),
  };
}
