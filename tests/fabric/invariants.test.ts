import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { planSize } from '../../src/check/plan-size.ts';
import type { Fabric } from '../../src/fabric/fabric.ts';
import { NONE, targets } from '../../src/fabric/fabric.ts';
import { workSize } from '../../src/fabric/work.ts';
import type { Pattern } from '../../src/pattern/pattern.ts';
import { readPattern } from '../../src/pattern/read-pattern.ts';
import { printLine, printSteps } from '../../src/wording/print-line.ts';
import { DEMO_NAMES, demoText } from '../demo/demo-patterns.ts';
import { expectSound } from './structure.ts';
import { fabricOf, rowOf, workPiece } from './work-text.ts';

function readDemo(name: string): Pattern {
  const { pattern } = readPattern({ file: name, text: demoText(name) }, name);
  if (pattern === null) throw new Error(`${name} is no pattern`);
  return pattern;
}

function fabricsOf(pattern: Pattern): readonly Fabric[] {
  return pattern.sizes.map((_size, index) => {
    const { plan } = planSize(pattern, index);
    if (plan === null) throw new Error('no plan');
    return workSize(pattern, index, plan).fabric;
  });
}

describe.each(DEMO_NAMES)('the demo pattern %s', (name) => {
  test('is sound in every size', () => {
    const fabrics = fabricsOf(readDemo(name));
    expect(fabrics.length).toBeGreaterThan(1);
    for (const fabric of fabrics) expectSound(fabric);
  });

  test('printed in the other terms and worked again is the same fabric', () => {
    const pattern = readDemo(name);
    const other = pattern.terms === 'US' ? 'UK' : 'US';
    const { text } = pattern.source;
    const work = (part: Pattern['parts'][number]): string =>
      part.instructions.lines.map((line) => printLine(line, other, 'all')).join('\n');
    const special = pattern.specials.map(
      (one) => `  ${one.name}: {work: "${printSteps(one.steps, other)}", how: told}`,
    );
    const rewritten = [
      text.slice(0, text.indexOf('terms:')),
      `terms: ${other}\n`,
      // What stands before the first of these belongs to no terms.
      text.slice(text.indexOf('skill:'), text.search(/^(?:special|notes|parts):/m)),
      ...(special.length > 0 ? [`special:\n${special.join('\n')}\n`] : []),
      'parts:\n',
      ...pattern.parts.map(
        (part) =>
          `  - name: ${part.name}\n${part.onto === null ? '' : `    onto: ${part.onto}\n`}    work: |\n${work(part).replace(/^/gm, '      ')}\n`,
      ),
    ].join('');
    const again = readPattern({ file: name, text: rewritten }, name);
    expect(again.diagnostics.map(({ message }) => message)).toEqual([]);
    if (again.pattern === null) throw new Error('not read');
    expect(again.pattern.terms).toBe(other);
    expect(fabricsOf(again.pattern).map(bare)).toEqual(fabricsOf(pattern).map(bare));
  });
});

/** A fabric without where its words stand and how they were written. */
function bare(fabric: Fabric): unknown {
  const rows = fabric.rows.map(({ span: _span, stated: _stated, label: _label, ...row }) => row);
  return { ...fabric, rows };
}

/** One thing done along a row: its words, what it uses of the row below, and what it leaves. */
interface Bit {
  readonly words: string;
  readonly uses: number;
  readonly skips: number;
  readonly makes: number;
  readonly spaces: number;
}

const bit = (words: string, uses: number, makes: number, skips = 0, spaces = 0): Bit => ({
  words,
  uses,
  makes,
  skips,
  spaces,
});
const anyBit: fc.Arbitrary<Bit> = fc.oneof(
  fc.integer({ min: 1, max: 4 }).map((n) => bit(`sc in next ${n} sts`, n, n)),
  fc.integer({ min: 1, max: 3 }).map((n) => bit(`${n} dc in next st`, 1, n)),
  fc.constantFrom(
    bit('sc2tog', 2, 1),
    bit('hdc3tog over next 3 sts', 3, 1),
    bit('(dc, ch 1, dc) in next st', 1, 2, 0, 1),
    bit('ch 1, sk next st, sc in next st', 2, 1, 1, 1),
    bit('[sc in next st, 2 hdc in next st] twice', 4, 6),
    bit('tr in each of next 2 sts', 2, 2),
  ),
);

/** Rows that use up exactly what the row before made: bits first, single crochet over what is left. */
const anyRows = fc.tuple(
  fc.integer({ min: 4, max: 24 }),
  fc.array(fc.array(anyBit, { maxLength: 5 }), { minLength: 1, maxLength: 6 }),
);

function written(
  width: number,
  rows: readonly (readonly Bit[])[],
): { text: string; expected: { stitches: number; spaces: number; into: number }[] } {
  const lines = [`Ch ${width + 1}.`, 'Row 1: Sc in 2nd ch from hook and in each ch across.'];
  const expected: { stitches: number; spaces: number; into: number }[] = [];
  let below = width;
  rows.forEach((bits, i) => {
    let left = below;
    const taken: Bit[] = [];
    for (const one of bits) {
      if (one.uses > left) continue;
      left -= one.uses;
      taken.push(one);
    }
    if (left > 0) taken.push(bit(`sc in next ${left} sts`, left, left));
    const total = (of: (one: Bit) => number): number => taken.reduce((sum, one) => sum + of(one), 0);
    lines.push(
      `Row ${i + 2}: Ch 1 (does not count as a st), ${taken.map(({ words }) => words).join(', ')}. (${total(({ makes }) => makes)} sts)`,
    );
    expected.push({
      stitches: total(({ makes }) => makes),
      spaces: total(({ spaces }) => spaces),
      into: below - total(({ skips }) => skips),
    });
    below = total(({ makes }) => makes);
  });
  return { text: lines.join('\n'), expected };
}

describe('rows made up at random', () => {
  test('make what their words add up to, use all of the row below, and are sound', () => {
    fc.assert(
      fc.property(anyRows, ([width, rows]) => {
        const { text, expected } = written(width, rows);
        const fabric = fabricOf(text);
        expectSound(fabric);
        expected.forEach(({ stitches, spaces, into }, i) => {
          const row = rowOf(fabric, `Row ${i + 2}`);
          expect([row.stitches, row.spaces], text).toEqual([stitches, spaces]);
          const below = rowOf(fabric, `Row ${i + 1}`);
          const used = new Set<number>();
          // The turning chain stands on the first stitch too, but works nothing.
          for (let s = row.first; s < row.end; s += 1)
            if (fabric.countsAs[s] !== NONE) for (const target of targets(fabric, s)) used.add(target);
          for (const target of used) expect(target >= below.first && target < below.end).toBe(true);
          expect(used.size, text).toBe(into);
        });
      }),
      { numRuns: 150 },
    );
  });

  test('any one number changed is a fault in its row or the next, never silence', () => {
    const changed = fc.tuple(anyRows, fc.nat(5), fc.constantFrom(-1, 1));
    fc.assert(
      fc.property(changed, ([[width, rows], which, by]) => {
        const lines = written(width, rows).text.split('\n');
        const row = 2 + (which % rows.length);
        const line = lines[row] ?? '';
        // The stated count of one row, one too many or too few.
        const stated = line.replace(/\((\d+) sts\)$/, (_, n: string) => `(${Number(n) + by} sts)`);
        const text = lines.with(row, stated).join('\n');
        const { diagnostics } = workPiece({ work: text });
        // A count that takes in the ch-1 spaces is the habit of some houses.
        const single =
          (line.match(/ch 1, sk/g) ?? []).length + (line.match(/\(dc, ch 1, dc\)/g) ?? []).length;
        const habit = by === 1 && single === 1;
        expect(
          diagnostics.map(({ code }) => code),
          text,
        ).toEqual(habit ? [] : ['count/mismatch']);
      }),
      { numRuns: 100 },
    );
  });
});

describe('forty thousand stitches', () => {
  const rows = 200;
  const text = `Ch 201.\nRow 1: Sc in 2nd ch from hook and in each ch across. (200 sc)\nRow 2: Ch 1, *sc in next 3 sts, hdc in next st; rep from * across. (200 sts)\nRows 3-${rows}: Rep Row 2.`;
  test('are worked, sound, and held in arrays of numbers', () => {
    const fabric = fabricOf(text);
    // 201 chains, 200 sc, and 199 rows of a ch 1 and 200 stitches.
    expect(fabric.count).toBe(201 + 200 + (rows - 1) * 201);
    expectSound(fabric);
    expect(rowOf(fabric, `Row ${rows}`).byStitch).toEqual({ sc: 150, hdc: 50 });
    const bytes = [
      fabric.kind,
      fabric.countsAs,
      fabric.row,
      fabric.yarn,
      fabric.where,
      fabric.loop,
      fabric.flags,
      fabric.group,
      fabric.intoStart,
      fabric.into,
    ]
      .map(({ byteLength }) => byteLength)
      .reduce((sum, length) => sum + length, 0);
    expect(bytes / fabric.count).toBeLessThan(26);
    expect(fabric.stitches).toHaveLength(3);
  });
});
