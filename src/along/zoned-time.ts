/** A day, an hour and a time zone in, the instant out; and back. The rules are those of the platform's own zone data. */

export interface LocalTime {
  readonly year: number;
  /** From 1. */
  readonly month: number;
  readonly day: number;
  readonly hour: number;
  readonly minute: number;
}

const MS_PER_MINUTE = 60_000;
const MS_PER_DAY = 86_400_000;

/** Null where there is no such zone. */
export function isZone(zone: string): boolean {
  try {
    clockOf(zone);
    return true;
  } catch {
    return false;
  }
}

export interface Instant {
  readonly ms: number;
  /** False where the clock goes past that hour on that day; the instant is then the one it is put forward to. */
  readonly exists: boolean;
}

/** Where the clock shows an hour twice, it is the first. */
export function instantOf(local: LocalTime, zone: string): Instant {
  const asUtc = utcMs(local);
  // No zone is further from UTC than 14 hours, so a day to either side has the offsets before and after any change.
  const offsets = [asUtc - MS_PER_DAY, asUtc + MS_PER_DAY].map((ms) => offsetMs(ms, zone));
  const [before = 0, after = 0] = offsets;
  const fits = [before, after]
    .map((offset) => asUtc - offset)
    .filter((ms) => offsetMs(ms, zone) === asUtc - ms);
  if (fits.length > 0) return { ms: Math.min(...fits), exists: true };
  // Put forward: what the clock would have shown by the offset before is shown later by the one after.
  return { ms: asUtc - before, exists: false };
}

/** What the clock of a zone shows at an instant. */
export function localTime(ms: number, zone: string): LocalTime {
  const parts = new Map(
    clockOf(zone)
      .formatToParts(ms)
      .map(({ type, value }) => [type, Number(value)]),
  );
  return {
    year: parts.get('year') ?? 0,
    month: parts.get('month') ?? 0,
    day: parts.get('day') ?? 0,
    hour: parts.get('hour') ?? 0,
    minute: parts.get('minute') ?? 0,
  };
}

/** How far the clock of a zone is ahead of UTC. */
export function offsetMs(ms: number, zone: string): number {
  const whole = Math.floor(ms / MS_PER_MINUTE) * MS_PER_MINUTE;
  return utcMs(localTime(whole, zone)) - whole;
}

export function utcMs({ year, month, day, hour, minute }: LocalTime): number {
  return Date.UTC(year, month - 1, day, hour, minute);
}

/** `2026-10-31`; null where there is no such day. */
export function parseDay(written: string): Pick<LocalTime, 'year' | 'month' | 'day'> | null {
  const found = /^(\d{4})-(\d{2})-(\d{2})$/.exec(written.trim());
  if (found === null) return null;
  const [year = 0, month = 0, day = 0] = found.slice(1).map(Number);
  const date = new Date(Date.UTC(year, month - 1, day));
  return date.getUTCMonth() === month - 1 && date.getUTCDate() === day ? { year, month, day } : null;
}

/** `09:00`, `9:30`, `21.15`; null where it is no hour of a day. */
export function parseHour(written: string): Pick<LocalTime, 'hour' | 'minute'> | null {
  const found = /^(\d{1,2})[:.](\d{2})$/.exec(written.trim());
  if (found === null) return null;
  const [hour = 24, minute = 60] = found.slice(1).map(Number);
  return hour < 24 && minute < 60 ? { hour, minute } : null;
}

/** So many days on, by the calendar. */
export function daysOn(day: Pick<LocalTime, 'year' | 'month' | 'day'>, days: number): typeof day {
  const date = new Date(Date.UTC(day.year, day.month - 1, day.day + days));
  return { year: date.getUTCFullYear(), month: date.getUTCMonth() + 1, day: date.getUTCDate() };
}

/** 0 for Sunday. */
export function weekdayOf(day: Pick<LocalTime, 'year' | 'month' | 'day'>): number {
  return new Date(Date.UTC(day.year, day.month - 1, day.day)).getUTCDay();
}

/** Made anew for each question: building one is dear, but a schedule asks no more than a few hundred times. */
function clockOf(zone: string): Intl.DateTimeFormat {
  return new Intl.DateTimeFormat('en-GB', {
    timeZone: zone,
    hourCycle: 'h23',
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: 'numeric',
    minute: 'numeric',
    second: 'numeric',
  });
}
