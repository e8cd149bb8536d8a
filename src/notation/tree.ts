/**
 * The syntax tree of written instructions: what was said, before any size is worked. Every node keeps the span of its
 * words in the pattern file. Stitches are ids of the stitch table, so a tree says the same in US and UK terms.
 */

import type { Span } from '../source/span.ts';
import type { Counts } from './chain-counts.ts';
import type { BorderSide, Edge } from './edge.ts';
import type { FastenOffStep, LeaveStep, TurnStep } from './end-steps.ts';
import type { MoreGroups, MoreSpecials, MoreStitches } from './more.ts';
import type { Multiple, Num } from './num.ts';
import type { RowsUntil } from './rows-until.ts';
import type { SquareStep } from './square.ts';
import type { OfRow, What } from './what.ts';

export type { What } from './what.ts';

/** A stitch of the table, or one the pattern defines under `special`. */
export type StitchName =
  | { readonly kind: 'stitch'; readonly id: string; readonly span: Span }
  | { readonly kind: 'special'; readonly name: string; readonly span: Span };

/** Which place, and how many. */
export type Place =
  /** `in next st`, `in next 3 sts`, `in each of next 3 sts`, `over next 2 sts`. */
  | {
      readonly kind: 'next';
      readonly n: Num | null;
      readonly what: What;
      readonly each: boolean;
      /** `in ch-2 sp` without "next": the one the yarn stands in, if it was moved into one. */
      readonly here?: true;
      /** `next 6 unworked sts`, `the 6 sts left`: which an earlier row may have left. */
      readonly left?: true;
      /** `next sc of Rnd 1`: along that round, behind what was worked since. */
      readonly ofRow?: OfRow;
      readonly span: Span;
    }
  /** `in each st across`, `in each ch to last 2 ch`. */
  | {
      readonly kind: 'each';
      readonly what: What;
      readonly stop: Stop;
      /** `in every other st`, `in every third st`: so many there are to each that is worked into. */
      readonly every?: number;
      readonly span: Span;
    }
  /** `in same st`; `asJoin` for `in same st as joining`. */
  | { readonly kind: 'same'; readonly what: What; readonly asJoin: boolean; readonly span: Span }
  /** `in lp just made`: the space that the round before ended with; `around dc just made` names what closed it. */
  | { readonly kind: 'just-made'; readonly what: What; readonly closedBy?: string; readonly span: Span }
  | {
      readonly kind: 'first';
      readonly n: Num | null;
      readonly what: What;
      /** `of Row 40`: the row that it is said to be of. */
      readonly ofRow?: OfRow;
      readonly span: Span;
    }
  | { readonly kind: 'last'; readonly n: Num | null; readonly what: What; readonly span: Span }
  /** `in any ch-2 sp`, where yarn is joined anew. */
  | { readonly kind: 'any'; readonly what: What; readonly span: Span }
  /** `in 2nd ch from hook`. */
  | { readonly kind: 'from-hook'; readonly nth: Num; readonly span: Span }
  /** `in top of beg ch-3` (`nth` null), `in 3rd ch of beg ch-5`, `in top of tch`. `chains` null when no length is given. */
  | {
      readonly kind: 'of-chain';
      readonly nth: number | null;
      readonly chains: number | null;
      readonly where: 'beginning' | 'turning';
      /** `in turning ch-2 sp`: the space it leaves, not the chain. */
      readonly space?: true;
      readonly span: Span;
    }
  /** `in center dc of next shell`, `in 3rd dc of next shell`. */
  | {
      readonly kind: 'of-special';
      readonly nth: number | 'center';
      readonly what: What;
      readonly special: string;
      /** `of last shell`: it may only name what comes next. */
      readonly last?: true;
      readonly span: Span;
    }
  /** `in 3rd of next 5 tr`, `in center tr of next 5 tr`: five that stand in one place, passed whole. */
  | {
      readonly kind: 'of-group';
      readonly nth: number | 'center';
      /** `of any 5-dc group`, where yarn is joined anew. */
      readonly any?: true;
      /** `next petal` of a text that describes none: however many stand in one place, `n` being 0. */
      readonly shape?: string;
      readonly n: number;
      readonly what: What;
      readonly span: Span;
    }
  /** `in 3rd ch of next ch-5 sp`: one chain of a space, which is passed whole. */
  | {
      readonly kind: 'of-space';
      readonly nth: number | 'center';
      readonly chains: number | null;
      readonly span: Span;
    }
  /** `to the top of the last tr of the row before last`: the side of a row so many below, where a fan is fastened down. */
  | { readonly kind: 'row-edge'; readonly back: number; readonly said: string; readonly span: Span }
  /** `in last dc of the fan, which was left unworked`: two rows below, right behind what the row has come to. */
  | { readonly kind: 'left-over'; readonly what: What; readonly said: string; readonly span: Span }
  /** `in top of last sc made`, where a picot is closed; `stem` for `in middle of post of tr just made`. */
  | { readonly kind: 'last-made'; readonly what: What; readonly stem?: true; readonly span: Span }
  | { readonly kind: 'ring'; readonly magic: boolean; readonly span: Span }
  /** `in skipped st` not yet gone back to; `nth` for `in 2nd skipped st`, `n` for `around 2 skipped sts`. */
  | {
      readonly kind: 'passed';
      readonly what: What;
      readonly nth?: number;
      readonly n?: Num;
      /** How many are said to have been skipped: `in first of the 10 skipped sts`. */
      readonly of?: Num;
      /** `of Rnd 11`: the number of the row or round that they are said to stand in. */
      readonly ofRow?: number;
      readonly span: Span;
    }
  /** `in sp before next dc` (`apart` null), `between next 2 sts`, `in sp between next 2 shells` (`apart` 2). */
  | {
      readonly kind: 'gap';
      readonly what: What;
      readonly apart: Num | null;
      /** `between first and 2nd sts`. */
      readonly first?: true;
      /** `between each 2 sts to end`. */
      readonly each?: Stop;
      /** `between this petal and the next`: what stands in one place, which the pattern describes as no stitch. */
      readonly shape?: string;
      /** `between last V-st and tch`. */
      readonly beforeChain?: true;
      readonly span: Span;
    }
  /** `in next st 2 rows below`, `in next 2 skipped sts 2 rows below`. */
  | {
      readonly kind: 'below';
      readonly n: Num | null;
      readonly rows: number;
      readonly pick: 'next' | 'skipped';
      readonly what: What;
      readonly unit: 'row' | 'round';
      /** `around dc 2 rows below, sk next st`: the stitch it stands before is skipped by words of its own. */
      readonly uncovered?: true;
      readonly span: Span;
    };

/** Where a repeat or "each" ends. */
export type Stop =
  | { readonly kind: 'end'; readonly word: 'across' | 'around' | 'to end'; readonly span: Span }
  /** `6 times` (`more` false), `5 more times` (`more` true). */
  | { readonly kind: 'times'; readonly n: Num; readonly more: boolean; readonly span: Span }
  /** `to last 6 sts`. */
  | { readonly kind: 'leaving'; readonly n: Num; readonly what: What; readonly span: Span }
  /** `to next corner sp`: up to, not into it; `less` stitches short of it for `to 1 st before marked st`. */
  | {
      readonly kind: 'before';
      readonly what: What;
      readonly less?: Num;
      /** `to center` of a shawl, whose V-sts have spaces of their own. */
      readonly centre?: true;
      readonly span: Span;
    };

/** Which loop of the stitch the hook goes under; `third` is the one behind the top of a half double crochet. */
export type Loop = 'both' | 'front' | 'back' | 'third';

export type Step =
  | WorkStep
  | ChainStep
  | SkipStep
  | GroupStep
  | RepeatStep
  | BracketStep
  | JoinStep
  | TurnStep
  | YarnStep
  | FastenOffStep
  | AlongStep
  | EvenlyStep
  | RepeatRowsStep
  | CornersStep
  | LoopsStep
  | LeaveStep
  | RingStep
  | ShapeStep
  | SquareStep
  | NoteStep;

/** `sc in next 3 sts`, `3 dc in ring`, `shell in next ch`, `sc2tog`, and bare `6 sc`. */
export interface WorkStep {
  readonly kind: 'work';
  readonly stitch: StitchName;
  /** How many in each place; null when no number was written. */
  readonly times: Num | null;
  /** Null for bare `6 sc`: one in each of as many next stitches. */
  readonly place: Place | null;
  readonly loop: Loop;
  /** `working 3 dc in each corner sp`: what goes into those instead, where it meets them. */
  readonly corners?: CornerWork;
  /** `inc 6 sts evenly`, `dec 1 st at each end`: what is gained or lost on the way along "each st". */
  readonly shaping?: Shaping;
  /** `(skipped 3 ch count as dc)` after a first stitch in the nth chain from the hook. */
  readonly skipped: Counts | null;
  /** `3 tr, 2 ch, 3 tr all into next st`, before it is put together with what stands before it. */
  readonly shares?: true;
  readonly span: Span;
}

/** What goes into places of a sort met on the way; `also` where there are two sorts, corners and spaces. */
export interface CornerWork {
  readonly body: readonly Step[];
  readonly what: What;
  readonly also?: CornerWork;
}

export interface Shaping {
  readonly does: 'inc' | 'dec';
  /** In all for "evenly", at each end or at the one named otherwise. */
  readonly n: Num;
  readonly where: 'evenly' | 'each end' | 'start' | 'end';
}

export interface ChainStep {
  readonly kind: 'chain';
  readonly n: Num | Multiple;
  readonly counts: Counts | null;
  readonly span: Span;
}

export interface SkipStep {
  readonly kind: 'skip';
  readonly n: Num | null;
  readonly what: What;
  readonly pick: 'next' | 'first' | 'last';
  /** `the last tr of the fan`: what is left of those that stand in one place, the next one and no more. */
  readonly restOf?: string;
  /** `of Row 42`: the row they are said to stand in. */
  readonly ofRow?: Num;
  readonly span: Span;
}

/** `(2 dc, ch 2, 2 dc) in corner ch-2 sp`: all of it into one place. */
export interface GroupStep {
  readonly kind: 'group';
  readonly body: readonly Step[];
  readonly place: Place;
  /** `(skipped 4 ch count as dc)` behind a place in the nth chain from the hook. */
  readonly skipped?: Counts;
  readonly span: Span;
}

/** `*sc in next st, ch 1, sk next st; rep from * to last st`. */
export interface RepeatStep {
  readonly kind: 'repeat';
  readonly body: readonly Step[];
  /** Steps of the body that the last pass works: where `**` stands; null when the last pass is whole. */
  readonly lastPassEnds: number | null;
  /** `ending last rep with …`: what follows stands for the last step of the last pass; `ending with …` may or may not. */
  readonly endsWith?: 'last rep' | 'row';
  readonly stop: Stop;
  readonly span: Span;
}

/** `[3 dc in next sp, ch 1] 3 times`, `(sc in next 4 sts, sc2tog) around`. */
export interface BracketStep {
  readonly kind: 'bracket';
  readonly body: readonly Step[];
  readonly stop: Stop;
  readonly span: Span;
}

/** `join with sl st in first sc`; `ring` for `… to form ring`. */
export interface JoinStep {
  readonly kind: 'join';
  readonly stitch: StitchName;
  readonly place: Place | null;
  readonly ring: boolean;
  readonly span: Span;
}

export interface YarnStep {
  readonly kind: 'yarn';
  /** `with B`; `change to B in last yo`; `join B [with sl st in any sp]`; `drop A`; `carry A`; `pick up A`. */
  readonly action: 'with' | 'change' | 'join' | 'drop' | 'carry' | 'pick up';
  /** Null for `join new color`, which is left to the maker, and for `join yarn` where there is one `only`. */
  readonly yarn: string | null;
  readonly only?: true;
  /** When a change is made, where that is no row's last yarn over: `at end of Row 4`; of a join, `at the seam`. */
  readonly when?: string;
  readonly stitch: StitchName | null;
  readonly place: Place | null;
  readonly span: Span;
}

/** `working along row ends`, `working along opposite side of foundation ch`: the edge the next steps go along. */
export interface AlongStep {
  readonly kind: 'along';
  readonly edge: Edge;
  /** `in free loops of ch`: of any chain, not the foundation's alone. */
  readonly loops?: true;
  /** The row that is named: `unused loops of Row 3`, `across Row 29`. */
  readonly row?: number;
  /** `in next 12 foundation ch`, which may be those that row 1 goes into. */
  readonly named?: true;
  /** Of an opening where it begins, and how many of those are said to be there. */
  readonly from?: { readonly which: 'chains' | 'skipped'; readonly n: Num | null };
  readonly span: Span;
}

/** `work 21 sc evenly along row ends`: the spread is worked out and printed. */
export interface EvenlyStep {
  readonly kind: 'evenly';
  readonly stitch: StitchName;
  readonly n: Num;
  readonly edge: Edge;
  /** Along a side that has more than row ends: what each of the `n` go into, and the words for it. */
  readonly side?: BorderSide;
  readonly span: Span;
}

/** `rep Row 2`, `rep Rows 2 and 3 to height, ending with a Row 3` */
export interface RepeatRowsStep {
  readonly kind: 'repeat rows';
  readonly unit: 'row' | 'round';
  readonly rows: readonly Num[];
  /** `rep last 2 rows`: that many before this one, `rows` being empty. */
  readonly last?: number;
  /** `work even`: one stitch of the last row's kind, or of the one named, in each, whatever that row did. */
  readonly even?: true;
  readonly inStitch?: StitchName;
  /** `dec 1 st at neck edge on each of next 8 rows`: what each of those rows gains or loses at one of its ends. */
  readonly atEdge?: { readonly does: 'inc' | 'dec'; readonly n: Num; readonly edge: string };
  /** `working 1 more dc after every increase`: how each differs from the one before, as that did from its own. */
  readonly more?: MoreStitches | MoreGroups | MoreSpecials;
  /** `work the other side in the same way`: the rows of one side, once more. */
  readonly otherSide?: true;
  /** `to height` takes as many as the size needs; `label` as many as the label names; `times` as said. */
  readonly until: RowsUntil;
  readonly span: Span;
}

/** `working 3 dc in each corner sp`, before it is given to the stitch it belongs to. */
export interface CornersStep {
  readonly kind: 'corners';
  readonly body: readonly Step[];
  readonly what: What;
  readonly span: Span;
}

/** `working in back loops only`: every stitch after it in the row goes under that loop. */
export interface LoopsStep {
  readonly kind: 'loops';
  readonly loop: Loop;
  readonly span: Span;
}

/** `make a magic ring`, before the round that goes into it. */
export interface RingStep {
  readonly kind: 'ring';
  readonly span: Span;
}

/** `inc 6 sts evenly`, before it is given to the stitch it belongs to. */
export interface ShapeStep extends Shaping {
  readonly kind: 'shape';
  readonly span: Span;
}

/** Words to the maker that work no stitch: `place marker in first st`; `12 more rounds` has `rows`. Kept as written. */
export interface NoteStep {
  readonly kind: 'note';
  readonly text: string;
  readonly rows?: Num;
  /** `each rnd adds 8 sts`: how many more than the round before it is said to have; `addsOf` the special stitch counted. */
  readonly adds?: Num;
  readonly addsOf?: string;
  /** `working last dc in top of tch`, `the last sl st goes in the st where you joined`: what the last stitch went into. */
  readonly endsOn?: 'turning chain' | { readonly join: string };
  /** `work along the last side in the same way`, before the side of the repeat before it stands for it. */
  readonly sideAgain?: true | 'all';
  /** Two edges are closed by it: the chain before it only lifts the hook to them. */
  readonly seam?: true;
  /** `working behind dc just made`: which way the hook goes past it; nothing for in front. */
  readonly hand?: 'behind' | 'around';
  /** `sc evenly around`: the number is the maker's, and the row is not worked. */
  readonly unspread?: true;
  /** `(the 3 ch and tr together count as 1 st)`, before it is given to that chain. */
  readonly chainCounts?: Counts;
  /** `with RS facing`: the side the row is worked from. */
  readonly facing?: 'RS' | 'WS';
  readonly span: Span;
}
