/** What is out of an along in, the bytes of its printed books out: one of a week's squares, and the whole one at the end. */

import type { BookletInput } from '../booklet/booklet-input.ts';
import { layOutBooklet } from '../booklet/booklet-pages.ts';
import type { BookletPhotograph } from '../booklet/booklet-photograph.ts';
import { USUAL_EDITION } from '../booklet/edition.ts';
import { markPages } from '../booklet/mark-pages.ts';
import type { PaperName } from '../booklet/paper.ts';
import { type PdfBookmark, paintPdf } from '../paint/pdf.ts';
import type { FontBytes } from '../paint/text-width.ts';
import { bookletInput, rulerFor } from '../print-booklet.ts';
import type { Scene } from '../scene/scene.ts';
import type { DialectKey } from '../wording/words.ts';
import { blanketInput } from './blanket-input.ts';
import type { BlanketFigures } from './figures.ts';
import type { BlanketPlan } from './plan-blanket.ts';
import { type PublicAlong, type ReleasedAlong, type WeekOut, weeksOut } from './release.ts';
import type { WorkedBorder } from './work-border.ts';

export interface BookChoice {
  readonly paper: PaperName;
  /** Stands across the head of every page. */
  readonly mark: string | null;
  /** Scaled for paper, by the slug of their pattern. */
  readonly photographs: ReadonlyMap<string, readonly BookletPhotograph[]>;
}

/** The booklets of a week's squares, one after the other. */
export function printWeek(
  along: PublicAlong,
  { number, week, squares }: WeekOut,
  choice: BookChoice,
  fonts: FontBytes,
): Promise<Uint8Array> {
  const dialect = dialectOf(along);
  const inputs = squares.map(({ compiled, pattern, size }) =>
    bookletInput(pattern, size, { dialect, photographs: choice.photographs.get(compiled.slug) ?? [] }),
  );
  return printed(along, `${along.title}, week ${number}: ${week.title}`, inputs, choice, fonts);
}

/** First what holds for the whole blanket, then every square in the order of the weeks. */
export function printBook(
  released: ReleasedAlong,
  blanket: { readonly figures: BlanketFigures; readonly plan: BlanketPlan; readonly border: WorkedBorder },
  choice: BookChoice,
  fonts: FontBytes,
): Promise<Uint8Array> {
  const { along } = released;
  const dialect = dialectOf(along);
  const squares = weeksOut(released).flatMap((week) =>
    week.squares.map(({ compiled, pattern, size }) =>
      bookletInput(pattern, size, { dialect, photographs: choice.photographs.get(compiled.slug) ?? [] }),
    ),
  );
  const whole = blanketInput(released, blanket, dialect);
  return printed(along, along.title, [...(whole === null ? [] : [whole]), ...squares], choice, fonts);
}

async function printed(
  along: PublicAlong,
  title: string,
  inputs: readonly BookletInput[],
  { paper, mark }: Pick<BookChoice, 'paper' | 'mark'>,
  fonts: FontBytes,
): Promise<Uint8Array> {
  const measure = rulerFor(fonts).measureText;
  const pages: Scene[] = [];
  const outline: PdfBookmark[] = [];
  // How many pages there are in all is known only when all are laid out; then each is, with its number among them.
  const lengths = inputs.map((input) => layOutBooklet(input, paper, measure).pages.length);
  const pagesInAll = lengths.reduce((sum, length) => sum + length, 0);
  for (const input of inputs) {
    const within = { pagesBefore: pages.length, pagesInAll };
    const laidOut = layOutBooklet(input, paper, measure, USUAL_EDITION, within);
    outline.push({ title: input.pattern.title, level: 1, page: pages.length });
    for (const { title: heading, page } of laidOut.outline)
      outline.push({ title: heading, level: 2, page: pages.length + page });
    pages.push(...laidOut.pages);
  }
  return paintPdf(mark === null ? pages : markPages(pages, mark), {
    title,
    author: along.organiser,
    language: along.terms === 'US' ? 'en-US' : 'en-GB',
    createdAt: new Date(along.announcedMs),
    fonts,
    outline,
    tagged: true,
  });
}

function dialectOf({ terms }: PublicAlong): DialectKey {
  return terms === 'US' ? 'us' : 'uk';
}
