/** The stitch table is whole: both dialects, sound figures, and the same facts as the published data in shared/. */

import { describe, expect, test } from 'vitest';
import shared from '../../shared/stitches.json' with { type: 'json' };
import { STITCHES, stitchById, stitchNames, termsOf } from '../../src/stitches/table.ts';

const DIALECTS = ['US', 'UK'] as const;

describe('the stitch table', () => {
  test('holds the chain, the slip stitch, seven plain and four extended stitches, thirty decreases and the magic ring', () => {
    const counts: Record<string, number> = {};
    for (const { family } of STITCHES) counts[family] = (counts[family] ?? 0) + 1;
    expect(counts).toEqual({ chain: 1, slip: 1, basic: 7, extended: 4, together: 30, start: 1 });
  });

  test.each(STITCHES.map((row) => [row.id, row] as const))(
    '%s has an abbreviation and a name in both dialects',
    (_, row) => {
      for (const terms of DIALECTS) {
        expect(termsOf(row, terms).abbr).toMatch(/^[A-Za-z][A-Za-z0-9 ]*$/);
        expect(termsOf(row, terms).name).toMatch(/^[a-z][a-z0-9 ]{4,}$/);
      }
      expect(row.symbol).not.toBe('');
      expect(row.source).toMatch(/^(?:published: .+|memory)$/);
    },
  );

  test.each(DIALECTS)('no two stitches share a spelling in %s terms', (terms) => {
    const owners = new Map<string, string>();
    const shared: string[] = [];
    for (const { words, row } of stitchNames(terms)) {
      const plain = words.replace(/[ -]/g, '');
      const owner = owners.get(plain) ?? row.id;
      if (owner !== row.id) shared.push(`${words}: ${owner}, ${row.id}`);
      owners.set(plain, row.id);
    }
    expect(shared).toEqual([]);
  });

  test('how a stitch is made is told without the name of a stitch, so that it reads the same in both dialects', () => {
    for (const row of STITCHES) {
      expect(row.how, row.id).not.toMatch(/\b(?:sc|hdc|dc|tr|htr|dtr|crochet|treble|yo|yrh|skip|miss)\b/);
      expect(row.how, row.id).toMatch(/^[A-Z].*\.$/);
    }
  });

  test('only the chain, the slip stitch and the magic ring are left out of a count', () => {
    expect(STITCHES.filter((row) => !row.counted).map((row) => row.id)).toEqual(['ch', 'sl-st', 'mr']);
  });

  test('a decrease takes as many stitches as its name says and leaves one', () => {
    for (const row of STITCHES.filter((each) => each.family === 'together')) {
      expect(row.id).toBe(`${row.legOf}${row.uses}tog`);
      expect(row.makes).toBe(1);
      const leg = stitchById(row.legOf);
      expect(row.heightInSc).toBe(leg.heightInSc);
      expect(row.yarnInSc).toBeGreaterThan((row.uses - 1) * leg.yarnInSc * 0.5);
      expect(row.yarnInSc).toBeLessThan(row.uses * leg.yarnInSc);
    }
  });

  test('a decrease closes through every loop on the hook: 3 for two sc, 5 for two hdc, 4 for three dc', () => {
    expect(stitchById('sc2tog').how).toContain('all 3 loops');
    expect(stitchById('hdc2tog').how).toContain('all 5 loops');
    expect(stitchById('dc3tog').how).toContain('all 4 loops');
    expect(stitchById('tr2tog').how).toContain('wrap the yarn twice');
  });

  test('a taller plain stitch has one more wrap, one more turning chain and more yarn', () => {
    const basic = STITCHES.filter((row) => row.family === 'basic');
    basic.forEach((row, at) => {
      const before = basic[at - 1];
      if (before === undefined) return;
      expect(row.heightChains, row.id).toBe(before.heightChains + 1);
      expect(row.turningChain?.chains, row.id).toBe(row.heightChains);
      expect(row.heightInSc, row.id).toBeGreaterThan(before.heightInSc);
      expect(row.yarnInSc, row.id).toBeGreaterThan(before.yarnInSc);
    });
    expect(basic.map((row) => row.yarnOvers)).toEqual([0, 1, 1, 2, 3, 4, 5]);
  });

  test('an unknown id is a fault of the program and is said so', () => {
    expect(() => stitchById('xyz')).toThrow('No stitch xyz in the table.');
  });
});

describe('the data in shared/stitches.json', () => {
  const inTable = shared.stitches.flatMap((data) => {
    const row = STITCHES.find((each) => each.id === data.id);
    return row === undefined ? [] : [{ data, row }];
  });

  test('covers every stitch of the table but the decreases that follow the same pattern', () => {
    const known = new Set(inTable.map(({ row }) => row.id));
    expect(STITCHES.filter((row) => row.family !== 'together' && !known.has(row.id))).toEqual([]);
    expect([...known].filter((id) => id.endsWith('tog'))).toEqual([
      'sc2tog',
      'sc3tog',
      'hdc2tog',
      'dc2tog',
      'dc3tog',
      'tr2tog',
    ]);
  });

  test.each(inTable.map((pair) => [pair.row.id, pair] as const))(
    'agrees with the table on %s',
    (_, { data, row }) => {
      expect([row.us.abbr, row.us.name]).toEqual([data.us.abbr, data.us.name]);
      expect([row.uk.abbr, row.uk.name]).toEqual([data.uk.abbr, data.uk.name]);
      if (data.turningChain !== null) {
        expect(row.turningChain).toEqual({
          chains: data.turningChain.chains,
          counts: data.turningChain.counts,
        });
      }
      if (data.heightChains !== null) expect(row.heightChains).toBeCloseTo(middle(data.heightChains), 5);
      // A decrease stands as high as its leg; the data round that to 1.95 for dc.
      const heightSlack = row.family === 'together' ? 0.051 : 1e-6;
      if (data.heightInSc !== null) {
        expect(Math.abs(row.heightInSc - middle(data.heightInSc))).toBeLessThan(heightSlack);
      }
      if (data.worksInto !== null) expect(row.uses).toBe(data.worksInto);
      if (data.makes !== null) expect(row.makes).toBe(data.makes);
    },
  );

  test('names no field as published in a row that is known from memory', () => {
    const overclaimed = shared.stitches.filter(
      (row) => (row.known === 'published') !== row.published.length > 0,
    );
    expect(overclaimed).toEqual([]);
  });
});

function middle(range: readonly (number | null)[]): number {
  return ((range[0] ?? Number.NaN) + (range[1] ?? Number.NaN)) / 2;
}
