/** The stitch table is whole: both dialects, sound figures, and the same facts as the published data in shared/. */

import { describe, expect, test } from 'vitest';
import abbreviations from '../../shared/abbreviations.json' with { type: 'json' };
import shared from '../../shared/stitches.json' with { type: 'json' };
import type { StitchRow } from '../../src/stitches/stitch-row.ts';
import { findStitch, STITCHES, stitchById, stitchNames, termsOf } from '../../src/stitches/table.ts';

const DIALECTS = ['US', 'UK'] as const;

describe('the stitch table', () => {
  test('holds so many stitches of each family', () => {
    const counts: Record<string, number> = {};
    for (const { family } of STITCHES) counts[family] = (counts[family] ?? 0) + 1;
    expect(counts).toEqual({
      chain: 1,
      slip: 1,
      basic: 7,
      extended: 4,
      // sc to dtr, 2 to 7 together.
      together: 30,
      start: 1,
      foundation: 4,
      // sc to dtr, from the front and from the back, one and two together.
      post: 20,
      // 2 to 7 legs: popcorns of 3 stitches, bobbles and clusters of 4, puffs of 1.
      gathered: 72,
      linked: 2,
      fancy: 15,
    });
  });

  test.each(STITCHES.map((row) => [row.id, row] as const))(
    '%s has an abbreviation and a name in both dialects',
    (_, row) => {
      for (const terms of DIALECTS) {
        expect(termsOf(row, terms).abbr).toMatch(/^[A-Za-z0-9][A-Za-z0-9 -]*$/);
        expect(termsOf(row, terms).name).toMatch(/^(?:[2-7] )?[a-z][a-z0-9 ]{4,}$/);
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

  test('only the chain, slip stitches and the magic ring are left out of a count', () => {
    expect(STITCHES.filter((row) => !row.counted).map((row) => row.id)).toEqual([
      'ch',
      'sl-st',
      'mr',
      'surf-sl-st',
    ]);
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

  test('covers every stitch of the table but those that follow the same pattern', () => {
    const known = new Set(inTable.map(({ row }) => row.id));
    const own = (row: StitchRow): boolean =>
      !['together', 'gathered'].includes(row.family) && !row.id.endsWith('2tog');
    expect(STITCHES.filter((row) => own(row) && !known.has(row.id)).map((row) => row.id)).toEqual([
      // As the dc of their kind.
      'standing-sc',
      'standing-hdc',
      'standing-tr',
      'long-hdc',
      'long-tr',
    ]);
    expect([...known].filter((id) => id.endsWith('tog'))).toEqual([
      'sc2tog',
      'sc3tog',
      'hdc2tog',
      'dc2tog',
      'dc3tog',
      'tr2tog',
    ]);
  });

  test('and only what the table leaves out on purpose is not in it', () => {
    const known = new Set(inTable.map(({ row }) => row.id));
    expect(shared.stitches.flatMap(({ id }) => (known.has(id) ? [] : [id]))).toEqual([
      // Modifiers, read as such.
      'flo',
      'blo',
      '3lo',
      // Words without one meaning, which a pattern defines.
      'inc',
      'cl',
      'puff',
      'pop',
      'bobble',
      'shell',
      'fan',
      'v-st',
      'picot',
      // Two stitches as one thing, which a pattern writes out: crossed, or one half way up the other.
      'crossed-dc',
      'y-st',
      'x-st',
      // Not made with a hook.
      'inv-join',
      '3dc-group',
    ]);
  });

  test.each(inTable.map((pair) => [pair.row.id, pair] as const))(
    'agrees with the table on %s',
    (_, { data, row }) => {
      expect([row.us.abbr, row.us.name]).toEqual([data.us.abbr, data.us.name]);
      // For the stitch that starts without a chain no UK abbreviation is known.
      expect([data.uk.abbr === null ? null : row.uk.abbr, row.uk.name]).toEqual([data.uk.abbr, data.uk.name]);
      if (data.turningChain !== null) {
        expect(row.turningChain).toEqual({
          chains: data.turningChain.chains,
          counts: data.turningChain.counts,
        });
      }
      if (data.heightChains !== null) expect(row.heightChains).toBeCloseTo(middle(data.heightChains), 5);
      // What is made of a plain stitch stands as high as that; the data round it to 1.95 for dc.
      const heightSlack = row.legOf === row.id ? 1e-6 : 0.051;
      if (data.heightInSc !== null) {
        expect(Math.abs(row.heightInSc - middle(data.heightInSc))).toBeLessThan(heightSlack);
      }
      // The data count the chain that a foundation stitch makes for itself; of the row below it uses nothing.
      const own = row.enters === 'own chain' ? 1 : 0;
      if (data.worksInto !== null) expect(row.uses + own).toBe(data.worksInto);
      if (data.makes !== null) expect(row.makes).toBe(data.makes);
    },
  );

  // Heights of cl, puff, pop and bobble: published pages say how they are made, the figures are remembered.
  test.each([
    ['cl', 'dc3-cl'],
    ['puff', 'hdc3-puff'],
    ['pop', 'dc5-popcorn'],
    ['bobble', 'dc5-bobble'],
  ])('gives %s the height that the table gives %s', (dataId, id) => {
    const data = shared.stitches.find((each) => each.id === dataId);
    const row = stitchById(id);
    expect(row.heightChains).toBe(middle(data?.heightChains ?? []));
    expect(Math.abs(row.heightInSc - middle(data?.heightInSc ?? []))).toBeLessThan(0.051);
  });

  test('names no field as published in a row that is known from memory', () => {
    const overclaimed = shared.stitches.filter(
      (row) => (row.known === 'published') !== row.published.length > 0,
    );
    expect(overclaimed).toEqual([]);
  });
});

describe('the pairs of US and UK terms in shared/', () => {
  // Spellings that mean something else in running instructions: main colour, skip, right side, another crossed stitch.
  const ELSEWHERE = new Set(['MC', 'SK', 'rs', 'X-st']);
  const lists = [
    ...abbreviations.abbreviations
      .filter(({ kind }) => kind === 'stitch')
      .map((data) => ({ ...data, list: 'abbreviations' })),
    ...shared.stitches.map((data) => ({ ...data, list: 'stitches' })),
  ];
  const pairs = lists.filter(({ id }) => STITCHES.some((row) => row.id === id));

  test('are as many as the lists hold', () => {
    expect(pairs.filter(({ list }) => list === 'abbreviations')).toHaveLength(34);
    expect(pairs.filter(({ list }) => list === 'stitches')).toHaveLength(46);
  });

  test.each(
    pairs.map((data) => [`${data.us.abbr} / ${data.uk.abbr} (${data.list}, ${data.source})`, data] as const),
  )('%s is one stitch in both, by every spelling listed', (_, data) => {
    for (const [terms, { abbr, also }] of [
      ['US', data.us],
      ['UK', data.uk],
    ] as const) {
      const spellings = [...(abbr === null ? [] : [abbr]), ...also].filter((words) => !ELSEWHERE.has(words));
      for (const words of spellings) expect(findStitch(words, terms)?.id, `${terms} ${words}`).toBe(data.id);
    }
  });
});

describe('stitches made from plain ones', () => {
  const family = (name: string): StitchRow[] => STITCHES.filter((row) => row.family === name);

  test('a post stitch enters from the side its name says and leaves one stitch, lower than a plain one', () => {
    for (const row of family('post').filter(({ uses }) => uses === 1)) {
      expect(row.enters).toBe(row.us.name.startsWith('front') ? 'front post' : 'back post');
      expect(row.uk.abbr).toMatch(row.enters === 'front post' ? /^R.*F$/ : /^R.*B$/);
      expect(row.how).toContain(row.enters === 'front post' ? 'from front to back' : 'from back to front');
      expect(row.heightInSc).toBeLessThan(stitchById(row.legOf).heightInSc);
    }
  });

  test('two post stitches together are two of the post stitch they are named after', () => {
    const both = family('post').filter(({ uses }) => uses === 2);
    expect(both).toHaveLength(10);
    for (const row of both) {
      const leg = stitchById(row.legOf);
      expect(row.us.abbr).toBe(`${leg.us.abbr}2tog`);
      expect([row.uk.abbr, row.enters]).toEqual([`${leg.uk.abbr}2tog`, leg.enters]);
      expect(row.yarnInSc).toBeLessThan(2 * leg.yarnInSc);
    }
  });

  test('a foundation stitch goes into nothing below, and takes the yarn of its chain as well', () => {
    for (const row of family('foundation')) {
      expect([row.uses, row.makes, row.enters]).toEqual([0, 1, 'own chain']);
      expect(row.yarnInSc).toBeCloseTo(stitchById(row.legOf).yarnInSc + stitchById('ch').yarnInSc);
      expect(row.how).toContain('through 1 loop for its own chain');
    }
  });

  test('what is gathered has as many legs as its name says, in one place', () => {
    for (const row of family('gathered')) {
      expect([row.uses, row.makes, row.inOnePlace]).toEqual([1, 1, true]);
      expect(row.us.abbr).toMatch(new RegExp(`^${row.legs}-${row.legOf} `));
      expect(row.how).toContain(`${row.legs} times`);
      expect(row.yarnInSc).toBeGreaterThan((row.legs ?? 0) * stitchById(row.legOf).yarnInSc * 0.6);
    }
  });

  test('only a popcorn has whole legs, which take more yarn than as many joined', () => {
    const whole = STITCHES.filter((row) => row.wholeLegs === true);
    expect(new Set(whole.map((row) => row.us.abbr.split(' ')[1]))).toEqual(new Set(['popcorn']));
    expect(stitchById('dc5-popcorn').yarnInSc).toBeCloseTo(5 * stitchById('dc').yarnInSc);
    expect(stitchById('dc5-bobble').yarnInSc).toBe(stitchById('dc5tog').yarnInSc);
  });

  test('a puff closes through all its loops: 7 for three', () => {
    expect(stitchById('hdc3-puff').how).toContain('all 7 loops');
    expect(stitchById('hdc5-puff').how).toContain('all 11 loops');
  });

  test('what begins a row without a chain counts, and is drawn, as the plain stitch', () => {
    for (const id of ['sc', 'hdc', 'dc', 'tr']) {
      const [row, plain] = [stitchById(`standing-${id}`), stitchById(id)];
      const same = (each: StitchRow) => [
        each.symbol,
        each.counted,
        each.heightInSc,
        each.yarnInSc,
        each.uses,
      ];
      expect(same(row)).toEqual(same(plain));
      expect(row.legOf).toBe(id);
      expect(row.turningChain).toBeNull();
    }
  });

  test('only spikes and long stitches have to say which row below they go into', () => {
    expect(STITCHES.filter((row) => row.reachesDown === true).map((row) => row.id)).toEqual([
      'spike-sc',
      'long-hdc',
      'long-dc',
      'long-tr',
    ]);
  });

  test('only chains and love knots lie along the row', () => {
    expect(STITCHES.filter((row) => row.lies === true).map((row) => row.id)).toEqual(['ch', 'love-knot']);
  });
});

/** Of `3 or more` it is 3. */
function middle([from, to]: readonly (number | null)[]): number {
  const least = from ?? Number.NaN;
  return (least + (to ?? least)) / 2;
}
