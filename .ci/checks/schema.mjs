// A JSON file against a JSON Schema (2020-12), by ajv.   node schema.mjs SCHEMA FILE...
import fs from 'node:fs';
import Ajv from 'ajv/dist/2020.js';
import formats from 'ajv-formats';
import { report } from './site.mjs';

const [schema, ...names] = process.argv.slice(2);
const json = name => JSON.parse(fs.readFileSync(name, 'utf8'));
const ajv = new Ajv.default({ allErrors: true, strictRequired: false, allowUnionTypes: true });
formats.default(ajv);
const valid = ajv.compile(json(schema));
const faults = names.flatMap(name => valid(json(name)) ? []
  : valid.errors.map(e => `${name}: ${e.instancePath || '/'} ${e.message} ${JSON.stringify(e.params)}`));
report(faults, names.length, 'files');
