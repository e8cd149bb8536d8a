/** The options of `new` and whoever sits at the terminal -> what the starter pattern is to be, or what is wrong. */

import type { Terms } from '../stitches/stitch-row.ts';
import { oneOf } from './one-of.ts';
import {
  MOST_SIZES,
  SHAPES,
  type StarterChoice,
  type StarterShape,
  USUAL_STARTER,
} from './starter-pattern.ts';
import type { Flag, Terminal } from './verb.ts';

export const STARTER_FLAGS: readonly Flag[] = [
  { name: 'title', value: 'WORDS', about: "the title (made of the folder's name)" },
  { name: 'terms', value: 'US|UK', about: 'the terms you write in (US)' },
  { name: 'shape', value: 'flat|round', about: 'worked in rows or in rounds (flat)' },
  { name: 'sizes', value: 'NAMES', about: 'the sizes, commas between ("small, medium, large")' },
];

type Understood<T> =
  | { readonly kind: 'known'; readonly value: T }
  | { readonly kind: 'unknown'; readonly message: string };

interface Question<T> {
  readonly flag: string;
  readonly asks: string;
  readonly usual: T;
  /** The usual answer in words. */
  readonly shown: string;
  readonly understand: (words: string) => Understood<T>;
}

const TITLE: Question<string> = {
  flag: 'title',
  asks: 'What is the pattern called?',
  usual: 'My Square',
  shown: 'My Square',
  understand: (words) => ({ kind: 'known', value: words }),
};

const TERMS: Question<Terms> = {
  flag: 'terms',
  asks: 'Do you write in US or UK terms?',
  usual: USUAL_STARTER.terms,
  shown: USUAL_STARTER.terms,
  understand: (words) => oneOf('terms', words, ['US', 'UK'], (word) => word === 'US' || word === 'UK'),
};

const SHAPE: Question<StarterShape> = {
  flag: 'shape',
  asks: 'Is it worked flat or round?',
  usual: USUAL_STARTER.shape,
  shown: USUAL_STARTER.shape,
  understand: (words) =>
    oneOf('shape', words.replace(/^in (?:the )?/i, '').replace(/^(round|row)s$/i, '$1'), SHAPES, isShape),
};

const SIZES: Question<readonly string[]> = {
  flag: 'sizes',
  asks: 'Which sizes has it, with commas between?',
  usual: USUAL_STARTER.sizes,
  shown: USUAL_STARTER.sizes.join(', '),
  understand: sizesIn,
};

export type AskedStarter =
  | { readonly kind: 'choice'; readonly title: string; readonly choice: StarterChoice }
  | { readonly kind: 'wrong'; readonly message: string }
  /** She ended it without answering. */
  | { readonly kind: 'left' };

/** `title` is what the folder's name says, null where there is no name yet. Nobody is asked for what is given. */
export async function askStarter(
  values: ReadonlyMap<string, string>,
  title: string | null,
  terminal: Terminal,
): Promise<AskedStarter> {
  const asking = { values, terminal };
  const called = await answered(asking, { ...TITLE, usual: title ?? TITLE.usual }, title !== null);
  if (called.kind !== 'known') return called;
  const terms = await answered(asking, TERMS);
  if (terms.kind !== 'known') return terms;
  const shape = await answered(asking, SHAPE);
  if (shape.kind !== 'known') return shape;
  const sizes = await answered(asking, SIZES);
  if (sizes.kind !== 'known') return sizes;
  return {
    kind: 'choice',
    title: called.value,
    choice: { terms: terms.value, shape: shape.value, sizes: sizes.value },
  };
}

type Answered<T> = { readonly kind: 'known'; readonly value: T } | Exclude<AskedStarter, { kind: 'choice' }>;

/** `told` where there is nothing to ask. */
async function answered<T>(
  { values, terminal }: { readonly values: ReadonlyMap<string, string>; readonly terminal: Terminal },
  { flag, asks, usual, shown, understand }: Question<T>,
  told = false,
): Promise<Answered<T>> {
  const given = values.get(flag);
  if (given !== undefined) {
    const understood = understand(given.trim());
    return understood.kind === 'known' ? understood : { kind: 'wrong', message: understood.message };
  }
  if (told || terminal.ask === null) return { kind: 'known', value: usual };
  for (;;) {
    const words = await terminal.ask(`${asks} (${shown})`);
    if (words === null) return { kind: 'left' };
    if (words.trim() === '') return { kind: 'known', value: usual };
    const understood = understand(words.trim());
    if (understood.kind === 'known') return understood;
    terminal.say(understood.message.replace(/^--\w+ takes/, 'Answer with one of'));
  }
}

function sizesIn(words: string): Understood<readonly string[]> {
  const names = words.split(/[,;]/).map((name) => name.trim().replace(/\s+/g, ' '));
  const wrong = (message: string) => ({ kind: 'unknown', message }) as const;
  if (names.includes('')) return wrong('Each size has a name: small, medium, large.');
  if (names.length > MOST_SIZES) return wrong(`A pattern starts with ${MOST_SIZES} sizes at most.`);
  const twice = names.find((name, i) => names.findIndex((other) => same(other, name)) < i);
  if (twice !== undefined) return wrong(`Two sizes are called ${twice}: each has a name of its own.`);
  return { kind: 'known', value: names };
}

function same(one: string, other: string): boolean {
  return one.toLowerCase() === other.toLowerCase();
}

function isShape(word: string): word is StarterShape {
  return SHAPES.some((shape) => shape === word);
}
