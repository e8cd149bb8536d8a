/** An instant and a time zone -> the day and hour as makers there read them. */

import { localTime, offsetMs, utcMs, weekdayOf } from './zoned-time.ts';

const WEEKDAYS = ['Sunday', 'Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday'] as const;
const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

/** `Saturday 7 November 2026`. */
export function dayWords(ms: number, zone: string): string {
  const local = localTime(ms, zone);
  return `${WEEKDAYS[weekdayOf(local)]} ${local.day} ${MONTHS[local.month - 1]} ${local.year}`;
}

/** `09:00`. */
export function hourWords(ms: number, zone: string): string {
  const { hour, minute } = localTime(ms, zone);
  return [hour, minute].map((n) => String(n).padStart(2, '0')).join(':');
}

/** `Saturday 09:00`, for zones beside the along's own. */
export function shortWords(ms: number, zone: string): string {
  return `${WEEKDAYS[weekdayOf(localTime(ms, zone))]} ${hourWords(ms, zone)}`;
}

/** `Europe/Vilnius` -> `Vilnius`. */
export function placeOfZone(zone: string): string {
  return zone.slice(zone.lastIndexOf('/') + 1).replaceAll('_', ' ');
}

/** `UTC+2`, `UTC−3:30`. */
export function offsetWords(ms: number, zone: string): string {
  const minutes = Math.round(offsetMs(ms, zone) / 60_000);
  if (minutes === 0) return 'UTC';
  const [hours, rest] = [Math.floor(Math.abs(minutes) / 60), Math.abs(minutes) % 60];
  return `UTC${minutes < 0 ? '−' : '+'}${hours}${rest === 0 ? '' : `:${String(rest).padStart(2, '0')}`}`;
}

/** `2026-11-07T13:00:00Z`. */
export function isoInstant(ms: number): string {
  return new Date(ms).toISOString().replace('.000Z', 'Z');
}

const WRITTEN = /^(\d{4})-(\d{2})-(\d{2})(?:[T ](\d{2}):(\d{2})(?::(\d{2}))?)?(Z|[+-]\d{2}:?\d{2})?$/i;

/**
 * A time as typed after --as-of: `2026-11-07T09:00-04:00`, `2026-11-07T13:00:00Z`, or without an offset by the clock
 * of `zone`. Null where it is none.
 */
export function parseInstant(
  written: string,
  zoned: (local: {
    readonly year: number;
    readonly month: number;
    readonly day: number;
    readonly hour: number;
    readonly minute: number;
  }) => number,
): number | null {
  const found = WRITTEN.exec(written.trim());
  if (found === null) return null;
  const [year = 0, month = 0, day = 0, hour = 0, minute = 0, second = 0] = found
    .slice(1, 7)
    .map((n) => Number(n ?? 0));
  const local = { year, month, day, hour, minute };
  const date = new Date(utcMs(local));
  if (
    date.getUTCDate() !== day ||
    date.getUTCHours() !== hour ||
    date.getUTCMinutes() !== minute ||
    second > 59
  )
    return null;
  const offset = found[7];
  if (offset === undefined) return zoned(local) + second * 1000;
  const ahead = /^([+-])(\d{2}):?(\d{2})$/.exec(offset);
  const minutes =
    ahead === null ? 0 : (Number(ahead[2]) * 60 + Number(ahead[3])) * (ahead[1] === '-' ? -1 : 1);
  return utcMs(local) - minutes * 60_000 + second * 1000;
}
