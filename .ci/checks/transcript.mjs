// WebVTT transcripts, by the W3C group's own parser.   node transcript.mjs FOLDER...
import path from 'node:path';
import webvtt from 'webvtt-parser';
import { files, read, report } from './site.mjs';

const faults = [];
let count = 0;
for (const folder of process.argv.slice(2)) {
  for (const name of files(folder, '.vtt')) {
    count++;
    const { cues, errors } = new webvtt.WebVTTParser().parse(read(folder, name), 'subtitles');
    if (!cues.length) faults.push(`${path.join(folder, name)}: no cues`);
    for (const e of errors) faults.push(`${path.join(folder, name)}:${e.line}:${e.col ?? 1}: ${e.message}`);
  }
}
report(faults, count, 'transcripts');
