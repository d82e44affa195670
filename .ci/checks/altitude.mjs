// A reader's altitude: it picks rows, never hides any, and leaves the browser with nobody.   node altitude.mjs SITE [FAULT]
// Sources: USDA Complete Guide to Home Canning, AIB 539 (2015), the altitude tables; sterilising 10 minutes and 1 more
// for each further 1,000 ft, and jelly at 8 °F above boiling water, the same; standard atmosphere, ISO 2533 (212 °F at the
// sea, 206 °F at 3,000 ft); 1,000 ft is 305 m in published tables; WCAG 2.2, 1.4.1 use of colour.
import { use } from './kitchen.mjs';
import { report } from './site.mjs';

const [root, fault] = process.argv.slice(2);
const [tomatoes, beans, jelly] = ['crushed-tomatoes', 'green-beans-in-pints', 'crab-apple-jelly'].map(slug => `/recipes/${slug}/`);

const sum = /\.[0-9a-f]{16}\.(?=\w+$)/; // in the name of a file; it may have the figures of an altitude by chance

// marked gives the altitude and the figures of the row that is the reader's, of each table.
const marked = tab => tab.$$eval('table.scale', tables => tables.map(t => {
  const rows = t.querySelectorAll('[aria-current=true]');
  const row = rows[0];
  if (rows.length > 1) return `${rows.length} rows`;
  if (!row) return '';
  return [row.cells[0].firstChild.textContent, ...[...row.querySelectorAll('td b')].map(b => b.textContent)].join(' ').replace(/\u00a0/g, ' ');
}));

const focused = tab => tab.evaluate(() => document.activeElement.id);

// contrasts runs in the page: how the marked row's words and frame stand out from what lies under them, by WCAG 2.2.
function contrasts() {
  const light = colour => {
    const [r, g, b] = colour.match(/[\d.]+/g).map(n => n / 255).map(c => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4));
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const ratio = (a, b) => (Math.max(light(a), light(b)) + 0.05) / (Math.min(light(a), light(b)) + 0.05);
  const row = getComputedStyle(document.querySelector('.scale tbody [aria-current]')), words = document.querySelector('.mine');
  return {
    words: ratio(getComputedStyle(words).color, getComputedStyle(words.parentElement).backgroundColor),
    frame: ratio(row.outlineColor, getComputedStyle(document.body).backgroundColor),
    style: row.outlineStyle,
  };
}

const checks = [
  {
    name: 'an altitude', page: tomatoes,
    async look({ tab, go, say, same, told, is }) {
      const asked = [];
      const rows = await tab.locator('table.scale tbody tr:visible').count();
      tab.on('request', r => asked.push(r.url()));
      await tab.fill('#altitude', '5200');
      await told('#here', 'At 5,200 ft', 'the summary');
      await told('#here', 'quart 55 min, pint 45 min', 'the minutes');
      same(await marked(tab), ['3,001–6,000 ft 55 45'], 'the row');
      await is('.mine', 'YOUR ALTITUDE', 'words, since colour is not enough');
      same(await tab.locator('table.scale tbody tr:visible').count(), rows, 'rows that can be seen');
      await tab.waitForTimeout(300);
      if (asked.length) say(`something was asked for: ${asked}`);
      same(await tab.context().cookies(), [], 'cookies');
      await go(jelly);
      same(await tab.inputValue('#altitude'), '5200', 'the altitude on another page');
      same(await marked(tab), ['1,001–6,000 ft 10 10'], 'the row on another page');
      if (asked.some(url => /5[,.]?200/.test(url.replace(sum, '.')))) say(`the altitude was sent: ${asked}`);
    },
  },
  {
    name: 'edges of bands', page: tomatoes,
    async look({ tab, same }) {
      const at = async (value, unit) => {
        await tab.selectOption('#altitude-unit', unit);
        await tab.fill('#altitude', String(value));
        return (await marked(tab))[0];
      };
      same(await at(0, 'ft'), '0–1,000 ft 45 35', 'the sea');
      same(await at(1000, 'ft'), '0–1,000 ft 45 35', '1,000 ft');
      same(await at(1001, 'ft'), '1,001–3,000 ft 50 40', '1,001 ft');
      same(await at(305, 'm'), '0–1,000 ft 45 35', '305 m');
      same(await at(306, 'm'), '1,001–3,000 ft 50 40', '306 m');
      same(await at('6,000', 'ft'), '3,001–6,000 ft 55 45', '6,000 ft');
      same(await at(12000, 'ft'), 'above 6,000 ft 60 50', '12,000 ft');
      same(await at('', 'ft'), '', 'no altitude');
    },
  },
  {
    name: 'bands in metres', page: '/recipes/pickled-beets/',
    async look({ tab, same }) {
      await tab.fill('#altitude', '984');
      same((await marked(tab))[0], '0–300 m 30', '984 ft, just under 300 m');
      await tab.fill('#altitude', '985');
      same((await marked(tab))[0], '301–900 m 35', '985 ft, just over');
    },
  },
  {
    name: 'beyond what is published', page: beans,
    async look({ tab, same, told, holds }) {
      await tab.fill('#altitude', '9000');
      same(await marked(tab), ['', 'above 1,000 ft 15'], 'the rows at 9,000 ft');
      await holds('.beyond', 'Nothing is published for 9,000 ft', 'what is said of the dial gauge');
      await told('#here', 'Pressure on a dial gauge: nothing is published', 'the summary');
      await tab.fill('#altitude', '1350');
      same(await marked(tab), ['0–2,000 ft 11', 'above 1,000 ft 15'], 'the rows at 1,350 ft');
      await told('#here', 'pint 15 psi for 20 min', 'the pressure');
    },
  },
  {
    name: 'empty jars and the jelly point', page: jelly,
    async look({ tab, told, same }) {
      for (const [feet, minutes, boil, gel] of [[0, 10, '212 °F (100 °C)', '220 °F'], [1001, 11, '210 °F (99 °C)', '218 °F'], [3000, 12, '206 °F', '214 °F'], [7999, 17, '197 °F', '205 °F']]) {
        await tab.fill('#altitude', String(feet));
        await told('#here', `Boil empty jars for ${minutes} minutes`, `${feet} ft`);
        await told('#here', `Water boils at about ${boil}`, `${feet} ft`);
        await told('#here', `jelly sets at about ${gel}`, `${feet} ft`);
      }
      await tab.fill('#altitude', '20000');
      await told('#here', 'Jelly sets 8 °F (4 °C) above the boiling water in your own pan', 'above all kitchens');
      same(await tab.getAttribute('#here', 'role'), 'status', 'the role of the summary');
    },
  },
  {
    name: 'what is no altitude', page: tomatoes,
    async look({ tab, same, told }) {
      for (const text of ['high', '4500.5', '-100', '99999']) {
        await tab.fill('#altitude', text);
        same([await tab.getAttribute('#altitude', 'aria-invalid'), (await marked(tab))[0]], ['true', ''], text);
        await told('#here', 'Write a whole number', text);
      }
      await tab.reload();
      same(await tab.inputValue('#altitude'), '', 'what is kept of it');
    },
  },
  {
    name: 'by keyboard alone', page: beans,
    async look({ tab, same, told }) {
      for (let i = 0; i < 80 && await focused(tab) !== 'altitude'; i++) await tab.keyboard.press('Tab');
      const ring = () => tab.evaluate(() => parseFloat(getComputedStyle(document.activeElement).outlineWidth) >= 2 && getComputedStyle(document.activeElement).outlineStyle !== 'none');
      same([await focused(tab), await ring()], ['altitude', true], 'the field and its ring');
      await tab.keyboard.type('411');
      await tab.keyboard.press('Tab');
      same([await focused(tab), await ring()], ['altitude-unit', true], 'the unit and its ring');
      await tab.keyboard.press('m');
      await told('#here', 'At 411 m', 'the summary');
      await told('#here', 'pint 15 psi for 20 min', 'the pressure');
    },
  },
  {
    name: 'the tables without script', page: beans, options: { javaScriptEnabled: false },
    async look({ tab, say, same }) {
      for (const part of ['#height', '#here', '.mine']) if (await tab.locator(part).first().isVisible()) say(`${part} is shown, and does nothing`);
      const rows = await tab.locator('table.scale tbody tr:visible').allInnerTexts();
      same(rows.map(r => r.replace(/\s+/g, ' ').replace(/^(.*? ft).*?(\d+) psi.*/, '$1 $2')), [
        '0–2,000 ft 11', '2,001–4,000 ft 12', '4,001–6,000 ft 13', '6,001–8,000 ft 14', '0–1,000 ft 10', 'above 1,000 ft 15',
      ], 'the rows');
    },
  },
  ...[{ colorScheme: 'dark' }, { colorScheme: 'dark', forcedColors: 'active' }].map(options => ({
    name: options.forcedColors ? 'the row in colours of the reader' : 'the row in the dark', page: tomatoes, options,
    async look({ tab, say, is }) {
      await tab.fill('#altitude', '5200');
      await is('.mine', 'YOUR ALTITUDE', 'the words');
      const { words, frame, style } = await tab.evaluate(contrasts);
      if (words < 4.5) say(`the words stand out by ${words.toFixed(1)} to 1`);
      if (frame < 3 || style === 'none') say(`the frame stands out by ${frame.toFixed(1)} to 1, ${style}`);
    },
  })),
];

const { faults, count } = await use(root, checks, fault);
report(faults, count, 'uses');
