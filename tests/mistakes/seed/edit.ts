/** One mistake in one place: what is taken out of the file, what is put there, and which kind of mistake it is. */

export const KINDS = [
  'a number one too many',
  'a number one too few',
  'an ordinal one off',
  'another number skipped',
  'a repeat stops elsewhere',
  'a repeat goes once more or less',
  'a corner lost',
  'another stitch',
  'a join dropped',
  'a turn dropped',
  'a stated count one off',
  'a row numbered wrong',
  'another row repeated',
  'a phrase dropped',
  'a phrase doubled',
  'another multiple',
  'another of the yarns',
  'a yarn that is not there',
  'another place',
  'another loop or post',
] as const;
export type Kind = (typeof KINDS)[number];

export interface Edit {
  readonly kind: Kind;
  /** Offsets in the file. */
  readonly start: number;
  readonly end: number;
  readonly put: string;
}

export function applyEdit(text: string, { start, end, put }: Edit): string {
  return text.slice(0, start) + put + text.slice(end);
}
