/** Yarns, hook, list of abbreviations and multiple told in sentences, several to a line. */

import { expect, test } from 'vitest';
import { transcribe } from '../../src/transcribe/transcribe.ts';
import { workedText } from './worked-text.ts';

const square = (materials: string, yarn = 'D') =>
  `Plover Square\nUK terms\n\nMaterials: ${materials}\n\nSquare\nWith A, make 4 ch and join with ss into a ring.\n1st round: 3 ch, 11 tr into ring, ss to top of 3 ch. Fasten off A. (12 tr)\n2nd round: Join ${yarn} to any tr, 1 ch, 1 dc into each tr, ss to first dc. Fasten off ${yarn}. (12 dc)\n`;
const SEVERAL =
  'Of double knitting, 200 g in main colour (M), and 45 g in each of four contrasts (A, B, C and D). 4 mm hook.';

test('several yarns in one bracket are yarns each, and no letter of a hook', () => {
  const { yarns, hook } = transcribe({ file: 'square.txt', text: square(SEVERAL) });
  expect(yarns.map(({ letter }) => letter)).toEqual(['M', 'A', 'B', 'C', 'D']);
  expect(hook?.value).toBe('4 mm');
  const { codes } = workedText(square(SEVERAL));
  expect(codes).not.toContain('yarn/unlisted');
  expect(codes).not.toContain('hook/letter');
  expect(workedText(square(SEVERAL, 'E')).codes).toContain('yarn/unlisted');
});

test('a letter said of the hook itself is still held against its size', () => {
  const wrong = SEVERAL.replace('4 mm hook', 'Hook size B (4 mm)');
  expect(workedText(square(wrong)).codes).toContain('hook/letter');
});

const cloth = (front: string) =>
  `Reed Cloth\n\n${front}\n\nCh 20.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (19 sc)\nRow 2: Ch 1, sc in first sc, *sk next 2 sc, shell in next sc, sk next 2 sc, sc in next sc; rep from * across, turn. (3 shells, 4 sc)\n`;

test('a list of abbreviations led by its terms may stand among the stitches', () => {
  const guide = (list: string) => cloth(`Stitch guide\nShell: 5 dc in same st.\n${list}`);
  const list = 'US terms are used: ch, chain; dc, double crochet; sc, single crochet; sk, skip; rep, repeat.';
  const { specials, terms } = transcribe({ file: 'cloth.txt', text: guide(list) });
  expect(specials.map(({ name }) => name)).toEqual(['shell']);
  expect([terms.value, terms.told]).toEqual(['US', 'stated']);
  expect(workedText(guide(list)).codes).toEqual([]);
  expect(workedText(guide(list.replace(' sk, skip;', ''))).codes).toContain('text/abbreviation-unlisted');
});

test('a multiple told behind a colon is held against the rows', () => {
  const told = (multiple: string) =>
    workedText(cloth(`Shell: 5 dc in same st\n\nPattern multiple: ${multiple}`)).codes;
  expect(told('6 sts + 1 (add 1 for foundation ch).')).not.toContain('multiple/note');
  expect(told('7 sts + 1 (add 1 for foundation ch).')).toContain('multiple/note');
});

test('the letter of a yarn in a list of abbreviations is no other word', () => {
  const list = (entry: string) =>
    square(SEVERAL).replace(
      'Square\nWith',
      `Abbreviations: ch, chain; dc, double crochet; tr, treble; ss, slip stitch; ${entry}\n\nSquare\nWith`,
    );
  expect(workedText(list('M, main. British terms.')).codes).not.toContain('text/abbreviation');
  expect(workedText(list('rnd, ridge.')).codes).toContain('text/abbreviation');
});
