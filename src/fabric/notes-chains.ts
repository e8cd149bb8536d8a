/** What a pattern's notes say of its turning chains: of those of one length, `Ch 3 counts as a dc throughout`, or of all. */

import type { Terms } from '../stitches/stitch-row.ts';
import { findStitch } from '../stitches/table.ts';
import type { Worker } from './worker.ts';

export interface ChainHabit {
  readonly as: string | null;
  readonly plusChains: number;
}

/** `5 ch, which stand for 1 tr and the 2 ch of the first sp`, too. In `ch 3 counts as a dc, ch 1 never counts` the second chain begins a saying of its own. */
const SAYS =
  /\b(?:(?:ch|chain)[ -]?(\d+)|(\d+)[ -]?(?:ch|chain))\b(?![ -]?(?:sps?|spaces?|loops?|lps?)\b)[^.;]*?\b(does not count|do not count|does ?n[’']t count|do ?n[’']t count|never counts?|counts?|(?:is|are)(?:n[’']t| not| never)? counted|stands?)\b(?:\s+(?:as|for)\s+[([]?(?:an?\s+|1\s*|one\s+|the first\s+|first\s+)?([a-z][a-z ]*?[a-z]))?(?:\s*(?:,|and|plus)\s+(?:(?:a|the)\s+)?(?:(?:ch|chain)[ -]?(\d+)|(\d+)[ -]?(?:ch|chain))\b(?!\s+(?:(?:at|to)\b[^,.;]*?\s)?(?:does|do|never|counts?|is)\b))?(?=[\s.,;:)]|$)/gi;

/** `The 2 ch at the beginning of a row counts as a 1-ch sp`: no stitch, but a space. */
const SAYS_SPACE =
  /\b(?:(?:ch|chain)[ -]?(\d+)|(\d+)[ -]?(?:ch|chain))\b[^.;]*?\b(?:counts?|stands?)\s+(?:as|for)\s+(?:an?\s+|1\s+|one\s+|the\s+|first\s+)*(?:ch[ -]?(\d+)|(\d+)[ -]?ch)[ -]?sp/gi;

/** `ch 5 (this is the dc and ch 2)`. */
const AS_BRACKET =
  /(?<=\d\s*(?:ch)?)\s*\((?:this|it|which) (?:is|makes|gives|forms) (?:the |an? |1 )?(?:first )?/gi;

/** `The 3 chain at the start of the row is your first treble every time`, `ch 3 takes the place of the first dc`. */
const AS_IS =
  /(?<=\b(?:(?:ch|chain)[ -]?\d+|\d+[ -]?(?:ch|chain))(?:,? (?:made |worked )?at (?:the |each )?(?:start|beginning|beg)(?: of (?:a|the|each|every|all(?: the)?) (?:rows?|rnds?|rounds?))?,?)?) (?:always )?(?:is|are|makes?|becomes|acts as|replaces|takes the place of) (?:always )?(?:your |the |an? |my |1 )(?:first )?/gi;

export function chainHabits(notes: readonly string[], terms: Terms): ReadonlyMap<number, ChainHabit> {
  const habits = new Map<number, ChainHabit>();
  for (const told of notes) {
    const note = told.replace(AS_BRACKET, ' counts as a ').replace(AS_IS, ' counts as a ');
    for (const [said, after, before, verb, what, plus, plusUk] of note.matchAll(SAYS)) {
      const length = Number(after ?? before);
      const either = /^(?:ch|chain)[ -]?\d+ (?:or|and) (?:(?:ch|chain)[ -]?)?(\d+)\b/i.exec(said)?.[1];
      if (/not|n[’']t|never/i.test(verb ?? ''))
        for (const each of either === undefined ? [length] : [length, Number(either)])
          habits.set(each, { as: null, plusChains: 0 });
      else {
        const as = what === undefined && /^stand/i.test(verb ?? '') ? null : stitchIn(what ?? 'st', terms);
        if (as !== null) habits.set(length, { as, plusChains: Number(plus ?? plusUk ?? 0) });
      }
    }
    for (const [, after, before, chains, chainsUk] of note.matchAll(SAYS_SPACE))
      habits.set(Number(after ?? before), { as: null, plusChains: Number(chains ?? chainsUk) });
  }
  return habits;
}

/** `At the beginning, 3 ch counts as the first tr.` behind a half shell: it is said of the rows that begin so. */
export function saidOfStarts(specials: readonly { readonly how: string | null }[]): readonly string[] {
  return specials.flatMap(({ how }) => (how !== null && AT_START.test(how) ? [how] : []));
}

const AT_START = /\bat the (?:beginning|start)\b/i;

/** A sentence of it among the rows holds from there on. */
export function noteChains(worker: Worker, text: string): void {
  if (!/\b(?:counts?|stands? for)\b/i.test(text)) return;
  for (const [chains, habit] of chainHabits([text], worker.terms)) worker.throughout.set(chains, habit);
  worker.everyChain = everyChainInNotes([text]) ?? worker.everyChain;
}

const OF_ALL =
  /\b(?:turning|beginning|starting|beg|t-?)[ -]?(?:chains?|ch)s?\b(?!\s*-?\s*\d)(?:[^.;\d]*?)\b(?:(does not|do not|doesn[’']t|don[’']t|never)?\s*counts?|(?:is|are)(n[’']t| not| never)? (?:counted|included))\b/i;
/** A sentence with exceptions says nothing of all. */
export const EXCEPTIONS = /\b(?:unless|except|otherwise|apart from|but)\b/i;

/** "Turning chains count as a stitch", "the beginning ch does not count", "turning chains are not counted"; null where a sentence says neither of all. */
export function everyChainCounts(sentence: string): boolean | null {
  const found = EXCEPTIONS.test(sentence) ? null : OF_ALL.exec(sentence);
  return found === null ? null : (found[1] ?? found[2]) === undefined;
}

/** The same of all a pattern's notes; null also where they say both. */
export function everyChainInNotes(notes: readonly string[]): boolean | null {
  const said = notes.flatMap((note) => note.split(/[.!?;]/)).map(everyChainCounts);
  const [first = null, second] = new Set(said.filter((counts) => counts !== null));
  return second === undefined ? first : null;
}

/** The longest run of words from the start that names a stitch; "st" for one of the row's own. */
function stitchIn(words: string, terms: Terms): string | null {
  const all = words.toLowerCase().split(/\s+/);
  for (let length = Math.min(all.length, 4); length > 0; length -= 1) {
    const name = all.slice(0, length).join(' ');
    if (name === 'st' || name === 'stitch') return 'st';
    const row = findStitch(name, terms);
    if (row !== null) return row.id;
  }
  return null;
}
