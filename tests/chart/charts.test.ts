import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { chartParts } from '../../src/chart/chart-parts.ts';
import { coverScene } from '../../src/chart/cover.ts';
import { contrast, yarnInkOf } from '../../src/chart/row-pens.ts';
import { compilePattern } from '../../src/compile.ts';
import { textRuler } from '../../src/paint/text-width.ts';
import { boundsOf } from '../../src/scene/bounds.ts';
import type { Shape } from '../../src/scene/scene.ts';
import { readFontFiles } from '../../src/site/font-files.ts';
import { buildFabric, times } from '../measure/build-fabric.ts';
import {
  clusters,
  edged,
  granny,
  longStitches,
  loveKnots,
  posts,
  rows,
  SAMPLES,
  shells,
  spiral,
  textured,
} from './samples.ts';
import { allShapes, drawnStitches, onlyChart, textsOf, workText } from './work-text.ts';

const ruler = textRuler(readFontFiles());

describe.each(Object.entries(SAMPLES))('the chart of %s', (_name, make) => {
  const fabric = make();
  const scene = onlyChart(fabric);

  test('draws every stitch once', () => {
    expect(drawnStitches(scene)).toEqual(Array.from({ length: fabric.count }, (_, i) => i));
  });

  test('uses only symbols it defines', () => {
    for (const shape of allShapes(scene.shapes))
      if (shape.kind === 'use') expect(scene.symbols).toHaveProperty([shape.symbol]);
  });

  test('without its key lies wholly inside its scene', () => {
    const [bare] = chartParts(fabric, { terms: 'US', title: 'Test', key: false });
    const box = boundsOf(bare?.scene.shapes ?? [], bare?.scene.symbols);
    expect(box?.left).toBeGreaterThanOrEqual(0);
    expect(box?.top).toBeGreaterThanOrEqual(0);
    expect(box?.right).toBeLessThanOrEqual(bare?.scene.widthMm ?? 0);
    expect(box?.bottom).toBeLessThanOrEqual(bare?.scene.heightMm ?? 0);
  });

  test('has room for every word of its key', () => {
    const key = scene.shapes.find((shape) => shape.kind === 'group' && shape.data?.labels === 'key');
    if (key?.kind !== 'group' || key.transform === null) throw new Error('no key');
    const [, , , , left, top] = key.transform;
    for (const shape of key.shapes) {
      if (shape.kind !== 'text') continue;
      const right = left + shape.x + ruler.measureText(shape.text, shape.face, shape.sizeMm);
      expect(right, shape.text).toBeLessThanOrEqual(scene.widthMm);
      expect(top + shape.y, shape.text).toBeLessThan(scene.heightMm);
    }
  });

  test('holds no length that is not a number', () => {
    expect(JSON.stringify(scene)).not.toContain('null,null');
    for (const shape of allShapes(scene.shapes)) {
      if (shape.kind === 'use')
        for (const number of shape.transform) expect(Number.isFinite(number)).toBe(true);
    }
  });

  test('numbers each row once', () => {
    const numbers = fabric.rows.flatMap(({ number }) => (number === null ? [] : [number]));
    const labels = scene.shapes.flatMap((shape) => (shape.kind === 'group' ? allShapes(shape.shapes) : []));
    const inLabels = labels.find((shape) => shape.kind === 'group' && shape.data?.labels === 'rows');
    const texts =
      inLabels?.kind === 'group'
        ? inLabels.shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []))
        : [];
    expect(texts.map((text) => Number.parseInt(text, 10)).sort()).toEqual(numbers.sort());
  });
});

describe('the key', () => {
  test('names just the stitches drawn, in the terms asked for', () => {
    const us = textsOf(onlyChart(clusters()));
    expect(us).toEqual(expect.arrayContaining(['sc', 'single crochet', 'dc2tog', 'dc3tog']));
    expect(us).not.toContain('treble crochet');
    const uk = textsOf(onlyChart(clusters(), 'UK'));
    expect(uk).toEqual(expect.arrayContaining(['dc', 'double crochet', 'tr2tog', 'tr3tog', 'tr']));
    expect(uk).not.toContain('single crochet');
  });

  test('tells a cluster in one place from a decrease over several', () => {
    const texts = textsOf(onlyChart(clusters()));
    expect(texts).toContain('double crochet 3 together, in one place');
    expect(texts).toContain('double crochet 2 together');
  });

  test('explains the marks the chart has and no others', () => {
    const flat = textsOf(onlyChart(rows()));
    expect(flat).toContain('start here');
    expect(flat).toContain('row number and its direction');
    expect(flat).not.toContain('direction of the rounds');
    expect(flat).not.toContain('feet apart: into the space');
    const round = textsOf(onlyChart(granny()));
    expect(round).toContain('direction of the rounds');
    expect(round).toContain('feet apart: into the space');
    expect(round).not.toContain('start here');
  });

  test('gives the loop as it is seen from the right side', () => {
    // Row 4 is a wrong-side row worked in the back loop.
    expect(textsOf(onlyChart(longStitches()))).toContain('front loop, seen from the right side');
  });

  test('says of a post stitch on a wrong-side row that it is drawn as the right side shows it', () => {
    const texts = textsOf(onlyChart(posts()));
    expect(texts).toContain('front post double crochet, on wrong-side rows');
    expect(texts).toContain('back post double crochet, on wrong-side rows');
    expect(texts).toContain('front post treble crochet');
    expect(texts).toContain('foundation double crochet');
    const uk = textsOf(onlyChart(posts(), 'UK'));
    expect(uk).toEqual(
      expect.arrayContaining(['RtrF', 'RtrB', 'RdtrF', 'ftr', 'raised double treble crochet front']),
    );
  });

  test('names what is gathered by its legs, and the gaps that feet stand in', () => {
    const texts = textsOf(onlyChart(textured()));
    expect(texts).toEqual(
      expect.arrayContaining([
        '5-dc popcorn',
        '3-hdc puff',
        '3-dc cl',
        '5-dc bobble',
        '3 double crochet cluster',
      ]),
    );
    expect(texts).toContain('foot in the gap between two stitches');
    expect(textsOf(onlyChart(posts()))).not.toContain('foot in the gap between two stitches');
  });

  test('can be left out', () => {
    const [chart] = chartParts(spiral(), { terms: 'US', title: 'Test', key: false });
    expect(textsOf(chart?.scene ?? onlyChart(spiral()))).not.toContain('single crochet');
  });
});

describe('drawings at the foot', () => {
  const hooksOf = (first: number, end: number): string[] =>
    allShapes(onlyChart(posts()).shapes).flatMap((shape) => {
      const stitch = shape.kind === 'group' ? Number(shape.data?.stitch ?? -1) : -1;
      if (shape.kind !== 'group' || stitch < first || stitch >= end) return [];
      return shape.shapes.flatMap((each) =>
        each.kind === 'use' && /post/.test(each.symbol) ? [each.symbol] : [],
      );
    });

  test('a front post of a wrong-side row has the hook of a back post, as the right side shows it', () => {
    // Row 2 is worked from the front and the back by turns, row 3 from the front in 3 of 12.
    expect(hooksOf(15, 17)).toEqual(['back-post-light', 'front-post-light']);
    expect(hooksOf(27, 39)).toEqual(['front-post-firm', 'front-post-firm', 'front-post-firm']);
  });

  test('post stitches together have a hook for each leg', () => {
    expect(hooksOf(39, 40)).toEqual(['back-post-light', 'back-post-light']);
  });

  test('every foundation stitch lies on a chain of its own, and no other chain is laid', () => {
    const fabric = posts();
    const uses = allShapes(onlyChart(fabric).shapes).filter(
      (shape) =>
        shape.kind === 'group' && Number(shape.data?.stitch ?? -1) >= 3 && Number(shape.data?.stitch) < 15,
    );
    expect(uses).toHaveLength(12);
    for (const shape of uses) {
      const symbols =
        shape.kind === 'group' ? shape.shapes.map((each) => (each.kind === 'use' ? each.symbol : '')) : [];
      expect(symbols.map((symbol) => symbol.replace(/-\d+$/, ''))).toEqual(['double-firm', 'chain-firm']);
    }
  });

  test('a foundation stitch stands on its chain', () => {
    const [own] = allShapes(onlyChart(posts()).shapes).filter(
      (shape) => shape.kind === 'group' && shape.data?.stitch === '3',
    );
    const [stem, chain] = own?.kind === 'group' ? own.shapes : [];
    if (stem?.kind !== 'use' || chain?.kind !== 'use') throw new Error('no stem on a chain');
    // Down the paper: the stem's foot lies a little above the middle line of the oval.
    expect(chain.transform[5] - stem.transform[5]).toBeGreaterThan(0);
  });

  test('the number of a row stands clear of a popcorn at its end', () => {
    const work = [{ id: 'dc5-popcorn' }, { id: 'sc' }, { id: 'dc5-popcorn' }];
    const fabric = buildFabric(
      [
        { label: 'Foundation', unit: null, work: times(3, { id: 'fsc' }) },
        { label: 'Row 1', number: 1, side: 'RS', work: work.map((each, k) => ({ ...each, into: [2 - k] })) },
      ],
      [{ name: 'Swatch' }],
    );
    const scene = onlyChart(fabric);
    const labels = allShapes(scene.shapes).find(
      (shape) => shape.kind === 'group' && shape.data?.labels === 'rows',
    );
    // Its arrow comes before the number.
    const at =
      labels?.kind === 'group' ? labels.shapes.findIndex((s) => s.kind === 'text' && s.text === '1') : -1;
    const arrow = labels?.kind === 'group' ? boundsOf(labels.shapes.slice(at - 1, at), scene.symbols) : null;
    const popcorns = allShapes(scene.shapes).filter(
      (shape) => shape.kind === 'use' && shape.symbol.includes('popcorn') && shape.data !== undefined,
    );
    expect(popcorns).toHaveLength(2);
    expect(arrow?.left).toBeGreaterThan(boundsOf(popcorns, scene.symbols)?.right ?? Number.NaN);
  });

  test('the words for who cannot see it say which side of the posts', () => {
    expect(onlyChart(posts()).alternative).toContain(
      'Row 2, wrong side, left to right: 12 stitches, of them 6 round the front of a post and 6 round the back of a post, seen from the right side',
    );
    expect(onlyChart(loveKnots()).alternative).not.toContain('post');
  });

  test('each gathered stitch is one drawing of its own', () => {
    const symbols = Object.keys(onlyChart(textured()).symbols).map((name) => name.replace(/-\d+$/, ''));
    for (const name of ['double-5-popcorn-firm', 'half-double-3-firm', 'double-3-firm', 'double-5-firm'])
      expect(symbols).toContain(name);
  });
});

describe('rows told apart', () => {
  test('neighbouring rows differ in ink and in weight', () => {
    const uses = allShapes(onlyChart(rows()).shapes).flatMap((shape) =>
      shape.kind === 'use' && shape.data ? [shape] : [],
    );
    const fabric = rows();
    const looks = [1, 2, 3].map((row) => {
      const { first = 0, end = 0 } = fabric.rows[row] ?? {};
      const own = uses.filter(({ data }) => Number(data?.stitch) >= first && Number(data?.stitch) < end);
      return [
        ...new Set(own.map(({ ink, symbol }) => `${ink} ${symbol.includes('light') ? 'light' : 'firm'}`)),
      ];
    });
    expect(looks).toEqual([['ink firm'], ['second light'], ['ink firm']]);
  });

  test('yarns are told by letter, and by colour only where it stands out from paper', () => {
    const fabric = longStitches();
    const [chart] = chartParts(fabric, {
      terms: 'US',
      title: 'T',
      key: true,
      yarnInk: { A: '#f6efc2', B: '#1f6b52' },
    });
    const scene = chart?.scene ?? onlyChart(fabric);
    expect(textsOf(scene)).toEqual(expect.arrayContaining(['1 A', '3 B', 'yarn A', 'yarn B']));
    const inks = new Set(
      allShapes(scene.shapes).flatMap((shape) => (shape.kind === 'use' ? [shape.ink] : [])),
    );
    expect(inks).not.toContain('#f6efc2');
    expect([...inks].some((ink) => ink.startsWith('#'))).toBe(true);
  });

  // WCAG 2.2, success criterion 1.4.11: at least 3 to 1 for what carries meaning.
  test('both shades of a yarn have at least three to one against paper', () => {
    for (const hex of ['#1f6b52', '#0a0a12', '#a04040', '#d0c9a0', '#7d7d7d']) {
      const inks = yarnInkOf(hex);
      if (inks === null) continue;
      for (const ink of [inks.firm, inks.light])
        expect(contrast(ink, '#ffffff'), `${hex} as ${ink}`).toBeGreaterThanOrEqual(3);
      expect(inks.firm).not.toBe(inks.light);
    }
    expect(yarnInkOf('#d0c9a0')).toBeNull();
    expect(yarnInkOf('#1f6b52')).not.toBeNull();
  });

  test('black on white is 21 to 1', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21);
  });
});

describe('charts and their titles', () => {
  test('an edging is drawn with the panel it goes round, titled by both', () => {
    const charts = chartParts(edged(), { terms: 'US', title: 'Harbour', key: true });
    expect(charts.map(({ part }) => part)).toEqual(['Panel']);
    expect(charts[0]?.scene.title).toBe('Chart of Harbour: Panel and Edging');
  });

  test('parts of their own get charts of their own', () => {
    const fabric = workText({
      Sole: 'Rnd 1: 6 sc in magic ring, do not join.',
      Strap: 'Foundation: Ch 4.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.',
    });
    const charts = chartParts(fabric, { terms: 'US', title: 'Shoe', key: true });
    expect(charts.map(({ part }) => part)).toEqual(['Sole', 'Strap']);
    const drawn = charts.flatMap(({ scene }) => drawnStitches(scene)).sort((a, b) => a - b);
    expect(drawn).toEqual(Array.from({ length: fabric.count }, (_, i) => i));
  });

  test('the words for who cannot see it go through every row', () => {
    const { alternative } = onlyChart(rows());
    expect(alternative).toContain('4 rows');
    expect(alternative).toContain(
      'Rows 1 to 4, row 1, right side and right to left, then turned each time: 10 stitches each',
    );
    expect(onlyChart(granny()).alternative).toContain(
      'Rnd 2, right side, anticlockwise: 24 stitches and 8 chain spaces',
    );
  });
});

type Strand = Extract<Shape, { kind: 'path' }>;

/** All but the paper, in the order drawn. */
function strandsOf(shapes: readonly Shape[]): Strand[] {
  return shapes
    .slice(1)
    .flatMap((shape) =>
      shape.kind === 'group' ? shape.shapes.filter((inner): inner is Strand => inner.kind === 'path') : [],
    );
}

describe('the picture for covers', () => {
  test('draws stitches of the fabric, each at most once, inside its paper', () => {
    const fabric = shells();
    const scene = coverScene(fabric, { A: '#446644' }, 60, 60);
    // Each has one top or, lying along the row, is one: an outline of its own.
    const tops = strandsOf(scene?.shapes ?? []).filter(({ fill }) => fill !== 'none');
    const outlines = tops.reduce((sum, { parts }) => sum + parts.filter(([verb]) => verb === 'Z').length, 0);
    expect(outlines).toBeGreaterThan(40);
    expect(outlines).toBeLessThanOrEqual(fabric.count);
    const box = boundsOf(scene?.shapes ?? [], scene?.symbols);
    expect(box).toEqual({ left: 0, top: 0, right: 60, bottom: 60 });
  });

  test('shows a spike over the rows it reaches down past, and a plain stitch under the top it is worked into', () => {
    // The last of two rows of A, over which B reaches down; then what is drawn after what.
    const fabric = workText({
      Panel: `Foundation: With A, ch 6.
        Row 1: Sc in 2nd ch from hook and in each ch across, turn.
        Row 2: Ch 1, sc in each sc across, change to B, turn.
        Row 3: Ch 1, sc in next 2 sts, sc in next st 2 rows below, sc in next 2 sts.`,
    });
    const scene = coverScene(fabric, { A: '#446644', B: '#aa4422' }, 60, 60);
    const strands = strandsOf(scene?.shapes ?? []);
    const posts = (ink: string): number[] =>
      strands.flatMap(({ stroke, fill }, k) => (fill === 'none' && stroke?.ink === ink ? [k] : []));
    const lastTopOfA = strands.findLastIndex(({ fill }) => fill === '#446644');
    expect(Math.min(...posts('#aa4422'))).toBeLessThan(lastTopOfA);
    expect(Math.max(...posts('#aa4422'))).toBeGreaterThan(lastTopOfA);
    expect(Math.max(...posts('#446644'))).toBeLessThan(lastTopOfA);
  });

  test('lays pale yarn on dark paper and dark yarn on pale paper', () => {
    const paper = (hex: string): string => {
      const first = coverScene(granny(), { A: hex }, 60, 60)?.shapes[0];
      return first?.kind === 'path' ? first.fill : '';
    };
    expect(contrast(paper('#f4ecd8'), '#f4ecd8')).toBeGreaterThan(4.5);
    expect(contrast(paper('#22304a'), '#22304a')).toBeGreaterThan(4.5);
  });

  test('there is none of a fabric without stitches', () => {
    const fabric = rows();
    const none = { ...fabric, count: 0, rows: [], parts: [] };
    expect(coverScene(none, {}, 60, 60)).toBeNull();
  });
});

describe('symbols by either standard', () => {
  const drawnWith = (symbols: 'CYC' | 'JIS'): string[] => {
    const fabric = workText({
      Panel: `Foundation: Ch 6.
      Row 1 (WS): Sc in 2nd ch from hook and in each ch across, turn.
      Row 2 (RS): Ch 1, sc in back loop only of each sc across.`,
    });
    const [chart] = chartParts(fabric, { terms: 'US', title: 'Test', key: true, symbols });
    return Object.entries(chart?.scene.symbols ?? {}).map(
      ([name, shapes]) => `${name} ${JSON.stringify(shapes)}`,
    );
  };

  test('differ in single crochet and in the mark of the back loop, and in nothing else', () => {
    const council = drawnWith('CYC');
    const japanese = drawnWith('JIS');
    expect(japanese.map((each) => each.split(' ')[0])).toEqual(council.map((each) => each.split(' ')[0]));
    const differing = council
      .filter((each, k) => each !== japanese[k])
      .map((each) => each.split(' ')[0] ?? '');
    expect(differing.length).toBeGreaterThan(0);
    for (const name of differing) expect(name).toMatch(/^(?:single-\w+-\d+|back-loop-\w+)$/);
    expect(differing.some((name) => name.startsWith('back-loop'))).toBe(true);
  });

  test('are chosen in the pattern file, and every chart of it follows', () => {
    const text = (line: string): string =>
      `title: T\nterms: US\n${line}parts:\n  - name: P\n    work: |\n      Foundation: Ch 6.\n      Row 1: Sc in 2nd ch from hook and in each ch across.\n`;
    const symbolsOf = (line: string): string =>
      JSON.stringify(
        compilePattern({ file: 't', text: text(line) }, 't').sizes[0]?.charts.US[0]?.scene.symbols,
      );
    expect(symbolsOf('symbols: CYC\n')).toBe(symbolsOf(''));
    expect(symbolsOf('symbols: JIS\n')).not.toBe(symbolsOf(''));
  });
});

describe('the bracket under one repeat', () => {
  const textsFor = (kind: string): string[] => {
    const text = readFileSync(join(import.meta.dirname, '../patterns', kind, 'pattern.yaml'), 'utf8');
    const scene = compilePattern({ file: kind, text }, kind).sizes[0]?.charts.US[0]?.scene;
    return scene === undefined ? [] : textsOf(scene);
  };

  test.each([
    ['shells-spikes', '6 ch, 4 times'],
    ['v-stitch', '3 ch, 7 times'],
    ['moss-stitch', '2 ch, 15 times'],
    // Their first rows are plain: a later one has the repeat.
    ['basketweave', 'Row 2: 6 sts, 3 times'],
    ['crossed-dc', 'Row 2: 2 sts, 11 times'],
    ['spike-houndstooth', 'Row 3: 2 sts, 12 times'],
  ])('of %s says over how many chains, and how often: %s', (kind, words) => {
    const texts = textsFor(kind);
    expect(texts).toContain(words);
    expect(texts).toContain('one repeat, and how often it is worked');
  });

  test.each(['granny-square', 'sleeve-shaping', 'chevron', 'ball'])(
    'is left out where nothing repeats in a straight line: %s',
    (kind) => {
      expect(textsFor(kind).some((words) => / times$/.test(words))).toBe(false);
    },
  );
});
