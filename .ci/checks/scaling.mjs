// A recipe for another batch, in the reader's browser: amounts follow, exactly and everywhere; what belongs to the jar
// and the canner never does.   node scaling.mjs SITE [FAULT]
// Sources: NCHFP, Can I double the recipe? (revised June 2025); WCAG 2.2, 4.1.3 status messages, 2.1.1 keyboard,
// 2.5.8 target size (44 px here), 3.2.2 on input, 3.3.1 error identification; CSP level 3.
import fs from 'node:fs';
import path from 'node:path';
import zlib from 'node:zlib';
import { use } from './kitchen.mjs';
import { report } from './site.mjs';

const [root, fault] = process.argv.slice(2);
const tomatoes = '/recipes/crushed-tomatoes/'; // 7 quarts from 22 lb, with 2 tbsp of bottled lemon juice in each
const most = 12 * 1024; // bytes of script, compressed

const checks = [
  {
    name: 'without script', page: tomatoes, options: { javaScriptEnabled: false },
    async look({ tab, say, same, amounts, holds }) {
      for (const part of ['#scaler', '#stove', '#height', '.run', '#timers']) {
        if (await tab.locator(part).first().isVisible()) say(`${part} is shown, and does nothing`);
      }
      same(await amounts(), ['22 lb', '14 tablespoons', '7 teaspoons'], 'the amounts');
      await holds('.ledger li', '(10 kg)', 'tomatoes in other measures');
      same(await tab.locator('table.scale tbody tr:visible').count(), 4, 'rows of the table');
      await holds('.apart', 'advises against doubling', 'more than one batch');
    },
  },
  {
    name: 'two batches', page: tomatoes,
    async look({ tab, is, holds, told, same, amounts, text }) {
      const before = await text('.keep');
      await tab.click('#more');
      same(await amounts(), ['44 lb', '1¾ cups', '¼ cup + 2 tsp'], 'what to buy');
      await is('.ledger .pot', '22 lb a batch', 'tomatoes in a pot');
      await told('#now', 'Amounts now for 14 quart jars: 2 batches, each cooked and canned on its own.', 'the status');
      await holds('#work', '2 canner loads of up to 7 quart jars. About 7 h 30 min in the kitchen.', 'the work');
      await is('#makes', '14 quart jars', 'what it makes');
      const acid = () => holds('#step-6', 'Put 2 tablespoons of bottled lemon juice into each hot quart jar, or 1 tablespoon into each pint.', 'the acid of a jar');
      await acid();
      same(await text('.keep'), before, 'times, headspace and acid');
      same(await tab.evaluate(() => document.activeElement.id), 'more', 'the focus');
      await tab.reload();
      same((await amounts())[0], '44 lb', 'what to buy after a reload');
      await tab.click('#fewer');
      same(await amounts(), ['22 lb', '14 tablespoons', '7 teaspoons'], 'the words of the recipe');
      await tab.click('#fewer');
      same((await amounts())[0], '11 lb', 'half a batch');
      await acid();
      await told('#work', 'What does not fill a jar goes in the refrigerator.', 'half a jar');
    },
  },
  {
    name: 'without storage', page: tomatoes,
    prepare: tab => tab.addInitScript(() => Object.defineProperty(window, 'localStorage', { get() { throw new DOMException('no', 'SecurityError'); } })),
    async look({ tab, same, amounts }) {
      await tab.fill('#altitude', '5200');
      await tab.click('#more');
      same((await amounts())[0], '44 lb', 'what to buy');
      same(await tab.locator('.mine').count(), 1, 'the rows of the altitude');
    },
  },
  {
    name: 'jars on hand', page: tomatoes,
    async look({ tab, told, same, amounts, is, holds }) {
      await tab.fill('#jars', '9');
      await told('#now', '9 quart jars: 1 full batch and a smaller one', 'the status');
      same(await amounts(), ['28½ lb', '1 1/8 cups', '3 tbsp'], 'what to buy');
      await is('.ledger .pot', '22 lb a batch, 6 lb 5 oz in the last', 'tomatoes in each pot');
      await tab.selectOption('#jar', 'pint');
      await holds('#makes', '18 pint jars', 'the same in pints');
      await tab.fill('#jars', '1000');
      await told('#work', 'This recipe is offered for ½ to 4 batches.', 'too many jars');
      same((await amounts())[0], '88 lb', 'no more than is offered');
    },
  },
  {
    name: 'produce on hand', page: tomatoes,
    async look({ tab, told, same, amounts }) {
      await tab.fill('#have', '11');
      await told('#now', '3½ quart jars: ½ batch', 'eleven pounds');
      await tab.selectOption('#have-unit', 'kg');
      await tab.fill('#have', '19.958');
      same((await amounts())[0], '44 lb', 'nearly twenty kilograms');
      same(await tab.inputValue('#batches'), '2', 'the batches');
      await tab.fill('#have', '1 1/2 lb');
      same(await tab.getAttribute('#have', 'aria-invalid'), 'true', 'words in a field of numbers');
      await told('#now', 'Write a number', 'the way to put it right');
      same((await amounts())[0], '44 lb', 'the amounts after a mistake');
    },
  },
  {
    name: 'amounts in steps', page: '/recipes/applesauce-by-steam/',
    async look({ tab, holds, same, text }) {
      const other = await text('#step-5');
      await tab.click('#fewer');
      await holds('#step-3', 'in the pot with the ¼ cup of water. Heat them quickly, stirring so the bottom doesn’t catch, until they are soft, 5 to 20 minutes', 'the water');
      await holds('.ledger li:nth-child(2)', 'in 2 quarts of cold water', 'the water of a note');
      same(await text('#step-5'), other, 'headspace');
      await tab.fill('#batches', '1 1/2');
      await holds('#step-3', '½ cup (¼ cup for the last batch) of water', 'the last batch');
    },
  },
  {
    name: 'other measures', page: '/recipes/bread-and-butter-pickles/',
    async look({ tab, same, amounts, holds }) {
      await tab.click('.weights summary');
      await holds('.weights', 'celery seed: 104 g. USDA National Nutrient Database', 'where the weights are from');
      const choose = value => tab.locator(`[name=system][value=${value}]`).focus().then(() => tab.keyboard.press('Space'));
      const inAll = { metric: ['2.7 kg', '1.35 kg', '145 g', '950 ml', '900 g', '30 ml'], weight: ['2.7 kg', '1.35 kg', '145 g', '960 g', '900 g', '22 g'] };
      for (const [system, wanted] of Object.entries(inAll)) {
        await choose(system);
        same((await amounts()).slice(0, 6), wanted, `by ${system}`);
      }
      await tab.goto(tab.url().replace('bread-and-butter-pickles', 'pickled-beets'));
      same((await amounts())[0], '3.15 kg', 'the choice on another page');
      await choose('us');
      same((await amounts()).slice(0, 5), ['6 lb 15 oz', '4', '4 1/8 cups', '1 7/8 cups + 1 tbsp', '2 cups'], 'in US measures');
    },
  },
  {
    name: 'a way that takes a larger batch', page: '/recipes/blackberry-jam/',
    async look({ tab, same, amounts, told, is }) {
      same(await tab.locator('.batch').isVisible(), true, 'the size of its batch');
      await tab.locator('[name=way]').nth(1).focus();
      await tab.keyboard.press('Space');
      same(await amounts(), ['9 cups', '6 cups'], 'the amounts');
      await told('#now', '7½ half-pint jars: 1 batch of 3 times the recipe', 'the status');
      same(await tab.locator('.batch').isVisible(), false, 'a size that is no longer beside the amounts');
      await tab.click('#more');
      await is('.ledger .pot', '9 cups a batch', 'the pot');
    },
  },
  {
    name: 'by keyboard alone', page: tomatoes,
    async look({ tab, say, same, amounts }) {
      await tab.focus('#fewer');
      for (const id of ['batches', 'more', 'jars', 'jar', 'have', 'have-unit']) {
        await tab.keyboard.press('Tab');
        const at = await tab.evaluate(() => {
          const { outlineStyle, outlineWidth } = getComputedStyle(document.activeElement);
          return { id: document.activeElement.id, ring: outlineStyle !== 'none' && parseFloat(outlineWidth) >= 2 };
        });
        if (at.id !== id) say(`after a tab the focus is on ${at.id}, not ${id}`);
        if (!at.ring) say(`${id} has no focus ring`);
      }
      await tab.keyboard.press('Tab');
      await tab.keyboard.press('ArrowRight');
      await tab.keyboard.press('ArrowRight');
      same((await amounts())[0], '10 kg', 'metric by arrow keys');
      await tab.focus('#more');
      await tab.keyboard.press('Enter');
      same((await amounts())[0], '20 kg', 'more by the enter key');
    },
  },
  {
    name: 'statuses and targets', page: tomatoes,
    async look({ tab, say, same }) {
      same(await tab.getAttribute('#now', 'role'), 'status', 'the role of what is said');
      same(await tab.textContent('#now'), '', 'what is said before anything changed');
      const small = await tab.$$eval('#scaler :is(button, input:not([type=hidden]), select), #height :is(input, select), .run :is(button, select), .stove button:not([hidden])', all =>
        all.filter(e => e.checkVisibility()).map(e => [e.id || e.value || e.textContent, e.getBoundingClientRect()])
          .filter(([, r]) => r.width < 43.5 || r.height < 43.5).map(([name, r]) => `${name} ${Math.round(r.width)} by ${Math.round(r.height)}`));
      for (const s of small) say(`smaller than 44 px: ${s}`);
      const names = (await tab.$$eval('script[src]', all => all.map(s => s.getAttribute('src'))));
      const bytes = names.reduce((sum, name) => sum + zlib.gzipSync(fs.readFileSync(path.join(root, name)), { level: 9 }).length, 0);
      if (bytes >= most || names.length < 5) say(`${names.length} scripts of ${bytes} bytes, compressed`);
    },
  },
  {
    name: 'on paper', page: tomatoes, options: { colorScheme: 'dark' },
    async look({ tab, say, same, amounts, told }) {
      await tab.fill('#altitude', '5200');
      await tab.click('#more');
      await told('#now', '14 quart jars', 'the status');
      await tab.emulateMedia({ media: 'print' });
      for (const part of ['#scaler', '#stove', '.run', '#altitude']) {
        if (await tab.locator(part).first().isVisible()) say(`${part} is printed`);
      }
      for (const part of ['#now', '.apart', '.mine', '.caution', '.ledger .pot']) {
        if (!await tab.locator(part).first().isVisible()) say(`${part} is not printed`);
      }
      same((await amounts())[0], '44 lb', 'the printed amounts');
      same(await tab.locator('table.scale tbody tr:visible').count(), 4, 'printed rows of the table');
      same(await tab.evaluate(() => getComputedStyle(document.body).color), 'rgb(0, 0, 0)', 'the ink');
    },
  },
];

const { faults, count } = await use(root, checks, fault);
report(faults, count, 'uses');
