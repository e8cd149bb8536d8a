/** Texts that ask for more than any machine can do, each with the codes of the faults that must say so. */

export interface HostileCase {
  readonly name: string;
  /** The file as it stands on the disk; a pattern unless it is said to be a plain text. */
  readonly file: () => string;
  readonly plainText?: true;
  /** Faults it must be refused with, and no others. */
  readonly codes: readonly string[];
}

const ROW_1 = 'Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across.';
const GAUGE =
  'gauge: {stitches: 16, rows: 18, over: 10 cm, of: single crochet, after: blocking}\nhook: 5 mm\n';
const OPEN =
  'Ch a multiple of 2 plus 2.\nRow 1: Sc in 2nd ch from hook and in each ch across.\nRow 2: Ch 1, sc in each st across.\nRows 3 on: Rep Row 2 to height.';

interface Parts {
  readonly head?: string;
  readonly sizes?: readonly string[];
  readonly special?: readonly string[];
}

function pattern(work: string, { head = '', sizes = [], special = [] }: Parts = {}): string {
  return [
    'title: Test Piece\nterms: US\nyarn:\n  A: {colour: reed, weight: 4, fibre: wool}\n',
    head,
    sizes.length === 0 ? '' : `sizes:\n${sizes.map((size) => `  - {${size}}\n`).join('')}`,
    special.length === 0 ? '' : `special:\n${special.map((one) => `  ${one}\n`).join('')}`,
    `parts:\n  - name: Piece\n    work: |\n${work.replace(/^/gm, '      ')}\n`,
  ].join('');
}

/** A second row after a plain first one. */
const row2 = (work: string, parts: Parts = {}) => pattern(`${ROW_1}\nRow 2: Ch 1, ${work}`, parts);
const list = (n: number, of: (i: number) => string): string[] => Array.from({ length: n }, (_, i) => of(i));
const MEGABYTE = 1024 * 1024;

export const HOSTILE: readonly HostileCase[] = [
  {
    name: 'a repeat worked 900,000,000 more times',
    file: () => row2('*sc in next st; rep from * 900000000 more times.'),
    codes: ['number/too-large'],
  },
  {
    name: 'a repeat into one stitch worked 99,999 more times, in each of 100,000',
    file: () =>
      row2('*sc in first st; rep from * 99999 more times, [[sc in first st] 100 times] 100000 times.'),
    codes: ['size/too-large'],
  },
  {
    name: 'rows 2 to 1,000,000,000',
    file: () => pattern(`${ROW_1}\nRows 2-1000000000: Ch 1, sc in each st across.`),
    codes: ['number/too-large'],
  },
  {
    name: 'rows 2 to 99,999',
    file: () => pattern(`${ROW_1}\nRows 2-99999: Ch 1, sc in each st across.`),
    codes: ['row/too-many'],
  },
  {
    name: 'one row repeated 99,999 times, and again, and again',
    file: () =>
      pattern(
        `${ROW_1}\nRow 2: Ch 1, sc in each st across.\nRep Row 2 99999 more times.\nRep Row 2 99999 more times.`,
      ),
    codes: ['row/too-many'],
  },
  {
    name: 'the next 99,999 rows',
    file: () => pattern(`${ROW_1}\nNext 99999 rows: Ch 1, sc in each st across.`),
    codes: ['row/too-many'],
  },
  {
    name: 'a size of 10 km',
    file: () => pattern(OPEN, { head: GAUGE, sizes: ['name: s, width: 10000 m, height: 10000 m'] }),
    codes: ['file/out-of-range'],
  },
  {
    name: 'a size as wide and high as a size may be',
    file: () => pattern(OPEN, { head: GAUGE, sizes: ['name: s, width: 10 m, height: 10 m'] }),
    codes: ['size/too-large'],
  },
  {
    name: '999,999,999 repeats',
    file: () => pattern(OPEN, { sizes: ['name: s, repeats: 999999999, rows: 9'] }),
    codes: ['file/out-of-range'],
  },
  {
    name: '999,999,999 rows',
    file: () => pattern(OPEN, { sizes: ['name: s, repeats: 9, rows: 999999999'] }),
    codes: ['file/out-of-range'],
  },
  {
    name: 'a chain of 99,999,999',
    file: () => pattern('Ch 99999999.\nRow 1: Sc in 2nd ch from hook and in each ch across.'),
    codes: ['number/too-large'],
  },
  {
    name: 'a chain of a number with thirty digits',
    file: () => pattern(`Ch ${'9'.repeat(30)}.\nRow 1: Sc in 2nd ch from hook and in each ch across.`),
    codes: ['number/too-large'],
  },
  {
    name: 'a multiple of 99,999 plus 99,999, 1,000 times',
    file: () =>
      pattern('Ch a multiple of 99999 plus 99999.\nRow 1: Sc in 2nd ch from hook and in each ch across.', {
        sizes: ['name: s, repeats: 1000'],
      }),
    codes: ['size/too-large'],
  },
  {
    name: 'a thousand times a thousand times a thousand stitches in brackets',
    file: () => row2('[[[sc in first st] 1000 times] 1000 times] 1000 times.'),
    codes: ['size/too-large'],
  },
  {
    name: 'a thousand times a thousand times a thousand chains in brackets',
    file: () => row2('sc in first st, [[[ch 1] 1000 times] 1000 times] 1000 times.'),
    codes: ['size/too-large'],
  },
  {
    name: 'a thousand times a thousand times a thousand times nothing',
    file: () => row2('[[[turn] 1000 times] 1000 times] 1000 times, sc in each st across.'),
    codes: ['size/too-large'],
  },
  {
    name: 'brackets a hundred thousand times in brackets, within what a file may hold',
    file: () => row2(`${'['.repeat(40_000)}sc in next st${'] 2 times'.repeat(40_000)}.`),
    codes: ['bracket/too-deep'],
  },
  {
    name: 'a hundred thousand brackets that are never closed',
    file: () => row2('('.repeat(100_000)),
    codes: ['bracket/too-deep'],
  },
  {
    name: 'a hundred thousand asterisks',
    file: () => row2(`${'*'.repeat(100_000)}sc in next st; rep from * across.`),
    codes: ['repeat/no-start'],
  },
  {
    name: 'a hundred thousand asterisks apart',
    file: () => row2(`${'* '.repeat(100_000)}sc in next st; rep from * across.`),
    codes: ['bracket/too-deep'],
  },
  {
    name: 'a gauge of 0.0001 rows',
    file: () =>
      pattern(OPEN, {
        head: GAUGE.replace('rows: 18', 'rows: 0.0001'),
        sizes: ['name: s, width: 15 cm, height: 15 cm'],
      }),
    codes: ['file/out-of-range'],
  },
  {
    name: 'a gauge of 0.0001 stitches',
    file: () =>
      pattern(OPEN, {
        head: GAUGE.replace('stitches: 16', 'stitches: 0.0001'),
        sizes: ['name: s, width: 15 cm, height: 15 cm'],
      }),
    codes: ['file/out-of-range'],
  },
  {
    name: 'a gauge over 0.0001 mm',
    file: () =>
      pattern(OPEN, {
        head: GAUGE.replace('10 cm', '0.0001 mm'),
        sizes: ['name: s, width: 15 cm, height: 15 cm'],
      }),
    codes: ['file/out-of-range'],
  },
  {
    name: 'ten thousand sizes',
    file: () => row2('sc in each st across.', { sizes: list(10_000, (i) => `name: s${i}`) }),
    codes: ['yaml/too-much'],
  },
  {
    name: 'two thousand sizes of two hundred thousand stitches',
    file: () =>
      pattern(
        'Ch 1001.\nRow 1: Sc in 2nd ch from hook and in each ch across.\nRows 2-200: Ch 1, sc in each st across.',
        {
          sizes: list(2_000, (i) => `name: s${i}`),
        },
      ),
    codes: ['size/too-many'],
  },
  {
    name: 'two thousand sizes of repeats that make nothing',
    file: () =>
      row2('[[turn] 1000 times] 1000 times, sc in each st across.', {
        sizes: list(2_000, (i) => `name: s${i}`),
      }),
    codes: ['size/too-many'],
  },
  {
    name: 'a special stitch of a thousand special stitches of a thousand special stitches of a thousand',
    file: () =>
      row2('aaa in each st across.', {
        special: ['aaa: 1000 bbb in same st', 'bbb: 1000 ccc in same st', 'ccc: 1000 dc in same st'],
      }),
    codes: ['size/too-large'],
  },
  {
    name: 'sixty special stitches each of two of the next',
    file: () =>
      row2('s0 in next st, sc in each st across.', {
        special: [...list(60, (i) => `s${i}: (s${i + 1}, s${i + 1}) in same st`), 's60: 2 dc in same st'],
      }),
    codes: ['size/too-large'],
  },
  {
    name: 'sixty special stitches each of two of the next, the last of which makes nothing',
    file: () =>
      row2('s0 in next st, sc in each st across.', {
        special: [...list(60, (i) => `s${i}: (s${i + 1}, s${i + 1}) in same st`), 's60: turn'],
      }),
    codes: ['size/too-large'],
  },
  {
    name: 'two thousand special stitches each of the next',
    file: () =>
      row2('s0 in each st across.', {
        special: [...list(2_000, (i) => `s${i}: s${i + 1} in same st`), 's2000: 2 dc in same st'],
      }),
    codes: ['size/too-large'],
  },
  {
    name: 'a repeat across whose first pass uses nothing',
    file: () => row2('sc in next st, *ch 1; rep from * across.'),
    codes: ['repeat/endless'],
  },
  {
    name: 'a repeat across that stays in one stitch',
    file: () => row2('sc in next st, *sc in same st; rep from * across.'),
    codes: ['repeat/endless'],
  },
  {
    name: 'a file of 50 MB',
    file: () => pattern(ROW_1, { head: `about: |\n${'  words of an introduction\n'.repeat(2 * MEGABYTE)}` }),
    codes: ['path/too-large'],
  },
  {
    name: 'a plain text of 50 MB',
    file: () => 'Row 1: Sc in each st across, turn.\n'.repeat(1.5 * MEGABYTE),
    plainText: true,
    codes: ['path/too-large'],
  },
  {
    name: 'a million lines of instructions',
    file: () =>
      pattern(`${ROW_1}\n${list(999_999, (i) => `Row ${i + 2}: Ch 1, sc in each st across.`).join('\n')}`),
    codes: ['path/too-large'],
  },
  {
    name: 'a file of empty lines, as many as a file may have',
    file: () => pattern(`${ROW_1}${'\n'.repeat(120_000)}`),
    codes: ['yaml/too-much'],
  },
  {
    name: 'notes of three quarters of a megabyte',
    file: () =>
      pattern(ROW_1, { head: `notes:\n  - "${'words of a note, ch 3 counts, '.repeat(26_000)}"\n` }),
    codes: ['yaml/too-much'],
  },
  {
    name: 'lists in lists a hundred thousand deep',
    file: () => `title: ${'['.repeat(100_000)}${']'.repeat(100_000)}\n`,
    codes: ['yaml/too-much'],
  },
  {
    name: 'a list item in a list item a hundred thousand deep',
    file: () => `${'- '.repeat(100_000)}a\n`,
    codes: ['yaml/too-much'],
  },
  {
    name: 'names that stand for nine of the name before, eleven times over',
    file: () =>
      `a0: &a0 [x,x,x,x,x,x,x,x,x]\n${list(11, (i) => `a${i + 1}: &a${i + 1} [${`*a${i},`.repeat(9)}]\n`).join('')}title: *a11\n`,
    codes: ['yaml/too-much'],
  },
  {
    name: 'one unknown word, as often as a file may hold it',
    file: () => row2(`${'x, '.repeat(160_000)}sc in each st across.`),
    codes: ['word/unknown'],
  },
  {
    name: 'a plain text of one word a hundred and eighty thousand times',
    file: () => 'blah '.repeat(180_000),
    plainText: true,
    codes: ['text/no-rows'],
  },
  {
    name: 'a plain text of twenty thousand rows',
    file: () =>
      `Ch 21.\n${list(20_500, (i) => `Row ${i + 1}: Ch 1, sc in each st across, turn.`).join('\n')}`,
    plainText: true,
    codes: ['row/too-many'],
  },
];
