// robots.txt as a crawler reads it, by robots-parser: it may fetch every page and everything that pages are made of,
// and is told of the sitemap.   node robots.mjs SITE ADDRESS
// Sources: RFC 9309; sitemaps.org 0.9. A page that must not be listed says so itself, which a crawler has to read.
import parse from 'robots-parser';
import { address, files, read, report } from './site.mjs';

const [root, home] = process.argv.slice(2);
const at = p => new URL(p, home).href;
const robots = parse(at('/robots.txt'), read(root, 'robots.txt'));
const places = [...files(root, '.html').map(address), ...files(root, '.css', '.js', '.jpg', '.png', '.webp', '.svg').map(address)];
const faults = places.filter(p => robots.isAllowed(at(p), 'crawler') !== true).map(p => `robots.txt: ${p} may not be fetched`);
const maps = robots.getSitemaps();
if (!maps.includes(at('/sitemap.xml'))) faults.push(`robots.txt: sitemaps are ${maps.join(' ') || 'not named'}, not ${at('/sitemap.xml')}`);
report(faults, places.length, 'addresses');
