/** A compiled pattern -> the page on which a reader has it made over to her own size, gauge and yarn. */

import { remakeableFrom } from '../compile-own.ts';
import type { CompiledPattern } from '../compiled.ts';
import { leavesOpen } from '../own/cannot-be.ts';
import { patternMeasure } from '../own/own-choice.ts';
import { shipPattern } from '../own/shipped-pattern.ts';
import { OWN_SLUG } from '../pattern/own-size.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { printG, printM, printMm } from '../units.ts';
import { linkTo, type PagePlace, pagePlace } from './addresses.ts';
import { DIALECT_KEYS, DIALECT_NAMES, ownDialect } from './dialect-names.ts';
import { colophonLines } from './facts.ts';
import type { OwnForm, OwnPage } from './page-data.ts';
import { scriptFile } from './page-scripts.ts';
import { sizeTable } from './size-table.ts';
import { pageCautions } from './supplies.ts';

/** Null for a pattern none of whose sizes could be worked. */
export function ownPage(compiled: CompiledPattern, pattern: Pattern): OwnPage | null {
  const place = pagePlace([compiled.slug, OWN_SLUG]);
  const form = ownForm(compiled, pattern, place);
  if (form === null) return null;
  return {
    ...place,
    title: `${pattern.title}, to your own measure – crochet pattern`,
    description: `Crochet pattern ${pattern.title} made over to your own size, gauge and yarn, with every count worked out.`,
    trail: [
      { text: 'Patterns', href: linkTo(place, []), current: false },
      { text: pattern.title, href: linkTo(place, [compiled.slug]), current: false },
    ],
    canonical: null,
    module: `${place.root}${scriptFile('own-page')}`,
    keepAs: `${compiled.slug}/${OWN_SLUG}`,
    heading: pattern.title,
    form,
    sizeTable: sizeTable(compiled, pattern, place),
    shipped: inScript(JSON.stringify(shipPattern({ ...compiled, pattern, multiples: compiled.multiples }))),
    ...pageCautions(pattern),
    colophon: colophonLines(pattern),
  };
}

/** The form stands on the pattern's page as well, and leads from there to the page that works it out. */
export function ownForm(compiled: CompiledPattern, pattern: Pattern, from: PagePlace): OwnForm | null {
  const remakeable = remakeableFrom(compiled, 0);
  if (remakeable === null || compiled.sizes.length === 0) return null;
  const { gauge, hookMm } = pattern;
  const [yarn] = pattern.yarns;
  const own = ownDialect(pattern);
  return {
    action: linkTo(from, [compiled.slug, OWN_SLUG]),
    sizes: compiled.sizes.map(({ size, slug }) => ({ value: slug, text: size.name })),
    ...leavesOpen(remakeable, 0),
    stitches: gauge === null ? '' : String(gauge.stitches),
    rows: gauge?.rows == null ? '' : String(gauge.rows),
    over: patternMeasure(gauge),
    of: gauge?.of ?? null,
    hook: hookMm === null ? '' : printMm(hookMm),
    ballLength: yarn?.ballLengthM == null ? '' : printM(yarn.ballLengthM),
    ballWeight: yarn?.ballMassG == null ? '' : printG(yarn.ballMassG),
    terms: [own, ...DIALECT_KEYS.filter((key) => key !== own)].map((key) => ({
      value: key,
      text: DIALECT_NAMES[key],
    })),
  };
}

/** Nothing in it may end the element it stands in. */
function inScript(json: string): string {
  return json.replaceAll('<', '\\u003c');
}
