import { describe, expect, test } from 'vitest';
import { flow, flowWithoutStub } from '../../src/booklet/flow.ts';
import { keepTogether, noStrayLines, type Strip } from '../../src/booklet/strip.ts';

function lines(count: number, name: string): Strip[] {
  return Array.from({ length: count }, (_, index) => ({
    kind: 'strip',
    heightMm: 10,
    spaceBeforeMm: index === 0 ? 5 : 0,
    keepWithNext: false,
    shapes: [],
    bookmark: { title: `${name}${index + 1}`, level: 2 },
  }));
}

/** The names on each page of 100 mm. */
function pagesOf(strips: readonly Strip[]): string[][] {
  return flow(strips, 100).map((page) =>
    page.kind === 'strips' ? page.strips.map(({ strip }) => strip.bookmark?.title ?? '') : [],
  );
}

describe('filling pages', () => {
  test('ten lines fill a page; the eleventh begins the next', () => {
    expect(pagesOf(lines(11, 'a')).map((page) => page.length)).toEqual([10, 1]);
  });

  test('space above is left out at the head of a page, so a full page stays full', () => {
    const [, second] = flow([...lines(10, 'a'), ...lines(10, 'b')], 100);
    expect(second?.kind === 'strips' && second.strips[0]?.yMm).toBe(0);
    expect(second?.kind === 'strips' && second.strips).toHaveLength(10);
  });

  test('a heading at the foot goes over with what it heads', () => {
    const heading = keepTogether(lines(1, 'heading'), true);
    expect(pagesOf([...lines(9, 'a'), ...heading, ...lines(2, 'b')])[1]?.[0]).toBe('heading1');
  });

  test('a row that stays whole is not begun where it does not fit', () => {
    expect(pagesOf([...lines(8, 'a'), ...keepTogether(lines(3, 'row'))])).toEqual([
      lines(8, 'a').map(({ bookmark }) => bookmark?.title),
      ['row1', 'row2', 'row3'],
    ]);
  });

  test('a paragraph leaves no single line behind and carries none over alone', () => {
    expect(pagesOf([...lines(8, 'a'), ...noStrayLines(lines(4, 'p'))])[1]).toEqual(['p1', 'p2', 'p3', 'p4']);
    expect(pagesOf([...lines(6, 'a'), ...noStrayLines(lines(4, 'p'))])[1]).toEqual(['p3', 'p4']);
  });

  test('a last page with next to nothing on it is saved by a little less space', () => {
    const paragraphs = Array.from({ length: 7 }, (_, index) => lines(1, `p${index}`)).flat();
    expect(flow(paragraphs, 96)).toHaveLength(2);
    expect(flowWithoutStub(paragraphs, 96)).toHaveLength(1);
    expect(flowWithoutStub(paragraphs, 80)).toEqual(flow(paragraphs, 80));
  });

  test('what is taller than a page is cut rather than lost', () => {
    const pages = pagesOf([...lines(3, 'a'), ...keepTogether(lines(25, 'row'))]);
    expect(pages.flat()).toHaveLength(28);
    expect(Math.max(...pages.map((page) => page.length))).toBeLessThanOrEqual(10);
  });

  test('the head of a table stands again on each page the table runs on to', () => {
    const head: Strip = { ...(lines(1, 'head')[0] ?? empty()), spaceBeforeMm: 0, keepWithNext: true };
    const rows = lines(15, 'row').map((strip, index) => ({
      ...strip,
      ...(index > 0 ? { headAgain: head } : {}),
    }));
    const pages = pagesOf([head, ...rows]);
    expect(pages).toHaveLength(2);
    expect(pages[1]?.[0]).toBe('head1');
    expect(pages.flat().filter((name) => name.startsWith('row'))).toHaveLength(15);
  });

  test('a chart on a sheet of its own stands between what comes before and after', () => {
    const sheet = {
      kind: 'sheet' as const,
      format: { paper: 'A4', form: 'flat' } as const,
      orientation: 'landscape' as const,
      shapes: [],
      underPage: [],
      symbols: {},
    };
    expect(flow([...lines(2, 'a'), sheet, ...lines(2, 'b')], 100).map(({ kind }) => kind)).toEqual([
      'strips',
      'sheet',
      'strips',
    ]);
  });
});

function empty(): Strip {
  return { kind: 'strip', heightMm: 10, spaceBeforeMm: 0, keepWithNext: false, shapes: [] };
}
