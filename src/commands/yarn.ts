/** `yarn`: a pattern, or an amount of yarn, and what is on a ball of another -> how many balls of that, by length. */

import type { CompiledSize } from '../compiled.ts';
import { yarnNote } from '../measure/materials.ts';
import { takenM } from '../measure/measures.ts';
import { against, ballsWords, inBalls, type PutUp, thickness } from '../measure/put-up.ts';
import { amountOf, ballOf, ballsOf, Wrong } from '../own/own-values.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { printG, printM, printOz, printYd } from '../units.ts';
import { findSize } from './find-size.ts';
import { onePattern } from './one-pattern.ts';
import { OWN_FLAGS, ownSizeAsked } from './own-flags.ts';
import type { ExitCode, Terminal, Verb } from './verb.ts';

export const yarn: Verb = {
  name: 'yarn',
  takes: '[PATH] [--ball BALL] [--instead-of AMOUNT] [--size NAME] [--json]',
  about: 'how much of each colour is taken, and how many balls of another yarn that is',
  least: 0,
  most: 1,
  flags: [
    {
      name: 'ball',
      value: 'BALL',
      about: 'your yarn: "200 m", "200 m and 100 g" a ball; "A: 200 m; B: 90 m" by colour',
    },
    {
      name: 'instead-of',
      value: 'AMOUNT',
      about: 'without a pattern: what is asked for, "900 m" or "8 balls of 125 m and 50 g"',
    },
    { name: 'size', value: 'NAME', about: 'only this size' },
    ...OWN_FLAGS.filter(({ name }) => name !== 'ball'),
    { name: 'json', value: null, about: 'the figures as JSON, for other programs' },
  ],
  teaches: `Tells what each size takes of each colour, and how many balls that is of the yarn you have: by length, for
yarns of one weight differ in length.

  npm run -s rowfold -- yarn patterns/my-square
  npm run -s rowfold -- yarn patterns/my-square --ball "137 yd and 50 g"
  npm run -s rowfold -- yarn patterns/my-square --ball "A: 200 m and 100 g; B: 90 m and 50 g" --width "12 in"
  npm run -s rowfold -- yarn --instead-of "8 balls of 125 m and 50 g" --ball "200 yd and 3.5 oz"`,
  run: async ({ paths, flags, values }, terminal) => {
    try {
      const found =
        paths.length > 0
          ? await takenBySize(paths, values, terminal)
          : { title: null, wanted: [askedFor(values)], note: null };
      if ('code' in found) return found.code;
      terminal.say(flags.has('json') ? JSON.stringify(figures(found), null, 2) : told(found));
      return 0;
    } catch (fault) {
      if (!(fault instanceof Wrong)) throw fault;
      terminal.tell(fault.message);
      return 2;
    }
  },
};

/** So much of one colour in one size, from the yarn it is written for and from the maker's. */
interface Wanted {
  readonly size: string | null;
  readonly letter: string | null;
  readonly lengthM: number;
  /** Balls that the designer lists, or that her put-up comes to. */
  readonly listed: number | null;
  readonly written: PutUp | null;
  readonly own: PutUp | null;
}

interface Taken {
  readonly title: string | null;
  readonly wanted: readonly Wanted[];
  readonly note: string | null;
}

async function takenBySize(
  paths: readonly string[],
  values: ReadonlyMap<string, string>,
  terminal: Terminal,
): Promise<Taken | { readonly code: ExitCode }> {
  if (values.has('instead-of')) throw new Wrong('--instead-of is for an amount without a pattern.');
  const read = await onePattern('yarn', paths, terminal);
  if (read.kind === 'not one') return read;
  const { compiled } = read.file;
  if (read.faulty || compiled.pattern === null) return { code: 1 };
  const name = values.get('size');
  const found = name === undefined ? null : findSize(compiled, name);
  if (found?.kind === 'unknown') throw new Wrong(found.message);
  const asked = new Map([...values].filter(([flag]) => flag !== 'ball'));
  const own = ownSizeAsked(asked, compiled, found?.kind === 'found' ? found.size : null);
  if (own.kind === 'wrong') throw new Wrong(own.message);
  const sizes = own.kind === 'made' ? [own.size] : found?.kind === 'found' ? [found.size] : compiled.sizes;
  if (sizes.every(({ measures }) => measures.yarn.length === 0)) {
    terminal.tell(
      `${compiled.slug} gives no gauge, or leaves its length to the maker, so its yarn cannot be reckoned.`,
    );
    return { code: 1 };
  }
  const { pattern } = compiled;
  return {
    title: pattern.title,
    wanted: sizes.flatMap((size) => wantedFor(size, pattern, values)),
    note: sizes.length === 1 && sizes[0] !== undefined ? yarnNote(sizes[0].measures.yarn) : null,
  };
}

function wantedFor(
  { size, measures }: CompiledSize,
  pattern: Pattern,
  values: ReadonlyMap<string, string>,
): Wanted[] {
  const owns = ballsOf(
    values.get('ball'),
    '--ball',
    pattern.yarns.map(({ letter }) => letter),
  );
  return measures.yarn.map((use) => {
    const { ballLengthM = null, ballMassG = null } =
      pattern.yarns.find(({ letter }) => letter === use.letter) ?? {};
    return {
      size: size.name,
      letter: use.letter,
      lengthM: takenM(use),
      listed: use.balls,
      written: ballLengthM === null ? null : { lengthM: ballLengthM, massG: ballMassG },
      own: owns.get(use.letter) ?? null,
    };
  });
}

function askedFor(values: ReadonlyMap<string, string>): Wanted {
  const written = values.get('instead-of');
  const ball = values.get('ball');
  if (written === undefined || ball === undefined)
    throw new Wrong(
      'Name a pattern, or say both --instead-of "8 balls of 125 m and 50 g" and --ball "200 m and 100 g".',
    );
  const { lengthM, balls, putUp } = amountOf(written, '--instead-of');
  return { size: null, letter: null, lengthM, listed: balls, written: putUp, own: ballOf(ball, '--ball') };
}

function told({ title, wanted, note }: Taken): string {
  const lines = wanted.flatMap((one, i) => {
    const head = one.size !== null && one.size !== wanted[i - 1]?.size ? ['', one.size] : [];
    return [...head, ...wantedWords(one)];
  });
  return [...(title === null ? [] : [title]), ...lines, ...(note === null ? [] : ['', note])].join('\n');
}

function wantedWords({ letter, lengthM, listed, written, own }: Wanted): string[] {
  const name = letter === null ? '' : `Yarn ${letter}: about `;
  const ofWritten =
    written === null || listed === null ? '' : `, ${ballsWords(listed)} of ${putUpWords(written)}`;
  const first = `${name}${printM(lengthM)} (${printYd(lengthM)})${ofWritten}`;
  if (own === null) return [first];
  const { balls, massG } = inBalls(lengthM, own);
  const mass = massG === null ? '' : `, ${printG(Math.ceil(massG))} (${printOz(massG)}) worked`;
  return [
    first,
    `  that is ${ballsWords(balls)} of ${putUpWords(own)}${mass}`,
    ...warnings(lengthM, balls, written, own),
  ];
}

function warnings(lengthM: number, balls: number, written: PutUp | null, own: PutUp): string[] {
  if (written === null) return [];
  const other = against(lengthM, written, own);
  const said: string[] = [];
  if (other.byWeight !== null && other.byWeight !== balls)
    said.push(`  By weight it would seem to be ${ballsWords(other.byWeight)}: go by length.`);
  const than = thickness(other);
  if (than !== null)
    said.push(
      `  It is ${than} than the yarn asked for (${perGrams(own)} against ${perGrams(written)}): work a swatch before you buy.`,
    );
  return said;
}

function perGrams({ lengthM, massG }: PutUp): string {
  return `${printM((lengthM * 100) / (massG ?? 100))} in 100 g`;
}

function putUpWords({ lengthM, massG }: PutUp): string {
  const mass = massG === null ? '' : ` and ${printG(massG)} (${printOz(massG)})`;
  return `${printM(lengthM)} (${printYd(lengthM)})${mass}`;
}

function figures({ title, wanted }: Taken): object {
  return {
    title,
    yarn: wanted.map(({ size, letter, lengthM, listed, written, own }) => {
      const other = written === null || own === null ? null : against(lengthM, written, own);
      return {
        size,
        name: letter,
        m: lengthM,
        listed,
        ...(own === null
          ? { balls: null, g: null }
          : { balls: inBalls(lengthM, own).balls, g: inBalls(lengthM, own).massG }),
        byWeight: other?.byWeight ?? null,
        finer: other?.finer ?? null,
      };
    }),
  };
}
