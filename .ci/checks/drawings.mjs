// The pictures of a recipe page: they follow the reader's altitude, say in words what they show, and can be read.
//   node drawings.mjs SITE [FAULT]
// Sources: USDA Complete Guide to Home Canning, AIB 539 (2015), the altitude tables; WCAG 2.2, 1.1.1 non-text content and
// 1.4.1 use of colour; SVG accessibility API mappings (title and desc). That words are 11 px high, on paper 7.5 points, is
// our own measure.
import { execFileSync } from 'node:child_process';
import { use } from './kitchen.mjs';
import { report } from './site.mjs';

const [root, fault] = process.argv.slice(2);
const [tomatoes, beans, beets, jelly, corn, onions] = ['crushed-tomatoes', 'green-beans-in-pints', 'pickled-beets',
  'crab-apple-jelly', 'sweet-corn-off-the-cob', 'red-onions-for-the-fridge'].map(slug => `/recipes/${slug}/`);

// marked gives, of each chart, where the mark stands, in parts of a hundred of the chart, what it says and the figures
// that stand out.
const marked = tab => tab.$$eval('.d-chart', charts => charts.map(chart => {
  const mark = chart.querySelector('.d-here'), room = chart.getBoundingClientRect();
  if (mark.getAttribute('display') === 'none') return '';
  const pin = mark.querySelector('.d-mark').getBoundingClientRect();
  const at = Math.round(1000 * ((pin.left + pin.right) / 2 - room.left) / room.width) / 10;
  return [at, mark.textContent.trim(), ...[...chart.querySelectorAll('.here')].map(e => e.textContent)].join(' ').replace(/\u00a0/g, ' ');
}));

// muddled runs in the page and names the words of pictures that lie over one another, are cut off or are too small.
function muddled(least = 11) {
  const faults = [];
  for (const svg of document.querySelectorAll('svg[role=img]')) {
    const room = svg.getBoundingClientRect();
    if (!room.width) continue;
    const words = [...svg.querySelectorAll('text')].filter(e => e.getBoundingClientRect().width).map(e => {
      const { left, right, top, bottom } = e.getBoundingClientRect();
      const air = (bottom - top) / 4; // above capitals and below the line
      const size = parseFloat(getComputedStyle(e).fontSize) * e.getScreenCTM().d;
      return { text: e.textContent.trim(), left, right, top: top + air, bottom: bottom - air, size, turned: e.hasAttribute('transform') };
    });
    words.forEach((a, i) => {
      if (!a.turned && a.size < least) faults.push(`"${a.text}" is ${a.size.toFixed(1)} px high`);
      if (a.left < room.left - 1 || a.right > room.right + 1 || a.top < room.top || a.bottom > room.bottom) faults.push(`"${a.text}" is cut off`);
      for (const b of words.slice(i + 1))
        if (a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom) faults.push(`"${a.text}" lies over "${b.text}"`);
    });
  }
  return faults;
}

// crowded are the pages whose pictures have most in them, and the altitude at which their marks are in the way.
const crowded = [[tomatoes, '6,000'], [beans, '9,000'], [beets, '1,000'], [jelly, '200'], [corn]];

const day = tab => tab.$eval('#day', svg => {
  const box = svg.querySelector('.d-can'), later = svg.querySelector('g');
  return {
    takes: later.previousElementSibling.textContent.replace(/\u00a0/g, ' '),
    minutes: Math.round(box.getBBox().height / svg.dataset.scale),
    after: Math.abs(box.getBoundingClientRect().bottom - later.querySelector('rect').getBoundingClientRect().top) < 2.5,
    inside: later.getBoundingClientRect().bottom <= svg.getBoundingClientRect().bottom + 1,
  };
});

const checks = [
  {
    name: 'the mark on a chart', page: tomatoes,
    async look({ tab, same }) {
      const at = async (value, unit = 'ft') => {
        await tab.selectOption('#altitude-unit', unit);
        await tab.fill('#altitude', String(value));
        return (await marked(tab))[0];
      };
      same(await marked(tab), ['19.5 our kitchen, 1,350 ft'], 'before an altitude is set');
      same(await at(0), '4 you, 0 ft 45 35', 'the sea');
      same(await at(1000), '15.5 you, 1,000 ft 45 35', '1,000 ft');
      same(await at(1001), '15.5 you, 1,001 ft 50 40', '1,001 ft');
      same(await at(305, 'm'), '15.5 you, 305 m 45 35', '305 m');
      same(await at(306, 'm'), '15.5 you, 306 m 50 40', '306 m');
      same(await at(3001), '38.5 you, 3,001 ft 55 45', '3,001 ft');
      same(await at(6001), '73 you, 6,001 ft 60 50', '6,001 ft');
      same(await at(12000), '96 you, 12,000 ft 60 50', 'above the chart');
      same(await at('high'), '19.5 our kitchen, 1,350 ft', 'what is no altitude');
      same(await at(''), '19.5 our kitchen, 1,350 ft', 'no altitude');
    },
  },
  {
    name: 'the marks of two gauges', page: beans,
    async look({ tab, same }) {
      await tab.fill('#altitude', '8000');
      same(await marked(tab), ['77.6 you, 8,000 ft 14', '77.6 you, 8,000 ft 15'], '8,000 ft');
      await tab.fill('#altitude', '8001');
      same(await marked(tab), ['77.6 you, 8,001 ft', '77.6 you, 8,001 ft 15'], 'beyond what is published for a dial');
    },
  },
  {
    name: 'the processing in the day', page: tomatoes,
    async look({ tab, same }) {
      same(await day(tab), { takes: '50 min at 1,350 ft', minutes: 50, after: true, inside: true }, 'in the kitchen of the recipe');
      for (const [feet, minutes, takes] of [['0', 45, '45 min at 0 ft'], ['5200', 55, '55 min at 5,200 ft'], ['6001', 60, '1 h at 6,001 ft'], ['', 50, '50 min at 1,350 ft']]) {
        await tab.fill('#altitude', feet);
        same(await day(tab), { takes, minutes, after: true, inside: true }, `at "${feet}" ft`);
      }
    },
  },
  {
    name: 'pictures without script', page: tomatoes, options: { javaScriptEnabled: false },
    async look({ tab, same }) {
      same(await tab.locator('svg[role=img]:visible').count(), 4, 'pictures that are shown');
      same(await tab.locator('.d-here text').textContent(), 'our kitchen, 1,350\u00a0ft', 'the mark');
    },
  },
  {
    name: 'pictures in words', page: tomatoes,
    async look({ tab, same, say }) {
      const told = await tab.$$eval('svg[role=img]', all => all.map(svg => {
        const by = (svg.getAttribute('aria-labelledby') ?? '').split(' ').map(id => document.getElementById(id)?.textContent ?? '').join(' ');
        return (svg.getAttribute('aria-label') ?? by).replace(/\u00a0/g, ' ');
      }));
      for (const words of ['½ in (13 mm) is left free', 'Quart: 45 min up to 1,000 ft, 50 min up to 3,000 ft, 55 min up to 6,000 ft, 60 min above that.',
        'from July to October', 'Hands on, 2 h; Cooking, 55 min'])
        if (!told.some(t => t.includes(words))) say(`no picture says in words: ${words}`);
      same(told.length, 4, 'pictures');
    },
  },
  {
    name: 'pictures on paper', page: beans,
    async look({ tab, same, say }) {
      await tab.fill('#altitude', '8000');
      const pictures = tab.locator('svg[role=img]:visible'), drawn = await pictures.count();
      await tab.emulateMedia({ media: 'print' });
      for (const [paper, width] of [['A4', 688], ['Letter', 710]]) { // without their margins
        await tab.setViewportSize({ width, height: 900 });
        same(await pictures.count(), drawn, `pictures on ${paper}`);
        for (const fault of await tab.evaluate(muddled, 10)) say(`${fault} on ${paper}`);
      }
      const words = execFileSync('pdftotext', ['-', '-'], { input: await tab.pdf(), encoding: 'utf8' }).replace(/\s+/g, ' ');
      for (const w of ['you, 8,000 ft', 'Nothing is published above 8,000 ft']) if (!words.includes(w)) say(`paper does not say: ${w}`);
    },
  },
  {
    name: 'no picture where it says nothing', page: onions,
    async look({ tab, same }) {
      same(await tab.locator('.d-chart, .cut').count(), 0, 'charts and jars of a refrigerator pickle');
    },
  },
  {
    name: 'words in the pictures', page: onions,
    async look({ tab, go, say }) {
      const phone = tab.viewportSize().width < 500;
      for (const [page, altitude] of crowded) {
        await go(page);
        if (altitude) await tab.fill('#altitude', altitude);
        await tab.evaluate(() => document.fonts.ready);
        for (const width of phone ? [320, 390] : [820, 1280]) {
          await tab.setViewportSize({ width, height: 900 });
          for (const fault of await tab.evaluate(muddled)) say(`${page}: ${fault} at ${width} px`);
        }
      }
    },
  },
];

const { faults, count } = await use(root, checks, fault);
report(faults, count, 'uses');
