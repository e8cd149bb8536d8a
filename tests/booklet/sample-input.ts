/** Invented patterns -> booklet inputs to lay out: an everyday one, a small one and long ones. */

import type { BookletInput } from '../../src/booklet/booklet-input.ts';
import { BLANK_PATTERN } from '../../src/pattern/blank-pattern.ts';
import type { Pattern } from '../../src/pattern/pattern.ts';
import type { Scene, Shape } from '../../src/scene/scene.ts';
import type { WordedLine } from '../../src/wording/words.ts';

const EMPTY: Pattern = {
  ...BLANK_PATTERN,
  slug: 'sample',
  source: { file: 'patterns/sample/pattern.yaml', text: 'title: Sample\n' },
  title: 'Sample',
  sizes: [{ name: 'one size', widthMm: null, heightMm: null, repeats: null, rows: null }],
};

/** The outline of a piece, its measures in words. */
function outlineScene(widthMm: number, heightMm: number): Scene {
  const shapes: Shape[] = [
    {
      kind: 'path',
      parts: [['M', 0, 0], ['L', widthMm, 0], ['L', widthMm, heightMm], ['L', 0, heightMm], ['Z']],
      stroke: { ink: 'ink', widthMm: 0.3 },
      fill: 'none',
    },
  ];
  return { widthMm, heightMm, title: 'Measures', alternative: 'Width 15 cm (6 in).', symbols: {}, shapes };
}

function size(name: string) {
  return { name, widthMm: null, heightMm: null, repeats: null, rows: null };
}

/** A pattern with nothing but a title and one row. */
export function bareBooklet(): BookletInput {
  const line = { label: 'Row 1', text: 'Ch 2, sc in 2nd ch from hook.', count: '1 st', rows: [0] };
  return {
    pattern: EMPTY,
    sizes: [{ name: 'one size', widthMm: null, heightMm: null, aroundMm: null, yarn: [], schematics: [] }],
    words: {
      dialect: 'us',
      parts: [{ name: 'Square', make: null, lines: [line] }],
      abbreviations: [],
      specials: [],
    },
    charts: [],
    cover: null,
    leftHanded: false,
  };
}

/** A shell square of 30 rows, with everything a booklet can hold. */
export function shellBooklet(): BookletInput {
  return {
    pattern: {
      ...EMPTY,
      title: 'Eelgrass Square',
      about:
        'Shells that lean like grass in slow water, worked flat in rows and edged all round. One square makes a dishcloth; twenty make a blanket for a narrow bed.',
      designer: 'Ines Thorvall',
      skill: 'easy',
      gauge: {
        stitches: 16,
        rows: 9,
        overMm: 100,
        upMm: 100,
        before: null,
        tookM: null,
        of: 'shell pattern',
        after: 'blocking',
      },
      hookMm: 5,
      yarns: [
        {
          letter: 'A',
          colour: 'reed',
          hex: '#7a8b4f',
          weight: 4,
          fibre: 'wool',
          ballLengthM: 180,
          ballMassG: 100,
          balls: null,
          used: [],
        },
        {
          letter: 'B',
          colour: 'pale sand',
          hex: '#e8dfc8',
          weight: 4,
          fibre: 'wool and linen',
          ballLengthM: 95,
          ballMassG: 50,
          balls: null,
          used: [],
        },
      ],
      notions: ['blunt needle', '4 stitch markers'],
      sizes: [size('small'), size('medium'), size('large')],
      notes: [
        'Turning chains of 3 count as a dc here and throughout; ch 1 at the start of a row does not count as a stitch.',
        'The square is worked from the bottom up. The edging goes on along row ends, the foundation chain and the last row without cutting the yarn.',
      ],
      finishing: [
        'Weave in all ends on the wrong side, following the curve of a shell so that they do not show.',
        'Pin the square to 15 × 15 cm, wet it well and leave it to dry. “Blocked hard”, the shells open and the edges come straight.',
      ],
      licence: 'Share and adapt with credit, CC BY-SA 4.0.',
      version: '1.2',
      date: '2026-11-24',
    },
    sizes: [
      {
        name: 'small',
        widthMm: 152,
        heightMm: 152,
        aroundMm: null,
        yarn: [
          {
            letter: 'A',
            lengthM: 46,
            balls: 1,
            massG: 26,
            basis: 'figures' as const,
            scaledFrom: null,
            rangeM: null,
          },
          {
            letter: 'B',
            lengthM: 11,
            balls: 1,
            massG: 6,
            basis: 'figures' as const,
            scaledFrom: null,
            rangeM: null,
          },
        ],
        schematics: [{ part: '', scene: outlineScene(70, 70) }],
      },
    ],
    words: {
      dialect: 'us',
      parts: [
        { name: 'Square', make: null, lines: shellRows() },
        {
          name: 'Edging',
          make: 'Make 1 on each square.',
          lines: [
            {
              label: 'Rnd 1 (RS)',
              text: 'Join B with sl st in any corner, ch 1, *3 sc in corner, work 21 sc evenly along row ends, 3 sc in corner, sc in next 21 sts; rep from * once more, join with sl st in first sc.',
              count: '96 sts',
              rows: [30],
            },
            { label: null, text: 'Fasten off.', count: null, rows: [] },
          ],
        },
      ],
      abbreviations: [
        ['beg', 'beginning'],
        ['ch', 'chain'],
        ['ch-2 sp', 'space made by 2 chains'],
        ['dc', 'double crochet'],
        ['rep', 'repeat'],
        ['RS', 'right side'],
        ['sc', 'single crochet'],
        ['sk', 'skip'],
        ['sl st', 'slip stitch'],
        ['st(s)', 'stitch(es)'],
        ['WS', 'wrong side'],
      ].map(([abbr, meaning]) => ({ abbr: abbr ?? '', meaning: meaning ?? '' })),
      specials: [{ name: 'Shell', called: 'shell', how: '5 dc in same st. Counts as one shell.' }],
    },
    charts: [{ part: 'Square', scene: chartScene(37, 30, 4), folded: [] }],
    cover: patchworkScene(),
    leftHanded: false,
  };
}

function shellRows(): WordedLine[] {
  const even =
    'Ch 3 (counts as dc), 2 dc in first sc, *sk next 2 dc, sc in next dc, sk next 2 dc, shell in next sc; rep from * to last 6 sts, sk next 2 dc, sc in next dc, sk next 2 dc, 3 dc in last sc, turn.';
  const odd =
    'Ch 1, sc in first dc, *sk next 2 dc, shell in next sc, sk next 2 dc, sc in next dc; rep from * across, turn.';
  const rows = Array.from({ length: 26 }, (_, index) => ({
    label: `Row ${index + 2} (${index % 2 ? 'RS' : 'WS'})`,
    text: index % 2 ? odd : even,
    count: index % 2 ? '6 shells, 7 sc' : '37 sts',
    rows: [index + 1],
  }));
  return [
    { label: 'Foundation', text: 'With A, ch 38.', count: null, rows: [] },
    {
      label: 'Row 1 (RS)',
      text: 'Sc in 2nd ch from hook, *sk next 2 ch, shell in next ch, sk next 2 ch, sc in next ch; rep from * across, turn.',
      count: '37 sts',
      rows: [0],
    },
    ...rows,
    {
      label: 'Rows 28–49',
      text: 'Rep Rows 2 and 3.',
      count: '37 sts',
      rows: Array.from({ length: 22 }, (_, index) => 27 + index),
    },
  ];
}

/** A granny square in UK terms: few rounds, in full words, with cautions. */
export function grannyBooklet(): BookletInput {
  const base = shellBooklet();
  const round = (n: number, text: string, count: string): WordedLine => ({
    label: `Round ${n}`,
    text,
    count,
    rows: [n - 1],
  });
  return {
    ...base,
    pattern: {
      ...base.pattern,
      title: 'Saltmarsh Granny',
      uses: ['infant'],
      terms: 'UK',
      skill: 'basic',
      about: 'Four rounds of trebles in clusters of three.',
      sizes: [size('one size')],
      notes: [],
      notions: [],
    },
    sizes: [
      {
        name: 'one size',
        widthMm: 110,
        heightMm: 110,
        aroundMm: null,
        yarn: [
          {
            letter: 'A',
            lengthM: 21.4,
            balls: null,
            massG: null,
            basis: 'figures' as const,
            scaledFrom: null,
            rangeM: null,
          },
        ],
        schematics: [],
      },
    ],
    words: {
      dialect: 'uk-full',
      parts: [
        {
          name: 'Square',
          make: 'Make 24.',
          lines: [
            { label: null, text: 'With A, make a magic ring.', count: null, rows: [] },
            round(
              1,
              'Chain 3 (counts as treble), 2 treble in ring, chain 2, *3 treble in ring, chain 2; repeat from * 2 more times, join with slip stitch in top of beginning chain-3.',
              '12 treble, 4 chain-2 spaces',
            ),
            round(
              2,
              'Slip stitch in next 2 treble and in chain-2 space, chain 3 (counts as treble), (2 treble, chain 2, 3 treble) in same space, chain 1, *(3 treble, chain 2, 3 treble) in next corner space, chain 1; repeat from * around, join.',
              '24 treble, 4 chain-2 spaces',
            ),
            { label: null, text: 'Fasten off.', count: null, rows: [] },
          ],
        },
      ],
      abbreviations: [],
      specials: [],
    },
    charts: [{ part: 'Square', scene: chartScene(12, 12, 6), folded: [] }],
  };
}

/** Hundreds of rows, forty sizes at once, long names, and a chart that needs more than one sheet. */
export function longBooklet(): BookletInput {
  const base = shellBooklet();
  const names = Array.from(
    { length: 40 },
    (_, index) => `${index + 1}${index === 39 ? ' (with an extra long name for a wide blanket)' : ''}`,
  );
  const numbers = (from: number): string => {
    const all = names.map((_, index) => from + index * 6);
    return `${all[0]} (${all.slice(1).join(', ')})`;
  };
  const lines = Array.from(
    { length: 320 },
    (_, index): WordedLine => ({
      label: `Row ${index + 1} (${index % 2 ? 'WS' : 'RS'})`,
      text:
        index % 40 === 7
          ? `Ch 1, sc in next ${numbers(37)} sts, turn.`
          : `Ch 1, sc in each st across, marker number ${index + 1}, turn.`,
      count: index % 40 === 7 ? `${numbers(37)} sts` : `${37 + index} sts`,
      rows: [index],
    }),
  );
  const huge = {
    label: 'Row 321',
    text: 'Sc in next st, 2 dc in next ch-2 sp. '.repeat(160).trim(),
    count: '480 sts',
    rows: [320],
  };
  const range = {
    label: 'Rows 322–721',
    text: 'Rep Row 321.',
    count: null,
    rows: Array.from({ length: 400 }, (_, index) => 321 + index),
  };
  return {
    ...base,
    pattern: {
      ...base.pattern,
      title:
        'A Very Long Blanket with Donaudampfschifffahrtselektrizitätenhauptbetriebswerkbauunterbeamtengesellschaftsborders for Every Room of the House, from the Cellar to the Attic and Back Again',
      designer:
        'Ąžuolė Čepaitytė-Þorvaldsdóttir and Ὀδυσσεύς Παπαδόπουλος with Łucja Żółkiewska and Ярослава Щербина',
      sizes: names.map(size),
      notes: Array.from(
        { length: 30 },
        (_, index) =>
          `Note ${index + 1}. ${'Count at the end of each row before you turn. '.repeat((index % 5) + 1)}`,
      ),
    },
    sizes: names.map((name, index) => ({
      name,
      widthMm: 150 + index * 30,
      heightMm: index % 7 === 3 ? null : 200 + index * 35,
      aroundMm: null,
      yarn: [
        {
          letter: 'A',
          lengthM: 46 * (index + 1),
          balls: index + 1,
          massG: 26,
          basis: 'figures' as const,
          scaledFrom: null,
          rangeM: null,
        },
        {
          letter: 'B',
          lengthM: 11 * (index + 1),
          balls: 1,
          massG: 6,
          basis: 'figures' as const,
          scaledFrom: null,
          rangeM: null,
        },
      ],
      schematics: [{ part: index % 3 === 0 ? 'Blanket' : '', scene: outlineScene(60 + index, 40 + index) }],
    })),
    words: {
      ...base.words,
      parts: [{ name: 'Blanket', make: null, lines: [...lines, huge, range] }],
      abbreviations: Array.from({ length: 90 }, (_, index) => ({
        abbr: `st${index}`,
        meaning:
          index % 9
            ? `stitch number ${index}`
            : `a stitch whose meaning takes rather more words than most, number ${index}`,
      })),
    },
    charts: [
      { part: 'Blanket', scene: chartScene(90, 60, 4), folded: [] },
      { part: 'Border of the blanket', scene: chartScene(130, 160, 4), folded: [] },
    ],
  };
}

/** A grid of crosses and posts with row numbers and a key, as large as asked. */
export function chartScene(stitches: number, rows: number, pitchMm: number): Scene {
  const stroke = { ink: 'ink' as const, widthMm: 0.35 };
  const uses: Shape[] = [];
  for (let row = 0; row < rows; row += 1) {
    const y = 4 + (rows - row - 0.5) * pitchMm;
    for (let stitch = 0; stitch < stitches; stitch += 1) {
      const symbol = (stitch + row) % 3 ? 'single' : 'double';
      uses.push({
        kind: 'use',
        symbol,
        transform: [1, 0, 0, 1, 10 + (stitch + 0.5) * pitchMm, y],
        ink: row % 2 ? 'second' : 'ink',
      });
    }
    uses.push({
      kind: 'text',
      x: row % 2 ? 7 : 13 + stitches * pitchMm,
      y: y + 1,
      text: String(row + 1),
      sizeMm: 3,
      face: 'text',
      align: row % 2 ? 'end' : 'start',
      ink: row % 2 ? 'second' : 'ink',
    });
  }
  const keyY = 12 + rows * pitchMm;
  return {
    widthMm: 24 + stitches * pitchMm,
    heightMm: keyY + 12,
    title: 'Chart',
    alternative: 'Chart; the written rows say the same.',
    symbols: {
      single: [
        {
          kind: 'path',
          parts: [
            ['M', -1.1, -1.1],
            ['L', 1.1, 1.1],
            ['M', -1.1, 1.1],
            ['L', 1.1, -1.1],
          ],
          stroke,
          fill: 'none',
        },
      ],
      double: [
        {
          kind: 'path',
          parts: [
            ['M', 0, 1.8],
            ['L', 0, -1.8],
            ['M', -1, -1.8],
            ['L', 1, -1.8],
            ['M', -0.7, -0.3],
            ['L', 0.7, 0.3],
          ],
          stroke,
          fill: 'none',
        },
      ],
    },
    shapes: [
      ...uses,
      { kind: 'use', symbol: 'single', transform: [1, 0, 0, 1, 12, keyY], ink: 'ink' },
      {
        kind: 'text',
        x: 16,
        y: keyY + 1,
        text: 'single crochet (sc)',
        sizeMm: 3.2,
        face: 'text',
        align: 'start',
        ink: 'ink',
      },
      { kind: 'use', symbol: 'double', transform: [1, 0, 0, 1, 12, keyY + 6], ink: 'ink' },
      {
        kind: 'text',
        x: 16,
        y: keyY + 7,
        text: 'double crochet (dc)',
        sizeMm: 3.2,
        face: 'text',
        align: 'start',
        ink: 'ink',
      },
    ],
  };
}

function patchworkScene(): Scene {
  const shapes: Shape[] = [];
  for (let row = 0; row < 8; row += 1) {
    for (let column = 0; column < 8; column += 1) {
      const fill = (row + column) % 2 ? '#7a8b4f' : '#e8dfc8';
      shapes.push({ kind: 'circle', x: 10 * column + 5, y: 10 * row + 5, r: 4.2, stroke: null, fill });
    }
  }
  return {
    widthMm: 80,
    heightMm: 80,
    title: 'The square',
    alternative: 'A square of dots',
    symbols: {},
    shapes,
  };
}
