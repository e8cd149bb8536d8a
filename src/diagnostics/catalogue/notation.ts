/** Facts about written instructions in, the words of a fault out: one function per code. */

import type { Wording } from '../diagnostic.ts';

export const notationFaults = {
  'word/unknown': ({ word, nearest }: UnknownWord): Wording => ({
    severity: 'error',
    message: `"${word}" is not a stitch or an instruction known here`,
    why: 'What it asks for cannot be worked, so nothing after it on this row can be counted.',
    try:
      nearest === null
        ? 'spell it as the trade does, or describe it under special: if it is a stitch of your own.'
        : `write "${nearest}" if that is what is meant.`,
  }),
  'word/other-terms': ({ word, terms, other, name, here }: OtherTerms): Wording => ({
    severity: 'error',
    message: `"${word}" is a ${other} term; this pattern is written in ${terms} terms`,
    why: `The same letters name different stitches in the two, so a maker would not know which is meant.`,
    try: `write "${here}" (${name}), or set terms: ${other} if the whole text is in ${other} terms.`,
  }),
  'special/undefined': ({ word, nearest, example }: UndefinedSpecial): Wording => ({
    severity: 'error',
    message: `"${word}" is used but not described`,
    why: 'It has no single meaning in the trade: makers would work different stitches and get different counts.',
    try:
      nearest === null
        ? `add it under special:, for example  ${word}: ${example}`
        : `write "${nearest}", which is described, or add ${word} under special:`,
  }),
  'phrase/unread': ({ words, expected }: Unread): Wording => ({
    severity: 'error',
    message: `"${words}" could not be read here`,
    why: 'What it asks for is not worked, so nothing after it on this row can be counted.',
    try:
      expected === null
        ? 'write it as a stitch and where it goes: "… in next 3 sts", "… in each st across".'
        : `here ${expected} was expected.`,
  }),
  'phrase/no-place': ({ word }: { readonly word: string }): Wording => ({
    severity: 'error',
    message: `after "${word}" there is no place to work into`,
    why: 'A stitch must say where it goes, or the next row does not fit.',
    try: 'say where: "next st", "next 3 sts", "each st across", "same st", "next ch-2 sp", "ring".',
  }),
  'repeat/no-stop': (): Wording => ({
    severity: 'error',
    message: 'this repeat does not say how often or how far',
    why: 'Makers would stop in different places.',
    try: 'end it with "rep from * across", "around", "5 more times" or "to last 2 sts".',
  }),
  'repeat/no-end': (): Wording => ({
    severity: 'error',
    message: 'a repeat begins at * but "rep from *" does not follow',
    why: 'It cannot be told what is to be repeated.',
    try: 'close it with "; rep from * across", or take the * away.',
  }),
  'repeat/no-start': (): Wording => ({
    severity: 'error',
    message: '"rep from *" has no * before it on this row',
    why: 'It cannot be told what is to be repeated.',
    try: 'put a * where the repeat begins.',
  }),
  'bracket/unclosed': ({ open }: { readonly open: string }): Wording => ({
    severity: 'error',
    message: `this "${open}" is never closed`,
    why: 'It cannot be told what belongs together.',
    try: 'close the bracket where the group or repeat ends.',
  }),
  'bracket/unopened': ({ close }: { readonly close: string }): Wording => ({
    severity: 'error',
    message: `this "${close}" closes a bracket that was never opened`,
    why: 'It cannot be told what belongs together.',
    try: 'open the bracket where the group or repeat begins, or take this one away.',
  }),
  'bracket/no-use': (): Wording => ({
    severity: 'error',
    message: 'these brackets say neither where nor how often',
    why: 'Brackets before a place put all of it into that place; brackets before a number repeat it.',
    try: 'follow them with a place ("in next ch-2 sp") or a number ("3 times").',
  }),
  'size/list-length': ({ given, sizes }: { readonly given: number; readonly sizes: number }): Wording => ({
    severity: 'error',
    message: `${given === 1 ? 'one number is' : `${given} numbers are`} given for ${sizes === 1 ? 'one size' : `${sizes} sizes`}`,
    why: 'Each size takes its own number from the list, in the order of the sizes.',
    try:
      sizes === 1
        ? 'give one number, or list the sizes under sizes:.'
        : `give ${sizes} numbers, such as "${sample(sizes)}", or one that holds for all.`,
  }),
  'yarn/unlisted': ({
    letter,
    listed,
  }: {
    readonly letter: string;
    readonly listed: readonly string[];
  }): Wording => ({
    severity: 'error',
    message: `yarn ${letter} is used but not listed`,
    why: 'It would be missing from the materials, and nobody could buy it.',
    try: listed.length === 0 ? `list it under yarn:.` : `list it under yarn:, or use ${listed.join(', ')}.`,
  }),
  'bracket/too-deep': ({ open, limit }: { readonly open: string; readonly limit: number }): Wording => ({
    severity: 'error',
    message: `this "${open}" stands inside ${limit} others, which is the most`,
    why: 'Nobody could follow a repeat in a repeat that deep, so it is not read.',
    try: 'write some of it out, or make a special stitch of the innermost.',
  }),
  'number/too-large': ({ number, limit }: { readonly number: string; readonly limit: number }): Wording => ({
    severity: 'error',
    message: `${number} is more than can be worked`,
    why: `No row, size or repeat may pass ${limit.toLocaleString('en')}.`,
    try: 'check the number.',
  }),
  'row/number-order': ({ from, to }: { readonly from: number; readonly to: number }): Wording => ({
    severity: 'error',
    message: `the range runs backwards, from ${from} to ${to}`,
    why: 'No row lies between them.',
    try: 'put the lower number first.',
  }),
  'row/empty': ({ label }: { readonly label: string }): Wording => ({
    severity: 'error',
    message: `${label} has no instructions`,
    why: 'The rows after it stand on it.',
    try: 'write what is worked, or take the label away.',
  }),
} as const;

interface UnknownWord {
  readonly word: string;
  readonly nearest: string | null;
}

interface UndefinedSpecial extends UnknownWord {
  /** A description that would do. */
  readonly example: string;
}

interface OtherTerms {
  readonly word: string;
  readonly terms: string;
  readonly other: string;
  /** What it names, in words of the pattern's own terms. */
  readonly name: string;
  /** What the pattern's own terms write for it. */
  readonly here: string;
}

interface Unread {
  readonly words: string;
  readonly expected: string | null;
}

function sample(sizes: number): string {
  const numbers = Array.from({ length: sizes }, (_, i) => 35 + 9 * i);
  return `${numbers[0]} (${numbers.slice(1).join(', ')})`;
}
