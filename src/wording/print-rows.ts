/** A step that repeats rows in, its words out: `rep Rows 2 and 3 to height`; how far is left out where the label says it. */

import type { Num } from '../notation/num.ts';
import type { RepeatRowsStep } from '../notation/tree.ts';
import { ownWords } from './own-words.ts';
import { form, printName, printStitch } from './print-name.ts';
import { isMany, printNumber } from './print-number.ts';
import { printTimes } from './print-stop.ts';
import type { Voice } from './voice.ts';

export function printRepeatRows(step: RepeatRowsStep, voice: Voice): string {
  const again = againWords(step, voice);
  const { until, atEdge } = step;
  if (atEdge !== undefined && until.kind === 'times')
    return `${again} on each of next ${printAmountOfRows(step, until.n, voice)}`;
  if (voice.rowsInLabel) return `${again}${endingWords(step, voice)}`;
  switch (until.kind) {
    case 'label':
      return again;
    case 'times':
      if (step.even === true) return `${again} for ${printAmountOfRows(step, until.n, voice)}`;
      return `${again} ${printTimes(until.n, until.more, voice)}`;
    case 'total':
      return `${again} until ${printAmountOfRows(step, until.n, voice)} have been worked${endingWords(step, voice)}`;
    case 'height':
      return `${again} ${until.said === undefined ? 'to height' : ownWords(until.said, voice)}${endingWords(step, voice)}`;
  }
}

function printAmountOfRows({ unit }: RepeatRowsStep, n: Num, voice: Voice): string {
  const noun = unit === 'row' ? voice.phrases.row : voice.phrases.round;
  return `${printNumber(n, voice.numbers)} ${form(noun, isMany(n, voice.numbers)).toLowerCase()}`;
}

/** `rep Rows 2 and 3`, `rep last 2 rows`, `work even`. */
function againWords(
  { unit, rows, last, even, inStitch, more, atEdge }: RepeatRowsStep,
  voice: Voice,
): string {
  const noun = unit === 'row' ? voice.phrases.row : voice.phrases.round;
  if (more !== undefined && 'group' in more) {
    const { group, n } = more;
    const noun = isMany(n, voice.numbers) ? 'groups' : 'group';
    const of = group === null ? '' : ` of ${group.size} ${printStitch(group.stitch, false, voice)}`;
    return `continue in this way, working ${printNumber(n, voice.numbers)} more ${noun}${of} on each side`;
  }
  if (more !== undefined && 'special' in more) {
    const compared = more.fewer === true ? 'fewer' : 'more';
    const special = { kind: 'special', name: more.special, span: more.n.span } as const;
    const name = printName(special, isMany(more.n, voice.numbers), voice);
    return `continue in this way, with ${printNumber(more.n, voice.numbers)} ${compared} ${name} in each ${form(noun, false).toLowerCase()}`;
  }
  if (more !== undefined)
    return `continue in this way, working ${printNumber(more.n, voice.numbers)} more ${printStitch(more.stitch, false, voice)} after every increase`;
  if (atEdge !== undefined)
    return `${atEdge.does} ${printNumber(atEdge.n, voice.numbers)} ${isMany(atEdge.n, voice.numbers) ? 'sts' : 'st'} at ${atEdge.edge} edge`;
  if (even === true) {
    const words = voice.terms === 'UK' ? 'work straight' : 'work even';
    return inStitch === undefined ? words : `${words} in ${printName(inStitch, false, voice)}`;
  }
  if (last === undefined)
    return `${voice.phrases.repeat} ${form(noun, rows.length > 1)} ${rowList(rows, voice)}`;
  const words = form(noun, last > 1).toLowerCase();
  return `${voice.phrases.repeat} last ${last > 1 ? `${last} ` : ''}${words}`;
}

function endingWords({ until, unit }: RepeatRowsStep, voice: Voice): string {
  if ((until.kind !== 'height' && until.kind !== 'total') || until.endingWith === null) return '';
  const noun = unit === 'row' ? voice.phrases.row.one : voice.phrases.round.one;
  return `, ending with a ${noun} ${until.endingWith}`;
}

/** `2`, `2 and 3`, `2–5`, `2, 4 and 6`, `14 (14, 16)`. */
function rowList(rows: readonly Num[], voice: Voice): string {
  const numbers = rows.map((row) => printNumber(row, voice.numbers));
  const [first, last] = [numbers[0], numbers.at(-1)];
  if (first === undefined || last === undefined) return '';
  const unbroken = numbers.every((row, i) => row === String(Number(first) + i));
  if (rows.length > 2 && unbroken) return `${first}–${last}`;
  return rows.length === 1 ? first : `${numbers.slice(0, -1).join(', ')} and ${last}`;
}
