/** A request for something of the desk and the folders of patterns -> its answer: a page, what is asked to be written, the news. */

import { randomBytes } from 'node:crypto';
import type { IncomingMessage, ServerResponse } from 'node:http';
import path from 'node:path';
import type { CompiledPattern } from '../compiled.ts';
import { DESK_ADDRESS, type DeskView, deskHref, type OpenFile } from '../desk/desk-view.ts';
import { DESK_POLICY, PASTE_ADDRESS } from '../desk/frame.ts';
import { layDesk } from '../desk/lay-desk.ts';
import { layPaste } from '../desk/lay-paste.ts';
import { bookletPages } from '../print-booklet.ts';
import { fragment } from '../site/addresses.ts';
import { bookletFile } from '../site/booklet-file.ts';
import type { BuildResult } from '../site/build-site.ts';
import { ownDialect } from '../site/dialect-names.ts';
import { readFontFiles } from '../site/font-files.ts';
import { paperPhotographs } from '../site/make-pictures.ts';
import type { ReadPattern } from '../site/read-patterns.ts';
import { DIALECTS, type DialectKey } from '../wording/words.ts';
import { contentType } from './content-type.ts';
import { deskAssets } from './desk-assets.ts';
import {
  keepNewPattern,
  type PatternFolders,
  patternFiles,
  readOne,
  savePattern,
  stampOf,
  Titles,
  WorkedPatterns,
} from './desk-files.ts';
import { NewsStand } from './news.ts';
import { readForm } from './read-form.ts';
import { readPaste } from './read-paste.ts';

export interface Desk {
  readonly news: NewsStand;
  /** What a build of the whole site came to. */
  readonly hear: (result: BuildResult) => void;
  /** `asked` begins with the desk's address. */
  readonly answer: (
    request: IncomingMessage,
    response: ServerResponse,
    asked: string,
    query: URLSearchParams,
  ) => Promise<void>;
}

export function openDesk(folders: PatternFolders): Desk {
  const token = randomBytes(24).toString('base64url');
  const news = new NewsStand(randomBytes(6).toString('base64url'));
  const worked = new WorkedPatterns();
  const errors = new Map<string, number>();
  const at: Sitting = { folders, token, news, worked, titles: new Titles(), errors, siteFault: null };
  return {
    news,
    hear: (result) => {
      at.siteFault = 'why' in result ? result.why : null;
      if (!('files' in result)) return;
      errors.clear();
      for (const { file, compiled } of result.files) errors.set(file, errorsOf(compiled));
    },
    answer: async (request, response, asked, query) => {
      const name = asked.slice(DESK_ADDRESS.length);
      if (request.method === 'POST') return answerForm(at, request, response, name);
      if (name === '') return sendPage(response, 200, layDesk(await deskView(at, query)));
      if (asked === PASTE_ADDRESS) return sendPage(response, 200, layPaste(pasteView(at, '', '')));
      if (name === 'news') return news.listen(response);
      if (name === 'booklet.pdf') return sendBooklet(at, response, query);
      const content = (await deskAssets()).get(name);
      if (content === undefined)
        return send(response, 404, contentType('words.txt'), 'There is nothing here.\n');
      send(response, 200, contentType(name), content);
    },
  };
}

interface Sitting {
  readonly folders: PatternFolders;
  readonly token: string;
  readonly news: NewsStand;
  readonly worked: WorkedPatterns;
  readonly titles: Titles;
  readonly errors: Map<string, number>;
  /** Of the last build. */
  siteFault: string | null;
}

/** `text` is what is being written, where it is not in the file. */
async function deskView(at: Sitting, query: URLSearchParams, text?: string): Promise<DeskView> {
  const news = at.news.stamp();
  const found = await patternFiles(at.folders);
  const asked = query.get('file');
  const file = asked ?? found[0];
  const one = file !== undefined && found.includes(file) ? await readOne(file) : null;
  const open = one === null ? null : await openFile(at, one, query, text);
  if (open !== null) at.errors.set(open.file, errorsOf(open.compiled));
  const files = await Promise.all(
    found.map(async (each) => ({
      file: each,
      title: await at.titles.of(each),
      errors: at.errors.get(each) ?? 0,
    })),
  );
  const others = [...at.errors].flatMap(([file, errors]) => (found.includes(file) ? [] : [{ file, errors }]));
  return { files, others, siteFault: at.siteFault, open, asked, token: at.token, news };
}

async function openFile(
  { worked }: Sitting,
  one: ReadPattern,
  query: URLSearchParams,
  text?: string,
): Promise<OpenFile> {
  const compiled = await worked.of(one, text);
  const size = Math.max(
    0,
    compiled.sizes.findIndex(({ slug }) => slug === query.get('size')),
  );
  const dialect = dialectAsked(compiled, query);
  const soon = query.get('soon') === 'yes';
  const saved = one.kind === 'read' ? one.source.text : '';
  const { pattern } = compiled;
  const photographs = soon || pattern === null ? [] : await paperPhotographs(compiled.photographs, pattern);
  return {
    file: one.kind === 'read' ? one.source.file : one.file,
    text: text ?? saved,
    stamp: stampOf(saved),
    writable: one.kind === 'read',
    compiled,
    size,
    dialect,
    booklet: () => {
      const chosen = compiled.sizes[size];
      const choice = { dialect, paper: paperFor(dialect), photographs };
      return chosen === undefined ? [] : bookletPages(compiled, chosen, choice, readFontFiles());
    },
    drawLarge: query.get('large') === 'yes',
    soon,
  };
}

function dialectAsked({ pattern }: CompiledPattern, query: URLSearchParams): DialectKey {
  const asked = query.get('terms') ?? '';
  if (isDialect(asked)) return asked;
  return pattern === null ? 'us' : ownDialect(pattern);
}

function isDialect(word: string): word is DialectKey {
  return Object.hasOwn(DIALECTS, word);
}

/** What a maker who reads in those terms has in her printer. */
function paperFor(dialect: DialectKey): 'A4' | 'Letter' {
  return DIALECTS[dialect].terms === 'US' ? 'Letter' : 'A4';
}

async function answerForm(
  at: Sitting,
  request: IncomingMessage,
  response: ServerResponse,
  name: string,
): Promise<void> {
  const read = await readForm(request, at.token);
  if (read.kind === 'refused') return sendWords(response, read.status, read.why);
  const { fields } = read;
  if (name === '') {
    // What is being written is shown as it would be, and the file left as it is.
    return sendPage(response, 200, layDesk(await deskView(at, fields, plainLines(fields.get('text') ?? ''))));
  }
  if (name === 'save') return saveText(at, response, fields);
  if (name === 'paste/') return answerPaste(at, response, fields);
  sendWords(response, 404, 'There is nothing here.');
}

async function saveText(at: Sitting, response: ServerResponse, fields: URLSearchParams): Promise<void> {
  const file = fields.get('file') ?? '';
  const one = (await patternFiles(at.folders)).includes(file) ? await readOne(file) : null;
  if (one === null) return sendWords(response, 404, `There is no ${file} any more.`);
  const saved = await savePattern(one, fields.get('text') ?? '', fields.get('stamp') ?? '');
  if (saved.kind === 'changed')
    return sendWords(response, 409, `${file} was changed meanwhile, and was left as it is.`);
  at.news.tell('saved');
  // A page without its script goes back to the desk.
  if (fields.get('by') !== 'script') return goTo(response, deskHref(file));
  send(response, 200, contentType('saved.txt'), saved.stamp);
}

async function answerPaste(at: Sitting, response: ServerResponse, fields: URLSearchParams): Promise<void> {
  const pasted = plainLines(fields.get('pasted') ?? '');
  const wanted = (fields.get('name') ?? '').trim();
  const view = pasteView(at, pasted, wanted);
  if (fields.get('do') !== 'keep') return sendPage(response, 200, layPaste(view));
  const refused = await keep(at, view, wanted);
  if (refused.kind === 'kept') return goTo(response, deskHref(refused.file));
  sendPage(response, 409, layPaste({ ...view, name: wanted, refused: refused.why }));
}

type Kept = { readonly kind: 'kept'; readonly file: string } | { readonly kind: 'not'; readonly why: string };

async function keep(at: Sitting, view: ReturnType<typeof pasteView>, wanted: string): Promise<Kept> {
  if (view.read === null)
    return { kind: 'not', why: 'There is nothing to keep yet: paste your instructions first.' };
  const address = fragment(wanted);
  if (wanted !== address)
    return {
      kind: 'not',
      why: `A folder's name is small letters, digits and hyphens${address === '' ? '' : `: ${address} would do`}.`,
    };
  const { patterns } = at.folders;
  const file = await keepNewPattern(patterns, view.name, view.read.text);
  if (file === null)
    return {
      kind: 'not',
      why: `There is already a pattern in ${patterns}/${view.name}; it was left as it is. Choose another name.`,
    };
  at.news.tell('saved');
  return { kind: 'kept', file };
}

function pasteView({ token, folders }: Sitting, pasted: string, wanted: string) {
  const made = pasted.trim() === '' ? null : readPaste(pasted, wanted);
  return {
    pasted,
    read: made?.read ?? null,
    name: made?.name ?? '',
    refused: null,
    folder: folders.patterns.split(path.sep).join('/'),
    token,
  };
}

async function sendBooklet(at: Sitting, response: ServerResponse, query: URLSearchParams): Promise<void> {
  const { open } = await deskView(at, query);
  const size = open?.compiled.sizes[open.size];
  if (open === null || size === undefined || errorsOf(open.compiled) > 0)
    return sendWords(response, 404, 'There is no booklet before the errors are mended.');
  const choice = { dialect: open.dialect, paper: paperFor(open.dialect) };
  send(response, 200, contentType('booklet.pdf'), await bookletFile(open.compiled, size, choice));
}

function errorsOf({ diagnostics }: Pick<CompiledPattern, 'diagnostics'>): number {
  return diagnostics.filter(({ severity }) => severity === 'error').length;
}

/** A form sends its lines with the ends of another system. */
function plainLines(text: string): string {
  return text.replace(/\r\n?/g, '\n');
}

function sendPage(response: ServerResponse, status: number, html: string): void {
  response.setHeader('content-security-policy', DESK_POLICY);
  send(response, status, contentType('index.html'), html);
}

function sendWords(response: ServerResponse, status: number, words: string): void {
  send(response, status, contentType('words.txt'), `${words}\n`);
}

function send(response: ServerResponse, status: number, type: string, content: string | Uint8Array): void {
  response
    .writeHead(status, {
      'content-type': type,
      'cache-control': 'no-store',
      'x-content-type-options': 'nosniff',
    })
    .end(content);
}

function goTo(response: ServerResponse, href: string): void {
  response.writeHead(303, { location: href }).end();
}
