// The search as a reader uses it: misspelt, half typed, by keyboard alone, from an address, and without the script.
//   node search.mjs SITE [FAULT]
// Sources: WCAG 2.2 (2.1.1, 4.1.3); CSP level 3.
import { use } from './kitchen.mjs';
import { report } from './site.mjs';

const [root, fault] = process.argv.slice(2);

// What is typed, and what the first result must be.
const typed = [
  ['strawbery', 'Strawberry freezer jam'],
  ['gren beans', 'Green beans'],
  ['pickel', 'Pickles'],
  ['july', 'July'],
  ['presure', 'Pressure canner'],
  ['DAMSÓN', 'Damson preserves'],
  ['saurkraut', 'Sauerkraut'],
  ['crushed tom', 'Crushed tomatoes'],
  ['the altitude', 'What altitude does'],
];

const first = '#results li:first-child a';
const patience = 20_000; // what is fetched may take its time on a machine that other checks share
const told = async (tab, say, text) => {
  await tab.waitForFunction(() => /found/.test(document.querySelector('#found').textContent))
    .catch(async () => say(`what is said of "${text}": "${await tab.textContent('#found')}"`));
};
const type = async (tab, say, text) => {
  await tab.fill('#find', '');
  await tab.fill('#find', text);
  await told(tab, say, text);
};

const checks = [
  {
    name: 'words', page: '/search/', patience,
    async look({ tab, say, is }) {
      for (const [text, wanted] of typed) {
        await type(tab, say, text);
        await is(first, wanted, `the first result for "${text}"`);
      }
      await tab.fill('#find', 'xyzzyq');
      await tab.waitForFunction(() => /^Nothing found/.test(document.querySelector('#found').textContent));
    },
  },
  {
    name: 'keyboard', page: '/search/', patience,
    async look({ tab, say, same }) {
      await tab.focus('#find');
      await tab.keyboard.type('gren beans', { delay: 20 });
      await told(tab, say, 'gren beans');
      if (await tab.isVisible('#entries')) say('the lists still stand below the results');
      await tab.keyboard.press('Enter');
      same(await tab.evaluate(() => document.activeElement.textContent), 'Green beans', 'where Enter leads');
      await Promise.all([tab.waitForURL('**/produce/green-beans/'), tab.keyboard.press('Enter')]);
    },
  },
  {
    name: 'address', page: '/search/?q=pickel', patience,
    async look({ tab, say, is, same }) {
      await told(tab, say, 'pickel');
      await is(first, 'Pickles', 'the first result of an address');
      same(await tab.getAttribute('#found', 'role'), 'status', 'the role of what is said');
      await tab.fill('#find', '');
      await tab.waitForFunction(() => document.querySelector('#found').textContent === '');
      same(new URL(tab.url()).search, '', 'the address of an empty field');
      same(await tab.isVisible('#entries'), true, 'the lists are back');
    },
  },
  {
    name: 'no script', page: '/search/', options: { javaScriptEnabled: false }, patience,
    async look({ tab, same }) {
      same(await tab.isVisible('#find'), false, 'a field that does nothing is shown');
      same(await tab.isVisible('#entries a[href="/recipes/sauerkraut/"]'), true, 'the list is shown');
    },
  },
];

const { faults, count } = await use(root, checks, fault);
report(faults, count, 'uses');
