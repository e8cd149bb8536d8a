import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Line } from '../../src/notation/line.ts';
import type { Num } from '../../src/notation/num.ts';
import { isCornersEach, isSpacesOnTheWay, liesBetween } from '../../src/notation/put-step.ts';
import { readInstructions, readPhrase } from '../../src/notation/read.ts';
import type { Place, Step, Stop, What } from '../../src/notation/tree.ts';
import { readPattern } from '../../src/pattern/read-pattern.ts';
import { plainText } from '../../src/source/mapped-text.ts';
import type { Terms } from '../../src/stitches/stitch-row.ts';
import { STITCHES } from '../../src/stitches/table.ts';
import { printLine, printSteps } from '../../src/wording/print-line.ts';
import { DEMO_NAMES, demoText } from '../demo/demo-patterns.ts';
import { GOOD_LINES, GOOD_TEXTS } from './good-lines.ts';
import { contextOf, linesOf, said } from './read-lines.ts';

const TERMS: readonly Terms[] = ['US', 'UK'];

function readBack(
  lines: readonly Line[],
  terms: Terms,
  context = contextOf(terms, { sizes: 3 }),
): readonly Line[] {
  const text = lines.map((line) => printLine(line, terms, 'all')).join('\n\n');
  const { instructions, diagnostics } = readInstructions(plainText(text), { ...context, terms });
  expect(diagnostics.map(({ message }) => `${message} in: ${text}`)).toEqual([]);
  return instructions.lines;
}

describe.each(TERMS)('printed in %s terms and read again, instructions say the same', (terms) => {
  test.each([...GOOD_LINES, ...GOOD_TEXTS])('%s', (line) => {
    const read = linesOf(line, 'US', { sizes: 3 });
    expect(said(readBack(read, terms))).toEqual(said(read));
  });

  test.each(DEMO_NAMES)('all of the demo pattern %s', (name) => {
    const text = demoText(name);
    const { pattern } = readPattern({ file: name, text }, name);
    if (pattern === null) throw new Error(`${name} is no pattern`);
    const context = {
      file: name,
      terms,
      sizes: pattern.sizes.length,
      specials: pattern.specials.map((special) => special.name),
      yarns: pattern.yarns.map(({ letter }) => letter),
    };
    for (const { instructions } of pattern.parts) {
      expect(instructions.lines.length).toBeGreaterThan(1);
      expect(said(readBack(instructions.lines, terms, context))).toEqual(said(instructions.lines));
    }
    for (const { steps } of pattern.specials) {
      const again = readPhrase(plainText(printSteps(steps, terms)), context);
      expect(again.diagnostics).toEqual([]);
      expect(said(again.steps)).toEqual(said(steps));
    }
  });

  test('any steps that can be thought of', () => {
    fc.assert(
      fc.property(anySequence(anyStep, 4), (steps) => {
        const text = printSteps(steps, terms);
        const again = readPhrase(plainText(text), contextOf(terms, { sizes: 3 }));
        expect(again.diagnostics.map(({ message }) => `${message} in: ${text}`)).toEqual([]);
        expect(said(again.steps), text).toEqual(said(steps));
      }),
      { numRuns: 1200 },
    );
  });
});

/** Steps one after another, but no two the trade would read as one. */
function anySequence(step: fc.Arbitrary<Step>, maxLength: number): fc.Arbitrary<Step[]> {
  return fc.array(step, { minLength: 1, maxLength }).filter((steps) =>
    steps.every((next, at) => {
      const before = steps[at - 1];
      if (isCornersEach(before) && liesBetween(next)) return false;
      return before?.kind !== 'work' || !isSpacesOnTheWay(before, next);
    }),
  );
}

const span = { start: 0, end: 0 };
const small = fc.integer({ min: 1, max: 12 });
const anyNum: fc.Arbitrary<Num> = fc.oneof(
  small.map((n) => ({ values: [n], span })),
  fc
    .tuple(small, small, small)
    .filter(([a, b, c]) => a !== b || b !== c)
    .map((values) => ({ values, span })),
);
/** Stitches that go into a place and are no more than their name; chains, rings and posts have forms of their own. */
const plain = STITCHES.filter(({ family }) => family === 'basic' || family === 'extended').map(
  ({ id }) => id,
);
const anyId = fc.constantFrom(...plain);
const anyTogether = fc.constantFrom(
  ...STITCHES.filter(({ legOf, uses }) => uses > 1 && plain.includes(legOf)).map(({ id }) => id),
);
const anyName = fc.oneof(
  { weight: 4, arbitrary: anyId.map((id) => ({ kind: 'stitch' as const, id, span })) },
  { weight: 1, arbitrary: anyTogether.map((id) => ({ kind: 'stitch' as const, id, span })) },
  {
    weight: 1,
    arbitrary: fc.constantFrom('shell', 'cl').map((name) => ({ kind: 'special' as const, name, span })),
  },
);
const anySpace: fc.Arbitrary<What> = fc
  .tuple(fc.option(small), fc.constantFrom<'corner' | 'side' | null>('corner', 'side', null))
  .map(([chains, at]): What => {
    const space = { kind: 'space', chains, corner: at === 'corner' } as const;
    return at === 'side' ? { ...space, side: true } : space;
  });
const anyWhat: fc.Arbitrary<What> = fc.oneof(
  fc.constant<What>({ kind: 'st' }),
  anyId.map((id): What => ({ kind: 'stitch', id })),
  fc.constant<What>({ kind: 'special', name: 'shell' }),
  fc.constant<What>({ kind: 'ch' }),
  anySpace,
  fc.constant<What>({ kind: 'corner' }),
  fc.constant<What>({ kind: 'row-end' }),
);
const anyStop: fc.Arbitrary<Stop> = fc.oneof(
  fc
    .constantFrom<'across' | 'around' | 'to end'>('across', 'around', 'to end')
    .map((word): Stop => ({ kind: 'end', word, span })),
  fc.tuple(anyNum, fc.boolean()).map(([n, more]): Stop => ({ kind: 'times', n, more, span })),
  fc.tuple(anyNum, anyWhat).map(([n, what]): Stop => ({ kind: 'leaving', n, what, span })),
  anyWhat.map((what): Stop => ({ kind: 'before', what, span })),
);
const eachStop = anyStop.filter(({ kind }) => kind !== 'times');
const anyPlace: fc.Arbitrary<Place> = fc.oneof(
  fc
    .tuple(fc.option(anyNum), anyWhat)
    .map(([n, what]): Place => ({ kind: 'next', n, what, each: false, span })),
  fc.tuple(anyNum, anyWhat).map(([n, what]): Place => ({ kind: 'next', n, what, each: true, span })),
  fc.tuple(anyWhat, eachStop).map(([what, stop]): Place => ({ kind: 'each', what, stop, span })),
  fc.tuple(anyWhat, fc.boolean()).map(([what, asJoin]): Place => ({ kind: 'same', what, asJoin, span })),
  fc.tuple(fc.option(anyNum), anyWhat).map(([n, what]): Place => ({ kind: 'first', n, what, span })),
  fc.tuple(fc.option(anyNum), anyWhat).map(([n, what]): Place => ({ kind: 'last', n, what, span })),
  anyWhat.map((what): Place => ({ kind: 'any', what, span })),
  fc.boolean().map((magic): Place => ({ kind: 'ring', magic, span })),
  fc
    .tuple(
      fc.option(small),
      fc.option(small),
      fc.constantFrom<'beginning' | 'turning'>('beginning', 'turning'),
    )
    .map(([nth, chains, where]): Place => ({ kind: 'of-chain', nth, chains, where, span })),
  fc
    .tuple(fc.option(small), fc.constantFrom<'beginning' | 'turning'>('beginning', 'turning'))
    .map(([chains, where]): Place => ({ kind: 'of-chain', nth: null, chains, where, space: true, span })),
  fc
    .tuple(anyNum, anyId)
    .map(([n, id]): Place => ({ kind: 'passed', what: { kind: 'stitch', id }, n, span })),
  fc
    .tuple(small, anyId)
    .map(([nth, id]): Place => ({ kind: 'passed', what: { kind: 'stitch', id }, nth, span })),
  fc.tuple(fc.oneof(small, fc.constant<'center'>('center')), anyId).map(
    ([nth, id]): Place => ({
      kind: 'of-special',
      nth,
      what: { kind: 'stitch', id },
      special: 'shell',
      span,
    }),
  ),
  fc
    .tuple(
      fc.option(anyNum),
      small,
      fc.constantFrom<'row' | 'round'>('row', 'round'),
      fc.constantFrom<'next' | 'skipped'>('next', 'skipped'),
      anyId,
    )
    .map(
      ([n, rows, unit, pick, id]): Place => ({
        kind: 'below',
        n,
        rows,
        unit,
        pick,
        what: { kind: 'stitch', id },
        span,
      }),
    ),
);
const anyWork: fc.Arbitrary<Step> = fc
  .tuple(
    anyName,
    fc.option(anyNum),
    anyPlace,
    fc.constantFrom<'both' | 'front' | 'back'>('both', 'front', 'back'),
  )
  .map(
    ([stitch, times, place, loop]): Step => ({
      kind: 'work',
      stitch,
      times,
      place,
      // A space, a ring or a chain has no loop of its own.
      loop: place.kind === 'next' || place.kind === 'each' ? loop : 'both',
      skipped: null,
      span,
    }),
  );
const anyBare: fc.Arbitrary<Step> = fc.tuple(anyName, fc.option(anyNum)).map(
  ([stitch, times]): Step => ({
    kind: 'work',
    stitch,
    times,
    place: null,
    loop: 'both',
    skipped: null,
    span,
  }),
);
const anyChain: fc.Arbitrary<Step> = fc
  .tuple(anyNum, fc.option(fc.tuple(fc.option(anyId), small, fc.boolean(), fc.boolean())))
  .map(([n, counts]): Step => {
    if (counts === null) return { kind: 'chain', n, counts: null, span };
    const [as, chains, space, throughout] = counts;
    const plusChains = space ? chains : 0;
    return { kind: 'chain', n, counts: { as, plusChains, throughout, span }, span };
  });
const anySkip: fc.Arbitrary<Step> = fc
  .tuple(fc.option(anyNum), anyWhat, fc.constantFrom<'next' | 'first'>('next', 'first'))
  .map(([n, what, pick]): Step => ({ kind: 'skip', n, what, pick, span }));
const anyPlain = fc.oneof(anyWork, anyBare, anyChain, anySkip);
const anyBody = anySequence(anyPlain, 3);
const anyNested: fc.Arbitrary<Step> = fc.oneof(
  fc.tuple(anyBody, anyPlace).map(([body, place]): Step => ({ kind: 'group', body, place, span })),
  fc.tuple(anyBody, anyStop).map(([body, stop]): Step => ({ kind: 'bracket', body, stop, span })),
  fc.tuple(anyBody, anyStop, fc.boolean()).map(
    ([body, stop, short]): Step => ({
      kind: 'repeat',
      body,
      lastPassEnds: short && body.length > 1 ? body.length - 1 : null,
      stop,
      span,
    }),
  ),
);
const anyStep: fc.Arbitrary<Step> = fc.oneof(
  { weight: 3, arbitrary: anyPlain },
  { weight: 2, arbitrary: anyNested },
  {
    weight: 1,
    arbitrary: fc.constantFrom<Step>(
      { kind: 'turn', what: 'turn', span },
      { kind: 'turn', what: 'do not join', span },
      { kind: 'fasten off', yarn: 'A', span },
      { kind: 'yarn', action: 'with', yarn: 'B', stitch: null, place: null, span },
      { kind: 'yarn', action: 'pick up', yarn: 'A', stitch: null, place: null, span },
      { kind: 'yarn', action: 'join', yarn: null, stitch: null, place: null, span },
      { kind: 'yarn', action: 'change', yarn: 'A', stitch: null, place: null, span },
      { kind: 'along', edge: 'foundation', span },
    ),
  },
);
