/** What stands after the instructions in, its sections out: finishing, cautions, changes, licence and version, address. */

import { cautionsFor } from '../../pattern/cautions.ts';
import { type BookletInput, termsOf } from '../booklet-input.ts';
import type { Run } from '../break-lines.ts';
import type { HouseWords } from '../house-words.ts';
import { longDate } from '../long-date.ts';
import { keepNumbersTogether } from '../no-break.ts';
import { paragraphs, plain, sideSection } from '../section.ts';
import type { Setting } from '../set-text.ts';
import { keepTogether, type Strip } from '../strip.ts';
import { onTheWeb } from './on-the-web.ts';

export function closing(input: BookletInput, house: HouseWords, setting: Setting): Strip[] {
  const { pattern } = input;
  const cautions = cautionsFor(
    pattern.uses,
    pattern.yarns.map(({ fibre }) => fibre),
  );
  const steps = pattern.finishing.map((text) => plain(keepNumbersTogether(text)));
  return [
    ...sideSection(house.finishing, paragraphs(steps, setting), setting),
    ...sideSection(house.cautions, keepTogether(paragraphs(cautions.map(plain), setting)), setting),
    ...sideSection(house.changes, paragraphs(changes(input), setting), setting),
    ...sideSection(house.licence, keepTogether(paragraphs(colophon(input), setting)), setting),
    ...onTheWeb(input.address, setting),
  ];
}

/** The newest first, each with its day. */
function changes(input: BookletInput): Run[][] {
  const terms = termsOf(input.words);
  return input.pattern.changes.map(({ date, version, what }) => [
    {
      text: `${longDate(date, terms)}${version === null ? '' : ` (version ${version})`}: `,
      face: 'text-bold',
    },
    ...plain(keepNumbersTogether(what)),
  ]);
}

function colophon(input: BookletInput): Run[][] {
  const { pattern } = input;
  const terms = termsOf(input.words);
  const design = pattern.designer ? `Design: ${pattern.designer}.` : null;
  const version = [
    pattern.version ? `Version ${pattern.version}` : null,
    pattern.date ? longDate(pattern.date, terms) : null,
  ]
    .filter((word) => word !== null)
    .join(', ');
  const who = [design, version ? `${version}.` : null].filter((word) => word !== null).join(' ');
  return [pattern.licence, photographers(input), who]
    .filter((text) => text !== null && text !== '')
    .map((text) => plain(text ?? ''));
}

/** Of those that are printed. */
function photographers({ photographers: names = [] }: BookletInput): string | null {
  return names.length === 0 ? null : `Photographs: ${names.join(', ')}.`;
}
