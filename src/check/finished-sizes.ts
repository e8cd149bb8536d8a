/**
 * The width and height stated for a size against those measured from the gauge.
 *
 * They may differ by 5 %, by half a pattern repeat across, by one row up (half of the rows repeated where the pattern
 * goes on "to height"), or by a quarter of an inch, whichever is most: our own choice, for finished sizes are printed
 * to the half centimetre or quarter inch and nothing nearer than half a repeat can be worked. A pattern of several
 * pieces is left alone: what they make when sewn is not measured.
 */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { stitchWidthMm } from '../measure/row-heights.ts';
import { firstMultiple, rowsRepeated } from '../pattern/pattern-repeat.ts';
import { printCm, printIn, printSmallCm, printSmallIn, QUARTER_IN_MM } from '../units.ts';
import { type Publication, placeOf, type WorkedSize } from './publication.ts';

const PART = 0.05;
/** Of a height whose rows were never counted. */
const RECKONED_PART = 0.2;

export function finishedSizes({ pattern, sizes }: Publication): Diagnostic[] {
  if (pattern.gauge === null) return [];
  return sizes.flatMap((worked) => {
    const pieces = worked.fabric.parts.filter(({ onto }) => onto === null).length;
    if (pieces !== 1 || pattern.parts.some(({ make }) => make > 1)) return [];
    const faults = SIDES.flatMap((side) => sideFault(side, worked, pattern));
    return faults.length === 2 && fitsTurned(worked, pattern) ? [] : faults;
  });
}

const SIDES = ['width', 'height'] as const;

/** An oval mat is `55 cm long`, whichever way its chain lies: one worked in rounds has no up. */
function fitsTurned(worked: WorkedSize, pattern: Publication['pattern']): boolean {
  const { measures, fabric } = worked;
  if (!fabric.rows.every(({ side, closing }) => side === null || closing !== 'flat')) return false;
  const turned = { ...measures, widthMm: measures.heightMm, heightMm: measures.widthMm };
  return SIDES.every((side) => sideFault(side, { ...worked, measures: turned }, pattern).length === 0);
}

function sideFault(
  side: 'width' | 'height',
  { index, measures }: WorkedSize,
  pattern: Publication['pattern'],
): Diagnostic[] {
  const key = side === 'width' ? 'widthMm' : 'heightMm';
  const size = pattern.sizes[index];
  const stated = size?.[key] ?? null;
  const made = stated === null ? null : measures[key];
  if (size === undefined || stated === null || made === null || isOfBody(index, pattern)) return [];
  const unit = unitOf(side, index, pattern);
  const within = toleranceOf(side, stated, index, pattern, unit);
  if (Math.abs(made - stated) <= within.mm) return [];
  const where = {
    file: pattern.source.file,
    span: placeOf(pattern, `sizes.${index}.${side}`, `sizes.${index}`),
    sizes: pattern.sizes.length > 1 ? [size.name] : [],
  };
  const facts = { side, stated: unit.size(stated), made: unit.size(made), within: within.words };
  return [diagnose('size/otherwise', where, facts)];
}

/** A pasted size may be of the head it fits or the way round, which is not the width of the piece laid flat. */
function isOfBody(index: number, { places, source }: Publication['pattern']): boolean {
  const span = places.get(`sizes.${index}`);
  const words = span === undefined ? '' : source.text.slice(span.start, span.end);
  return /\bfits?\b|\bcirc|\bround\b|\baround\b|\bchest\b|\bbust\b|\bhead\b|\btall\b/i.test(words);
}

/** How a measure is told: in the unit that the size is written in. */
interface Unit {
  readonly size: (mm: number) => string;
  /** A tolerance is smaller than what sizes are printed to. */
  readonly small: (mm: number) => string;
}

const CM: Unit = { size: printCm, small: printSmallCm };
const IN: Unit = { size: printIn, small: printSmallIn };

function unitOf(side: 'width' | 'height', index: number, { places, source }: Publication['pattern']): Unit {
  const span = places.get(`sizes.${index}.${side}`) ?? places.get(`sizes.${index}`);
  const words = span === undefined ? '' : source.text.slice(span.start, span.end);
  const inches = words.search(/[\d¼½¾]\s*-?\s*(?:in\b|ins\b|inch|["″”])/i);
  const metric = words.search(/[\d½]\s*(?:cm|mm|m)\b/i);
  return inches !== -1 && (metric === -1 || inches < metric) ? IN : CM;
}

interface Tolerance {
  readonly mm: number;
  readonly words: string;
}

function toleranceOf(
  side: 'width' | 'height',
  stated: number,
  sizeIndex: number,
  pattern: Publication['pattern'],
  unit: Unit,
): Tolerance {
  const { gauge } = pattern;
  const choices: Tolerance[] = [
    { mm: QUARTER_IN_MM, words: 'the ¼ in that printing loses' },
    { mm: stated * PART, words: `5 % (${unit.small(stated * PART)})` },
  ];
  if (gauge !== null && side === 'width') {
    const repeatMm = (firstMultiple(pattern)?.of ?? 0) * stitchWidthMm(gauge);
    choices.push({ mm: repeatMm / 2, words: `half a pattern repeat (${unit.small(repeatMm / 2)})` });
  }
  // Reckoned rows tell no measure that a stated height could be held to closely.
  if (gauge !== null && gauge.rows === null && side === 'height')
    choices.push({ mm: stated * RECKONED_PART, words: 'a fifth, as no rows were counted' });
  if (gauge !== null && gauge.rows !== null && side === 'height') {
    const rowMm = gauge.upMm / gauge.rows;
    const rows = Math.max(1, rowsRepeated(pattern, sizeIndex) / 2);
    choices.push({
      mm: rows * rowMm,
      words: `${rows === 1 ? 'one row' : `${rows} rows`} (${unit.small(rows * rowMm)})`,
    });
  }
  return choices.reduce((most, choice) => (choice.mm > most.mm ? choice : most));
}
