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

/** The names of a dialect are laid out when it is first read: most texts are in one of the two. */
function tableOf(terms: Terms): Names {
  let names = TABLES.get(terms);
  if (names === undefined) {
    names = tableNames(terms);
    TABLES.set(terms, names);
  }
  return names;
}

const TABLES = new Map<Terms, Names>();

/**
 * The names of a dialect together with a pattern's special stitches, which win over the table at equal length. All parts
 * of a pattern share its list of special stitches, so what is made of a list is kept as long as the list is.
 */
export function lexiconOf(
  terms: Terms,
  specials: readonly string[],
  fullNames: readonly FullName[] = [],
): Lexicon {
  if (specials.length === 0) return { terms, stitches: tableOf(terms), specials: null };
  let names = SPECIALS.get(specials);
  if (names === undefined) {
    names = specialNames(terms, specials, fullNames);
    SPECIALS.set(specials, names);
  }
  return { terms, stitches: tableOf(terms), specials: names };
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
    if (
      OWN_WORDS.test(full) &&
      !LED_BY.test(full) &&
      longest(tableOf(terms), tokenise(full).list, 0) === null
    )
      addName(branch, full, { kind: 'special', name });
  for (const { full, name } of onlyOnesOfAKind(fullNames))
    if (longest(tableOf(terms), tokenise(full).list, 0) === null)
      addName(branch, full, { kind: 'special', name });
  addPlurals(branch);
  return namesOf(branch);
}

function namesOf(first: Branch): Names {
  const met = new Set<Branch>();
  for (const branch of first.next.values()) addWithin(branch, met);
  const later = new Set([...met].flatMap(({ next }) => [...next.keys()]));
  return { first, begun: partsOf([...first.next.keys()]), later: partsOf([...later]) };
}

/** A branch and all that are on it; a plural leads on where its singular does, so many are met again. */
function addWithin(branch: Branch, met: Set<Branch>): void {
  if (met.has(branch)) return;
  met.add(branch);
  for (const following of branch.next.values()) addWithin(following, met);
}

function partsOf(texts: readonly string[]): Parts {
  const words = texts.filter((text) => wordId(text) !== null);
  return { words: new WordSet(words), others: new Set(texts.filter((text) => wordId(text) === null)) };
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
