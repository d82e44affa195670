// Runs one script of this folder after another, so that Node, its packages and the browser start once for many.
//   node inspector.mjs   Each line of what it reads is a script and its arguments, as a list in JSON. After what the script
// prints comes a line with a NUL and the status with which it ended.
import { createInterface } from 'node:readline';
import { pathToFileURL } from 'node:url';

const exit = process.exit;
process.exit = status => { throw { status }; };

let turn = 0;
for await (const line of createInterface({ input: process.stdin })) {
  const [script, ...args] = JSON.parse(line);
  process.argv.splice(1, Infinity, script, ...args);
  let status = 0;
  try {
    await import(`${pathToFileURL(script)}?turn=${turn++}`); // a module of that address is run anew
  } catch (e) {
    status = e.status ?? 1;
    if (e.status === undefined) console.log(e);
  }
  console.log(`\0${status}`);
}
exit(0);
