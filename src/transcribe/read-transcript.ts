/** A transcript in, the same `Pattern` that its file would give out, with every place in the pasted text itself. */

import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { readInstructions, readPhrase } from '../notation/read.ts';
import { allImplied } from '../pattern/all-implied.ts';
import { readHook } from '../pattern/hook.ts';
import type { Gauge, Part, Pattern, Size, Special, Yarn } from '../pattern/pattern.ts';
import { firstMultiple } from '../pattern/pattern-repeat.ts';
import type { ReadPattern } from '../pattern/read-pattern.ts';
import { allUndescribed, withoutUndescribed } from '../pattern/undescribed.ts';
import { yarnNames } from '../pattern/yarn-names.ts';
import { fileSpan, type MappedText, plainText } from '../source/mapped-text.ts';
import type { Span } from '../source/span.ts';
import { mFromMm, parseMeasure } from '../units.ts';
import { isAssembly } from './assembly-lines.ts';
import { joinTexts } from './mapped-pieces.ts';
import { rowsTold } from './rows-told.ts';
import { textFault } from './text-faults.ts';
import { titled } from './titled.ts';
import type { TranscribedGauge, TranscribedYarn, Transcript } from './transcript.ts';

const ONLY_SIZE: Size = { name: 'one size', widthMm: null, heightMm: null, repeats: null, rows: null };
/** What stands for a weight that is not told; nothing that is checked hangs on it. */
const ANY_WEIGHT = 4;

/** A pasted text need not name its materials: yarns that only its rows name are taken as listed. */
export function readTranscript(transcript: Transcript, slug: string): ReadPattern {
  const { source, terms, gauge } = transcript;
  const sizes = transcript.sizes.map(({ name, width, height }) => ({
    ...ONLY_SIZE,
    name,
    widthMm: millimetres(width),
    heightMm: millimetres(height),
  }));
  const described = transcript.specials.map(({ name, work }) => ({ name, work: work?.text ?? '' }));
  const work = transcript.parts.map(({ lines }) => joinTexts(lines, '\n'));
  const implied = allImplied(
    work.map(({ text }) => text),
    terms.value,
    described,
  );
  const context = {
    file: source.file,
    terms: terms.value,
    sizes: Math.max(1, sizes.length),
    sizeNames: sizes.map(({ name }) => name),
    specials: [...described.map(({ name }) => name), ...implied.specials.map(({ name }) => name)],
    blocks: implied.blocks,
    fullNames: [
      ...transcript.specials.flatMap(({ name, fullName }) =>
        fullName === null ? [] : [{ full: fullName, name }],
      ),
      ...implied.fullNames,
    ],
    yarns: transcript.yarns.map(({ letter }) => letter),
    yarnNames: yarnNames(transcript.yarns),
  };
  const diagnostics: Diagnostic[] = [...transcript.questions];
  const given = transcript.specials.flatMap(({ name, fullName, work: words, how, span }): Special[] => {
    if (words === null) return [];
    const read = readPhrase(words, { ...context, blocks: null });
    for (const diagnostic of read.diagnostics) diagnostics.push(diagnostic);
    return [{ name, fullName: fullName ?? name, steps: read.steps, how, span }];
  });
  const fixed = implied.specials.map(({ name, fullName, work: words }): Special => {
    const { steps } = readPhrase(plainText(words), { ...context, blocks: null });
    return { name, fullName, steps, how: null, span: { start: 0, end: 0 } };
  });
  const specials = [...given, ...fixed];
  const undescribed = allUndescribed(
    context.specials.filter((name) => !specials.some((special) => special.name === name)),
    new Map(specials.map(({ name, steps }) => [name, steps])),
  );
  const parts = transcript.parts.map(({ name, onto, make, lines, span }, i): Part => {
    const read = readInstructions(work[i] ?? joinTexts(lines, '\n'), context);
    diagnostics.push(...joinsToldOnce(read.diagnostics, lines, source.file));
    return { name, onto, make, instructions: withoutUndescribed(read.instructions, undescribed), span };
  });
  diagnostics.push(...notWorked(transcript));
  const hook = transcript.hook === null ? null : readHook(transcript.hook.value);
  const pattern: Pattern = {
    slug,
    source,
    title: transcript.title?.value ?? titled(slug),
    about: transcript.about?.value ?? '',
    designer: transcript.designer?.value ?? null,
    terms: terms.value,
    skill: transcript.skill?.value ?? null,
    gauge: gauge === null ? null : gaugeOf(gauge, firstMultiple({ parts })?.of ?? null),
    hookMm: hook?.mm ?? null,
    hookUs: hook?.us ?? null,
    yarns: transcript.yarns.map(yarnOf),
    notions: transcript.notions.map(({ value }) => value),
    sizes: withRows(transcript, sizes.length === 0 ? [ONLY_SIZE] : sizes, parts, work),
    specials,
    notes: transcript.notes.map(({ text }) => text),
    parts,
    finishing: transcript.finishing.map(({ value }) => value),
    uses: [],
    symbols: 'CYC',
    changes: [],
    photographs: [],
    licence: transcript.licence?.value ?? null,
    version: transcript.version?.value ?? null,
    date: transcript.date?.value ?? null,
    films: [],
    allowed: [],
    places: placesOf(transcript),
  };
  return { pattern: parts.length === 0 ? null : pattern, diagnostics };
}

/** Null where repeats are counted and no "multiple of" says how many stitches one is. */
function gaugeOf(gauge: TranscribedGauge, inRepeat: number | null): Gauge | null {
  const { repeats, rows, over, of, afterBlocking, before } = gauge;
  const stitches = gauge.stitches ?? (repeats === null || inRepeat === null ? null : repeats * inRepeat);
  if (stitches === null) return null;
  const overMm = millimetres(over) ?? 0;
  return {
    stitches,
    ...(repeats === null ? {} : { repeats }),
    rows,
    overMm,
    upMm: overMm,
    before,
    tookM: null,
    of,
    after: afterBlocking ? 'blocking' : null,
  };
}

/** Of sizes whose rows say themselves how long the piece grows, and whose height nothing else tells. */
function withRows(
  transcript: Transcript,
  sizes: readonly Size[],
  parts: readonly Part[],
  work: readonly MappedText[],
): readonly Size[] {
  const texts = work.map(({ text }) => text);
  return sizes.map((size, i) => {
    const told = transcript.gauge !== null && size.heightMm !== null;
    return told ? size : { ...size, rows: rowsTold(transcript, parts, texts, i) };
  });
}

/** A row that joins another piece on the way cannot be worked, whichever of its words were stumbled over. */
function joinsToldOnce(
  faults: readonly Diagnostic[],
  lines: readonly MappedText[],
  file: string,
): Diagnostic[] {
  const joining = lines
    .filter(({ text }) => isAssembly(text))
    .map((line) => fileSpan(line, 0, line.text.length));
  const told = new Set<Span>();
  return faults.flatMap((fault) => {
    const line = joining.find(({ start, end }) => start <= fault.span.start && fault.span.end <= end);
    if (line === undefined || !UNREAD.has(fault.code)) return [fault];
    if (told.has(line)) return [];
    told.add(line);
    return [textFault('text/not-worked', file, line, {})];
  });
}

const UNREAD: ReadonlySet<string> = new Set(['word/unknown', 'phrase/unread', 'bracket/no-use']);

/** Words of a row or round behind the first one, kept as they stand: they are not lost in silence. */
function notWorked({ source, pieces }: Transcript): Diagnostic[] {
  const first = pieces.filter(({ kind }) => kind === 'row').map(({ span }) => span.start);
  const from = Math.min(...first);
  return pieces
    .filter(({ kind, span, means }) => kind === 'kept' && span.start > from && LIKE_WORK.test(means))
    .map(({ span }) => textFault('text/not-worked', source.file, span, {}));
}

/** `Rnd 3: 3 hdc in each st`, `work even in hdc for 5 rnds`. */
const LIKE_WORK =
  /\b(?:rnds?|rounds?|rows?)\s*\d+\s*[:.)-]|\bfor \d+ (?:\([^)]*\) )?(?:more )?(?:rnds?|rounds?|rows?)\b/i;

function yarnOf({ letter, colour, weight, fibre, ballLength, ballMass, balls }: TranscribedYarn): Yarn {
  const length = millimetres(ballLength);
  const mass = ballMass === null ? null : parseMeasure(ballMass);
  return {
    letter,
    colour: colour ?? `colour ${letter}`,
    hex: null,
    weight: weight ?? ANY_WEIGHT,
    fibre: fibre ?? 'any fibre',
    ballLengthM: length === null ? null : mFromMm(length),
    ballMassG: mass?.kind === 'mass' ? mass.g : null,
    used: [],
    balls,
  };
}

/** Where the values stand in the pasted text, under the paths they would have in a pattern file. */
function placesOf(transcript: Transcript): ReadonlyMap<string, Span> {
  const { about, hook, gauge, yarns, notions, sizes, specials, notes, finishing } = transcript;
  const places = new Map<string, Span>();
  const put = (path: string, span: Span | undefined): void => {
    if (span !== undefined) places.set(path, span);
  };
  put('about', about?.span);
  put('hook', hook?.span);
  put('gauge', gauge?.span);
  if (gauge?.repeats != null) put('gauge.repeats', gauge.span);
  for (const { letter, weight, span } of yarns) {
    put(`yarn.${letter}`, span);
    if (weight !== null) put(`yarn.${letter}.weight`, span);
  }
  for (const [i, { span }] of notions.entries()) put(`notions.${i}`, span);
  for (const [i, { span }] of sizes.entries()) put(`sizes.${i}`, span);
  for (const { name, how, span } of specials) if (how !== null) put(`special.${name}.how`, span);
  for (const [i, { span }] of notes.entries()) put(`notes.${i}`, span);
  for (const [i, { span }] of finishing.entries()) put(`finishing.${i}`, span);
  return places;
}

function millimetres(written: string | null): number | null {
  const measure = written === null ? null : parseMeasure(written);
  return measure?.kind === 'length' ? measure.mm : null;
}
