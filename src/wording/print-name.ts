/** A stitch's name, or what sort of place is meant, in; as the voice prints it out, for one or for more. */

import type { StitchName, What } from '../notation/tree.ts';
import { pluralAbbr, pluralName } from '../stitches/plural.ts';
import { stitchById, termsOf } from '../stitches/table.ts';
import type { Noun } from './phrases.ts';
import type { Voice } from './voice.ts';

export function printName(name: StitchName, many: boolean, voice: Voice): string {
  return name.kind === 'stitch' ? printStitch(name.id, many, voice) : printSpecial(name.name, many, voice);
}

/** `sc`, `single crochet`. */
export function printStitch(id: string, many: boolean, voice: Voice): string {
  const terms = termsOf(stitchById(id), voice.terms);
  if (voice.form === 'full') return many ? pluralName(terms.name) : terms.name;
  return many ? pluralAbbr(terms.abbr) : terms.abbr;
}

export function printSpecial(name: string, many: boolean, voice: Voice): string {
  const printed = voice.specials.get(name) ?? name;
  return many && !voice.shortSpecials.has(name) ? pluralName(printed) : printed;
}

/** `st`, `ch-2 sp`, `corner ch-2 sp`, `row end`, `shell`. */
export function printWhat(what: What, many: boolean, voice: Voice): string {
  const { phrases } = voice;
  switch (what.kind) {
    case 'st':
      return form(phrases.st, many);
    case 'stitch':
      return `${what.alone === true ? 'single ' : ''}${printStitch(what.id, many, voice)}`;
    case 'special':
      return printSpecial(what.name, many, voice);
    case 'ch':
      return what.of === undefined
        ? form(phrases.ch, many)
        : `each of ${what.of} ${form(phrases.ch, what.of !== 1)}`;
    case 'space': {
      const chains = what.chains === null ? '' : `${phrases.chainsOf(what.chains)} `;
      const corner = what.corner ? `${phrases.corner.one} ` : what.side === true ? 'side ' : '';
      const within = what.of === undefined ? '' : ` of ${printSpecial(what.of, false, voice)}`;
      return `${corner}${chains}${form(phrases.sp, many)}${within}`;
    }
    case 'corner':
      return what.of === undefined
        ? form(phrases.corner, many)
        : `${phrases.corner.one} ${printStitch(what.of, many, voice)}`;
    case 'row-end':
      return form(phrases.rowEnd, many);
    case 'any-of':
      return what.of.map((each) => printWhat(each, false, voice)).join(' and ');
    case 'group':
      return `${what.size === undefined ? '' : `${what.size}-${phrases.st.one} `}${many ? 'groups' : 'group'}`;
    case 'marked':
      return `marked ${form(phrases.st, many)}`;
  }
}

export function form(noun: Noun, many: boolean): string {
  return many ? noun.many : noun.one;
}
