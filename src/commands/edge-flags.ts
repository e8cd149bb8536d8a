/** The flags of `edge` in, what is asked of the edging out, or the sentence that says what cannot be. */

import type { EdgeAsked, EdgeMultiple } from '../measure/edge-plan.ts';
import type { EdgedPiece, EdgePlaces, EdgeSide } from '../measure/edge-sides.ts';
import { SC_HEIGHT_TO_WIDTH } from '../measure/heights-in-sc.ts';
import { countOf, gaugeOf, Wrong } from '../own/own-values.ts';
import type { Pattern } from '../pattern/pattern.ts';
import type { StitchRow, Terms } from '../stitches/stitch-row.ts';
import { findStitch } from '../stitches/table.ts';
import { plainVoice, type Voice } from '../wording/voice.ts';

export interface EdgeWanted extends EdgeAsked {
  /** The one side given by its places, without a pattern. */
  readonly piece: EdgedPiece | null;
  /** Id of the stitch of the edging. */
  readonly stitch: string;
  readonly voice: Voice;
}

export type EdgeAskedFor =
  | { readonly kind: 'asked'; readonly wanted: EdgeWanted }
  | { readonly kind: 'wrong'; readonly message: string };

type Values = ReadonlyMap<string, string>;

const MOST_IN_CORNER = 20;

export function readEdgeAsked(values: Values, pattern: Pattern | null): EdgeAskedFor {
  try {
    const terms = pattern?.terms ?? termsOf(values.get('terms'));
    for (const name of ['along', 'of', 'terms'])
      if (pattern !== null && values.has(name)) throw new Wrong(`--${name} is for a side without a pattern.`);
    const piece = pattern === null ? pieceOf(values, terms) : null;
    const [side] = piece?.sides ?? [];
    const put = countOf(values.get('put'), '--put');
    if (side !== undefined && put === null && side.flat === null)
      throw new Wrong(
        'Say how many stitches, --put 40, or what the rows are worked in, --of dc, to get as many as lie flat.',
      );
    const stitch = stitchOf(values, 'with', terms)?.id ?? 'sc';
    return {
      kind: 'asked',
      wanted: {
        piece,
        put,
        across: countOf(values.get('across'), '--across'),
        inCorner: pattern === null ? 0 : cornerOf(values.get('corner')),
        multiple: multipleOf(values.get('multiple')),
        stitch,
        voice: plainVoice(terms, 'all'),
      },
    };
  } catch (fault) {
    if (fault instanceof Wrong) return { kind: 'wrong', message: fault.message };
    throw fault;
  }
}

const PLACES: readonly (readonly [RegExp, EdgePlaces])[] = [
  [/^(?:row ?ends?|rows?)$/i, 'row ends'],
  [/^(?:sts?|stitch(?:es)?)$/i, 'stitches'],
  [/^(?:chs?|chains?)$/i, 'chains'],
];

function pieceOf(values: Values, terms: Terms): EdgedPiece {
  const written = values.get('along');
  if (written === undefined)
    throw new Wrong('Name a pattern, or the places of a side: --along "52 row ends".');
  const [, n = '', what = ''] = /^(\d+)\s+(.+)$/.exec(written.trim()) ?? [];
  const into = PLACES.find(([words]) => words.test(what))?.[1];
  const places = Number(n);
  if (into === undefined || places < 1 || places > 20_000)
    throw new Wrong(
      `--along wants places of one side, "52 row ends", "40 sts" or "40 ch", not "${written}".`,
    );
  const gauge = gaugeOf(values.get('gauge'), '--gauge');
  const rows = stitchOf(values, 'of', terms);
  const rowMm = gauge === null || gauge.rows === null ? null : gauge.upMm / gauge.rows;
  const stitchMm = gauge === null ? null : gauge.overMm / gauge.stitches;
  // What is counted tells more than what is usual.
  const usual = rows === null ? null : places * rows.heightInSc * SC_HEIGHT_TO_WIDTH;
  const counted = rowMm === null || stitchMm === null ? usual : (places * rowMm) / stitchMm;
  const flat = into === 'row ends' ? counted : places;
  const mm = flat === null || stitchMm === null ? null : flat * stitchMm;
  const side: EdgeSide = { side: 'sides', count: 1, into, places, mm, flat };
  return {
    part: '',
    sides: [side],
    corners: 0,
    slants: false,
    reckoned: into === 'row ends' && rowMm === null && usual !== null,
  };
}

function stitchOf(values: Values, name: string, terms: Terms): StitchRow | null {
  const written = values.get(name);
  if (written === undefined) return null;
  const found = findStitch(written, terms);
  if (found === null || !found.counted)
    throw new Wrong(
      `--${name} wants a stitch in ${terms} terms, such as ${terms === 'US' ? 'sc' : 'dc'}, not "${written}".`,
    );
  return found;
}

function termsOf(written: string | undefined): Terms {
  if (written === undefined || /^us$/i.test(written)) return 'US';
  if (/^uk$/i.test(written)) return 'UK';
  throw new Wrong(`--terms takes us, uk, not ${written}.`);
}

function cornerOf(written: string | undefined): number {
  if (written === undefined) return 3;
  const n = Number(written);
  if (!Number.isInteger(n) || n < 0 || n > MOST_IN_CORNER)
    throw new Wrong(`--corner wants a whole number up to ${MOST_IN_CORNER}, 0 for none, not "${written}".`);
  return n;
}

function multipleOf(written: string | undefined): EdgeMultiple | null {
  if (written === undefined) return null;
  const [, of = '', plus = '0'] =
    /^(?:a\s+)?(?:multiple\s+of\s+)?(\d+)(?:\s*(?:plus|\+)\s*(\d+))?$/i.exec(written.trim()) ?? [];
  if (Number(of) < 1 || Number(of) > 1000 || Number(plus) > 1000)
    throw new Wrong(
      `--multiple wants a repeat, and what is beside it if anything: "4 plus 1", not "${written}".`,
    );
  return { of: Number(of), plus: Number(plus) };
}
