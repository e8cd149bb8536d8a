/**
 * Prints the report of all mistakes: `node --import tsx tests/mistakes/report.ts`. With `--everyday`, of those that the
 * everyday test makes; with `--others`, the mistakes that left a pattern right in itself, one by one, as well.
 */

import { readOriginals } from './collections.ts';
import { ALL, EVERYDAY, runMistakes } from './run-mistakes.ts';
import { line, report } from './tally.ts';

const words = process.argv.slice(2);
const run = runMistakes(readOriginals(), words.includes('--everyday') ? EVERYDAY : ALL);
process.stdout.write(report(run));
if (words.includes('--others')) {
  const others = run.tried.filter(({ verdict }) => verdict === 'right in itself');
  process.stdout.write(`\n## Right in themselves, one by one\n\n${others.map(line).join('\n')}\n`);
}
