/** An along file's values, where they speak of hexagons -> what cannot be had with hexagons, or with anything else. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Span } from '../source/span.ts';
import { mostRounds } from './plan-hexagons.ts';
import type { AlongFile } from './schema.ts';

export function hexagonFaults(
  { blanket, border, match, weeks }: AlongFile,
  file: string,
  places: ReadonlyMap<string, Span>,
): Diagnostic[] {
  const at = (path: string) => ({ file, span: places.get(path) ?? { start: 0, end: 1 } });
  const second = blanket['second-rows'];
  if (blanket.shape !== 'hexagons')
    return second === undefined ? [] : [diagnose('along/second-rows', at('blanket.second-rows'), {})];
  const faults: Diagnostic[] = [];
  if (second === 'one fewer' && blanket.across < 2)
    faults.push(diagnose('along/empty-rows', at('blanket.across'), {}));
  if (border.edging !== undefined)
    faults.push(diagnose('along/hexagon-edging', at('border.edging'), { rounds: border.rounds }));
  const most = mostRounds(match.stitches);
  if (border.rounds > most)
    faults.push(
      diagnose('along/hexagon-border', at('border.rounds'), {
        rounds: border.rounds,
        stitches: match.stitches,
        most,
      }),
    );
  for (const [w, { choices }] of weeks.entries())
    for (const [c, { pattern, covers }] of choices.entries())
      if (covers !== undefined && covers > 1)
        faults.push(
          diagnose('along/hexagon-covers', at(`weeks.${w}.choices.${c}.covers`), {
            week: w + 1,
            pattern,
            covers,
          }),
        );
  return faults;
}
