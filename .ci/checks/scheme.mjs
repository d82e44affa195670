// Light or dark, as the reader chooses: kept in the browser, before the first picture of the page, never on paper.
//   node scheme.mjs SITE [FAULT]
// Sources: Media Queries 5 (prefers-color-scheme); WCAG 2.2, 2.1.1 keyboard, 2.4.7 focus, 2.5.8 (44 px here).
import { use } from './kitchen.mjs';
import { report } from './site.mjs';

const [root, fault] = process.argv.slice(2);
const page = '/recipes/crushed-tomatoes/';

const isDark = tab => tab.evaluate(() => {
  const [r, g, b] = getComputedStyle(document.body).backgroundColor.match(/\d+/g).map(Number);
  return r + g + b < 200;
});
const choose = async (tab, value) => {
  await tab.locator(`[name=scheme][value="${value}"]`).focus();
  await tab.keyboard.press('Space');
};
const dark = { colorScheme: 'dark' };

const checks = [
  ...['light', 'dark'].map(colorScheme => ({
    name: `without script, ${colorScheme}`, page, options: { javaScriptEnabled: false, colorScheme },
    async look({ tab, say, same }) {
      same(await isDark(tab), colorScheme === 'dark', 'the page is dark');
      if (await tab.locator('#scheme').isVisible()) say('the choice is shown, and does nothing');
    },
  })),
  {
    name: 'dark where the system is light', page,
    async look({ tab, go, say, same }) {
      const asked = [];
      tab.on('request', r => asked.push(r.url()));
      same(await isDark(tab), false, 'dark at first');
      await tab.locator('[name=scheme][value=""]').focus();
      await tab.keyboard.press('ArrowRight');
      await tab.keyboard.press('ArrowRight');
      same(await isDark(tab), true, 'dark by arrow keys');
      const ring = await tab.evaluate(() => parseFloat(getComputedStyle(document.activeElement.nextElementSibling).outlineWidth));
      if (!(ring >= 2)) say('the choice has no focus ring');
      const heights = await tab.$$eval('#scheme label', all => all.map(l => l.getBoundingClientRect().height));
      if (!heights.every(h => h >= 43.5)) say(`choices of ${heights} px`);
      same(await tab.$$eval('meta[name=theme-color]', all => all.filter(m => matchMedia(m.media).matches).map(m => m.content)), ['#0c1713'], 'the colour of the window');
      if (asked.some(u => /dark/.test(u))) say(`it was sent: ${asked}`);
      same(await tab.context().cookies(), [], 'cookies');
      await go('/');
      same(await isDark(tab), true, 'dark on another page');
      same(await tab.isChecked('[name=scheme][value=dark]'), true, 'the choice on another page');
      await choose(tab, '');
      same(await isDark(tab), false, 'dark when the system is asked again');
      await tab.emulateMedia({ colorScheme: 'dark' });
      same(await isDark(tab), true, 'dark as the system becomes');
    },
  },
  {
    name: 'light where the system is dark', page, options: dark,
    async look({ tab, same }) {
      await choose(tab, 'light');
      same(await isDark(tab), false, 'dark');
      same(await tab.evaluate(() => getComputedStyle(document.documentElement).colorScheme), 'light', 'the fields of the browser');
      await tab.reload();
      same(await isDark(tab), false, 'dark after a reload');
    },
  },
  {
    name: 'no flash', page,
    prepare: tab => tab.addInitScript(() => {
      window.seen = [];
      const look = () => {
        if (document.body) window.seen.push(getComputedStyle(document.body).backgroundColor);
        if (window.seen.length < 5) requestAnimationFrame(look);
      };
      requestAnimationFrame(look);
    }),
    async look({ tab, say }) {
      await choose(tab, 'dark');
      await tab.reload();
      await tab.waitForFunction(() => window.seen.length >= 5);
      const seen = await tab.evaluate(() => [...new Set(window.seen)]);
      if (seen.length !== 1) say(`the page flashes: ${seen.join(', then ')}`);
    },
  },
  {
    name: 'on paper', page,
    async look({ tab, say, same }) {
      await choose(tab, 'dark');
      await tab.emulateMedia({ media: 'print' });
      same(await tab.evaluate(() => getComputedStyle(document.body).color), 'rgb(0, 0, 0)', 'the ink');
      same(await isDark(tab), false, 'dark paper');
      if (await tab.locator('#scheme').isVisible()) say('the choice is printed');
    },
  },
  {
    name: 'without storage', page,
    prepare: tab => tab.addInitScript(() => Object.defineProperty(window, 'localStorage', { get() { throw new DOMException('no', 'SecurityError'); } })),
    async look({ tab, same }) {
      await choose(tab, 'dark');
      same(await isDark(tab), true, 'dark');
    },
  },
];

const { faults, count } = await use(root, checks, fault);
report(faults, count, 'uses');
