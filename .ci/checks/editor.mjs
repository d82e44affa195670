// The language server, spoken to by the client library of the protocol's own authors.   node editor.mjs PROGRAM
// PROGRAM is stillroom.   Source: Language Server Protocol 3.17.
import { spawn, execFileSync } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import protocol from 'vscode-languageserver-protocol/node';
import { report } from './site.mjs';

const { createProtocolConnection, StreamMessageReader, StreamMessageWriter } = protocol;
const as = { argv0: 'stillroom' };
const folder = fs.realpathSync(fs.mkdtempSync(path.join(os.tmpdir(), 'editor-')));
const site = path.join(folder, 'my larder'); // with a blank, which addresses write otherwise
execFileSync(process.argv[2], ['start', site], { ...as, stdio: 'ignore' });
const server = spawn(process.argv[2], ['editor'], { ...as, stdio: ['pipe', 'pipe', 'inherit'] });
const ended = new Promise(done => server.on('exit', done));
const client = createProtocolConnection(new StreamMessageReader(server.stdout), new StreamMessageWriter(server.stdin));

const faults = [];
let asked = 0;
const must = (is, fault) => {
  asked++;
  if (!is) faults.push(fault);
};
const shown = new Map();
const waiting = [];
client.onNotification(protocol.PublishDiagnosticsNotification.type, d => {
  shown.set(d.uri, d);
  for (const w of waiting.splice(0)) w();
});
client.onRequest(protocol.RegistrationRequest.type, () => {});

// found waits for findings of a document that satisfy a test, for as long as a slow machine may take.
async function found(uri, test) {
  const late = Date.now() + 30_000;
  while (!(shown.has(uri) && test(shown.get(uri).diagnostics)) && Date.now() < late) {
    await new Promise(next => { waiting.push(next); setTimeout(next, 500); });
  }
  return shown.get(uri)?.diagnostics ?? [];
}

const file = path.join(site, 'content/recipes/damson-preserves.md');
const uri = pathToFileURL(file).href;
const asWritten = fs.readFileSync(file, 'utf8');
const lines = asWritten.split('\n');
const at = (start, word = start) => {
  const line = lines.findIndex(l => l.includes(start));
  return { line, character: lines[line].indexOf(word) };
};

client.listen();
const { capabilities } = await client.sendRequest(protocol.InitializeRequest.type, {
  processId: process.pid, rootUri: null, workspaceFolders: [{ uri: pathToFileURL(site).href, name: 'larder' }],
  capabilities: { workspace: { didChangeWatchedFiles: { dynamicRegistration: true } } },
});
must(capabilities.positionEncoding === 'utf-16', 'positions are not those that every client knows');
await client.sendNotification(protocol.InitializedNotification.type, {});
await client.sendNotification(protocol.DidOpenTextDocumentNotification.type, { textDocument: { uri, languageId: 'markdown', version: 1, text: asWritten } });

const minutes = at('above 6,000 ft: 15 min', '15 min');
const change = (text, length, version) => client.sendNotification(protocol.DidChangeTextDocumentNotification.type, {
  textDocument: { uri, version }, contentChanges: [{ range: { start: minutes, end: { ...minutes, character: minutes.character + length } }, text }],
});
await change('12', 2, 2);
const short = (await found(uri, ds => ds.some(d => d.code === 'time-short'))).find(d => d.code === 'time-short');
must(short, 'a time that is too short is not found while it is typed');
must(short?.range.start.line === minutes.line && short?.range.start.character === minutes.character && short?.severity === protocol.DiagnosticSeverity.Error, `the time is found at ${JSON.stringify(short?.range)}`);
must(fs.readFileSync(file, 'utf8') === asWritten, 'the file was written to');

const actions = await client.sendRequest(protocol.CodeActionRequest.type, { textDocument: { uri }, range: short.range, context: { diagnostics: [short] } });
must(actions.length === 1 && actions[0].edit.changes[uri].some(e => e.newText.includes('above 6,000 ft: 15 min')), `the tested values are not offered: ${JSON.stringify(actions)}`);
await change('15', 2, 3);
must(!(await found(uri, ds => !ds.some(d => d.code === 'time-short'))).some(d => d.code === 'time-short'), 'what was put right is still found');

const offered = await client.sendRequest(protocol.CompletionRequest.type, { textDocument: { uri }, position: at('process:', 'plum-preserves') });
must(offered.find(i => i.label === 'plum-preserves')?.sortText.startsWith('0'), 'the likeliest process is not offered first');
const told = await client.sendRequest(protocol.HoverRequest.type, { textDocument: { uri }, position: at('process:', 'plum-preserves') });
must(/15 min.*Source: National Center/s.test(told?.contents.value), `the tested values are not told: ${told?.contents.value}`);

const episodes = fs.readdirSync(path.join(site, 'content/episodes')).filter(n => n.endsWith('.md')).map(n => path.join(site, 'content/episodes', n));
const naming = episodes.filter(n => /^recipes:[^]*?damson-preserves/m.test(fs.readFileSync(n, 'utf8').split('\n---')[0])).map(n => pathToFileURL(n).href);
const from = await client.sendRequest(protocol.ReferencesRequest.type, { textDocument: { uri }, position: { line: 0, character: 0 }, context: { includeDeclaration: false } });
must(naming.length > 0 && naming.every(n => from.some(f => f.uri === n)), `episodes that name the recipe are not led to: ${naming}`);

// Another program writes a file, and the client tells of it.
const broken = pathToFileURL(episodes[0]).href;
fs.writeFileSync(episodes[0], '---\nname: [\n---\n');
await client.sendNotification(protocol.DidChangeWatchedFilesNotification.type, { changes: [{ uri: broken, type: protocol.FileChangeType.Changed }] });
must((await found(broken, ds => ds.length > 0)).some(d => d.code === 'front-matter'), 'a file that cannot be read is not told of');

await client.sendRequest(protocol.ShutdownRequest.type);
await client.sendNotification(protocol.ExitNotification.type);
must(await ended === 0, 'it did not end well');
fs.rmSync(folder, { recursive: true });
report(faults, asked, 'answers');
