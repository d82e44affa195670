// Every link of every page, by linkinator: pages, pictures, scripts, what CSS and structured data point at, and the
// fragments.   node links.mjs SITE [ADDRESS [FILE...]]   with files, only the links of those pages, and those in CSS and feeds
// Links to the site's own address are followed in this copy; links to others are not followed. Feeds and the sitemap,
// which linkinator does not read, are searched for addresses of the site.
import { Readable } from 'node:stream';
import { LinkChecker } from 'linkinator';
import { extractFragmentIds, getLinks } from './node_modules/linkinator/build/src/links.js';
import { serve } from './serve.mjs';
import { address, files, read, report } from './site.mjs';

const [root, home = canonical(), ...only] = process.argv.slice(2);
const server = await serve(root);
// canonical is the site's address, as its first page tells it; without one, nothing begins with it.
function canonical() {
  return /<link rel="canonical" href="([^"]+)"/.exec(read(root, 'index.html'))?.[1] ?? 'none:';
}
const own = new RegExp('^' + home.replace(/\/$/, '').replaceAll('.', '\\.') + '(?=/|$)');
const local = link => link.replace(own, server.url);
const short = link => link?.replace(server.url, '');
const pages = only.length ? only : files(root, '.html');
const faults = [];

// The addresses. Every page and stylesheet is a start of its own: linkinator reads nothing else.
const { links } = await new LinkChecker().check({
  path: [...pages, ...files(root, '.css')].map(f => server.url + address(f)),
  checkCss: true,
  redirects: 'error', // a link should name the page itself
  urlRewriteExpressions: [{ pattern: own, replacement: server.url }],
  linksToSkip: async link => !link.startsWith(server.url),
  concurrency: 20,
});
const followed = links.filter(l => l.state !== 'SKIPPED');
for (const { url, status, state, parent } of followed) {
  if (state === 'BROKEN' && (parent || short(url) !== '/404.html')) faults.push(`${short(parent)}: ${status} ${short(url)}`);
}

// The fragments. linkinator itself looks for one only in a page that it happens to read after the link to it.
const named = new Map(files(root, '.html').map(page => [server.url + address(page), page]));
const known = new Map();
async function ids(url) {
  if (!known.has(url) && named.has(url)) known.set(url, await extractFragmentIds(Readable.from([read(root, named.get(url))])));
  return known.get(url);
}
let seen = 0;
for (const page of pages) {
  const found = await getLinks(Readable.from([read(root, page)]), server.url + address(page));
  seen += found.length;
  for (const { url, fragment } of found) {
    if (fragment && (await ids(local(url.href)))?.has(fragment) === false) faults.push(`${address(page)}: no #${fragment} in ${short(local(url.href))}`);
  }
}

// The addresses in feeds.
for (const feed of files(root, '.xml', '.atom', '.json', 'robots.txt')) {
  const said = read(root, feed).replaceAll(/&(?:#34|quot|lt|gt|#60|#62);/g, ' '); // the quotes and brackets of a page within a feed end an address
  const found = new Set(said.match(new RegExp(own.source.slice(1) + '[^\\s"\'<>\\\\)]*', 'g')));
  seen += found.size;
  for (const link of found) {
    const { status } = await fetch(local(link), { method: 'HEAD', redirect: 'manual' });
    if (status !== 200) faults.push(`${feed}: ${status} ${link}`);
  }
}
server.close();

const written = pages.flatMap(p => read(root, p).match(/<(a|link|img|script) [^>]*(href|src)=/g) ?? []).length;
if (seen < written || followed.length <= pages.length) faults.push(`only ${seen} of ${written} links read, ${followed.length} followed`);
report(faults, seen, 'links');
