/** Facts about the film a pattern names, and its times, in; the words of a fault out: one function per code. */

import type { Wording } from '../diagnostic.ts';
import { listed } from '../listed.ts';

export const filmFaults = {
  'film/address': ({ given, form }: { readonly given: string; readonly form: string }): Wording => ({
    severity: 'error',
    message: `"${given}" is not an address that a browser opens`,
    why: 'The link beside each row leads there, and what leads to the time is added behind it.',
    try: `write it whole, beginning with https:// and without a #, like  ${form}`,
  }),
  'film/at': ({ given }: { readonly given: string }): Wording => ({
    severity: 'error',
    message: `"${given}" does not say how an address leads to a time`,
    why: 'It is written behind the address of the film, with the seconds in the place of {seconds}.',
    try: 'write  at: "#t={seconds}"  or the form that the place your film stands at understands.',
  }),
  'film/time': ({ given, of }: { readonly given: string; readonly of: string }): Wording => ({
    severity: 'error',
    message: `"${given}" is not a time in a film`,
    why: `It could be taken for minutes or for seconds, and ${of} would begin in the wrong place.`,
    try: 'write minutes and seconds, or hours too, in quotes:  "4:10"  or  "1:04:10"',
  }),
  'film/no-part': ({ given, names, near }: NoPart): Wording => ({
    severity: 'error',
    message:
      given === null
        ? 'the times do not say which part their rows are of'
        : `there is no part "${given}" for these times`,
    why: 'Rows of different parts bear the same numbers.',
    try:
      near === null
        ? `put the rows under the name of their part: ${listed(
            names.map((name) => `${name}:`),
            'or',
          )}`
        : `write ${near}:`,
  }),
  'film/no-row': ({ given, part, size, first, last }: NoRow): Wording => ({
    severity: 'error',
    message: `${part} has no "${given}"${size === null ? '' : ` in size ${size}`}`,
    why: 'The link and the chapter would belong to no row.',
    try:
      first === null
        ? 'take the time out, or put it under topics: with words of your own.'
        : `name a row as the instructions number it, from ${first} to ${last}; what is no row goes under topics:`,
  }),
  'film/size': ({ given, names, near }: NoSize): Wording => ({
    severity: 'error',
    message: `there is no size ${given}`,
    why: 'Which row a number means in the film depends on the size that is made in it.',
    try: near === null ? `write one of ${listed(names, 'or')}.` : `write ${near}.`,
  }),
  'film/sizes-part': ({ row, where, sizes }: SizesPart): Wording => ({
    severity: 'error',
    message: `${row} is not the same in every size; ${where}`,
    why: 'Makers of some sizes would be led to a row that is not theirs.',
    try: `say which size you make in the film:  size: ${sizes[0] ?? ''}`,
  }),
  'film/order': ({ row, time, before, beforeTime }: Order): Wording => ({
    severity: 'warning',
    message: `${row} begins at ${time}, and ${before}, which is worked before it, at ${beforeTime}`,
    why: 'A chapter that begins before the one it follows is most often a figure mistyped.',
    try: 'check both times in the film.',
  }),
  'film/past-end': ({
    row,
    time,
    length,
  }: {
    readonly row: string;
    readonly time: string;
    readonly length: string;
  }): Wording => ({
    severity: 'warning',
    message: `${row} begins at ${time}, but the film ends at ${length}`,
    why: 'The link would show nothing, and a player refuses a chapter that ends before it begins.',
    try: 'check the time, and the length of the film.',
  }),
};

interface NoPart {
  readonly given: string | null;
  readonly names: readonly string[];
  readonly near: string | null;
}

interface NoRow {
  readonly given: string;
  readonly part: string;
  readonly size: string | null;
  readonly first: string | null;
  readonly last: string | null;
}

interface NoSize {
  readonly given: string;
  readonly names: readonly string[];
  readonly near: string | null;
}

interface SizesPart {
  readonly row: string;
  /** `size small has no Rnd 9`. */
  readonly where: string;
  readonly sizes: readonly string[];
}

interface Order {
  readonly row: string;
  readonly time: string;
  readonly before: string;
  readonly beforeTime: string;
}
