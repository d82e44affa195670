// What the checks share: the files of a published site, and how faults are reported.
import fs from 'node:fs';
import path from 'node:path';

// files lists the files under root whose names end in one of the endings, sorted, relative to root.
export function files(root, ...endings) {
  return fs.readdirSync(root, { recursive: true }).filter(f => endings.some(e => f.endsWith(e))).sort();
}

// read returns the text of a file of the site.
export const read = (root, file) => fs.readFileSync(path.join(root, file), 'utf8');

// address is the path at which a reader finds an HTML file: recipes/index.html is /recipes/.
export const address = file => '/' + file.split(path.sep).join('/').replace(/(^|\/)index\.html$/, '$1');

// blocks returns the JSON-LD blocks of a page, parsed.
export function blocks(html) {
  const block = /<script type="?application\/ld\+json"?>([\s\S]*?)<\/script>/g;
  return [...html.matchAll(block)].map(m => JSON.parse(m[1]));
}

// report prints the faults one a line, then how many things were looked at, and ends the process: with 1 if there
// was a fault, or nothing to look at.
export function report(faults, count, noun) {
  for (const f of faults) console.log(f);
  console.log(`${count} ${noun} checked, ${faults.length} faults`);
  process.exit(faults.length || !count ? 1 : 0);
}
