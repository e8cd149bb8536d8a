/** An along file's text in, its `Along` and every fault of the file out. Never throws. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { gaugeOf, millimetres, oneLine, photographsOf, yarnOf } from '../pattern/build-pattern.ts';
import { readHook } from '../pattern/hook.ts';
import { plainValue } from '../pattern/plain-value.ts';
import { schemaFaults } from '../pattern/schema-faults.ts';
import { yamlFault } from '../pattern/yaml-faults.ts';
import type { Source, Span } from '../source/span.ts';
import { readYaml } from '../source/yaml.ts';
import { valueSpans, type YamlNode, type YamlPath, yamlAt } from '../source/yaml-tree.ts';
import type { Along, AlongChoice, AlongWeek, Edging } from './along.ts';
import { hexagonFaults } from './hexagon-faults.ts';
import type { Lie } from './lies.ts';
import { readSchedule } from './read-schedule.ts';
import { type AlongFile, alongJsonSchema, alongSchema } from './schema.ts';

export interface ReadAlong {
  /** Null when the file cannot be read as it is meant. */
  readonly along: Along | null;
  readonly diagnostics: readonly Diagnostic[];
}

export function readAlong(source: Source, slug: string): ReadAlong {
  const { file, text } = source;
  const { root, mistakes } = readYaml(text);
  const faults = mistakes.map((mistake) => yamlFault(file, mistake));
  if (mistakes.some(({ broken }) => broken)) return { along: null, diagnostics: faults };
  if (root === null || root.kind !== 'map') {
    const span = { start: 0, end: Math.max(1, text.search(/\r?\n|$/)) };
    return { along: null, diagnostics: [...faults, diagnose('along/empty', { file, span }, {})] };
  }
  const read = alongSchema.safeParse(plainValue(root, alongJsonSchema));
  if (!read.success) {
    const ofValues = schemaFaults(read.error.issues, { file, root, schema: alongJsonSchema, placeWords });
    return { along: null, diagnostics: inOrder([...faults, ...ofValues]) };
  }
  const places = valueSpans(root);
  const { schedule, diagnostics: ofSchedule } = readSchedule(read.data, file, places);
  const ofNames = [
    ...colourFaults(read.data, file, places),
    ...edgingFaults(read.data, file, places),
    ...hexagonFaults(read.data, file, places),
  ];
  const diagnostics = inOrder([...faults, ...ofSchedule, ...ofNames]);
  const sound = schedule !== null && diagnostics.every(({ severity }) => severity !== 'error');
  return {
    along: sound ? buildAlong(read.data, schedule, source, slug, places) : null,
    diagnostics,
  };
}

type Schedule = NonNullable<ReturnType<typeof readSchedule>['schedule']>;

function buildAlong(
  values: AlongFile,
  { announcedMs, releasesMs }: Schedule,
  source: Source,
  slug: string,
  places: ReadonlyMap<string, Span>,
): Along {
  const { yarn, match, border } = values;
  return {
    slug,
    source,
    title: oneLine(values.title),
    about: values.about ?? '',
    organiser: values.organiser ?? null,
    terms: values.terms,
    zone: values.zone,
    elsewhere: values.elsewhere ?? [],
    announcedMs,
    gauge: gaugeOf(values.gauge, undefined),
    hookMm: values.hook === undefined ? null : (readHook(values.hook)?.mm ?? null),
    yarns: Object.entries(yarn).map(([letter, given]) => yarnOf(letter, given)),
    specials: values.special ?? {},
    match: {
      stitches: match.stitches,
      sizeMm: millimetres(match.size) ?? 0,
      toleranceMm: millimetres(match.tolerance) ?? 0,
    },
    blanket: { lie: lieOf(values.blanket), across: values.blanket.across, down: values.blanket.down },
    joining: values.joining,
    border: { colour: border.colour, rounds: border.rounds, edging: edgingOf(border.edging) },
    photographs: photographsOf(values.photographs ?? []),
    weeks: values.weeks.map((week, index) => weekOf(week, index, releasesMs[index] ?? 0, places)),
    places,
  };
}

function weekOf(
  week: AlongFile['weeks'][number],
  index: number,
  releaseMs: number,
  places: ReadonlyMap<string, Span>,
): AlongWeek {
  const span = spanAt(places, `weeks.${index}.title`);
  return {
    number: index + 1,
    title: oneLine(week.title),
    teaser: week.teaser ?? null,
    note: week.note ?? null,
    video: week.video ?? null,
    releaseMs,
    make: week.make,
    choices: week.choices.map(
      ({ pattern, size, make, covers }, which): AlongChoice => ({
        pattern,
        size: size ?? null,
        make: make ?? week.make,
        covers: covers ?? 1,
        span: spanAt(places, `weeks.${index}.choices.${which}.pattern`),
      }),
    ),
    span,
  };
}

function lieOf({ shape, 'second-rows': second }: AlongFile['blanket']): Lie {
  if (shape !== 'hexagons') return 'squares';
  return second === 'one fewer' ? 'hexagons, one fewer' : 'hexagons';
}

const MULTIPLE = /^(?:a\s+)?(?:multiple\s+of\s+)?(\d{1,3})(?:\s*(?:plus|\+)\s*(\d{1,3}))?$/i;

function edgingOf(edging: AlongFile['border']['edging']): Edging | null {
  const found = edging === undefined ? null : MULTIPLE.exec(edging.multiple.trim());
  if (edging === undefined || found === null) return null;
  const { corner, first, repeat, last } = edging;
  return {
    of: Number(found[1]),
    plus: Number(found[2] ?? 0),
    corner,
    first: first ?? '',
    repeat,
    last: last ?? '',
  };
}

function edgingFaults({ border }: AlongFile, file: string, places: ReadonlyMap<string, Span>): Diagnostic[] {
  const given = border.edging?.multiple;
  if (given === undefined || Number(MULTIPLE.exec(given.trim())?.[1] ?? 0) > 0) return [];
  return [diagnose('along/multiple', { file, span: spanAt(places, 'border.edging.multiple') }, { given })];
}

/** Joining and border in a colour that is not listed; what the patterns call for is seen when they are read. */
function colourFaults(
  { yarn, joining, border }: AlongFile,
  file: string,
  places: ReadonlyMap<string, Span>,
): Diagnostic[] {
  const known = Object.keys(yarn);
  const named = [
    { what: 'the joining', given: joining.colour, path: 'joining.colour' },
    { what: 'the border', given: border.colour, path: 'border.colour' },
  ];
  return named
    .filter(({ given }) => !known.includes(given))
    .map(({ what, given, path }) =>
      diagnose('along/colour', { file, span: spanAt(places, path) }, { what, given, known }),
    );
}

function spanAt(places: ReadonlyMap<string, Span>, path: string): Span {
  return places.get(path) ?? { start: 0, end: 1 };
}

function inOrder(faults: readonly Diagnostic[]): readonly Diagnostic[] {
  return faults.toSorted((a, b) => a.span.start - b.span.start);
}

/** `the along`, `week 2`, `a choice of week 2`, `the border`. */
function placeWords(root: YamlNode | null, [first, second, third]: YamlPath): string {
  if (first === undefined) return 'the along';
  if (first === 'yarn' && second !== undefined) return `yarn ${second}`;
  if (first !== 'weeks' || typeof second !== 'number') return `the ${first}`;
  const title = yamlAt(root, ['weeks', second, 'title']);
  const week = title?.kind === 'text' ? `week ${second + 1}, "${title.text.text}"` : `week ${second + 1}`;
  return third === undefined ? week : `a choice of ${week}`;
}
