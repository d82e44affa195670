// The page of an episode as a listener uses it: chapters and lines that play from their marks, the line that is said
// now, words found in the transcript, by keyboard too; and all of it readable without script.
//    node listening.mjs SITE [FAULT]
// Sources: WCAG 2.2, 1.2.1 (a transcript in place of sound), 2.1.1, 2.3.3, 4.1.3; media fragments, W3C.
import { use } from './kitchen.mjs';
import { report } from './site.mjs';

const [root, fault] = process.argv.slice(2);
const page = '/show-notes/blackberries-twice/';
const time = tab => tab.evaluate(() => document.getElementById('audio').currentTime);
const near = (a, b) => Math.abs(a - b) < 3;

const checks = [
  {
    name: 'marks', page,
    async look({ tab, say }) {
      const chapter = tab.locator('.at[data-from]').nth(2);
      await chapter.click();
      await tab.waitForSelector('.line[aria-current]');
      if (!near(await time(tab), Number(await chapter.getAttribute('data-from')))) say(`the chapter plays from ${await time(tab)}`);
      if (await tab.locator('.at[aria-current]').count() !== 1) say('no chapter, or several, are the present one');
      const line = tab.locator('.line').nth(5);
      await line.click();
      await tab.waitForFunction(() => document.querySelectorAll('.line')[5].ariaCurrent === 'true' || document.querySelectorAll('.line')[6].ariaCurrent === 'true');
      if (!near(await time(tab), Number(await line.getAttribute('data-from')))) say(`the line plays from ${await time(tab)}`);
      if (await tab.locator('#play').innerText() !== 'Pause') say('the button does not offer a pause');
    },
  },
  {
    name: 'the reader leads', page, options: { reducedMotion: 'reduce' },
    async look({ tab, say }) {
      await tab.locator('.line').first().click();
      await tab.waitForSelector('.line[aria-current]');
      await tab.evaluate(() => scrollTo(0, 0));
      await tab.evaluate(() => { document.getElementById('audio').currentTime = 60; });
      await tab.waitForFunction(() => Number(document.querySelector('.line[aria-current]')?.dataset.from) > 50);
      if (await tab.evaluate(() => scrollY) > 0) say('the page scrolls away from a reader who looks elsewhere');
      await tab.locator('#transcript').scrollIntoViewIfNeeded();
      await tab.evaluate(() => scrollTo(0, 0));
      await tab.waitForFunction(() => !document.getElementById('here').hidden).catch(() => say('no way back to what is said'));
    },
  },
  {
    name: 'an address with a time', page: page + '#t=36',
    async look({ tab, say }) {
      await tab.waitForFunction(() => document.getElementById('audio').currentTime > 0).catch(() => {});
      if (!near(await time(tab), 36)) say(`it stands at ${await time(tab)}, not 36`);
    },
  },
  {
    name: 'finding', page,
    async look({ tab, say, is }) {
      await tab.keyboard.press('Tab');
      await tab.locator('#words').focus();
      await tab.keyboard.type('CUPS');
      await is('#hits', '4 found', 'what is said of the places');
      if (await tab.getAttribute('#hits', 'role') !== 'status') say('what was found is not told to a screen reader');
      await tab.keyboard.press('Enter');
      await is('#hits', '1 of 4', 'after Enter');
      await tab.keyboard.press('Shift+Enter');
      await is('#hits', '4 of 4', 'after going back from the first');
      if (await tab.locator('mark.on').count() !== 1) say('not one place is the present one');
      await tab.keyboard.press('Escape');
      if (await tab.locator('mark').count()) say('marks stay after Escape');
      await tab.keyboard.type('won’t set');
      await is('#hits', '1 found', 'a curly quotation mark');
      await tab.fill('#words', 'the rim of the bucket');
      await is('#hits', 'Not said', 'what nobody says');
    },
  },
  {
    name: 'without script', page, options: { javaScriptEnabled: false },
    async look({ tab, say }) {
      if (await tab.locator('#tools').isVisible()) say('tools are shown that do nothing');
      if (!(await tab.locator('#said').innerText()).includes('begin again.')) say('the transcript does not go to its end');
      const links = await tab.locator('#said .moment').evaluateAll(all => all.filter(a => !/\.mp3#t=[\d.]+$/.test(a.href)).length);
      if (links) say(`${links} turns lead nowhere`);
    },
  },
];

const { faults, count } = await use(root, checks, fault);
report(faults, count, 'uses of an episode');
