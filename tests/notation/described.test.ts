import { describe, expect, test } from 'vitest';
import { readPhrase } from '../../src/notation/read.ts';
import { plainText } from '../../src/source/mapped-text.ts';
import type { Terms } from '../../src/stitches/stitch-row.ts';
import { brief, contextOf } from './read-lines.ts';

function read(text: string, terms: Terms = 'US') {
  const { steps, diagnostics } = readPhrase(plainText(text), contextOf(terms));
  return { steps: brief(steps), faults: diagnostics.map(({ code }) => code) };
}

function stitchOf(text: string, terms: Terms = 'US') {
  const { steps, diagnostics } = readPhrase(plainText(text), contextOf(terms));
  const [only, more] = steps;
  if (only?.kind !== 'work' || only.stitch.kind !== 'stitch' || more !== undefined || diagnostics.length > 0)
    return null;
  return only.stitch.id;
}

const CLUSTER =
  '(Yo, insert hook in st, yo, pull up a lp, yo, draw through 2 lps) 3 times in same st, yo, draw through 4 lps. Counts as 1 st.';
const PUFF =
  '(Yo, insert hook in st, yo, pull up a loop) 4 times in same st, yo, draw through all 9 loops. Counts as 1 st.';
const POPCORN =
  '5 dc in same st, drop lp from hook, insert hook in first of 5 dc, draw dropped lp through. Counts as 1 st.';

describe('a stitch described hook by hook', () => {
  test('is the one of the table that is made that way', () => {
    expect(stitchOf(CLUSTER)).toBe('dc3-cl');
    expect(stitchOf(PUFF)).toBe('hdc4-puff');
    expect(stitchOf(POPCORN)).toBe('dc5-popcorn');
    expect(stitchOf(POPCORN.replaceAll('dc', 'tr'), 'UK')).toBe('dc5-popcorn');
    expect(stitchOf(CLUSTER.replace('Yo, insert', 'Yrh, insert'), 'UK')).toBe('dc3-cl');
  });

  test('wrapped twice and drawn through twice has taller legs', () => {
    const taller = CLUSTER.replace('Yo, insert', 'Yo twice, insert').replace(
      'yo, draw through 2 lps)',
      'yo, draw through 2 lps, yo, draw through 2 lps)',
    );
    expect(stitchOf(taller)).toBe('tr3-cl');
  });

  test.each([
    CLUSTER.replace('4 lps', '5 lps'),
    CLUSTER.replace('Yo, insert', 'Yo twice, insert'),
    PUFF.replace('9 loops', '8 loops'),
    POPCORN.replace('of 5 dc', 'of 4 dc'),
    POPCORN.replace('first of 5 dc', 'first tr'),
    CLUSTER.replace(' Counts as 1 st.', ''),
    CLUSTER.replace('1 st', '3 sts'),
  ])('whose numbers do not agree is not guessed at: %s', (text) => {
    expect(read(text).faults).not.toEqual([]);
  });
});

describe('what a description says of its count', () => {
  test('is read where the stitches come to just that', () => {
    expect(read('dc3tog in same st. Counts as 1 st.').faults).toEqual([]);
    expect(read('ch 3, sl st in top of last sc made. Not counted.')).toEqual({
      steps: [
        { kind: 'chain', n: 3 },
        {
          kind: 'work',
          stitch: { kind: 'stitch', id: 'sl-st' },
          place: { kind: 'last-made', what: { kind: 'stitch', id: 'sc' } },
        },
      ],
      faults: [],
    });
  });

  test.each(['5 dc in same st. Counts as 1 st.', '(dc, ch 1, dc) in same st. Not counted.'])(
    'is a fault where they do not: %s',
    (text) => {
      expect(read(text).faults).toEqual(['phrase/unread']);
    },
  );
});
