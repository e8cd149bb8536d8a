/** The squares of an along that are out -> a script that holds their pictures, with the colours left open, for the planner to draw. */

import { shaded } from '../chart/row-pens.ts';
import { paintSvg } from '../paint/svg.ts';
import { ownName } from '../pattern/own-name.ts';
import { type AlongSite, squaresOut } from './along-site.ts';
import { coverOf } from './cover-picture.ts';
import type { SiteFile } from './site-file.ts';

export const PICTURES_SCRIPT = 'squares.js';

/** How `chart/fabric-picture.ts` shades a strand: the rim darker, the gleam lighter. */
const RIM = [0, 0.45] as const;
const GLEAM = [255, 0.28] as const;

/** A script rather than data, so that a page opened from a folder on the disk can have it. */
export function picturesScript(site: AlongSite, folder: string): SiteFile {
  const pictures = Object.fromEntries(
    squaresOut(site).flatMap(({ compiled, pattern, size }) => {
      const scene = coverOf(pattern, size);
      if (scene === null) return [];
      const svg = paintSvg(scene, { idPrefix: 'square', colours: 'plain' });
      const inner = svg.replace(/^[\s\S]*?<defs\/?>(?:<\/defs>)?/, '').replace(/<\/svg>\s*$/, '');
      return [[ownName(compiled.slug), openColours(rounded(inner), site)]];
    }),
  );
  return {
    file: `${folder}/${PICTURES_SCRIPT}`,
    content: `window.alongSquares=${JSON.stringify(pictures)};\n`,
  };
}

/** Tenths are finer than a place of the plan can show. */
function rounded(svg: string): string {
  return svg.replace(/-?\d+\.\d\d+/g, (n) => String(Math.round(Number(n) * 10) / 10));
}

/** `#6d5f8d` -> `{D}`, its rim `{D-}`, its gleam `{D+}`. */
function openColours(svg: string, { figures }: AlongSite): string {
  let open = svg;
  for (const { letter, hex } of figures.yarns) {
    if (hex === null || !/^#[0-9a-f]{6}$/i.test(hex)) continue;
    const ink = `#${hex.slice(1).toLowerCase()}` as const;
    open = open
      .replaceAll(shaded(ink, ...RIM), `{${letter}-}`)
      .replaceAll(shaded(ink, ...GLEAM), `{${letter}+}`)
      .replaceAll(ink, `{${letter}}`);
  }
  return open;
}
