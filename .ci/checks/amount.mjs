// The amounts that a page's script writes, one JSON case a line in and one text a line out, for a Go test to compare.
//   node amount.mjs SCRIPT < CASES
import fs from 'node:fs';
import vm from 'node:vm';

vm.runInThisContext(fs.readFileSync(process.argv[2], 'utf8'));
const { rat, amount, making } = globalThis.stillroom;

const answers = {
  write: ({ amount: data, factor, system, text }) => {
    const a = amount.read(data), f = rat.parse(factor);
    return amount.keeps(a, f, system) ? text : amount.write(a, f, system);
  },
  also: ({ amount: data, factor }) => amount.also(amount.read(data), rat.parse(factor)),
  plan: ({ making: data, factor, jar, minutes }) =>
    making.says(making.plan(making.read(JSON.parse(data)), rat.parse(factor), jar, minutes)).join(' '),
  number: ({ text }) => amount.number(text)?.join('/') ?? 'none',
};

const cases = fs.readFileSync(0, 'utf8').trimEnd().split('\n').map(line => JSON.parse(line));
console.log(cases.map(c => JSON.stringify(answers[c.do](c))).join('\n'));
