// A recipe at the stove: large type, ticks and timers that come back, an alarm that can be stopped, a processing clock
// that knows altitude and jar and is never paused.   node stove.mjs SITE [FAULT]
// Sources: WCAG 2.2, 1.4.2 audio control (3 s, or a way to stop it), 2.1.1, 2.2.1, 2.3.3, 2.5.8 (44 px here), 4.1.3, and
// ARIA 1.2 (timer, alert); W3C Screen Wake Lock; USDA Complete Guide to Home Canning, AIB 539 (2015): where the boil or
// the pressure is lost, the whole time is counted again.
import axe from 'axe-core';
import { use } from './kitchen.mjs';
import { report } from './site.mjs';

const [root, fault] = process.argv.slice(2);
const [tomatoes, beans, jam] = ['crushed-tomatoes', 'green-beans-in-pints', 'blackberry-jam'].map(slug => `/recipes/${slug}/`);

// still stops the clock of the page: only runFor and fastForward move it, however slow the machine is.
const still = async tab => {
  await tab.clock.install({ time: new Date('2026-08-01T09:00:00') });
  await tab.clock.pauseAt(new Date('2026-08-01T10:00:00'));
};

// listen notes every tone that is played and how long, every lock on the screen, and every movement.
const listen = tab => tab.addInitScript(() => {
  window.tones = [];
  window.locks = [];
  const plain = AudioContext.prototype.createOscillator;
  AudioContext.prototype.createOscillator = function () {
    const tone = plain.call(this);
    let from;
    tone.start = (when = this.currentTime) => { from = when; };
    tone.stop = when => window.tones.push(when - from);
    return tone;
  };
  const wakeLock = { request: async what => {
    const lock = { what, released: false, async release() { this.released = true; } };
    window.locks.push(lock);
    return lock;
  } };
  Object.defineProperty(navigator, 'wakeLock', { value: wakeLock });
});

const atTheStove = async tab => {
  await tab.locator('#cook').focus();
  await tab.keyboard.press('Enter');
};
const faces = tab => tab.$$eval('#timers [role=timer]', all => all.map(e => e.textContent));
// control finds a button by how its name begins; a number and its unit are tied by a space that does not break.
const control = (tab, name) => tab.getByRole('button', { name: new RegExp('^' + name.replace('+', '\\+').replace(/ /g, '\\s+')) });

const checks = [
  {
    name: 'large type', page: tomatoes, prepare: listen,
    async look({ tab, say, same }) {
      const size = () => tab.evaluate(() => parseFloat(getComputedStyle(document.querySelector('.method li')).fontSize));
      const before = await size();
      await atTheStove(tab);
      if (await size() < before * 1.25) say(`the type grows from ${before} to ${await size()} px`);
      same(await tab.getAttribute('#cook', 'aria-pressed'), 'true', 'the button');
      for (const part of ['.foot', '.headnote', '.log']) if (await tab.locator(part).isVisible()) say(`${part} stays`);
      for (const part of ['.ledger', '.method', '.caution', 'table.scale']) if (!await tab.locator(part).first().isVisible()) say(`${part} is gone`);
      same(await tab.evaluate(() => window.locks.map(l => [l.what, l.released])), [['screen', false]], 'the lock on the screen');
      await tab.click('#more');
      const weight = part => tab.evaluate(p => Number(getComputedStyle(document.querySelector(p)).fontWeight), part);
      if (await weight('.pot') <= await weight('.amount > .q')) say('what is in the shop stands out, not what is in the pot');
      await tab.reload();
      same(await tab.getAttribute('#cook', 'aria-pressed'), 'true', 'the button after a reload');
      await atTheStove(tab);
      same(await tab.evaluate(() => window.locks.at(-1).released), true, 'the lock is let go');
      if (await size() !== before) say('the type stays large');
    },
  },
  {
    name: 'ticks', page: tomatoes,
    async look({ tab, same }) {
      await atTheStove(tab);
      const ticked = () => tab.$$eval('.tick', all => all.flatMap((box, i) => box.checked ? [i] : []));
      await tab.getByRole('checkbox', { name: 'Ready: 22 lb' }).focus();
      await tab.keyboard.press('Space');
      await tab.getByRole('checkbox', { name: 'Step 2 done' }).check();
      same(await ticked(), [0, 4], 'what is ticked');
      await tab.reload();
      same(await ticked(), [0, 4], 'what is ticked after a reload');
      await tab.click('#afresh');
      same(await ticked(), [], 'what is ticked when begun afresh');
      await tab.reload();
      same(await ticked(), [], 'and after a reload');
    },
  },
  {
    name: 'ticks of another day', page: tomatoes, prepare: still,
    async look({ tab, same }) {
      await atTheStove(tab);
      await tab.locator('.tick').first().check();
      for (const [hours, wanted] of [[20, true], [50, false]]) {
        await tab.clock.fastForward(hours * 60 * 60_000);
        await tab.reload();
        same(await tab.locator('.tick').first().isChecked(), wanted, `the tick ${hours} hours later`);
      }
    },
  },
  {
    name: 'two timers at once', page: jam, prepare: async tab => {
      await listen(tab);
      await still(tab);
    },
    async look({ tab, say, same, told }) {
      await atTheStove(tab);
      await control(tab, 'Timer: 10 minutes Step 6').click();
      await tab.clock.runFor(60_000);
      await control(tab, 'Timer: 5 minutes Step 13').click();
      same(await faces(tab), ['9:00', '5:00'], 'the faces');
      same(await tab.$$eval('#timers [role=timer]', all => all.map(e => e.getAttribute('aria-live'))), ['off', 'off'], 'what the faces say by themselves');
      await control(tab, 'Pause Step 6').click();
      await tab.clock.runFor(120_000);
      same(await faces(tab), ['9:00', '3:00'], 'the faces while one is paused');
      await tab.reload();
      same(await faces(tab), ['9:00', '3:00'], 'the faces after a reload');
      await control(tab, 'Go on Step 6').click();
      await control(tab, '+1 min Step 13').click();
      await tab.clock.runFor(60_000);
      same(await faces(tab), ['8:00', '3:00'], 'the faces after a minute more');
      same(await tab.textContent('#alarm'), '', 'the alarm so far');
      await tab.clock.runFor(180_000);
      same(await tab.getAttribute('#alarm', 'role'), 'alert', 'the role of the alarm');
      await told('#alarm', 'Time is up: Step 13, 5 minutes.', 'the alarm');
      const tones = await tab.evaluate(() => window.tones);
      if (tones.length !== 1) say(`${tones.length} tones`);
      if (!tones.every(s => s > 1 && s <= 3)) say(`a tone of ${tones} seconds`);
      await tab.clock.runFor(20_000);
      same(await tab.evaluate(() => window.tones.length), 2, 'tones, since nobody came');
      await control(tab, 'Stop Step 13').click();
      same([await tab.textContent('#alarm'), (await faces(tab)).length], ['', 1], 'the alarm when it is stopped');
      await tab.clock.runFor(60_000);
      same(await tab.evaluate(() => window.tones.length), 2, 'tones after that');
      await control(tab, 'Stop Step 6').click();
      same(await tab.locator('#timers').isVisible(), false, 'the timers when there are none');
    },
  },
  {
    name: 'the processing clock', page: tomatoes, prepare: async tab => {
      await listen(tab);
      await still(tab);
    },
    async look({ tab, say, same, holds }) {
      const start = tab.locator('.run button');
      await holds('.run', 'Set your altitude first', 'what is lacking');
      await start.click();
      same(await tab.evaluate(() => document.activeElement.id), 'altitude', 'where that sends the reader');
      same((await faces(tab)).length, 0, 'clocks without an altitude');
      await tab.keyboard.type('5200');
      same((await start.textContent()).trim(), 'It is at a full rolling boil: start 55 min, quart', 'the button');
      await tab.selectOption('.run select', 'pint');
      await start.click();
      same(await faces(tab), ['45:00'], 'the face');
      if (await control(tab, 'Pause Processing').count()) say('a processing time can be paused');
      await tab.clock.runFor(20 * 60_000);
      same(await faces(tab), ['25:00'], 'the face after 20 minutes');
      await control(tab, 'Start again Processing').click();
      same(await faces(tab), ['45:00'], 'the face when the boil was lost');
      await tab.clock.runFor(10 * 60_000);
      await tab.reload();
      same(await faces(tab), ['35:00'], 'the face after a reload');
      if (await control(tab, 'Pause Processing').count()) say('a processing time can be paused after a reload');
      await atTheStove(tab);
      if (await tab.locator('#step-10 .clocks button').count() !== 1) say('the step of the table has other clocks than the one of the table');
      await tab.clock.runFor(35 * 60_000 + 500);
      await holds('#alarm', 'Time is up: Processing, pint, 45 min.', 'the alarm');
    },
  },
  {
    name: 'the processing clock under pressure', page: beans, prepare: still,
    async look({ tab, same, holds }) {
      await tab.fill('#altitude', '1350');
      await holds('.run', 'At 1,350 ft, 11 psi on a dial gauge, 15 psi on a weighted gauge.', 'the pressures');
      await tab.locator('.run button').click();
      same(await faces(tab), ['20:00'], 'the face');
    },
  },
  {
    name: 'by keyboard alone', page: jam, prepare: still,
    async look({ tab, say, same }) {
      // to presses the tab key until the focus is on what has the name, as a reader does who has no mouse.
      const to = async name => {
        const here = () => tab.evaluate(() => (document.activeElement.ariaLabel || document.activeElement.textContent).replace(/\s+/g, ' '));
        for (let i = 0; i < 120; i++) {
          await tab.keyboard.press('Tab');
          if ((await here()).startsWith(name)) break;
        }
        if (!(await here()).startsWith(name)) throw new Error(`no tab reaches ${name}`);
        if (await tab.evaluate(() => getComputedStyle(document.activeElement).outlineStyle === 'none')) say(`${name} has no focus ring`);
      };
      await atTheStove(tab);
      await to('Step 1 done');
      await tab.keyboard.press('Space');
      same(await tab.locator('#step-1 .tick').isChecked(), true, 'the tick');
      await to('Timer: 10 minutes');
      await tab.keyboard.press('Enter');
      await tab.clock.runFor(60_000);
      same(await faces(tab), ['9:00'], 'the face');
      await to('Pause');
      await tab.keyboard.press('Space');
      await tab.clock.runFor(60_000);
      same(await faces(tab), ['9:00'], 'the face of what is paused');
      await to('Stop');
      await tab.keyboard.press('Enter');
      same((await faces(tab)).length, 0, 'the timers');
      if (await tab.evaluate(() => document.activeElement === document.body)) say('the focus is lost with the timer');
    },
  },
  {
    name: 'steps without script', page: jam, options: { javaScriptEnabled: false },
    async look({ tab, say, holds }) {
      for (const part of ['#stove', '.tick', '.clocks', '#timers']) if (await tab.locator(part).first().isVisible()) say(`${part} is shown, and does nothing`);
      await holds('#step-6', '10 minutes', 'the time of a step');
    },
  },
  {
    name: 'within reach', page: tomatoes, options: { reducedMotion: 'reduce' },
    async look({ tab, say }) {
      await tab.fill('#altitude', '5200');
      await tab.click('#more');
      await atTheStove(tab);
      await control(tab, 'Timer: 5 minutes Step 5').click();
      await tab.locator('.run button').click();
      const small = await tab.$$eval(':is(.tick, .clocks button, .run :is(button, select), #timers button, .stove button)', all =>
        all.filter(e => e.checkVisibility()).map(e => [e.ariaLabel || e.textContent, e.getBoundingClientRect()])
          .filter(([, r]) => r.width < 43.5 || r.height < 43.5).map(([name, r]) => `${name} ${Math.round(r.width)} by ${Math.round(r.height)}`));
      for (const s of small) say(`smaller than 44 px: ${s}`);
      for (const width of [320, 820]) {
        await tab.setViewportSize({ width, height: 800 });
        const over = await tab.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
        if (over > 0) say(`scrolls sideways by ${over} px at ${width} px`);
      }
      if (await tab.evaluate(() => document.getAnimations().length)) say('something moves, though the reader wants it still');
      await tab.setViewportSize({ width: 390, height: 844 });
      await tab.locator('#step-13 .tick').focus();
      const hidden = await tab.evaluate(() => document.activeElement.getBoundingClientRect().bottom > document.querySelector('#timers').getBoundingClientRect().top);
      if (hidden) say('the timers lie over what has the focus');
    },
  },
  ...['light', 'dark'].map(colorScheme => ({
    name: `accessible, ${colorScheme}`, page: tomatoes, options: { colorScheme, bypassCSP: true }, // for the script put into it here
    async look({ tab, say }) {
      await tab.addScriptTag({ content: axe.source });
      const rules = { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] };
      const judge = async when => {
        const { violations, passes } = await tab.evaluate(r => window.axe.run(document, r), rules);
        if (passes.length < 10) say(`only ${passes.length} rules ran`);
        for (const v of violations) say(`${when}: ${v.id}: ${v.nodes.map(n => n.target).join(', ')}: ${v.nodes[0].failureSummary.replace(/\s+/g, ' ')}`);
      };
      await tab.fill('#altitude', '5200');
      await tab.fill('#jars', '9');
      await tab.waitForTimeout(400);
      await judge('scaled');
      await atTheStove(tab);
      await tab.locator('.tick').first().check();
      await control(tab, 'Timer: 5 minutes Step 5').click();
      await tab.locator('.run button').click();
      await judge('at the stove');
    },
  })),
];

const { faults, count } = await use(root, checks, fault);
report(faults, count, 'uses');
