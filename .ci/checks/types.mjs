// The structured data of every page against the types of schema.org, by schema-dts and the TypeScript compiler: no
// misspelt property, no value of a type that the vocabulary does not allow.   node types.mjs SITE FILE...
import path from 'node:path';
import ts from 'typescript';
import { blocks, read, report } from './site.mjs';

const [root, ...names] = process.argv.slice(2);

// Each node becomes one line of a program: const n1: Recipe = {...}
const lines = [];
const places = [];
const types = new Set();
function add(place, node) {
  for (const n of node['@graph'] ?? [node]) {
    const { '@context': _, ...rest } = n;
    types.add(n['@type']);
    lines.push(`export const n${lines.length}: Extract<schema.${n['@type']}, object> = ${JSON.stringify(rest)};`);
    places.push(place);
  }
}
for (const name of names) {
  const text = read(root, name);
  for (const node of name.endsWith('.json') ? [JSON.parse(text)] : blocks(text)) add(name, node);
}

const options = { noEmit: true, strict: true, skipLibCheck: true, module: ts.ModuleKind.NodeNext, target: ts.ScriptTarget.ES2022, types: [] };
const name = path.join(import.meta.dirname, 'site.ts');
const program = `import type * as schema from 'schema-dts';\n${lines.join('\n')}\n`;
const host = ts.createCompilerHost(options);
const { readFile, fileExists } = host;
host.readFile = f => (f === name ? program : readFile(f));
host.fileExists = f => f === name || fileExists(f);
host.getSourceFile = (f, target) => ts.createSourceFile(f, host.readFile(f), target);

const faults = ts.getPreEmitDiagnostics(ts.createProgram([name], options, host)).map(d => {
  const line = d.file && ts.getLineAndCharacterOfPosition(d.file, d.start).line - 1;
  return `${places[line] ?? d.file?.fileName ?? ''}: ${ts.flattenDiagnosticMessageText(d.messageText, ' ').slice(0, 600)}`;
});
console.log([...types].sort().join(' '));
report(faults, lines.length, 'nodes');
