/** A pasted text's abbreviations and special stitches in; those of the designer's own, told in stitches, out. */

import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { MappedText } from '../source/mapped-text.ts';
import { abbreviationTerms, findAbbreviation } from '../stitches/abbreviations.ts';
import type { Terms } from '../stitches/stitch-row.ts';
import { stitchById, termsOf } from '../stitches/table.ts';
import { listFaults } from './abbreviation-list.ts';
import { type DeriveContext, deriveWork, stitchNamed } from './derive-work.ts';
import { insertedText, sliceText, trimText } from './mapped-pieces.ts';
import { statedTerms } from './read-terms.ts';
import { saysAsUsual } from './said-as-usual.ts';
import type { Item } from './sorted-lines.ts';
import { readEntries, type StitchEntry } from './stitch-entries.ts';
import { textFault } from './text-faults.ts';
import type { Piece, TranscribedNote, TranscribedSpecial } from './transcript.ts';

export interface StitchesAsked {
  readonly file: string;
  readonly terms: Terms;
  readonly sizes: number;
  readonly abbreviations: readonly Item[];
  readonly specials: readonly Item[];
  /** Every row of the text, for telling which of two names is used. */
  readonly rows: string;
  readonly rowLines: readonly MappedText[];
  /** The text without its list of abbreviations. */
  readonly elsewhere: string;
}

export interface StitchesRead {
  readonly specials: readonly TranscribedSpecial[];
  readonly notes: readonly TranscribedNote[];
  readonly pieces: readonly Piece[];
  readonly questions: readonly Diagnostic[];
}

interface Reading {
  readonly asked: StitchesAsked;
  readonly specials: TranscribedSpecial[];
  readonly notes: TranscribedNote[];
  readonly pieces: Piece[];
  readonly questions: Diagnostic[];
}

export function readStitches(asked: StitchesAsked): StitchesRead {
  const reading: Reading = { asked, specials: [], notes: [], pieces: [], questions: [] };
  const lists = asked.specials.flatMap((item) => listUnderTerms(item) ?? []);
  const stitches = asked.specials.filter((item) => listUnderTerms(item) === null);
  const described = readEntries(stitches, asked.terms, false);
  const listed = readEntries([...asked.abbreviations, ...lists], asked.terms, true);
  const aliases = new Map(listed.entries.map((entry) => [plain(entry.words.text), entry]));
  const used = new Set<StitchEntry>();
  const left: StitchEntry[] = [];
  const aliasOf = (entry: StitchEntry): StitchEntry | null => {
    const alias = aliases.get(plain(entry.name)) ?? aliases.get(plain(entry.fullName ?? entry.name));
    if (alias === undefined || alias === entry) return null;
    used.add(alias);
    reading.pieces.push({
      kind: 'abbreviation',
      span: alias.span,
      means: `${alias.name}, the special stitch ${entry.name}`,
    });
    return alias;
  };
  for (const entry of described.entries) addSpecial(reading, withAlias(entry, aliasOf(entry), asked.rows));
  // `p., picot. To make a picot: 3 ch, …`: described in the list itself.
  for (const entry of listed.entries) {
    const alias = entry.words.text.length > LONGEST_NAME ? aliasOf(entry) : null;
    if (alias !== null) addSpecial(reading, withAlias(entry, alias, asked.rows));
    else if (!used.has(entry)) left.push(entry);
  }
  for (const entry of left) if (!used.has(entry)) addAbbreviation(reading, entry);
  for (const item of [...described.rest, ...listed.rest]) keep(reading, item);
  reading.questions.push(
    ...listFaults({
      ...asked,
      entries: listed.entries,
      specials: reading.specials.map(({ name }) => name),
      whole: listed.rest.length === 0,
    }),
  );
  return reading;
}

/** Words as short only name a stitch. */
const LONGEST_NAME = 14;

/** `US terms are used: ch, chain; dc, double crochet` among the stitches is a list of abbreviations; null for any other. */
function listUnderTerms(item: Item): Item | null {
  const colon = item.text.text.indexOf(':');
  if (colon < 0 || statedTerms(item.text.text.slice(0, colon)) === null) return null;
  const text = trimText(sliceText(item.text, colon + 1));
  return text.text === '' ? null : { ...item, text, cells: [text] };
}

/** Of a stitch's names the one that the rows use. */
function withAlias(entry: StitchEntry, alias: StitchEntry | null, rows: string): StitchEntry {
  // The abbreviation first: a count may tell of `12 clusters` where the row itself works `cl`.
  const names = [
    ...(alias === null ? [] : [alias.name]),
    entry.name,
    ...(entry.fullName === null ? [] : [entry.fullName]),
  ];
  const lastWord = /^\d+-[a-z]+\s+(\S+)$/i.exec(entry.name)?.[1];
  const name =
    names.find((one) => isUsed(one, rows)) ??
    (lastWord !== undefined && isUsed(lastWord, rows) ? lastWord : names[0]) ??
    entry.name;
  const others = names
    .filter((one) => one.toLowerCase() !== name.toLowerCase())
    .sort((a, b) => b.length - a.length);
  const full = others.find((one) => one.length > name.length) ?? null;
  return { ...entry, name, fullName: full };
}

function isUsed(name: string, rows: string): boolean {
  const escaped = name.toLowerCase().replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
  return new RegExp(`(?<![a-z])${escaped}(?:e?s)?(?![a-z])`, 'i').test(rows);
}

const FIRST_BLOCK = /^(?:the )?(?:first|starting|beginning|beg) (block|tile)\b.*$/i;

function addSpecial(reading: Reading, entry: StitchEntry): void {
  const { asked, specials, pieces } = reading;
  const keyed = keyName(entry.name);
  // `First block of an increase row`: no row says its name, they all begin with it.
  const own = isUsed(keyed, asked.rows) ? keyed : keyed.replace(FIRST_BLOCK, 'beg $1');
  const name = nameInRows(own, asked.rows);
  const context = contextOf(reading);
  const derived = deriveWork(entry.words, context);
  const standard = stitchNamed(name, asked.terms);
  const means = derived?.work.text.replace(/ in same st$/, '');
  if (
    standard !== null &&
    (derived === null || (means !== undefined && stitchNamed(means, asked.terms) === standard))
  ) {
    // The table's own stitch, described once more: its words are kept, for they are the designer's.
    reading.notes.push({ text: entry.whole, span: entry.span, understood: true });
    return void pieces.push({
      kind: 'abbreviation',
      span: entry.span,
      means: `${name}, as the trade has it; its words are kept among the notes`,
    });
  }
  if (derived === null && meansUsual(name, entry.words.text, asked.terms)) {
    // A glossary tells the trade's own words among the stitches: `Rnd(s) = Round(s)`.
    return void pieces.push({
      kind: 'abbreviation',
      span: entry.span,
      means: `${name}, as the trade has it`,
    });
  }
  if (name === '' || specials.some((other) => other.name.toLowerCase() === name.toLowerCase())) {
    keepWords(reading, entry);
    return;
  }
  const fullName =
    entry.fullName === null || entry.fullName.toLowerCase() === name.toLowerCase()
      ? null
      : entry.fullName.toLowerCase();
  const how =
    derived === null || derived.loses || !saysAll(entry, derived.work.text) ? entry.words.text : null;
  specials.push({ name, fullName, work: derived?.work ?? null, how, span: entry.span });
  pieces.push({
    kind: 'special stitch',
    span: entry.span,
    means: derived === null ? `${name}, which needs its stitches told` : `${name} = ${derived.work.text}`,
  });
  if (derived === null)
    reading.questions.push(textFault('text/special-unread', asked.file, entry.span, { name }));
}

/** The stitches hold every word that the designer's own words hold. */
function saysAll(entry: StitchEntry, work: string): boolean {
  const words = entry.words.text
    .toLowerCase()
    .replace((entry.fullName ?? '').toLowerCase(), ' ')
    .replace(
      /\b(?:work|make|the|indicated|all|next|same|one|st|sts|stitch|in|into|a|of|sp|space|or)\b|[.,;()[\]]/g,
      ' ',
    )
    .split(/\s+/);
  return words.every((word) => word === '' || work.toLowerCase().includes(word));
}

function addAbbreviation(reading: Reading, entry: StitchEntry): void {
  const { asked, pieces, questions } = reading;
  const { terms, file } = asked;
  const meaning = entry.words.text;
  if (namesSpecial(reading, entry)) return;
  const own = stitchNamed(entry.name, terms);
  const meant =
    stitchNamed(meaning, terms) ?? (entry.fullName === null ? null : stitchNamed(entry.fullName, terms));
  const drop = (): void =>
    void pieces.push({ kind: 'abbreviation', span: entry.span, means: `${entry.name}, as the trade has it` });
  if (own !== null && (meaning === '' || own === meant || saysAsUsual(meaning, own, terms))) {
    drop();
    return;
  }
  if (own !== null) {
    const derived = deriveWork(entry.words, contextOf(reading));
    if (meant === null && derived !== null) {
      addSpecial(reading, entry);
      return;
    }
    if (meant === null && /\b(?:insert|yo|yrh|yarn over|hook)\b/i.test(meaning)) {
      addSpecial(reading, entry);
      return;
    }
    questions.push(
      textFault('text/abbreviation', file, entry.span, {
        abbr: entry.name,
        here: meaning,
        usual: termsOf(own, terms).name,
      }),
    );
    keepWords(reading, entry);
    return;
  }
  const general = findAbbreviation(entry.name, terms);
  const plain = plainShaping(meaning, terms);
  if (general !== null && plain !== null) {
    addOwn(reading, entry, insertedText(plain, entry.span.start), meaning);
    return;
  }
  if (general !== null && deriveWork(entry.words, contextOf(reading)) !== null) {
    addSpecial(reading, {
      ...entry,
      fullName: entry.fullName ?? wordBefore(entry) ?? abbreviationTerms(general, terms).meaning,
    });
    return;
  }
  // `dec = single crochet 2 stitches together`.
  if (general?.id === 'dec' && meant?.family === 'together') {
    addOwn(reading, entry, insertedText(termsOf(meant, terms).abbr, entry.span.start), meaning);
    return;
  }
  if (general !== null && NAMES_YARN.test(meaning) && /^[A-Z]{1,2}$/.test(entry.name)) {
    keepWords(reading, entry);
    return;
  }
  if (general !== null) {
    const usual = abbreviationTerms(general, terms).meaning;
    if (meaning === '' || (alike(meaning, usual) && !SAYS_HOW_MANY.test(meaning))) {
      drop();
      return;
    }
    questions.push(
      textFault('text/abbreviation', file, entry.span, { abbr: entry.name, here: meaning, usual }),
    );
    keepWords(reading, entry);
    return;
  }
  if (meant !== null && meant.family !== 'chain') {
    const { abbr } = termsOf(meant, terms);
    const work = insertedText(meant.uses > 1 ? abbr : `${abbr} in same st`, entry.span.start);
    addOwn(reading, entry, work, meaning);
    return;
  }
  const derived = deriveWork(entry.words, contextOf(reading));
  if (derived !== null) {
    addSpecial(reading, { ...entry, fullName: entry.fullName ?? wordBefore(entry) });
    return;
  }
  keepWords(reading, entry);
}

/** `blk = block` beside a `Blk` that is told among the stitches: its name in full words. */
function namesSpecial({ specials, pieces }: Reading, { name, words, span }: StitchEntry): boolean {
  const at = specials.findIndex((one) => one.name.toLowerCase() === name.toLowerCase());
  const special = specials[at];
  const meaning = words.text.replace(/\((?:s|es)\)|[.;,]+$/g, '').toLowerCase();
  if (special?.work == null || !/^[a-z][a-z -]{1,30}$/.test(meaning)) return false;
  if (special.fullName !== null && special.fullName !== meaning) return false;
  specials[at] = { ...special, fullName: meaning };
  pieces.push({ kind: 'abbreviation', span, means: `${special.name}, the special stitch ${meaning}` });
  return true;
}

/** `decrease (next 3 sts together)`: more than the trade means by the word alone. */
const SAYS_HOW_MANY = /\b(?:[3-9]|three|four|five)\s+(?:sts?|stitches|sc|dc)\b/i;

/** `M, main`: a letter of the yarns, whatever else the small letter is short for. */
const NAMES_YARN = /^(?:the )?(?:main|contrast)(?:ing)?(?: (?:colou?r|yarn|shade))?$/i;

/** `dec = sc2tog`: the designer's own word for a stitch of the table. */
function addOwn(
  reading: Reading,
  entry: StitchEntry,
  work: TranscribedSpecial['work'],
  meaning: string,
): void {
  const name = nameInRows(keyName(entry.name), reading.asked.rows);
  if (reading.specials.some((other) => other.name === name)) {
    keepWords(reading, entry);
    return;
  }
  reading.specials.push({
    name,
    fullName: (entry.fullName ?? meaning).toLowerCase().replace(/[.;,]+$/, ''),
    work,
    how: null,
    span: entry.span,
  });
  reading.pieces.push({ kind: 'special stitch', span: entry.span, means: `${name} = ${work?.text ?? ''}` });
}

/** `dec = invisible decrease`: two single crochet together, worked so that it hides (common practice of toys). */
function plainShaping(said: string, terms: Terms): string | null {
  // `(front loops of next 2 sts together)` says how it hides; another number would be another decrease.
  const meaning = said
    .replace(
      /\s*\(front loops? of (?:the )?(?:next )?(?:2|two) (?:sts?|stitches)(?: tog(?:ether)?)?\)\.?$/i,
      '',
    )
    .replace(/\s+(?:over|in|into|across)\s+(?:the\s+)?(?:next\s+)?(?:2|two)\s+(?:sts?|stitches)$/i, '');
  const words = terms === 'US' ? 'single crochet|sc' : 'double crochet|dc';
  const found = new RegExp(`^(?:an? )?(?:invisible|${words}) (increase|decrease)$`, 'i').exec(meaning)?.[1];
  if (found === undefined) return null;
  if (found.toLowerCase() === 'decrease') return termsOf(stitchById('sc2tog'), terms).abbr;
  return `2 ${termsOf(stitchById('sc'), terms).abbr} in same st`;
}

/** `increase: 2 sc in next st` names the stitch before it tells it. */
function wordBefore(entry: StitchEntry): string | null {
  const found = /^([a-z][a-z ]{2,30}?)\s*(?:[:=(,]|\s[–—-]\s)/i.exec(entry.words.text)?.[1];
  return found === undefined || /\b(?:work|make)\b/i.test(found) ? null : found.toLowerCase();
}

/** Whether an abbreviation that names no stitch is told as the trade tells it. */
function meansUsual(name: string, meaning: string, terms: Terms): boolean {
  const general = findAbbreviation(name, terms);
  return general !== null && saysNoMore(meaning, abbreviationTerms(general, terms).meaning);
}

/** First letters of its words, as long as a plural or an ending does not change them. */
function stems(words: string): string[] {
  return (words.toLowerCase().match(/[a-z]{2,}/g) ?? []).map((word) => word.slice(0, 4));
}

function alike(meaning: string, usual: string): boolean {
  const known = new Set(stems(usual));
  return stems(meaning).some((stem) => known.has(stem));
}

/** `yarn over hook` is still a yarn over; a sentence that only shares a word with it tells something of its own. */
function saysNoMore(meaning: string, usual: string): boolean {
  const known = new Set(stems(usual));
  const others = stems(meaning).filter((stem) => stem.length > 2 && !known.has(stem));
  return alike(meaning, usual) && others.length <= 1;
}

function contextOf({ asked, specials }: Reading): DeriveContext {
  const told = specials.filter(({ work }) => work !== null).map(({ name }) => name);
  return { terms: asked.terms, sizes: Math.max(1, asked.sizes), specials: told };
}

function keepWords(reading: Reading, entry: StitchEntry): void {
  reading.notes.push({ text: entry.whole, span: entry.span, understood: false });
  reading.pieces.push({ kind: 'kept', span: entry.span, means: entry.whole });
}

function keep(reading: Reading, item: Item): void {
  const { text } = item.text;
  const known = text.split(/[\s,;]+/).every((word) => stitchNamed(word, reading.asked.terms) !== null);
  if (known)
    return void reading.pieces.push({
      kind: 'abbreviation',
      span: item.span,
      means: `${text}, as the trade has it`,
    });
  reading.notes.push({ text, span: item.span, understood: false });
  reading.pieces.push({ kind: 'kept', span: item.span, means: text });
}

/** As the rows spell it; `Shell` of a heading is `shell` in a sentence. */
function nameInRows(name: string, rows: string): string {
  const escaped = name.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
  if (escaped === '') return name;
  const forms = [...rows.matchAll(new RegExp(`(?<![a-z])${escaped}(?![a-z])`, 'gi'))].map(
    (found) => found[0],
  );
  const form = forms.find((one) => /^[a-z]/.test(one)) ?? forms[0];
  return form ?? name.replace(/(?<![\p{L}-])\p{Lu}(?=\p{Ll}{2})/gu, (letter) => letter.toLowerCase());
}

/** Names stand in the rows without stops and signs. */
function keyName(name: string): string {
  return name.replace(/^["'“‘*]+|["'”’*:.]+$/g, '').trim();
}

function plain(words: string): string {
  return words
    .toLowerCase()
    .replace(/[.;,]+$/, '')
    .replace(/[\s-]+/g, ' ')
    .trim();
}
