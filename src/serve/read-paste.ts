/** Pasted text -> the pattern file it becomes, as `read` writes it, and what is told of it. */

import { checkPattern } from '../compile.ts';
import type { ReadPaste } from '../desk/lay-paste.ts';
import { fragment } from '../site/addresses.ts';
import { listedPieces } from '../transcribe/listing.ts';
import { askedOfText, patternFileText } from '../transcribe/pattern-file-text.ts';
import { transcribe } from '../transcribe/transcribe.ts';

/** `wanted` names its folder; left empty the title does. */
export function readPaste(
  pasted: string,
  wanted: string,
): { readonly read: ReadPaste; readonly name: string } {
  const transcript = transcribe({ file: 'pasted text', text: pasted });
  const name = fragment(wanted) || fragment(transcript.title?.value ?? '') || 'pasted';
  const text = patternFileText(transcript, name, (source) => checkPattern(source, name));
  const faults = checkPattern({ file: 'pattern.yaml', text }, name);
  return {
    name,
    read: { text, faults, listed: listedPieces(transcript), asked: askedOfText(transcript) },
  };
}
