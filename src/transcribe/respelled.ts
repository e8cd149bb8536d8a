/** A designer's words for a stitch in, the same in forms that the notation has out: `sl st in 1st ch`, `5 dctog`. */

import { fileOffset, type MappedText } from '../source/mapped-text.ts';
import { insertedText, joinTexts, sliceText } from './mapped-pieces.ts';

interface Form {
  readonly found: RegExp;
  /** What stands in place of the words found; the first bracket stays before it. */
  readonly instead: (match: RegExpMatchArray) => string;
}

const FORMS: readonly Form[] = [
  {
    // The first of the chains just made: a picot.
    found:
      /(\b(?:chs?|chain)\s*\d+\s*,?\s*(?:and\s+|then\s+)?(?:sl ?st|ss|slip stitch|sc|dc)\s+in(?:to)?\s+)(?:the\s+)?(?:1st|first)\s+ch(?:ain)?(?:\s+(?:made|st))?(?!\s*-?\s*\d)\b(?!\s+(?:from|of))/gi,
    instead: () => 'first of these ch',
  },
  {
    // `3 ch., then a slip stitch into the first of them`.
    found:
      /()\b(\d+)\s*ch\.?,?\s+(?:and\s+|then\s+|and\s+then\s+)?(?:an?\s+|1\s+)?(sl ?st|ss|slip stitch|dc|sc)\s+in(?:to)?\s+(?:the\s+)?first\s+of\s+(?:them|these)\b/gi,
    instead: (match) => `${match[2]} ch, ${match[3]} in first of these ch`,
  },
  {
    // `2 dc, 2 ch, 2 dc, all in the same place`, which stands in brackets already or does not.
    found:
      /()^([^.;]+?),?\s+all\s+(?:worked\s+)?in(?:to)?\s+(?:the\s+)?(?:same|one)\s+(?:place|st(?:itch)?|sp(?:ace)?|[sdh]?[dt]?[ct]r?)\b/gi,
    instead: (match) => `(${match[2]?.replace(/^\(([^()]*)\)$/, '$1')}) in same st`,
  },
  {
    // `Ch 3, then work 4 dc in same sp. The ch 3 counts as a dc.`: what is said of the chain stands behind it.
    found:
      /()^(ch(?:ain)?\s*\d+|\d+\s*ch)\b([^.]*)\.\s+(?:the|this)\s+(?:beg(?:inning)?\s+|first\s+)?(?:\d+\s*)?ch(?:ain)?(?:[- ]?\d+)?\s+(counts?\s+as\s+[^.()]+|(?:does\s+not|is\s+not|doesn.t)\s+count[^.()]*)\.?$/gi,
    instead: (match) => `${match[2]} (${match[4]})${match[3]}`,
  },
  {
    // `Ch 2, then work a puff st`, `Ch 3 (counts as dc) and make 4 more dc`.
    found:
      /(^(?:ch(?:ain)?\s*\d+|\d+\s*ch)(?:\s*\([^()]*\))?),?\s+(?:(?:and\s+then|and|then)\s+(?:work\s+|make\s+)?|(?:work|make)\s+)(?:an?\s+)?(?:(\d+)\s+more\s+)?/gi,
    instead: (match) => (match[2] === undefined ? ', ' : `, ${match[2]} `),
  },
  // `sc 2 sts together`.
  {
    found: /(?<![a-z\d])()([a-z]+)\s+(?:the\s+)?(?:next\s+)?(\d)\s+st(?:s|itches)\s+tog(?:ether)?\b/gi,
    instead: (match) => `${match[2]}${match[3]}tog`,
  },
  // `5 dctog`, `2 dc together`.
  {
    found: /(?<![a-z\d])()(\d)\s+([a-z]+)\s?tog(?:ether)?\b/gi,
    instead: (match) => `${match[3]}${match[2]}tog`,
  },
];

export function respelled(words: MappedText): MappedText {
  let text = words;
  for (const form of FORMS) text = replaced(text, form);
  return text;
}

function replaced(words: MappedText, { found, instead }: Form): MappedText {
  const pieces: MappedText[] = [];
  let from = 0;
  for (const match of words.text.matchAll(found)) {
    const at = match.index + (match[1]?.length ?? 0);
    pieces.push(sliceText(words, from, at), insertedText(instead(match), fileOffset(words, at)));
    from = match.index + match[0].length;
  }
  return from === 0 ? words : joinTexts([...pieces, sliceText(words, from)], '');
}
