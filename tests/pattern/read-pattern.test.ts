import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readPattern } from '../../src/pattern/read-pattern.ts';

const GOOD = `title: Eelgrass Square
about: A square of shells like grass in a slow tide.
designer: The maker
terms: US
skill: easy
gauge: {stitches: 16, rows: 9, over: 10 cm, of: shell pattern, after: blocking}
hook: 5 mm
yarn:
  A: {colour: reed, hex: "#7A8B4F", weight: 4, fibre: wool, ball: {length: 180 m, mass: 100 g}}
  MC: {colour: sand, hex: 7a8, weight: "3", fibre: cotton}
notions: [stitch marker, tapestry needle]
sizes:
  - {name: small, width: 15 cm, height: 6 1/2 in}
  - {name: large, repeats: 8, rows: 27}
special:
  shell: 5 dc in same st
  wide shell: {work: 7 dc in same st, name: wide shell, how: Spread them evenly.}
notes: Turning chains count as a stitch.
parts:
  - name: Square
    make: 2
    work: |
      Foundation: With A, ch a multiple of 6 plus 2.
      Row 1 (RS): Sc in 2nd ch from hook, *sk next 2 ch, shell in next ch, sk next 2 ch, sc in next ch; rep from * across, turn.
  - name: Strap
    onto: Square
    work: |
      Row 1: With MC, ch 1, sc in first sc, turn.
finishing: |
  Weave in ends.
  Block to size.
for: infant
licence: CC BY-SA 4.0
version: 1.10
date: 2026-11-24
`;

const read = (text: string, slug = 'eelgrass') => readPattern({ file: 'pattern.yaml', text }, slug);
const faults = (text: string) =>
  read(text).diagnostics.map(({ code, span }) => `${code} at ${text.slice(span.start, span.end)}`);
const patternOf = (text: string) => {
  const { pattern, diagnostics } = read(text);
  if (pattern === null) throw new Error(diagnostics.map(({ message }) => message).join('; '));
  return pattern;
};

describe('a whole pattern file', () => {
  const pattern = patternOf(GOOD);

  test('has no faults', () => expect(faults(GOOD)).toEqual([]));

  test('gives its values in the units the rest works in', () => {
    expect(pattern.gauge).toEqual({
      stitches: 16,
      rows: 9,
      overMm: 100,
      upMm: 100,
      before: null,
      tookM: null,
      of: 'shell pattern',
      after: 'blocking',
    });
    expect(pattern.hookMm).toBe(5);
    expect(pattern.sizes).toEqual([
      { name: 'small', widthMm: 150, heightMm: 165.1, repeats: null, rows: null },
      { name: 'large', widthMm: null, heightMm: null, repeats: 8, rows: 27 },
    ]);
    expect(pattern.yarns).toEqual([
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
        letter: 'MC',
        colour: 'sand',
        hex: '#77aa88',
        weight: 3,
        fibre: 'cotton',
        ballLengthM: null,
        ballMassG: null,
        balls: null,
        used: [],
      },
    ]);
  });

  test.each([
    ['5 mm', 5, null],
    ['5 mm (H-8)', 5, 'H-8'],
    ['5.5 mm (I/9)', 5.5, 'I-9'],
    ['5 mm (H)', 5, 'H'],
    ['5mm / US H8', 5, 'H-8'],
    ['6.5 mm (K-10½)', 6.5, 'K-10 1/2'],
    ['6,5 mm (US size 10.5)', 6.5, '10 1/2'],
    ['9 mm (M/N-13)', 9, 'M/N-13'],
    ['US H-8 (5 mm)', 5, 'H-8'],
  ])('takes %s for a hook', (hook, mm, us) => {
    const read = patternOf(GOOD.replace('hook: 5 mm', `hook: ${hook}`));
    expect([read.hookMm, read.hookUs]).toEqual([mm, us]);
  });

  test.each([['5'], ['H-8'], ['5 mm (blue)'], ['5 mm (H-8) or so']])('%s is no hook', (hook) => {
    expect(faults(GOOD.replace('hook: 5 mm', `hook: ${hook}`))).toEqual([`file/measure at ${hook}`]);
  });

  test.each([
    ['2', [2]],
    ['2 (3)', [2, 3]],
    ['2(3)', [2, 3]],
    ['[2, 3]', [2, 3]],
    ['"1½ (2)"', [1.5, 2]],
  ])('takes %s for balls to buy', (balls, read) => {
    const text = GOOD.replace('mass: 100 g}}', `mass: 100 g}, balls: ${balls}}`);
    expect(faults(text)).toEqual([]);
    expect(patternOf(text).yarns[0]?.balls).toEqual(read);
  });

  test.each([['two'], ['2 (3'], ['-1']])('%s is no number of balls', (balls) => {
    const text = GOOD.replace('mass: 100 g}}', `mass: 100 g}, balls: ${balls}}`);
    expect(faults(text).map((fault) => fault.split(' ')[0])).toEqual(['file/wrong-kind']);
  });

  test('keeps what it silences with the reasons, and where they stand', () => {
    const text = `${GOOD}allow:\n  yarn/unused: It is for later.\n  chain/unstated:\n`;
    const { allowed } = patternOf(text);
    expect(allowed.map(({ code, reason }) => [code, reason])).toEqual([
      ['yarn/unused', 'It is for later.'],
      ['chain/unstated', ''],
    ]);
    expect(allowed.map(({ span }) => text.slice(span.start, span.end))).toEqual([
      'yarn/unused',
      'chain/unstated',
    ]);
  });

  test('gives its words, lists and versions as written', () => {
    expect(pattern.notions).toEqual(['stitch marker', 'tapestry needle']);
    expect(pattern.notes).toEqual(['Turning chains count as a stitch.']);
    expect(pattern.finishing).toEqual(['Weave in ends.', 'Block to size.']);
    expect([pattern.uses, pattern.version, pattern.date]).toEqual([['infant'], '1.10', '2026-11-24']);
    expect(pattern.specials.map(({ name, fullName, how }) => [name, fullName, how])).toEqual([
      ['shell', 'shell', null],
      ['wide shell', 'wide shell', 'Spread them evenly.'],
    ]);
    expect(pattern.specials[0]?.steps).toMatchObject([
      { kind: 'work', stitch: { kind: 'stitch', id: 'dc' }, times: { values: [5] } },
    ]);
  });

  test('gives its parts with their rows', () => {
    expect(
      pattern.parts.map(({ name, onto, make, instructions }) => [
        name,
        onto,
        make,
        instructions.lines.length,
      ]),
    ).toEqual([
      ['Square', null, 2, 2],
      ['Strap', 'Square', 1, 1],
    ]);
  });

  test('knows where every value stands, and every word of a row', () => {
    const at = (path: string) => {
      const span = pattern.places.get(path);
      return span === undefined ? null : GOOD.slice(span.start, span.end);
    };
    expect([at('gauge.stitches'), at('sizes.0.height'), at('yarn.A.ball.mass'), at('parts.1.onto')]).toEqual([
      '16',
      '6 1/2 in',
      '100 g',
      'Square',
    ]);
    const stitch = pattern.specials[0]?.steps[0]?.span;
    expect(stitch === undefined ? null : GOOD.slice(stitch.start, stitch.end)).toBe('5 dc in same st');
    const line = pattern.parts[1]?.instructions.lines[0]?.span;
    expect(line === undefined ? null : GOOD.slice(line.start, line.end)).toMatch(/^Row 1: With MC.*turn/);
  });

  test('reads the same with CR LF line ends and a byte order mark', () => {
    const other = patternOf(`\uFEFF${GOOD.replaceAll('\n', '\r\n')}`);
    const bare = (text: string) =>
      JSON.stringify({ ...patternOf(text), source: null, places: null }, (key, value) =>
        key === 'span' ? 0 : value,
      );
    expect(bare(other.source.text)).toBe(bare(GOOD));
  });
});

describe('kindness to what YAML would take for something else', () => {
  const SMALL = 'title: X\nterms: US\nparts:\n  - {name: Y, work: "Rnd 1: 6 sc in magic ring."}\n';

  test.each([
    ['title: Yes', 'Yes'],
    ['title: 1812', '1812'],
    ['title: 2026-11-24', '2026-11-24'],
    ['title: true', 'true'],
    ['title: 1.50', '1.50'],
    ['title: "  Sea  grass  "', 'Sea grass'],
  ])('%s is text', (line, title) => expect(patternOf(SMALL.replace('title: X', line)).title).toBe(title));

  test('a file without sizes has one', () => {
    expect(patternOf(SMALL).sizes).toEqual([
      { name: 'one size', widthMm: null, heightMm: null, repeats: null, rows: null },
    ]);
  });

  test('a key with nothing after it counts as not given', () => {
    expect(faults(`${SMALL}about:\nhook:\nyarn: ~\n`)).toEqual([]);
    expect(faults(SMALL.replace('terms: US', 'terms:'))).toEqual(['file/missing at terms']);
  });

  test('text shared through an alias is read, with its faults where it was first written', () => {
    const file = `${SMALL.replace('"Rnd', '&round "Rnd')}  - {name: Z, work: *round}\n`;
    expect(patternOf(file).parts.map(({ instructions }) => instructions.lines.length)).toEqual([1, 1]);
  });
});

describe('faults', () => {
  const changed = (from: string, to: string) => {
    if (!GOOD.includes(from)) throw new Error(`no ${from}`);
    return GOOD.replace(from, to);
  };

  test.each([
    ['a misspelt key that must be there', 'colour: reed', 'colr: reed', ['file/unknown-key at colr']],
    ['an American spelling', 'licence:', 'license:', ['file/unknown-key at license']],
    ['another word for gauge', 'gauge:', 'tension:', ['file/unknown-key at tension']],
    ['a yarn key misspelt, so that no yarn is listed', 'yarn:', 'yarns:', ['file/unknown-key at yarns']],
    ['sizes misspelt', 'sizes:', 'sises:', ['file/unknown-key at sises']],
    ['special misspelt', 'special:', 'specials:', ['file/unknown-key at specials']],
    ['no title', 'title: Eelgrass Square\n', '', ['file/missing at about']],
    ['no name for a size', 'name: small, ', '', ['file/missing at width']],
    ['an empty note', 'notes: Turning chains count as a stitch.', 'notes:\n  - ', ['file/missing at notes']],
    ['a weight of nine', 'weight: 4', 'weight: 9', ['file/out-of-range at 9']],
    ['a weight in words', 'weight: 4', 'weight: worsted', ['file/wrong-kind at worsted']],
    ['a weight between two', 'weight: 4', 'weight: 3.5', ['file/wrong-kind at 3.5']],
    ['a gauge of nothing', 'stitches: 16', 'stitches: 0', ['file/out-of-range at 0']],
    ['a gauge below nothing', 'rows: 9', 'rows: -9', ['file/out-of-range at -9']],
    ['a gauge without end', 'stitches: 16', 'stitches: .inf', ['file/wrong-kind at .inf']],
    ['a hook without its unit', 'hook: 5 mm', 'hook: 5', ['file/measure at 5']],
    ['a hook in grams', 'hook: 5 mm', 'hook: 5 g', ['file/measure at 5 g']],
    ['a hook as wide as an arm', 'hook: 5 mm', 'hook: 5 in', ['file/out-of-range at 5 in']],
    ['a size of nothing', 'width: 15 cm', 'width: 0 cm', ['file/out-of-range at 0 cm']],
    ['half a repeat', 'repeats: 8', 'repeats: 7.5', ['file/wrong-kind at 7.5']],
    ['a list where text belongs', 'hook: 5 mm', 'hook: [5 mm]', ['file/wrong-kind at [5 mm]']],
    ['text where sizes belong', 'for: infant', 'for: {infant: yes}', ['file/wrong-kind at {infant: yes}']],
    ['a use not known', 'for: infant', 'for: [infant, infnat]', ['file/not-one-of at infnat']],
    ['a special stitch with a key not known', 'work: 7 dc', 'wrk: 7 dc', ['file/unknown-key at wrk']],
    ['a part worked onto a later one', 'onto: Square', 'onto: Border', ['file/onto at Border']],
    ['a part worked onto itself', 'onto: Square', 'onto: Strap', ['file/onto at Strap']],
    [
      'folded instructions',
      'work: |\n      Row 1: With',
      'work: >\n      Row 1: With',
      ['file/folded at work'],
    ],
  ])('%s is told once, at its place', (_, from, to, expected) =>
    expect(faults(changed(from, to))).toEqual(expected),
  );

  test('in a change of the pattern are told at their place', () => {
    const listed = (changes: string): string[] => faults(`${GOOD}changes:\n  - ${changes}\n`);
    expect(listed('{date: 2026-12-05, what: Row 2 has 44 sts.}')).toEqual([]);
    expect(listed('{date: 2026-12-35, what: Row 2 has 44 sts.}')).toEqual(['file/date at 2026-12-35']);
    expect(listed('{date: 2026-12-05}')).toHaveLength(1);
    expect(listed('{date: 2026-12-05, waht: Row 2 has 44 sts.}')).toEqual(['file/unknown-key at waht']);
  });

  test('the newest change stands first, whatever the order of the list', () => {
    const text = `${GOOD}changes:\n  - {date: 2026-11-30, what: One.}\n  - {date: 2026-12-05, version: "3", what: Two.}\n`;
    expect(read(text).pattern?.changes.map(({ what, version }) => [what, version])).toEqual([
      ['Two.', '3'],
      ['One.', null],
    ]);
  });

  test('in several places are all told, in the order of the file', () => {
    const text = GOOD.replace('skill: easy', 'skill: eazy')
      .replace('hook: 5 mm', 'hook: five')
      .replace('date: 2026-11-24', 'date: 2026-13-01');
    expect(faults(text)).toEqual([
      'file/not-one-of at eazy',
      'file/measure at five',
      'file/date at 2026-13-01',
    ]);
  });

  test('in what is only shown leave the rest of the pattern to be worked', () => {
    const { pattern } = read(
      GOOD.replace('title: Eelgrass Square\n', '')
        .replace('skill: easy', 'skill: eazy')
        .replace('"#7A8B4F"', 'green'),
    );
    expect([pattern?.title, pattern?.skill, pattern?.yarns[0]?.hex, pattern?.parts.length]).toEqual([
      'eelgrass',
      null,
      null,
      2,
    ]);
  });

  test('in gauge, sizes or terms leave nothing to be worked on a guess', () => {
    for (const [from, to] of [
      ['stitches: 16', 'stitches: many'],
      ['terms: US', 'terms: American'],
      ['repeats: 8', 'repeets: 8'],
      ['width: 15 cm', 'width: 15'],
    ] as const) {
      expect(read(changed(from, to)).pattern).toBeNull();
    }
  });

  test('in the wording of a row are told beside those of the file', () => {
    const text = GOOD.replace('skill: easy', 'skill: eazy').replace('sc in first sc', 'zz in first sc');
    expect(faults(text).map((fault) => fault.split(' ')[0])).toEqual(['file/not-one-of', 'word/unknown']);
  });
});

describe('whatever is in the file', () => {
  const holds = (text: string) => {
    const { pattern, diagnostics } = read(text);
    expect(pattern !== null || diagnostics.length > 0).toBe(true);
    for (const { span, labels } of diagnostics) {
      for (const place of [span, ...labels.map((label) => label.span)]) {
        expect(place.start >= 0 && place.start <= Math.max(text.length, 1) && place.end >= place.start).toBe(
          true,
        );
      }
    }
  };

  test('nothing throws, and a file without a pattern has a fault that says why', () => {
    fc.assert(fc.property(fc.oneof(fc.string(), fc.string({ unit: 'binary' })), holds), { numRuns: 500 });
  });

  test('nor does a good file with pieces cut out, doubled or written over', () => {
    const piece = fc.oneof(
      fc.constantFrom(
        ':',
        '- ',
        '\n',
        '  ',
        '#',
        '{',
        '}',
        '[',
        '"',
        "'",
        '*',
        '&',
        '|',
        '>',
        '~',
        '-1',
        '1e999',
        '__proto__: 1\n',
        'constructor',
      ),
      fc.string({ maxLength: 3 }),
    );
    const edit = fc.record({ at: fc.nat(GOOD.length), cut: fc.nat(30), piece });
    fc.assert(
      fc.property(fc.array(edit, { minLength: 1, maxLength: 4 }), (edits) => {
        holds(
          edits.reduce(
            (text, { at, cut, piece: put }) => text.slice(0, at) + put + text.slice(at + cut),
            GOOD,
          ),
        );
      }),
      { numRuns: 1500 },
    );
  });

  test('nor does a good file with one value made into another kind', () => {
    const lines = GOOD.split('\n');
    const value = fc.constantFrom(
      '',
      '~',
      '[]',
      '{}',
      '0',
      '-1',
      '.nan',
      'true',
      '[1, [2]]',
      '{a: {b: 1}}',
      '"',
      '!!binary x',
      '*x',
      '{__proto__: 1}',
    );
    fc.assert(
      fc.property(fc.nat(lines.length - 1), value, (index, given) => {
        holds(lines.map((line, at) => (at === index ? line.replace(/:.*$/, `: ${given}`) : line)).join('\n'));
      }),
      { numRuns: 500 },
    );
  });
});
