/** `size`: one pattern and a wanted measure -> the repeats, rows or rounds near it, and what each measures. */

import { compileOwnSize, remakeableFrom } from '../compile-own.ts';
import type { CompiledSize } from '../compiled.ts';
import { HEIGHTS_AS_USUAL } from '../measure/heights-in-sc.ts';
import { yarnNote } from '../measure/materials.ts';
import { takenM } from '../measure/measures.ts';
import { ballsWords } from '../measure/put-up.ts';
import { cannotBe } from '../own/cannot-be.ts';
import { leastWords, type NearTable, nearCells, nearTables } from '../own/near-words.ts';
import { nearOwn } from '../own/own-pattern.ts';
import { printCm, printIn, printM, printYd } from '../units.ts';
import { findSize } from './find-size.ts';
import { onePattern } from './one-pattern.ts';
import { askedByFlags, OWN_FLAGS } from './own-flags.ts';
import type { Verb } from './verb.ts';

export const size: Verb = {
  name: 'size',
  takes: 'PATH [--width MEASURE] [--height MEASURE] [--gauge GAUGE] [--ball BALL] [--size NAME] [--json]',
  about: 'how many repeats, rows or rounds reach a width or a height',
  least: 1,
  most: 1,
  flags: [
    ...OWN_FLAGS,
    { name: 'size', value: 'NAME', about: 'the size whose other numbers hold (the first)' },
    { name: 'json', value: null, about: 'the figures as JSON, for other programs' },
  ],
  teaches: `Finds the sizes near a wanted measure that the pattern's own rules allow, and what each takes.

  npm run -s rowfold -- size patterns/my-square --width "30 cm"
  npm run -s rowfold -- size patterns/my-square --width "12 in" --height "14 in" --gauge "18 sts and 20 rows over 10 cm"
  npm run -s rowfold -- size patterns/my-square --width "30 cm" --ball "200 m and 100 g"

The same flags make count and booklet give the whole pattern in that size.`,
  run: async ({ paths, flags, values }, terminal) => {
    const read = await onePattern('size', paths, terminal);
    if (read.kind === 'not one') return read.code;
    const { file, faulty } = read;
    const { compiled } = file;
    const [first] = compiled.sizes;
    if (faulty || compiled.pattern === null || first === undefined) return 1;
    const found = values.has('size')
      ? findSize(compiled, values.get('size') ?? '')
      : { kind: 'found' as const, size: first };
    if (found.kind === 'unknown') {
      terminal.tell(found.message);
      return 2;
    }
    const from = compiled.pattern.sizes.findIndex(({ name }) => name === found.size.size.name);
    const asked = askedByFlags(values, compiled, from);
    if (asked.kind !== 'asked') {
      terminal.tell(
        asked.kind === 'wrong' ? asked.message : 'Say what is wanted: --width "30 cm", --height "12 in".',
      );
      return 2;
    }
    const { own } = asked;
    const remakeable = remakeableFrom(compiled, from);
    if (remakeable === null) return 1;
    const near = nearOwn(remakeable, own);
    const wrong = cannotBe(own, remakeable);
    // Of rounds the table says how many; what is written for them stays as it is.
    if (wrong !== null && near.rounds === null) {
      terminal.tell(wrong);
      return 1;
    }
    const compiledOwn = wrong === null ? compileOwnSize(compiled, own) : null;
    const fault = compiledOwn?.diagnostics.find(({ severity }) => severity === 'error');
    if (fault !== undefined) {
      terminal.tell(`That size cannot be worked: ${fault.message}.`);
      return 1;
    }
    const made = compiledOwn?.sizes[0] ?? null;
    const reckoned = compiledOwn?.pattern?.gauge?.rows === null;
    terminal.say(
      flags.has('json')
        ? JSON.stringify({ ...near, made: made === null ? null : { ...figures(made), reckoned } }, null, 2)
        : [
            compiled.pattern.title,
            ...nearTables(near).map((one) => [table(one), leastWords(one) ?? ''].filter(Boolean).join('\n')),
            made === null ? '' : summary(made),
            reckoned ? HEIGHTS_AS_USUAL : '',
          ]
            .filter((words) => words !== '')
            .join('\n\n'),
    );
    return 0;
  },
};

function figures({ measures }: CompiledSize): object {
  const { widthMm, heightMm, yarn } = measures;
  return {
    width: { mm: widthMm },
    height: { mm: heightMm },
    yarn: yarn.map((use) => ({ name: use.letter, m: takenM(use), basis: use.basis, balls: use.balls })),
  };
}

/** The nearest is marked by the word, which is heard as well as seen. */
function table({ counted, side, near }: NearTable): string {
  const rows = near.map((one) => [one.nearest ? 'nearest' : '', ...nearCells(one)]);
  const heads = ['', counted, side, 'than wanted'];
  const widths = heads.map((head, i) => Math.max(head.length, ...rows.map((row) => row[i]?.length ?? 0)));
  return [heads, ...rows]
    .map((row) =>
      row
        .map((cell, i) => cell.padEnd(widths[i] ?? 0))
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
}

function summary({ measures }: CompiledSize): string {
  const { widthMm, heightMm, yarn } = measures;
  const sides = [widthMm, heightMm].flatMap((mm) => (mm === null ? [] : [`${printCm(mm)} (${printIn(mm)})`]));
  const amounts = yarn.map((use) => {
    const m = takenM(use);
    const balls = use.balls === null ? '' : `, ${ballsWords(use.balls)}`;
    return `Yarn ${use.letter}: about ${printM(m)} (${printYd(m)})${balls}`;
  });
  const note = yarnNote(yarn);
  return [`It comes out at ${sides.join(' by ')}.`, ...amounts, ...(note === null ? [] : [note])].join('\n');
}
