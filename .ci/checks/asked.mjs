// What readers ask every year of a recipe: may I change it, how long does it keep, what if a jar does not seal; and the
// amounts of what no list has.   node asked.mjs SITE [FAULT]
// Sources: NCHFP, Can I double the recipe? (revised June 2025); USDA Complete Guide to Home Canning, AIB 539 (2015), Guide 3
// (the acid of each jar) and Guide 1 (24 hours for a jar that did not seal); WCAG 2.2, 2.1.1 keyboard, 2.5.8 (44 px here).
import { use } from './kitchen.mjs';
import { report } from './site.mjs';

const [root, fault] = process.argv.slice(2);
const tomatoes = '/recipes/crushed-tomatoes/';

// open lists what stands open: a question and its verdict.
const open = tab => tab.$$eval('.asks > .answers > li', all =>
  all.map(li => `${li.querySelector('.ask').textContent}: ${li.querySelector('.verdict').textContent}`));

const checks = [
  ...[true, false].map(javaScriptEnabled => ({
    name: javaScriptEnabled ? 'the questions' : 'the questions without script', page: tomatoes, options: { javaScriptEnabled },
    async look({ tab, say, same, holds }) {
      same((await open(tab)).slice(0, 3), ['A double batch: You may not', 'Fresh juice for bottled: You may not', 'A larger jar: You may not'], 'what stands open');
      await holds('.lasts dl', '12 months', 'how long it keeps sealed');
      await holds('.lasts ul', 'Within 24 hours', 'a jar that did not seal');
      const fold = tab.locator('.more summary', { hasText: 'Citric acid' });
      const answer = tab.locator('.more li', { hasText: 'Citric acid' }).locator('p');
      if (await answer.isVisible()) say('a fold stands open');
      await fold.focus();
      await tab.keyboard.press('Enter');
      if (!await answer.isVisible()) say('a fold does not open by the enter key');
      await holds('.more details[open]', '½ tsp to a quart', 'the dose of citric acid');
      if ((await fold.boundingBox()).height < 43.5) say('a fold is less than 44 px high');
      const bare = await tab.$$eval(':is(.answers li, .lasts dd, .lasts li)', all => all.filter(e => !e.querySelector('.by')?.textContent.trim()).length);
      if (bare) say(`${bare} answers name no source`);
      const said = await tab.$$eval('.answers p', all => all.map(p => p.firstChild.data));
      for (const s of said) if (/\bsafe\b/i.test(s)) say(`something is called safe: ${s}`);
      await holds('.asked', 'Follow your own food-safety authority', 'whose word counts');
      await tab.locator('.more a').first().click();
      if (!tab.url().endsWith('#keeping-boiling-water')) say(`another altitude leads to ${tab.url()}`);
    },
  })),
  {
    name: 'what nobody has tested', page: '/recipes/green-beans-in-pints/',
    async look({ tab, say }) {
      await tab.$$eval('.more details', all => all.forEach(d => (d.open = true)));
      const unknown = tab.locator('.unknown .verdict');
      if (!await unknown.count()) return say('nothing is unknown');
      const style = await unknown.first().evaluate(e => getComputedStyle(e).borderStyle);
      if (style !== 'dashed') say(`what is unknown looks like the rest: ${style}`);
      const words = new Set(await tab.$$eval('.verdict', all => all.map(e => e.textContent)));
      for (const word of ['You may', 'You may not', 'Not known']) if (!words.has(word)) say(`no answer is "${word}"`);
    },
  },
  {
    name: 'on paper', page: tomatoes, options: { colorScheme: 'dark' },
    async look({ tab, go, say, holds }) {
      await tab.emulateMedia({ media: 'print' });
      for (const part of ['.asks > .answers', '.lasts']) if (!await tab.locator(part).first().isVisible()) say(`${part} is not printed`);
      await go(tomatoes + 'card/');
      await holds('.c-asked', 'You may not: a double batch; fresh juice for bottled; a larger jar', 'what the card forbids');
      await holds('.c-keeps', 'Within 24 hours', 'a jar that did not seal, on the card');
    },
  },
  {
    name: 'juice that no list has', page: '/recipes/crab-apple-jelly/',
    async look({ tab, holds, is }) {
      const juice = '#method li:has-text("drip")';
      await holds(juice, 'You want 4 cups of juice', 'the juice of a batch');
      await tab.click('#fewer');
      await holds(juice, 'You want 2 cups of juice', 'the juice of half a batch');
      await tab.locator('[name=system][value=metric]').focus();
      await tab.keyboard.press('Space');
      await holds(juice, 'You want 470 ml of juice', 'the juice in metric measures');
      await is('.facts div:has(dt:text-is("Headspace")) b', '¼', 'the headspace');
    },
  },
];

const { faults, count } = await use(root, checks, fault);
report(faults, count, 'uses');
