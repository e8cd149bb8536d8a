/** A compiled pattern -> the files beside its pages: a picture of each size, its charts, and a booklet for each paper, terms and hand. */

import { PAPERS } from '../booklet/paper.ts';
import type { CompiledPattern, CompiledSize } from '../compiled.ts';
import { paintSvg } from '../paint/svg.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { bookletHands } from '../print-booklet.ts';
import { bookletFileName, chartFileName } from './addresses.ts';
import { bookletFile } from './booklet-file.ts';
import { coverFileName, coverOf } from './cover-picture.ts';
import { ownDialect } from './dialect-names.ts';
import type { SiteFile } from './site-file.ts';

/** Booklets are set in abbreviated words; `rowfold booklet` makes those in full. */
const BOOKLET_DIALECTS = ['us', 'uk'] as const;

/** A file's name, and how it is made when its turn comes: a large collection never stands in memory whole. */
export interface FileToMake {
  readonly file: string;
  readonly content: () => Promise<SiteFile['content']>;
}

export function sizeFiles(compiled: CompiledPattern, pattern: Pattern): FileToMake[] {
  return compiled.sizes.flatMap((size) => filesOf(compiled, size, pattern));
}

function filesOf(compiled: CompiledPattern, size: CompiledSize, pattern: Pattern): FileToMake[] {
  const folder = `${compiled.slug}/${size.slug}`;
  const charts = (['US', 'UK'] as const).flatMap((terms) =>
    [false, true].flatMap((leftHanded) =>
      (leftHanded ? size.leftHandedCharts : size.charts)[terms].map((chart, part) => ({
        file: `${folder}/${chartFileName(compiled.slug, size.slug, part, terms, leftHanded)}`,
        content: async () => paintSvg(chart.scene, { idPrefix: 'chart', colours: 'plain' }),
      })),
    ),
  );
  const booklets = BOOKLET_DIALECTS.flatMap((dialect) =>
    bookletHands(size).flatMap((leftHanded) =>
      Object.values(PAPERS).map(({ name: paper }) => {
        const named = dialect === ownDialect(pattern) ? null : dialect;
        return {
          file: `${folder}/${bookletFileName(compiled.slug, size.slug, paper, named, leftHanded)}`,
          content: () => bookletFile(compiled, size, { dialect, paper, leftHanded }),
        };
      }),
    ),
  );
  const cover = coverOf(pattern, size);
  const covers =
    cover === null
      ? []
      : [
          {
            file: `${folder}/${coverFileName(compiled.slug, size.slug)}`,
            content: async () => paintSvg(cover, { idPrefix: 'cover', colours: 'plain' }),
          },
        ];
  return [...covers, ...charts, ...booklets];
}
