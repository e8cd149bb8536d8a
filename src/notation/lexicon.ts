/** The names of stitches in one dialect, and a pattern's own special stitches, found by the longest run of words. */

import type { Terms } from '../stitches/stitch-row.ts';
import { stitchNames } from '../stitches/table.ts';
import type { Token } from './token.ts';
import { tokenise, wordId } from './tokens.ts';
import { WordSet } from './word-set.ts';

export type Named =
  | { readonly kind: 'stitch'; readonly id: string }
  | { readonly kind: 'special'; readonly name: string };

interface Branch {
  readonly next: Map<string, Branch>;
  named: Named | null;
}

/** All names of one kind, with what one may begin with and go on with: most tokens are in none. */
interface Names {
  readonly first: Branch;
  readonly begun: Parts;
  readonly later: Parts;
}

interface Parts {
  readonly words: WordSet;
  /** What is no word, `3` and `-` of `3-dc cluster`. */
  readonly others: ReadonlySet<string>;
}

export interface Lexicon {
  readonly terms: Terms;
  readonly stitches: Names;
  readonly specials: Names | null;
}

export interface Found {
  readonly named: Named;
  /** How many tokens the name takes. */
  readonly length: number;
}

const TABLES: Readonly<Record<Terms, Names>> = { US: tableNames('US'), UK: tableNames('UK') };

/**
 * The names of a dialect together with a pattern's special stitches, which win over the table at equal length. All parts
 * of a pattern share its list of special stitches, so what is made of a list is kept as long as the list is.
 */
export function lexiconOf(
  terms: Terms,
  specials: readonly string[],
  fullNames: readonly FullName[] = [],
): Lexicon {
  if (specials.length === 0) return { terms, stitches: TABLES[terms], specials: null };
  let names = SPECIALS.get(specials);
  if (names === undefined) {
    names = specialNames(terms, specials, fullNames);
    SPECIALS.set(specials, names);
  }
  return { terms, stitches: TABLES[terms], specials: names };
}

const SPECIALS = new WeakMap<readonly string[], Names>();

/** A special stitch's name in full words, `shell` of `sh`. */
export interface FullName {
  readonly full: string;
  readonly name: string;
}

/** Its name in full words stands for it too, unless the trade or the pattern has another meaning for that. */
function specialNames(terms: Terms, specials: readonly string[], fullNames: readonly FullName[]): Names {
  const branch = emptyBranch();
  for (const name of specials) addName(branch, name, { kind: 'special', name });
  for (const { full, name } of fullNames)
    if (OWN_WORDS.test(full) && !LED_BY.test(full) && longest(TABLES[terms], tokenise(full).list, 0) === null)
      addName(branch, full, { kind: 'special', name });
  for (const { full, name } of onlyOnesOfAKind(fullNames))
    if (longest(TABLES[terms], tokenise(full).list, 0) === null)
      addName(branch, full, { kind: 'special', name });
  addPlurals(branch);
  return namesOf(branch);
}

function namesOf(first: Branch): Names {
  const later = new Set<string>();
  for (const branch of first.next.values()) addLater(branch, later);
  return { first, begun: partsOf([...first.next.keys()]), later: partsOf([...later]) };
}

function addLater({ next }: Branch, later: Set<string>): void {
  for (const text of next.keys()) later.add(text);
  for (const branch of new Set(next.values())) addLater(branch, later);
}

function partsOf(texts: readonly string[]): Parts {
  const words = texts.filter((text) => wordId(text) > 0);
  return { words: new WordSet(words), others: new Set(texts.filter((text) => wordId(text) === 0)) };
}

/** `3-dc cluster (cl)` is `cluster` as well where the pattern has no other; its beginning cluster is one of them. */
function onlyOnesOfAKind(fullNames: readonly FullName[]): FullName[] {
  const kinds = fullNames
    .filter(({ name }) => !/^beg/i.test(name))
    .flatMap(({ full, name }) => {
      const last = /^\d+-[a-z]+ ([a-z]+)$/i.exec(full)?.[1];
      return last === undefined ? [] : [{ full: last, name }];
    });
  return kinds.filter(({ full }) => kinds.filter((other) => other.full === full).length === 1);
}

const OWN_WORDS = /^[a-z]+(?:[ -][a-z]+){0,3}$/i;
/** Words that instruct where they stand, whatever a special stitch is called. */
const LED_BY =
  /^(?:increase|decrease|join|chain|turn|skip|miss|work|make|rep|repeat|in|into|same|next|first|last|each|the|an?|with|from)\b|\b(?:in|into|over|around|st|sts|stitch|stitches|together)\b/i;

/** The longest name that begins at a token, or null. */
export function findName(lexicon: Lexicon, tokens: readonly Token[], at: number): Found | null {
  const special = lexicon.specials === null ? null : longest(lexicon.specials, tokens, at);
  const stitch = longest(lexicon.stitches, tokens, at);
  if (special !== null && (stitch === null || special.length >= stitch.length)) return special;
  return stitch;
}

function longest(names: Names, tokens: readonly Token[], at: number): Found | null {
  const leading = tokens[at];
  if (leading === undefined || !mayBeIn(names.begun, leading)) return null;
  let branch: Branch | undefined = names.first;
  let found: Found | null = null;
  for (let length = 1; ; length += 1) {
    let token: Token | undefined = tokens[at + length - 1];
    if (token === undefined) return found;
    if (token.kind === 'dash' && length > 1 && !branch.next.has(token.text) && token.glued) {
      // `half-double crochet` is `half double crochet`.
      const after: Token | undefined = tokens[at + length];
      if (after === undefined || after.kind !== 'word' || !after.glued) return found;
      length += 1;
      token = after;
    }
    if (length > 1 && !mayBeIn(names.later, token)) return found;
    const following: Branch | undefined = branch.next.get(token.text);
    if (following === undefined) return found;
    branch = following;
    if (branch.named !== null) found = { named: branch.named, length };
  }
}

function mayBeIn({ words, others }: Parts, token: Token): boolean {
  if (token.id > 0) return words.holds(token);
  // A word that is not kept has to be looked up.
  return token.kind === 'word' || (others.size > 0 && others.has(token.text));
}

function tableNames(terms: Terms): Names {
  const branch = emptyBranch();
  for (const { words, row } of stitchNames(terms)) addName(branch, words, { kind: 'stitch', id: row.id });
  addPlurals(branch);
  return namesOf(branch);
}

function addName(from: Branch, name: string, named: Named): void {
  let branch = from;
  for (const token of tokenise(name).list) {
    if (token.kind === 'end') break;
    const known = branch.next.get(token.text);
    const following = known ?? emptyBranch();
    if (known === undefined) branch.next.set(token.text, following);
    branch = following;
  }
  branch.named ??= named;
}

/** `shells`, `dcs`, `slip stitches` lead where their singular does, unless they are names themselves. */
function addPlurals(branch: Branch): void {
  const singular = [...branch.next].filter(([word]) => /[^\d-]$/.test(word));
  for (const ending of ['s', 'es'])
    for (const [word, following] of singular) {
      const plural = word + ending;
      if (plural.length > 2 && !branch.next.has(plural)) branch.next.set(plural, following);
    }
  for (const following of new Set(branch.next.values())) addPlurals(following);
}

function emptyBranch(): Branch {
  return { next: new Map(), named: null };
}
