/** What is counted and how many there are in, its name after that number out: `1 ch-2 sp`, `0 groups of 3 dc`. */

import { pluralAbbr, pluralName } from '../stitches/plural.ts';
import type { Terms } from '../stitches/stitch-row.ts';
import { abbreviation, describeWhat } from './describe-what.ts';
import type { Thing } from './line.ts';
import { isThing } from './line.ts';
import type { What } from './tree.ts';

/** How stitches are named where a thing is described. */
export interface ThingNames {
  /** Stitches of any sort, in the plural. */
  readonly any: string;
  readonly stitch: (id: string, many: boolean) => string;
  readonly special: (name: string, many: boolean) => string;
}

/** In the pattern's own terms; null is a stitch of any sort. */
export function describeCounted(what: What | Thing | null, n: number, terms: Terms): string {
  const many = n !== 1;
  if (what === null) return many ? 'sts' : 'st';
  if (isThing(what)) return describeThing(what, many, namesIn(terms));
  if (what.kind === 'stitch') return stitchName(what.id, many, terms);
  if (what.kind === 'special') return specialName(what.name, many);
  const name = describeWhat(what, terms);
  return many && what.kind !== 'ch' && what.kind !== 'any-of' ? pluralName(name) : name;
}

export function describeThing(thing: Thing, many: boolean, names: ThingNames): string {
  switch (thing.kind) {
    case 'together': {
      const word = many ? pluralName(thing.word) : thing.word;
      if (thing.size === null) return word;
      const of = thing.id === null ? names.any : names.stitch(thing.id, thing.size !== 1);
      return `${word} of ${thing.size} ${of}`;
    }
    case 'shaping': {
      const word = thing.does === 'inc' ? 'increase' : 'decrease';
      return many ? pluralName(word) : word;
    }
    case 'square': {
      const sort = thing.filled === null ? '' : thing.filled ? 'solid ' : 'open ';
      return `${sort}${many ? 'squares' : 'square'}`;
    }
    case 'block':
    case 'picot':
      return many ? pluralName(thing.kind) : thing.kind;
    case 'gathered':
      return many ? pluralName(thing.word) : thing.word;
    case 'rows':
      return many ? 'rows' : 'row';
    case 'half':
      return `half ${names.special(thing.special, many)}`;
    case 'shape':
    case 'of-yarn':
    case 'named':
      return thing.word;
  }
}

function namesIn(terms: Terms): ThingNames {
  return { any: 'sts', stitch: (id, many) => stitchName(id, many, terms), special: specialName };
}

function stitchName(id: string, many: boolean, terms: Terms): string {
  const name = abbreviation(id, terms);
  return many ? pluralAbbr(name) : name;
}

/** `sh` and `cl` stay as they are; `V-st` and whole words take their s. */
function specialName(name: string, many: boolean): string {
  const whole = /st$/i.test(name) || /[aeiou]/i.test(name);
  return many && whole ? pluralName(name) : name;
}
