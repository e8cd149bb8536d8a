/** What is published of an along -> the files beside its pages: calendar, feed, a book a week and the whole one at the end. */

import { calendarText } from '../along/calendar.ts';
import { FEED_FILE, feedText } from '../along/feed.ts';
import { printBook, printWeek } from '../along/print-book.ts';
import { weeksOut } from '../along/release.ts';
import type { BookletPhotograph } from '../booklet/booklet-photograph.ts';
import { PAPERS } from '../booklet/paper.ts';
import { CALENDAR_FILE, PLANNER_FOLDER, weekBookName, weekFolder, wholeBookName } from './along-pages.ts';
import { picturesScript } from './along-pictures.ts';
import { type AlongSite, squaresOut } from './along-site.ts';
import { readFontFiles } from './font-files.ts';
import { paperPhotographs, photographFiles } from './make-pictures.ts';
import type { FileToMake } from './site-file.ts';
import type { SiteSettings } from './site-settings.ts';
import { sizeFiles } from './size-files.ts';

export function alongFiles(site: AlongSite, offered: SiteSettings): FileToMake[] {
  const { released, mark } = site;
  const { along, complete } = released;
  const papers = Object.values(PAPERS).map(({ name }) => name);
  const photographs = () => squarePhotographs(site);
  const weeks = weeksOut(released).flatMap((week) =>
    papers.map((paper) => ({
      file: `${along.slug}/${weekFolder(week.number)}/${weekBookName(along.slug, week.number, paper)}`,
      content: async () =>
        printWeek(along, week, { paper, mark, photographs: await photographs() }, readFontFiles()),
    })),
  );
  const whole = papers.map((paper) => ({
    file: `${along.slug}/${wholeBookName(along.slug, paper)}`,
    content: async () =>
      printBook(released, site, { paper, mark, photographs: await photographs() }, readFontFiles()),
  }));
  const told = { mark, address: offered.address };
  const script = picturesScript(site, `${along.slug}/${PLANNER_FOLDER}`);
  const pictures = { file: script.file, content: async () => script.content };
  return [
    { file: `${along.slug}/${CALENDAR_FILE}`, content: async () => calendarText(released, told) },
    { file: `${along.slug}/${FEED_FILE}`, content: async () => feedText(released, told) },
    ...squaresOut(site).flatMap(({ compiled, pattern }) =>
      sizeFiles(compiled, pattern, offered, mark ?? undefined),
    ),
    pictures,
    ...photographFiles({ slug: along.slug, photographs: site.photographs }, site.folder),
    ...weeks,
    ...(complete ? whole : []),
  ];
}

async function squarePhotographs(site: AlongSite) {
  const printed = new Map<string, readonly BookletPhotograph[]>();
  for (const { compiled, pattern } of squaresOut(site))
    printed.set(compiled.slug, await paperPhotographs(compiled.photographs, pattern));
  return printed;
}
