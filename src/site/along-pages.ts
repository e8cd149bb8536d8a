/** What is published of an along -> the data of its pages: the along itself, its weeks, how it is joined, the planner. */

import {
  dayWords,
  hourWords,
  isoInstant,
  offsetWords,
  placeOfZone,
  shortWords,
} from '../along/clock-words.ts';
import { FEED_FILE } from '../along/feed.ts';
import type { JoiningWords } from '../along/joining.ts';
import { joiningWords } from '../along/joining-words.ts';
import { LIES } from '../along/lies.ts';
import type { BlanketPlan } from '../along/plan-blanket.ts';
import { type PublicAlong, type ReleasedWeek, type WeekOut, weeksOut } from '../along/release.ts';
import type { AlongSquare } from '../along/work-along.ts';
import { borderWords } from '../along/work-border.ts';
import { PAPERS } from '../booklet/paper.ts';
import { gaugeWords, hookWords } from '../measure/materials.ts';
import { ownName } from '../pattern/own-name.ts';
import { printCm, printIn } from '../units.ts';
import { printFinishedSize } from '../wording/finished-size.ts';
import { type Marker, markerFor } from '../wording/mark-words.ts';
import { FILES_FOLDER, linkTo, type PagePlace, pagePlace } from './addresses.ts';
import type {
  AlongPage,
  AlongPages,
  AlongSquareCard,
  JoiningPage,
  PlannerPage,
  ScheduleRow,
  WeekPage,
} from './along-page-data.ts';
import { blanketPicture } from './along-picture.ts';
import { PICTURES_SCRIPT } from './along-pictures.ts';
import type { AlongSite } from './along-site.ts';
import { alongTotals } from './along-totals.ts';
import { coverLink } from './cover-picture.ts';
import type { Link, RowLine } from './page-data.ts';
import { coverPhotograph, photographsOf } from './picture-set.ts';
import { rowLine } from './row-line.ts';

export const CALENDAR_FILE = 'releases.ics';
export const JOINING_FOLDER = 'joining-and-border';
export const PLANNER_FOLDER = 'planner';
export const CLOCK_SCRIPT = 'along-clock.js';
export const PLANNER_SCRIPT = 'along-planner.js';

export function weekFolder(number: number): string {
  return `week-${number}`;
}

export function weekBookName(slug: string, number: number, paper: string): string {
  return `${slug}-${weekFolder(number)}-${paper.toLowerCase()}.pdf`;
}

export function wholeBookName(slug: string, paper: string): string {
  return `${slug}-whole-book-${paper.toLowerCase()}.pdf`;
}

export function alongPages(sites: readonly AlongSite[]): AlongPages {
  return {
    alongs: sites.map(alongPage),
    weeks: sites.flatMap((site) => weeksOut(site.released).map((week) => weekPage(site, week))),
    joining: sites.map(joiningPage),
    planners: sites.map(plannerPage),
  };
}

function alongPage(site: AlongSite): AlongPage {
  const { released, plan } = site;
  const { along, weeks, complete } = released;
  const lie = LIES[along.blanket.lie];
  const place = pagePlace([along.slug]);
  const own = { slug: along.slug, photographs: site.photographs };
  const latest = weeksOut(released).at(-1) ?? null;
  const first = weeks[0];
  return {
    ...place,
    title: `${along.title} – crochet-along`,
    description: along.about === '' ? `Crochet-along ${along.title}.` : along.about,
    trail: [{ text: 'Patterns', href: linkTo(place, []), current: false }],
    canonical: null,
    script: linkTo(place, [FILES_FOLDER], CLOCK_SCRIPT),
    heading: along.title,
    about: along.about,
    photograph: coverPhotograph(own, place, 'cover'),
    photographs: photographsOf(own, null, place),
    facts: [
      { name: 'Begins', value: first === undefined ? '' : dayWords(first.releaseMs, along.zone) },
      { name: 'Weeks', value: String(weeks.length) },
      {
        name: `One ${lie.piece}`,
        value: `${both(along.match.sizeMm)}${lie.offset ? ' from side to side' : ''}`,
      },
      { name: 'Blanket', value: `${both(plan.widthMm)} by ${both(plan.heightMm)}` },
      { name: cap(lie.pieces), value: gridWords(plan, along.blanket) },
      ...(along.organiser === null ? [] : [{ name: 'Organiser', value: along.organiser }]),
    ],
    links: [
      { text: 'Plan your own blanket', href: linkTo(place, [along.slug, PLANNER_FOLDER]), current: false },
      {
        text: 'How it is joined and edged',
        href: linkTo(place, [along.slug, JOINING_FOLDER]),
        current: false,
      },
    ],
    latest:
      latest === null
        ? null
        : {
            heading: `Week ${latest.number}: ${latest.week.title}`,
            note: latest.week.note,
            making: making(latest),
            squares: latest.squares.map((square) => card(square, place)),
            href: linkTo(place, [along.slug, weekFolder(latest.number)]),
          },
    zonePlace: placeOfZone(along.zone),
    schedule: weeks.map((week) => scheduleRow(site, week, place)),
    totals: alongTotals(site),
    tools: [...(along.hookMm === null ? [] : [hookWords(along.hookMm)]), 'tapestry needle'],
    gauge: gaugeWords(along.gauge, (of) => of, 'metric'),
    picture: weeksOut(released).length === 0 ? null : blanketPicture(site, place),
    pictureWords: complete
      ? `The first choice of every week, ${lie.piece} by ${lie.piece} as they come out.`
      : 'What is out so far, the first choice of every week. The other places are still to come.',
    downloads: [
      {
        text: 'Calendar of the releases (iCalendar)',
        href: linkTo(place, [along.slug], CALENDAR_FILE),
        current: false,
      },
      { text: 'Feed of the weeks (Atom)', href: linkTo(place, [along.slug], FEED_FILE), current: false },
      ...(complete
        ? Object.values(PAPERS).map(({ name }) => ({
            text: `The whole book on ${paperWords(name)}: every ${lie.piece}, joining and border (PDF)`,
            href: linkTo(place, [along.slug], wholeBookName(along.slug, name)),
            current: false,
          }))
        : []),
    ],
  };
}

function scheduleRow({ released }: AlongSite, week: ReleasedWeek, place: PagePlace): ScheduleRow {
  const { zone, elsewhere, slug } = released.along;
  const { number, releaseMs } = week;
  const out = week.kind === 'out';
  return {
    number,
    title: out ? week.week.title : null,
    href: out ? linkTo(place, [slug, weekFolder(number)]) : null,
    teaser: out ? null : week.teaser,
    instant: isoInstant(releaseMs),
    day: dayWords(releaseMs, zone),
    hour: `${hourWords(releaseMs, zone)} in ${placeOfZone(zone)} (${offsetWords(releaseMs, zone)})`,
    elsewhere: elsewhere.map((other) => ({
      place: placeOfZone(other),
      when: `${shortWords(releaseMs, other)} (${offsetWords(releaseMs, other)})`,
    })),
    state: week.kind,
  };
}

function weekPage(site: AlongSite, out: WeekOut): WeekPage {
  const { along } = site.released;
  const { number, week, squares, releaseMs } = out;
  const { piece, pieces } = LIES[along.blanket.lie];
  const folder = [along.slug, weekFolder(number)];
  const place = pagePlace(folder);
  return {
    ...place,
    title: `Week ${number}: ${week.title} – ${along.title}`,
    description: `Week ${number} of the crochet-along ${along.title}: ${squares.map(({ pattern }) => pattern.title).join(' or ')}.`,
    trail: [
      { text: 'Patterns', href: linkTo(place, []), current: false },
      { text: along.title, href: linkTo(place, [along.slug]), current: false },
    ],
    canonical: null,
    script: null,
    heading: week.title,
    number,
    day: dayWords(releaseMs, along.zone),
    note: week.note,
    video: week.video,
    making: making(out),
    squares: squares.map((square) => card(square, place)),
    downloads: Object.values(PAPERS).map(({ name }) => ({
      text: `${squares.length === 1 ? `The ${piece}` : `All ${pieces}`} of the week on ${paperWords(name)}, ${along.terms} terms (PDF)`,
      href: linkTo(place, folder, weekBookName(along.slug, number, name)),
      current: false,
    })),
    others: weeksOut(site.released).map(
      (other): Link => ({
        text: `${other.number}`,
        href: linkTo(place, [along.slug, weekFolder(other.number)]),
        current: other.number === number,
      }),
    ),
  };
}

/** `Make 7, of one or of both as you like.` */
function making({ week, squares }: WeekOut): string {
  const [first, ...more] = squares;
  const unlike = squares.filter(({ choice }) => choice.make !== week.make);
  const which =
    first === undefined || more.length === 0
      ? ''
      : `, of one or of ${more.length === 1 ? 'both' : 'several'} as you like`;
  const wide = unlike.map(
    ({ pattern, choice }) =>
      ` ${pattern.title} covers ${choice.covers} places: ${choice.make} of it fill the week.`,
  );
  return `Make ${week.make}${which}.${wide.join('')}`;
}

function card({ compiled, pattern, size, choice, edges }: AlongSquare, place: PagePlace): AlongSquareCard {
  const finished = printFinishedSize(size.measures);
  return {
    title: pattern.title,
    href: linkTo(place, [compiled.slug, size.slug]),
    about: pattern.about,
    cover: coverLink(compiled, pattern, size, place),
    photograph: coverPhotograph(compiled, place, 'listed'),
    facts: [
      ...(finished === null ? [] : [{ name: 'Comes out at', value: finished }]),
      { name: 'Along the edges', value: `${[...new Set(edges.counts)].join(' and ')} sts` },
      { name: 'To make', value: String(choice.make) },
      {
        name: 'Yarn for one',
        value: size.measures.yarn.map((use) => `${use.letter} ${Math.ceil(use.lengthM)} m`).join(', '),
      },
    ],
  };
}

function joiningPage({ released, plan, border }: AlongSite): JoiningPage {
  const { along } = released;
  const place = pagePlace([along.slug, JOINING_FOLDER]);
  const order = along.terms === 'US' ? (['US', 'UK'] as const) : (['UK', 'US'] as const);
  return {
    ...place,
    title: `Joining and border – ${along.title}`,
    description: `How the ${LIES[along.blanket.lie].pieces} of ${along.title} are joined, seam by seam, and edged, round by round, with every count.`,
    trail: [
      { text: 'Patterns', href: linkTo(place, []), current: false },
      { text: along.title, href: linkTo(place, [along.slug]), current: false },
    ],
    canonical: null,
    script: null,
    heading: 'Joining and border',
    facts: [
      { name: cap(LIES[along.blanket.lie].pieces), value: gridWords(plan, along.blanket) },
      { name: 'Blanket', value: `${both(plan.widthMm)} by ${both(plan.heightMm)}` },
    ],
    sides: order.map((terms) => {
      const words = border.size?.words[terms === 'US' ? 'us' : 'uk'];
      const marker = markerFor(words ?? { abbreviations: [], specials: [] });
      const joining = joiningWords(along, plan, terms);
      return {
        id: terms.toLowerCase(),
        name: `${terms} terms`,
        before: joining.before,
        seams: seamLines(joining, terms, marker),
        after: joining.after,
        border: borderWords(border, terms === 'US' ? 'us' : 'uk').map((line, i) =>
          rowLine(line, `border-${terms.toLowerCase()}-${i + 1}`, marker),
        ),
        abbreviations: words?.abbreviations ?? [],
        specials: words?.specials ?? [],
      };
    }),
  };
}

function seamLines({ seams }: JoiningWords, terms: string, marker: Marker): RowLine[] {
  return seams.map((line, i) => rowLine(line, `seam-${terms.toLowerCase()}-${i + 1}`, marker));
}

function plannerPage({ released, figures }: AlongSite): PlannerPage {
  const { along } = released;
  const place = pagePlace([along.slug, PLANNER_FOLDER]);
  const pictures = Object.fromEntries(
    weeksOut(released).flatMap(({ squares }) =>
      squares.map(({ compiled, pattern, size }) => [
        ownName(compiled.slug),
        coverLink(compiled, pattern, size, place),
      ]),
    ),
  );
  return {
    ...place,
    title: `Plan your blanket – ${along.title}`,
    description: `Choose your ${LIES[along.blanket.lie].pieces} for ${along.title}: yarn by colour, size, and how they lie.`,
    trail: [
      { text: 'Patterns', href: linkTo(place, []), current: false },
      { text: along.title, href: linkTo(place, [along.slug]), current: false },
    ],
    canonical: null,
    script: linkTo(place, [FILES_FOLDER], PLANNER_SCRIPT),
    heading: 'Plan your blanket',
    about: along.title,
    pictures: linkTo(place, [along.slug, PLANNER_FOLDER], PICTURES_SCRIPT),
    figures: JSON.stringify({ slug: along.slug, figures, pictures }),
  };
}

/** `6 across, 7 down`; of hexagons the rows as they lie. */
function gridWords(plan: BlanketPlan, { across, down }: PublicAlong['blanket']): string {
  if (plan.shape === 'squares') return `${across} across, ${down} down`;
  const [top = 0, second = top] = plan.rows;
  return `${top === second ? `${down} rows of ${top}` : `${down} rows of ${top} and ${second} in turn`}, ${plan.places} in all`;
}

function cap(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

function both(mm: number): string {
  return `${printCm(mm)} (${printIn(mm)})`;
}

function paperWords(name: string): string {
  return name === 'A4' ? 'A4 paper' : 'US Letter paper';
}
