/** A ring of chains has their number printed inside it, where a figure has room: not on a chain, nor on the dot that joins it. */

import { describe, expect, test } from 'vitest';
import { chartParts } from '../../src/chart/chart-parts.ts';
import { LABEL_MM, U_MM } from '../../src/chart/metrics.ts';
import { ringCount } from '../../src/chart/ring-count.ts';
import type { Fabric } from '../../src/fabric/fabric.ts';
import { onlyChart, placed, textsOf, workText } from './work-text.ts';

const KEY = 'how many chains the ring has';

const ringOf = (chains: number): Fabric =>
  workText({
    Disc: `Foundation: Ch ${chains}, join with sl st in first ch to form ring.
      Rnd 1 (RS): Ch 3 (counts as dc), 15 dc in ring, join with sl st in top of beg ch-3.`,
  });

describe.each([5, 6, 7, 8, 10, 12, 20])('a ring of %i chains', (chains) => {
  const fabric = ringOf(chains);
  const layout = placed(fabric);
  const count = ringCount(fabric, layout, { first: 0, end: chains }, []);

  test('says how many it has, and the key what the figure means', () => {
    expect(count?.text).toBe(String(chains));
    // In the ring, and once more beside the key's words.
    expect(textsOf(onlyChart(fabric)).filter((text) => text === String(chains))).toHaveLength(2);
    expect(textsOf(onlyChart(fabric))).toContain(KEY);
  });

  test('has it clear of every chain and of the joining dot', () => {
    if (count === null) throw new Error('no count');
    const halfWide = (chains > 9 ? 1 : 0.5) * LABEL_MM.ringCount * 0.55;
    const middle = -count.y + LABEL_MM.ringCount * 0.33;
    for (let i = 0; i <= chains; i += 1) {
      for (const t of [0, 0.25, 0.5, 0.75, 1]) {
        const x = ((layout.footX[i] ?? 0) * (1 - t) + (layout.headX[i] ?? 0) * t) * U_MM;
        const y = ((layout.footY[i] ?? 0) * (1 - t) + (layout.headY[i] ?? 0) * t) * U_MM;
        const aside = Math.max(0, Math.abs(x - count.x) - halfWide);
        const above = Math.max(0, Math.abs(y - middle) - LABEL_MM.ringCount * 0.35);
        // Half of a chain's thickness.
        expect(Math.hypot(aside, above)).toBeGreaterThan(0.19 * U_MM);
      }
    }
  });

  test('has it for left-handed makers as well', () => {
    const [chart] = chartParts(fabric, { terms: 'US', title: 'T', key: false, leftHanded: true });
    expect(chart && textsOf(chart.scene)).toContain(String(chains));
  });
});

test('a ring too small for a figure has none, and then the key does not speak of it', () => {
  expect(ringCount(ringOf(4), placed(ringOf(4)), { first: 0, end: 4 }, [])).toBeNull();
  expect(textsOf(onlyChart(ringOf(4)))).not.toContain(KEY);
});

test('the number makes way for a dot inside the ring, and is left out where there is no way', () => {
  const fabric = ringOf(8);
  const layout = placed(fabric);
  const standing = ringCount(fabric, layout, { first: 0, end: 8 }, []);
  // The dot is the stitch after the ring.
  layout.headX[8] = layout.footX[8] = 0;
  layout.footY[8] = 0.3;
  layout.headY[8] = 0.6;
  const moved = ringCount(fabric, layout, { first: 0, end: 8 }, []);
  expect(moved?.y).toBeGreaterThan(standing?.y ?? Number.POSITIVE_INFINITY);
  layout.footY[8] = -0.5;
  layout.headY[8] = 0.5;
  expect(ringCount(fabric, layout, { first: 0, end: 8 }, [])).toBeNull();
});
