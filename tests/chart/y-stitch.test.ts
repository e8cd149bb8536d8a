/** A stitch worked half way up the one before it is drawn as the trade draws the Y-stitch: an arm from the middle of the stem. */

import { describe, expect, test } from 'vitest';
import { crossedStems } from '../../src/chart/crossings.ts';
import { stitchRows } from '../../src/chart/elements.ts';
import { type Fabric, INTO, targets } from '../../src/fabric/fabric.ts';
import { FOOT_GAP_U } from '../../src/symbols/stitch-symbol.ts';
import { overlaps } from './overlaps.ts';
import { at, onlyChart, placed, rowNamed, stitchesOf, textsOf, workText } from './work-text.ts';

const KEY = 'foot on a stem: half way up that stitch';

const forked = (place: string): Fabric =>
  workText(
    {
      Panel: `Foundation: Ch 12.
      Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. (11 sc)
      Row 2: Ch 4 (counts as tr), sk first st, *sk next st, Y-st in next st, sk next st; rep from * 2 more times, tr in last st, turn. (3 Y-sts, 2 tr)
      Row 3: Ch 1, sc in first tr, *sc in next dc, sc in next ch-1 sp, sc in next tr; rep from * 2 more times, sc in top of tch. (11 sc)`,
    },
    `special:\n  Y-st: tr in next st, ch 1, dc in ${place}\n`,
  );

describe('a Y-stitch', () => {
  const fabric = forked('middle of post of tr just made');
  const layout = placed(fabric);
  const arms = stitchesOf(fabric, rowNamed(fabric, 'Row 2'), 'dc');

  test('has an arm that is worked into the stem of its own tall stitch', () => {
    expect(arms).toHaveLength(3);
    for (const arm of arms) {
      expect(fabric.where[arm]).toBe(INTO.stem);
      // The chain lies between.
      expect([...targets(fabric, arm)]).toEqual([arm - 2]);
    }
  });

  test('is drawn with the arm from the middle of the stem to the height of its head', () => {
    for (const arm of arms) {
      const [stem = 0] = targets(fabric, arm);
      const middle = {
        x: (at(layout.footX, stem) + at(layout.headX, stem)) / 2,
        y: (at(layout.footY, stem) + at(layout.headY, stem)) / 2,
      };
      // What is drawn begins above the foot by the air that a foot has under it.
      expect(Math.hypot(at(layout.footX, arm) - middle.x, at(layout.footY, arm) - middle.y)).toBeCloseTo(
        FOOT_GAP_U,
      );
      expect(at(layout.footY, arm)).toBeLessThan(middle.y);
      expect(at(layout.headY, arm)).toBeCloseTo(at(layout.headY, stem), 1);
      expect(Math.abs(at(layout.headX, arm) - at(layout.headX, stem))).toBeGreaterThan(0.8);
    }
    expect(overlaps(fabric, layout)).toEqual([]);
    expect(crossedStems(fabric, stitchRows(fabric), layout, [rowNamed(fabric, 'Row 2')]).size).toBe(0);
  });

  test('is explained in the key, which other charts do not have', () => {
    expect(textsOf(onlyChart(fabric))).toContain(KEY);
    const apart = workText({
      Panel: `Foundation: Ch 6.
      Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. (5 sc)`,
    });
    expect(textsOf(onlyChart(apart))).not.toContain(KEY);
  });

  test('cannot be made into a stitch that was not', () => {
    expect(() => forked('middle of post of dc just made')).toThrow(/dc/);
  });
});
