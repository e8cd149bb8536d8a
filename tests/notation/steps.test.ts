import { describe, expect, test } from 'vitest';
import { brief, faultsOf, said, stepsOf } from './read-lines.ts';

const st = { kind: 'st' };
const stitch = (id: string) => ({ kind: 'stitch', id });
const space = (chains?: number, corner?: boolean) => ({
  kind: 'space',
  ...(chains === undefined ? {} : { chains }),
  ...(corner === true ? { corner } : {}),
});
const next = (what: object = st, n?: number | (number | null)[]) => ({
  kind: 'next',
  ...(n === undefined ? {} : { n }),
  what,
});
const across = { kind: 'end', word: 'across' };
const around = { kind: 'end', word: 'around' };
const times = (n: number | (number | null)[]) => ({ kind: 'times', n });
const more = (n: number | (number | null)[]) => ({ kind: 'times', n, more: true });
const leaving = (n: number, what: object = st) => ({ kind: 'leaving', n, what });
const work = (id: string, place?: object, n?: number | (number | null)[]) => ({
  kind: 'work',
  stitch: stitch(id),
  ...(n === undefined ? {} : { times: n }),
  ...(place === undefined ? {} : { place }),
});
const special = (name: string, place: object) => ({ kind: 'work', stitch: { kind: 'special', name }, place });
const chain = (n: number | (number | null)[]) => ({ kind: 'chain', n });
const skip = (n?: number, what: object = st, pick = 'next') => ({
  kind: 'skip',
  ...(n === undefined ? {} : { n }),
  what,
  pick,
});

/** In US words, in UK words, and what both say. */
type Form = readonly [us: string, uk: string, steps: readonly object[]];

function bothSay(forms: readonly Form[]): void {
  test.each(forms)('%s = %s', (us, uk, steps) => {
    expect(brief(stepsOf(us, 'US'))).toEqual(steps);
    expect(brief(stepsOf(uk, 'UK'))).toEqual(steps);
    expect(said(stepsOf(uk, 'UK'))).toEqual(said(stepsOf(us, 'US')));
  });
}

describe('every stitch, into the next one', () => {
  bothSay(
    (
      [
        ['sl st', 'ss', 'sl-st'],
        ['sc', 'dc', 'sc'],
        ['hdc', 'htr', 'hdc'],
        ['dc', 'tr', 'dc'],
        ['tr', 'dtr', 'tr'],
        ['dtr', 'trtr', 'dtr'],
        ['esc', 'edc', 'esc'],
        ['ehdc', 'ehtr', 'ehdc'],
        ['edc', 'etr', 'edc'],
        ['sc2tog', 'dc2tog', 'sc2tog'],
        ['dc3tog', 'tr3tog', 'dc3tog'],
        ['single crochet', 'double crochet', 'sc'],
        ['half double crochet', 'half treble crochet', 'hdc'],
        ['Double crochet', 'Treble crochet', 'dc'],
      ] as const
    ).map(([us, uk, id]): Form => [`${us} in next st`, `${uk} in next st`, [work(id, next())]]),
  );
});

describe('how many, and where', () => {
  bothSay([
    ['sc in next 3 sts', 'dc in next 3 sts', [work('sc', next(st, 3))]],
    ['sc in each of next 3 sts', 'dc in each of next 3 sts', [work('sc', { ...next(st, 3), each: true })]],
    ['3 sc in next st', '3 dc in next st', [work('sc', next(), 3)]],
    ['1 dc into next st', '1 tr into next st', [work('dc', next(), 1)]],
    ['six sc in ring', 'six dc in ring', [work('sc', { kind: 'ring' }, 6)]],
    ['6 sc in magic ring', '6 dc in magic ring', [work('sc', { kind: 'ring', magic: true }, 6)]],
    ['6 sc', '6 dc', [work('sc', undefined, 6)]],
    ['sc 6', 'dc 6', [work('sc', undefined, 6)]],
    ['sc2tog', 'dc2tog', [work('sc2tog')]],
    ['sc2tog over next 2 sts', 'dc2tog over next 2 sts', [work('sc2tog', next(st, 2))]],
    ['sc in each st across', 'dc in each st across', [work('sc', { kind: 'each', what: st, stop: across })]],
    ['sc across', 'dc across', [work('sc', { kind: 'each', what: st, stop: across })]],
    [
      'sc in each sc around',
      'dc in each dc around',
      [work('sc', { kind: 'each', what: stitch('sc'), stop: around })],
    ],
    [
      'sc in each ch to last 2 ch',
      'dc in each ch to last 2 ch',
      [work('sc', { kind: 'each', what: { kind: 'ch' }, stop: leaving(2, { kind: 'ch' }) })],
    ],
    [
      'sc in each st to last st',
      'dc in each st to last st',
      [work('sc', { kind: 'each', what: st, stop: leaving(1) })],
    ],
    [
      'sc in each st to end',
      'dc in each st to end',
      [work('sc', { kind: 'each', what: st, stop: { kind: 'end', word: 'to end' } })],
    ],
    [
      'sc in each rem st across',
      'dc in each remaining st across',
      [work('sc', { kind: 'each', what: st, stop: across })],
    ],
    [
      'dc in each dc to next corner',
      'tr in each tr to next corner',
      [
        work('dc', {
          kind: 'each',
          what: stitch('dc'),
          stop: { kind: 'before', what: { kind: 'corner' } },
        }),
      ],
    ],
    ['sc in same st', 'dc in same st', [work('sc', { kind: 'same', what: st })]],
    [
      'sc in same st as joining',
      'dc in same st as joining',
      [work('sc', { kind: 'same', what: st, asJoin: true })],
    ],
    ['dc in same sp', 'tr in same sp', [work('dc', { kind: 'same', what: space() })]],
    ['sc in first sc', 'dc in first dc', [work('sc', { kind: 'first', what: stitch('sc') })]],
    ['sc in last 2 sts', 'dc in last 2 sts', [work('sc', { kind: 'last', n: 2, what: st })]],
    ['sc in each of last 2 sts', 'dc in each of last 2 sts', [work('sc', { kind: 'last', n: 2, what: st })]],
    ['3 sc in next corner', '3 dc in next corner', [work('sc', next({ kind: 'corner' }), 3)]],
    ['3 sc in next corner st', '3 dc in next corner st', [work('sc', next({ kind: 'corner' }), 3)]],
    ['3 dc in next ch-2 sp', '3 tr in next 2-ch sp', [work('dc', next(space(2)), 3)]],
    ['3 dc in next corner ch-2 sp', '3 tr in next corner 2-ch sp', [work('dc', next(space(2, true)), 3)]],
    ['3 dc in next sp', '3 tr in next sp', [work('dc', next(space()), 3)]],
    ['dc in any ch-2 sp', 'tr in any 2-ch sp', [work('dc', { kind: 'any', what: space(2) })]],
    [
      'sc in next 2 sc and in next ch-1 sp',
      'dc in next 2 dc and in next 1-ch sp',
      [work('sc', next(stitch('sc'), 2)), work('sc', next(space(1)))],
    ],
    [
      'sc in 2nd ch from hook and in each ch across',
      'dc in 2nd ch from hook and in each ch across',
      [
        work('sc', { kind: 'from-hook', nth: 2 }),
        work('sc', { kind: 'each', what: { kind: 'ch' }, stop: across }),
      ],
    ],
    ['dc in top of beg ch-3', 'tr in top of beg 3-ch', [work('dc', chainTop(3))]],
    ['dc in top of ch-3', 'tr in top of 3-ch', [work('dc', chainTop(3))]],
    ['dc in top of tch', 'tr in top of tch', [work('dc', { kind: 'of-chain', where: 'turning' })]],
    [
      'dc in 3rd ch of beg ch-5',
      'tr in 3rd ch of beg 5-ch',
      [work('dc', { kind: 'of-chain', nth: 3, chains: 5, where: 'beginning' })],
    ],
    ['shell in next sc', 'shell in next dc', [special('shell', next(stitch('sc')))]],
    ['2 cl in next ch-3 sp', '2 cl in next 3-ch sp', [{ ...special('cl', next(space(3))), times: 2 }]],
    [
      'sc in 3rd dc of next shell',
      'dc in 3rd tr of next shell',
      [work('sc', { kind: 'of-special', nth: 3, what: stitch('dc'), special: 'shell' })],
    ],
    [
      'sc in center dc of next shell',
      'dc in centre tr of next shell',
      [work('sc', { kind: 'of-special', nth: 'center', what: stitch('dc'), special: 'shell' })],
    ],
    [
      'sc in next st 2 rows below',
      'dc in next st 2 rows below',
      [work('sc', { kind: 'below', rows: 2, pick: 'next', what: st, unit: 'row' })],
    ],
    [
      'dc in next 2 skipped sc 2 rnds below',
      'tr in next 2 skipped dc 2 rounds below',
      [work('dc', { kind: 'below', n: 2, rows: 2, pick: 'skipped', what: stitch('sc'), unit: 'round' })],
    ],
    [
      'sc in back loop only of each st around',
      'dc in BLO of each st around',
      [{ ...work('sc', { kind: 'each', what: st, stop: around }), loop: 'back' }],
    ],
    ['FLO sc in next st', 'dc in front loop only of next st', [{ ...work('sc', next()), loop: 'front' }]],
    [
      'sc in each row end',
      'dc in each row end',
      [work('sc', { kind: 'each', what: { kind: 'row-end' }, stop: across })],
    ],
  ]);

  function chainTop(chains: number): object {
    return { kind: 'of-chain', chains, where: 'beginning' };
  }
});

describe('chains and what they count as', () => {
  const counts = (as: string, rest: object = {}) => ({ as, plusChains: 0, ...rest });
  bothSay([
    ['ch 3', '3 ch', [chain(3)]],
    ['chain 3', '3 chains', [chain(3)]],
    ['ch3', '3ch', [chain(3)]],
    ['ch 3 (counts as dc)', '3 ch (counts as tr)', [{ ...chain(3), counts: counts('dc') }]],
    [
      'ch 5 (counts as dc and ch 2)',
      '5 ch (counts as tr and 2 ch)',
      [{ ...chain(5), counts: counts('dc', { plusChains: 2 }) }],
    ],
    [
      'ch 3 (counts as first dc here and throughout)',
      '3 ch (counts as first tr here and throughout)',
      [{ ...chain(3), counts: counts('dc', { throughout: true }) }],
    ],
    [
      'ch 3 (counts as first dc now and always)',
      '3 ch (counts as first tr here and always)',
      [{ ...chain(3), counts: counts('dc', { throughout: true }) }],
    ],
    [
      'ch 2 (does not count as a st from here on)',
      '2 ch (does not count as a st every time)',
      [{ ...chain(2), counts: { plusChains: 0, throughout: true } }],
    ],
    [
      'ch 1 (does not count as a st)',
      '1 ch (does not count as a st)',
      [{ ...chain(1), counts: { plusChains: 0 } }],
    ],
    [
      'ch 2 (does not count) throughout',
      '2 ch (does not count throughout)',
      [{ ...chain(2), counts: { plusChains: 0, throughout: true } }],
    ],
    ['ch a multiple of 6 plus 2', 'ch a multiple of 6 plus 2', [{ kind: 'chain', n: { of: 6, plus: 2 } }]],
    ['ch a multiple of 4 sts + 3', 'ch a multiple of 4 sts + 3', [{ kind: 'chain', n: { of: 4, plus: 3 } }]],
    [
      'dc in 4th ch from hook (skipped 3 ch count as dc)',
      'tr in 4th ch from hook (skipped 3 ch count as tr)',
      [{ ...work('dc', { kind: 'from-hook', nth: 4 }), skipped: counts('dc') }],
    ],
    [
      'hdc in 3rd ch from hook (skipped 2 ch do not count as a st)',
      'htr in 3rd ch from hook (skipped 2 ch do not count as a st)',
      [{ ...work('hdc', { kind: 'from-hook', nth: 3 }), skipped: { plusChains: 0 } }],
    ],
  ]);
});

describe('skipping', () => {
  bothSay([
    ['sk next st', 'miss next st', [skip()]],
    ['skip next 2 ch', 'miss next 2 ch', [skip(2, { kind: 'ch' })]],
    ['sk 2', 'miss 2', [skip(2)]],
    ['sk first st', 'miss first st', [skip(undefined, st, 'first')]],
    ['sk next ch-1 sp', 'miss next 1-ch sp', [skip(undefined, space(1))]],
    ['sk next 2 dc', 'miss next 2 tr', [skip(2, stitch('dc'))]],
  ]);
});

describe('brackets and asterisks', () => {
  const body = [work('sc', next()), chain(1)];
  const repeat = (stop: object, steps: readonly object[] = body) => ({ kind: 'repeat', body: steps, stop });
  bothSay([
    [
      '(2 dc, ch 2, 2 dc) in next corner ch-2 sp',
      '(2 tr, 2 ch, 2 tr) in next corner 2-ch sp',
      [
        {
          kind: 'group',
          body: [work('dc', undefined, 2), chain(2), work('dc', undefined, 2)],
          place: next(space(2, true)),
        },
      ],
    ],
    [
      '(dc, ch 1, dc) in each st across',
      '(tr, 1 ch, tr) in each st across',
      [
        {
          kind: 'group',
          body: [work('dc'), chain(1), work('dc')],
          place: { kind: 'each', what: st, stop: across },
        },
      ],
    ],
    [
      '[sc in next st, ch 1] 6 times',
      '[dc in next st, 1 ch] 6 times',
      [{ kind: 'bracket', body, stop: times(6) }],
    ],
    [
      '(sc in next st, ch 1) twice',
      '(dc in next st, 1 ch) twice',
      [{ kind: 'bracket', body, stop: times(2) }],
    ],
    ['(sc in next st, ch 1) x 6', '(dc in next st, 1 ch) 6x', [{ kind: 'bracket', body, stop: times(6) }]],
    [
      '{sc in next st, ch 1} around',
      '{dc in next st, 1 ch} around',
      [{ kind: 'bracket', body, stop: around }],
    ],
    ['*sc in next st, ch 1; rep from * across', '*dc in next st, 1 ch; rep from * across', [repeat(across)]],
    [
      '*sc in next st, ch 1; repeat from * around',
      '*dc in next st, 1 ch, rep from * around',
      [repeat(around)],
    ],
    [
      '*sc in next st, ch 1; rep from * 5 times',
      '*dc in next st, 1 ch; rep from * 5 times',
      [repeat(times(5))],
    ],
    [
      '*sc in next st, ch 1; rep from * 5 more times',
      '*dc in next st, 1 ch; rep from * 5 times more',
      [repeat(more(5))],
    ],
    [
      '*sc in next st, ch 1; rep from * twice more',
      '*dc in next st, 1 ch; rep from * twice more',
      [repeat(more(2))],
    ],
    [
      '*sc in next st, ch 1; rep from * to last 3 sts',
      '*dc in next st, 1 ch; rep from * across to last 3 sts',
      [repeat(leaving(3))],
    ],
    [
      '*sc in next st, ch 1; rep from * to within last st',
      '*dc in next st, 1 ch; rep from * to last st',
      [repeat(leaving(1))],
    ],
    [
      '*sc in next st, ch 1; rep from * to last ch-2 sp',
      '*dc in next st, 1 ch; rep from * to last 2-ch sp',
      [repeat(leaving(1, space(2)))],
    ],
    [
      '*sc in next st, ch 1**, sk next st; rep from * across, ending last rep at **',
      '*dc in next st, 1 ch**, miss next st; rep from * across, ending last rep at **',
      [{ ...repeat(across, [...body, skip()]), lastPassEnds: 2 }],
    ],
    [
      '*sc in next st, †ch 1, dc in next st; rep from † twice more, ch 3; rep from * around',
      '*dc in next st, †1 ch, tr in next st; rep from † twice more, 3 ch; rep from * around',
      [
        repeat(around, [
          work('sc', next()),
          { kind: 'repeat', body: [chain(1), work('dc', next())], stop: more(2) },
          chain(3),
        ]),
      ],
    ],
    [
      '*[sc in next st, ch 1] 3 times, sk next st; rep from * across',
      '*[dc in next st, 1 ch] 3 times, miss next st; rep from * across',
      [repeat(across, [{ kind: 'bracket', body, stop: times(3) }, skip()])],
    ],
  ]);
});

describe('ends of rows, joins and colours', () => {
  const join = (place?: object, ring?: boolean) => ({
    kind: 'join',
    stitch: stitch('sl-st'),
    ...(place === undefined ? {} : { place }),
    ...(ring === true ? { ring } : {}),
  });
  const yarn = (action: string, letter: string, rest: object = {}) => ({
    kind: 'yarn',
    action,
    yarn: letter,
    ...rest,
  });
  const firstSc = { kind: 'first', what: stitch('sc') };
  const firstCh = { kind: 'first', what: { kind: 'ch' } };
  bothSay([
    ['turn', 'turn', [{ kind: 'turn', what: 'turn' }]],
    ['do not turn', 'do not turn', [{ kind: 'turn', what: 'do not turn' }]],
    ['do not join', 'do not join', [{ kind: 'turn', what: 'do not join' }]],
    ['join', 'join', [join()]],
    ['join with sl st in first sc', 'join with ss in first dc', [join(firstSc)]],
    ['join in first sc', 'join in first dc', [join(firstSc)]],
    [
      'join with sl st in top of beg ch-3',
      'join with ss in top of beg 3-ch',
      [join({ kind: 'of-chain', chains: 3, where: 'beginning' })],
    ],
    [
      'join with sl st in first ch to form ring',
      'join with ss in first ch to form ring',
      [join(firstCh, true)],
    ],
    ['sl st in first ch to form a ring', 'ss in first ch to form a ring', [join(firstCh, true)]],
    ['sl st in first sc to join', 'ss in first dc to join', [join(firstSc)]],
    ['with B, sc in next st', 'with B, dc in next st', [yarn('with', 'B'), work('sc', next())]],
    ['change to B in last yo', 'change to B in last yrh', [yarn('change', 'B')]],
    ['change to B in last yo of last st', 'change to B', [yarn('change', 'B')]],
    ['drop A, carry B up the side', 'drop A, carry B', [yarn('drop', 'A'), yarn('carry', 'B')]],
    [
      'join B with sl st in any ch-2 sp',
      'join B with ss in any 2-ch sp',
      [yarn('join', 'B', { stitch: stitch('sl-st'), place: { kind: 'any', what: space(2) } })],
    ],
    [
      'join B with sc in first st',
      'join B with dc in first st',
      [yarn('join', 'B', { stitch: stitch('sc'), place: { kind: 'first', what: st } })],
    ],
    ['fasten off', 'fasten off', [{ kind: 'fasten off' }]],
    ['fasten off A', 'fasten off A', [{ kind: 'fasten off', yarn: 'A' }]],
    [
      'working along row ends, sc in next row end',
      'working along row ends, dc in next row end',
      [{ kind: 'along', edge: 'row ends' }, work('sc', next({ kind: 'row-end' }))],
    ],
    [
      'working along opposite side of foundation ch, sc in each ch across',
      'working along opposite side of foundation ch, dc in each ch across',
      [
        { kind: 'along', edge: 'foundation' },
        work('sc', { kind: 'each', what: { kind: 'ch' }, stop: across }),
      ],
    ],
    [
      'work 21 sc evenly along row ends',
      'work 21 dc evenly along row ends',
      [{ kind: 'evenly', stitch: stitch('sc'), n: 21, edge: 'row ends' }],
    ],
  ]);

  test('"join yarn" means the only yarn there is', () => {
    const only = { yarns: ['A'] };
    expect(brief(stepsOf('join yarn at a side seam', 'US', only))).toEqual([
      yarn('join', 'A', { when: 'at a side seam' }),
    ]);
    expect(brief(stepsOf('join yarn with sl st in any st', 'US', only))).toEqual([
      yarn('join', 'A', { stitch: stitch('sl-st'), place: { kind: 'any', what: st } }),
    ]);
    expect(faultsOf('join yarn with sl st in any st')).toEqual(['phrase/unread']);
  });
});

describe('words to the maker work nothing and are kept as written', () => {
  test.each([
    'place marker in first st',
    'pull ring closed',
    'weave in ends',
    'leaving a 30 cm tail for sewing',
    'WS now facing',
    'working last dc in top of tch',
    'with RS facing',
  ])('%s', (words) => {
    expect(stepsOf(words)).toMatchObject([{ kind: 'note', text: words }]);
  });

  test('so do brackets that hold only words', () => {
    expect(brief(stepsOf('3 sc in last st (corner made)'))).toMatchObject([
      { kind: 'work' },
      { kind: 'note' },
    ]);
  });
});

describe('numbers for several sizes', () => {
  const four = { sizes: 4 };
  test.each([
    ['ch 61 (67, 73, 79)', [chain([61, 67, 73, 79])]],
    ['ch 61(67:73:79)', [chain([61, 67, 73, 79])]],
    ['ch 61 [67, 73, 79]', [chain([61, 67, 73, 79])]],
    ['sc in next 10 (11, 12, 13) sts', [work('sc', next(st, [10, 11, 12, 13]))]],
    ['2 (2, 3, 3) sc in next st', [work('sc', next(), [2, 2, 3, 3])]],
    [
      '[sc in next st] - (1, 1, 2) times',
      [{ kind: 'bracket', body: [work('sc', next())], stop: times([null, 1, 1, 2]) }],
    ],
    [
      '*sc in next st; rep from * 2 (3, 4, 5) more times',
      [{ kind: 'repeat', body: [work('sc', next())], stop: more([2, 3, 4, 5]) }],
    ],
    ['ch 20', [chain(20)]],
  ])('%s', (text, steps) => {
    expect(brief(stepsOf(text, 'US', four))).toEqual(steps);
  });

  test('a list of another length is a fault, and only that', () => {
    expect(faultsOf('sc in next 10 (11, 12) sts', 'US', four)).toEqual(['size/list-length']);
    expect(faultsOf('sc in next 10 (11, 12, 13, 14) sts', 'US', four)).toEqual(['size/list-length']);
  });
});

describe('what has no one meaning, or belongs to the other terms, is never guessed', () => {
  test.each([
    ['sc in next st', 'UK', 'word/other-terms'],
    ['htr in next st', 'US', 'word/other-terms'],
    ['hdc in next st', 'UK', 'word/other-terms'],
    ['popcorn in next st', 'US', 'special/undefined'],
    ['inc in next st', 'US', 'special/undefined'],
    ['dec over next 2 sts', 'US', 'special/undefined'],
    ['picot', 'US', 'special/undefined'],
    ['scc in next st', 'US', 'word/unknown'],
    ['sc in nxet st', 'US', 'word/unknown'],
    ['sc in', 'US', 'phrase/no-place'],
    ['sc in next 3 sts from the left', 'US', 'phrase/unread'],
    ['Row 2: Rep whatever you like.', 'US', 'phrase/unread'],
    ['*sc in next st**, ch 1; rep from * across', 'US', 'phrase/unread'],
    ['*sc in next st, ch 1; rep from * across, ending last rep at **', 'US', 'phrase/unread'],
    ['*sc in next st; rep from *', 'US', 'repeat/no-stop'],
    ['*sc in next st, ch 1', 'US', 'repeat/no-end'],
    ['sc in next st; rep from * across', 'US', 'repeat/no-start'],
    ['[sc in next st, ch 1 3 times', 'US', 'bracket/unclosed'],
    ['sc in next st, ch 1] 3 times', 'US', 'bracket/unopened'],
    ['[sc in next st, ch 1]', 'US', 'bracket/no-use'],
    ['with C, sc in next st', 'US', 'yarn/unlisted'],
    ['ch 100001', 'US', 'number/too-large'],
  ] as const)('%s in %s terms: %s', (text, terms, code) => {
    expect(faultsOf(text, terms)).toEqual([code]);
  });
});
