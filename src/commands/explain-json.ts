/** Compiled patterns -> the JSON of `check --explain --json`: how every row of every size comes to its number. */

import { type ExplainedRow, explainRows } from '../row-table/explain-rows.ts';
import type { CompiledFile } from '../site/compile-patterns.ts';
import { type LineMap, lineMap, placeOf } from '../source/line-map.ts';
import { type WidthsJson, widthsJson } from './explain-widths.ts';

export interface ExplainedJson {
  readonly file: string;
  readonly title: string | null;
  readonly sizes: readonly { readonly name: string; readonly rows: readonly ExplainedRowJson[] }[];
  readonly otherSizes: WidthsJson;
}

export interface ExplainedRowJson
  extends Pick<ExplainedRow, 'part' | 'label' | 'takes' | 'skips' | 'leaves' | 'makes' | 'how'> {
  /** Line of the file it was written on. */
  readonly line: number;
  readonly stated: string | null;
  /** It could not be worked to its end: the numbers tell how far it came. */
  readonly broken: boolean;
}

export function explainJson(files: readonly CompiledFile[]): readonly ExplainedJson[] {
  return files.map(({ file, text, compiled }) => {
    const map = lineMap(text);
    return {
      file,
      title: compiled.pattern?.title ?? null,
      sizes: compiled.sizes.map((size) => ({
        name: size.size.name,
        rows: explainRows(size, compiled.pattern?.terms ?? 'US').map((row) => rowJson(row, map)),
      })),
      otherSizes: widthsJson(compiled),
    };
  });
}

function rowJson(row: ExplainedRow, map: LineMap): ExplainedRowJson {
  const { part, label, account, takes, skips, leaves, makes, how } = row;
  const { line } = placeOf(map, account.span.start);
  return {
    part,
    label,
    line,
    takes,
    skips,
    leaves,
    makes,
    how,
    stated: account.stated,
    broken: account.broken,
  };
}
