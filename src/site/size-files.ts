/** A compiled pattern -> the files beside its pages: a picture of each size, its charts, and the booklets that the site offers. */

import { createHash } from 'node:crypto';
import { markPages } from '../booklet/mark-pages.ts';
import type { CompiledPattern, CompiledSize } from '../compiled.ts';
import { paintSvg } from '../paint/svg.ts';
import type { Pattern } from '../pattern/pattern.ts';
import type { Scene } from '../scene/scene.ts';
import { chartFileName } from './addresses.ts';
import { bookletFile } from './booklet-file.ts';
import { coverFileName, coverOf } from './cover-picture.ts';
import { folderOf, photographFiles } from './make-pictures.ts';
import { offeredBooklets } from './offered-booklets.ts';
import type { FileToMake } from './site-file.ts';
import { type SiteSettings, USUAL_SETTINGS } from './site-settings.ts';

/** `mark` stands on every page of the booklets and on every drawing. */
export function sizeFiles(
  compiled: CompiledPattern,
  pattern: Pattern,
  settings: SiteSettings = USUAL_SETTINGS,
  mark?: string,
): FileToMake[] {
  const booklets = offeredBooklets(compiled, pattern, settings).map(({ sizes, choice, folder, file }) => ({
    file: [...folder, file].join('/'),
    content: () => bookletFile(compiled, sizes, mark === undefined ? choice : { ...choice, mark }),
  }));
  const madeOf = allItIsMadeOf(compiled, pattern, settings, mark);
  return [
    ...photographFiles(compiled, folderOf(pattern)),
    ...compiled.sizes.flatMap((size) => filesOf(compiled, size, pattern, (scene) => marked(scene, mark))),
    ...booklets,
  ].map((each) => ({ ...each, madeOf }));
}

function allItIsMadeOf(
  { slug, photographs }: CompiledPattern,
  { source }: Pattern,
  settings: SiteSettings,
  mark: string | undefined,
): string {
  const all = JSON.stringify([slug, source.text, photographs, settings, mark ?? null]);
  return createHash('sha256').update(all).digest('hex');
}

function marked(scene: Scene, mark: string | undefined): Scene {
  return mark === undefined ? scene : (markPages([scene], mark)[0] ?? scene);
}

function filesOf(
  compiled: CompiledPattern,
  size: CompiledSize,
  pattern: Pattern,
  asShown: (scene: Scene) => Scene,
): FileToMake[] {
  const folder = `${compiled.slug}/${size.slug}`;
  const charts = (['US', 'UK'] as const).flatMap((terms) =>
    [false, true].flatMap((leftHanded) =>
      (leftHanded ? size.leftHandedCharts : size.charts)[terms].map((chart, part) => ({
        file: `${folder}/${chartFileName(compiled.slug, size.slug, part, terms, leftHanded)}`,
        content: async () => paintSvg(asShown(chart.scene), { idPrefix: 'chart', colours: 'plain' }),
      })),
    ),
  );
  const cover = coverOf(pattern, size);
  const covers =
    cover === null
      ? []
      : [
          {
            file: `${folder}/${coverFileName(compiled.slug, size.slug)}`,
            content: async () => paintSvg(asShown(cover), { idPrefix: 'cover', colours: 'plain' }),
          },
        ];
  return [...covers, ...charts];
}
