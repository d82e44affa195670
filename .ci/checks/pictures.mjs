// The pictures of pages: WebP where the browser takes it, JPEG where not, in the size that the screen needs, and no line
// of text moves when they come late.   node pictures.mjs SITE [FAULT]
// Sources: HTML Living Standard, 4.8.4 (source selection, width and height as the ratio); Core Web Vitals (shift). That a
// picture may be up to twice as wide as its place is our own measure.
import { execFileSync } from 'node:child_process';
import { use } from './kitchen.mjs';
import { report } from './site.mjs';

const [root, fault] = process.argv.slice(2);
const first = 'main picture img';

const loaded = tab => tab.waitForFunction(s => document.querySelector(s).complete, first);
// chosen tells which file the browser took, and how many of its pixels there are to one of the page.
const chosen = tab => tab.$eval(first, async img => {
  const bits = await createImageBitmap(await (await fetch(img.currentSrc)).blob());
  return { file: img.currentSrc.split('.').pop(), scale: bits.width / img.getBoundingClientRect().width };
});

const checks = ['/recipes/crushed-tomatoes/', '/'].flatMap(page => [
  {
    name: `what is chosen at ${page}`, page,
    async look({ tab, say, same }) {
      await loaded(tab);
      const { file, scale } = await chosen(tab);
      same(file, 'webp', 'the format');
      if (scale < 0.95 || scale > 2) say(`the file is ${scale.toFixed(2)} times as wide as its place`);
      await tab.$eval('main picture source', source => source.remove());
      await tab.waitForFunction(s => document.querySelector(s).currentSrc.endsWith('.jpg'), first).catch(() => {});
      same((await chosen(tab)).file, 'jpg', 'the format of browsers without WebP');
    },
  },
  {
    name: `without script at ${page}`, page, options: { javaScriptEnabled: false },
    async look({ tab, same }) {
      await tab.locator(first).first().evaluate(img => img.decode());
      same((await chosen(tab)).file, 'webp', 'the format');
    },
  },
  {
    name: `on paper at ${page}`, page,
    async look({ tab, say }) {
      const shown = await tab.locator(first).count();
      const printed = execFileSync('pdfimages', ['-list', '-'], { input: await tab.pdf(), encoding: 'utf8' }).split('\n').filter(line => / image /.test(line)).length;
      if (printed < shown) say(`of ${shown} pictures, ${printed} are printed`);
    },
  },
  {
    name: `pictures that come late at ${page}`, page,
    async prepare(tab) {
      let measured;
      const late = new Promise(resolve => { measured = resolve; });
      await tab.exposeFunction('measured', measured);
      await tab.route(/\.(webp|jpg)$/, async route => {
        await late;
        await route.continue();
      });
      await tab.addInitScript(() => document.addEventListener('DOMContentLoaded', () => {
        window.room = [...document.images].map(img => Math.round(img.getBoundingClientRect().height));
        window.early = document.images[0].complete;
        window.measured();
      }));
    },
    async look({ tab, say, same }) {
      await loaded(tab);
      const after = await tab.evaluate(() => [...document.images].map(img => Math.round(img.getBoundingClientRect().height)));
      if (await tab.evaluate(() => window.early)) say('the pictures were not late');
      same(await tab.evaluate(() => window.room), after, 'the room that is kept for them');
    },
  },
]);

const { faults, count } = await use(root, checks, fault);
report(faults, count, 'uses');
