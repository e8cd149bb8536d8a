/** Instructions as a designer writes them in; the fabric of the first size, and its chart, out. */

import { chartParts } from '../../src/chart/chart-parts.ts';
import { stitchRows } from '../../src/chart/elements.ts';
import { emptyLayout, type Layout } from '../../src/chart/layout.ts';
import { placePiece } from '../../src/chart/place-part.ts';
import type { Fabric } from '../../src/fabric/fabric.ts';
import { workSize } from '../../src/fabric/work.ts';
import { readPattern } from '../../src/pattern/read-pattern.ts';
import type { Scene, Shape } from '../../src/scene/scene.ts';

const HEAD = `title: Test
terms: US
yarn:
  A: {colour: reed, weight: 4, fibre: wool}
  B: {colour: foam, weight: 4, fibre: wool}
sizes:
  - {name: one, repeats: 3, rows: 6}
`;

/** `parts` by name; a part whose name has a colon goes onto the part named after it: `Edging:Panel`. */
export function workText(parts: Readonly<Record<string, string>>, special = ''): Fabric {
  const blocks = Object.entries(parts).map(([names, work]) => {
    const [name, onto] = names.split(':');
    const lines = work
      .trim()
      .split('\n')
      .map((line) => `      ${line.trim()}`);
    return [`  - name: ${name}`, ...(onto ? [`    onto: ${onto}`] : []), '    work: |', ...lines].join('\n');
  });
  const text = `${HEAD}${special}parts:\n${blocks.join('\n')}\n`;
  const { pattern, diagnostics } = readPattern({ file: 'test.yaml', text }, 'test');
  if (pattern === null) throw new Error(diagnostics.map(({ message }) => message).join('\n'));
  const { fabric, diagnostics: faults } = workSize(pattern, 0, { repeats: 3, rows: 6 });
  const errors = [...diagnostics, ...faults].filter(({ severity }) => severity === 'error');
  if (errors.length > 0) throw new Error(errors.map(({ message }) => message).join('\n'));
  return fabric;
}

/** Every stitch of the first piece placed, in stitch units, y up. */
export function placed(fabric: Fabric): Layout {
  const layout = emptyLayout(fabric.count);
  placePiece(
    fabric,
    stitchRows(fabric),
    layout,
    fabric.parts.map((_, index) => index),
  );
  return layout;
}

export function onlyChart(fabric: Fabric, terms: 'US' | 'UK' = 'US'): Scene {
  const [chart, ...others] = chartParts(fabric, { terms, title: 'Test', key: true });
  if (chart === undefined || others.length > 0) throw new Error(`${others.length + 1} charts`);
  return chart.scene;
}

/** Indices of a row's stitches of one kind. */
export function stitchesOf(fabric: Fabric, row: number, id: string): number[] {
  const { first = 0, end = 0 } = fabric.rows[row] ?? {};
  return Array.from({ length: end - first }, (_, k) => first + k).filter(
    (i) => fabric.stitches[fabric.kind[i] ?? 0] === id,
  );
}

export function rowNamed(fabric: Fabric, label: string): number {
  return fabric.rows.findIndex((row) => row.label === label);
}

/** All shapes, groups opened. */
export function allShapes(shapes: readonly Shape[]): Shape[] {
  return shapes.flatMap((shape) =>
    shape.kind === 'group' || shape.kind === 'link' ? [shape, ...allShapes(shape.shapes)] : [shape],
  );
}

/** Numbers of the stitches drawn, in order, once for each drawing of one. */
export function drawnStitches(scene: Scene): number[] {
  return allShapes(scene.shapes)
    .flatMap((shape) =>
      'data' in shape && shape.data?.stitch !== undefined ? [Number(shape.data.stitch)] : [],
    )
    .sort((a, b) => a - b);
}

export function textsOf(scene: Scene): string[] {
  return allShapes(scene.shapes).flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []));
}

/** A number of a layout's array that must be there. */
export function at(values: Float64Array, i: number): number {
  const value = values[i];
  if (value === undefined) throw new Error(`no stitch ${i}`);
  return value;
}
