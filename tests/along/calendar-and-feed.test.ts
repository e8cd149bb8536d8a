/** The calendar read back by an iCalendar parser, the feed by a feed parser, and both held against the platform's own clocks. */

import { parseFeed } from '@rowanmanning/feed-parser';
import ICAL from 'ical.js';
import { describe, expect, test } from 'vitest';
import { calendarText } from '../../src/along/calendar.ts';
import { feedText } from '../../src/along/feed.ts';
import { releaseAt } from '../../src/along/release.ts';
import { checkAlong } from './check-along.ts';

const TOLD = { mark: null, address: 'https://makers.example/site/' };

/** Five weeks over the end of summer time in the zone. */
function weeksIn(zone: string, starts: string, hour: string, more = ''): string {
  const weeks = Array.from(
    { length: 5 },
    (_, i) =>
      `  - title: "Week of ${i + 1}, comma; semicolon"\n    note: "Back\\\\slash, and a line that is long enough to have to be folded somewhere in its middle – ąčęėįšųūž ✓"\n    make: 2\n    choices: [{pattern: plain}]\n`,
  );
  return `title: Chalk & Cheese <Blanket>
terms: US
starts: ${starts}
rhythm: every Saturday
hour: "${hour}"
zone: ${zone}
announced: 2026-09-01
gauge: {stitches: 16, rows: 18, over: 10 cm, of: single crochet}
yarn:
  A: {colour: chalk, weight: 4, fibre: wool}
match: {stitches: 7, size: 3.5 cm, tolerance: 3 mm}
blanket: {across: 2, down: 5}
joining: {method: whip stitch, colour: A}
border: {colour: A, rounds: 1}
${more}weeks:
${weeks.join('')}`;
}

function releasedIn(zone: string, starts: string, hour: string, weeksOut: number) {
  const { worked, diagnostics } = checkAlong(weeksIn(zone, starts, hour));
  if (worked === null) throw new Error(diagnostics.map(({ message }) => message).join('; '));
  const hours = worked.along.weeks.map(({ releaseMs }) => releaseMs);
  const asOf = weeksOut === 0 ? (hours[0] ?? 0) - 1 : (hours[weeksOut - 1] ?? 0);
  return { hours, released: releaseAt(worked, asOf).released };
}

function eventsOf(text: string): ICAL.Event[] {
  const calendar = new ICAL.Component(ICAL.parse(text));
  return calendar.getAllSubcomponents('vevent').map((event) => new ICAL.Event(event));
}

describe.each([
  ['America/Halifax', '2026-10-17'],
  ['Europe/Helsinki', '2026-10-10'],
  ['Australia/Lord_Howe', '2026-09-19'],
  ['Pacific/Auckland', '2027-03-20'],
])('over a change of the clocks in %s', (zone, starts) => {
  const { hours, released } = releasedIn(zone, starts, '09:30', 2);
  const text = calendarText(released, TOLD);
  const events = eventsOf(text);

  test('the clocks do change between the first week and the last', () => {
    const gaps = hours.slice(1).map((hour, i) => (hour - (hours[i] ?? 0)) / 3_600_000);
    expect(gaps.some((gap) => gap !== 7 * 24)).toBe(true);
  });

  test('every event begins at half past nine by the clocks there', () => {
    const shown = events.map((event) =>
      event.startDate
        .toJSDate()
        .toLocaleString('sv-SE', { timeZone: zone, hour: '2-digit', minute: '2-digit' }),
    );
    expect(shown).toEqual(Array.from({ length: 5 }, () => '09:30'));
    expect(events.map((event) => event.startDate.toJSDate().getTime())).toEqual(hours);
  });

  test('what is out has its title and its words as written, what is not has neither', () => {
    expect(events.map(({ summary }) => summary)).toEqual([
      'Chalk & Cheese <Blanket>, week 1: Week of 1, comma; semicolon',
      'Chalk & Cheese <Blanket>, week 2: Week of 2, comma; semicolon',
      'Chalk & Cheese <Blanket>, week 3',
      'Chalk & Cheese <Blanket>, week 4',
      'Chalk & Cheese <Blanket>, week 5',
    ]);
    expect(events[0]?.description).toContain('Back\\slash, and a line');
    expect(events[0]?.description).toContain('ąčęėįšųūž ✓');
    expect(events[3]?.description).toBeNull();
  });
});

test('lines are no longer than 75 octets, and end as the standard has it', () => {
  const text = calendarText(releasedIn('Europe/Vilnius', '2026-10-10', '09:00', 5).released, {
    ...TOLD,
    mark: 'PREVIEW',
  });
  const lines = text.split('\r\n');
  expect(lines.at(-1)).toBe('');
  expect(lines.filter((line) => Buffer.byteLength(line) > 75)).toEqual([]);
  expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
  expect(lines.some((line) => line.startsWith(' '))).toBe(true);
  expect(new Set(eventsOf(text).map(({ uid }) => uid)).size).toBe(5);
});

describe('the feed', () => {
  const { hours, released } = releasedIn('Europe/Vilnius', '2026-10-10', '09:00', 3);
  const feed = parseFeed(feedText(released, TOLD));

  test('has an entry for each week that is out, the last first, at its instant', () => {
    expect(feed.items.map(({ title }) => title)).toEqual(
      [3, 2, 1].map((n) => `Week ${n}: Week of ${n}, comma; semicolon`),
    );
    expect(feed.items.map(({ published }) => published?.getTime())).toEqual(hours.slice(0, 3).toReversed());
    expect(feed.updated?.getTime()).toBe(hours[2]);
  });

  test('has its title, its ids and its links', () => {
    expect(feed.title).toBe('Chalk & Cheese <Blanket>');
    expect(feed.items.map(({ url }) => url)).toEqual(
      [3, 2, 1].map((n) => `https://makers.example/site/chalk-blanket/week-${n}/`),
    );
    expect(new Set(feed.items.map(({ id }) => id)).size).toBe(3);
    expect(feed.items[0]?.id).toMatch(/^tag:rowfold\.invalid,2026-09-01:chalk-blanket:week-3$/);
  });

  test('before the first week it is empty, as old as the announcement', () => {
    const before = releasedIn('Europe/Vilnius', '2026-10-10', '09:00', 0).released;
    const empty = parseFeed(feedText(before, TOLD));
    expect(empty.items).toEqual([]);
    expect(empty.updated?.toISOString().slice(0, 10)).toBe('2026-09-01');
  });
});
