/** What the designer used of a yarn: for a size there is, and with a ball that tells how long a weight of it is. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { nearest } from '../diagnostics/nearest.ts';
import { type Publication, placeOf } from './publication.ts';

export function yarnUsed({ pattern }: Publication): Diagnostic[] {
  const names = pattern.sizes.map(({ name }) => name);
  const at = (...paths: string[]) => ({ file: pattern.source.file, span: placeOf(pattern, ...paths) });
  const faults: Diagnostic[] = [];
  for (const { letter, used } of pattern.yarns)
    for (const { size, lengthM } of used) {
      const place = size === null ? `yarn.${letter}.used` : `yarn.${letter}.used.${size}`;
      const where = at(place, `yarn.${letter}`);
      const unknown = size === null ? names.length > 1 : !names.includes(size);
      if (unknown) {
        const near = size === null ? null : nearest(size, names);
        faults.push(diagnose('yarn/used-size', where, { letter, size, names, near }));
      } else if (lengthM === null) faults.push(diagnose('yarn/used-ball', where, { of: `yarn ${letter}` }));
    }
  const { gauge } = pattern;
  if (gauge !== null && gauge.tookM === null && pattern.places.has('gauge.took'))
    faults.push(diagnose('yarn/used-ball', at('gauge.took'), { of: 'the swatch' }));
  return faults;
}
