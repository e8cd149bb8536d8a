/** The colours of a site: what of a designer's own can be read by day and by night, and that what is offered for the rest can. */

import { readdirSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { contrast, type Hex } from '../../src/site/contrast.ts';
import { pageFiles } from '../../src/site/page-files.ts';
import {
  type AskedColours,
  coloured,
  HOUSE_PALETTE,
  paletteOf,
  type Scheme,
} from '../../src/site/palette.ts';
import { PROJECT_FOLDER } from '../../src/site/project-folder.ts';
import { projectFile, text } from './demo-site.ts';

test('contrast is reckoned as WCAG 2.2 has it', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
  expect(contrast('#ffffff', '#ffffff')).toBe(1);
  // The lightest grey that may stand on white, and the next.
  expect(contrast('#767676', '#ffffff')).toBeGreaterThanOrEqual(4.5);
  expect(contrast('#777777', '#ffffff')).toBeLessThan(4.5);
  expect(contrast('#ffffff', '#767676')).toBe(contrast('#767676', '#ffffff'));
});

describe('the house palette', () => {
  const sheet = projectFile('layouts/styles/1-paper.css');
  test('is that of the style sheet, by day, by night, and side by side', () => {
    for (const [name, day] of Object.entries(HOUSE_PALETTE.light)) {
      const night = HOUSE_PALETTE.dark[name as keyof Scheme];
      expect(sheet).toContain(`  --${name}: ${day};`);
      expect(sheet).toContain(`      --${name}: ${night};`);
      expect(sheet).toContain(`--${name}: light-dark(${day}, ${night});`);
    }
  });

  test('has no colour twice, so that one can be put in the place of another', () => {
    const all = [...Object.values(HOUSE_PALETTE.light), ...Object.values(HOUSE_PALETTE.dark)];
    expect(new Set(all).size).toBe(all.length);
  });

  test('stands where nothing is asked for', () => {
    expect(paletteOf({})).toEqual({ kind: 'palette', palette: HOUSE_PALETTE });
    const sheets = readdirSync(path.join(PROJECT_FOLDER, 'layouts/styles'));
    for (const name of sheets) {
      const css = projectFile(`layouts/styles/${name}`);
      expect(coloured(css, HOUSE_PALETTE)).toBe(css);
    }
  });
});

function readable({ paper, leaf, wash, ink, soft, edge, madder }: Scheme): void {
  for (const ground of [paper, leaf, wash]) {
    for (const letters of [ink, soft, madder]) expect(contrast(letters, ground)).toBeGreaterThanOrEqual(4.5);
    expect(contrast(edge, ground)).toBeGreaterThanOrEqual(3);
  }
}

const GOOD: readonly AskedColours[] = [
  {},
  { accent: '#1d5b4f' },
  { accent: '135' },
  { paper: '#f0f4f2', accent: '#5a2a6b' },
  { accent: '#000000' },
  { accent: '#1d5b4f', dark: { accent: '#8fd1c0', paper: '#101817' } },
];

const BAD: readonly (readonly [AskedColours, string])[] = [
  [{ accent: '#e08a8a' }, 'accent'],
  [{ accent: '#ffff00' }, 'accent'],
  [{ paper: '#c0c0c0' }, 'paper'],
  [{ paper: '#222222' }, 'paper'],
  [{ accent: '#1d5b4f', dark: { accent: '#333355' } }, 'dark accent'],
  [{ dark: { paper: '#445544' } }, 'dark paper'],
];

describe('colours of her own', () => {
  test.each(GOOD)('%o can be read in both schemes', (asked) => {
    const made = paletteOf(asked);
    if (made.kind === 'unreadable') throw new Error(made.fault.why);
    readable(made.palette.light);
    readable(made.palette.dark);
    if (asked.dark?.accent !== undefined) expect(made.palette.dark.madder).toBe(asked.dark.accent);
  });

  test.each(BAD)('%o cannot, and what is offered can', (asked, place) => {
    const made = paletteOf(asked);
    if (made.kind === 'palette') throw new Error('it was taken');
    expect(made.fault.path.join(' ')).toBe(place);
    const offer = /nearest that would do is "(#[0-9a-f]{6})"/.exec(made.fault.why)?.[1];
    if (offer === undefined) throw new Error(`nothing is offered: ${made.fault.why}`);
    const [last = '', ...above] = [...made.fault.path].reverse();
    const mended =
      above.length === 0 ? { ...asked, [last]: offer } : { ...asked, dark: { ...asked.dark, [last]: offer } };
    const again = paletteOf(mended);
    if (again.kind === 'unreadable') throw new Error(again.fault.why);
    readable(again.palette.light);
    readable(again.palette.dark);
  });

  test('are in the style sheet, the icon, and nowhere a colour of the house that they took the place of', async () => {
    const made = paletteOf({ accent: '#1d5b4f', paper: '#f0f4f2' });
    if (made.kind === 'unreadable') throw new Error(made.fault.why);
    const files = new Map((await pageFiles(made.palette)).map(({ file, content }) => [file, text(content)]));
    const gone: readonly Hex[] = [HOUSE_PALETTE.light.madder, HOUSE_PALETTE.light.paper];
    for (const file of ['site-files/site.css', 'site-files/icon.svg']) {
      expect(files.get(file)).toContain('#1d5b4f');
      for (const hex of gone) expect(files.get(file), file).not.toContain(hex);
    }
  });
});
