/** The rows of a pasted text as they were sorted in; its pieces of work, named and set onto one another, out. */

import { fileOffset, type MappedText } from '../source/mapped-text.ts';
import { joinSpans, type Span } from '../source/span.ts';
import { asksForOther, linesAsked, linesToMatch, type NamedLines, rowAsked } from './as-other-part.ts';
import { insertedText, joinTexts, sliceText } from './mapped-pieces.ts';
import { rowLabel } from './row-labels.ts';
import { rowsAsked, rowsWorked, withoutOwnName } from './rows-of-other-part.ts';
import type { PartDraft, WorkLine } from './sorted-lines.ts';
import type { Piece, TranscribedPart, TranscribedYarn } from './transcript.ts';

export interface PartsRead {
  readonly parts: readonly TranscribedPart[];
  readonly pieces: readonly Piece[];
  /** Letters of the yarns that headings name: `STEM (brown)`. */
  readonly ofHeadings: ReadonlySet<string>;
}

/** Titles end in what the thing is: `Marram Coaster`. */
const THINGS =
  /\b(square|hexagon|triangle|motif|blanket|afghan|throw|scarf|shawl|cowl|hat|beanie|mitten|mitts?|sock|slipper|coaster|basket|bag|pouch|washcloth|dishcloth|potholder|cushion|pillow|pad|trivet|mat|rug|flower|garland|bunting|bookmark|headband|collar|runner|doily|toy|ball|cosy|cozy|cardigan|jumper|sweater|top|vest|poncho|wrap|wreath)s?\b/gi;

export function readParts(
  drafts: readonly PartDraft[],
  title: string,
  yarns: readonly TranscribedYarn[],
): PartsRead {
  const parts: TranscribedPart[] = [];
  const pieces: Piece[] = [];
  const ofHeadings = new Set<string>();
  const sorted: NamedLines[] = [];
  for (const written of joinedDrafts(drafts)) {
    const draft = withOthers(written, sorted);
    const [first, last] = [draft.lines[0], draft.lines.at(-1)];
    if (first === undefined || last === undefined) continue;
    const yarn = draft.beside === null ? null : yarnNamed(draft.beside.words, yarns);
    const called = yarn === null ? (draft.beside?.name ?? draft.name) : draft.name;
    const name = freeName(called ?? (parts.length === 0 ? thingIn(title) : 'Piece'), parts);
    if (goesBeside(draft, parts.at(-1))) leaveTheRest(parts);
    const onto = ontoOf(draft, name, parts);
    const heading = draft.heading?.span ?? null;
    const span = joinSpans(heading ?? written.lines[0]?.span ?? first.span, last.span);
    const lines = withFirstRound(draft.lines).map((line) => withoutOwnName(lineText(line, yarns), name));
    if (yarn !== null && !saysYarn(draft)) {
      lines.unshift(insertedText(`With ${yarn}.`, (heading ?? first.span).start));
      ofHeadings.add(yarn);
    }
    parts.push({ name, make: draft.make, onto, lines, span });
    // `Body` on its `Ribbing`, both under `BACK`.
    const within =
      draft.within ?? (onto !== null && onto === sorted.at(-1)?.name ? sorted.at(-1)?.within : undefined);
    sorted.push(within === undefined ? { name, lines: draft.lines } : { name, within, lines: draft.lines });
    const onWhat = onto === null ? '' : `, onto ${onto}`;
    pieces.push({
      kind: 'part',
      span: heading ?? first.span,
      means: `${name}${draft.make > 1 ? `, make ${draft.make}` : ''}${onWhat}`,
    });
    for (const line of written.lines) pieces.push({ kind: 'row', span: line.span, means: name });
  }
  return { parts, pieces, ofHeadings };
}

/** A piece that begins or ends as another does has the other's rows; where it is not plain which, the words are read as work. */
function withOthers(draft: PartDraft, before: readonly NamedLines[]): PartDraft {
  const first = draft.lines.findIndex(
    (line) => line.kind !== 'note' || linesAsked(line.text, before) !== null,
  );
  const lines = draft.lines.flatMap((line, i): readonly WorkLine[] => {
    const asked = i === first ? linesAsked(line.text, before) : null;
    if (asked !== null)
      return asked.lines === null ? [{ ...line, kind: 'instruction' }] : [asNote(line), ...asked.lines];
    const matched = linesToMatch(line.text.text, before);
    if (matched !== null) return [asNote(line), ...matched];
    const row = rowAsked(line.text.text, before);
    const rows = line.number === null ? rowsWorked(line, before) : rowsAsked(line, before);
    if (rows !== null) return rows;
    if (row === null) return [line];
    const again = insertedText(`Repeat the last row ${row.again} more times.`, fileOffset(line.text, 0));
    return [asNote(line), row.line, { ...line, text: again, kind: 'instruction' }];
  });
  return { ...draft, lines };
}

function asNote(line: WorkLine): WorkLine {
  return { ...line, text: stopped(line.text), kind: 'note' };
}

/** A note without a full stop would go on in the line behind it. */
function stopped(words: MappedText): MappedText {
  if (/[.:!?]$/.test(words.text)) return words;
  return joinTexts([words, insertedText('.', fileOffset(words, words.text.length - 1) + 1)], '');
}

/** `brown`, `in brown`, `colour B`, `yarn B`: the letter of the yarn a heading names; null where it is none of the list. */
function yarnNamed(words: string, yarns: readonly TranscribedYarn[]): string | null {
  const plain = words
    .replace(/^(?:start(?:ing)?\s+)?(?:in|with|using)\s+/i, '')
    .replace(/^(?:yarn|colou?r)\s+(?=\S)|\s+(?:yarn|colou?r)$/gi, '')
    .toLowerCase();
  const found = yarns.filter(
    ({ letter, colour }) => letter.toLowerCase() === plain || colour?.toLowerCase() === plain,
  );
  return found.length === 1 ? (found[0]?.letter ?? null) : null;
}

/** Its first lines name a yarn themselves. */
function saysYarn({ lines }: PartDraft): boolean {
  const [first] = lines.filter(({ kind }) => kind !== 'note');
  return (
    first !== undefined &&
    /\b(?:[Ww]ith|[Uu]sing|[Jj]oin|[Aa]ttach)\s+(?:(?:yarn|colou?r)\s+)?(?:[A-Z]|MC|CC\d?)\b/.test(
      first.text.text.slice(0, 60),
    )
  );
}

/** Rows that go on counting under a heading are of the same piece: the heading is a word on the way. */
function joinedDrafts(drafts: readonly PartDraft[]): PartDraft[] {
  const joined: PartDraft[] = [];
  for (const [i, draft] of drafts.entries()) {
    const before = joined.at(-1);
    const opening = openingOf(draft);
    const reached = before === undefined ? 0 : reachedBy(before);
    const parts = opening !== undefined && partsHere(opening, before, drafts[i + 1]);
    const on = opening === undefined ? isNextRow(draft, before) : !parts && goesOn(opening, reached);
    const anew = asksForOther(draft.lines[0]?.text.text ?? '', joined);
    if (before !== undefined && draft.make === 1 && on && !anew) {
      const heading: WorkLine[] =
        draft.heading === null
          ? []
          : [
              { text: draft.heading.text, kind: 'note', number: null, span: draft.heading.span },
              ...forAllSizes(draft.heading),
            ];
      joined[joined.length - 1] = { ...before, lines: [...before.lines, ...heading, ...draft.lines] };
    } else joined.push(draft);
  }
  return joined;
}

function openingOf({ lines }: PartDraft): WorkLine | undefined {
  return lines.find(({ number }) => number !== null);
}

/** Two shoulders stand on one row: the first leaves stitches to the second, whose rows have the same numbers. */
function partsHere(opening: WorkLine, before: PartDraft | undefined, after: PartDraft | undefined): boolean {
  const first = before === undefined ? undefined : openingOf(before);
  const again = first?.number === opening.number && LEAVES_REST.test(first.text.text);
  const next = after === undefined ? undefined : openingOf(after)?.number;
  return again || (next === opening.number && LEAVES_REST.test(opening.text.text));
}

/** `Sides (both sizes)`: what a heading above it said of one size ends there. */
function forAllSizes({ text, span }: Pick<WorkLine, 'text' | 'span'>): WorkLine[] {
  const found = /\(((?:both|all) sizes)\)/i.exec(text.text);
  if (found?.[1] === undefined) return [];
  const at = found.index + 1;
  return [{ text: sliceText(text, at, at + found[1].length), kind: 'instruction', number: null, span }];
}

/** `Shape top:` and then `Next rnd:` with nothing but numberless rows, where the piece before is still on the hook. */
function isNextRow({ lines }: PartDraft, before: PartDraft | undefined): boolean {
  const [first, last] = [lines.find(({ kind }) => kind !== 'note'), before?.lines.at(-1)];
  if (first === undefined || last === undefined || /\bfasten(?:ed)? off\b/i.test(last.text.text))
    return false;
  // What leaves stitches to another piece is one of its own.
  if (lines.slice(0, 2).some(({ text }) => LEAVES_REST.test(text.text))) return false;
  return /^next (?:row|rnd|round)\b/i.test(first.text.text);
}

/** `Row 7` after row 6; `Rnds 7 (8, 9)-16 (18, 20)`, `Rnds 7-16 (8-18)` where some size has come to 8. */
function goesOn({ number, text }: WorkLine, reached: number): boolean {
  if (number === null || number <= 1) return false;
  const others = OTHER_SIZES.exec(text.text.slice(0, 60))?.[1]?.match(FIRST_NUMBERS) ?? [];
  return [number, ...others.map(Number)].includes(reached + 1);
}

const OTHER_SIZES = /^\D*\d+(?:\s*[–-]\s*\d+)?\s*\(([\d\s,:/–-]+)\)/;
/** Of `8-18, 9-20` those that a range begins with. */
const FIRST_NUMBERS = /(?<![\d–-])\d+/g;

/** The number its rows have come to; after rows that are counted from 1 a second time, theirs. */
function reachedBy({ lines }: PartDraft): number {
  let reached = 0;
  for (const line of lines) reached = Math.max(line.number === 1 ? 0 : reached, lastNumber(line));
  return reached;
}

/** The number a label ends with: 12 for `Rnds 5-12:`. */
function lastNumber(line: WorkLine): number {
  if (line.number === null) return 0;
  // `Round 1 – 6 dc into a magic ring` ends with 1.
  if (/^(?:row|rnd|round)\s+\d+\s+[–—-]\s+\d+\s*[^:.)\s\d]/i.test(line.text.text)) return line.number;
  const range = /^\D*\d+(?:st|nd|rd|th)?(?:\s*\([^)]*\))?\s*(?:[–-]|to|and)\s*(\d+)/.exec(
    line.text.text.slice(0, 60),
  )?.[1];
  return range === undefined ? line.number : Math.max(line.number, Number(range));
}

/** `Magic ring with 8 sc in it.` before `Rnd 2`: what goes into the ring is the first round. */
function withFirstRound(lines: readonly WorkLine[]): readonly WorkLine[] {
  const first = lines.findIndex(({ kind }) => kind !== 'note');
  const [line, next] = [lines[first], lines.slice(first + 1).find(({ kind }) => kind !== 'note')];
  const unit = /^(?:row|rnd|round)\b/i.exec(next?.text.text ?? '')?.[0];
  if (line?.kind !== 'instruction' || next?.number !== 2 || unit === undefined) return lines;
  if (!/^(?:magic|adjustable) (?:ring|circle|loop) with \d/i.test(line.text.text)) return lines;
  const text = joinTexts([insertedText(`${unit} 1: `, fileOffset(line.text, 0)), line.text], '');
  return lines.with(first, { ...line, text, number: 1 });
}

/** Words on the way stand as a note of the part, so that they keep their place among the rows. */
function lineText(written: WorkLine, yarns: readonly TranscribedYarn[]): MappedText {
  const line = { ...written, text: withoutStars(written.text) };
  if (line.kind !== 'note' || /^notes?\s*:/i.test(line.text.text)) return line.text;
  // `Change to White.` by itself is work where the list has a white.
  const colour = /^(?:change|switch) to (.+?)\.?$/i.exec(line.text.text)?.[1];
  if (colour !== undefined && yarnNamed(colour, yarns) !== null) return line.text;
  return joinTexts([insertedText('Note: ', fileOffset(line.text, 0)), line.text], '');
}

/** `** Work straight`, `56 htr. **`: stars that another piece is told to go on to, and no repeat. */
function withoutStars(words: MappedText): MappedText {
  const { text } = words;
  if (text.split('*').length !== 3) return words;
  const start = /^\*\*\s+/.exec(text)?.[0].length ?? 0;
  const end = /\s+\*\*$/.exec(text)?.index ?? text.length;
  return start === 0 && end === text.length ? words : sliceText(words, start, end);
}

const ONTO_NAME =
  /\b(?:border|edging|edge|trim|rim|ribbing|brim|cuff|collar|button band|band|finishing|joining|heading)\b/i;
/** `With right side facing, join A with sl st in any corner`: behind whatever is said of the pieces. */
const JOINS_FIRST =
  /^(?:with (?:rs|right side)(?: of (?:the )?[a-z]+)? facing,?\s*)?(?:re)?join\b[^.]*?\b(?:in|to) [a-z]/i;
/** `Fold Row 29 in half`: what is folded is the piece before. */
const FOLDED = /^fold\b.{0,40}\b(?:(?:row|rnd|round) \d+|(?:the )?last (?:row|rnd|round))\b/i;
/** The foundation of the piece before is no beginning: `join yarn in first ch of foundation chain`. */
const FROM_NOTHING =
  /\bmagic (?:ring|circle|loop)\b|\badjustable\b|\bMR\b|\bfsc\b|\bfdc\b|\bfhdc\b|(?<!\b(?:of|along|across|on|in|into) (?:the )?(?:row 1 |first row |(?:first|last|next|each)(?: of (?:next|the))?(?: \d+)? )?)\bfoundation\b|\bslip ?knot\b|\bto (?:form|make) (?:a )?ring\b|\b(?:join|joined)\b[^.]*\binto a ring\b|\ba multiple of\b|\binto ring\b|\bin ring\b/i;

/** A part that begins with no chain or ring of its own is worked onto the one before. */
function ontoOf(draft: PartDraft, name: string, parts: readonly TranscribedPart[]): string | null {
  const before = parts.at(-1);
  if (before === undefined) return null;
  const said = saidOnto(draft, parts);
  if (said !== null) return said;
  const worked = draft.lines.filter(({ kind }) => kind !== 'note');
  const opening = (worked.length > 0 ? worked : draft.lines).slice(0, 2).map(({ text }) => text.text);
  const [first = ''] = opening;
  if (BESIDE.test(first.slice(rowLabel(first)?.end ?? 0)) && before.onto !== null && leavesRest(before))
    return before.onto;
  if (opening.some((text) => FROM_NOTHING.test(text))) return null;
  // A chain by itself, longer than any that only turns.
  const chain = /^(?:with [^,]{1,20}, )?(?:ch|chain)\s*(\d+)|^(?:with [^,]{1,20}, )?(\d+)\s*ch\b/i.exec(
    draft.lines.find(({ kind }) => kind === 'instruction')?.text.text ?? '',
  );
  if (draft.lines[0]?.kind === 'instruction' && chain !== null && Number(chain[1] ?? chain[2]) > 5)
    return null;
  if (/(?:\d(?:nd|rd|th)|second|third|fourth) ch from hook/i.test(first)) return null;
  const joins = opening.some((text) =>
    /\b(?:re)?join\b.*\b(?:in|to|with)\b|\battach\b|\bwith (?:rs|right side) facing\b/i.test(text),
  );
  const goesOn = draft.lines
    .find(({ kind }) => kind !== 'note')
    ?.text.text.search(/^next (?:row|rnd|round)\b/i);
  const onHook =
    staysOnHook(before) || goesRoundOn(first, before) || leavesOf(draft, before) || goesAlong(first, before);
  const begins = draft.lines.find(({ kind }) => kind !== 'note')?.text.text ?? '';
  const joinsFirst = JOINS_FIRST.test(begins.slice(rowLabel(begins)?.end ?? 0));
  const folded = opening.some((text) => FOLDED.test(text));
  return joins || goesOn === 0 || ONTO_NAME.test(name) || onHook || folded || joinsFirst ? before.name : null;
}

/** `Miss 4 sts for underarm and rejoin yarn to next st`: beside the piece before, which is itself worked onto one. */
function goesBeside({ lines }: PartDraft, before: TranscribedPart | undefined): boolean {
  const first = lines.find(({ kind }) => kind !== 'note')?.text.text ?? '';
  return before !== undefined && before.onto !== null && BESIDE.test(first.slice(rowLabel(first)?.end ?? 0));
}

/** What the next piece is worked on the one before has left, though its first row turns without a word of it. */
function leaveTheRest(parts: TranscribedPart[]): void {
  const last = parts.at(-1);
  const at = last?.lines.findIndex(({ text }) => rowLabel(text)?.number === 1) ?? -1;
  const row = last?.lines[at];
  const turn = row?.text.search(/,\s*turn\b/i) ?? -1;
  if (last === undefined || row === undefined || turn < 0 || leavesRest(last)) return;
  const said = insertedText(', leaving remaining sts unworked', fileOffset(row, turn));
  const told = joinTexts([sliceText(row, 0, turn), said, sliceText(row, turn)], '');
  parts[parts.length - 1] = { ...last, lines: last.lines.with(at, told) };
}

/** `THE BORDER (on the panel only)`: the piece that its heading names. */
function saidOnto({ beside }: PartDraft, parts: readonly TranscribedPart[]): string | null {
  const named = /^(?:on|for|around|round)\s+(?:the\s+)?(.+?)(?:\s+only)?$/i
    .exec(beside?.words ?? '')?.[1]
    ?.toLowerCase();
  const found = parts.findLast(({ name }) => name.toLowerCase().replace(/^the /, '') === named);
  return found?.name ?? null;
}

/** `Row 1: Ch 1, hdc in first 10 sts, leave remaining sts unworked`: of the piece before, which is not fastened off. */
function leavesOf({ lines }: PartDraft, before: TranscribedPart): boolean {
  const first = lines.find(({ kind }) => kind !== 'note');
  return first !== undefined && LEAVES_REST.test(first.text.text) && !isOff(before);
}

/** `Rnd 1: Ch 1, sc in each row end around the cuff`, the rows before not fastened off. */
function goesAlong(first: string, before: TranscribedPart): boolean {
  return ROW_ENDS.test(first) && !isOff(before);
}

const ROW_ENDS = /\brow[- ]ends?\b|\b(?:ends?|edges?) of (?:each|every) row\b/i;

function isOff({ lines }: TranscribedPart): boolean {
  return /\b(?:fasten(?:ed)?|break|cut) (?:off|yarn)\b/i.test(lines.at(-1)?.text ?? '');
}

/** `Rnd 1: Working in back loops only, sc in each st around` with no ring, and the rounds before not fastened off. */
function goesRoundOn(first: string, { lines }: TranscribedPart): boolean {
  const rounds =
    /^(?:rnd|round)\s*1\b/i.test(first) && /\bin(?:to)?\b.*\beach\b.*\b(?:around|round)\b/i.test(first);
  return (
    rounds &&
    lines.some(({ text }) => /^(?:rnds?|rounds?)\b/i.test(text)) &&
    !lines.some(({ text }) => /\b(?:fasten(?:ed)?|break|cut) (?:off|yarn)\b/i.test(text))
  );
}

/** `Skip next 18 sts and join yarn`, `Join yarn in next st`: next to where the piece before stopped. */
const BESIDE =
  /^(?:next row: )?(?:with (?:rs|ws|right side|wrong side) facing,?\s*)?(?:(?:skip|sk|miss) (?:the )?(?:next|cent(?:re|er)|middle|following|\d+)\b.*\b(?:re)?join\b|(?:re)?join\b[^.]*\b(?:in(?:to)?|to) (?:the )?next\b)/i;

const LEAVES_REST =
  /\b(?:un-?worked|on these .{1,30}\bonly)\b|\bleav(?:e|ing) (?:the )?(?:rem(?:aining)?|rest|other)\b/i;

/** The second shoulder stands beside the first, whose first row left it its stitches. */
function leavesRest({ lines }: TranscribedPart): boolean {
  return lines.slice(0, 2).some(({ text }) => LEAVES_REST.test(text));
}

/** `Do not fasten off.` at its end, `Turn the seam to the inside.` behind it: what comes next goes on from it. */
function staysOnHook({ lines }: TranscribedPart): boolean {
  const end = lines.slice(-3).map(({ text }) => text);
  const said = end.findLastIndex((text) => STAYS.test(text));
  const behind = [
    (end[said] ?? '').replace(STAYS, ''),
    ...end.slice(said + 1).map((text) => text.replace(/^note: */i, '')),
  ];
  return said >= 0 && behind.every((text) => text === '' || TURNED.test(text));
}

/** To the end of its sentence, with what is said before it. */
const STAYS = /^.*\b(?:do not|don[’']t) (?:fasten off|(?:cut|break)(?: the)? yarn)\b[^.]*\.?\s*/i;
/** A sentence of how the piece is turned, in which nothing is worked. */
const TURNED = /^turn\b[^.]*\.?$/i;

function thingIn(title: string): string {
  const found = [...title.matchAll(THINGS)].at(-1)?.[0];
  return found === undefined ? 'Piece' : found.charAt(0).toUpperCase() + found.slice(1).toLowerCase();
}

/** Two parts of one name would have one address. */
function freeName(name: string, parts: readonly TranscribedPart[]): string {
  const address = (words: string): string =>
    words
      .trim()
      .toLowerCase()
      .replace(/[^\p{L}\p{N}]+/gu, '-');
  const taken = new Set(parts.map((part) => address(part.name)));
  let free = name;
  for (let n = 2; taken.has(address(free)); n += 1) free = `${name} ${n}`;
  return free;
}

export function partSpan(part: TranscribedPart): Span {
  return part.span;
}
