/** An along read from the disk and an instant -> what is published of it, and what has to be told of it. */

import { type BlanketFigures, blanketFigures } from '../along/figures.ts';
import { type BlanketPlan, defaultMake, planBlanket } from '../along/plan-blanket.ts';
import { type ReleasedAlong, releaseAt, weeksOut } from '../along/release.ts';
import type { AlongSquare } from '../along/work-along.ts';
import type { WorkedBorder } from '../along/work-border.ts';
import { inFileOrder } from '../diagnostics/order.ts';
import type { SeenPhotograph } from '../pattern/photograph.ts';
import type { ToldFile } from './compile-patterns.ts';
import type { AlongOnDisk } from './read-alongs.ts';

export interface AlongSite {
  readonly released: ReleasedAlong;
  /** Where its file and its own photographs lie. */
  readonly folder: string;
  readonly photographs: readonly SeenPhotograph[];
  readonly figures: BlanketFigures;
  /** The blanket of whoever takes the first choice of every week, as far as it is out. */
  readonly plan: BlanketPlan;
  readonly border: WorkedBorder;
  /** Stands on every page and sheet of a preview; null on what is published. */
  readonly mark: string | null;
}

export const PREVIEW_MARK = 'PREVIEW – not published yet';

/** When it is asked what is due: an instant, or the clock of the along itself for a time without an offset. */
export type AsOf = (zone: string) => number;

export interface AlongsAt {
  readonly sites: readonly AlongSite[];
  /** Faults that keep everything from being published. */
  readonly faults: readonly ToldFile[];
  /** Faults of weeks that are due and are therefore late. */
  readonly late: readonly ToldFile[];
  /** What is only worth telling: warnings, and faults of weeks to come. */
  readonly told: readonly ToldFile[];
  /** Real places of pattern files that may not be published: weeks to come call for them. */
  readonly withheld: ReadonlySet<string>;
}

export function alongsAt(alongs: readonly AlongOnDisk[], asOf: AsOf | null): AlongsAt {
  const found = alongs.map((along) => oneAt(along, asOf));
  return {
    sites: found.flatMap(({ site }) => site ?? []),
    faults: found.flatMap(({ faults }) => faults),
    late: found.flatMap(({ late }) => late),
    told: found.flatMap(({ told }) => told),
    withheld: new Set(found.flatMap(({ withheld }) => withheld)),
  };
}

interface OneAt {
  readonly site: AlongSite | null;
  readonly faults: readonly ToldFile[];
  readonly late: readonly ToldFile[];
  readonly told: readonly ToldFile[];
  readonly withheld: readonly string[];
}

function oneAt(
  { folder, file, text, worked, faults, photographs, patternFiles }: AlongOnDisk,
  asOf: AsOf | null,
): OneAt {
  const telling = (diagnostics: AlongOnDisk['faults']): ToldFile[] =>
    diagnostics.length === 0 ? [] : [{ file, text, compiled: { diagnostics: inFileOrder(diagnostics) } }];
  const broken = worked === null || faults.some(({ severity }) => severity === 'error');
  if (broken) {
    // What cannot be read may call for any pattern, so all that it names is kept back.
    return { site: null, faults: telling(faults), late: [], told: [], withheld: [...patternFiles.values()] };
  }
  const { released, late, told } = releaseAt(worked, asOf === null ? null : asOf(worked.along.zone));
  const out = new Set(
    weeksOut(released).flatMap(({ squares }) => squares.map(({ choice }) => choice.pattern)),
  );
  const figures = blanketFigures(released, worked.border.figures);
  return {
    site: {
      released,
      folder,
      photographs,
      figures,
      plan: planBlanket(figures, { ...figures, make: defaultMake(figures) }),
      border: worked.border,
      mark: asOf === null ? PREVIEW_MARK : null,
    },
    faults: [],
    late: telling(late),
    told: telling([...faults, ...told]),
    withheld: [...patternFiles].flatMap(([name, place]) => (out.has(name) ? [] : [place])),
  };
}

/** Every square that is out, once, however many weeks call for it. */
export function squaresOut({ released }: AlongSite): readonly AlongSquare[] {
  const once = new Map<string, AlongSquare>();
  for (const { squares } of weeksOut(released))
    for (const square of squares) once.set(`${square.compiled.slug} ${square.size.slug}`, square);
  return [...once.values()];
}
