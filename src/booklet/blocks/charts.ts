/** Charts in, what flows out: drawn in the text where they fit, turned on their side or spread over sheets where not. */

import type { Scene } from '../../scene/scene.ts';
import type { BookletChart } from '../booklet-input.ts';
import { type ChartPlan, KEY_GAP_MM, planChart } from '../chart-plan.ts';
import { scaledShapes } from '../draw-lines.ts';
import { finderMap, silhouetteOf } from '../finder-map.ts';
import { layKey } from '../lay-key.ts';
import { withOwnSymbols } from '../own-symbols.ts';
import { GAP, TYPE } from '../page-grid.ts';
import type { PaperName } from '../paper.ts';
import { withReadableLabels } from '../readable-labels.ts';
import { plain, wideHeading } from '../section.ts';
import { fullWidth, type Setting, setText } from '../set-text.ts';
import { type KeyEntry, splitKey } from '../split-key.ts';
import { type Bookmark, type Flowing, keepTogether, moved, type Strip, withSpaceBefore } from '../strip.ts';
import { wholeSheet } from './chart-sheet.ts';
import { tileSheets } from './tile-sheets.ts';

export function charts(
  entries: readonly BookletChart[],
  heading: string,
  paper: PaperName,
  setting: Setting,
): Flowing[] {
  return entries.flatMap((chart, index) =>
    chartBlock(
      { ...chart, scene: withOwnSymbols(chart.scene, `chart${index + 1}`) },
      entries.length > 1,
      index === 0 ? heading : null,
      paper,
      setting,
    ),
  );
}

/** `heading` opens the section, with the first chart only. */
function chartBlock(
  chart: BookletChart,
  named: boolean,
  heading: string | null,
  paper: PaperName,
  setting: Setting,
): Flowing[] {
  const { drawing, entries } = splitKey(chart.scene);
  const head = [
    ...(heading ? wideHeading(heading, setting) : []),
    ...(named ? caption(chart.part, setting) : []),
  ];
  const plan = planChart(drawing, paper, stackHeight(head) + GAP.afterHeading, (widthMm) =>
    entries.length > 0 ? KEY_GAP_MM + layKey(entries, widthMm).heightMm : 0,
  );
  const scene = plan.kind === 'too large' ? drawing : withReadableLabels(drawing, plan.scale);
  const title = [heading, named || !heading ? chart.part : null].filter((word) => word !== null).join(': ');
  const bookmark: Bookmark = heading ? { title: heading, level: 1 } : { title: chart.part, level: 2 };
  const key = keyStrips(entries, drawing.symbols, setting);
  switch (plan.kind) {
    case 'in text':
      return keepTogether([...head, figure(scene, plan.scale, setting), ...key]);
    case 'sheet':
      return [wholeSheet({ title, scene, entries }, plan, bookmark, paper)];
    case 'sheets':
      return [
        ...keepTogether([
          ...head,
          ...sheetsNote(plan, setting),
          ...sheetsMap(drawing, plan, setting),
          ...key,
        ]),
        ...tileSheets({ title, scene, entries }, plan, paper),
      ];
    case 'too large':
      return keepTogether([...head, ...tooLargeNote(plan.sheets, setting)]);
  }
}

function caption(text: string, setting: Setting): Strip[] {
  return withSpaceBefore(
    setText([{ text, face: 'title-bold' }], TYPE.part, fullWidth(setting), setting),
    GAP.part,
  );
}

function figure(scene: Scene, scale: number, setting: Setting): Strip {
  const xMm = (setting.grid.bodyWidthMm - scene.widthMm * scale) / 2;
  return {
    kind: 'strip',
    heightMm: scene.heightMm * scale,
    spaceBeforeMm: GAP.afterHeading,
    keepWithNext: false,
    shapes: [scaledShapes(scene.shapes, scale, xMm, 0)],
    symbols: scene.symbols,
  };
}

function keyStrips(entries: readonly KeyEntry[], symbols: Scene['symbols'], setting: Setting): Strip[] {
  if (entries.length === 0) return [];
  const key = layKey(entries, setting.grid.bodyWidthMm);
  return [{ kind: 'strip', spaceBeforeMm: KEY_GAP_MM, keepWithNext: false, symbols, ...key }];
}

function sheetsNote({ across, down }: { across: number; down: number }, setting: Setting): Strip[] {
  const text =
    `The chart follows on ${across * down} sheets, ${across} across and ${down} down, as this map shows. At a broken ` +
    'line another sheet joins, the one whose number stands beside it; up to the thin line beyond, the stitches are ' +
    'drawn on both sheets. Cut one of the two along its broken line and lay it on the other, cross on cross.';
  return note(text, setting);
}

function tooLargeNote(sheets: number, setting: Setting): Strip[] {
  const text =
    `On paper this chart would take ${sheets} sheets at a size that can be read, so it is left out. The written rows ` +
    'say the same, and the chart stands on the page of the pattern.';
  return note(text, setting);
}

function note(text: string, setting: Setting): Strip[] {
  return withSpaceBefore(setText(plain(text), TYPE.body, fullWidth(setting), setting), GAP.paragraph);
}

/** Large enough to read at a glance; the same map stands small on each sheet. */
const MAP_MM = { widthMm: 90, heightMm: 80 } as const;

function sheetsMap(drawing: Scene, plan: Extract<ChartPlan, { kind: 'sheets' }>, setting: Setting): Strip[] {
  const map = finderMap(silhouetteOf(drawing), plan, MAP_MM, null);
  return [
    {
      kind: 'strip',
      heightMm: map.heightMm,
      spaceBeforeMm: GAP.afterHeading,
      keepWithNext: false,
      shapes: [moved(map.shapes, (setting.grid.bodyWidthMm - map.widthMm) / 2, 0)],
    },
  ];
}

function stackHeight(strips: readonly Strip[]): number {
  return strips.reduce(
    (sum, strip, index) => sum + strip.heightMm + (index > 0 ? strip.spaceBeforeMm : 0),
    0,
  );
}
