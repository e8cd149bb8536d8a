/** What chain spaces, post stitches and stitches that reach down add to a piece: to its height, its width and its yarn. */

import { describe, expect, test } from 'vitest';
import { compilePattern } from '../../src/compile.ts';
import { heightsInSc, SC_HEIGHT_TO_WIDTH } from '../../src/measure/heights-in-sc.ts';
import { rowWidths } from '../../src/measure/row-widths.ts';
import { fabricOf } from '../fabric/work-text.ts';

/** Without the foundation. */
function heightsOf(work: string): readonly number[] {
  return heightsInSc(fabricOf(work)).slice(1);
}

const SC_ROWS = `Ch 14.
Row 1: Sc in 2nd ch from hook and in each ch across, turn. (13 sc)
Row 2: Ch 1, sc in each sc across, turn.
Row 3: Ch 1, sc in each sc across, turn.`;

describe('stitches that reach down', () => {
  test('a spike two rows down in a row of single crochet makes it no higher', () => {
    const spiked = `${SC_ROWS}
Row 4: Ch 1, sc in first sc, *spike sc in next sc 2 rows below, sc in next sc; rep from * across, turn.`;
    expect(heightsOf(spiked)).toEqual([1, 1, 1, 1]);
  });

  test('a double crochet dropped three rows stands up no further than the row', () => {
    const dropped = `${SC_ROWS}
Row 4: Ch 1, sc in first sc, *dc in next sc 3 rows below, sc in next sc; rep from * across, turn.`;
    expect(heightsOf(dropped)).toEqual([1, 1, 1, 1]);
  });

  test('a treble dropped one row further adds what is left of it: 3, less the row of 1 it goes past', () => {
    const treble = `${SC_ROWS}
Row 4: Ch 1, sc in first sc, *tr in next sc 2 rows below, sc in next sc; rep from * across, turn.`;
    expect(heightsOf(treble)).toEqual([1, 1, 1, 2]);
  });

  test('where all of a row reaches down it still lies on what is there', () => {
    const all = `${SC_ROWS}
Row 4: Ch 1, *spike sc in next sc 2 rows below; rep from * across, turn.`;
    const height = heightsOf(all)[3] ?? 0;
    expect(height).toBeGreaterThan(0);
    expect(height).toBeLessThan(1);
  });

  test('and take the yarn of their length', () => {
    const lengthM = (row: string): number => yarnOf(`${SC_ROWS}\n${row}`);
    const plain = lengthM('Row 4: Ch 1, sc in each sc across, turn.');
    const spiked = lengthM(
      'Row 4: Ch 1, sc in first sc, *spike sc in next sc 2 rows below, sc in next sc; rep from * across, turn.',
    );
    expect(spiked).toBeGreaterThan(plain);
  });
});

describe('post stitches', () => {
  test('start lower than the tops they stand between, and make rows less high than plain ones', () => {
    const dc = `Ch 15.
Row 1: Dc in 4th ch from hook (skipped 3 ch count as dc) and in each ch across, turn. (13 dc)`;
    const [, post = 0] = heightsOf(`${dc}
Row 2: Ch 2 (does not count as a st), fpdc around each dc across, turn.`);
    const [, plain = 0] = heightsOf(`${dc}
Row 2: Ch 3 (counts as dc), sk first dc, dc in each dc across, turn.`);
    expect(plain).toBe(2);
    expect(post).toBeGreaterThan(1.4);
    expect(post).toBeLessThan(plain);
  });

  test('are as wide as plain ones', () => {
    const rib = fabricOf(`Ch 15.
Row 1: Dc in 4th ch from hook (skipped 3 ch count as dc) and in each ch across, turn. (13 dc)
Row 2: Ch 2 (does not count as a st), *fpdc around next dc, bpdc around next dc; rep from * to last dc, fpdc around last dc, turn.`);
    expect(rowWidths(rib).slice(1)).toEqual([13, 13]);
  });
});

describe('chain spaces', () => {
  const NET = `Ch 18.
Row 1: Sc in 2nd ch from hook, *ch 5, sk next 3 ch, sc in next ch; rep from * across, turn. (5 sc, 4 ch-5 sps)
Row 2: Ch 6, *sc in next ch-5 sp, ch 5; rep from * 2 more times, sc in next ch-5 sp, ch 3, dc in last sc, turn.`;

  test('an arch longer than it is wide lifts the row that is worked into it by its rise', () => {
    // 5 chains over 3 and the halves of the stitches beside: two sides of 2.5 over half of 4.
    const rise = Math.sqrt(2.5 ** 2 - 2 ** 2) / SC_HEIGHT_TO_WIDTH;
    expect(heightsOf(NET)[0]).toBeCloseTo(1 + rise, 6);
  });

  test('an arch that nothing is worked into, and one no longer than it is wide, lift nothing', () => {
    expect(heightsOf(NET.split('\n').slice(0, 2).join('\n'))).toEqual([1]);
    const mesh = `Ch 18.
Row 1: Sc in 2nd ch from hook, *ch 3, sk next 3 ch, sc in next ch; rep from * across, turn.
Row 2: Ch 1, sc in first sc, *ch 3, sk next ch-3 sp, sc in next sc; rep from * across, turn.`;
    expect(heightsOf(mesh)).toEqual([1, 1]);
  });

  test('a filet mesh is as high as its stitches and as wide as its stitches and chains', () => {
    const filet = fabricOf(`Ch 13.
Row 1: Dc in 4th ch from hook (skipped 3 ch count as dc), *ch 2, sk next 2 ch, dc in next ch; rep from * across, turn.
Row 2: Ch 5 (counts as dc and ch 2), sk first dc, *dc in next dc, ch 2; rep from * once more, dc in each of next 2 dc, turn.`);
    expect(heightsInSc(filet)[1]).toBe(2);
    expect(rowWidths(filet)[1]).toBe(11);
  });

  test('take yarn: as much for five chains as two and a half single crochet', () => {
    const [arches, plain] = [
      `Ch 18.\nRow 1: Sc in 2nd ch from hook, *ch 5, sk next 3 ch, sc in next ch; rep from * across, turn.`,
      `Ch 18.\nRow 1: Sc in 2nd ch from hook, *sk next 3 ch, sc in next ch; rep from * across, turn.`,
    ].map(yarnOf);
    // 4 arches of 5 chains at 0.48 of a single crochet's 10.6 widths of 5 mm, and a tenth more.
    expect(((arches ?? 0) - (plain ?? 0)) / 1.1).toBeCloseTo((4 * 5 * 0.48 * 10.6 * 5) / 1000, 2);
  });
});

/** Of yarn A at 20 stitches to 10 cm. */
function yarnOf(work: string): number {
  const text = `title: Eelgrass Net
terms: US
gauge: {stitches: 20, rows: 22, over: 10 cm, of: single crochet}
yarn:
  A: {colour: reed, weight: 2, fibre: wool}
parts:
  - name: Net
    work: |
${work
  .split('\n')
  .map((line) => `      ${line}`)
  .join('\n')}
`;
  const compiled = compilePattern({ file: 'net', text }, 'net');
  expect(compiled.diagnostics.filter(({ severity }) => severity === 'error')).toEqual([]);
  return compiled.sizes[0]?.measures.yarn[0]?.lengthM ?? Number.NaN;
}
