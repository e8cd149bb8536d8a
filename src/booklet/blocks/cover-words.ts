/** A pattern in, the words at the head of its cover out: title, size and what it is. */

import { mmFromPt } from '../../units.ts';
import { printFinishedSize } from '../../wording/finished-size.ts';
import { type BookletInput, sizeName, termsOf } from '../booklet-input.ts';
import type { Run } from '../break-lines.ts';
import { HOUSE_WORDS } from '../house-words.ts';
import { keepNumbersTogether } from '../no-break.ts';
import { ACCENT } from '../page-grid.ts';
import { type Place, type Setting, setText } from '../set-text.ts';
import { headingTag } from '../tags.ts';
import type { TypeSize } from '../type-sizes.ts';
import { type Block, cutStack } from './cut-stack.ts';

/** The largest that sets the title in at most as many lines as given, no word cut, is used; else the smallest. */
const SMALLEST_TITLE = { fontPt: 17, linePt: 21, lines: 8 } as const;
const TITLE_SIZES: readonly (TypeSize & { readonly lines: number })[] = [
  { fontPt: 36, linePt: 42, lines: 2 },
  { fontPt: 28, linePt: 33, lines: 3 },
  { fontPt: 22, linePt: 27, lines: 4 },
  SMALLEST_TITLE,
];
/** Lines of the words under the title before they are cut short. */
const ABOUT_LINES = 12;

export function coverWords(input: BookletInput, setting: Setting): Block {
  const terms = termsOf(input.words);
  const full: Place = { xMm: 0, widthMm: setting.grid.bodyWidthMm };
  const reading: Place = { xMm: 0, widthMm: Math.min(full.widthMm, setting.grid.mainWidthMm) };
  const kicker = `Crochet pattern in ${HOUSE_WORDS[terms].terms}`;
  return cutStack(
    [
      {
        runs: [{ text: kicker, face: 'text', ink: ACCENT }],
        type: setting.grid.type.body,
        place: full,
        gapMm: 0,
        most: 1,
      },
      {
        runs: titleRuns(input),
        ...titleType(input, full, setting),
        place: full,
        gapMm: 3,
        tag: headingTag(1),
      },
      { runs: subtitle(input), type: setting.grid.type.size, place: full, gapMm: 2.5, most: 3 },
      {
        runs: [{ text: input.pattern.about, face: 'text' }],
        type: setting.grid.type.lead,
        place: reading,
        gapMm: 6,
        most: ABOUT_LINES,
      },
    ],
    setting,
  );
}

function titleRuns(input: BookletInput): Run[] {
  return [{ text: input.pattern.title, face: 'title-bold' }];
}

function titleType(input: BookletInput, place: Place, setting: Setting): { type: TypeSize; most: number } {
  const words = input.pattern.title.split(/\s+/);
  const type = TITLE_SIZES.find((size) => {
    const sizeMm = mmFromPt(size.fontPt);
    const wholeWords = words.every((word) => setting.measure(word, 'title-bold', sizeMm) <= place.widthMm);
    return wholeWords && setText(titleRuns(input), size, place, setting).length <= size.lines;
  });
  const { lines, ...chosen } = type ?? SMALLEST_TITLE;
  return { type: chosen, most: lines };
}

/** `Size small, 15 × 15 cm (6 × 6 in)`. */
function subtitle(input: BookletInput): Run[] {
  const name = sizeName(input);
  const only = input.sizes.length === 1 ? input.sizes[0] : undefined;
  const several = input.sizes.length > 1 ? `In ${input.sizes.length} sizes` : null;
  const words = [name ? `Size ${name}` : several, only ? printFinishedSize(only) : null].filter(
    (word) => word !== null,
  );
  return words.length > 0 ? [{ text: keepNumbersTogether(words.join(', ')), face: 'title' }] : [];
}
