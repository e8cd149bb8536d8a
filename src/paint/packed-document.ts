/**
 * The library's document, written smaller: what is no stream is gathered in compressed object streams, and the table of places
 * is a stream as well (ISO 32000-1, 7.5.7 and 7.5.8). Structure trees are nearly all such objects.
 */

import PdfDocument, { type PdfReference } from 'pdfkit';

/** More would make a reader unpack much for little. */
const MOST_IN_ONE = 600;

/** The version, and bytes that tell a file of bytes from one of text. */
const HEADER = '%PDF-1.7\n%\xff\xff\xff\xff\n';

/** Text is one byte a character. */
type Piece = string | Uint8Array;

interface Finished {
  readonly id: number;
  /** What stands between `obj` and `endobj`: one text, or those of a stream with its bytes. */
  readonly pieces: readonly Piece[];
}

/** Where an object stands: in the file, or in an object stream and which of its objects it is. */
type Place =
  | { readonly kind: 'at'; readonly offset: number }
  | { readonly kind: 'in'; readonly stream: number; readonly index: number };

export class PackedDocument extends PdfDocument {
  // Not given values here: the library writes its first lines before these would be given any.
  declare private lines: Piece[] | undefined;
  declare private objects: Finished[] | undefined;
  private bytes: Uint8Array | null = null;

  /** Ends the document. */
  packed(): Uint8Array {
    this.end();
    if (this.bytes === null) throw new Error('Something put into the document was never finished.');
    return this.bytes;
  }

  /** A line, or the bytes of a stream. */
  override _write(piece: Piece): void {
    this.lines ??= [];
    this.lines.push(piece);
  }

  override _refEnd(reference: PdfReference): void {
    const lines = this.lines ?? [];
    // Ahead of the first object stands the header, which is written anew.
    const begun = lines.indexOf(`${reference.id} 0 obj`);
    this.objects ??= [];
    this.objects.push({ id: reference.id, pieces: lines.slice(begun + 1, -1) });
    this.lines = [];
    super._refEnd(reference);
  }

  /** The library's last step, once every object is finished. */
  override _finalize(): void {
    // Objects made from here on are finished at once, and none of them is the last again.
    this._ended = false;
    const objects = this.objects ?? [];
    const places = new Map<number, Place>();
    const plain = objects.filter((object) => !isStream(object));
    for (let from = 0; from < plain.length; from += MOST_IN_ONE)
      this.gather(plain.slice(from, from + MOST_IN_ONE), places);
    const out = new Writer();
    out.add(HEADER);
    const write = (object: Finished): void => {
      places.set(object.id, { kind: 'at', offset: out.length });
      out.add(`${object.id} 0 obj\n`);
      for (const piece of object.pieces) out.add(typeof piece === 'string' ? `${piece}\n` : piece);
      out.add('endobj\n');
    };
    objects.filter(isStream).forEach(write);
    const at = out.length;
    this.tabulate(places, at);
    objects.slice(-1).forEach(write);
    out.add(`startxref\n${at}\n%%EOF\n`);
    this.bytes = out.joined();
  }

  /** Objects in a stream of their own. */
  private gather(group: readonly Finished[], places: Map<number, Place>): void {
    const bodies = group.map(({ pieces }) => `${pieces[0]}\n`);
    let at = 0;
    const pairs = group.map(({ id }, index) => {
      const pair = `${id} ${at}`;
      at += bodies[index]?.length ?? 0;
      return pair;
    });
    const head = `${pairs.join(' ')}\n`;
    const stream = this.ref({ Type: 'ObjStm', N: group.length, First: head.length });
    group.forEach(({ id }, index) => {
      places.set(id, { kind: 'in', stream: stream.id, index });
    });
    stream.end(head + bodies.join(''));
  }

  /** The table of places, which stands `at` itself: a byte for the kind, four for the offset or the stream, two for the place in it. */
  private tabulate(places: ReadonlyMap<number, Place>, at: number): void {
    const { _root: Root, _info: Info, _id: id } = this;
    const table = this.ref({ Type: 'XRef', W: [1, 4, 2], Root, Info, ID: [id, id] });
    const size = table.id + 1;
    table.data.Size = size;
    const rows = new DataView(new ArrayBuffer(size * 7));
    rows.setUint16(5, 65535);
    for (const [id, place] of new Map(places).set(table.id, { kind: 'at', offset: at })) {
      const row = id * 7;
      rows.setUint8(row, place.kind === 'at' ? 1 : 2);
      rows.setUint32(row + 1, place.kind === 'at' ? place.offset : place.stream);
      rows.setUint16(row + 5, place.kind === 'at' ? 0 : place.index);
    }
    table.end(new Uint8Array(rows.buffer));
  }
}

function isStream({ pieces }: Finished): boolean {
  return pieces.length > 1;
}

class Writer {
  length = 0;
  private readonly parts: Piece[] = [];

  add(part: Piece): void {
    this.parts.push(part);
    this.length += part.length;
  }

  joined(): Uint8Array {
    const whole = new Uint8Array(this.length);
    let at = 0;
    for (const part of this.parts) {
      if (typeof part !== 'string') whole.set(part, at);
      else for (let k = 0; k < part.length; k += 1) whole[at + k] = part.charCodeAt(k);
      at += part.length;
    }
    return whole;
  }
}
