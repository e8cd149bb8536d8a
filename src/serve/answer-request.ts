/** A browser's request and the folder that is served -> the file asked for, with the faults above the page if there are any. */

import { createReadStream } from 'node:fs';
import { readFile, stat } from 'node:fs/promises';
import type { IncomingMessage, ServerResponse } from 'node:http';
import path from 'node:path';
import { DESK_ADDRESS } from '../desk/desk-view.ts';
import { FILES_FOLDER } from '../site/addresses.ts';
import { PROJECT_FOLDER } from '../site/project-folder.ts';
import type { Desk } from './answer-desk.ts';
import { contentType } from './content-type.ts';
import type { FaultPage } from './fault-page.ts';

export interface Served {
  readonly folder: string;
  readonly faults: FaultPage | null;
  /** The site is being built for the first time. */
  readonly waiting: boolean;
  /** How far things are: a page that is answered with it knows what it missed when it begins to listen. */
  readonly news: string;
}

/** Address of the list of faults; no pattern's folder begins with a full stop. */
export const FAULTS_ADDRESS = '/.faults/';

export async function answer(
  request: IncomingMessage,
  response: ServerResponse,
  served: Served,
  desk: Pick<Desk, 'answer'>,
): Promise<void> {
  try {
    if (!fromThisComputer(request.headers.host)) return send(response, 403, 'Only this computer may ask.');
    const asked = decodedPath(request.url ?? '/');
    if (asked === null) return send(response, 400, 'The address cannot be read.');
    const ofDesk = asked.startsWith(DESK_ADDRESS);
    if (ofDesk && (request.method === 'GET' || request.method === 'POST'))
      return await desk.answer(request, response, asked, queryOf(request.url ?? '/'));
    if (request.method !== 'GET' && request.method !== 'HEAD')
      return send(response, 405, 'Only GET is answered.');
    if (asked === FAULTS_ADDRESS) return sendHtml(response, served, 200, served.faults?.html ?? NO_FAULTS);
    await answerFile(response, served, asked, request.method === 'HEAD');
  } catch (fault) {
    if (!response.headersSent) send(response, 500, String(fault));
    else response.destroy();
  }
}

/** It is loaded again by itself as soon as there is a site. */
const WAIT =
  '<!doctype html><html lang="en"><title>One moment</title><p>The site is being built. This page turns into it by itself.</p></body></html>';

const NO_FAULTS =
  '<!doctype html><html lang="en"><title>No faults</title><p>There are no faults. <a href="/">To the site</a></p></body></html>';

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
    'content-type': contentType(found),
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
  if (html !== null) return sendHtml(response, served, 200, withBanner(html, served.faults));
  const missing = await readFile(path.join(served.folder, '404.html'), 'utf8').catch(() => null);
  if (missing === null && served.waiting) return sendHtml(response, served, 503, WAIT);
  // Without a last good site there is nothing to show but the faults.
  if (missing === null && served.faults !== null) return sendHtml(response, served, 503, served.faults.html);
  sendHtml(
    response,
    served,
    404,
    missing ??
      '<!doctype html><html lang="en"><title>Not found</title><p>There is no page here.</p></body></html>',
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

function queryOf(url: string): URLSearchParams {
  return new URLSearchParams(url.split('#', 1)[0]?.split('?').slice(1).join('?') ?? '');
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

function sendHtml(response: ServerResponse, { news }: Served, status: number, html: string): void {
  response
    .writeHead(status, { 'content-type': contentType('index.html'), 'cache-control': 'no-store' })
    .end(following(html, news));
}

/** The page as it was published, and a script that loads it again when it is built anew. Its policy allows that and no more. */
function following(html: string, news: string): string {
  return html
    .replace(
      /(http-equiv="Content-Security-Policy" content=")([^"]*)"/,
      (_, begun: string, policy: string) => {
        const needed = ['script-src', 'connect-src'].filter((kind) => !policy.includes(kind));
        return `${begun}${policy}${needed.map((kind) => `; ${kind} 'self'`).join('')}"`;
      },
    )
    .replace('</body>', `<script src="${DESK_ADDRESS}follow.js" data-news="${news}"></script>\n</body>`);
}

function send(response: ServerResponse, status: number, words: string): void {
  response.writeHead(status, { 'content-type': contentType('words.txt') }).end(`${words}\n`);
}
