/** A file's values, known to be of the right kinds, and its instructions as read in; the `Pattern` out. */

import type { Source, Span } from '../source/span.ts';
import { valueSpans, type YamlNode, yamlAt } from '../source/yaml-tree.ts';
import { mFromMm, parseMeasure, sidesOf } from '../units.ts';
import { readBalls } from './balls.ts';
import { readHook } from './hook.ts';
import type { Allowed, Change, Gauge, Part, Pattern, Size, Special, UsedYarn, Yarn } from './pattern.ts';
import { firstMultiple } from './pattern-repeat.ts';
import type { Photograph } from './photograph.ts';
import { isBlank } from './plain-value.ts';
import { filmsOf } from './read-films.ts';
import type { ReadTexts } from './read-text.ts';
import type { PatternFile } from './schema.ts';

/** What a pattern without sizes calls its only one. */
const ONLY_SIZE: Size = { name: 'one size', widthMm: null, heightMm: null, repeats: null, rows: null };

export function buildPattern(
  values: PatternFile,
  texts: ReadTexts,
  root: YamlNode,
  source: Source,
  slug: string,
): Pattern {
  const places = valueSpans(root);
  const hook = values.hook === undefined ? null : readHook(values.hook);
  const parts = values.parts.flatMap((part, index) => partOf(part, index, texts, places));
  const [first] = Object.values(values.yarn ?? {});
  return {
    slug,
    source,
    title: oneLine(values.title),
    about: values.about ?? '',
    designer: values.designer ?? null,
    terms: values.terms,
    skill: values.skill ?? null,
    gauge:
      values.gauge === undefined
        ? null
        : patternGauge(values.gauge, first, firstMultiple({ parts })?.of ?? null),
    hookMm: hook?.mm ?? null,
    hookUs: hook?.us ?? null,
    yarns: Object.entries(values.yarn ?? {}).map(([letter, yarn]) => yarnOf(letter, yarn)),
    notions: listOf(values.notions),
    sizes: values.sizes?.map(sizeOf) ?? [ONLY_SIZE],
    specials: specialsOf(values, texts, places),
    notes: listOf(values.notes),
    parts,
    finishing: listOf(values.finishing),
    uses: [values.for ?? []].flat(),
    symbols: values.symbols ?? 'CYC',
    licence: values.licence ?? null,
    version: values.version ?? null,
    date: values.date ?? null,
    changes: changesOf(values.changes ?? []),
    films: filmsOf(values.film),
    photographs: photographsOf(values.photographs ?? []),
    allowed: allowedIn(root),
    places,
  };
}

type Given<K extends keyof PatternFile> = NonNullable<PatternFile[K]>;

/** `first` is the yarn that a swatch was weighed in. */
export type GaugeGiven = Omit<Given<'gauge'>, 'stitches' | 'repeats'> & { readonly stitches: number };

export function gaugeOf(
  { stitches, rows, of, after, before, took, over }: GaugeGiven,
  first: Given<'yarn'>[string] | undefined,
): Gauge {
  const [across = 0, up = across] = sidesOf(over).map((side) => millimetres(side) ?? 0);
  return {
    stitches,
    rows: rows ?? null,
    overMm: across,
    upMm: up,
    before: before ?? null,
    tookM: took === undefined ? null : amountM(took, first?.ball),
    of: of ?? null,
    after: after ?? null,
  };
}

/** Null where repeats are counted and nothing says how many stitches one is. */
function patternGauge(
  { repeats, ...gauge }: Given<'gauge'>,
  first: Given<'yarn'>[string] | undefined,
  inRepeat: number | null,
): Gauge | null {
  if (repeats === undefined) return gaugeOf({ ...gauge, stitches: gauge.stitches ?? 0 }, first);
  const stitches = gauge.stitches ?? (inRepeat === null ? null : repeats * inRepeat);
  return stitches === null ? null : { ...gaugeOf({ ...gauge, stitches }, first), repeats };
}

/** Null for a weight where it is not known how long a gram is. */
function amountM(written: string, ball: Given<'yarn'>[string]['ball']): number | null {
  const measure = parseMeasure(written);
  if (measure?.kind === 'length') return mFromMm(measure.mm);
  const lengthMm = millimetres(ball?.length);
  const massG = grams(ball?.mass);
  if (measure === null || lengthMm === null || massG === null) return null;
  return (measure.g * mFromMm(lengthMm)) / massG;
}

function usedOf({ used, ball }: Given<'yarn'>[string]): UsedYarn[] {
  if (used === undefined) return [];
  if (typeof used === 'string') return [{ size: null, lengthM: amountM(used, ball) }];
  return Object.entries(used).map(([size, amount]) => ({
    size: oneLine(size),
    lengthM: amountM(amount, ball),
  }));
}

export function yarnOf(letter: string, yarn: Given<'yarn'>[string]): Yarn {
  const lengthMm = millimetres(yarn.ball?.length);
  return {
    letter,
    colour: oneLine(yarn.colour),
    hex: yarn.hex === undefined ? null : sixDigits(yarn.hex),
    weight: yarn.weight,
    fibre: oneLine(yarn.fibre),
    ballLengthM: lengthMm === null ? null : mFromMm(lengthMm),
    ballMassG: grams(yarn.ball?.mass),
    balls: yarn.balls === undefined ? null : readBalls(yarn.balls),
    used: usedOf(yarn),
  };
}

function sizeOf(size: Given<'sizes'>[number]): Size {
  return {
    name: oneLine(size.name),
    widthMm: millimetres(size.width),
    heightMm: millimetres(size.height),
    repeats: size.repeats ?? null,
    rows: size.rows ?? null,
  };
}

function specialsOf(
  values: PatternFile,
  texts: ReadTexts,
  places: ReadonlyMap<string, Span>,
): readonly Special[] {
  return [...texts.specials].map(([name, steps]) => {
    const given = values.special?.[name];
    const described = typeof given === 'object' ? given : null;
    const span = places.get(`special.${name}`) ?? { start: 0, end: 0 };
    const implied = texts.implied.find((one) => one.name === name);
    return {
      name,
      fullName: described?.name ?? implied?.fullName ?? name,
      steps,
      how: described?.how ?? null,
      span,
    };
  });
}

function partOf(
  part: PatternFile['parts'][number],
  index: number,
  texts: ReadTexts,
  places: ReadonlyMap<string, Span>,
): readonly Part[] {
  const instructions = texts.parts.get(index);
  if (instructions === undefined) return [];
  const span = places.get(`parts.${index}`) ?? { start: 0, end: 0 };
  return [{ name: oneLine(part.name), onto: part.onto ?? null, make: part.make ?? 1, instructions, span }];
}

/** Of one day in the order they are written. */
function changesOf(changes: Given<'changes'>): Change[] {
  return changes
    .map(({ date, version, what }, index) => ({ date, version: version ?? null, what: oneLine(what), index }))
    .sort((a, b) => b.date.localeCompare(a.date) || a.index - b.index);
}

export function photographsOf(photographs: Given<'photographs'>): Photograph[] {
  return photographs.map(({ file, shows, by, part }) => ({
    file: file.trim(),
    shows: oneLine(shows),
    by: by === undefined ? null : oneLine(by),
    part: part === undefined ? null : oneLine(part),
  }));
}

/** Read off the file itself: a code with nothing after it is there, with no reason. */
function allowedIn(root: YamlNode): Allowed[] {
  const allow = yamlAt(root, ['allow']);
  if (allow?.kind !== 'map') return [];
  return allow.entries.map(({ key, keySpan, value }) => ({
    code: key,
    reason: value.kind === 'text' && !isBlank(value) ? oneLine(value.text.text) : '',
    span: keySpan,
  }));
}

/** One text is a list of its lines. */
function listOf(given: string | readonly string[] | undefined): readonly string[] {
  const texts = typeof given === 'string' ? given.split('\n') : (given ?? []).map(oneLine);
  return texts.map((text) => text.trim()).filter((text) => text !== '');
}

export function oneLine(text: string): string {
  return text.trim().replace(/\s+/g, ' ');
}

export function millimetres(written: string | undefined): number | null {
  const measure = written === undefined ? null : parseMeasure(written);
  return measure?.kind === 'length' ? measure.mm : null;
}

function grams(written: string | undefined): number | null {
  const measure = written === undefined ? null : parseMeasure(written);
  return measure?.kind === 'mass' ? measure.g : null;
}

/** `7A8` and `#77aa88` alike become `#77aa88`. */
function sixDigits(hex: string): string {
  const digits = hex.replace('#', '').toLowerCase();
  return `#${digits.length === 3 ? [...digits].map((digit) => digit + digit).join('') : digits}`;
}
