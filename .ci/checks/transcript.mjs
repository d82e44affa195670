// WebVTT transcripts, by the W3C group's own parser.   node transcript.mjs FILE...
import fs from 'node:fs';
import webvtt from 'webvtt-parser';
import { report } from './site.mjs';

const names = process.argv.slice(2);
const faults = [];
for (const name of names) {
  const { cues, errors } = new webvtt.WebVTTParser().parse(fs.readFileSync(name, 'utf8'), 'subtitles');
  if (!cues.length) faults.push(`${name}: no cues`);
  for (const e of errors) faults.push(`${name}:${e.line}:${e.col ?? 1}: ${e.message}`);
}
report(faults, names.length, 'transcripts');
