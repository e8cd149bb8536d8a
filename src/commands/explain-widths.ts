/** What is proved of a pattern's widths and repeated rounds -> lines for people, or data for other programs. */

import type { CompiledPattern } from '../compiled.ts';
import { wrap } from './explain-table.ts';

export interface WidthsJson {
  /** Over which foundations each flat part comes out: any multiple of `of` chains plus `plus`, from `from` chains up. */
  readonly multiples: readonly {
    readonly part: string;
    /** The size whose numbers were worked; null where all sizes have the same. */
    readonly size: string | null;
    readonly of: number;
    readonly plus: number;
    readonly from: number;
    /** The same in stitches of the first row. */
    readonly stitches: { readonly of: number; readonly plus: number };
    /** For every width; otherwise for those tried only. */
    readonly proved: boolean;
  }[];
  /** Rounds or rows that are repeated and gain as many stitches each time: proved for as many as are worked. */
  readonly growths: readonly {
    readonly part: string;
    readonly from: string;
    readonly cycle: number;
    readonly adds: number;
  }[];
}

export function widthsJson({ multiples, growths }: CompiledPattern): WidthsJson {
  return {
    multiples: multiples.flatMap(({ part, size, found }) => {
      if (found === null) return [];
      const { of, plus, from, stitches, proved } = found;
      return [{ part, size, of, plus, from, stitches, proved }];
    }),
    growths: growths
      .filter(({ adds }) => adds !== 0)
      .map(({ part, from, cycle, adds }) => ({ part, from, cycle, adds })),
  };
}

/** Null where there is nothing to tell. */
export function widthsText(compiled: CompiledPattern, width: number): string | null {
  const { multiples, growths } = widthsJson(compiled);
  const lines = [
    ...multiples.map(({ part, size, of, plus, from, stitches, proved }) => {
      const any = of === 1 ? 'any number of chains' : `any multiple of ${said({ of, plus })} chains`;
      const inStitches = of === 1 || stitches.of <= 1 ? '' : ` (a multiple of ${said(stitches)} stitches)`;
      return `${part}${size === null ? '' : `, size ${size},`} comes out over ${any}${inStitches}, from ${from} up: ${proved ? 'proved for every width' : 'at every width tried, not proved'}.`;
    }),
    ...growths.map(({ part, from, cycle, adds }) => {
      const each = cycle === 1 ? `from ${from} on each adds` : `from ${from} on every ${cycle} add`;
      const stitches = Math.abs(adds) === 1 ? 'stitch' : 'stitches';
      const does = adds < 0 ? each.replace(/adds?\b/, (word) => (word === 'adds' ? 'loses' : 'lose')) : each;
      return `${part}: ${does} ${Math.abs(adds)} ${stitches}: proved for as many as are worked.`;
    }),
  ];
  return lines.length === 0
    ? null
    : ['Other sizes than these', '', ...lines.flatMap((line) => wrap(line, width))].join('\n');
}

function said({ of, plus }: { readonly of: number; readonly plus: number }): string {
  return plus === 0 ? String(of) : `${of} plus ${plus}`;
}
