/** The same work in other words of the trade: nothing is said against it, and every stitch stays where it was. */

import { describe, expect, test } from 'vitest';
import { readOriginals } from './collections.ts';
import { reword, rewordingFault } from './reword.ts';
import { REWORDINGS } from './rewordings.ts';

/** Every rewording in every pattern it applies to, or in every third of them, each beginning elsewhere. */
const every = process.env.ROWFOLD_LONG === undefined ? 3 : 1;
const originals = readOriginals();

test('there are at least sixty, each known by its own name', () => {
  expect(REWORDINGS.length).toBeGreaterThanOrEqual(60);
  expect(new Set(REWORDINGS.map(({ name }) => name)).size).toBe(REWORDINGS.length);
});

describe('says the same', () => {
  test.each(REWORDINGS.map((rewording, index) => [rewording.name, rewording, index] as const))(
    '%s',
    (_, rewording, index) => {
      const applies = originals.flatMap((original) => {
        const text = reword(original, rewording);
        return text === null ? [] : [{ original, text }];
      });
      expect(applies.length).toBeGreaterThan(0);
      const tried = applies.filter((_, at) => at % every === index % Math.min(every, applies.length));
      expect(tried.length).toBeGreaterThan(0);
      const faults = tried.map(({ original, text }) => ({
        name: original.name,
        fault: rewordingFault(original, text, rewording.told),
      }));
      expect(faults.filter(({ fault }) => fault !== null)).toEqual([]);
    },
  );
});
