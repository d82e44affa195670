// The audio programme's feed as listeners' programs meet it: three of them must keep every episode, with its sound,
// date, length and identity.   node programme.mjs FILE
import fs from 'node:fs';
import { parseFeed } from 'feedsmith';
import partytime from 'podcast-partytime';
import RSS from 'rss-parser';
import { report } from './site.mjs';

const [name] = process.argv.slice(2);
const file = fs.readFileSync(name, 'utf8');
const written = file.match(/<item[ >]/g)?.length ?? 0;
const faults = [];
const want = (ok, what) => ok || faults.push(`${name}: ${what}`);

const show = partytime.parseFeed(file);
want(show, 'partytime: refused');
want(show?.items.length === written, `partytime: ${show?.items.length} of ${written} episodes kept`);
want(show?.guid && show?.language, 'partytime: guid or language lost');
for (const i of show?.items ?? []) {
  want(i.enclosure?.length > 0, `partytime: ${i.title}: no length in bytes`);
  want(i.pubDate, `partytime: ${i.title}: date lost`);
  want(i.duration > 0, `partytime: ${i.title}: duration lost`);
}

const items = parseFeed(file).feed.items ?? [];
want(items.length === written, `feedsmith: ${items.length} of ${written} episodes kept`);
for (const i of items) for (const t of i.podcast?.transcripts ?? []) want(t.url && t.type, `feedsmith: ${i.title}: transcript without type`);

try {
  const read = await new RSS().parseString(file);
  want(read.items.length === written, `rss-parser: ${read.items.length} of ${written} episodes kept`);
  for (const i of read.items) want(i.guid && i.enclosure?.url, `rss-parser: ${i.title}: guid or sound lost`);
} catch (e) {
  want(false, `rss-parser: ${e.message.split('\n')[0]}`);
}
report(faults, written, 'episodes');
