// The rules under which search engines show a recipe or a trail, by a structured-data validator, with schema.org's
// own vocabulary.   node rich.mjs SITE FILE...
// What the validator only warns of but a search engine drops is a fault here: a value of the wrong type, a property
// that the vocabulary does not know, one of the two times without the other.
import Validator from '@adobe/structured-data-validator';
import Extractor from '@marbec/web-auto-extractor';
import { read, report } from './site.mjs';
import { vocabulary } from './vocabulary.mjs';

const [root, ...pages] = process.argv.slice(2);
const grave = /Invalid type|not supported|not a valid|Missing field "(prepTime|cookTime)"/;
const faults = [];
const words = vocabulary();
for (const page of pages) {
  const data = new Extractor({ addLocation: true, embedSource: ['rdfa', 'microdata'] }).parse(read(root, page));
  if (!Object.keys(data.jsonld ?? {}).length) faults.push(`${page}: no structured data`);
  for (const issue of await new Validator(words).validate(data)) {
    if (issue.severity !== 'ERROR' && !grave.test(issue.issueMessage)) continue;
    faults.push(`${page}: ${issue.path?.map(p => p.type ?? p.property).join('/') ?? issue.rootType}: ${issue.issueMessage}`);
  }
}
report(faults, pages.length, 'pages');
