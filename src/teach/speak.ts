/** A sentence in full words as it is printed in, the same as a voice says it out: no figures, brackets, signs or dropped articles. */

import type { Terms } from '../stitches/stitch-row.ts';
import { capitalised } from '../wording/join-steps.ts';
import { numberWords, ordinalWords } from './number-words.ts';

/** Ends with a stop and begins with a capital. */
export function speak(text: string, terms: Terms): string {
  const said = withArticles(withoutFigures(withoutSigns(text), terms))
    .replace(/(?<=[a-z,;:] )(?:Row|Round)s?\b/g, (word) => word.toLowerCase())
    .replace(/\s+/g, ' ')
    .replace(/\s+([,.;:])/g, '$1')
    .replace(/[,;:]+(?=[.;:,])/g, '')
    .replace(/^[,;: ]+/, '')
    .trim();
  const sentence = said.replace(/[,;:]$/, '');
  if (sentence === '') return '';
  return inSentences(/[.!?”]$/.test(sentence) ? sentence : `${sentence}.`);
}

function inSentences(text: string): string {
  return capitalised(text).replace(
    /([.!?] )(\p{Ll})/gu,
    (_, stop: string, letter: string) => stop + letter.toUpperCase(),
  );
}

/** What a designer's own sentences may hold; the instructions themselves are said without signs from the start. */
function withoutSigns(text: string): string {
  return text
    .replace(
      /[([]([^()[\]]*)[)\]] (once|twice|\d+ times)(, )?/g,
      (_, body: string, times: string, on) =>
        `do this ${times}: ${body.charAt(0).toLowerCase()}${body.slice(1)}${on === undefined ? '' : '. Then '}`,
    )
    .replace(/\(([^()]*)\) (?=in |into )/g, '$1, all ')
    .replace(/ ?\((counts?|does not count) /g, ' (which $1 ')
    .replace(/\(([^()]*)\)/g, ', $1,')
    .replace(/ \+ /g, ' plus ')
    .replace(/[[\]]/g, '')
    .replace(/repeat from [*†‡]/g, 'repeat from where the repeat began')
    .replace(/[*†‡]+/g, '')
    .replace(/(\d+)\s*[–-]\s*(\d+)/g, (_, from: string, to: string) =>
      Number(to) === Number(from) + 1 ? `${from} and ${to}` : `${from} to ${to}`,
    )
    .replace(/ 1\/2\b|½/g, ' and a half')
    .replace(/ & /g, ' and ')
    .replace(/(\d) ?mm(?= hook)/g, '$1 millimetre')
    .replace(/(\d) ?mm\b/g, '$1 millimetres')
    .replace(/(\d) ?cm\b/g, '$1 centimetres');
}

function withoutFigures(text: string, terms: Terms): string {
  return text
    .replace(/\b(\d+)(?:st|nd|rd|th)\b/g, (_, n: string) => ordinalWords(Number(n), terms))
    .replace(/\b(\d{1,6})\.(\d+)\b/g, (_, whole: string, parts: string) =>
      [
        numberWords(Number(whole), terms),
        'point',
        ...[...parts].map((n) => numberWords(Number(n), terms)),
      ].join(' '),
    )
    .replace(/\d{1,6}/g, (n) => numberWords(Number(n), terms));
}

/** Print leaves out "the" and "a" where a voice does not. */
const BEFORE =
  'in|into|over|around|of|to|from|along|through|on|before|between|skip|miss|leave|pull|insert|working|below|and';
const NAMED = [
  'next|first|last|same|remaining|top|end(?! with)|hook|ring|magic ring|row ends?',
  'second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth|centre|center|middle',
  'beginning|turning|opposite|foundation|free|unused|back loop|front loop|skipped|marked|corner|side space|place given|(?:space|stitch)(?= between| before| indicated)',
].join('|');
const THE = new RegExp(`\\b(${BEFORE}) (?=(?:${NAMED})\\b)`, 'gi');

function withArticles(text: string): string {
  return text
    .replace(/\bto form ring\b/g, 'to form a ring')
    .replace(/\b(place|move) (?=marker\b)/gi, (found, verb: string) =>
      verb.toLowerCase() === 'place' ? `${found}a ` : `${found}the `,
    )
    .replace(THE, '$1 the ')
    .replace(/\b(in|into|around|of|to|skip|miss) (?=(?:chain-[a-z-]+|[a-z-]+-chain) space)/gi, '$1 the ')
    .replace(
      /\bwith (?=(?:slip stitch|single|half|double|treble|extended))/g,
      (_, at: number) => `with ${/^with e/.test(text.slice(at)) ? 'an' : 'a'} `,
    )
    .replace(/\bcounts? as (?!an? |the |if |one )(?=[a-z])/g, (found, at: number, whole: string) => {
      const next = whole.slice(at + found.length);
      return `${found}${article(next)} `;
    });
}

/** `a` or `an`, by the letter that the words begin with. */
export function article(words: string): 'a' | 'an' {
  return /^[aeiou]/i.test(words) ? 'an' : 'a';
}
