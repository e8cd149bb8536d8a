/** A heading and what stands under it in, strips out: a heading never stands alone at the foot of a page. */

import type { Run } from './break-lines.ts';
import { ACCENT } from './page-grid.ts';
import { fullWidth, headedBy, mainColumn, type Setting, setText, sideColumn } from './set-text.ts';
import { keepTogether, noStrayLines, type Strip, withSpaceBefore } from './strip.ts';
import { headingTag } from './tags.ts';

/** Heading in the side column, body in the main column beside it. */
export function sideSection(heading: string, body: readonly Strip[], setting: Setting): Strip[] {
  if (body.length === 0) return [];
  const head = setText(
    [{ text: heading, face: 'title-bold', ink: ACCENT }],
    setting.grid.type.side,
    sideColumn(setting),
    setting,
    headingTag(2),
  );
  const [first, ...rest] = headedBy(head, body, setting);
  if (!first) return [];
  return [
    {
      ...first,
      spaceBeforeMm: setting.grid.gap.section,
      ruleAbove: true,
      bookmark: { title: heading, level: 1 },
    },
    ...rest,
  ];
}

/** Heading across the page, over what takes the whole width. */
export function wideHeading(heading: string, setting: Setting): Strip[] {
  const strips = setText(
    [{ text: heading, face: 'title-bold', ink: ACCENT }],
    setting.grid.type.section,
    fullWidth(setting),
    setting,
    headingTag(2),
  );
  return keepTogether(
    withSpaceBefore(strips, setting.grid.gap.section + setting.grid.gap.afterSection),
    true,
  ).map((strip, index) =>
    index === 0 ? { ...strip, ruleAbove: true, bookmark: { title: heading, level: 1 as const } } : strip,
  );
}

/** Paragraphs in the main column. */
export function paragraphs(texts: readonly (readonly Run[])[], setting: Setting): Strip[] {
  return texts.flatMap((runs, index) =>
    withSpaceBefore(
      noStrayLines(setText(runs, setting.grid.type.body, mainColumn(setting), setting)),
      index === 0 ? 0 : setting.grid.gap.paragraph,
    ),
  );
}

/** Plain text as one run. */
export function plain(text: string): Run[] {
  return [{ text, face: 'text' }];
}
