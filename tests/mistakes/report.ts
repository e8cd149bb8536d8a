/** Prints the report of all mistakes, or of every nth: `node --import tsx tests/mistakes/report.ts [n] [--others]`. */

import { readOriginals } from './collections.ts';
import { runMistakes, takenWords } from './run-mistakes.ts';
import { line, report } from './tally.ts';

const [every = '1', also] = process.argv.slice(2);
const { tried, of } = runMistakes(readOriginals(), Number(every));
process.stdout.write(report(tried, takenWords(tried.length, of)));
if (also === '--others')
  process.stdout.write(
    `\n## Right in themselves, one by one\n\n${tried
      .filter(({ verdict }) => verdict === 'right in itself')
      .map(line)
      .join('\n')}\n`,
  );
