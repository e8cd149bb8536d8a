/** A pattern in, the facts at the foot of its cover out, side by side: level, designer, version. */

import { type BookletInput, termsOf } from '../booklet-input.ts';
import type { Run } from '../break-lines.ts';
import { ruleShape } from '../draw-lines.ts';
import { SKILL_WORDS } from '../house-words.ts';
import { longDate } from '../long-date.ts';
import { ACCENT, QUIET, RULE } from '../page-grid.ts';
import type { Place, Setting } from '../set-text.ts';
import { moved } from '../strip.ts';
import { type Block, cutStack } from './cut-stack.ts';

/** Lines of a fact before it is cut short. */
const FACT_LINES = 5;
const FACT_GAP_MM = 6;

export function coverFacts(input: BookletInput, setting: Setting): Block {
  const entries = facts(input);
  const { bodyWidthMm } = setting.grid;
  if (entries.length === 0) return { shapes: [], heightMm: 0 };
  const shapes = [ruleShape(0, 0, bodyWidthMm, RULE.thinMm, ACCENT)];
  if (setting.grid.oneColumn) {
    let heightMm = 0;
    const stacked = entries.map((fact) => {
      const block = factBlock(fact, { xMm: 0, widthMm: bodyWidthMm }, setting);
      const shape = moved(block.shapes, 0, heightMm);
      heightMm += block.heightMm;
      return shape;
    });
    return { shapes: [...shapes, ...stacked], heightMm };
  }
  const shares = entries.reduce((sum, { share }) => sum + share, 0);
  const room = bodyWidthMm - FACT_GAP_MM * (entries.length - 1);
  let xMm = 0;
  const columns = entries.map((fact) => {
    const place = { xMm, widthMm: Math.min((room * fact.share) / shares, bodyWidthMm / 2) };
    xMm += place.widthMm + FACT_GAP_MM;
    return factBlock(fact, place, setting);
  });
  return {
    shapes: [...shapes, ...columns.flatMap((column) => column.shapes)],
    heightMm: Math.max(...columns.map(({ heightMm }) => heightMm)),
  };
}

function factBlock(fact: Fact, place: Place, setting: Setting): Block {
  return cutStack(
    [
      {
        runs: [{ text: fact.label, face: 'text', ink: QUIET }],
        type: setting.grid.type.small,
        place,
        gapMm: 3.5,
        most: 1,
      },
      { runs: fact.runs, type: setting.grid.type.body, place, gapMm: 0.3, most: FACT_LINES },
    ],
    setting,
  );
}

interface Fact {
  readonly label: string;
  readonly runs: readonly Run[];
  /** Share of the width. */
  readonly share: number;
}

function facts(input: BookletInput): Fact[] {
  const { pattern } = input;
  const terms = termsOf(input.words);
  const skill = pattern.skill ? SKILL_WORDS[pattern.skill] : null;
  const version = [pattern.version, pattern.date ? longDate(pattern.date, terms) : null].filter(
    (word) => word !== null,
  );
  return [
    ...(skill
      ? [
          {
            label: 'Project level (Craft Yarn Council)',
            share: 6,
            runs: [bold(`${skill.name}: `), text(skill.meaning)],
          },
        ]
      : []),
    ...(pattern.designer ? [{ label: 'Design', share: 4, runs: [text(pattern.designer)] }] : []),
    ...(version.length > 0 ? [{ label: 'Version', share: 4, runs: [text(version.join(', '))] }] : []),
  ];
}

function bold(words: string): Run {
  return { text: words, face: 'text-bold' };
}

function text(words: string): Run {
  return { text: words, face: 'text' };
}
