import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { Document, parse, stringify } from 'yaml';
import { fileOffset } from '../../src/source/mapped-text.ts';
import { readYaml } from '../../src/source/yaml.ts';
import { keySpanAt, valueSpans, type YamlNode, type YamlText, yamlAt } from '../../src/source/yaml-tree.ts';

function textAt(file: string, ...path: (string | number)[]): YamlText {
  const node = yamlAt(readYaml(file).root, path);
  if (node?.kind !== 'text') throw new Error(`no text at ${path.join('.')}`);
  return node;
}

/** The letters of the file that the letters of the text lead back to, blanks left out. */
function lettersInFile(file: string, node: YamlText): string {
  const { text } = node.text;
  let letters = '';
  for (let at = 0; at < text.length; at++) {
    if (/\S/.test(text.charAt(at))) letters += file.charAt(fileOffset(node.text, at));
  }
  return letters;
}

describe('every letter of a text leads back to where it stands in the file', () => {
  test.each([
    ['after |', 'work: |\n  Row 1: Sc.\n\n  Row 2: Dc.\n'],
    ['after | with deeper lines', 'work: |\n  Row 1:\n      sc in next st,\n   dc.\n'],
    ['after |2 that begins with blanks', 'work: |2\n    Row 1: Sc.\n  Row 2: Dc.\n'],
    ['after |- and |+', 'a:\n  - |-\n    Row 1.\n  - |+\n    Row 2.\n\nwork: |+\n  Row 3.\n\n'],
    ['after a | with a remark', 'work: |  # all of it\n  Row 1: Sc.\n'],
    ['with tabs within the line', 'work: |\n  Row 1:\tSc in\tnext st.\n'],
    ['in a file with CR LF', 'title: A\r\nwork: |\r\n  Row 1: Sc.\r\n\r\n  Row 2: Dc.\r\n'],
    ['in a file with a byte order mark', '\uFEFFtitle: A\nwork: |\n  Row 1: Sc.\n'],
    ['plain in one line', 'work: 5 dc in same st\n'],
    ['plain over several lines', 'work: 5 dc\n  in same\n\n  st\nnext: x\n'],
    ['plain with a remark behind', 'work: 5 dc   # five\n'],
    ['folded', 'work: >\n  5 dc\n  in same\n\n  st\n'],
    ['with emoji', 'work: |\n  Row 1: 🧶 Sc. 👩‍👧\n  Row 2: Dc.\n'],
    ['in double quotes over several lines', 'work: "5 dc\n  in same st"\n'],
    ['in single quotes over several lines, CR LF', "work: '5 dc\r\n  in same st'\r\n"],
    ['in brackets', '{work: 5 dc in same st, b: 1}\n'],
    ['behind an anchor', 'work: &shell 5 dc in same st\n'],
    ['behind a tag', 'work: !!str 5 dc in same st\n'],
  ])('%s', (_, file) => {
    const node = textAt(file, 'work');
    expect(lettersInFile(file, node)).toBe(node.text.text.replace(/\s/g, ''));
    expect(node.text.text).toBe(parse(file).work);
    expect(readYaml(file).mistakes).toEqual([]);
  });

  test('through an alias to where the text was first written', () => {
    const file = 'a: &shell 5 dc in same st\nwork: *shell\n';
    const node = textAt(file, 'work');
    expect(fileOffset(node.text, 0)).toBe(file.indexOf('5 dc'));
  });

  test('past the signs of double quotes', () => {
    const file = String.raw`work: "a\tb \"c\" \x64 \u0065 \U0001F9F6 f\\g \
      h"
`;
    const { text } = textAt(file, 'work');
    expect(text.text).toBe(parse(file).work);
    for (const [letter, written] of [
      ['a', 'a'],
      ['b', 'b'],
      ['"', '\\"'],
      ['d', '\\x64'],
      ['e', '\\u0065'],
      ['\u{1F9F6}', '\\U0001F9F6'],
      ['f', 'f'],
      ['g', 'g'],
      ['h', 'h'],
    ] as const) {
      expect([letter, fileOffset(text, text.text.indexOf(letter))]).toEqual([letter, file.indexOf(written)]);
    }
  });

  test('past a doubled single quote', () => {
    const file = "work: 'maker''s choice'\n";
    const { text } = textAt(file, 'work');
    expect(text.text).toBe("maker's choice");
    expect(fileOffset(text, text.text.indexOf('s choice'))).toBe(file.indexOf('s choice'));
  });

  test('blanks in a row within a line lead back each to its own', () => {
    const file = 'work: sc   in st\n';
    const { text } = textAt(file, 'work');
    const first = file.indexOf('   ');
    expect([2, 3, 4, 5].map((at) => fileOffset(text, at))).toEqual([first, first + 1, first + 2, first + 3]);
  });

  test('leading blanks of a line after | lead back to themselves', () => {
    const file = 'work: |\n  a\n    b\n';
    const { text } = textAt(file, 'work');
    expect(text.text).toBe('a\n  b\n');
    const b = file.indexOf('b');
    expect([2, 3, 4].map((at) => fileOffset(text, at))).toEqual([b - 2, b - 1, b]);
  });

  test('whatever the text and however it is quoted', () => {
    const piece = fc.constantFrom(
      'Row 1: Sc',
      '(2 dc)',
      '*',
      ' ',
      '\n',
      '\n\n',
      "'",
      '"',
      '\\',
      '#',
      '½',
      '🧶',
      '\t',
      ', ',
      'é',
      '- ',
    );
    const styles = fc.constantFrom('PLAIN', 'QUOTE_DOUBLE', 'QUOTE_SINGLE', 'BLOCK_LITERAL', 'BLOCK_FOLDED');
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 12 }), styles, fc.boolean(), (pieces, style, isCrLf) => {
        const document = new Document({ a: { work: pieces.join('') } });
        document.setIn(['a', 'work'], Object.assign(document.createNode(pieces.join('')), { type: style }));
        const written = document.toString({ lineWidth: 24 });
        const file = isCrLf ? written.replaceAll('\n', '\r\n') : written;
        const node = textAt(file, 'a', 'work');
        expect(node.text.text).toBe(parse(file).a.work);
        if (node.style !== 'quoted')
          expect(lettersInFile(file, node)).toBe(node.text.text.replace(/\s/g, ''));
        for (let at = 0; at < node.text.text.length; at++) {
          const letter = node.text.text.charAt(at);
          // A letter that is no sign to YAML stands in the file as itself, in any quotes.
          if (/[A-Za-z0-9(),*#½é]/.test(letter)) expect(file.charAt(fileOffset(node.text, at))).toBe(letter);
        }
      }),
      { numRuns: 500 },
    );
  });
});

describe('spans', () => {
  const file =
    'title: Square\nsizes:\n  - {name: small, width: 15 cm}\nwork: |\n  Row 1.\n  Row 2.\n\nlast: x\n';
  const { root } = readYaml(file);

  test('every value is found by its path', () => {
    const spans = [...valueSpans(root)].map(
      ([path, { start, end }]) => `${path} = ${file.slice(start, end)}`,
    );
    expect(spans).toEqual([
      'title = Square',
      'sizes = - {name: small, width: 15 cm}',
      'sizes.0 = {name: small, width: 15 cm}',
      'sizes.0.name = small',
      'sizes.0.width = 15 cm',
      'work = Row 1.\n  Row 2.',
      'last = x',
    ]);
  });

  test('every key is found by its path', () => {
    const keyAt = (...path: (string | number)[]) => {
      const span = keySpanAt(root, path);
      return span === null ? null : file.slice(span.start, span.end);
    };
    expect([keyAt('sizes', 0, 'width'), keyAt('work'), keyAt('sizes', 0), keyAt()]).toEqual([
      'width',
      'work',
      null,
      null,
    ]);
  });
});

describe('what YAML takes a word for is kept beside the word itself', () => {
  test.each([
    ['Yes', 'Yes'],
    ['2026-11-24', '2026-11-24'],
    ['1.10', 1.1],
    ['true', true],
    ['~', null],
    ['"12"', '12'],
  ])('%s', (written, value) => {
    const node = textAt(`a: ${written}\n`, 'a');
    expect([node.text.text, node.value]).toEqual([written.replaceAll('"', ''), value]);
  });
});

describe('files that would never end', () => {
  const kinds = (file: string) => readYaml(file).mistakes.map((mistake) => mistake.kind);

  test('a value that holds itself is a mistake', () => {
    expect(kinds('a: &a [*a]\n')).toEqual(['too much']);
    expect(kinds('a: &a {b: {c: *a}}\n')).toEqual(['too much']);
  });

  test('a few lines of aliases that stand for thousands of millions of values are a mistake', () => {
    const lines = ['a0: &a0 [x, x, x, x, x, x, x, x, x, x]'];
    for (let n = 1; n < 10; n++) lines.push(`a${n}: &a${n} [${`*a${n - 1}, `.repeat(10)}]`);
    expect(kinds(`${lines.join('\n')}\n`)).toEqual(['too much']);
  });

  test('brackets thousands deep are a mistake', () => {
    expect(kinds('['.repeat(100_000)).length).toBeGreaterThan(0);
    expect(kinds(`a: ${'['.repeat(200)}${']'.repeat(200)}\n`)).toEqual(['too much']);
    expect(kinds(`${'- '.repeat(20_000)}x\n`).length).toBeGreaterThan(0);
  });
});

describe('mistakes', () => {
  const told = (file: string) =>
    readYaml(file).mistakes.map(
      ({ kind, span }) => `${kind} at ${JSON.stringify(file.slice(span.start, span.end))}`,
    );

  test('two slips in two places are both told', () => {
    expect(told('a: one: two\nb: @x\nc: 3\n')).toEqual(['colon at ":"', 'starts with at "@"']);
  });

  test.each([
    ['a line set in too far', 'title: A\n  hook: 5 mm\n', ['indent at "hook: 5 mm"']],
    ['a line set in between', 'gauge:\n  stitches: 5\n rows: 3\n', ['indent at "rows: 3"']],
    ['a row label in plain text', 'work: Row 1: Sc.\n', ['colon at ":"']],
    [
      'instructions that begin with an asterisk',
      'work: *Sc in next st; rep from * across.\n',
      ['starts with at "*Sc"'],
    ],
    [
      'instructions that begin with a bracket',
      'work: [Sc in next st] twice.\n',
      ['starts with at "[Sc in next st] twice."'],
    ],
    ['a quote never closed', 'title: "A\nhook: 5 mm\n', ['not closed at "\\""']],
    ['a last quote that a backslash makes part of the text', 'title: "A\\\\\\"', ['not closed at "\\""']],
    ['a bracket never closed', 'gauge: {stitches: 5\nhook: 5 mm\n', ['not closed at "{"']],
    ['a colour code without quotes', 'A: {hex: #abc, weight: 4}\n', ['hash at "#abc"']],
    ['a title lost to a remark', 'title: #1 square\n', ['hash at "#1"']],
    ['keys given three times', 'a: 1\na: 2\na: 3\n', ['same key at "a"', 'same key at "a"']],
    ['rows that are not set in', 'work: |\nWith A, ch 4.\nRow 1: Sc.\n', ['outside at "With A, ch 4."']],
  ])('%s is told once', (_, file, expected) => expect(told(file)).toEqual(expected));

  test('an empty text before the next key is no slip of indentation', () => {
    expect(told('work: |\nfinishing: Weave in ends.\n')).toEqual([]);
    expect(told('title:   # still to be found\nhook: 5 mm\n')).toEqual([]);
  });

  test('no bytes at all make it throw, and every place lies within the file', () => {
    const signs = fc.string({ unit: fc.constantFrom(...'ab:-#|>{}[]"\'*&!%@`?,\\~ \n\t\r0'), maxLength: 60 });
    fc.assert(
      fc.property(fc.oneof(signs, fc.string({ unit: 'binary' })), (file) => {
        const { root, mistakes } = readYaml(file);
        for (const { span } of mistakes)
          expect(span.start >= 0 && span.start <= file.length && span.end >= span.start).toBe(true);
        for (const span of valueSpans(root).values())
          expect(span.start >= 0 && span.end <= file.length && span.end >= span.start).toBe(true);
      }),
      { numRuns: 3000 },
    );
  });

  test('a text the library finds no fault with and no remark swallows is read without mistakes', () => {
    const value = fc.letrec<{ node: unknown }>((tie) => ({
      node: fc.oneof(
        { maxDepth: 3 },
        fc.string(),
        fc.integer(),
        fc.array(tie('node'), { maxLength: 3 }),
        fc.dictionary(fc.stringMatching(/^[a-z]{1,5}$/), tie('node'), { maxKeys: 3 }),
      ),
    })).node;
    fc.assert(
      fc.property(value, (given) => {
        const file = stringify(given);
        const { root, mistakes } = readYaml(file);
        expect(mistakes).toEqual([]);
        expect(root === null ? null : bare(root)).toEqual(parse(file));
      }),
      { numRuns: 500 },
    );
  });
});

function bare(node: YamlNode): unknown {
  if (node.kind === 'text') return node.value;
  if (node.kind === 'list') return node.items.map(bare);
  return Object.fromEntries(node.entries.map((entry) => [entry.key, bare(entry.value)]));
}
