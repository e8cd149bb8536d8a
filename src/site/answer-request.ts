/** A browser's request and the folder that is served -> the file asked for, with the faults above the page if there are any. */

import { createReadStream } from 'node:fs';
import { readFile, stat } from 'node:fs/promises';
import type { IncomingMessage, ServerResponse } from 'node:http';
import path from 'node:path';
import { FILES_FOLDER } from './addresses.ts';
import type { FaultPage } from './fault-page.ts';
import { PROJECT_FOLDER } from './run-eleventy.ts';

export interface Served {
  readonly folder: string;
  readonly faults: FaultPage | null;
}

/** Address of the list of faults; no pattern's folder begins with a full stop. */
export const FAULTS_ADDRESS = '/.faults/';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.woff': 'font/woff',
  '.pdf': 'application/pdf',
  '.json': 'application/json; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.ics': 'text/calendar; charset=utf-8',
  '.xml': 'application/atom+xml; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
};

export async function answer(
  request: IncomingMessage,
  response: ServerResponse,
  served: Served,
): Promise<void> {
  try {
    if (!fromThisComputer(request.headers.host)) return send(response, 403, 'Only this computer may ask.');
    if (request.method !== 'GET' && request.method !== 'HEAD')
      return send(response, 405, 'Only GET is answered.');
    const asked = decodedPath(request.url ?? '/');
    if (asked === null) return send(response, 400, 'The address cannot be read.');
    if (asked === FAULTS_ADDRESS) return sendHtml(response, 200, served.faults?.html ?? NO_FAULTS);
    await answerFile(response, served, asked, request.method === 'HEAD');
  } catch (fault) {
    if (!response.headersSent) send(response, 500, String(fault));
    else response.destroy();
  }
}

const NO_FAULTS =
  '<!doctype html><html lang="en"><title>No faults</title><p>There are no faults. <a href="/">To the site</a></p></html>';

async function answerFile(
  response: ServerResponse,
  served: Served,
  asked: string,
  headOnly: boolean,
): Promise<void> {
  const root = path.resolve(served.folder);
  const wanted = path.join(root, asked);
  if (wanted !== root && !wanted.startsWith(root + path.sep))
    return send(response, 404, 'There is nothing here.');
  const there = await stat(wanted).catch(() => null);
  if (there?.isDirectory() && !asked.endsWith('/')) {
    response.writeHead(301, { location: `./${encodeURIComponent(path.basename(wanted))}/` }).end();
    return;
  }
  const file = there?.isDirectory() ? path.join(wanted, 'index.html') : wanted;
  if (path.extname(file) === '.html' || path.extname(file) === '') return answerPage(response, served, file);
  const found = (await isFile(file)) ? file : ownFile(asked);
  if (found === null || !(await isFile(found))) return answerPage(response, served, file);
  response.writeHead(200, {
    'content-type': TYPES[path.extname(found)] ?? 'application/octet-stream',
    'cache-control': 'no-store',
  });
  if (headOnly) response.end();
  else
    createReadStream(found)
      .on('error', () => response.destroy())
      .pipe(response);
}

async function answerPage(response: ServerResponse, served: Served, file: string): Promise<void> {
  const html = await readFile(file, 'utf8').catch(() => null);
  if (html !== null) return sendHtml(response, 200, withBanner(html, served.faults));
  const missing = await readFile(path.join(served.folder, '404.html'), 'utf8').catch(() => null);
  // Without a last good site there is nothing to show but the faults.
  if (missing === null && served.faults !== null) return sendHtml(response, 503, served.faults.html);
  sendHtml(
    response,
    404,
    missing ?? '<!doctype html><html lang="en"><title>Not found</title><p>There is no page here.</p></html>',
  );
}

function withBanner(html: string, faults: FaultPage | null): string {
  if (faults === null) return html;
  return html.replace('<header class="masthead">', `${faults.banner}<header class="masthead">`);
}

/** The style sheet is there for the page of faults even before there is a site. */
function ownFile(asked: string): string | null {
  const name = asked.startsWith(`/${FILES_FOLDER}/`) ? path.basename(asked) : null;
  return name === null ? null : path.join(PROJECT_FOLDER, 'layouts/assets', name);
}

/** A page from elsewhere that has its own name pointed at this computer is turned away. */
function fromThisComputer(host: string | undefined): boolean {
  return /^(127\.0\.0\.1|localhost|\[::1\])(:\d+)?$/.test(host ?? '');
}

function decodedPath(url: string): string | null {
  try {
    const decoded = decodeURIComponent(url.split(/[?#]/, 1)[0] ?? '/');
    return decoded.includes('\0') || !decoded.startsWith('/') ? null : decoded;
  } catch {
    return null;
  }
}

async function isFile(file: string): Promise<boolean> {
  return (await stat(file).catch(() => null))?.isFile() ?? false;
}

function sendHtml(response: ServerResponse, status: number, html: string): void {
  response.writeHead(status, { 'content-type': TYPES['.html'], 'cache-control': 'no-store' }).end(html);
}

function send(response: ServerResponse, status: number, words: string): void {
  response.writeHead(status, { 'content-type': TYPES['.txt'] }).end(`${words}\n`);
}
