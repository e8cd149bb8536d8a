/** First day, rhythm, hour and zone in, the instant of every week out, and what is wrong with any of them. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { nearest } from '../diagnostics/nearest.ts';
import type { Span } from '../source/span.ts';
import type { AlongFile } from './schema.ts';
import {
  daysOn,
  instantOf,
  isZone,
  type LocalTime,
  localTime,
  parseDay,
  parseHour,
  utcMs,
  weekdayOf,
} from './zoned-time.ts';

export interface Schedule {
  readonly announcedMs: number;
  readonly releasesMs: readonly number[];
}

const WEEKDAYS = ['Sunday', 'Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday'] as const;

const EVERY: Readonly<Record<string, number>> = { second: 2, third: 3, fourth: 4 };

/** An along that does not say when it was announced is taken to have been, so many days before it begins. */
const ANNOUNCED_DAYS_BEFORE = 28;

const NOON = { hour: 12, minute: 0 };

type Day = Pick<LocalTime, 'year' | 'month' | 'day'>;

export function readSchedule(
  values: AlongFile,
  file: string,
  places: ReadonlyMap<string, Span>,
): { readonly schedule: Schedule | null; readonly diagnostics: readonly Diagnostic[] } {
  const where = (path: string) => ({ file, span: places.get(path) ?? { start: 0, end: 1 } });
  const faults: Diagnostic[] = [];
  const dayAt = (given: string, path: string): Day | null => {
    const day = parseDay(given);
    if (day === null) faults.push(diagnose('along/date', where(path), { given }));
    return day;
  };
  const starts = dayAt(values.starts, 'starts');
  const announced = values.announced === undefined ? null : dayAt(values.announced, 'announced');
  const rhythm = parseRhythm(values.rhythm);
  if (rhythm === null) faults.push(diagnose('along/rhythm', where('rhythm'), { given: values.rhythm }));
  const hour = parseHour(values.hour);
  if (hour === null) faults.push(diagnose('along/hour', where('hour'), { given: values.hour }));
  const zones = [
    { zone: values.zone, path: 'zone' },
    ...(values.elsewhere ?? []).map((zone, i) => ({ zone, path: `elsewhere.${i}` })),
  ];
  for (const { zone, path } of zones)
    if (!isNamedZone(zone))
      faults.push(diagnose('along/zone', where(path), { given: zone, nearest: nearestZone(zone) }));
  const days = values.weeks.map(({ date }, i) =>
    date === undefined ? null : dayAt(date, `weeks.${i}.date`),
  );
  if (starts === null || rhythm === null || hour === null || faults.length > 0)
    return { schedule: null, diagnostics: faults };

  const is = WEEKDAYS[weekdayOf(starts)] ?? '';
  if (is !== rhythm.weekday)
    faults.push(
      diagnose('along/weekday', where('starts'), { date: values.starts, is, rhythm: rhythm.weekday }),
    );
  const releasesMs: number[] = [];
  let before: Day | null = null;
  for (const [i] of values.weeks.entries()) {
    const day: Day = days[i] ?? (before === null ? starts : daysOn(before, rhythm.days));
    const number = i + 1;
    if (before !== null && !isAfter(day, before))
      faults.push(
        diagnose('along/overlap', where(`weeks.${i}.date`), {
          week: number,
          date: printDay(day),
          before: printDay(before),
        }),
      );
    const release = instantOf({ ...day, ...hour }, values.zone);
    if (!release.exists)
      faults.push(
        diagnose('along/hour-skipped', where('hour'), {
          week: number,
          hour: printHour(hour),
          zone: values.zone,
          shows: printHour(localTime(release.ms, values.zone)),
        }),
      );
    releasesMs.push(release.ms);
    before = day;
  }
  const known = announced ?? daysOn(starts, -ANNOUNCED_DAYS_BEFORE);
  const announcedMs = instantOf({ ...known, ...hour }, values.zone).ms;
  return { schedule: { announcedMs, releasesMs }, diagnostics: faults };
}

/** `every Saturday`, `every second Saturday`. */
function parseRhythm(written: string): { readonly weekday: string; readonly days: number } | null {
  const found = /^every\s+(?:(second|third|fourth)\s+)?([a-z]+?)s?$/i.exec(written.trim());
  const weekday = WEEKDAYS.find((name) => name.toLowerCase() === found?.[2]?.toLowerCase());
  if (weekday === undefined) return null;
  return { weekday, days: 7 * (EVERY[found?.[1]?.toLowerCase() ?? ''] ?? 1) };
}

/** A bare offset such as `+02:00` is no zone: it knows nothing of summer time. */
function isNamedZone(zone: string): boolean {
  return /^[A-Za-z]/.test(zone) && isZone(zone);
}

/** By the whole name, or by the place alone: `Vilnius`, `Europe/Vilnus`. */
function nearestZone(given: string): string | null {
  const zones = Intl.supportedValuesOf('timeZone');
  const place = given.trim().replace(/^.*\//, '').replaceAll(' ', '_');
  const places = new Map(zones.map((zone) => [zone.replace(/^.*\//, ''), zone] as const));
  const near = nearest(place, [...places.keys()]);
  return nearest(given, zones) ?? (near === null ? null : (places.get(near) ?? null));
}

function isAfter(day: Day, before: Day): boolean {
  return utcMs({ ...day, ...NOON }) > utcMs({ ...before, ...NOON });
}

function printDay({ year, month, day }: Day): string {
  return [year, String(month).padStart(2, '0'), String(day).padStart(2, '0')].join('-');
}

function printHour({ hour, minute }: Pick<LocalTime, 'hour' | 'minute'>): string {
  return [hour, minute].map((n) => String(n).padStart(2, '0')).join(':');
}
