// Accessibility by axe-core in Chromium: WCAG 2.2 levels A and AA and axe's best practices, in light and dark, on a
// phone and on a desk.   node axe.mjs SITE PAGE...
import axe from 'axe-core';
import { visit } from './browser.mjs';
import { report } from './site.mjs';

const [root, ...pages] = process.argv.slice(2);
const rules = { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] };

const settings = [];
for (const colorScheme of ['light', 'dark']) {
  for (const width of [390, 1280]) {
    // bypassCSP, as the page's own policy would rightly stop the script that is put into it here
    settings.push({ colorScheme, viewport: { width, height: 844 }, reducedMotion: 'reduce', bypassCSP: true });
  }
}

async function look(tab, page, { colorScheme, viewport }) {
  await tab.addScriptTag({ content: axe.source });
  const result = await tab.evaluate(r => window.axe.run(document, r), rules);
  const where = `${page} (${colorScheme}, ${viewport.width} px)`;
  if (result.passes.length < 10) return [`${where}: only ${result.passes.length} rules ran`];
  return result.violations.flatMap(v => v.nodes.map(n =>
    `${where}: ${v.id}: ${n.target.join(' ')}: ${n.failureSummary.replace(/\s+/g, ' ')}`));
}

report(await visit(root, pages, settings, look), pages.length * settings.length, 'views');
