// Recipe cards on paper, by Chromium and poppler: on every size of paper all words of the card are there, none is cut
// off, none is under 9 points, and there are no more sides than a cook can hold.   node print.mjs SITE PAGE...
// Sources: CSS Paged Media 3 (size); ISO 216; PR-01 to PR-06 of the table of standards.
import { execFileSync } from 'node:child_process';
import { visit } from './browser.mjs';
import { report } from './site.mjs';

const [root, ...pages] = process.argv.slice(2);
const mm = 72 / 25.4; // points
const papers = {
  a6: { size: [105 * mm, 148 * mm], sides: 6 },
  index: { size: [4 * 72, 6 * 72], sides: 6 },
  half: { size: [5.5 * 72, 8.5 * 72], sides: 4 },
  a4: { size: [210 * mm, 297 * mm], sides: 2 },
  letter: { size: [8.5 * 72, 11 * 72], sides: 2 },
};
const least = 9; // points, of letters
const edge = 3 * mm; // what printers leave white

// parts are the words and the numbers of a text, without what stands between them: a PDF has no spaces to go by.
const parts = text => text.normalize('NFKC').match(/\p{L}+|\p{N}+/gu) ?? [];

function count(words) {
  const n = new Map();
  for (const w of words) n.set(w, (n.get(w) ?? 0) + 1);
  return n;
}

// boxes are the words of a PDF and where they stand, a list for each side.
function boxes(pdf) {
  const xml = execFileSync('pdftotext', ['-bbox', '-', '-'], { input: pdf, encoding: 'utf8', maxBuffer: 1 << 26 });
  const text = { '&amp;': '&', '&lt;': '<', '&gt;': '>', '&quot;': '"', '&apos;': "'" };
  return xml.split('<page ').slice(1).map(page => ({
    size: /width="([\d.]+)" height="([\d.]+)"/.exec(page).slice(1).map(Number),
    words: [...page.matchAll(/<word xMin="([\d.-]+)" yMin="([\d.-]+)" xMax="([\d.-]+)" yMax="([\d.-]+)">(.*?)<\/word>/g)]
      .map(([, x1, y1, x2, y2, word]) => ({ x1: +x1, y1: +y1, x2: +x2, y2: +y2, word: word.replace(/&\w+;/g, e => text[e] ?? e) })),
  }));
}

async function look(tab, page) {
  const faults = [];
  for (const [id, paper] of Object.entries(papers)) {
    await tab.check(`#paper-${id}`);
    await tab.emulateMedia({ media: 'print' });
    const { text, small } = await tab.evaluate(() => {
      const card = document.querySelector('.card');
      const walk = document.createTreeWalker(card, NodeFilter.SHOW_TEXT | NodeFilter.SHOW_ELEMENT);
      let text = '', small = Infinity;
      for (let n; (n = walk.nextNode());) {
        if (n instanceof Element) text += getComputedStyle(n).display === 'inline' ? '' : ' ';
        else text += n.data;
        if (n.data?.trim()) small = Math.min(small, parseFloat(getComputedStyle(n.parentElement).fontSize) * 0.75);
      }
      return { text, small };
    });
    const sides = boxes(await tab.pdf({ preferCSSPageSize: true }));
    await tab.emulateMedia({ media: null });
    const fault = what => faults.push(`${page} on ${id}: ${what}`);

    if (small < least) fault(`text of ${small.toFixed(1)} points`);
    if (sides.length > paper.sides) fault(`${sides.length} sides`);
    const printed = count(parts(sides.flatMap(s => s.words.map(w => w.word)).join(' ')));
    const lost = [...count(parts(text))].filter(([w, n]) => (printed.get(w) ?? 0) < n).map(([w]) => w);
    if (lost.length) fault(`not printed: ${lost.slice(0, 8).join(' ')}`);
    for (const { size: [w, h], words } of sides) {
      if (Math.abs(w - paper.size[0]) > 1 || Math.abs(h - paper.size[1]) > 1) fault(`a side is ${w} by ${h} points`);
      const out = words.find(b => b.x1 < edge || b.y1 < edge || b.x2 > w - edge || b.y2 > h - edge);
      if (out) fault(`${out.word} stands at the edge`);
      const low = words.find(b => b.y2 - b.y1 < least);
      if (low) fault(`${low.word} is only ${(low.y2 - low.y1).toFixed(1)} points high`);
    }
  }
  return faults;
}

report(await visit(root, pages, {}, look), pages.length, 'cards');
