/** What may be seen of an along in, its calendar out: an event for each release, after RFC 5545. Weeks to come show their number and their teaser. */

import type { ReleasedAlong, ReleasedWeek } from './release.ts';

/** Octets that a line may have before it is folded (RFC 5545, 3.1). */
const LINE_OCTETS = 75;

/** What is told beside the along itself, in its calendar and its feed. */
export interface Told {
  /** Stands before every title of a preview. */
  readonly mark: string | null;
  /** Where the site stands on the web, with a stroke at its end; null where that is not known. */
  readonly address: string | null;
}

export function calendarText(released: ReleasedAlong, told: Told): string {
  const { mark } = told;
  const { along, weeks } = released;
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Rowfold//Crochet-along//EN',
    'METHOD:PUBLISH',
    `X-WR-CALNAME:${escaped(marked(along.title, mark))}`,
    ...weeks.flatMap((week) => event(released, week, told)),
    'END:VCALENDAR',
  ];
  return lines.flatMap(folded).join('\r\n').concat('\r\n');
}

function event({ along }: ReleasedAlong, week: ReleasedWeek, { mark, address }: Told): string[] {
  const title = week.kind === 'out' ? `: ${week.week.title}` : '';
  const about = week.kind === 'out' ? week.week.note : week.teaser;
  const stamp = instant(week.kind === 'out' ? week.releaseMs : along.announcedMs);
  return [
    'BEGIN:VEVENT',
    // The same whatever is out, so that a calendar read again puts the new words in the place of the old.
    `UID:week-${week.number}.${along.slug}@rowfold.invalid`,
    `DTSTAMP:${stamp}`,
    `SEQUENCE:${week.kind === 'out' ? 1 : 0}`,
    // In UTC: it needs no rules of any zone, and every reader's calendar shows it by her own clock.
    `DTSTART:${instant(week.releaseMs)}`,
    'DURATION:PT1H',
    'TRANSP:TRANSPARENT',
    `SUMMARY:${escaped(marked(`${along.title}, week ${week.number}${title}`, mark))}`,
    ...(about === null ? [] : [`DESCRIPTION:${escaped(about)}`]),
    ...(week.kind === 'out' && address !== null
      ? [`URL:${address}${encodeURIComponent(along.slug)}/week-${week.number}/`]
      : []),
    'END:VEVENT',
  ];
}

function marked(words: string, mark: string | null): string {
  return mark === null ? words : `${mark} ${words}`;
}

/** `20261107T130000Z`. */
function instant(ms: number): string {
  return new Date(ms).toISOString().replace(/[-:]/g, '').replace('.000', '');
}

/** RFC 5545, 3.3.11. */
function escaped(text: string): string {
  return text.replaceAll('\\', '\\\\').replaceAll(';', '\\;').replaceAll(',', '\\,').replace(/\r?\n/g, '\\n');
}

/** A line of more octets goes on after a line break and a space; no letter is cut in two. */
function folded(line: string): string[] {
  const lines: string[] = [];
  let held = '';
  let octets = 0;
  for (const letter of line) {
    const wide = octetsOf(letter);
    if (octets + wide > LINE_OCTETS) {
      lines.push(held);
      held = ' ';
      octets = 1;
    }
    held += letter;
    octets += wide;
  }
  return [...lines, held];
}

function octetsOf(letter: string): number {
  const code = letter.codePointAt(0) ?? 0;
  return code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;
}
