/** Facts about what a pattern file says in, the words of a fault out: one function per code. */

import type { Wording } from '../diagnostic.ts';
import { listed } from '../listed.ts';

export const fileFaults = {
  'file/empty': (): Wording => ({
    severity: 'error',
    message: 'there is no pattern in this file',
    why: 'A page needs at least a title, the terms it is written in and one part.',
    try: 'begin with title:, terms: and parts:, each on a line of its own.',
  }),
  'file/lost-letters': (): Wording => ({
    severity: 'warning',
    message: 'a letter or sign was lost when this file was saved',
    why: 'It stands as a question mark on the page, in the booklet and in searches.',
    try: 'write it again and save the file as UTF-8.',
  }),
  'file/unknown-key': ({ key, holder, nearest, known }: UnknownKey): Wording => ({
    severity: 'error',
    message: `"${key}" is not a key of ${holder}`,
    why: 'What stands under it would be left off the page without a word.',
    try: nearest === null ? `use one of these: ${known.join(', ')}.` : `write ${nearest}:`,
  }),
  'file/row-outside': ({ label, count }: RowOutside): Wording => ({
    severity: 'error',
    message:
      count === 1
        ? `"${label}" stands outside the text of its part`
        : `"${label}" and ${count - 1} more stand outside the text of their part`,
    why: 'Only what is set in below  work: |  is read as instructions.',
    try: 'set every row in by two spaces more than work:',
  }),
  'file/missing': ({ key, holder, about, form }: Missing): Wording => ({
    severity: 'error',
    message: `${holder} has no ${key}`,
    why: about,
    try: `add  ${form}`,
  }),
  'file/wrong-kind': ({ key, wanted, found, about, form }: WrongKind): Wording => ({
    severity: 'error',
    message: `${key} takes ${wanted}, and this is ${found}`,
    why: about,
    try: `write it like  ${form}`,
  }),
  'file/not-one-of': ({ key, given, choices, nearest }: NotOneOf): Wording => ({
    severity: 'error',
    message: `"${given}" is not one of the words for ${key}`,
    why: `The page and its checks know these: ${choices.join(', ')}.`,
    try: nearest === null ? `write ${listed(choices, 'or')}.` : `write ${nearest}.`,
  }),
  'file/out-of-range': ({ key, given, least, most, about }: OutOfRange): Wording => ({
    severity: 'error',
    message: `${key} is ${given}, which is ${most === null ? `less than ${least}` : `more than ${most}`}`,
    why: 'A slipped point or a wrong unit here goes through to the sizes, the yarn and the materials list.',
    try: `check the figure: ${most === null ? `${least} or more` : `${most} or less`} is expected. ${about}`,
  }),
  'file/measure': ({ given, wants, form }: NotMeasure): Wording => ({
    severity: 'error',
    message: `"${given}" is not ${wants === 'mass' ? 'a weight' : 'a length'}`,
    why: 'Sizes, yarn and hook are worked out in metric and inch units, so a figure needs its unit.',
    try:
      /[/(]/.test(given) && /[a-z]/i.test(given)
        ? `write one measure, like  ${form}; the page gives the other unit itself.`
        : `write a figure and its unit, like  ${form}`,
  }),
  'file/date': ({ given }: Given): Wording => ({
    severity: 'error',
    message: `"${given}" is not a day of the calendar`,
    why: 'The date tells readers which version they have printed.',
    try: 'write year, month and day, like  date: 2026-11-24',
  }),
  'file/colour-code': ({ given }: Given): Wording => ({
    severity: 'error',
    message: `"${given}" is not a colour code`,
    why: 'Pictures and charts are coloured from it.',
    try: 'write six digits or letters a to f in quotes, like  hex: "#7a8b4f"',
  }),
  'file/yarn-letter': ({ given }: Given): Wording => ({
    severity: 'error',
    message: `"${given}" is not a letter for a yarn`,
    why: 'Instructions call yarns by short names: "With A", "Change to MC".',
    try: 'write one to three capital letters or figures, like  A:  or  MC:',
  }),
  'file/same-name': ({ what, name }: SameName): Wording => ({
    severity: 'error',
    message: `two ${what} are called "${name}"`,
    why: 'Readers pick by name, and each has a page address made from it.',
    try: 'give each a name of its own.',
  }),
  'file/onto': ({ given, nearest, earlier }: Onto): Wording => ({
    severity: 'error',
    message: `"${given}" is not a part that comes before this one`,
    why: 'A part worked onto another takes its first row from the last row of that one.',
    try:
      nearest !== null
        ? `write ${nearest}.`
        : earlier.length === 0
          ? 'put the part it is worked onto above it.'
          : `name one of these: ${earlier.join(', ')}.`,
  }),
  'file/folded': (): Wording => ({
    severity: 'error',
    message: 'instructions stand after >',
    why: 'After > the lines are joined into one, so rows lose their beginnings.',
    try: 'write | in place of >.',
  }),
} as const;

interface UnknownKey {
  readonly key: string;
  readonly holder: string;
  readonly nearest: string | null;
  readonly known: readonly string[];
}

interface RowOutside {
  readonly label: string;
  readonly count: number;
}

interface Missing {
  readonly key: string;
  readonly holder: string;
  readonly about: string;
  /** How it would stand in the file: `hook: 5 mm`. */
  readonly form: string;
}

interface WrongKind {
  readonly key: string;
  readonly wanted: string;
  readonly found: string;
  readonly about: string;
  readonly form: string;
}

interface NotOneOf {
  readonly key: string;
  readonly given: string;
  readonly choices: readonly string[];
  readonly nearest: string | null;
}

/** One of `least` and `most` is the bound overstepped; the other is null. */
interface OutOfRange {
  readonly key: string;
  readonly given: string;
  readonly least: string | null;
  readonly most: string | null;
  readonly about: string;
}

interface NotMeasure {
  readonly given: string;
  readonly wants: 'length' | 'mass';
  readonly form: string;
}

interface Given {
  readonly given: string;
}

interface SameName {
  readonly what: 'sizes' | 'parts';
  readonly name: string;
}

interface Onto {
  readonly given: string;
  readonly nearest: string | null;
  readonly earlier: readonly string[];
}
