/** `read`: instructions pasted as plain text -> a pattern file, with what was recognised and what is left to put right. */

import { mkdir, readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { text as textOfStream } from 'node:stream/consumers';
import { checkPattern } from '../compile.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { renderDiagnostics } from '../diagnostics/render.ts';
import { fragment } from '../site/addresses.ts';
import { diskFault } from '../site/disk-faults.ts';
import { PATTERN_FILE } from '../site/read-patterns.ts';
import type { Source } from '../source/span.ts';
import { listing } from '../transcribe/listing.ts';
import { askedOfText, patternFileText } from '../transcribe/pattern-file-text.ts';
import { transcribe } from '../transcribe/transcribe.ts';
import type { Verb } from './verb.ts';

export const readPasted: Verb = {
  name: 'read',
  takes: 'FILE.txt [--out FOLDER]',
  about: 'pasted plain-text instructions -> a pattern file, faults marked',
  least: 1,
  most: 1,
  flags: [{ name: 'out', value: 'FOLDER', about: 'the folder for pattern.yaml (patterns/ and the title)' }],
  teaches: `Reads instructions as they stand on a page, in a document or an email, and writes them as a pattern file.

  npm run -s rowfold -- read pasted.txt                     writes patterns/<its title>/pattern.yaml
  npm run -s rowfold -- read pasted.txt --out patterns/my-square
  npm run -s rowfold -- read -                              reads what is typed or piped in

It lists what it recognised; what it did not understand is kept word for word under notes. Then the new file is
checked: its faults are told, and stand as remarks in the file above what they are about. A pattern that is
already there is left alone. It ends with 1 when the new pattern has errors.`,
  run: async ({ paths: [given = ''], values }, terminal) => {
    const read = await readGiven(given);
    if (read.kind === 'fault') {
      terminal.tell(renderDiagnostics([read.fault], new Map(), { colour: terminal.colour }).trimEnd());
      return 1;
    }
    const transcript = transcribe(read.source);
    const slug = fragment(transcript.title?.value ?? '') || fragment(read.name) || 'pasted';
    const folder = values.get('out') ?? `patterns/${slug}`;
    const file = path.join(folder, PATTERN_FILE);
    const address = path.basename(path.resolve(folder));
    const text = patternFileText(transcript, slug, (source) => checkPattern(source, address));
    await mkdir(folder, { recursive: true });
    try {
      await writeFile(file, text, { flag: 'wx' });
    } catch (fault) {
      if (!(fault instanceof Error && 'code' in fault && fault.code === 'EEXIST')) throw fault;
      terminal.tell(`There is already a ${file}; it was left as it is. Name another folder with --out.`);
      return 2;
    }
    const asked = askedOfText(transcript);
    const faults = checkPattern({ file, text }, address);
    terminal.say(`${listing(transcript)}\n`);
    const all: readonly Diagnostic[] = [...asked, ...faults];
    const texts = new Map([
      [read.source.file, read.source.text],
      [file, text],
    ]);
    terminal.say(renderDiagnostics(all, texts, { colour: terminal.colour }).trimEnd());
    terminal.say(
      `${file} is written. Check it after each change with: npm run -s rowfold -- check ${folder}`,
    );
    return all.some(({ severity }) => severity === 'error') ? 1 : 0;
  },
};

type Given =
  | { readonly kind: 'read'; readonly source: Source; readonly name: string }
  | { readonly kind: 'fault'; readonly fault: Diagnostic };

/** `-` is standard input. */
async function readGiven(given: string): Promise<Given> {
  if (given === '-') {
    const text = await textOfStream(process.stdin);
    return { kind: 'read', source: { file: 'pasted text', text: text.replace(/^\uFEFF/, '') }, name: '' };
  }
  const file = given.split(path.sep).join('/');
  const bytes = await readFile(given).catch((fault: unknown) => {
    return fault instanceof Error && 'code' in fault && fault.code === 'ENOENT' ? 'missing' : 'unreadable';
  });
  if (typeof bytes === 'string') return { kind: 'fault', fault: diskFault(`path/${bytes}`, file) };
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return { kind: 'read', source: { file, text }, name: path.basename(file).replace(/\.[^.]*$/, '') };
  } catch {
    return { kind: 'fault', fault: diskFault('path/not-text', file) };
  }
}
