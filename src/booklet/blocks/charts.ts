/** Charts in, what flows out: drawn in the text where they fit, turned on their side or spread over sheets where not. */

import type { Scene } from '../../scene/scene.ts';
import type { BookletChart } from '../booklet-input.ts';
import { type ChartPlan, KEY_GAP_MM, planChart } from '../chart-plan.ts';
import { scaledShapes } from '../draw-lines.ts';
import { finderMap, silhouetteOf } from '../finder-map.ts';
import { layKey } from '../lay-key.ts';
import { renamedShapes, withOwnSymbols } from '../own-symbols.ts';
import { withReadableLabels } from '../readable-labels.ts';
import { plain, wideHeading } from '../section.ts';
import { fullWidth, type Setting, setText } from '../set-text.ts';
import { type KeyEntry, splitKey } from '../split-key.ts';
import { type Bookmark, type Flowing, keepTogether, moved, type Strip, withSpaceBefore } from '../strip.ts';
import { figureTag, headingTag, tagged } from '../tags.ts';
import { keyBeside, sheetHeading, sheetHeadingMm, wholeSheet } from './chart-sheet.ts';
import { tileSheets } from './tile-sheets.ts';

export interface DrawnCharts {
  readonly items: readonly Flowing[];
  /** Parts whose chart is too large to be drawn. */
  readonly left: readonly string[];
}

export function charts(entries: readonly BookletChart[], heading: string, setting: Setting): DrawnCharts {
  const blocks = entries.map((chart, index) => {
    const first = index === 0;
    const head = [
      ...(first ? wideHeading(heading, setting) : []),
      ...(entries.length > 1 ? caption(chart.part, setting) : []),
    ];
    const title = [first ? heading : null, entries.length > 1 || !first ? chart.part : null]
      .filter((word) => word !== null)
      .join(': ');
    const bookmark: Bookmark = first ? { title: heading, level: 1 } : { title: chart.part, level: 2 };
    return chartBlock({ title, bookmark, head, prefix: `chart${index + 1}` }, chart, setting);
  });
  return {
    items: blocks.flatMap(({ items }) => items),
    left: entries.flatMap(({ part }, index) => (blocks[index]?.left ? [part] : [])),
  };
}

/** How a chart is introduced, and what its symbols are called by. */
interface Opening {
  readonly title: string;
  readonly bookmark: Bookmark;
  readonly head: readonly Strip[];
  readonly prefix: string;
}

interface ChartBlock {
  readonly items: readonly Flowing[];
  readonly left: boolean;
}

function chartBlock(opening: Opening, chart: BookletChart, setting: Setting): ChartBlock {
  const { title, bookmark, prefix } = opening;
  const { drawing, entries, plan, head, words } = chooseDrawing(chart, opening, setting);
  const named = withOwnSymbols(drawing, prefix);
  const { form } = setting.grid.format;
  const scene =
    plan.kind === 'too large'
      ? named
      : withReadableLabels(named, plan.scale, plan.kind === 'in text' ? form : plan.format.form);
  const ownEntries = entries.map((entry) => ({ ...entry, shapes: renamedShapes(entry.shapes, prefix) }));
  const key = keyStrips(ownEntries, named.symbols, setting);
  switch (plan.kind) {
    case 'in text':
      return drawn(keepTogether([...head, figure(scene, plan.scale, setting), ...key]));
    case 'sheet':
      return drawn([
        ...(isLoose(plan, setting) ? keepTogether([...head, ...looseNote(setting)]) : []),
        wholeSheet({ title, note: words, scene, entries: ownEntries }, plan, bookmark, setting),
      ]);
    case 'sheets':
      return drawn([
        ...keepTogether([...head, ...sheetsNote(drawing, plan, setting), ...key]),
        ...tileSheets({ title, note: words, scene, entries: ownEntries }, plan, setting),
      ]);
    case 'too large':
      return { items: keepTogether([...head, ...tooLargeNote(plan.sheets, setting)]), left: true };
  }
}

function drawn(items: readonly Flowing[]): ChartBlock {
  return { items, left: false };
}

interface Chosen {
  readonly drawing: Scene;
  readonly entries: readonly KeyEntry[];
  readonly plan: ChartPlan;
  readonly head: readonly Strip[];
  /** What is not drawn stitch for stitch. */
  readonly words: string | null;
}

/** The whole where it goes on one sheet; else with a window of what repeats, as little left out as brings it there. */
function chooseDrawing(chart: BookletChart, { head, title }: Opening, setting: Setting): Chosen {
  const planned = (scene: Scene, words: string | null): Chosen => {
    const introduced = words === null ? head : [...head, ...foldedNote(words, setting)];
    const { drawing, entries } = splitKey(scene);
    const plan = planChart(drawing, setting.grid.format, {
      headingMm: stackHeight(introduced) + setting.grid.gap.afterHeading,
      sheetHeadingMm: (grid) =>
        sheetHeadingMm(sheetHeading(title, words, grid.bodyWidthMm, { ...setting, grid })),
      keyMm: (grid) => (entries.length > 0 ? KEY_GAP_MM + layKey(entries, grid).heightMm : 0),
      keyBeside: (grid) => keyBeside(entries, { ...setting, grid }),
    });
    return { drawing, entries, plan, head: introduced, words };
  };
  let best = planned(chart.scene, null);
  if (sheetsOf(best.plan, setting) === 1) return best;
  for (const { scene, words } of chart.folded) {
    const tried = planned(scene, words);
    if (sheetsOf(tried.plan, setting) < sheetsOf(best.plan, setting)) best = tried;
    if (sheetsOf(best.plan, setting) === 1) break;
  }
  return best;
}

/** A loose sheet counts as one more than a page of the booklet. */
function sheetsOf(plan: ChartPlan, setting: Setting): number {
  switch (plan.kind) {
    case 'in text':
      return 1;
    case 'sheet':
      return isLoose(plan, setting) ? 2 : 1;
    case 'sheets':
      return plan.across * plan.down;
    case 'too large':
      return plan.sheets;
  }
}

/** Too large for a page that is folded. */
function isLoose(plan: Extract<ChartPlan, { kind: 'sheet' | 'sheets' }>, { grid }: Setting): boolean {
  return plan.format.form !== grid.format.form;
}

function looseNote(setting: Setting): Strip[] {
  return note('The chart stands on a loose sheet, printed after the pages of the booklet.', setting);
}

function foldedNote(words: string, setting: Setting): Strip[] {
  return note(`${words} The chart of every stitch stands on the page of the pattern.`, setting);
}

function caption(text: string, setting: Setting): Strip[] {
  return withSpaceBefore(
    setText(
      [{ text, face: 'title-bold' }],
      setting.grid.type.part,
      fullWidth(setting),
      setting,
      headingTag(3),
    ),
    setting.grid.gap.part,
  );
}

function figure(scene: Scene, scale: number, setting: Setting): Strip {
  const xMm = (setting.grid.bodyWidthMm - scene.widthMm * scale) / 2;
  return {
    kind: 'strip',
    heightMm: scene.heightMm * scale,
    spaceBeforeMm: setting.grid.gap.afterHeading,
    keepWithNext: false,
    shapes: [tagged([scaledShapes(scene.shapes, scale, xMm, 0)], figureTag(scene.alternative))],
    symbols: scene.symbols,
  };
}

function keyStrips(entries: readonly KeyEntry[], symbols: Scene['symbols'], setting: Setting): Strip[] {
  if (entries.length === 0) return [];
  const key = layKey(entries, setting.grid);
  return [{ kind: 'strip', spaceBeforeMm: KEY_GAP_MM, keepWithNext: false, symbols, ...key }];
}

function sheetsNote(drawing: Scene, plan: Extract<ChartPlan, { kind: 'sheets' }>, setting: Setting): Strip[] {
  const { across, down } = plan;
  if (across * down === 1)
    return isLoose(plan, setting)
      ? looseNote(setting)
      : note('The chart follows on a sheet of its own.', setting);
  const where = isLoose(plan, setting) ? 'stands after the pages of the booklet' : 'follows';
  const text =
    `The chart ${where} on ${across * down} sheets, ${across} across and ${down} down, as this map shows. At a broken ` +
    'line another sheet joins, the one whose number stands beside it; up to the thin line beyond, the stitches are ' +
    'drawn on both sheets. Cut one of the two along its broken line and lay it on the other, cross on cross.';
  return [...note(text, setting), ...sheetsMap(drawing, plan, setting)];
}

function tooLargeNote(sheets: number, setting: Setting): Strip[] {
  const text =
    `On paper this chart would take ${sheets} sheets at a size that can be read, so it is left out. The written rows ` +
    'say the same, and the chart stands on the page of the pattern.';
  return note(text, setting);
}

function note(text: string, setting: Setting): Strip[] {
  return withSpaceBefore(
    setText(plain(text), setting.grid.type.body, fullWidth(setting), setting),
    setting.grid.gap.paragraph,
  );
}

/** Large enough to read at a glance; the same map stands small on each sheet. */
const MAP_MM = { widthMm: 90, heightMm: 80 } as const;
/** Beside large print, which leaves it less room. */
const SMALL_MAP_MM = { widthMm: 90, heightMm: 46 } as const;

function sheetsMap(drawing: Scene, plan: Extract<ChartPlan, { kind: 'sheets' }>, setting: Setting): Strip[] {
  const map = finderMap(
    silhouetteOf(drawing),
    plan,
    setting.grid.oneColumn ? SMALL_MAP_MM : MAP_MM,
    null,
    setting.grid.type,
  );
  return [
    {
      kind: 'strip',
      heightMm: map.heightMm,
      spaceBeforeMm: setting.grid.gap.afterHeading,
      keepWithNext: false,
      shapes: [
        tagged(
          [moved(map.shapes, (setting.grid.bodyWidthMm - map.widthMm) / 2, 0)],
          figureTag(`Map of the sheets: ${plan.across} across and ${plan.down} down.`),
        ),
      ],
    },
  ];
}

function stackHeight(strips: readonly Strip[]): number {
  return strips.reduce(
    (sum, strip, index) => sum + strip.heightMm + (index > 0 ? strip.spaceBeforeMm : 0),
    0,
  );
}
