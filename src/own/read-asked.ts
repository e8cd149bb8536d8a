/** What a maker writes of the size, gauge and yarn she wants in, those as figures out, or the sentence that says what is amiss. */

import { NOTHING_ASKED, type OwnSize } from '../pattern/own-size.ts';
import { firstMultiple } from '../pattern/pattern-repeat.ts';
import { ownPattern, type Remakeable } from './own-pattern.ts';
import { ballsOf, countOf, gaugeOf, hookOf, lengthOf, Wrong } from './own-values.ts';

export const ASKED_FIELDS = ['width', 'height', 'repeats', 'rows', 'gauge', 'ball', 'hook'] as const;
export type AskedField = (typeof ASKED_FIELDS)[number];

/** As she writes it: `30 cm`, `18 sts and 20 rows over 10 cm`; absent where she goes by the pattern. */
export type AskedWords = { readonly [field in AskedField]?: string | undefined };

export type Asked =
  | { readonly kind: 'none' }
  | { readonly kind: 'asked'; readonly own: OwnSize }
  | { readonly kind: 'wrong'; readonly field: AskedField; readonly message: string };

/** `from` is the place of the size it is made from; `called` gives a field the name it has where it is written. */
export function readAsked(
  words: AskedWords,
  remakeable: Remakeable,
  from: number,
  called: (field: AskedField) => string,
): Asked {
  if (ASKED_FIELDS.every((field) => words[field] === undefined)) return { kind: 'none' };
  const { pattern } = remakeable;
  let reading: AskedField = 'gauge';
  const value = <T>(field: AskedField, read: (written: string | undefined, name: string) => T): T => {
    reading = field;
    return read(words[field]?.trim(), called(field));
  };
  try {
    const own: OwnSize = {
      from,
      widthMm: value('width', lengthOf),
      heightMm: value('height', lengthOf),
      repeats: value('repeats', countOf),
      rows: value('rows', countOf),
      gauge: value('gauge', (written, name) => gaugeOf(written, name, () => repeatOf(remakeable, from))),
      balls: value('ball', (written, name) =>
        ballsOf(
          written,
          name,
          pattern.yarns.map(({ letter }) => letter),
        ),
      ),
      hookMm: value('hook', hookOf),
    };
    reading = 'gauge';
    if ((own.widthMm ?? own.heightMm) !== null && (own.gauge ?? pattern.gauge) === null)
      throw new Wrong(
        `${pattern.title} gives no gauge; add yours, such as ${called('gauge')} "18 sts and 20 rows over 10 cm".`,
      );
    return { kind: 'asked', own };
  } catch (fault) {
    if (fault instanceof Wrong) return { kind: 'wrong', field: reading, message: fault.message };
    throw fault;
  }
}

/** The stitches of a pattern repeat, said or proved. */
function repeatOf(remakeable: Remakeable, from: number): number | null {
  const asked: OwnSize = { ...NOTHING_ASKED, from, repeats: 1 };
  return firstMultiple(ownPattern(remakeable, asked))?.of ?? null;
}
