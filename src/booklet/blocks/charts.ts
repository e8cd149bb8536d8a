/** Charts in, what flows out: drawn in the text where they fit, turned on their side or spread over sheets where not. */

import type { Scene } from '../../scene/scene.ts';
import type { BookletChart } from '../booklet-input.ts';
import { KEY_GAP_MM, LEGIBLE_SCALE, planChart } from '../chart-plan.ts';
import { scaledShapes } from '../draw-lines.ts';
import { layKey } from '../lay-key.ts';
import { withOwnSymbols } from '../own-symbols.ts';
import { GAP, TYPE } from '../page-grid.ts';
import type { PaperName } from '../paper.ts';
import { withReadableLabels } from '../readable-labels.ts';
import { plain, wideHeading } from '../section.ts';
import { fullWidth, type Setting, setText } from '../set-text.ts';
import { type KeyEntry, splitKey } from '../split-key.ts';
import { type Bookmark, type Flowing, keepTogether, type Strip, withSpaceBefore } from '../strip.ts';
import { tileSheets, wholeSheet } from './chart-sheets.ts';

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
  const scene = withReadableLabels(drawing, plan.scale);
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
        ...keepTogether([...head, ...spreadNote(plan, setting), ...key]),
        ...tileSheets({ title, scene, entries }, plan, paper),
      ];
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

function spreadNote(
  { across, down, scale }: { across: number; down: number; scale: number },
  setting: Setting,
): Strip[] {
  const small =
    scale < LEGIBLE_SCALE - 0.001
      ? ' It is drawn smaller than reads well; the written rows say the same.'
      : '';
  const text =
    `The chart follows on ${across * down} sheets, ${across} across and ${down} down. Cut or fold them at the corner ` +
    `marks and lay them edge to edge.${small}`;
  return withSpaceBefore(setText(plain(text), TYPE.body, fullWidth(setting), setting), GAP.paragraph);
}

function stackHeight(strips: readonly Strip[]): number {
  return strips.reduce(
    (sum, strip, index) => sum + strip.heightMm + (index > 0 ? strip.spaceBeforeMm : 0),
    0,
  );
}
