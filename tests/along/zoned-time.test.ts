/** Instants against the platform's own zone data: what the clock of the zone shows at each of them is what was asked for. */

import { describe, expect, test } from 'vitest';
import { instantOf, isZone, localTime, offsetMs, parseDay, parseHour } from '../../src/along/zoned-time.ts';

/** What the platform's own formatting shows, by another way than the code under test takes. */
function shown(ms: number, zone: string): string {
  return new Date(ms).toLocaleString('sv-SE', { timeZone: zone }).slice(0, 16);
}

const at = (text: string) => {
  const [day = '', hour = ''] = text.split(' ');
  const [date, time] = [parseDay(day), parseHour(hour)];
  if (date === null || time === null) throw new Error(text);
  return { ...date, ...time };
};

describe.each(['America/Halifax', 'Europe/Lisbon', 'Australia/Lord_Howe', 'Asia/Kathmandu', 'Pacific/Apia'])(
  'in %s',
  (zone) => {
    test('every day of a year at nine is nine by its clock', () => {
      for (let day = 0; day < 366; day += 1) {
        const date = new Date(Date.UTC(2026, 0, 1 + day)).toISOString().slice(0, 10);
        const { ms, exists } = instantOf(at(`${date} 09:00`), zone);
        expect(shown(ms, zone)).toBe(`${date} 09:00`);
        expect(exists).toBe(true);
        expect(localTime(ms, zone)).toEqual(at(`${date} 09:00`));
      }
    });
  },
);

// The rules of the zones for 2026, as published: the European Union, Nova Scotia, New South Wales.
test.each([
  ['America/Halifax', '2026-10-31 09:00', '2026-10-31T12:00:00.000Z'],
  ['America/Halifax', '2026-11-07 09:00', '2026-11-07T13:00:00.000Z'],
  ['Europe/Lisbon', '2026-10-24 09:00', '2026-10-24T08:00:00.000Z'],
  ['Europe/Lisbon', '2026-10-31 09:00', '2026-10-31T09:00:00.000Z'],
  ['Australia/Sydney', '2026-10-03 09:00', '2026-10-02T23:00:00.000Z'],
  ['Australia/Sydney', '2026-10-10 09:00', '2026-10-09T22:00:00.000Z'],
])('in %s %s is %s', (zone, local, instant) => {
  expect(new Date(instantOf(at(local), zone).ms).toISOString()).toBe(instant);
});

test('an hour that the clock shows twice is the first of the two', () => {
  const { ms, exists } = instantOf(at('2026-10-25 01:30'), 'Europe/Lisbon');
  expect([new Date(ms).toISOString(), exists]).toEqual(['2026-10-25T00:30:00.000Z', true]);
});

test('an hour that the clock goes past is as late as it would have been', () => {
  const { ms, exists } = instantOf(at('2026-03-29 03:30'), 'Europe/Vilnius');
  expect([shown(ms, 'Europe/Vilnius'), exists]).toEqual(['2026-03-29 04:30', false]);
});

test('offsets, zones, days and hours', () => {
  expect(offsetMs(Date.UTC(2026, 0, 1), 'Asia/Kathmandu')).toBe(345 * 60_000);
  expect(['Europe/Vilnius', 'Nowhere/Land', ''].map(isZone)).toEqual([true, false, false]);
  expect(['2026-02-29', '2028-02-29', '2026-13-01', '26-1-1'].map((day) => parseDay(day) !== null)).toEqual([
    false,
    true,
    false,
    false,
  ]);
  expect(['09:00', '9.30', '24:00', '9', '12:60'].map((hour) => parseHour(hour) !== null)).toEqual([
    true,
    true,
    false,
    false,
    false,
  ]);
});
