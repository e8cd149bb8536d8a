/** What a pasted text leaves for its designer to settle in, the words of a fault out. */

import type { Diagnostic, Wording } from '../diagnostics/diagnostic.ts';
import type { Span } from '../source/span.ts';

const textFaults = {
  'text/no-rows': (): Wording => ({
    severity: 'error',
    message: 'no instructions were found in this text',
    why: 'A pattern needs rows or rounds to work and count.',
    try: 'begin each row with its label, such as "Row 1:" or "Rnd 1:".',
  }),
  'text/not-worked': (): Wording => ({
    severity: 'error',
    message: 'this reads like work, but could not be made out, and is not worked',
    why: 'The rows after it are counted as if it were not there.',
    try: 'begin it with its label ("Rnd 3:"), and write each row on a line of its own.',
  }),
  'text/assembly': (): Wording => ({
    severity: 'note',
    message: 'this joins what is worked; it is kept as it stands, and not worked',
    why: 'Its stitches are in no count, no chart and no reckoning of yarn.',
    try: 'go through it yourself: how many stitches meet, and on which side.',
  }),
  'text/terms-untold': ({ assumed }: { readonly assumed: string }): Wording => ({
    severity: 'warning',
    message: `nothing tells whether this text is in US or UK terms; it was read in ${assumed} terms`,
    why: 'The same letters name different stitches in the two, so the piece could come out another height.',
    try: 'write "US terms" or "UK terms" near the title.',
  }),
  'text/terms-mixed': ({ word, terms }: { readonly word: string; readonly terms: string }): Wording => ({
    severity: 'warning',
    message: `"${word}" is not a word of ${terms} terms, in which this text was read`,
    why: 'A maker would not know which of the two is meant.',
    try: 'use the words of one, and state which near the title.',
  }),
  'text/special-unread': ({ name }: { readonly name: string }): Wording => ({
    severity: 'error',
    message: `${name} is described, but not in stitches that could be counted`,
    why: 'Rows that use it cannot be worked or counted.',
    try: `say what it is in stitches, such as "${name}: 5 dc in same st".`,
  }),
  'text/abbreviation': ({
    abbr,
    here,
    usual,
  }: {
    readonly abbr: string;
    readonly here: string;
    readonly usual: string;
  }): Wording => ({
    severity: 'warning',
    message: `${abbr} is explained as "${here}"; it was read as ${usual}`,
    why: 'A row that means the other would be worked in the wrong stitch.',
    try: 'choose an abbreviation that has no other meaning, or correct the explanation.',
  }),
  'text/abbreviation-unused': ({ abbr }: { readonly abbr: string }): Wording => ({
    severity: 'note',
    message: `${abbr} is in the list of abbreviations, but nothing uses it`,
    why: 'Readers look for what they are told they will need.',
    try: 'take it out of the list, unless you keep one list for all your patterns.',
  }),
  'text/abbreviation-unlisted': ({ abbrs, everyday }: Unlisted): Wording => ({
    severity: everyday ? 'note' : 'warning',
    message: `the rows use ${listed(abbrs)}, which the list of abbreviations leaves out`,
    why: 'A reader who does not know it looks it up there.',
    try: 'add what is missing to the list.',
  }),
  'text/sizes-unnamed': ({ sizes }: { readonly sizes: number }): Wording => ({
    severity: 'warning',
    message: `numbers are given for ${sizes} sizes, and the sizes are not named`,
    why: 'A reader could not tell which number is hers.',
    try: 'name them near the top, such as "Sizes: small (medium, large)".',
  }),
  'text/colours': ({ said, listed }: { readonly said: number; readonly listed: number }): Wording => ({
    severity: 'warning',
    message: `${said} colours are said to be needed, and ${listed} are listed`,
    why: 'A reader buys what is listed, and would stop for want of a colour.',
    try: 'list each colour with its letter, or put the number right.',
  }),
  'text/note-against-rows': ({ verb }: { readonly verb: 'turn' | 'join' }): Wording => ({
    severity: 'warning',
    message: `a note says not to ${verb}, but this row does`,
    why: 'A maker who keeps to the note works every row after it otherwise than one who keeps to the rows.',
    try: `take it out of the note or out of the rows, or name the rows that ${verb}.`,
  }),
  'text/stripes': ({ stripes, other, of }: StripeFacts): Wording => ({
    severity: 'warning',
    message: `the stripes come to ${stripes} rows, but ${of === 'piece' ? `the piece has ${other}` : of === 'all' ? `${other} are said to be worked in all` : `${other} are said to be repeated`}`,
    why: 'A maker who keeps to the stripes stops at another row than one who keeps to the numbers.',
    try: 'count the rows of each stripe, and how often they come again.',
  }),
  'text/hook': ({ read, also }: { readonly read: string; readonly also: string }): Wording => ({
    severity: 'warning',
    message: `the hook was read as ${read}, and ${also} is named as well`,
    why: 'Another hook makes another size.',
    try: 'name one hook for the pattern; a second one is told in the notes.',
  }),
} as const;

interface StripeFacts {
  readonly stripes: number;
  readonly other: number;
  /** What the other number is said of. */
  readonly of: 'repeat' | 'all' | 'piece';
}

interface Unlisted {
  readonly abbrs: readonly string[];
  /** No reader of any pattern is stopped by them: `rnd`, `rep`, `sl st`. */
  readonly everyday: boolean;
}

function listed(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}

type TextFaults = typeof textFaults;
export type TextFaultCode = keyof TextFaults;
type Facts<C extends TextFaultCode> =
  Parameters<TextFaults[C]> extends readonly [infer F] ? F : Record<string, never>;
type Catalogue = { readonly [C in TextFaultCode]: (facts: Facts<C>) => Wording };

const catalogue: Catalogue = textFaults;

export function textFault<C extends TextFaultCode>(
  code: C,
  file: string,
  span: Span,
  facts: Facts<C>,
): Diagnostic {
  return { code, ...catalogue[code](facts), file, span, labels: [], sizes: [] };
}
