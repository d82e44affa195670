// What a reader meets on a phone 320 px wide: nothing that the page's own security policy refuses, no sideways
// scroll, also with the reader's own text spacing, tables of times in whole, nothing that jumps, nothing too small to
// hit, tables with heads and captions, pictures with sizes.   node reader.mjs SITE PAGE...
// Sources: WCAG 2.2, 1.4.10 reflow, 1.4.12 text spacing, 2.5.8 target size, 1.3.1 tables; Core Web Vitals (shift under
// 0.1); HTML Living Standard (img dimensions); RFC 6596 (one canonical link); CSP level 3.
import { visit } from './browser.mjs';
import { report } from './site.mjs';

const [root, ...pages] = process.argv.slice(2);
const phone = { viewport: { width: 320, height: 640 }, reducedMotion: 'reduce' };
const noise = new WeakMap(); // what each page's console said

async function prepare(tab) {
  noise.set(tab, []);
  tab.on('console', m => m.type() === 'error' && noise.get(tab).push(m.text()));
  tab.on('pageerror', e => noise.get(tab).push(e.message));
  // scripts and fonts come after the first paint, as on a slow line: what they move then counts
  await tab.route(/\.(js|woff2)$/, async route => {
    await new Promise(later => setTimeout(later, 400));
    await route.continue();
  });
  await tab.addInitScript(() => {
    window.refused = [];
    window.shift = 0;
    window.moved = [];
    document.addEventListener('securitypolicyviolation', e => window.refused.push(`${e.violatedDirective} ${e.blockedURI}`));
    new PerformanceObserver(list => {
      for (const e of list.getEntries()) {
        window.shift += e.value;
        window.moved.push(...e.sources.map(s => s.node?.className || s.node?.parentElement?.className || s.node?.localName));
      }
    }).observe({ type: 'layout-shift', buffered: true });
  });
}

// facts runs in the page.
function facts() {
  const all = (selector, keep) => [...document.querySelectorAll(selector)].filter(keep);
  const small = e => {
    const { width, height } = e.getBoundingClientRect();
    return width && (width < 24 || height < 24);
  };
  // wide names what sticks out of a page that can be scrolled sideways; what scrolls within itself may.
  const wide = () => {
    const room = document.documentElement.clientWidth;
    if (document.documentElement.scrollWidth <= room) return '';
    const names = all('body *', e => e.getBoundingClientRect().right > room + 1).map(e => `${e.localName}.${e.className}`);
    return [...new Set(names)].slice(0, 6).join(' ') || 'something';
  };
  // cut names the tables of times and pressures of which a reader sees no more than a part.
  const cut = all('.wide:has(.scale)', e => e.scrollWidth > e.clientWidth).map(e => e.ariaLabel);
  const plain = wide();
  const spacing = new CSSStyleSheet();
  spacing.replaceSync('* {line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important} p {margin-bottom: 2em !important}');
  document.adoptedStyleSheets.push(spacing);
  return {
    'scrolls sideways at 320 px': plain,
    'scrolls sideways with wide text spacing': plain ? '' : wide(),
    'a table of times is cut off': cut.join('; '),
    'is refused by its own security policy': window.refused.join(', '),
    'shifts while it loads': window.shift > 0.1 && `${window.shift.toFixed(2)} (${window.moved})`,
    'control under 24 px': all('button, input, select, summary, textarea', small).map(e => e.outerHTML.slice(0, 80)).join(', '),
    'table without heads or caption': all('table', t => !t.querySelector('th[scope]') || !t.caption).length,
    'picture without size': all('img', i => !i.getAttribute('width') || !i.getAttribute('height')).map(i => i.src).join(', '),
    'canonical links are not one': document.querySelectorAll('head link[rel=canonical]').length === 1
      ? false : document.querySelectorAll('link[rel=canonical]').length,
  };
}

async function look(tab, page) {
  await tab.waitForTimeout(600); // for what comes late
  const found = Object.entries(await tab.evaluate(facts)).filter(([, v]) => v);
  const said = noise.get(tab).filter(m => page !== '/404.html' || !m.includes('status of 404'));
  return [...found.map(([what, v]) => `${page}: ${what}: ${v}`), ...said.map(m => `${page}: console: ${m}`)];
}

report(await visit(root, pages, phone, look, prepare), pages.length, 'pages');
