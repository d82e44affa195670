// The security policy of every page, by csp_evaluator: nothing that lets a stranger's script run.   node csp.mjs SITE
// Sources: CSP level 3; HTML Living Standard, meta http-equiv: it covers only what stands after it, so it has to stand
// straight after the character set.
import evaluator from 'csp_evaluator';
import { Severity } from 'csp_evaluator/dist/finding.js';
import { CspParser } from 'csp_evaluator/dist/parser.js';
import { address, files, read, report } from './site.mjs';

const [root] = process.argv.slice(2);
const policy = /^<!doctype html>\s*<html[^>]*>\s*(?:<head>)?\s*<meta charset="?utf-8"?>\s*<meta http-equiv="?Content-Security-Policy"? content="([^"]+)"/i;
const pages = files(root, '.html');
const faults = [];
for (const page of pages) {
  const found = policy.exec(read(root, page));
  if (!found) faults.push(`${address(page)}: no policy straight after the character set`);
  // 'self' gets a remark (MEDIUM_MAYBE) for sites that let readers upload files, which this one does not
  const evils = found ? new evaluator.CspEvaluator(new CspParser(found[1].replaceAll('&#39;', "'")).csp).evaluate() : [];
  for (const e of evils) if (e.severity <= Severity.HIGH_MAYBE) faults.push(`${address(page)}: ${e.directive} ${e.value ?? ''}: ${e.description}`);
}
report(faults, pages.length, 'pages');
