// Accessibility by axe-core in Chromium: WCAG 2.2 levels A and AA and axe's best practices, in light and dark, on a
// phone and on a desk.   node axe.mjs SITE PAGE...
import axe from 'axe-core';
import { visit } from './browser.mjs';
import { report } from './site.mjs';

const [root, ...pages] = process.argv.slice(2);
// resultTypes: of rules that are kept, axe then counts the elements no further than the first
const rules = { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'], resultTypes: ['violations'] };

const schemes = ['light', 'dark'];
const widths = [390, 1280];

async function look(tab, page) {
  await tab.addScriptTag({ content: axe.source });
  const views = new Map(); // of each fault, where it shows
  for (const colorScheme of schemes) {
    for (const width of widths) {
      await tab.emulateMedia({ colorScheme });
      await tab.setViewportSize({ width, height: 844 });
      const { passes, violations } = await tab.evaluate(r => window.axe.run(document, r), rules);
      const found = violations.flatMap(v => v.nodes.map(n => `${v.id}: ${n.target.join(' ')}: ${n.failureSummary.replace(/\s+/g, ' ')}`));
      if (passes.length < 10) found.push(`only ${passes.length} rules ran`);
      for (const f of found) views.set(f, [...views.get(f) ?? [], `${colorScheme} ${width} px`]);
    }
  }
  return [...views].map(([fault, where]) => `${page} (${where.join(', ')}): ${fault}`);
}

// bypassCSP, as the page's own policy would rightly stop the script that is put into it here
const options = { reducedMotion: 'reduce', bypassCSP: true };
report(await visit(root, pages, options, look), pages.length * schemes.length * widths.length, 'views');
