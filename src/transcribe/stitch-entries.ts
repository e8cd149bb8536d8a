/** Lines of abbreviations or special stitches in, each abbreviation with its words out. */

import type { MappedText } from '../source/mapped-text.ts';
import { fileSpan } from '../source/mapped-text.ts';
import { joinSpans, type Span } from '../source/span.ts';
import { abbreviationTerms, findAbbreviation } from '../stitches/abbreviations.ts';
import type { Terms } from '../stitches/stitch-row.ts';
import { findStitch } from '../stitches/table.ts';
import { stitchNamed } from './derive-work.ts';
import { listedTogether } from './listed-together.ts';
import { sliceText, trimText } from './mapped-pieces.ts';
import type { Item } from './sorted-lines.ts';

export interface StitchEntry {
  /** As the rows use it: `sh`. */
  readonly name: string;
  /** A second name given with it: `shell`. */
  readonly fullName: string | null;
  readonly words: MappedText;
  readonly span: Span;
  /** The whole entry as it stands. */
  readonly whole: string;
}

export interface EntriesRead {
  readonly entries: readonly StitchEntry[];
  /** Lines in which no abbreviation is explained. */
  readonly rest: readonly Item[];
}

/** `several` where a line may explain more than one, as a list of abbreviations does. */
export function readEntries(items: readonly Item[], terms: Terms, several: boolean): EntriesRead {
  const entries: StitchEntry[] = [];
  const rest: Item[] = [];
  let named: { name: MappedText; item: Item } | null = null;
  for (const item of items) {
    const together = several && item.cells.length < 2 ? listedTogether(item.text, terms) : null;
    if (together !== null) {
      for (const { name, words } of together) entries.push(entryOf(name, words, item, name.text));
      continue;
    }
    // `ch: chain | dc: double crochet`: strokes between entries, not between a name and its words.
    const listed =
      several && item.cells.length > 1 && item.cells.every(({ text }) => ENTRY_IN_CELL.test(text));
    const pieces = listed ? item.cells : several ? splitList(item.text) : [item.text];
    const found =
      item.cells.length > 1 && !listed
        ? [cellsEntry(item)]
        : pieces.map((piece) => entryIn(piece, terms, item, several));
    const read = found.filter((entry) => entry !== null);
    if (read.length > 0) {
      // A list of names alone, such as "ch, sc, dc", says nothing that needs keeping.
      entries.push(...read);
      if (named !== null) rest.push(named.item);
      for (const [i, entry] of found.entries()) {
        const text = pieces[i] ?? item.text;
        if (entry === null) rest.push({ ...item, text, span: fileSpan(text, 0, text.text.length) });
      }
      named = null;
      continue;
    }
    if (named !== null) {
      const whole = `${named.item.text.text}: ${item.text.text}`;
      const entry = entryOf(named.name, item.text, named.item, whole);
      entries.push({ ...entry, span: joinSpans(named.item.span, item.span) });
      named = null;
      continue;
    }
    // A name on a line of its own, explained on the next.
    if (!several && item.text.text.split(' ').length <= 5 && !/[.;,]$/.test(item.text.text))
      named = { name: item.text, item };
    else rest.push(item);
  }
  if (named !== null) rest.push(named.item);
  return { entries, rest };
}

const ENTRY_IN_CELL = /^[^:=]{1,20}\s*[:=]\s*\S/;

/** `ch chain, ss slip stitch, dc double crochet`: a list of abbreviations, whatever stands above it. */
export function listsAbbreviations(text: MappedText): boolean {
  const pieces = splitList(text);
  const plain = pieces.filter((piece) => explainsItself(piece.text));
  return plain.length >= FEWEST_LISTED && plain.length * 3 >= pieces.length * 2;
}

const FEWEST_LISTED = 4;

/** `sl st slip stitch`, `sk skip`: an abbreviation of the trade with its own full name behind it, in either terms. */
export function explainsItself(text: string): boolean {
  // `Ch—chain`, as old books set it.
  const words = text
    .toLowerCase()
    .replace(/\.$/, '')
    .split(/(?<=\S)—(?=\S)| /);
  return [1, 2].some((length) => {
    const abbr = words.slice(0, length).join(' ');
    const meaning = words.slice(length).join(' ');
    return meaning !== '' && meaning !== abbr && BOTH_TERMS.some((terms) => isMeant(abbr, meaning, terms));
  });
}

const BOTH_TERMS: readonly Terms[] = ['US', 'UK'];

function isMeant(abbr: string, meaning: string, terms: Terms): boolean {
  const stitch = findStitch(abbr, terms);
  if (stitch !== null) return findStitch(meaning, terms) === stitch;
  const found = findAbbreviation(abbr, terms);
  return found !== null && abbreviationTerms(found, terms).meaning === meaning;
}

/** `ch = chain, sc = single crochet; sl st = slip stitch`. */
function splitList(whole: MappedText): MappedText[] {
  // `…; M, main. British terms.`: a sentence of its own, read where the terms are.
  const behind = /(?<=[a-z])\.\s+\p{Lu}[^.,;:=]*\bterms?\b[^.,;:=]*\.?$/u.exec(whole.text);
  const text = behind === null ? whole : sliceText(whole, 0, behind.index);
  // `ch, chain; dc, double crochet`: a comma within each, a semicolon between them.
  const parts = text.text.split(';');
  if (
    parts.length > 1 &&
    parts.every((part) => /^\s*[^\s,=:]{1,12}(?: [^\s,=:]{1,8})?,\s/.test(part) || part.trim() === '')
  )
    return cutAt(text, /;\s*/g);
  // The bracket of `st(s)` parts nothing.
  const marks = text.text.match(/(?:=|:|\S—\S|\s[–—-]\s|\((?!e?s\)))/g)?.length ?? 0;
  if (marks > 1) {
    const listed = cutAt(
      text,
      /[;,•]\s*(?=[A-Za-z0-9][^=:;,()]{0,22}(?:\([a-z]{1,3}\))?\s*(?:=|:|(?<=\S)—(?=\S)|\s[–—-]\s|\()|(?![^=:;,()]*\bin(?:to)? (?:the |each |next |same |\d))[A-Za-z][^=:;,()]{0,40}\s\()|\.\s+(?=[A-Za-z][^=:;,.]{0,16}\s*=)/g,
    );
    // `ch = chain   dc = double crochet`: nothing but blanks between them.
    const apart = listed.length > 1 || /[;,•]/.test(text.text) ? listed : cutAt(text, BEFORE_ENTRY);
    return apart.flatMap((piece) => (LISTS_NAMES.test(piece.text) ? namesApart(piece) : [piece]));
  }
  // `ch chain; dc double crochet; tr treble`.
  if (marks === 0 && parts.length > 2) return cutAt(text, /;\s*/g);
  // `ch chain, ss slip stitch, dc double crochet`.
  if (marks === 0) {
    const listed = cutAt(text, /,\s*/g);
    if (listed.length >= FEWEST_LISTED && listed.every((piece) => explainsItself(piece.text))) return listed;
  }
  // `ch chain // sl st slip stitch`.
  if (text.text.split(' // ').length > 2) return cutAt(text, / \/\/ /g);
  // `ch chain / sl st slip stitch`.
  if (text.text.split(' / ').length > 2) return cutAt(text, / \/ /g);
  // `ch chain, sl st slip stitch`: a comma between them, each known by its first word.
  const known = text.text.split(/,\s*/);
  if (marks === 0 && known.length > 2 && known.every((one) => / /.test(one.trim()) && !/\s\S*\d/.test(one)))
    return cutAt(text, /,\s*/g);
  const isNames = /^[^=:.]+$/.test(text.text) && text.text.split(',').length > 2;
  return isNames ? cutAt(text, /,\s*(?:and\s+)?/g) : [text];
}

const BEFORE_ENTRY = /\s+(?=(?:sl st|[^\s=]{1,10})\s*=\s)/g;

/** `ch, sl st, hdc` before the first that is explained: names that every maker knows; others stay together. */
const LISTS_NAMES = /^[^=:()–—]+,[^=:()–—]+$/;
function namesApart(piece: MappedText): readonly MappedText[] {
  const names = cutAt(piece, /,\s*(?:and\s+)?/g);
  const known = ({ text }: MappedText): boolean =>
    BOTH_TERMS.some((terms) => findStitch(text, terms) !== null || findAbbreviation(text, terms) !== null);
  return names.length > 1 && names.every(known) ? names : [piece];
}

function cutAt(text: MappedText, separator: RegExp): MappedText[] {
  const pieces: MappedText[] = [];
  let start = 0;
  for (const found of text.text.matchAll(separator)) {
    pieces.push(trimText(sliceText(text, start, found.index)));
    start = found.index + found[0].length;
  }
  pieces.push(trimText(sliceText(text, start)));
  return pieces.filter(({ text: words }) => words !== '');
}

function cellsEntry(item: Item): StitchEntry | null {
  const [first, second] = item.cells;
  return first === undefined || second === undefined
    ? null
    : entryOf(
        first,
        second,
        item,
        `${first.text} = ${item.cells
          .slice(1)
          .map(({ text }) => text)
          .join(' ')}`,
      );
}

function entryIn(text: MappedText, terms: Terms, item: Item, several: boolean): StitchEntry | null {
  // `p ........ picot`: dots lead from the name to its words.
  const led = /^([^.…]{1,24}?)\s*(?:\.{3,}|…+)\s*(?=\S)/.exec(text.text);
  if (led?.[1] !== undefined)
    return entryOf(sliceText(text, 0, led[1].length), sliceText(text, led[0].length), item, text.text);
  // `ch- chain`, `st(s)-stitch(es)` beside the usual marks.
  const found = /^(.{1,44}?)\s*(?:=|:|–|—|\s-\s|-\s|(?<=\))-(?=[a-z]))\s*(?=\S)/.exec(text.text);
  if (
    found?.[1] !== undefined &&
    found[1].split(' ').length <= 6 &&
    !/[.;,*]/.test(found[1].replace(/\.$/, ''))
  ) {
    return entryOf(
      trimText(sliceText(text, 0, found[1].length)),
      sliceText(text, found[0].length),
      item,
      text.text,
    );
  }
  if (!several) return null;
  // `p., picot`: an abbreviation of her own with its stop, in a list of such.
  const stopped = /^([a-z]{1,6})\.,\s+(?=[a-z]{3})/i.exec(text.text);
  if (stopped?.[1] !== undefined)
    return entryOf(
      sliceText(text, 0, stopped[1].length),
      sliceText(text, stopped[0].length),
      item,
      text.text,
    );
  // `half double crochet 2 together (hdc2tog)`: a name that begins as a shorter one does.
  const whole = /^([^()]{4,44}?)\s+\(([^()]{2,12})\)\.?$/.exec(text.text);
  if (whole?.[1] !== undefined && whole[2] !== undefined && stitchNamed(whole[1], terms) !== null) {
    const at = text.text.indexOf('(') + 1;
    const own = sliceText(text, at, at + whole[2].length);
    return entryOf(own, sliceText(text, 0, whole[1].length), item, text.text);
  }
  // `ch(s) chain(s)`, `sl st slip stitch`: the abbreviation is known, and its words follow.
  const words = text.text.split(' ');
  for (const length of [3, 2, 1]) {
    const abbr = words
      .slice(0, length)
      .join(' ')
      .replace(/\((?:s|es)\)/gi, '')
      .replace(/,$/, '');
    if (
      words.length < length ||
      (stitchNamed(abbr, terms) === null && findAbbreviation(abbr, terms) === null)
    )
      continue;
    const at = words.slice(0, length).join(' ').length;
    const rest = withoutComma(trimText(sliceText(text, at)));
    const bracketed = /^\((.*)\)\.?$/.exec(rest.text);
    const meaning = bracketed?.[1] === undefined ? rest : sliceText(rest, 1, 1 + bracketed[1].length);
    return entryOf(sliceText(text, 0, at), meaning, item, text.text);
  }
  // `shell, 2 tr, 2 ch and 2 tr all into the same place`: a name, and behind the comma what is worked.
  const worked = /^([a-z][a-z-]{1,15}),\s+(?=\d\s|\()/i.exec(text.text);
  if (worked?.[1] !== undefined)
    return entryOf(sliceText(text, 0, worked[1].length), sliceText(text, worked[0].length), item, text.text);
  const bracketed = /^([^()]{1,24}?)\s*\(([^()]{2,60})\)\.?$/.exec(text.text);
  if (bracketed?.[1] === undefined || bracketed[2] === undefined) return null;
  const at = text.text.indexOf('(') + 1;
  return entryOf(
    sliceText(text, 0, bracketed[1].length),
    sliceText(text, at, at + bracketed[2].length),
    item,
    text.text,
  );
}

function withoutComma(text: MappedText): MappedText {
  return text.text.startsWith(',') ? trimText(sliceText(text, 1)) : text;
}

/** `Shell (sh)`, `sh (shell)`, `ch(s)`, `sk / skip`: the name and the second one. */
function entryOf(left: MappedText, words: MappedText, item: Item, whole: string): StitchEntry {
  const plain = left.text
    // `To make a picot: …`.
    .replace(/^to (?:make|work) (?:an?|the) /i, '')
    .replace(/\((?:s|es)\)|\/(?:s|es)\b/gi, '')
    .replace(/[:.,]+$/, '')
    .trim();
  const both = /^(.+?)\s*[([]\s*([^()]+?)\s*[)\]]\s*$/.exec(plain) ?? /^(\S+)\s*\/\s*(\S+)$/.exec(plain);
  const [, one, second] = both ?? [];
  // `V (or Vst)`.
  const two = second?.replace(/^or\s+/i, '');
  const last = Math.max(words.text.length, 1);
  const span =
    left === item.text ? item.span : { start: fileSpan(left, 0, 1).start, end: fileSpan(words, 0, last).end };
  if (one === undefined || two === undefined || /^(?:us|uk)$/i.test(two))
    return { name: plain, fullName: null, words, span, whole };
  const [short, long] = one.length <= two.length ? [one, two] : [two, one];
  return { name: short, fullName: long, words, span, whole };
}
