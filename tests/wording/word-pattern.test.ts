import { describe, expect, test } from 'vitest';
import { FLAG, INTO } from '../../src/fabric/fabric.ts';
import { wordPattern } from '../../src/wording/word-pattern.ts';
import type { WordedPattern } from '../../src/wording/words.ts';
import { buildFabric, chainRow, plainRows, rounds, times } from '../measure/build-fabric.ts';
import { readPattern } from './read-pattern.ts';
import { SHELL_SQUARE, shellFabric } from './shell-square.ts';

const SMALL = shellFabric('small', 6, 27);
const LARGE = shellFabric('large', 8, 33);

describe('a shell square', () => {
  test('one size has its own numbers, its own rows and a count at each row', () => {
    expect(printed(wordPattern(SHELL_SQUARE, SMALL, 'us', 0))).toEqual([
      'Foundation: With A, ch 38.',
      'Row 1 (RS): Sc in 2nd ch from hook, *sk next 2 ch, shell in next ch, sk next 2 ch, sc in next ch; rep from * across, turn. (37 sts)',
      'Row 2: Ch 3 (counts as dc), 2 dc in first sc, *sk next 2 dc, sc in next dc, sk next 2 dc, shell in next sc; rep from * to last 6 sts, sk next 2 dc, sc in next dc, sk next 2 dc, 3 dc in last sc, turn. (37 sts)',
      'Row 3: Ch 1, sc in first dc, *sk next 2 dc, shell in next sc, sk next 2 dc, sc in next dc; rep from * across, turn. (37 sts)',
      'Rows 4–27: Rep Rows 2 and 3, ending with a Row 3. (37 sts)',
      'Fasten off.',
    ]);
  });

  test('all sizes together have the smallest first and the others in brackets', () => {
    const lines = printed(wordPattern(SHELL_SQUARE, [SMALL, LARGE], 'us', 'all'));
    expect(lines[0]).toBe('Foundation: With A, ch 38 (50).');
    expect(lines[3]).toMatch(/rep from \* across, turn\. \(37 \(49\) sts\)$/);
    expect(lines[4]).toBe('Rows 4–27 (33): Rep Rows 2 and 3, ending with a Row 3. (37 (49) sts)');
  });

  test('UK terms change the stitches, the skips and nothing that is counted', () => {
    const lines = printed(wordPattern(SHELL_SQUARE, [SMALL, LARGE], 'uk', 1));
    expect(lines[0]).toBe('Foundation: With A, ch 50.');
    expect(lines[2]).toBe(
      'Row 2: Ch 3 (counts as tr), 2 tr in first dc, *miss next 2 tr, dc in next tr, miss next 2 tr, shell in next dc; rep from * to last 6 sts, miss next 2 tr, dc in next tr, miss next 2 tr, 3 tr in last dc, turn. (49 sts)',
    );
  });

  test('full words leave nothing short', () => {
    const us = wordPattern(SHELL_SQUARE, SMALL, 'us-full', 0);
    expect(printed(us)[1]).toBe(
      'Row 1 (right side): Single crochet in 2nd chain from hook, *skip next 2 chains, shell in next chain, skip next 2 chains, single crochet in next chain; repeat from * across, turn. (37 stitches)',
    );
    expect(us.abbreviations).toEqual([]);
    const uk = wordPattern(SHELL_SQUARE, SMALL, 'uk-full', 0);
    expect(printed(uk)[3]).toBe(
      'Row 3: Chain 1, double crochet in first treble crochet, *miss next 2 treble crochet, shell in next double crochet, miss next 2 treble crochet, double crochet in next treble crochet; repeat from * across, turn. (37 stitches)',
    );
    expect(uk.abbreviations).toEqual([]);
  });

  test('the list of abbreviations holds what stands in the words, in their terms, and no special stitch', () => {
    const meaning = Object.fromEntries(
      wordPattern(SHELL_SQUARE, SMALL, 'uk', 0).abbreviations.map(({ abbr, meaning: says }) => [abbr, says]),
    );
    expect(Object.keys(meaning)).toEqual(['ch', 'dc', 'miss', 'rep', 'RS', 'st', 'tr']);
    expect(meaning.dc).toBe('double crochet');
    expect(meaning.tr).toBe('treble crochet');
    const us = wordPattern(SHELL_SQUARE, SMALL, 'us', 0).abbreviations.map(({ abbr }) => abbr);
    expect(us).toEqual(['ch', 'dc', 'rep', 'RS', 'sc', 'sk', 'st']);
  });

  test('a special stitch without words of its own is described by its stitches', () => {
    expect(wordPattern(SHELL_SQUARE, SMALL, 'us', 0).specials).toEqual([
      { name: 'shell', called: 'shell', how: '5 dc in same st.' },
    ]);
    expect(wordPattern(SHELL_SQUARE, SMALL, 'uk-full', 0).specials).toEqual([
      { name: 'shell', called: 'shell', how: '5 treble crochet in same stitch.' },
    ]);
  });

  test('every row of the fabric stands behind just one line', () => {
    const rows = wordPattern(SHELL_SQUARE, SMALL, 'us', 0).parts.flatMap((part) =>
      part.lines.flatMap((line) => line.rows),
    );
    expect(rows).toEqual(SMALL.rows.map((_, index) => index));
  });
});

describe('a square with corner spaces', () => {
  const square = readPattern({
    specials: [
      {
        name: 'beg 3-dc cl',
        fullName: 'beginning 3-dc cluster',
        steps: 'ch 2, dc2tog in same st',
        how: 'Ch 2, sk no st, yo and dc2tog in same st',
      },
    ],
    make: 2,
    work: `Ch 4, join with sl st in first ch to form ring.
Rnd 1 (RS): Ch 5 (counts as dc and ch 2), [3 dc in ring, ch 2] 3 times, 2 dc in ring, join with sl st in 3rd ch of beg ch-5. (12 dc, 4 ch-2 sps)
Rnd 2: Beg 3-dc cl in next ch-2 sp, *sc in BLO of next 3 sts, (2 dc, ch 2, 2 dc) in next corner ch-2 sp; rep from * around, do not turn.`,
  });
  const dc = { id: 'dc' };
  const side = [...times(3, dc), ...times(2, { id: 'ch' })];
  const fabric = buildFabric(
    [
      { ...chainRow(4), line: 0 },
      { unit: 'round', number: 1, line: 1, closing: 'joined', work: [...side, ...side, ...side, ...side] },
      {
        unit: 'round',
        number: 2,
        line: 2,
        closing: 'joined',
        work: [...side, ...side, ...side, ...side, { id: 'sc' }],
      },
    ],
    [{ name: 'Square', shape: 'round' }],
  );

  test('a stated count is kept; one worked out names the stitches where there are spaces', () => {
    const [ring, first, second] = wordPattern(square, fabric, 'us', 0).parts[0]?.lines ?? [];
    expect(ring?.count).toBeNull();
    expect(first?.count).toBe('12 dc, 4 ch-2 sps');
    expect(second?.count).toBe('12 dc, 1 sc, 4 ch-2 sps');
  });

  test('the UK puts the number of a space before its chains, also in the names of special stitches', () => {
    const words = wordPattern(square, fabric, 'uk', 0);
    expect(printed(words)[2]).toBe(
      'Rnd 2: Beg 3-tr cl in next 2-ch sp, *dc in BLO of next 3 sts, (2 tr, ch 2, 2 tr) in next corner 2-ch sp; rep from * around, do not turn. (12 tr, 1 dc, 4 2-ch sps)',
    );
    expect(words.specials).toEqual([
      {
        name: 'beginning 3-tr cluster (beg 3-tr cl)',
        called: 'beg 3-tr cl',
        how: 'Ch 2, miss no st, yrh and tr2tog in same st.',
      },
    ]);
  });

  test('full words spell out loops, spaces and what the designer wrote', () => {
    const words = wordPattern(square, fabric, 'us-full', 0);
    expect(printed(words)[1]).toBe(
      'Round 1 (right side): Chain 5 (counts as double crochet and chain 2), [3 double crochet in ring, chain 2] 3 times, 2 double crochet in ring, join with slip stitch in 3rd chain of beginning chain-5. (12 double crochet, 4 chain-2 spaces)',
    );
    expect(printed(words)[2]).toContain('single crochet in back loop only of next 3 stitches');
    expect(words.specials[0]?.how).toBe(
      'Chain 2, skip no stitch, yarn over and double crochet 2 together in same stitch.',
    );
  });

  test('words to the maker and names of rows are put into the terms too', () => {
    const noted = readPattern({
      work: 'Sc edging: Sc in each st around, place marker in last sc (RS facing).',
    });
    expect(printed(wordPattern(noted, [], 'uk', 0))).toEqual([
      'Dc edging: Dc in each st around, place marker in last dc (RS facing).',
    ]);
    expect(printed(wordPattern(noted, [], 'us-full', 0))).toEqual([
      'Single crochet edging: Single crochet in each stitch around, place marker in last single crochet (right side facing).',
    ]);
  });

  test('a part made more than once says so', () => {
    expect(wordPattern(square, fabric, 'us', 0).parts[0]?.make).toBe('Make 2.');
  });
});

describe('sizes', () => {
  const mat = readPattern({
    sizes: ['S', 'M'],
    work: `Rnd 1: 6 sc in magic ring. (6 sc)
Rnds 2-3 (5): [Sc in next 0 (1) sts, 2 sc in next st] 6 times.
Rnd 4 (6): *Sc in next 3 sts; rep from * 0 (2) more times, sc in next st. (4 (10) sts)
Rnd 5 (-): Sc in each st around.`,
  });

  test('a step with no stitches and a row with a dash are left out of the size that skips them', () => {
    const fabric = buildFabric(
      rounds('sc', [6, 12, 24, 4]).map((row, i) => ({ ...row, line: [0, 1, 1, 2][i] ?? 0 })),
      [{ name: 'Square', shape: 'round' }],
      'S',
    );
    expect(printed(wordPattern(mat, fabric, 'us', 0))).toEqual([
      'Rnd 1: 6 sc in magic ring. (6 sc)',
      'Rnds 2–3: [2 sc in next st] 6 times. (12, 24 sts)',
      'Rnd 4: Sc in next 3 sts, sc in next st. (4 sts)',
      'Rnd 5: Sc in each st around.',
    ]);
    expect(printed(wordPattern(mat, [], 'us', 1)).slice(2)).toEqual([
      'Rnd 6: *Sc in next 3 sts; rep from * twice more, sc in next st. (10 sts)',
    ]);
  });

  test('all sizes at once keep the dash and the nought', () => {
    expect(printed(wordPattern(mat, [], 'us', 'all'))).toEqual([
      'Rnd 1: 6 sc in magic ring. (6 sc)',
      'Rnds 2–3 (5): [Sc in next 0 (1) sts, 2 sc in next st] 6 times.',
      'Rnd 4 (6): *Sc in next 3 sts; rep from * 0 (2) more times, sc in next st. (4 (10) sts)',
      'Rnd 5 (-): Sc in each st around.',
    ]);
  });

  test('a range of one row is that row', () => {
    const strip = readPattern({ sizes: ['S', 'M'], work: 'Row 1: 6 sc, turn.\nRows 2-2 (5): Rep Row 1.' });
    expect(printed(wordPattern(strip, [], 'us', 0))[1]).toBe('Row 2: Rep Row 1.');
    expect(printed(wordPattern(strip, [], 'us-full', 1))[1]).toBe('Rows 2–5: Repeat Row 1.');
  });

  test('a special stitch whose name is an abbreviation of the trade is described once, under its own name', () => {
    const puffed = readPattern({
      work: 'Row 1: Sc in next st, inc in next st, turn.',
      specials: [{ name: 'inc', fullName: 'increase', steps: '2 dc in same st' }],
    });
    const { abbreviations, specials } = wordPattern(puffed, [], 'us', 0);
    expect(abbreviations.map(({ abbr }) => abbr)).toEqual(['dc', 'sc', 'st']);
    expect(specials).toEqual([{ name: 'increase (inc)', called: 'inc', how: '2 dc in same st.' }]);
  });

  test('rows that are repeated without a label of their own are given one', () => {
    const strip = readPattern({ work: 'Row 1: 6 sc, turn.\nRep Row 1 4 more times.' });
    const fabric = buildFabric(
      plainRows('sc', 6, 5).map((row, i) => ({ ...row, line: i === 0 ? 0 : 1 })),
      [{ name: 'Square' }],
    );
    expect(printed(wordPattern(strip, fabric, 'us', 0))[1]).toBe('Rows 2–5: Rep Row 1. (6 sts)');
  });
});

describe('stitches worked evenly', () => {
  const edged = readPattern({
    work: `Row 1: 4 sc, turn.
Rows 2-8: Rep Row 1.
Edging: Ch 1, work 12 sc evenly along row ends, 3 sc in next st.`,
  });

  test('the spread is written out, also a row end that is passed over at the end', () => {
    const rows = plainRows('sc', 4, 8).map((row, i) => ({ ...row, line: Math.min(i, 1) }));
    // 2, 1, 2, 1, 2, 1, 3 and none, from the last row down.
    const ends = [7, 7, 6, 5, 5, 4, 3, 3, 2, 1, 1, 1];
    const edge = ends.map((row) => ({ id: 'sc', into: [row * 4], where: INTO.rowEnd }));
    const fabric = buildFabric(
      [
        ...rows,
        {
          label: 'Edging',
          unit: null,
          line: 2,
          edging: true,
          work: [{ id: 'ch', flags: FLAG.turningChain }, ...edge],
        },
      ],
      [{ name: 'Square' }],
    );
    expect(printed(wordPattern(edged, fabric, 'us', 0))[2]).toBe(
      'Edging: Ch 1, work 12 sc evenly along row ends: *2 sc in next row end, 1 sc in next row end; rep from * twice more, 3 sc in next row end, sk next row end; 3 sc in next st. (12 sts)',
    );
  });

  test('a first row that begins with skipped chains counted as a stitch has its row end too', () => {
    const rows = plainRows('dc', 4, 3).map((row, i) => ({ ...row, line: Math.min(i, 1) }));
    // The chain of the foundation, then the first stitches of rows 2 and 3 (at 4 and 8 after the chain).
    const ends = [2, 9, 9, 13, 13].map((into) => ({ id: 'sc', into: [into], where: INTO.rowEnd }));
    const fabric = buildFabric(
      [{ ...chainRow(5), line: 9 }, ...rows, { unit: null, line: 2, edging: true, work: ends }],
      [{ name: 'Square' }],
    );
    const edging = readPattern({
      work: 'Row 1: 4 dc.\nRows 2-3: Rep Row 1.\nEdging: Work 5 sc evenly along row ends.',
    });
    expect(printed(wordPattern(edging, fabric, 'us', 0))[2]).toBe(
      'Edging: Work 5 sc evenly along row ends: 1 sc in next row end, 2 sc in each of next 2 row ends. (5 sts)',
    );
  });

  test('no spread is printed that the stitches of the fabric do not bear out', () => {
    const rows = plainRows('sc', 4, 8).map((row, i) => ({ ...row, line: Math.min(i, 1) }));
    const edge = [7, 6, 5].map((row) => ({ id: 'sc', into: [row * 4], where: INTO.rowEnd }));
    const fabric = buildFabric(
      [...rows, { label: 'Edging', unit: null, line: 2, edging: true, work: edge }],
      [{ name: 'Square' }],
    );
    expect(printed(wordPattern(edged, fabric, 'us', 0))[2]).toBe(
      'Edging: Ch 1, work 12 sc evenly along row ends, 3 sc in next st. (3 sts)',
    );
  });
});

function printed(words: WordedPattern): string[] {
  return words.parts.flatMap((part) =>
    part.lines.map(
      ({ label, text, count }) =>
        `${label === null ? '' : `${label}: `}${text}${count === null ? '' : ` (${count})`}`,
    ),
  );
}
