/** A code, a place and the facts in, a fault in a maker's words out. Every code the project knows is merged here. */

import type { Span } from '../source/span.ts';
import { alongFaults } from './catalogue/along.ts';
import { bookletFaults } from './catalogue/booklet.ts';
import { countFaults } from './catalogue/counts.ts';
import { fileFaults } from './catalogue/file.ts';
import { filmFaults } from './catalogue/film.ts';
import { notationFaults } from './catalogue/notation.ts';
import { photographFaults } from './catalogue/photographs.ts';
import { proofFaults } from './catalogue/proof.ts';
import { publicationFaults } from './catalogue/publication.ts';
import { rowFaults } from './catalogue/rows.ts';
import { workFaults } from './catalogue/work.ts';
import { yamlFaults } from './catalogue/yaml.ts';
import type { Diagnostic, PlaceLabel, Wording } from './diagnostic.ts';

const faults = {
  ...yamlFaults,
  ...fileFaults,
  ...notationFaults,
  ...countFaults,
  ...workFaults,
  ...rowFaults,
  ...proofFaults,
  ...publicationFaults,
  ...filmFaults,
  ...photographFaults,
  ...bookletFaults,
  ...alongFaults,
};

/** Every code, `area/what`. */
export type Code = keyof typeof faults;

/** What must be known to word each code; `{}` for one that always reads the same. */
type FactsByCode = {
  readonly [C in Code]: Parameters<(typeof faults)[C]> extends readonly [infer Facts]
    ? Facts
    : Record<string, never>;
};

/** The facts one code takes. */
export type Facts<C extends Code> = FactsByCode[C];

type Catalogue = { readonly [C in Code]: (facts: FactsByCode[C]) => Wording };

const catalogue: Catalogue = faults;

export interface Where {
  readonly file: string;
  readonly span: Span;
  /** Other places that belong to the fault, the most telling first. */
  readonly labels?: readonly PlaceLabel[];
  /** Names of the sizes it touches; none when it holds for the whole pattern. */
  readonly sizes?: readonly string[];
}

export function diagnose<C extends Code>(code: C, where: Where, facts: Facts<C>): Diagnostic {
  const wording = catalogue[code](facts);
  return {
    code,
    ...wording,
    file: where.file,
    span: where.span,
    labels: where.labels ?? [],
    sizes: where.sizes ?? [],
  };
}

/** Every code there is, in the order of the catalogue. */
export function allCodes(): readonly Code[] {
  return Object.keys(catalogue).filter(isCode);
}

/** Whether a word is a code of the catalogue. */
export function isCode(word: string): word is Code {
  return Object.hasOwn(catalogue, word);
}
