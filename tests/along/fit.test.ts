/** Squares against what is agreed for all of them: one stitch out on one edge is told, and what is offered puts it right. */

import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { ADDED_A_ROUND, remedyFor, spreadWords } from '../../src/along/remedy.ts';
import { PROJECT_FOLDER } from '../../src/site/project-folder.ts';
import { readAlongs } from '../../src/site/read-alongs.ts';
import { changedSquare, checkAlong } from './check-along.ts';

const text = readFileSync(path.join(import.meta.dirname, '../diagnostics/along/edge/good.yaml'), 'utf8');

const faultsWith = (patterns: Parameters<typeof checkAlong>[2]) =>
  checkAlong(text, 'along.yaml', patterns).diagnostics;

const LAST =
  '(sc, ch 2, sc) in corner ch-2 sp, sc in each sc to next corner; rep from * around, join with sl st in first sc. (28 sc, 4 ch-2 sps)';
const SIDES =
  '(sc, ch 2, sc) in corner ch-2 sp, sc in next 5 sc; rep from * twice more, (sc, ch 2, sc) in corner ch-2 sp, ';

test('the demo’s squares all fit', async () => {
  const [demo] = await readAlongs(path.join(PROJECT_FOLDER, 'alongs'));
  expect(demo?.faults).toEqual([]);
  const weeks = demo?.worked?.weeks ?? [];
  expect(weeks.flatMap(({ faults }) => faults)).toEqual([]);
  expect(weeks.map(({ squares }) => squares.length)).toEqual([1, 2, 2, 2, 2, 1]);
  const single = weeks.flatMap(({ squares }) => squares).filter(({ choice }) => choice.covers === 1);
  expect(single.map(({ edges }) => edges.counts)).toEqual(single.map(() => [19, 19, 19, 19]));
});

test.each([
  [
    'one more',
    'sc in next 4 sc, 2 sc in next sc',
    '7, 7, 7 and 8',
    'make 1 fewer: work 2 together at the 4th stitch',
  ],
  ['one fewer', 'sc in next 3 sc, sc2tog', '7, 7, 7 and 6', 'make 1 more: 2 sc in the 3rd stitch'],
])('%s on one edge is told, with what to do', (_, side, counts, remedy) => {
  const faults = faultsWith(changedSquare('another', LAST, `${SIDES}${side}, join with sl st in first sc.`));
  expect(faults.map(({ code }) => code)).toEqual(['along/edge']);
  expect(faults[0]?.message).toContain(`Another Square has ${counts} stitches`);
  expect(faults[0]?.try).toBe(
    `in Rnd 3, counting the sides from the first corner, on the 4th side ${remedy}.`,
  );
});

test('the remedy, done, is a square that fits', () => {
  // Where sc2tog had made one stitch too few, the remedy says to make one more of the third.
  const mended = changedSquare(
    'another',
    LAST,
    `${SIDES}sc in next sc, 2 sc in next sc, sc in next sc, sc2tog, join with sl st in first sc.`,
  );
  expect(faultsWith(mended)).toEqual([]);
});

test('a square a round too small is put right by a round, and that round makes it fit', () => {
  const [fault] = checkAlong(text.replace('pattern: another', 'pattern: small')).diagnostics;
  expect(fault?.code).toBe('along/edge');
  expect(fault?.try).toBe('work a round of sc round it, (sc, ch 2, sc) in each corner.');
});

test('corners may be stitches, and are left out of the count', () => {
  const { worked } = checkAlong(text.replace('pattern: another', 'pattern: stitch-corners'));
  expect(worked?.weeks[1]?.squares[0]?.edges).toMatchObject({ counts: [7, 7, 7, 7], cornerChains: 0 });
});

test('whatever is missing, rounds and spread together come to what is agreed', () => {
  let told = 0;
  for (const growMm of [-20, 0, 8, 30])
    for (const count of [10, 19, 24, 29]) {
      const words = remedyFor({
        round: 'Rnd 9',
        counts: [count, count, count, count],
        wanted: [24, 24, 24, 24],
        growMm,
        toleranceMm: 4,
        roundMm: 5,
        terms: 'US',
      });
      if (/cannot make up for so much/.test(words)) {
        told += 1;
        continue;
      }
      const rounds = Number(/work (a|\d+) rounds?/.exec(words)?.[1]?.replace('a', '1') ?? 0);
      const more =
        Number(/make (\d+) more/.exec(words)?.[1] ?? 0) - Number(/make (\d+) fewer/.exec(words)?.[1] ?? 0);
      expect(count + rounds * ADDED_A_ROUND + more, words).toBe(24);
    }
  // Some are too far off for any edging, others are not.
  expect(told).toBeGreaterThan(0);
  expect(told).toBeLessThan(12);
});

test('stitches are spread so that all of them have room', () => {
  expect(spreadWords(1, 19, 'sc')).toBe('make 1 more: 2 sc in the 10th stitch');
  expect(spreadWords(3, 19, 'sc')).toBe('make 3 more: 2 sc in every 6th stitch, 3 times');
  expect(spreadWords(-2, 20, 'dc')).toBe('make 2 fewer: work 2 together at every 10th stitch, 2 times');
});
