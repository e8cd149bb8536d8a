import { once } from 'node:events';
import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { removeFolder, rowfold, scratchFolder, startRowfold } from './run-rowfold.ts';

const folder = scratchFolder();
afterAll(() => removeFolder(folder));

const GOOD = `Grey Coaster
US terms

Materials
Worsted weight wool, 100 g / 200 m, in grey
5 mm hook

Ch 12.
Row 1: Sc in 2nd ch from hook and in each ch across, turn. (11 sc)
Row 2: Ch 1, sc in each st across, turn. (11 sc)
Fasten off.
`;
const WRONG = GOOD.replace(
  'Row 2: Ch 1, sc in each st across, turn. (11 sc)',
  'Row 2: Ch 1, sc in each st across, turn. (12 sc)',
);
const ROWS = `With A, ch 12.
Row 1: Sc in 2nd ch from hook and in each ch across, turn. (11 sc)
Row 2: With B, ch 1, sc in each st across, turn. (12 sc)
`;

function written(name: string, text: string | Uint8Array): string {
  writeFileSync(path.join(folder, name), text);
  return name;
}

const made = (place: string) => readFileSync(path.join(folder, place, 'pattern.yaml'), 'utf8');

describe('read', () => {
  test('writes a pattern file named after the title, which checks clean and is never written over', async () => {
    const file = written('good.txt', GOOD);
    const { code, out, err } = await rowfold(['read', file], folder);
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(/line 1 +title +Grey Coaster/);
    expect(out).toMatch(/terms +US, as stated/);
    expect(out).toMatch(/hook +5 mm/);
    expect(out).toContain('No faults.');
    expect(out).toContain('patterns/grey-coaster/pattern.yaml is written.');
    const text = made('patterns/grey-coaster');
    expect(text).toContain('      Row 2: Ch 1, sc in each st across, turn. (11 sc)\n');

    const checked = await rowfold(['check', 'patterns/grey-coaster', '--json'], folder);
    expect(JSON.parse(checked.out)).toEqual({ ok: true, faults: [] });

    const again = await rowfold(['read', file], folder);
    expect(again.err).toContain('left as it is');
    expect(again.code).toBe(2);
    expect(made('patterns/grey-coaster')).toBe(text);
  });

  test('marks a wrong count in the file, tells it with its line, and ends with 1', async () => {
    const { code, out } = await rowfold(['read', written('wrong.txt', WRONG), '--out', 'elsewhere'], folder);
    const text = made('elsewhere');
    const line = text.split('\n').findIndex((words) => words.includes('(12 sc)')) + 1;
    expect(out).toContain(`elsewhere/pattern.yaml:${line}:`);
    expect(text).toContain(`# error on line ${line}: `);
    expect(text).toContain('(line 10 as pasted)');
    expect(code).toBe(1);
  });

  test('keeps what it does not understand word for word, and says so', async () => {
    const text = `${GOOD}\nUncle Bert says hello from the seaside.\n`;
    const { code, out } = await rowfold(['read', written('bert.txt', text), '--out', 'bert'], folder);
    expect(out).toMatch(/Not understood.*\n +line 13 +Uncle Bert says hello from the seaside\./);
    expect(made('bert')).toContain('- Uncle Bert says hello from the seaside.');
    expect(code).toBe(0);
  });

  test('reads standard input for -', async () => {
    const child = startRowfold(['read', '-', '--out', 'piped'], folder);
    child.stdin?.end(GOOD);
    const [code] = await once(child, 'close');
    expect(code).toBe(0);
    expect(made('piped')).toContain('title: Grey Coaster');
  });

  test.each([
    ['none.txt', 'path/missing'],
    ['latin.txt', 'path/not-text'],
  ])('%s is a fault of its own', async (file, wanted) => {
    written('latin.txt', Buffer.from('Caf\xe9\n', 'latin1'));
    const { code, out, err } = await rowfold(['read', file], folder);
    expect(err).toContain(wanted);
    expect([code, out]).toEqual([1, '']);
  });

  test('a text without any instructions is told so', async () => {
    const { code, out } = await rowfold(
      ['read', written('letter.txt', 'Hello there,\nall is well.\n'), '--out', 'letter'],
      folder,
    );
    expect(out).toContain('the pattern has no parts');
    expect(code).toBe(1);
  });
});

describe('a plain text of instructions', () => {
  const wrong = written('pasted-wrong.txt', WRONG.replaceAll('\n', '\r\n'));
  const good = written('pasted-good.txt', GOOD);

  test('is checked as it stands, its faults in its own lines and columns', async () => {
    const { code, out } = await rowfold(['check', wrong, good, '--json'], folder);
    const { ok, faults } = JSON.parse(out);
    expect([code, ok]).toEqual([1, false]);
    expect(faults).toHaveLength(1);
    const row = WRONG.split('\n')[9] ?? '';
    expect(faults[0]).toMatchObject({
      code: 'count/mismatch',
      severity: 'error',
      file: wrong,
      line: 10,
      column: row.indexOf('(12 sc)') + 1,
      endLine: 10,
      endColumn: row.length + 1,
      size: null,
    });
  });

  test('is counted, each row with its line', async () => {
    const { code, out } = await rowfold(['count', good, '--json'], folder);
    const { title, sizes } = JSON.parse(out);
    expect([code, title]).toEqual([0, 'Grey Coaster']);
    const rows = sizes[0].rows.map(({ label, line, stitches }: Record<string, unknown>) => [
      label,
      line,
      stitches,
    ]);
    expect(rows).toEqual([
      ['Row 1', 9, 11],
      ['Row 2', 10, 11],
    ]);
  });

  test('that is rows alone is named after its file, and no materials are missed', async () => {
    const rows = written('two-rows.txt', ROWS);
    const { faults } = JSON.parse((await rowfold(['check', rows, '--json'], folder)).out);
    expect(faults.map(({ code, line }: Record<string, unknown>) => [code, line])).toEqual([
      ['count/mismatch', 3],
    ]);
    const counted = JSON.parse((await rowfold(['count', rows, '--json'], folder)).out);
    expect(counted.title).toBe('Two Rows');
  });
});
