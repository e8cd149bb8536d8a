/** A TrueType font cut down to the characters our pages set -> a WOFF 1.0 file small enough to serve. */

import { deflateSync } from 'node:zlib';

/** What the cut font calls itself: its licence reserves the original's name for the unchanged font. */
export interface FontNames {
  readonly family: string;
  readonly copyright: string;
  readonly licence: string;
}

/** Latin with the accents of European languages, and the signs that patterns use. */
export const PAGE_CHARACTERS: readonly number[] = [
  ...codePoints(0x20, 0x7e),
  ...codePoints(0xa0, 0x17f),
  ...Array.from('‐‑–—‘’‚“”„†•…′″⁄₂€→↑↓−×≈≤≥✓⅓⅔⅛⅜⅝⅞', (c) => c.codePointAt(0) ?? 0x20),
];

/** Tables and their layout: OpenType 1.9, chapters glyf, loca, hmtx, cmap, name, post; WOFF 1.0 (W3C, 2012). */
export function webFont(ttf: Buffer, characters: readonly number[], names: FontNames): Buffer {
  const font = readTables(ttf);
  const glyphOf = readCmap(table(font, 'cmap'));
  const mapped = [...new Set(characters)]
    .sort((a, b) => a - b)
    .flatMap((code) => {
      const glyph = glyphOf(code);
      return glyph === 0 ? [] : [{ code, glyph }];
    });
  const outlines = readOutlines(font);
  const kept = withComponents([0, ...mapped.map(({ glyph }) => glyph)], outlines);
  const glyphs = Math.max(...kept) + 1;

  const glyf: Buffer[] = [];
  const loca = Buffer.alloc((glyphs + 1) * 4);
  let at = 0;
  for (let glyph = 0; glyph < glyphs; glyph++) {
    loca.writeUInt32BE(at, glyph * 4);
    if (!kept.has(glyph)) continue;
    const outline = padded(outlines(glyph));
    glyf.push(outline);
    at += outline.length;
  }
  loca.writeUInt32BE(at, glyphs * 4);

  const head = Buffer.from(table(font, 'head'));
  head.writeInt16BE(1, 50); // indexToLocFormat: long
  const maxp = Buffer.from(table(font, 'maxp'));
  maxp.writeUInt16BE(glyphs, 4);
  const widths = Math.min(table(font, 'hhea').readUInt16BE(34), glyphs);
  const hhea = Buffer.from(table(font, 'hhea'));
  hhea.writeUInt16BE(widths, 34);

  return writeWoff({
    'OS/2': table(font, 'OS/2'),
    cmap: writeCmap(mapped),
    glyf: Buffer.concat(glyf),
    head,
    hhea,
    hmtx: table(font, 'hmtx').subarray(0, widths * 4 + (glyphs - widths) * 2),
    loca,
    maxp,
    name: writeNames(names),
    post: shortPost(table(font, 'post')),
  });
}

type Tables = ReadonlyMap<string, Buffer>;

function codePoints(from: number, to: number): number[] {
  return Array.from({ length: to - from + 1 }, (_, i) => from + i);
}

function readTables(ttf: Buffer): Tables {
  const tables = new Map<string, Buffer>();
  for (let i = 0; i < ttf.readUInt16BE(4); i++) {
    const entry = 12 + i * 16;
    const offset = ttf.readUInt32BE(entry + 8);
    tables.set(
      ttf.toString('latin1', entry, entry + 4),
      ttf.subarray(offset, offset + ttf.readUInt32BE(entry + 12)),
    );
  }
  return tables;
}

function table(tables: Tables, tag: string): Buffer {
  const found = tables.get(tag);
  if (found === undefined) throw new Error(`The font has no ${tag} table.`);
  return found;
}

/** Looks a character up in the font's format 4 table, which every font for the basic plane has. */
function readCmap(cmap: Buffer): (code: number) => number {
  for (let i = 0; i < cmap.readUInt16BE(2); i++) {
    const start = cmap.readUInt32BE(4 + i * 8 + 4);
    if (cmap.readUInt16BE(start) !== 4) continue;
    const t = cmap.subarray(start);
    const twice = t.readUInt16BE(6); // twice the number of segments
    return (code) => {
      for (let s = 0; s < twice; s += 2) {
        if (code > t.readUInt16BE(14 + s)) continue;
        const first = t.readUInt16BE(16 + twice + s);
        if (code < first) return 0;
        const delta = t.readUInt16BE(16 + twice * 2 + s);
        const rangeAt = 16 + twice * 3 + s;
        const range = t.readUInt16BE(rangeAt);
        if (range === 0) return (code + delta) & 0xffff;
        const glyph = t.readUInt16BE(rangeAt + range + (code - first) * 2);
        return glyph === 0 ? 0 : (glyph + delta) & 0xffff;
      }
      return 0;
    };
  }
  throw new Error('The font has no character table of format 4.');
}

function readOutlines(font: Tables): (glyph: number) => Buffer {
  const loca = table(font, 'loca');
  const glyf = table(font, 'glyf');
  const long = table(font, 'head').readInt16BE(50) === 1;
  const offset = (i: number) => (long ? loca.readUInt32BE(i * 4) : loca.readUInt16BE(i * 2) * 2);
  return (glyph) => glyf.subarray(offset(glyph), offset(glyph + 1));
}

/** The glyphs and the glyphs they are put together from, such as a letter and its accent. */
function withComponents(wanted: readonly number[], outlines: (glyph: number) => Buffer): Set<number> {
  const kept = new Set<number>();
  const open = [...wanted];
  for (let glyph = open.pop(); glyph !== undefined; glyph = open.pop()) {
    if (kept.has(glyph)) continue;
    kept.add(glyph);
    const outline = outlines(glyph);
    if (outline.length < 10 || outline.readInt16BE(0) >= 0) continue;
    // A composite: flags and glyph index, then arguments and a scale whose lengths the flags tell.
    let at = 10;
    for (let more = true; more; ) {
      const flags = outline.readUInt16BE(at);
      open.push(outline.readUInt16BE(at + 2));
      at += 4 + (flags & 0x1 ? 4 : 2) + (flags & 0x8 ? 2 : flags & 0x40 ? 4 : flags & 0x80 ? 8 : 0);
      more = (flags & 0x20) !== 0;
    }
  }
  return kept;
}

function writeCmap(mapped: readonly { code: number; glyph: number }[]): Buffer {
  const groups: [first: number, last: number, glyph: number][] = [];
  for (const { code, glyph } of mapped) {
    const group = groups.at(-1);
    if (group && code === group[1] + 1 && glyph === group[2] + (code - group[0])) group[1] = code;
    else groups.push([code, code, glyph]);
  }
  const out = Buffer.alloc(12 + 16 + groups.length * 12);
  out.writeUInt16BE(1, 2); // one subtable: Windows, full Unicode, format 12
  out.writeUInt16BE(3, 4);
  out.writeUInt16BE(10, 6);
  out.writeUInt32BE(12, 8);
  out.writeUInt16BE(12, 12);
  out.writeUInt32BE(16 + groups.length * 12, 16);
  out.writeUInt32BE(groups.length, 24);
  groups.forEach((group, i) => {
    group.forEach((value, k) => {
      out.writeUInt32BE(value, 28 + i * 12 + k * 4);
    });
  });
  return out;
}

function writeNames({ family, copyright, licence }: FontNames): Buffer {
  // Name ids: 0 copyright, 1 family, 2 style, 4 full name, 6 PostScript name, 13 licence.
  const texts: [id: number, text: string][] = [
    [0, copyright],
    [1, family],
    [2, 'Regular'],
    [4, family],
    [6, family.replaceAll(' ', '')],
    [13, licence],
  ];
  const header = Buffer.alloc(6 + texts.length * 12);
  header.writeUInt16BE(texts.length, 2);
  header.writeUInt16BE(header.length, 4);
  let at = 0;
  const bodies = texts.map(([id, text], i) => {
    const body = Buffer.from(text, 'utf16le').swap16();
    [3, 1, 0x409, id, body.length, at].forEach((value, k) => {
      header.writeUInt16BE(value, 6 + i * 12 + k * 2);
    });
    at += body.length;
    return body;
  });
  return Buffer.concat([header, ...bodies]);
}

/** The `post` table without glyph names: version 3. */
function shortPost(post: Buffer): Buffer {
  const short = Buffer.from(post.subarray(0, 32));
  short.writeUInt32BE(0x00030000, 0);
  return short;
}

function padded(bytes: Buffer): Buffer {
  return Buffer.concat([bytes, Buffer.alloc((4 - (bytes.length % 4)) % 4)]);
}

function checksum(bytes: Buffer): number {
  const whole = padded(bytes);
  let sum = 0;
  for (let i = 0; i < whole.length; i += 4) sum = (sum + whole.readUInt32BE(i)) >>> 0;
  return sum;
}

function writeWoff(tables: Readonly<Record<string, Buffer>>): Buffer {
  const tags = Object.keys(tables).sort();
  const directory = Buffer.alloc(44 + tags.length * 20);
  const bodies: Buffer[] = [];
  let at = directory.length;
  let sfntSize = 12 + tags.length * 16;
  tags.forEach((tag, i) => {
    const bytes = tables[tag] ?? Buffer.alloc(0);
    const deflated = deflateSync(bytes, { level: 9 });
    const stored = deflated.length < bytes.length ? deflated : bytes;
    const entry = 44 + i * 20;
    directory.write(tag.padEnd(4), entry, 'latin1');
    [at, stored.length, bytes.length, checksum(bytes)].forEach((value, k) => {
      directory.writeUInt32BE(value, entry + 4 + k * 4);
    });
    bodies.push(padded(stored));
    at += padded(stored).length;
    sfntSize += padded(bytes).length;
  });
  directory.write('wOFF', 0, 'latin1');
  directory.writeUInt32BE(0x00010000, 4);
  directory.writeUInt32BE(at, 8);
  directory.writeUInt16BE(tags.length, 12);
  directory.writeUInt32BE(sfntSize, 16);
  directory.writeUInt16BE(1, 20);
  return Buffer.concat([directory, ...bodies]);
}
