/** A finished along as if it were one pattern: what its book says of the whole blanket before it comes to the squares. */

import type { BookletInput } from '../booklet/booklet-input.ts';
import { BLANK_PATTERN } from '../pattern/blank-pattern.ts';
import type { DialectKey, WordedLine } from '../wording/words.ts';
import { blanketScene } from './blanket-scene.ts';
import type { BlanketFigures } from './figures.ts';
import { joiningWords } from './joining-words.ts';
import type { BlanketPlan } from './plan-blanket.ts';
import { type ReleasedAlong, weeksOut } from './release.ts';
import { borderWords, type WorkedBorder } from './work-border.ts';

/** Null where the border could not be worked. */
export function blanketInput(
  released: ReleasedAlong,
  {
    figures,
    plan,
    border,
  }: { readonly figures: BlanketFigures; readonly plan: BlanketPlan; readonly border: WorkedBorder },
  dialect: DialectKey,
): BookletInput | null {
  const { along } = released;
  const words = border.size?.words[dialect];
  if (words === undefined) return null;
  const joining = joiningWords(along, plan, along.terms);
  const lines: WordedLine[] = [
    ...joining.before.map(sentence),
    ...joining.seams.map(({ label, text, count }) => ({ label, text: sentenceCase(text), count, rows: [] })),
    ...joining.after.map(sentence),
  ];
  return {
    pattern: {
      ...BLANK_PATTERN,
      slug: along.slug,
      title: along.title,
      about: along.about,
      designer: along.organiser,
      terms: along.terms,
      gauge: along.gauge,
      hookMm: along.hookMm,
      yarns: along.yarns.map((yarn) => ({ ...yarn, balls: null, used: [] })),
      notions: ['tapestry needle'],
      notes: squareNotes(released),
    },
    sizes: [
      {
        name: 'blanket',
        widthMm: plan.widthMm,
        heightMm: plan.heightMm,
        aroundMm: null,
        yarn: plan.yarn.map(({ letter, allM, balls }) => ({
          letter,
          lengthM: allM,
          basis: 'figures' as const,
          scaledFrom: null,
          rangeM: null,
          balls,
          massG: null,
        })),
        schematics: [],
      },
    ],
    words: {
      ...words,
      parts: [
        { name: 'Joining', make: null, lines },
        { name: 'Border', make: null, lines: borderWords(border, dialect) },
      ],
    },
    charts: [],
    leftHanded: false,
    cover: blanketScene(released, figures),
  };
}

/** What is made of each week, and that the yarn is for the first choice of each. */
function squareNotes(released: ReleasedAlong): string[] {
  const weeks = weeksOut(released).map(({ number, week, squares }) => {
    const names = squares.map(({ pattern, choice }) => `${choice.make} ${pattern.title}`);
    return `Week ${number}, ${week.title}: ${names.join(' or ')}.`;
  });
  return [...weeks, 'The yarn is that of the first choice of every week, with joining and border.'];
}

function sentence(text: string): WordedLine {
  return { label: null, text, count: null, rows: [] };
}

function sentenceCase(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
