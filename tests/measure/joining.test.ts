/** Yarn that joins the pieces of a pattern made many times over, by what its finishing says; and tails. */

import { describe, expect, test } from 'vitest';
import { compilePattern } from '../../src/compile.ts';
import { yarnNote } from '../../src/measure/materials.ts';
import type { YarnUse } from '../../src/measure/measures.ts';

/** Squares of 20 stitches and 20 rows, 10 cm either way. */
function squares({ make = 20, finishing = '', used = '' } = {}): readonly YarnUse[] {
  const text = `title: Eelgrass Blanket
terms: US
gauge: {stitches: 20, rows: 20, over: 10 cm, of: single crochet}
yarn:
  A: {colour: reed, weight: 2, fibre: wool${used === '' ? '' : `, used: ${used}`}}
  B: {colour: oat, weight: 2, fibre: wool}
parts:
  - name: Square
    make: ${make}
    work: |
      With A, ch 21.
      Row 1: Sc in 2nd ch from hook and in each ch across, turn.
      Rows 2-10: Ch 1, sc in each st across, turn.
      Rows 11-20: With B, ch 1, sc in each st across, turn.
${finishing === '' ? '' : `finishing:\n  - ${finishing}\n`}`;
  const compiled = compilePattern({ file: 'blanket', text }, 'blanket');
  expect(compiled.diagnostics.filter(({ severity }) => severity === 'error')).toEqual([]);
  return compiled.sizes[0]?.measures.yarn ?? [];
}

const joiningM = (yarn: readonly YarnUse[], letter: string): number | undefined =>
  yarn.find((use) => use.letter === letter)?.joiningM;

describe('joining the squares', () => {
  test('whipped together takes three and a half times their seams, and a tenth more', () => {
    const yarn = squares({ finishing: 'With B, whip stitch the squares together.' });
    // 20 squares lie 4 by 5: 31 seams of 10 cm, as in the worked example of the rules of thumb.
    expect(joiningM(yarn, 'B')).toBeCloseTo(31 * 0.1 * 3.5 * 1.1, 6);
    expect(joiningM(yarn, 'A')).toBeUndefined();
  });

  test('in mattress stitch takes less', () => {
    const yarn = squares({ finishing: 'Using B, join squares in mattress stitch.' });
    expect(joiningM(yarn, 'B')).toBeCloseTo(31 * 0.1 * 2.5 * 1.1, 6);
  });

  test('crocheted together takes a row of that stitch', () => {
    const yarn = squares({ finishing: 'Join squares with single crochet seams.' });
    // The yarn is not named: the first.
    expect(joiningM(yarn, 'A')).toBeCloseTo(31 * 0.1 * 10.6 * 1.1, 6);
  });

  test.each([
    [''],
    ['Weave in ends.'],
    ['Sew in the ends of each square.'],
    ['Join the squares as you like.'],
    ['Sew on the button.'],
  ])('%j tells nothing of it', (finishing) => {
    expect(squares({ finishing }).every((use) => use.joiningM === undefined)).toBe(true);
  });

  test('of one piece takes nothing', () => {
    const finishing = 'Whip stitch the pieces together.';
    expect(squares({ make: 1, finishing }).every((use) => use.joiningM === undefined)).toBe(true);
  });

  test('is part of what the designer used, and told beside it', () => {
    const finishing = 'With A, whip stitch the squares together.';
    const [a] = squares({ finishing, used: '300 m' });
    expect(a?.lengthM).toBeCloseTo(330, 6);
    expect(yarnNote(a === undefined ? [] : [a])).toMatch(
      /with a tenth more\. Of yarn A about \d+ m \(\d+ yd\) are for joining the pieces\.$/,
    );
  });
});

describe('tails', () => {
  test('are two for each colour of each square', () => {
    const [a, b] = squares();
    // 10 rows of 20 sc of 53 mm each and a turning chain, 20 times; A has the chain of 21 as well.
    const stitchesM = (20 * 10 * (20 + 0.48) * 53) / 1000;
    expect((b?.lengthM ?? 0) / 1.1).toBeCloseTo(stitchesM + 20 * 0.3, 3);
    expect((a?.lengthM ?? 0) / 1.1).toBeGreaterThan(stitchesM + 20 * 0.3);
  });

  test('are two more where a yarn is fastened off and joined again, however soon', () => {
    const cut = `title: Eelgrass Stripes
terms: US
gauge: {stitches: 20, rows: 20, over: 10 cm, of: single crochet}
yarn:
  A: {colour: reed, weight: 2, fibre: wool}
  B: {colour: oat, weight: 2, fibre: wool}
parts:
  - name: Cloth
    work: |
      With A, ch 21.
      Row 1: Sc in 2nd ch from hook and in each ch across, turn.ENDS
      Row 2: With B, ch 1, sc in each st across, turn.
      Row 3: With A, ch 1, sc in each st across, turn.
`;
    const lengthM = (ends: string): number =>
      compilePattern({ file: 'x', text: cut.replace('ENDS', ends) }, 'x').sizes[0]?.measures.yarn[0]
        ?.lengthM ?? 0;
    expect((lengthM(' Fasten off A.') - lengthM('')) / 1.1).toBeCloseTo(0.3, 6);
  });
});
