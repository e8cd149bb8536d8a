/** A designer's words for a stitch of her own in, the same told in stitches out: `(Yo, insert hook …) 3 times …` -> dc3tog. */

import { readPhrase } from '../notation/read.ts';
import type { Step } from '../notation/tree.ts';
import { fileOffset, type MappedText } from '../source/mapped-text.ts';
import type { Terms } from '../stitches/stitch-row.ts';
import { findStitch, STITCHES, stitchById, termsOf } from '../stitches/table.ts';
import { insertedText, joinTexts, sliceText, trimText } from './mapped-pieces.ts';
import { respelled } from './respelled.ts';

export interface DeriveContext {
  readonly terms: Terms;
  readonly sizes: number;
  /** Names of special stitches that are already told in stitches. */
  readonly specials: readonly string[];
}

export interface Derived {
  readonly work: MappedText;
  /** The words say how the hook moves, which the stitches do not. */
  readonly loses: boolean;
}

/** Null where the words do not come to stitches that are known. */
export function deriveWork(words: MappedText, context: DeriveContext): Derived | null {
  for (const candidate of candidatesIn(respelled(words))) {
    const direct = inStitches(candidate, context);
    if (direct !== null) return { work: direct, loses: false };
  }
  const moved = fromMovements(words.text, context.terms);
  if (moved === null) return null;
  const work = insertedText(moved, fileOffset(words, 0));
  return isWork(work, context) ? { work, loses: true } : null;
}

/** The whole, and what stands behind a colon, a dash, or within brackets. */
function candidatesIn(words: MappedText): MappedText[] {
  const { text } = words;
  const told = withCountsAtHook(words);
  const cuts: [number, number][] = [[0, text.length]];
  for (const found of text.matchAll(
    /[:=]\s*|\s[–—-]\s|,\s+(?=work|make|\d)|(?<=^[A-Za-z][A-Za-z -]{2,24})\.\s+/g,
  )) {
    // What stands before a comma may be the first half of the work.
    if (found[0].startsWith(',') && BEGINS_WORK.test(text)) continue;
    cuts.push([found.index + found[0].length, text.length]);
  }
  const bracketed = /^[^()]*\(([^()]+)\)\.?$/.exec(text);
  if (bracketed?.[1] !== undefined) {
    const start = text.indexOf('(') + 1;
    cuts.push([start, start + bracketed[1].length]);
  }
  // What it is like elsewhere is a word beside it, kept with the designer's own.
  const beside = BESIDE_WORK.exec(text);
  if (beside !== null) cuts.push([0, beside.index]);
  const candidates = cuts.slice(0, 7).map(([start, end]) => trimText(sliceText(words, start, end)));
  return told === null ? candidates : [told, ...candidates];
}

const COUNTED_LAST =
  /^([^()]*\d(?:nd|rd|th) ch from (?:the |your )?hook)([^()]*?)[.,;]?\s+\(?((?:the |these )?(?:\d+ )?(?:skipped|missed|unworked) (?:\d+ )?ch(?:ains?)? (?:do not |don['’]t )?(?:counts? as|stands? for) (?:the )?(?:1|one|an?)?(?: first)? ?[a-z]+)\b[^()]*\)?\.?$/i;

/** `dc in 4th ch from hook and in next 2 ch. (The 3 skipped ch count as a dc, …)`: what they count as, told behind the hook's chain; null where that is not said last. */
function withCountsAtHook(words: MappedText): MappedText | null {
  const [, hook, rest, counts] = COUNTED_LAST.exec(words.text) ?? [];
  if (hook === undefined || rest === undefined || counts === undefined) return null;
  const at = words.text.lastIndexOf(counts);
  const offset = fileOffset(words, hook.length);
  return joinTexts(
    [
      sliceText(words, 0, hook.length),
      insertedText(' (', offset),
      sliceText(words, at, at + counts.length),
      insertedText(')', offset),
      sliceText(words, hook.length, hook.length + rest.length),
    ],
    '',
  );
}

/** `(at the start of the row this is the ch 3 and 2 dc)` behind all else. */
const BESIDE_WORK = /\s+\((?:at the (?:start|beginning|end)|when|where|this|see|note)\b[^()]*\)\.?$/i;

const BEGINS_WORK = /^(?:(?:work|make)\s+)?(?:\d+\s*[a-z]|[([*]|(?:chs?|chains?|skip|sk|miss)\b)/i;

const PLACE =
  /\b(?:with\s+all\s+(?:\w+\s+)?(?:legs|loops|sts|stitches)\s+)?(?:all\s+)?(?:worked\s+)?(?:in|into)\s+(?:the\s+|a\s+)?(?:(?:same|next|one|indicated|specified|designated|stated|given|single)\s+)*(?:st|stitch|sp|space|place|ch-?sp)(?:\s*(?:or|\/)\s*(?:sp|space|st|stitch|ch-?\d*\s*sp))?(?:\s+(?:indicated|specified|stated|given|designated|noted|named))?\b/i;

/** Words that are themselves stitches and a place, once "work" before and "counts as" behind are taken off. */
function inStitches(words: MappedText, context: DeriveContext): MappedText | null {
  let start = /^(?:(?:to\s+)?(?:work|make|crochet)\s+)?/i.exec(words.text)?.[0].length ?? 0;
  let end = words.text.length;
  const sentence =
    /\.\s+(?=(?:this\s+)?(?:counts?|uses|makes|takes|does|not|is|made|complete|when|whenever|if|i|you|it|note|at the (?:beginning|start))\b|.{0,24}\b(?:made|completed?|(?:is|are) (?:not )?counted)\b)/i.exec(
      words.text,
    );
  if (sentence !== null) end = sentence.index;
  const where = AT_ROW_ENDS.exec(words.text.slice(start, end));
  if (where !== null) end = start + where.index;
  const aside =
    /(?:[,;]|\s[–-])?\s*\(?(?:[a-z-]+\s+(?:made|complete|completed)|counts? as [^()]*|not counted[^()]*)\)?\.?$/i.exec(
      words.text.slice(start, end),
    );
  // `sl st in last sc made`, `in the top of the dc just made`: a place.
  const isPlace = /\b(?:last|just|the) (?:[a-z] ?)?[a-z-]+ made\.?$|\bjust made\.?$/i.test(
    words.text.slice(start, end),
  );
  if (aside !== null && aside.index > 0 && !isPlace) end = start + aside.index;
  while (end > start && /[.,;\s]/.test(words.text.charAt(end - 1))) end -= 1;
  while (start < end && /\s/.test(words.text.charAt(start))) start += 1;
  const core = sliceText(words, start, end);
  if (core.text === '' || core.text.length > 160) return null;
  const placed = PLACE.exec(core.text);
  const said =
    placed !== null && placed.index + placed[0].length === core.text.length
      ? insertedPlace(core, placed.index)
      : core;
  const saysWhere = placed !== null || /\bin(?:to)?\b|\dtog\b|\btog(?:ether)?\b/i.test(core.text);
  const withPlace = saysWhere ? null : insertedPlace(core, core.text.length);
  if (withPlace !== null && isWork(withPlace, context)) return withPlace;
  return isWork(said, context) ? said : null;
}

/** `3 tr in same st at the beginning or end of a row`: where it is worked is told by the rows. */
const AT_ROW_ENDS =
  /,?\s+(?:worked\s+)?at\s+(?:(?:the|each|either|both)\s+)?(?:beginning|start|end)s?(?:\s+(?:or|and)\s+(?:(?:at\s+)?the\s+)?(?:beginning|start|end))?(?:\s+of\s+(?:a|the|each|every)\s+rows?)?\.?$/i;

function insertedPlace(core: MappedText, at: number): MappedText {
  const before = trimText(sliceText(core, 0, at));
  const offset = fileOffset(core, Math.max(0, at - 1)) + 1;
  return {
    text: `${before.text} in same st`,
    runs: [...before.runs, { at: before.text.length, offset }],
  };
}

/** It reads without a fault, and works something. */
function isWork(words: MappedText, { terms, sizes, specials }: DeriveContext): boolean {
  const { steps, diagnostics } = readPhrase(words, { file: '', terms, sizes, specials, yarns: [] });
  return diagnostics.length === 0 && steps.some(works) && steps.every(isOfStitch);
}

function works(step: Step): boolean {
  return step.kind === 'work' || step.kind === 'group' || step.kind === 'chain' || step.kind === 'square';
}

function isOfStitch(step: Step): boolean {
  if (step.kind === 'note') return /^working (?:in front of|behind)\b/i.test(step.text);
  return works(step) || step.kind === 'bracket' || step.kind === 'skip' || step.kind === 'join';
}

const TIMES: Readonly<Record<string, number>> = {
  once: 1,
  twice: 2,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
};

/** `(Yo, insert hook, yo, draw up a loop, yo, draw through 2 loops) 3 times, yo, draw through all 4 loops`. */
function fromMovements(text: string, terms: Terms): string | null {
  if (!/\binsert\b/i.test(text)) return null;
  const chain = /^\s*(?:ch|chain)\s*(\d)\b/i.exec(text)?.[1];
  const invisible =
    /front loops?\b/i.test(text) &&
    /\b(?:next|each of next|following)\s+(?:2|two)\b|\bof (?:2|two)\b|\bnext st\b.*\bnext st\b/i.test(text);
  if (invisible && !/\byo\b.*\binsert/i.test(text.slice(0, text.search(/\binsert\b/i) + 6)))
    return termsOf(stitchById('sc2tog'), terms).abbr;
  const popcorn = popcornIn(text, terms) ?? roundStem(text, terms);
  if (popcorn !== null) return popcorn;
  const repeated = legsIn(text);
  if (repeated === null) return null;
  const { body, times } = repeated;
  const wraps = wrapsBefore(body);
  const pairs = pairsIn(body.slice(body.search(/\binsert\b/i)));
  const leg =
    wraps === 0
      ? 'sc'
      : wraps === 1
        ? pairs === 0
          ? 'hdc'
          : 'dc'
        : STITCHES.find((row) => row.family === 'basic' && row.yarnOvers === wraps)?.id;
  const expected = leg === 'sc' || leg === 'hdc' ? 0 : wraps;
  if (leg === undefined || pairs !== expected) return null;
  // One leg begun on a chain is that stitch, whole.
  const id = times === 1 ? leg : `${leg}${times}tog`;
  const row = STITCHES.find((stitch) => stitch.id === id);
  if (row === undefined) return null;
  // Into the next stitch each time is a decrease; all into one is a cluster.
  const along = /\b(?:next|each of)\b/i.test(body) && !/\bsame\b/i.test(text);
  const stitch = along ? termsOf(row, terms).abbr : `${termsOf(row, terms).abbr} in same st`;
  return chain === undefined ? stitch : `ch ${chain}, ${stitch}`;
}

/** `insert the hook from back to front to back around the stem of the stitch and work a dc`: that stitch, raised. */
const ROUND_STEM =
  /\binsert (?:the )?hook from (?:(?:the )?(front|back)) to (?:(?:the )?(front|back)) to (?:(?:the )?(front|back)) a?round the (?:stem|post) of (?:the |a |next )*(?:st|stitch)(?: below)?,? (?:and )?(?:work|make|complete)s? (?:an? |1 )?([a-z ]+?)(?: as usual)?\.?$/i;

function roundStem(text: string, terms: Terms): string | null {
  const [, from, through, back, worked] = ROUND_STEM.exec(text.trim()) ?? [];
  if (from === undefined || through === from || back !== from) return null;
  const plain = stitchNamed(worked ?? '', terms);
  const raised = STITCHES.find(
    (stitch) => plain !== null && stitch.id === `${from.charAt(0).toLowerCase()}p${plain.id}`,
  );
  return raised === undefined ? null : `${termsOf(raised, terms).abbr} around same st`;
}

/** `4 dc in next st, drop loop from hook, insert hook in first of these 4 dc, draw dropped loop through, ch 1 to close`. */
const POPCORN =
  /\b(\d) ([a-z]+) in (?:the )?(?:same|next|one|indicated|specified) (?:st|stitch|sp|space)(?: indicated)?[,;.] (?:drop|remove|take)\b[^,;.]*[,;.] insert (?:the )?hook\b[^,;.]*\b(?:(?:first|1st)(?: of (?:the |these )?(\d))? ([a-z]+)|top of (?:the )?(?:beg(?:inning)? )?(?:ch[- ]?(\d)|(\d)[- ]?ch))\b[^,;.]*[,;.] (?:(?:pick up|catch|grab|place|put)\b[^,;.]*?(?:,| and) (?:then )?)?(?:draw|pull)\b[^,;.]*\bthrough\b(?: [a-z ]*)?(?:[,;] ch 1 to (?:close|secure|fasten)(?: \([^()]*\bnot count[^()]*\))?)?\.?$/i;

/** Whole stitches drawn together through the first of them; null where the numbers or the stitches do not agree. */
function popcornIn(text: string, terms: Terms): string | null {
  const [, n, legs, of, first, chain, chains] = POPCORN.exec(text.trim()) ?? [];
  const leg = legs === undefined ? null : stitchNamed(legs, terms);
  const whole = STITCHES.find((stitch) => leg !== null && stitch.id === `${leg.id}${n}-popcorn`);
  // Where a chain stands for the first of them the loop is drawn through its top.
  const begun = BEGUN_ON_CHAIN.exec(text.trim());
  const stands = begun?.[1] ?? begun?.[2];
  const agrees =
    stands === undefined
      ? leg === stitchNamed(first ?? '', terms) || /^st(?:itch)?$/i.test(first ?? '')
      : stands === (chain ?? chains);
  if (whole === undefined || !agrees || (of !== undefined && of !== n)) return null;
  const stitch = `${termsOf(whole, terms).abbr} in same st`;
  return stands === undefined ? stitch : `ch ${stands}, ${stitch}`;
}

/** `Ch 3 (counts as dc), `. */
const BEGUN_ON_CHAIN = /^(?:ch(?:ain)? ?(\d)|(\d) ?ch)(?: \([^()]*\))?, /i;

/** What is done at each place, and how often: the bracket around "insert", or what stands from `*` to "rep from *". */
function legsIn(text: string): { body: string; times: number } | null {
  const insert = text.search(/\binsert\b/i);
  const starred =
    /\brep(?:eat)?\s+from\s+\*\s+(\d|once|twice|two|three|four)(?:\s+more)?(?:\s+times?)?/i.exec(text);
  const star = text.lastIndexOf('*', insert);
  if (starred !== null && star !== -1) {
    const more = (starred[1] ?? '').toLowerCase();
    const times = (more === 'once' ? 1 : (TIMES[more] ?? Number(more))) + 1;
    return { body: text.slice(star + 1, starred.index), times };
  }
  const open = openedBefore(text, insert);
  const close = open === -1 ? -1 : closedAfter(text, open);
  if (close === -1) return null;
  const said =
    /^[)\]]\s*(?:x\s*)?(?:(\d|two|three|four|five|six|seven)(?:\s*(?:times|x))?|(twice|once))/i.exec(
      text.slice(close),
    );
  const word = (said?.[1] ?? said?.[2])?.toLowerCase();
  return word === undefined
    ? null
    : { body: text.slice(open + 1, close), times: TIMES[word] ?? Number(word) };
}

/** Index of the bracket that is open where the hook goes in, or -1. */
function openedBefore(text: string, index: number): number {
  let depth = 0;
  for (let at = index; at >= 0; at -= 1) {
    if (/[)\]]/.test(text.charAt(at))) depth += 1;
    if (/[([]/.test(text.charAt(at))) depth -= 1;
    if (depth < 0) return at;
  }
  return -1;
}

function closedAfter(text: string, open: number): number {
  let depth = 0;
  for (let at = open; at < text.length; at += 1) {
    if (/[([]/.test(text.charAt(at))) depth += 1;
    if (/[)\]]/.test(text.charAt(at))) depth -= 1;
    if (depth === 0) return at;
  }
  return -1;
}

/** How often two loops are drawn through: `yo, draw through 2 loops`, `[yo, draw through 2 lps] twice`. */
function pairsIn(text: string): number {
  const pair =
    /through\s+(?:first\s+)?(?:2|two)\s*(?:lps?|loops?)?\s*(?:on (?:the )?hook)?\s*[)\]]?,?\s*(?:(twice)|(\d)\s*times)?/gi;
  return [...text.matchAll(pair)].reduce(
    (sum, found) => sum + (found[1] !== undefined ? 2 : Number(found[2] ?? 1)),
    0,
  );
}

/** How often the yarn is wrapped before the hook goes in: `yo`, `yo twice`, `yarn over 2 times`, `yrh`. */
function wrapsBefore(text: string): number {
  const before = text.slice(0, text.search(/\binsert\b/i));
  const wrap =
    /\b(?:yo|yoh|yrh|yarn over|yarn round hook|wrap yarn)\b\s*(?:hook\s*)?(twice|\d(?=\s*times)|two times|three times)?/i.exec(
      before,
    );
  if (wrap === null) return 0;
  const count = wrap[1]?.toLowerCase();
  if (count === undefined) return 1;
  return TIMES[count.replace(/ times$/, '')] ?? Number(count);
}

/** The stitch of the table that words name, with brackets and plurals about them taken off. */
export function stitchNamed(words: string, terms: Terms): ReturnType<typeof findStitch> {
  const plain = words
    .replace(/\((?:s|es)\)/gi, '')
    .replace(/[.;,]+$/, '')
    .trim();
  return (
    findStitch(plain, terms) ??
    findStitch(plain.replace(/\s*\([^)]*\)\s*/g, ' ').trim(), terms) ??
    findStitch(plain.replace(/\s+(?:stitch|st)(?:es|s)?$/i, ''), terms)
  );
}
