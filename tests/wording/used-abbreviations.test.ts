/** The list of abbreviations holds what the printed words use, and nothing that only looks like it. */

import { describe, expect, test } from 'vitest';
import { ownWords } from '../../src/wording/own-words.ts';
import { usedAbbreviations } from '../../src/wording/used-abbreviations.ts';
import { voiceOf } from '../../src/wording/voice.ts';
import type { WordedSpecial } from '../../src/wording/words.ts';

/** What is listed beside such words. */
function listed(words: string, terms: 'US' | 'UK' = 'US'): Record<string, string> {
  const special: WordedSpecial = { name: 'Special', called: 'special', how: words };
  const voice = voiceOf({ terms, form: 'abbreviated' }, 'all', [], terms);
  return Object.fromEntries(
    usedAbbreviations([], [special], voice).map(({ abbr, meaning }) => [abbr, meaning]),
  );
}

describe('abbreviations beside the words that use them', () => {
  test('post stitches are listed by themselves, and not the stitch in their name', () => {
    expect(listed('FPdc, 2 BPtr')).toEqual({
      FPdc: 'front post double crochet',
      BPtr: 'back post treble crochet',
    });
    expect(listed('RtrF', 'UK')).toEqual({ RtrF: 'raised treble crochet front' });
  });

  test('a popcorn is listed with its number, also for more than one', () => {
    expect(listed('5-dc popcorn')).toEqual({ '5-dc popcorn': '5 double crochet popcorn' });
    expect(listed('two 3-hdc puffs')).toEqual({ '3-hdc puff': '3 half double crochet puff stitch' });
  });

  test('a larger number is not taken for the one it ends in', () => {
    expect(listed('13-dc cl')).not.toHaveProperty('3-dc cl');
  });

  test('the longest is meant: a loop stitch is no loop and no stitch, an invisible decrease no decrease', () => {
    expect(listed('lp st, inv dec, rev sc, stdg dc')).toEqual({
      'inv dec': 'invisible decrease',
      'lp st': 'loop stitch',
      'rev sc': 'reverse single crochet',
      'stdg dc': 'standing double crochet',
    });
  });

  test('a word that only says what it is needs no entry, and is not spelt out twice', () => {
    expect(listed('2 bullions')).toEqual({});
    const full = voiceOf({ terms: 'US', form: 'full' }, 'all', [], 'US');
    expect(ownWords('Work a bullion stitch, then FPdc', full)).toBe(
      'Work a bullion stitch, then front post double crochet',
    );
  });
});
