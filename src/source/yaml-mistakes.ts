/** What the YAML library complains of in, mistakes a maker would recognise out, each slip once. */

import type { Document, YAMLError } from 'yaml';
import type { Span } from './span.ts';
import type { YamlMistake, YamlMistakeFacts } from './yaml-tree.ts';

/** A file that isn't YAML at all sets off a complaint a line: this many tell as much. */
const MOST_COMPLAINTS = 200;

/** The library's complaints joined with what was found while walking the values, in file order. */
export function mistakesOf(
  document: Document.Parsed,
  text: string,
  found: readonly YamlMistake[],
): readonly YamlMistake[] {
  const complaints = [...document.errors, ...document.warnings].slice(0, MOST_COMPLAINTS);
  const all = [...found, ...complaints.map((complaint) => read(complaint, complaints, text))];
  return eachOnce(
    all.map((mistake) => hashInstead(mistake, text)).sort((a, b) => a.span.start - b.span.start),
    text,
  );
}

/** After one of these, the rest of the file is read as something else than was meant. */
const TAKES_THE_REST: readonly YamlMistake['kind'][] = [
  'not closed',
  'not opened',
  'hash',
  'outside',
  'unreadable',
];

/** One slip sets off several complaints: those on the same line, and all after one that takes the rest. */
function eachOnce(inOrder: readonly YamlMistake[], text: string): readonly YamlMistake[] {
  const kept: YamlMistake[] = [];
  let lineEnd = -1;
  for (const mistake of inOrder) {
    if (mistake.broken && mistake.span.start <= lineEnd) continue;
    kept.push(mistake);
    if (mistake.broken && TAKES_THE_REST.includes(mistake.kind)) break;
    if (mistake.broken) lineEnd = lineAround(text, mistake.span.start).end;
  }
  return kept;
}

function read(complaint: YAMLError, all: readonly YAMLError[], text: string): YamlMistake {
  const [start, end] = complaint.pos;
  const line = lineAround(text, start);
  const place = { start, end: Math.min(Math.max(end, start + 1), Math.max(line.end, start + 1)) };
  const whole = trimmed(text, line);
  const broken = (facts: YamlMistakeFacts, span: Span = place): YamlMistake => ({
    ...facts,
    span,
    broken: true,
  });
  switch (complaint.code) {
    case 'TAB_AS_INDENT':
      return broken({ kind: 'tab' });
    case 'MULTIPLE_DOCS':
      return broken({ kind: 'two documents' });
    case 'RESOURCE_EXHAUSTION':
      return broken({ kind: 'too much' });
    case 'BAD_DQ_ESCAPE':
      return {
        kind: 'escape',
        text: text.slice(start, start + 2),
        span: { start, end: start + 2 },
        broken: false,
      };
    case 'TAG_RESOLVE_FAILED':
      return { kind: 'starts with', character: '!', span: place, broken: false };
    case 'BAD_ALIAS':
    case 'BAD_SCALAR_START':
      return broken({ kind: 'starts with', character: text.charAt(start) });
    case 'BLOCK_AS_IMPLICIT_KEY': {
      const spread = all.find((other) => other.code === 'MULTILINE_IMPLICIT_KEY' && other.pos[0] === start);
      if (spread === undefined) return broken({ kind: 'colon' }, secondColon(text, line) ?? place);
      return broken({ kind: 'indent' }, trimmed(text, lineAround(text, spread.pos[1])));
    }
    case 'MULTILINE_IMPLICIT_KEY':
      // A line that reads well by itself is followed by one set in too far; else the line has no colon.
      if (/^(-|[^:]*:)(\s|$)/.test(text.slice(whole.start, whole.end))) {
        return broken({ kind: 'indent' }, trimmed(text, lineAround(text, end)));
      }
      return broken({ kind: 'no colon', line: text.slice(whole.start, whole.end) }, whole);
    case 'MISSING_CHAR':
      return broken({ kind: 'no colon', line: text.slice(whole.start, whole.end) }, whole);
    case 'BAD_INDENT':
      return broken({ kind: 'indent' }, whole);
    case 'UNEXPECTED_TOKEN':
      return unexpected(place, line, text);
    default:
      if (/^\S.*:\s/.test(text.slice(start, end))) {
        const colon = start + text.slice(start, end).indexOf(': ');
        return broken({ kind: 'colon' }, { start: colon, end: colon + 1 });
      }
      return broken({ kind: 'unreadable', text: text.slice(place.start, place.end) });
  }
}

/** Something more after a value that had ended: mostly text that begins with a character YAML keeps for itself. */
function unexpected(place: Span, line: Span, text: string): YamlMistake {
  const character = text.charAt(place.start);
  if ('}]'.includes(character)) return { kind: 'not opened', character, span: place, broken: true };
  const before = text.slice(line.start, place.start);
  const opening = /^\s*(?:- +)*(?:[^\s:#][^:#]*: +)?([*&!@`%[{"'|>])/.exec(before);
  if (opening !== null) {
    const start = line.start + opening[0].length - 1;
    return {
      kind: 'starts with',
      character: opening[1] ?? '',
      span: { start, end: trimmed(text, line).end },
      broken: true,
    };
  }
  return { kind: 'unreadable', text: text.slice(place.start, place.end), span: place, broken: true };
}

/** A `#` after a blank begins a remark, and takes the closing bracket with it. */
function hashInstead(mistake: YamlMistake, text: string): YamlMistake {
  if (mistake.kind !== 'not closed' || !'{['.includes(mistake.character)) return mistake;
  const line = lineAround(text, mistake.span.start);
  const hash = /[:,] +(#[^\s,}\]]*)/.exec(text.slice(mistake.span.start, line.end));
  if (hash === null) return mistake;
  const start = mistake.span.start + hash.index + hash[0].length - (hash[1] ?? '').length;
  return {
    kind: 'hash',
    text: hash[1] ?? '#',
    span: { start, end: start + (hash[1] ?? '#').length },
    broken: true,
  };
}

/** The `:` that makes a line read as a key within a key. */
function secondColon(text: string, line: Span): Span | null {
  const found = /^[^:]*:\s.*?(:)(?:\s|$)/.exec(text.slice(line.start, line.end));
  if (found === null) return null;
  const end = line.start + found[0].trimEnd().length;
  return { start: end - 1, end };
}

function lineAround(text: string, offset: number): Span {
  const start = text.lastIndexOf('\n', offset - 1) + 1;
  const end = text.indexOf('\n', start);
  return { start: offset === 0 ? 0 : start, end: end === -1 ? text.length : end };
}

/** A line without the blanks at both ends. */
function trimmed(text: string, line: Span): Span {
  const written = text.slice(line.start, line.end);
  const start = line.start + Math.max(0, written.search(/\S/));
  return { start, end: Math.max(start + 1, line.start + written.trimEnd().length) };
}
