// Recipe cards on paper, by Chromium: each fits on one sheet, of A6.   node print.mjs SITE PAGE...
// Source: CSS Paged Media 3 (size); ISO 216 (A6 is 105 by 148 mm).
import { visit } from './browser.mjs';
import { report } from './site.mjs';

const [root, ...pages] = process.argv.slice(2);
const points = mm => Math.round(mm / 25.4 * 72);
const a6 = [points(105), points(148)];

async function look(tab, page) {
  const pdf = (await tab.pdf({ preferCSSPageSize: true })).toString('latin1');
  const sheets = pdf.match(/\/Type\s*\/Page\b/g)?.length;
  const size = /\/MediaBox\s*\[\s*0\s+0\s+([\d.]+)\s+([\d.]+)/.exec(pdf)?.slice(1).map(Math.round);
  const faults = [];
  if (sheets !== 1) faults.push(`${page}: prints on ${sheets} sheets`);
  if (size?.toSorted((a, b) => a - b).some((side, i) => Math.abs(side - a6[i]) > 1)) faults.push(`${page}: a sheet is ${size} points, not ${a6}`);
  return faults;
}

report(await visit(root, pages, {}, look), pages.length, 'cards');
