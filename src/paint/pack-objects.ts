/**
 * The bytes of a PDF as the library writes it in, the same document smaller out: what is no stream is gathered in compressed
 * object streams, and the table of places is a stream as well (ISO 32000-1, 7.5.7 and 7.5.8). Structure trees are nearly all
 * such objects.
 */

import { zlibSync } from 'fflate';

/** More would make a reader unpack much for little. */
const MOST_IN_ONE = 600;

interface FoundObject {
  readonly id: number;
  /** Between `obj` and `endobj`. */
  readonly body: Uint8Array;
  readonly isStream: boolean;
}

/** Where an object stands: in the file, or in an object stream and which of its objects it is. */
type Place =
  | { readonly kind: 'at'; readonly offset: number }
  | { readonly kind: 'in'; readonly stream: number; readonly index: number };

export function packObjects(bytes: Uint8Array): Uint8Array {
  const { objects, trailer } = readObjects(bytes);
  const packed = objects.filter(({ isStream }) => !isStream);
  const places = new Map<number, Place>();
  const out = new Writer();
  out.bytes(bytes.subarray(0, headerLength(bytes)));
  const add = (id: number, body: Uint8Array): void => {
    places.set(id, { kind: 'at', offset: out.length });
    out.text(`${id} 0 obj\n`);
    out.bytes(body);
    out.text('endobj\n');
  };
  for (const { id, body, isStream } of objects) if (isStream) add(id, body);
  let nextId = Math.max(0, ...objects.map(({ id }) => id)) + 1;
  for (let from = 0; from < packed.length; from += MOST_IN_ONE) {
    const group = packed.slice(from, from + MOST_IN_ONE);
    const stream = nextId;
    nextId += 1;
    group.forEach(({ id }, index) => {
      places.set(id, { kind: 'in', stream, index });
    });
    add(stream, objectStream(group));
  }
  const at = out.length;
  places.set(nextId, { kind: 'at', offset: at });
  out.text(`${nextId} 0 obj\n`);
  out.bytes(placesStream(places, nextId + 1, trailer));
  out.text(`endobj\nstartxref\n${at}\n%%EOF\n`);
  return out.joined();
}

/** The library's own form: a table of offsets at the end, each object in lines of its own. */
function readObjects(bytes: Uint8Array): { objects: FoundObject[]; trailer: string } {
  const end = latin1(bytes.subarray(Math.max(0, bytes.length - 1024)));
  const tableAt = Number(/startxref\s+(\d+)\s+%%EOF\s*$/.exec(end)?.[1] ?? Number.NaN);
  const table = latin1(bytes.subarray(tableAt));
  const trailer = /trailer\s*<<([\s\S]*?)>>\s*startxref/.exec(table)?.[1];
  if (trailer === undefined) throw new Error('The PDF has no table of places where one is expected.');
  const offsets = [...table.matchAll(/^(\d{10}) \d{5} n/gm)].map((found) => Number(found[1]));
  const starts = [...offsets, tableAt].sort((a, b) => a - b);
  const next = new Map(starts.slice(0, -1).map((start, index) => [start, starts[index + 1] ?? tableAt]));
  const objects = offsets.map((offset, index): FoundObject => {
    const whole = bytes.subarray(offset, next.get(offset) ?? tableAt);
    const head = latin1(whole.subarray(0, 24)).indexOf('obj') + 'obj\n'.length;
    const tail = latin1(whole.subarray(-32)).trimEnd();
    const body = whole.subarray(head, lastIndexOf(whole, 'endobj'));
    return { id: index + 1, body, isStream: /endstream\s*endobj$/.test(tail) };
  });
  return { objects, trailer };
}

function objectStream(group: readonly FoundObject[]): Uint8Array {
  let at = 0;
  const pairs = group.map(({ id, body }) => {
    const pair = `${id} ${at}`;
    at += body.length;
    return pair;
  });
  const head = `${pairs.join(' ')}\n`;
  const content = new Writer();
  content.text(head);
  for (const { body } of group) content.bytes(body);
  return streamOf(`/Type /ObjStm /N ${group.length} /First ${head.length}`, content.joined());
}

/** A byte for the kind, four for the offset or the stream's number, two for the place in it. */
function placesStream(places: ReadonlyMap<number, Place>, size: number, trailer: string): Uint8Array {
  const width = 7;
  const rows = new DataView(new ArrayBuffer(size * width));
  rows.setUint16(5, 65535);
  for (const [id, place] of places) {
    const row = id * width;
    rows.setUint8(row, place.kind === 'at' ? 1 : 2);
    rows.setUint32(row + 1, place.kind === 'at' ? place.offset : place.stream);
    rows.setUint16(row + 5, place.kind === 'at' ? 0 : place.index);
  }
  const kept = trailer.replace(/\/Size\s+\d+/, '').trim();
  return streamOf(`/Type /XRef /Size ${size} /W [1 4 2] ${kept}`, new Uint8Array(rows.buffer));
}

function streamOf(entries: string, content: Uint8Array): Uint8Array {
  const packed = zlibSync(content, { level: 9 });
  const out = new Writer();
  out.text(`<< ${entries} /Filter /FlateDecode /Length ${packed.length} >>\nstream\n`);
  out.bytes(packed);
  out.text('\nendstream\n');
  return out.joined();
}

/** Two lines: the version, and bytes that tell a file of bytes from one of text. */
function headerLength(bytes: Uint8Array): number {
  const first = bytes.indexOf(10);
  return bytes.indexOf(10, first + 1) + 1;
}

function lastIndexOf(bytes: Uint8Array, word: string): number {
  const from = Math.max(0, bytes.length - 32);
  return from + latin1(bytes.subarray(from)).lastIndexOf(word);
}

const decoder = new TextDecoder('latin1');

/** Only what is ASCII is looked at. */
function latin1(bytes: Uint8Array): string {
  return decoder.decode(bytes);
}

class Writer {
  length = 0;
  private readonly parts: Uint8Array[] = [];

  bytes(part: Uint8Array): void {
    this.parts.push(part);
    this.length += part.length;
  }

  /** One byte a character: all that is written here is ASCII, but for strings of the library's own in a trailer. */
  text(text: string): void {
    this.bytes(Uint8Array.from(text, (character) => character.charCodeAt(0)));
  }

  joined(): Uint8Array {
    const whole = new Uint8Array(this.length);
    let at = 0;
    for (const part of this.parts) {
      whole.set(part, at);
      at += part.length;
    }
    return whole;
  }
}
