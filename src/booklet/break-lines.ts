/** Runs of text and a width in; out come the lines they make, broken at spaces, each piece with its place. */

import type { Face, Ink } from '../scene/scene.ts';

/** Width of a piece of text as it will be drawn, kerning included. */
export type MeasureText = (text: string, face: Face, sizeMm: number) => number;

export interface Run {
  readonly text: string;
  readonly face: Face;
  readonly ink?: Ink;
}

export interface LinePiece extends Run {
  readonly xMm: number;
}

export interface SetLine {
  /** It ends within a word that is too long for one. */
  readonly cut: boolean;
  readonly pieces: readonly LinePiece[];
  readonly widthMm: number;
}

/** A stretch without a break inside it: it may change face midway. */
interface Word {
  readonly runs: readonly Run[];
  readonly widthMm: number;
  /** More of the same word follows. */
  readonly cut?: boolean;
}

/** A last line narrower than this share of the measure, holding one word, takes another word down to it. */
const SHORT_LAST_LINE = 0.12;

/** Rounding of widths must not push out a word that just fits. */
const SLACK_MM = 0.005;

export function breakLines(
  runs: readonly Run[],
  sizeMm: number,
  widthMm: number,
  measure: MeasureText,
): SetLine[] {
  const lines: SetLine[] = [];
  for (const paragraph of splitAtNewlines(runs)) {
    const words = wordsOf(paragraph, sizeMm, measure).flatMap((word) =>
      word.widthMm > widthMm + SLACK_MM ? cutWord(word, sizeMm, widthMm, measure) : [word],
    );
    for (const line of fillLines(words, sizeMm, widthMm, measure)) lines.push(setLine(line, sizeMm, measure));
  }
  return lines;
}

/** Width of runs set on one line. */
export function runsWidth(runs: readonly Run[], sizeMm: number, measure: MeasureText): number {
  return runs.reduce((sum, run) => sum + measure(run.text, run.face, sizeMm), 0);
}

function splitAtNewlines(runs: readonly Run[]): Run[][] {
  const paragraphs: Run[][] = [[]];
  for (const run of runs) {
    if (!run.text.includes('\n')) {
      if (run.text !== '') paragraphs.at(-1)?.push(run);
      continue;
    }
    run.text.split(/\r?\n/).forEach((text, index) => {
      if (index > 0) paragraphs.push([]);
      if (text) paragraphs.at(-1)?.push({ ...run, text });
    });
  }
  return paragraphs.filter((paragraph) => paragraph.some((run) => run.text.trim()));
}

/** Words between breaking spaces; a no-break space stays inside its word and is drawn as a plain space. */
function wordsOf(runs: readonly Run[], sizeMm: number, measure: MeasureText): Word[] {
  const words: Run[][] = [];
  let open = false;
  for (const run of runs) {
    const text = run.text.replace(BREAKING, ' ');
    for (const [index, bit] of text.split(' ').entries()) {
      // Before every bit but the first there was a space.
      if (index > 0) open = false;
      if (bit === '') continue;
      const piece = { ...run, text: drawn(bit) };
      if (open) words.at(-1)?.push(piece);
      else words.push([piece]);
      open = true;
    }
  }
  return words.map((bits) => ({ runs: bits, widthMm: runsWidth(bits, sizeMm, measure) }));
}

const BREAKING = /[\t\u200b]/g;

/** No-break signs as the fonts have them; a soft hyphen is not drawn, since words are not broken at it. */
function drawn(text: string): string {
  if (!NOT_DRAWN.test(text)) return text;
  return text
    .replace(/[\u00a0\u202f]/g, ' ')
    .replace(/\u2011/g, '-')
    .replace(/\u00ad/g, '');
}

const NOT_DRAWN = /[\u00a0\u00ad\u202f\u2011]/;

/** A word wider than the measure, cut between characters, after a hyphen, slash or comma where one is near. */
function cutWord(word: Word, sizeMm: number, widthMm: number, measure: MeasureText): Word[] {
  const characters = word.runs.flatMap((run) =>
    [...new Intl.Segmenter('en', { granularity: 'grapheme' }).segment(run.text)].map(({ segment }) => ({
      ...run,
      text: segment,
    })),
  );
  const cut: Word[] = [];
  let from = 0;
  while (from < characters.length) {
    let end = from + 1;
    let width = runsWidth(characters.slice(from, end), sizeMm, measure);
    for (; end < characters.length; end += 1) {
      const next = characters[end];
      if (!next) break;
      width += measure(next.text, next.face, sizeMm);
      if (width > widthMm) break;
    }
    if (end < characters.length) end = goodBreak(characters, from, end);
    const runs = joinRuns(hyphenated(characters.slice(from, end), characters[end]));
    cut.push({ runs, widthMm: runsWidth(runs, sizeMm, measure), cut: end < characters.length });
    from = end;
  }
  return cut;
}

/** A hyphen where a cut falls between two letters; room for it is kept by `goodBreak`. */
function hyphenated(piece: readonly Run[], next: Run | undefined): Run[] {
  const last = piece.at(-1);
  if (!last || !next || !LETTER.test(last.text) || !LETTER.test(next.text)) return [...piece];
  return [...piece.slice(0, -1), { ...last, text: `${last.text}-` }];
}

const LETTER = /^\p{L}/u;

function goodBreak(characters: readonly Run[], from: number, end: number): number {
  for (let at = end; at > from + (end - from) / 2; at -= 1) {
    if (/[-–—/,;.:_ ]/.test(characters[at - 1]?.text ?? '')) return at;
  }
  // One character goes over to make room for a hyphen.
  return end - from > 2 ? end - 1 : end;
}

function fillLines(words: readonly Word[], sizeMm: number, widthMm: number, measure: MeasureText): Word[][] {
  const lines: Word[][] = [];
  let line: Word[] = [];
  let used = 0;
  for (const word of words) {
    const space = line.length ? spaceAfter(line, sizeMm, measure) : 0;
    if (line.length && used + space + word.widthMm > widthMm + SLACK_MM) {
      lines.push(line);
      line = [word];
      used = word.widthMm;
    } else {
      line.push(word);
      used += space + word.widthMm;
    }
  }
  if (line.length) lines.push(line);
  return mendLastLine(lines, sizeMm, widthMm, measure);
}

/** One short word left alone on the last line looks lost: give it company when the line above can spare it. */
function mendLastLine(lines: Word[][], sizeMm: number, widthMm: number, measure: MeasureText): Word[][] {
  const last = lines.at(-1);
  const above = lines.at(-2);
  const only = last?.[0];
  const moved = above?.at(-1);
  if (!last || !above || !only || !moved || last.length > 1 || above.length < 4) return lines;
  const joined = moved.widthMm + spaceAfter([moved], sizeMm, measure) + only.widthMm;
  if (only.widthMm > widthMm * SHORT_LAST_LINE || joined > widthMm / 2) return lines;
  return [...lines.slice(0, -2), above.slice(0, -1), [moved, only]];
}

function spaceAfter(line: readonly Word[], sizeMm: number, measure: MeasureText): number {
  return measure(' ', line.at(-1)?.runs.at(-1)?.face ?? 'text', sizeMm);
}

function setLine(words: readonly Word[], sizeMm: number, measure: MeasureText): SetLine {
  const pieces: LinePiece[] = [];
  let xMm = 0;
  let open: Run | null = null;
  let text = '';
  // Neighbours of one face and ink are one piece.
  const close = (): void => {
    if (open === null) return;
    pieces.push({ ...open, text, xMm });
    xMm += measure(text, open.face, sizeMm);
  };
  for (const [index, { runs }] of words.entries()) {
    for (const run of runs) {
      if (open === null || run.face !== open.face || run.ink !== open.ink) {
        close();
        open = run;
        text = '';
      }
      text += run.text;
    }
    if (index < words.length - 1) text += ' ';
  }
  close();
  return { pieces, widthMm: xMm, cut: words.at(-1)?.cut ?? false };
}

/** Neighbours of one face and ink made one, so that a line is drawn in as few pieces as can be. */
function joinRuns(runs: readonly Run[]): Run[] {
  const joined: Run[] = [];
  for (const run of runs) {
    const last = joined.at(-1);
    if (last && last.face === run.face && last.ink === run.ink)
      joined[joined.length - 1] = { ...last, text: last.text + run.text };
    else joined.push(run);
  }
  return joined;
}
