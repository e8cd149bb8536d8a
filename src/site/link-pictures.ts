/** What is published -> the pictures shown where its links are passed on: one of the site, of each pattern and of each along. */

import { createHash } from 'node:crypto';
import { dayWords } from '../along/clock-words.ts';
import { weeksOut } from '../along/release.ts';
import type { CompiledPattern } from '../compiled.ts';
import { outlineText } from '../paint/outline-text.ts';
import { paintSvg } from '../paint/svg.ts';
import { ownName } from '../pattern/own-name.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { rulerFor } from '../print-booklet.ts';
import type { Scene } from '../scene/scene.ts';
import { mmFromIn } from '../units.ts';
import { FILES_FOLDER } from './addresses.ts';
import { type AlongSite, squaresOut } from './along-site.ts';
import { coverOf } from './cover-picture.ts';
import {
  drawLinkPicture,
  LINK_PICTURE,
  type LinkPictureImages,
  type LinkPictureWords,
} from './draw-link-picture.ts';
import { readFontFiles } from './font-files.ts';
import { keptFile } from './kept-files.ts';
import { loadSharp } from './load-sharp.ts';
import { folderOf, squarePhotograph } from './make-pictures.ts';
import type { SiteFile } from './site-file.ts';
import type { SiteSettings } from './site-settings.ts';

export interface LinkPicture {
  /** Pages in it and below it show this one, unless they have a nearer; the whole site's has none. */
  readonly folder: string;
  readonly file: string;
  readonly words: LinkPictureWords;
  readonly images: () => Promise<LinkPictureImages>;
}

export function linkPictures(
  collection: readonly CompiledPattern[],
  alongs: readonly AlongSite[],
  settings: SiteSettings,
): LinkPicture[] {
  const patterns = collection.flatMap((compiled) =>
    compiled.pattern === null ? [] : [{ compiled, pattern: compiled.pattern }],
  );
  const squares = alongs.flatMap((along) => squaresOut(along));
  return [
    siteLink(patterns, settings),
    ...[...patterns, ...squares].map(({ compiled, pattern }) => patternLink(compiled, pattern, settings)),
    ...alongs.map((along) => alongLink(along, settings)),
  ];
}

interface Drawable {
  readonly compiled: CompiledPattern;
  readonly pattern: Pattern;
}

function siteLink(patterns: readonly Drawable[], { name, line }: SiteSettings): LinkPicture {
  const title = name ?? 'Crochet patterns';
  return {
    folder: '',
    file: `${FILES_FOLDER}/link.png`,
    words: {
      title,
      line: line ?? 'Every size, every row, every count; charts and booklets.',
      foot: '',
      alternative: `${title}: drawings of the stitches of some of its patterns`,
    },
    images: async () => ({ kind: 'drawings', scenes: patterns.flatMap(drawingOf) }),
  };
}

function patternLink(compiled: CompiledPattern, pattern: Pattern, { name }: SiteSettings): LinkPicture {
  const { slug, photographs } = compiled;
  const [cover] = photographs;
  const sizes =
    pattern.sizes.length > 1 ? `Crochet pattern in ${pattern.sizes.length} sizes` : 'Crochet pattern';
  return {
    folder: slug,
    file: `${slug}/${ownName(slug)}-link.png`,
    words: {
      title: pattern.title,
      line: pattern.designer === null ? sizes : `${sizes}, by ${pattern.designer}`,
      foot: name ?? '',
      alternative:
        cover === undefined
          ? `${pattern.title}: a drawing of its stitches`
          : `${pattern.title}: ${cover.shows}`,
    },
    images: async () =>
      cover === undefined
        ? { kind: 'drawings', scenes: drawingOf({ compiled, pattern }) }
        : {
            kind: 'photograph',
            jpeg: await squarePhotograph(cover, folderOf(pattern), LINK_PICTURE.heightPx),
          },
  };
}

/** Nothing but what is out: the squares that came last, and what the schedule says to everyone. */
function alongLink(along: AlongSite, { name }: SiteSettings): LinkPicture {
  const {
    released,
    photographs: [cover],
  } = along;
  const { slug, title, zone } = released.along;
  const [first] = released.weeks;
  const latest = [...weeksOut(released)].reverse().flatMap(({ squares }) => squares);
  const begins = first === undefined ? '' : `, from ${dayWords(first.releaseMs, zone)}`;
  return {
    folder: slug,
    file: `${slug}/${slug}-link.png`,
    words: {
      title,
      line: `A crochet-along in ${released.weeks.length} weeks${begins}`,
      foot: name ?? '',
      alternative:
        cover !== undefined
          ? `${title}: ${cover.shows}`
          : latest.length === 0
            ? title
            : `${title}: drawings of squares that are out`,
    },
    images: async () =>
      cover === undefined
        ? { kind: 'drawings', scenes: latest.flatMap(drawingOf) }
        : { kind: 'photograph', jpeg: await squarePhotograph(cover, along.folder, LINK_PICTURE.heightPx) },
  };
}

function drawingOf({ compiled, pattern }: Drawable): Scene[] {
  const [first] = compiled.sizes;
  const scene = first === undefined ? null : coverOf(pattern, first);
  return scene === null ? [] : [scene];
}

export async function linkPictureScene(picture: LinkPicture, { palette }: SiteSettings): Promise<Scene> {
  const { measureText } = rulerFor(readFontFiles());
  return drawLinkPicture(picture.words, await picture.images(), palette.light, measureText);
}

/** Letters go as outlines: what fonts a computer has makes no difference to the picture. */
export async function linkPictureFile(picture: LinkPicture, settings: SiteSettings): Promise<SiteFile> {
  const scene = outlineText(await linkPictureScene(picture, settings), readFontFiles());
  const svg = paintSvg(scene, { idPrefix: 'link', colours: 'plain' });
  const hash = createHash('sha256').update(svg).digest('hex').slice(0, 32);
  const content = await keptFile(`${hash}-link.png`, async () => {
    const sharp = await loadSharp();
    return (
      // As many dots to the inch as millimetres: a millimetre of the drawing is a dot.
      sharp(Buffer.from(svg), { density: mmFromIn(1) })
        .resize(LINK_PICTURE.widthPx, LINK_PICTURE.heightPx)
        .flatten({ background: settings.palette.light.paper })
        // Few enough colours for a third of the bytes, and no eye can tell on a picture this small.
        .png({ palette: true, quality: 90, effort: 7 })
        .toBuffer()
    );
  });
  return { file: picture.file, content };
}
