import { Resvg } from '@resvg/resvg-js';
import { describe, expect, test } from 'vitest';
import { contrast } from '../../src/chart/row-pens.ts';
import { INKS } from '../../src/paint/inks.ts';
import { paintSvg } from '../../src/paint/svg.ts';
import type { Scene } from '../../src/scene/scene.ts';
import { granny, SAMPLES } from '../chart/samples.ts';
import { onlyChart } from '../chart/work-text.ts';

const plain = (scene: Scene): string => paintSvg(scene, { idPrefix: 'x', colours: 'plain' });

/** Share of the pixels that are not white, and the colours that occur. */
function rasterised(svg: string): { inked: number; colours: Set<string> } {
  const { pixels } = new Resvg(svg, {
    fitTo: { mode: 'width', value: 600 },
    background: '#ffffff',
    font: { loadSystemFonts: false },
  }).render();
  let inked = 0;
  const colours = new Set<string>();
  for (let i = 0; i < pixels.length; i += 4) {
    const hex = `#${[0, 1, 2].map((k) => (pixels[i + k] ?? 0).toString(16).padStart(2, '0')).join('')}`;
    if (hex !== '#ffffff') inked += 1;
    colours.add(hex);
  }
  return { inked: (inked * 4) / pixels.length, colours };
}

describe('a scene painted as SVG', () => {
  test.each(Object.entries(SAMPLES))(
    'the chart of %s is not blank, nor mostly ink, when an independent program draws it',
    (_name, make) => {
      const { inked, colours } = rasterised(plain(onlyChart(make())));
      expect(inked).toBeGreaterThan(0.01);
      expect(inked).toBeLessThan(0.4);
      expect(colours).toContain(INKS.ink);
      expect(colours).toContain(INKS.second);
    },
  );

  test('painted twice it is the same text', () => {
    const scene = onlyChart(granny());
    expect(plain(scene)).toBe(plain(scene));
  });

  test('is one image with a title and a description for screen readers', () => {
    const svg = paintSvg(
      { ...onlyChart(granny()), title: 'Chart of A & B', alternative: 'Row 1 < row 2' },
      { idPrefix: 'ab' },
    );
    expect(svg).toMatch(/^<svg [^>]*role="img"[^>]*aria-labelledby="ab-title ab-desc"/);
    expect(svg).toContain('<title id="ab-title">Chart of A &amp; B</title>');
    expect(svg).toContain('<desc id="ab-desc">Row 1 &lt; row 2</desc>');
  });

  test('every id begins with the prefix given and stands once, so two drawings may share a page', () => {
    const svg = paintSvg(onlyChart(granny()), { idPrefix: 'eelgrass-small' });
    const ids = [...svg.matchAll(/ id="([^"]*)"/g)].map(([, id]) => id ?? '');
    expect(ids.length).toBeGreaterThan(5);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(id).toMatch(/^eelgrass-small-/);
    for (const [, to] of svg.matchAll(/ href="#([^"]*)"/g)) expect(ids).toContain(to);
  });

  test('colours are variables that a page may set, with the house colours behind them', () => {
    const svg = paintSvg(onlyChart(granny()), { idPrefix: 'x' });
    expect(svg).toContain(`var(--chart-ink, ${INKS.ink})`);
    expect(svg).toContain(`color="var(--chart-second, ${INKS.second})"`);
    expect(svg).toContain('stroke="currentColor"');
    expect(plain(onlyChart(granny()))).not.toContain('var(');
  });

  test('text is set where and how the scene says', () => {
    const scene: Scene = {
      widthMm: 50,
      heightMm: 20,
      title: 't',
      alternative: 'a',
      symbols: {},
      shapes: [
        {
          kind: 'link',
          href: 'https://example.org/?a=1&b=2',
          shapes: [
            {
              kind: 'text',
              x: 40,
              y: 10.123,
              text: 'sc < dc',
              sizeMm: 3,
              face: 'text-bold',
              align: 'end',
              ink: 'faint',
            },
          ],
        },
      ],
    };
    const svg = plain(scene);
    expect(svg).toContain('href="https://example.org/?a=1&amp;b=2"');
    expect(svg).toMatch(
      /<text x="40" y="10.12" font-size="3" [^>]*font-weight="700"[^>]*text-anchor="end"[^>]*>sc &lt; dc<\/text>/,
    );
    expect(svg).toContain(`fill="${INKS.faint}"`);
  });

  // WCAG 2.2: 4.5 to 1 for text (1.4.3), which row numbers in the second ink are.
  test('every ink can be read on paper, and the second is far from the first in grey', () => {
    for (const ink of ['ink', 'second', 'faint'] as const)
      expect(contrast(INKS[ink], INKS.paper)).toBeGreaterThanOrEqual(4.5);
    expect(contrast(INKS.second, INKS.ink)).toBeGreaterThan(2);
  });
});
