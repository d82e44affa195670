// A feed as readers' programs meet it: feedsmith must find in it everything that the file holds. A reader forgives much
// that the standard does not; the grammars in schemas/ have the rest.   node feed.mjs FILE
// Sources: RFC 4287 (Atom); JSON Feed 1.1.
import fs from 'node:fs';
import { parseFeed } from 'feedsmith';
import { report } from './site.mjs';

const [name] = process.argv.slice(2);
const file = fs.readFileSync(name, 'utf8');
const { format, feed } = parseFeed(file);
const items = feed.entries ?? feed.items ?? [];
const written = format === 'json' ? JSON.parse(file).items.length : file.match(/<(entry|item)[ >]/g)?.length ?? 0;

const faults = [];
const want = (ok, what) => ok || faults.push(`${name}: ${what}`);
want(feed.title && (feed.title.value ?? feed.title).trim?.(), 'no title');
want(items.length === written, `${items.length} of ${written} entries kept`);
const ids = items.map(i => i.id);
want(ids.every(Boolean), 'an entry lost its id');
want(new Set(ids).size === ids.length, 'two entries share an id');
for (const i of items) {
  const when = i.updated ?? i.date_published;
  want(!Number.isNaN(Date.parse(when)), `${i.id}: date "${when}" cannot be read`);
  want(i.url ?? i.links?.some(l => (l.rel ?? 'alternate') === 'alternate' && URL.canParse(l.href)), `${i.id}: nowhere to read on`);
  want(i.content ?? i.summary ?? i.content_html ?? i.content_text, `${i.id}: nothing to read`);
}
report(faults, items.length, 'entries');
