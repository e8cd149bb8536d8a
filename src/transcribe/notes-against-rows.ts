/** What a text's notes say of turning and joining in, the rows that do otherwise out. */

import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { fileSpan, type MappedText } from '../source/mapped-text.ts';
import { rowLabel } from './row-labels.ts';
import { textFault } from './text-faults.ts';

const SAID = /\b(?:do not|don[’']t|never|without)\s+(turn|join)(?:ing)?\b/gi;
/** A sentence with exceptions, or of some rows only, is let be. */
const OF_SOME =
  /\b(?:unless|except|until|otherwise|at the end of (?:rnd|row|round) \d|on (?:rnd|row|round)s? \d|if)\b/i;
const OF_ROUNDS = /\brounds?\b|\brnds?\b|\bspiral\b/i;

const DOES = {
  turn: /(?<!\b(?:do not|don[’']t|without|never)\s)\bturn\b(?!\s+(?:off|inside|right side|the work over|ring))/i,
  join: /(?<!\b(?:do not|don[’']t|without|never)\s)\bjoin(?:\s+(?:with|by|in|to)\b|\s*[.;(])/i,
} as const;

/** Each verb is told once, at the first row that does what a note says is not done. */
export function notesAgainstRows(
  file: string,
  notes: readonly MappedText[],
  rows: readonly MappedText[],
): Diagnostic[] {
  const told: Diagnostic[] = [];
  for (const verb of ['turn', 'join'] as const) {
    for (const note of notes) {
      const said = saidOf(note, verb);
      const row = said === null ? undefined : rows.find((one) => does(one, verb, said.ofRounds));
      const found = row === undefined ? null : DOES[verb].exec(row.text);
      if (said === null || row === undefined || found === null) continue;
      const span = fileSpan(row, found.index, found.index + verb.length);
      const labels = [{ span: said.span, text: 'here it is said not to be done' }];
      told.push({ ...textFault('text/note-against-rows', file, span, { verb }), labels });
      break;
    }
  }
  return told;
}

function saidOf(note: MappedText, verb: string): { span: Diagnostic['span']; ofRounds: boolean } | null {
  for (const found of note.text.matchAll(SAID)) {
    const start = note.text.lastIndexOf('.', found.index) + 1;
    const stop = note.text.indexOf('.', found.index);
    const sentence = note.text.slice(start, stop === -1 ? undefined : stop);
    if (found[1]?.toLowerCase() !== verb || OF_SOME.test(sentence)) continue;
    const span = fileSpan(note, found.index, found.index + found[0].length);
    return { span, ofRounds: verb === 'join' || OF_ROUNDS.test(sentence) };
  }
  return null;
}

/** Not a first round, which is closed into a ring, nor yarn that is joined. */
function does(row: MappedText, verb: 'turn' | 'join', ofRounds: boolean): boolean {
  const label = rowLabel(row.text);
  if (label === null || label.bare) return false;
  if (ofRounds && !/^(?:the\s+)?\S*\s*(?:rnd|round|r\s?\d)/i.test(row.text.slice(0, label.end))) return false;
  if (verb === 'turn') return DOES.turn.test(row.text);
  return (
    (label.number ?? 2) > 1 &&
    /\bjoin\b[^.;]*\b(?:first|beg|top)\b|\bjoin\s*[.;(]/i.test(row.text) &&
    DOES.join.test(row.text)
  );
}
