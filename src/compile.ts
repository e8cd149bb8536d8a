/**
 * One pattern file's text in, everything known of it out: read it top to bottom to see how the house works.
 *
 *     text -> Pattern -> Fabric per size -> words, charts, measures
 */

import { compileRead } from './compile-read.ts';
import type { CompiledPattern } from './compiled.ts';
import type { Diagnostic } from './diagnostics/diagnostic.ts';
import { NOBODY_LOOKED } from './pattern/photograph.ts';
import { readPattern } from './pattern/read-pattern.ts';
import type { Source } from './source/span.ts';
import { readTranscript } from './transcribe/read-transcript.ts';
import { toldOfText } from './transcribe/told-of-text.ts';
import { transcribe } from './transcribe/transcribe.ts';

/** Compiles a pattern. Words and charts are made when they are first asked for, so that checking stays quick. */
export function compilePattern(source: Source, slug: string, looks = NOBODY_LOOKED): CompiledPattern {
  return compileRead(readPattern(source, slug), slug, { looks });
}

/** The same for instructions pasted as plain text, with no file of keys around them. */
export function compileText(source: Source, slug: string): CompiledPattern {
  return compileRead(readTranscript(transcribe(source), slug), slug, { toTell: tellOfText });
}

function tellOfText(found: readonly Diagnostic[]): readonly Diagnostic[] {
  // Where the terms are doubted as a whole, no one word is told as well.
  const doubted = found.some(({ code }) => code.startsWith('text/terms-'));
  // Bullets and ornaments of the page it came from go into no booklet.
  return found
    .filter(({ code }) => code !== 'booklet/character' && (code !== 'terms/mixed' || !doubted))
    .map(toldOfText);
}

/** Every fault of a pattern, in the order of the file. */
export function checkPattern(source: Source, slug: string): readonly Diagnostic[] {
  return compilePattern(source, slug).diagnostics;
}
