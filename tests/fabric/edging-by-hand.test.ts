import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { INTO } from '../../src/fabric/fabric.ts';
import { spread, spreadAround } from '../../src/fabric/spread.ts';
import { fabricOf, feetOf, rowOf } from './work-text.ts';

const THREE_ROWS = `Ch 5.
Row 1: Sc in 2nd ch from hook and in each ch across. (4 sc)
Row 2: Ch 1, sc in each st across.
Row 3: Ch 1, sc in each st across.`;

describe('spreading stitches evenly', () => {
  // Rules of thumb: as even as whole stitches go, half a gap at each end of a flat edge. Worked out here by hand.
  test.each([
    [4, 3, [1, 2, 1]],
    [7, 3, [2, 3, 2]],
    [5, 5, [1, 1, 1, 1, 1]],
    [23, 25, [1, 1, 1, 1, 1, 1, 0, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 0, 1, 1, 1, 1, 1, 1]],
    // An odd number over an even number of places: no spread is the same from both ends.
    [3, 4, [1, 1, 0, 1]],
  ])('%i over %i equal row ends', (total, ends, expected) => {
    expect(spread(total, ends)).toEqual(expected);
  });

  test('never puts two more in one place than in another, and loses none', () => {
    fc.assert(
      fc.property(fc.nat(300), fc.integer({ min: 1, max: 80 }), (total, ends) => {
        const counts = spread(total, ends);
        expect(counts.reduce((sum, n) => sum + n, 0)).toBe(total);
        expect(Math.max(...counts) - Math.min(...counts)).toBeLessThanOrEqual(1);
      }),
    );
  });

  test('round a ring one rule comes again, as many times as both numbers share', () => {
    expect(spreadAround(30, 24)).toEqual(Array.from({ length: 6 }, () => [1, 2, 1, 1]).flat());
    expect(spreadAround(24, 30)).toEqual(Array.from({ length: 6 }, () => [1, 1, 0, 1, 1]).flat());
  });

  test('is the same from either end wherever that can be, and what is more lies at even distances', () => {
    fc.assert(
      fc.property(fc.nat(300), fc.integer({ min: 1, max: 80 }), (total, ends) => {
        const counts = spread(total, ends);
        // Two alike in the middle make an even number of all.
        expect(counts.join() === [...counts].reverse().join()).toBe(ends % 2 === 1 || total % 2 === 0);
        const more = counts.flatMap((n, i) => (n > Math.min(...counts) ? [i] : []));
        const gaps = more.slice(1).map((at, i) => at - (more[i] ?? 0));
        if (gaps.length > 0) expect(Math.max(...gaps) - Math.min(...gaps)).toBeLessThanOrEqual(1);
      }),
    );
  });
});

describe('an edging around a flat piece', () => {
  const text = `${THREE_ROWS}
Rnd 4: Ch 1, 3 sc in first st, sc in next 2 sts, 3 sc in last st, work 4 sc evenly along row ends, working along opposite side of foundation ch, 3 sc in first ch, sc in next 2 ch, 3 sc in last ch, work 4 sc evenly along row ends, join with sl st in first sc. (24 sc)`;

  test('goes along the last row, down the left, along the foundation, up the right', () => {
    expect(feetOf(fabricOf(text), 'Rnd 4')).toEqual(
      [
        ...['Row 3.1', 'Row 3.1', 'Row 3.1', 'Row 3.2', 'Row 3.3', 'Row 3.4', 'Row 3.4', 'Row 3.4'],
        // Left ends, from the top: row 3 ends there, row 2 begins there, row 1 ends there.
        ...['Row 3.4', 'Row 2.1', 'Row 2.1', 'Row 1.4'],
        // Row 1 was begun in the fourth chain, at the right: from the left the chains come in the order they were made.
        ...['Foundation.ch1', 'Foundation.ch1', 'Foundation.ch1', 'Foundation.ch2', 'Foundation.ch3'],
        ...['Foundation.ch4', 'Foundation.ch4', 'Foundation.ch4'],
        ...['Row 1.1', 'Row 2.4', 'Row 2.4', 'Row 3.1'],
      ].map((place) => `sc<${place}`),
    );
  });

  test('knows its row ends from tops and undersides, and its four corners', () => {
    const fabric = fabricOf(text);
    const { first, end, edging, closing } = rowOf(fabric, 'Rnd 4');
    const where = [...fabric.where.slice(first + 1, end - 1)];
    const count = (place: number) => where.filter((each) => each === place).length;
    expect([count(INTO.top), count(INTO.rowEnd), count(INTO.underside)]).toEqual([8, 8, 8]);
    expect({ edging, closing }).toEqual({ edging: true, closing: 'joined' });
  });

  test('a second part that goes on from the piece does the same', () => {
    const [piece, border] = text.split('\nRnd 4: ');
    const fabric = fabricOf({ work: piece ?? '', border: `Rnd 1: ${border}` });
    expect(feetOf(fabric, 'Rnd 1')).toEqual(feetOf(fabricOf(text), 'Rnd 4'));
    expect(fabric.parts.map(({ name, onto }) => [name, onto])).toEqual([
      ['Piece', null],
      ['Border', 0],
    ]);
  });

  test('after a wrong-side row the edging still begins on the right side, at the right', () => {
    const two = `Ch 4.\nRow 1: Sc in 2nd ch from hook and in each ch across.\nRow 2: Ch 1, sc in each st across.\nRnd 3: Ch 1, sc in each st across, work 2 sc evenly along row ends, working along opposite side of foundation ch, sc in each ch across, work 2 sc evenly along row ends, join with sl st in first sc. (10 sc)`;
    // Row 2 was worked from left to right: from the right its stitches come last to first.
    expect(feetOf(fabricOf(two), 'Rnd 3')).toEqual(
      [
        'Row 2.3',
        'Row 2.2',
        'Row 2.1',
        'Row 2.1',
        'Row 1.3',
        'Foundation.ch1',
        'Foundation.ch2',
        'Foundation.ch3',
        'Row 1.1',
        'Row 2.3',
      ].map((place) => `sc<${place}`),
    );
  });

  test('where row 1 was a wrong-side row the foundation lies the other way round', () => {
    const piece = `Ch 4.
Row 1 (WS): Sc in 2nd ch from hook and in each ch across.
Row 2: Ch 1, sc in each st across.
Rnd 3: Ch 1, sc in each st across, work 2 sc evenly along row ends, working along opposite side of foundation ch, sc in each ch across, work 2 sc evenly along row ends, join with sl st in first sc. (10 sc)`;
    // Seen from the right side row 1 was begun at the left, in the third chain, and row 2 goes from right to left.
    expect(feetOf(fabricOf(piece), 'Rnd 3')).toEqual(
      [
        ...['Row 2.1', 'Row 2.2', 'Row 2.3', 'Row 2.3', 'Row 1.1'],
        ...['Foundation.ch3', 'Foundation.ch2', 'Foundation.ch1', 'Row 1.3', 'Row 2.1'],
      ].map((place) => `sc<${place}`),
    );
  });
});
