/** The worded parts in, the instructions section out: a heading a part, a tick box a row. */

import type { WordedLine, WordedPart, WordedPattern } from '../../wording/words.ts';
import type { BookletPhotograph } from '../booklet-photograph.ts';
import type { HouseWords } from '../house-words.ts';
import { wideHeading } from '../section.ts';
import { fullWidth, type Setting, setText } from '../set-text.ts';
import { keepTogether, type Strip, withSpaceBefore } from '../strip.ts';
import { headingTag, listTag } from '../tags.ts';
import { instructionRow } from './instruction-row.ts';
import { photographStrips } from './photographs.ts';

/** Lines of a first row that is too short to stand alone under its heading. */
const SHORT_FIRST_ROW = 2;

export function instructions(
  words: WordedPattern,
  house: HouseWords,
  setting: Setting,
  photographsOf: (part: string) => readonly BookletPhotograph[] = () => [],
): Strip[] {
  const parts = words.parts.filter((part) => part.lines.length > 0);
  if (parts.length === 0) return [];
  return [
    ...wideHeading(house.instructions, setting),
    ...parts.flatMap((part, index) => partStrips(part, index === 0, photographsOf(part.name), setting)),
  ];
}

function partStrips(
  part: WordedPart,
  first: boolean,
  photographs: readonly BookletPhotograph[],
  setting: Setting,
): Strip[] {
  const name = [{ text: part.name, face: 'title-bold' as const }];
  const make = part.make ? [{ text: `   ${part.make}`, face: 'text-italic' as const }] : [];
  const heading = setText(
    [...name, ...make],
    setting.grid.type.part,
    fullWidth(setting),
    setting,
    headingTag(3),
  );
  const marked = heading.map((strip, index) =>
    index === 0 ? { ...strip, bookmark: { title: part.name, level: 2 as const } } : strip,
  );
  const list = listTag();
  // A heading takes two rows along, so that a foundation chain does not stand alone with it at the foot of a page.
  const rows = part.lines.flatMap((line, index) => {
    const strips = instructionRow(line, setting, list);
    const last = strips.length - 1;
    const short = index === 0 && part.lines.length > 1 && last < SHORT_FIRST_ROW;
    // "Fasten off A." is no row: at the head of a page it would stand without what it ends.
    const ends = part.lines[index + 1]?.label === null && !isLong(part.lines[index + 1], setting);
    return short || ends
      ? strips.map((strip, at) => (at === last ? { ...strip, keepWithNext: true } : strip))
      : strips;
  });
  return [
    ...keepTogether(
      withSpaceBefore(marked, first ? setting.grid.gap.paragraph : setting.grid.gap.part),
      true,
    ),
    ...withSpaceBefore(
      keepTogether(photographStrips(photographs, fullWidth(setting), setting), true),
      setting.grid.gap.afterHeading,
    ),
    ...withSpaceBefore(rows, setting.grid.gap.afterHeading),
  ];
}

/** A line without a label that is more than the end of the row before it. */
function isLong(line: WordedLine | undefined, setting: Setting): boolean {
  return line !== undefined && instructionRow(line, setting, listTag()).length > 1;
}
