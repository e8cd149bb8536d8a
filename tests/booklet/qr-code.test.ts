/** The QR code of a booklet, read off the rendered page by a decoder that shares nothing with its maker. */

import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import jsQR from 'jsqr';
import { afterAll, describe, expect, test } from 'vitest';
import { addressLines } from '../../src/booklet/blocks/on-the-web.ts';
import { qrCode } from '../../src/booklet/qr-code.ts';
import { printBooklet } from '../../src/print-booklet.ts';
import { compilePatterns } from '../../src/site/compile-patterns.ts';
import { readFontFiles } from '../../src/site/font-files.ts';
import { PROJECT_FOLDER } from '../../src/site/project-folder.ts';
import { readPatterns } from '../../src/site/read-patterns.ts';
import { fixedWidth } from './fixed-width.ts';
import { pageWords, readPdf } from './read-pdf.ts';
import { elementsIn, readStructure } from './read-structure.ts';

const fonts = readFontFiles();
const [file] = compilePatterns(
  await readPatterns([path.join(PROJECT_FOLDER, 'patterns/sandbar-square/pattern.yaml')]),
);
const compiled = file?.compiled;
const size = compiled?.sizes[0];
if (compiled === undefined || size === undefined) throw new Error('no pattern');

const ADDRESS = 'https://example.org/patterns/sandbar-square/small/';
const folder = mkdtempSync(path.join(tmpdir(), 'qr-'));
afterAll(() => rmSync(folder, { recursive: true }));

interface Picture {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8ClampedArray;
}

/** Pages as a printer of 150 dots an inch would show them. */
function rendered(name: string, bytes: Uint8Array): Picture[] {
  const pdf = path.join(folder, `${name}.pdf`);
  writeFileSync(pdf, bytes);
  execFileSync('pdftoppm', ['-r', '150', pdf, path.join(folder, name)]);
  const listed = execFileSync('ls', [folder], { encoding: 'utf8' }).split('\n');
  return listed
    .filter((each) => each.startsWith(`${name}-`) && each.endsWith('.ppm'))
    .sort()
    .map((each) => pictureOf(readFileSync(path.join(folder, each))));
}

/** A portable pixmap: three numbers in text, then three bytes a dot. */
function pictureOf(bytes: Buffer): Picture {
  const head = /^P6\s+(\d+)\s+(\d+)\s+255\s/.exec(bytes.subarray(0, 40).toString('latin1'));
  if (head === null) throw new Error('no pixmap');
  const [whole, width, height] = [head[0].length, Number(head[1]), Number(head[2])];
  const data = new Uint8ClampedArray(width * height * 4);
  for (let dot = 0; dot < width * height; dot += 1) {
    data.set(bytes.subarray(whole + dot * 3, whole + dot * 3 + 3), dot * 4);
    data[dot * 4 + 3] = 255;
  }
  return { width, height, data };
}

describe('the code on the page', () => {
  test.each([
    ['flat', {}],
    ['folded', { form: 'folded' }],
    ['large', { form: 'large print' }],
    ['low', { lowInk: true }],
  ] as const)('of the %s edition leads to the page of the pattern', async (name, edition) => {
    const choice = { dialect: 'us', paper: 'A4', address: ADDRESS, ...edition } as const;
    const pages = rendered(name, await printBooklet(compiled, size, choice, fonts));
    const found = pages.flatMap(({ data, width, height }) => jsQR.default(data, width, height)?.data ?? []);
    // Crosses of a chart may look like an empty code to a decoder.
    expect(found.filter((text) => text !== '')).toEqual([ADDRESS]);
  });

  test('has its address beside it, as a link that says where it leads', async () => {
    const choice = { dialect: 'us', paper: 'A4', address: ADDRESS } as const;
    const bytes = await printBooklet(compiled, size, choice, fonts);
    expect((await readPdf(bytes)).pages.map(pageWords).join(' ')).toContain(ADDRESS);
    const { pages } = await readStructure(bytes);
    const elements = pages.flatMap(elementsIn);
    expect(elements.filter(({ role }) => role === 'Link').map(({ alternative }) => alternative)).toEqual([
      `The page of this pattern: ${ADDRESS}`,
    ]);
    expect(elements.map(({ alternative }) => alternative)).toContain(`QR code of the address ${ADDRESS}`);
    writeFileSync(path.join(folder, 'link.pdf'), bytes);
    expect(execFileSync('qpdf', ['--check', path.join(folder, 'link.pdf')], { encoding: 'utf8' })).toContain(
      'No syntax or stream encoding errors',
    );
  });

  test('is left out with its section where no address is known', async () => {
    const bytes = await printBooklet(compiled, size, { dialect: 'us', paper: 'A4' }, fonts);
    expect((await readPdf(bytes)).pages.map(pageWords).join(' ')).not.toContain('On the web');
  });
});

test('an address longer than anyone would print has no code, and no fault', () => {
  expect(qrCode(`https://example.org/${'a'.repeat(2000)}`)).toBeNull();
  expect(qrCode(`https://example.org/${'a'.repeat(9000)}`)).toBeNull();
});

test('a long address is cut after its signs and loses nothing', () => {
  const lines = addressLines(ADDRESS, 2, 22, fixedWidth);
  expect(lines.join('')).toBe(ADDRESS);
  expect(lines).toEqual(['https://example.org/', 'patterns/sandbar-', 'square/small/']);
  expect(addressLines('a'.repeat(50), 2, 22, fixedWidth).map(({ length }) => length)).toEqual([22, 22, 6]);
});
