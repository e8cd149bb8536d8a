/** A part's lines laid out as the rows of one size: ranges, `Rep Row 2`, `Rows 4 on … to height`. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Label, Line, Unit } from '../notation/line.ts';
import { numberForSize } from '../notation/number-for-size.ts';
import type { NoteStep, RepeatRowsStep, Step } from '../notation/tree.ts';
import { unspreadIn } from '../notation/unspread-in.ts';
import { countOf, isCounted } from './count-of-row.ts';
import { grownLine } from './grown-line.ts';
import { lastRow } from './last-rows.ts';
import { isLeftOpen, onceThrough, repeatedRow, rowOfPass } from './open-end.ts';
import { otherSide } from './other-side.ts';
import { isHeading, rowsUntilCount } from './rows-until-count.ts';
import { noneToChange, withCorners } from './with-corners.ts';
import type { RowPlan } from './work-row.ts';

export interface PlanSetting {
  readonly file: string;
  readonly size: string;
  readonly sizeIndex: number;
  /** Rows or rounds in all, for what goes on to height; null when the size does not say. */
  readonly rows: number | null;
  readonly part: number;
  /** Number of the last row of the piece it goes on from, which its own may count on from. */
  readonly before: number;
}

type Plan = Omit<RowPlan, 'part' | 'partHasFoundation'>;

export interface PlansMade {
  readonly plans: readonly Plan[];
  readonly faults: readonly Diagnostic[];
}

/** The most rows one size may have. */
const MOST_ROWS = 20_000;

/**
 * Lays out the rows in order. A line that could not be read is one row that is not worked, whatever it says of others:
 * what follows stands on it.
 */
export function planRows(lines: readonly Line[], setting: PlanSetting): PlansMade {
  const plans: Plan[] = [];
  const faults: Diagnostic[] = [];
  const byNumber = new Map<number, Line>();
  // Words outside of rows that could not be read may have been rows, whose numbers are not known.
  let unsure = false;
  let anyUnsure = false;
  let last = 0;
  let lastUnit: Unit | null = null;
  // Rows in the order they are worked, for "rep last 2 rows".
  const history: Line[] = [];
  const listed = lines.some(({ label }) => label?.kind === 'numbered' && label.others !== undefined);
  for (const [lineIndex, line] of lines.entries()) {
    if (line.sizes !== undefined && !line.sizes.includes(setting.sizeIndex)) continue;
    const { label } = line;
    const said = line.steps.find((step): step is RepeatRowsStep => step.kind === 'repeat rows');
    const side = said?.otherSide === true ? otherSide(said, history) : null;
    const rep = side ?? said;
    const unit: Unit | null = label === null || label.kind === 'named' ? (rep?.unit ?? null) : label.unit;
    const repAt = said === undefined ? -1 : line.steps.indexOf(said);
    const before = line.steps.slice(0, Math.max(0, repAt));
    const after = line.steps.slice(repAt + 1);
    const goesOn = rowsUntilCount(rep ?? null, line, history, setting.sizeIndex);
    const numbers =
      goesOn === null
        ? rowNumbers(label, rep ?? null, last, setting, line, faults)
        : range(last + 1, last + goesOn);
    if (numbers === null) return { plans, faults };
    // `sc evenly around`: how many there are is not known, so no row is worked.
    const open = line.readable ? unspreadIn(line.steps) : null;
    if (open !== null) faults.push(leftToMaker(open, setting));
    if (!line.readable || open !== null) {
      plans.push(unreadPlan(line, lineIndex, unit, numbers));
      for (const number of numbers.slice(0, MOST_UNREAD)) byNumber.set(number, line);
      history.push(line);
      if (label?.kind === 'numbered' || label?.kind === 'next') {
        last = numbers[numbers.length - 1] ?? last;
        lastUnit = unit;
      } else if (line.prose !== true) {
        unsure = true;
        anyUnsure = true;
      }
      continue;
    }
    if (line.readable && plans.length + numbers.length > MOST_ROWS) {
      const word = label !== null && label.kind !== 'named' ? label.word : unit === 'round' ? 'Rnd' : 'Row';
      const facts = { row: rowName(word, numbers[0] ?? 0), limit: MOST_ROWS };
      faults.push(diagnose('row/too-many', { file: setting.file, span: rep?.span ?? line.span }, facts));
      return { plans, faults };
    }
    if (label?.kind === 'numbered' && numbers.length > 0) {
      const first = numbers[0] ?? 0;
      const restarts =
        first === 1 &&
        (last === 0 || unit !== lastUnit || goesAlongRowEnds(line) || isHeading(lines[lineIndex - 1]));
      const goesOn = last === 0 && first === setting.before + 1;
      if (first !== last + 1 && !restarts && !goesOn && !listed && !unsure) {
        const names = { row: rowName(label.word, first), expected: rowName(label.word, last + 1) };
        faults.push(diagnose('row/out-of-order', { file: setting.file, span: label.span }, names));
      }
      // From a number that is told the count goes on.
      unsure = false;
    }
    if (rep?.otherSide === true && side === null) {
      const facts = { words: 'the other side', expected: 'a row along the ends of the rows before it,' };
      faults.push(diagnose('phrase/unread', { file: setting.file, span: rep.span }, facts));
      plans.push(unreadPlan(line, lineIndex, unit, numbers));
    } else if (rep?.more !== undefined) {
      const grown = grownRows(rep, line, numbers.length, history);
      if (grown === null) {
        const facts = { words: 'a row that grows', expected: GROWS };
        faults.push(diagnose('phrase/unread', { file: setting.file, span: rep.span }, facts));
        plans.push(unreadPlan(line, lineIndex, unit, numbers));
      } else
        for (const [i, source] of grown.entries()) {
          const number = numbers[i] ?? 0;
          const label = rowName(wordOf(line), number);
          const stated = line.stated?.each?.[i] ?? (i === grown.length - 1 ? line.stated : null);
          plans.push({
            label,
            unit,
            number,
            line: { ...line, stated },
            lineIndex,
            steps: i < grown.length - 1 ? source.steps : [...source.steps, ...after],
            statedSide: null,
            checksCount: stated !== null,
            rows: grown.length,
          });
          byNumber.set(number, source);
          history.push(source);
        }
    } else if (rep !== undefined && (rep.rows.length > 0 || rep.last !== undefined)) {
      const word = label !== null && label.kind !== 'named' ? label.word : unit === 'round' ? 'Rnd' : 'Row';
      // Looked up before any of them is planned: a row that the line itself makes is none it can repeat.
      const sources = numbers.map((_, i) =>
        rep.last === undefined
          ? byNumber.get(repeatedRow(rep, i, setting.sizeIndex) ?? 0)
          : lastRow(history, rep, i),
      );
      const each = line.stated?.each;
      if (each !== undefined && each.length !== numbers.length)
        faults.push(countsAstray(setting.file, line.stated ?? line, numbers.length));
      for (const [i, number] of numbers.entries()) {
        const source = sources[i];
        if (source === undefined || !source.readable) {
          if (source === undefined && !anyUnsure)
            faults.push(
              diagnose(
                'row/no-such',
                { file: setting.file, span: rep.span },
                {
                  row: rowName(word, number),
                  wanted:
                    rep.last === undefined
                      ? rowName(word, repeatedRow(rep, i, setting.sizeIndex) ?? 0)
                      : 'a row before it',
                },
              ),
            );
          plans.push(unreadPlan(line, lineIndex, unit, numbers));
          break;
        }
        const isLast = i === numbers.length - 1;
        // `With B, rep Row 2. Fasten off B.`: what stands before comes first, what stands behind comes last.
        const changed = withCorners(source.steps, behind(after, source.steps, isLast));
        if (changed === null) faults.push(noneToChange(after, setting.file));
        const steps = [...(i === 0 ? before : []), ...(changed ?? source.steps)];
        const own =
          each === undefined
            ? (countOf(line, number) ?? line.stated)
            : each.length === numbers.length
              ? (each[i] ?? null)
              : null;
        const stated = { ...line, stated: own };
        plans.push({
          label: rowName(word, number),
          unit,
          number,
          line: stated,
          lineIndex,
          steps,
          statedSide: null,
          checksCount: each !== undefined || countOf(line, number) !== null || isCounted(line, numbers, i),
          rows: numbers.length,
          meant: source.stated,
          ...(isLeftOpen(rep, setting.rows) ? { open: true } : {}),
        });
        byNumber.set(number, { ...source, steps });
      }
      if (rep.last === undefined || rep.even === true) {
        for (const number of numbers) history.push(byNumber.get(number) ?? line);
      }
      const at = numbers[0] ?? 0;
      const ends = numbers.length > 0 ? rowOfPass(rep, numbers.length - 1, setting.sizeIndex, at) : undefined;
      if (
        (rep.until.kind === 'height' || rep.until.kind === 'total') &&
        rep.until.endingWith !== null &&
        ends !== undefined &&
        ends !== rep.until.endingWith
      ) {
        const facts = {
          rows: numbers[numbers.length - 1] ?? 0,
          size: setting.size,
          ending: rep.until.endingWith,
          ends,
        };
        faults.push(
          diagnose('row/ending', { file: setting.file, span: rep.span, sizes: [setting.size] }, facts),
        );
      }
    } else {
      for (const [i, number] of numbers.entries()) {
        const name =
          label === null
            ? ''
            : label.kind === 'named'
              ? label.name
              : label.kind === 'next'
                ? label.n === undefined
                  ? `Next ${label.word.toLowerCase()}`
                  : rowName(label.word, number)
                : rowName(label.word, number);
        const numbered = label !== null && label.kind !== 'named' ? number : null;
        plans.push({
          label: name,
          unit,
          number: numbered,
          line,
          lineIndex,
          steps: line.steps,
          statedSide: i === 0 ? line.side : null,
          checksCount: isCounted(line, numbers, i),
          rows: numbers.length,
        });
        if (numbered !== null) {
          byNumber.set(numbered, line);
          history.push(line);
        }
      }
    }
    if (label?.kind === 'numbered' || label?.kind === 'next' || rep !== undefined) {
      last = listed ? Math.max(last, ...numbers) : (numbers[numbers.length - 1] ?? last);
      lastUnit = unit;
    }
  }
  return { plans: listed ? inOrder(plans) : plans, faults };
}

/** What is told of a stretch whose number is the maker's. */
function leftToMaker({ text, span }: NoteStep, { file, size }: PlanSetting): Diagnostic {
  return diagnose('count/not-checked', { file, span, sizes: [size] }, { thing: text, edge: 'open' });
}

/** What stands behind the rows that are repeated, for one of them: the last has all of it, each what they are worked with. */
function behind(after: readonly Step[], row: readonly Step[], last: boolean): readonly Step[] {
  return after.filter(({ kind }) => kind === 'corners' || (last && (kind !== 'turn' || !row.some(isTurn))));
}

/** `29, 27 and 25 sc` behind another number of rows. */
function countsAstray(file: string, { span }: { readonly span: Line['span'] }, rows: number): Diagnostic {
  const facts = { words: 'counts for other rows', expected: `a count for each of the ${rows} rows` };
  return diagnose('phrase/unread', { file, span }, facts);
}

const GROWS =
  '"R7-R14" before it, two rows above that differ just so, and a count for all of its rows or for the last,';

function wordOf({ label }: Line): string {
  return label?.kind === 'numbered' ? label.word : 'Row';
}

/** `R7-R14. Carry on like this, working 1 more dc after every increase`: each of them; null where that cannot be told. */
function grownRows(
  { more }: RepeatRowsStep,
  { label, stated }: Line,
  rows: number,
  history: readonly Line[],
): Line[] | null {
  const [before, last] = history.slice(-2);
  const counts = stated?.each?.length ?? rows;
  if (more === undefined || label?.kind !== 'numbered' || counts !== rows) return null;
  if (before === undefined || last === undefined || !before.readable || !last.readable) return null;
  const grown = Array.from({ length: rows }, (_, i) => grownLine(last, before, i + 1, more, stated !== null));
  return grown.every((line) => line !== null) ? grown : null;
}

/** A range that was not read may name any number of rows; those past so many are not looked up. */
const MOST_UNREAD = 1000;

/** The last of the rows of a line that cannot be worked: its count, if it states one, is that row's. */
function unreadPlan(line: Line, lineIndex: number, unit: Unit | null, numbers: readonly number[]): Plan {
  const { label } = line;
  const number = numbers[numbers.length - 1] ?? null;
  const word = label !== null && label.kind !== 'named' ? label.word : unit === 'round' ? 'Rnd' : 'Row';
  const named = label?.kind === 'named' ? label.name : '';
  const isNumbered = number !== null && label !== null && label.kind !== 'named';
  return {
    label: isNumbered ? rowName(word, number) : named,
    unit,
    number: isNumbered ? number : null,
    line,
    lineIndex,
    steps: line.steps,
    statedSide: null,
    checksCount: true,
    unread: true,
  };
}

/** Rows given in lists (`Rnds 5, 7 and 9`) put between the others by their numbers; what has none stays behind its row. */
function inOrder(plans: readonly Plan[]): Plan[] {
  let last = 0;
  const keyed = plans.map((plan, i) => {
    last = plan.number ?? last;
    return { plan, number: last, i };
  });
  return keyed.sort((a, b) => a.number - b.number || a.i - b.i).map(({ plan }) => plan);
}

/** The numbers of the rows a line works; one entry for a line that is no numbered row. Null ends the part. */
function rowNumbers(
  label: Label | null,
  rep: RepeatRowsStep | null,
  last: number,
  setting: PlanSetting,
  line: Line,
  faults: Diagnostic[],
): number[] | null {
  const { sizeIndex } = setting;
  const from = label?.kind === 'numbered' ? numberForSize(label.from, sizeIndex) : last + 1;
  // A dash in the label's list: this size has no such row.
  if (from === null) return [];
  if (label?.kind === 'numbered' && label.to !== null && label.to !== 'on') {
    const to = numberForSize(label.to, sizeIndex);
    return to === null ? [] : range(from, to);
  }
  const open = (label?.kind === 'numbered' && label.to === 'on') || rep?.until.kind === 'height';
  if (open) {
    if (rep !== null && isLeftOpen(rep, setting.rows)) {
      const number = onceThrough(rep, sizeIndex, from);
      faults.push(
        diagnose(
          'row/open-length',
          { file: setting.file, span: rep.span, sizes: [setting.size] },
          { rows: number },
        ),
      );
      return range(from, from + number - 1);
    }
    if (setting.rows === null) {
      const row = label?.kind === 'numbered' ? rowName(label.word, from) : 'this';
      faults.push(
        diagnose(
          'row/how-many',
          { file: setting.file, span: rep?.span ?? line.span, sizes: [setting.size] },
          { row, size: setting.size },
        ),
      );
      return null;
    }
    return range(from, setting.rows);
  }
  if (rep !== null && rep.until.kind === 'total')
    return range(from, numberForSize(rep.until.n, sizeIndex) ?? 0);
  if (rep !== null && rep.until.kind === 'times') {
    const times = numberForSize(rep.until.n, sizeIndex) ?? 0;
    return range(from, from + times * (rep.last ?? rep.rows.length) - 1);
  }
  if (label?.kind === 'next' && label.n !== undefined) {
    const n = numberForSize(label.n, sizeIndex);
    return n === null ? [] : range(from, from + n - 1);
  }
  if (label?.kind === 'numbered' && label.others !== undefined)
    return [from, ...label.others.flatMap((other) => numberForSize(other, sizeIndex) ?? [])];
  return [from];
}

function range(from: number, to: number): number[] {
  const length = Math.max(0, Math.min(to - from + 1, MOST_ROWS + 1));
  return Array.from({ length }, (_, i) => from + i);
}

function isTurn(step: Step): boolean {
  return step.kind === 'turn';
}

/** `Row 3`, `Rnd 4`, and `R3` as it is written. */
function rowName(word: string, number: number): string {
  return word === 'R' ? `R${number}` : `${word} ${number}`;
}

/** `Row 1: Ch 1, hdc in each row end across`: rows that stand on the side of those before are counted anew. */
function goesAlongRowEnds({ steps }: Line): boolean {
  return steps.some(
    (step) => step.kind === 'work' && step.place?.kind === 'each' && step.place.what.kind === 'row-end',
  );
}
