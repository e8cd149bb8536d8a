/** What a list says of an abbreviation in; whether that is what the trade means by it out. */

import type { StitchRow, Terms } from '../stitches/stitch-row.ts';
import { termsOf } from '../stitches/table.ts';
import { stitchNamed } from './derive-work.ts';

/** `single` of single crochet, all of its words with others between, or its name with how it is worked behind it. */
export function saysAsUsual(meaning: string, own: StitchRow, terms: Terms): boolean {
  return saysSame(meaning, termsOf(own, terms).name) || namesAndTells(meaning, own, terms);
}

/** `single` of single crochet, or all of its words with others between: `single crochet 2 stitches together`. */
function saysSame(meaning: string, name: string): boolean {
  const words = meaning.toLowerCase().split(/[^a-z0-9]+/);
  if (name.split(' ')[0] === meaning.toLowerCase()) return true;
  const rest = words.filter((word) => !name.includes(word) && word !== '');
  return (
    name.split(' ').every((word) => words.includes(word)) &&
    rest.every((word) => /^(?:st|sts|stitch|stitches|the|next|over|a|an|of|work)$/.test(word))
  );
}

/** `front post double crochet - work the dc around the post of the st`: its name, and behind it how the hook goes. */
const NAME_AND_WORDS = /^([^:;,.()–—]{4,48}?)\s*(?:[:;,.(–—]|\s-\s)\s*(\S.*)$/;

/** Another number of stitches or another loop is another stitch than the name says. */
const OTHER_WORK = /\b(?:[3-9]|twice|together|loops? only|[bf]lo|third loop|3rd loop|below)\b/i;

function namesAndTells(meaning: string, own: StitchRow, terms: Terms): boolean {
  const [, name = '', words = ''] = NAME_AND_WORDS.exec(meaning) ?? [];
  if (name === '') return false;
  // `front/back post double crochet: …` for two of them in one.
  const [, one, other, rest] = /^(\w+)\/(\w+) (.+)$/.exec(name) ?? [];
  const names = rest === undefined ? [name] : [`${one} ${rest}`, `${other} ${rest}`];
  if (!names.some((said) => stitchNamed(said, terms) === own)) return false;
  return !OTHER_WORK.test(words.replace(/\b(?:st|sts|stitch|stitches|row|rnd|round) below\b/gi, ''));
}
