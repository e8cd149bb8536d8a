/** Doilies as old leaflets tell them: loops that close over what is left, slip stitches along a loop, picots in a list of dots. */

import { describe, expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const FIRST = [
  'Starting at center, ch 8. Join with sl st to form ring.',
  '1st rnd: Ch 3 (to count as 1 d c), 23 d c in ring. Sl st in top of ch-3. 24 d c.',
];
const LOOPS =
  '2nd rnd: Ch 1, s c in same place as sl st, * ch 5, skip next 3 d c, s c in next d c. Repeat from * 4 more times, ch 5. Sl st in first s c. 6 loops.';
const LIST =
  'ABBREVIATIONS\nch ........ chain\nsl st ..... slip stitch\ns c ....... single crochet\nd c ....... double crochet\np ......... picot: ch 3, sl st in last s c made';

const doily = (rounds: readonly string[], list = LIST) =>
  workedText(['Doily', 'US terms', '', list, '', ...FIRST, ...rounds].join('\n')).codes.filter(
    (code) => !code.startsWith('text/abbreviation') && code !== 'special/unused',
  );

test('the last loop goes over as many stitches as those before', () => {
  expect(doily([LOOPS])).toEqual([]);
  expect(doily([LOOPS.replace('4 more', '3 more')])).toContain('row/unworked');
  expect(doily([LOOPS.replace('more times, ch 5. Sl', 'more times. Sl')])).toContain('row/unworked');
  expect(doily([LOOPS.replace('6 loops', '7 loops')])).toContain('count/mismatch');
});

test.each([
  'Sl st in next 2 ch, s c in same loop',
  'Sl st in next 3 ch, ch 1, s c in same loop',
  'Sl st in first 3 ch of first loop, ch 1, s c in same loop',
  'Sl st in first 2 ch of next loop, s c in same loop',
])('%s', (start) => {
  const round = (n: number) =>
    `3rd rnd: ${start}, * ch 6, s c in next loop. Repeat from * around, ending with ch 6. Sl st in first s c. ${n} loops.`;
  expect(doily([LOOPS, round(6)])).toEqual([]);
  expect(doily([LOOPS, round(7)])).toContain('count/mismatch');
  expect(doily([LOOPS, round(6).replace(/(?:next|first) [23] ch/, 'next 7 ch')])).not.toEqual([]);
});

test.each([
  'in each loop around make 3 s c, p and 3 s c',
  'in each loop around make 3 s c, p, 3 s c',
  'in each loop work 3 s c, p and 3 s c',
])('%s', (into) => {
  const round = (count: string) => `3rd rnd: Ch 1, ${into}. Sl st in first s c. ${count}.`;
  expect(doily([LOOPS, round('36 s c, 6 p')])).toEqual([]);
  expect(doily([LOOPS, round('30 s c, 6 p')])).toContain('count/mismatch');
  expect(doily([LOOPS, `${round('36 s c, 6 p')} Fasten off.`])).toEqual([]);
  expect(doily([LOOPS, `${round('36 s c, 5 p')} Fasten off.`])).toContain('count/mismatch');
  expect(doily([LOOPS, round('36 s c, 6 p')], LIST.replace(/\np .*/, ''))).toContain('special/undefined');
});

test('where a piece begins is said, what stands there is worked', () => {
  const begun = (words: string) =>
    workedText(
      `Mat\nUS terms\n\n${words}, ch 12.\nRow 1: Sc in 2nd ch from hook and in each ch across. (11 sc)\n`,
    ).codes;
  for (const words of ['Starting at center', 'Beginning at lower edge', 'Starting at the top of the crown'])
    expect(begun(words)).toEqual([]);
  for (const words of ['Starting at 3 sc', 'Starting at center 3 dc']) expect(begun(words)).not.toEqual([]);
});

describe('clusters told by what is held back on the hook', () => {
  const doily = (first: string, cluster: string, count = '6 clusters, 6 sc') =>
    workedText(
      `DOILY\nUS terms\nSteel hook No. 10.\n\nStarting at center, ch 8, join with sl st to form ring.\n1st rnd: Ch 3 (to count as 1 dc), 2 dc in ring, ch 2, *3 dc in ring, ch 2. Repeat from * 4 more times. Join with sl st to top of ch-3 (18 dc, 6 ch-2 sps).\n2nd rnd: Ch 2, ${first} (cluster made), ch 5, sc in next ch-2 sp, ch 5, *${cluster} (another cluster made), ch 5, sc in next ch-2 sp, ch 5. Repeat from * around. Join to tip of first cluster (${count}).\n`,
    ).codes;
  const DRAWN = 'thread over and draw through all lps on hook';
  test.each([
    [
      `holding back on hook the last lp of each dc, make dc in next 2 dc, ${DRAWN}`,
      `holding back on hook the last lp of each dc, make dc in next 3 dc, ${DRAWN}`,
    ],
    [
      'keeping last loop of each on hook, work 1 dc in each of next 2 dc, yo and draw through all 3 loops',
      'keeping last loop of each on hook, work 1 dc in each of next 3 dc, yo and draw through all 4 loops',
    ],
  ])('%s', (first, cluster) => {
    expect(doily(first, cluster)).toEqual([]);
    expect(doily(first, cluster, '7 clusters, 6 sc')).toContain('count/mismatch');
    expect(doily(first, cluster.replace('next 3 dc', 'next 4 dc'))).not.toEqual([]);
  });

  test('what is drawn through has to be what is on the hook', () => {
    const of = (n: number) =>
      `holding back the last loop of each dc, dc in next ${n} dc, yo and draw through all ${n} loops on hook`;
    expect(doily(of(2), of(3))).not.toEqual([]);
  });

  test('and so has what is worked into one loop', () => {
    const edge = (made: string, count: number) =>
      workedText(
        `EDGE\nUS terms\n\nCh 4, join with sl st to form ring.\n1st rnd: Ch 1, *sc in ring, ch 4. Repeat from * 5 more times. Join to first sc (6 sc, 6 ch-4 lps).\n2nd rnd: Sl st in first lp, ch 1; in each lp around make ${made}. Join to first sc (${count} sc, 6 picots).\n`,
      ).codes;
    expect(edge('2 sc, ch 3, sl st in last sc (picot made) and 2 sc', 24)).toEqual([]);
    expect(edge('2 sc, ch 3, sl st in last sc (picot made) and 2 sc', 25)).toContain('count/mismatch');
    expect(edge('3 sc, ch 3, sl st in last sc and 2 sc', 24)).toContain('count/mismatch');
  });
});
