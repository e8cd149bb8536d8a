/** What a page sends -> its fields, or why they are not taken: only the desk itself may have anything written. */

import { timingSafeEqual } from 'node:crypto';
import type { IncomingMessage } from 'node:http';

/** The longest pattern file, with every character of it written as three. */
const MOST_BYTES = 3_200_000;

export type ReadForm =
  | { readonly kind: 'fields'; readonly fields: URLSearchParams }
  | { readonly kind: 'refused'; readonly status: 403 | 413 | 415; readonly why: string };

/** A page from elsewhere can send a form here, but it has another origin, and does not know the token. */
export async function readForm(request: IncomingMessage, token: string): Promise<ReadForm> {
  const { origin, host, 'content-type': type, 'sec-fetch-site': site } = request.headers;
  if (origin !== `http://${host}` || (site !== undefined && site !== 'same-origin'))
    return { kind: 'refused', status: 403, why: 'Only the desk itself may ask for that.' };
  if (type?.split(';')[0] !== 'application/x-www-form-urlencoded')
    return { kind: 'refused', status: 415, why: 'Only a form of the desk is read.' };
  const body = await bodyOf(request);
  if (body === null) return { kind: 'refused', status: 413, why: 'That is longer than a pattern can be.' };
  const fields = new URLSearchParams(body);
  if (!same(fields.get('token') ?? '', token))
    return {
      kind: 'refused',
      status: 403,
      why: 'This page is from before the server was started: load it again.',
    };
  return { kind: 'fields', fields };
}

async function bodyOf(request: IncomingMessage): Promise<string | null> {
  const pieces: Buffer[] = [];
  let bytes = 0;
  for await (const piece of request) {
    const buffer = Buffer.from(piece);
    bytes += buffer.length;
    if (bytes > MOST_BYTES) return null;
    pieces.push(buffer);
  }
  return Buffer.concat(pieces).toString('utf8');
}

function same(a: string, b: string): boolean {
  const [left, right] = [Buffer.from(a), Buffer.from(b)];
  return left.length === right.length && timingSafeEqual(left, right);
}
