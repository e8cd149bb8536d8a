/** `Row 1 (RS) … turn. Row 2 (RS)`: a face that does not follow from the one before. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Line } from '../notation/line.ts';
import type { RepeatRowsStep, Step } from '../notation/tree.ts';
import { isWorked, nameOf, placeOfLabel, repeatsRows, turns } from './lines-of-rows.ts';
import type { Publication } from './publication.ts';

type Face = 'RS' | 'WS';

/** The last row so far: which face it shows, and whether the work is turned behind it. */
interface Before {
  readonly line: Line;
  readonly face: Face;
  /** Null where nothing is said. */
  readonly turned: boolean | null;
}

export function facesFollow({ pattern }: Publication): Diagnostic[] {
  return pattern.parts.flatMap(({ instructions }) => {
    const found: Diagnostic[] = [];
    let before: Before | null = null;
    for (const line of instructions.lines) {
      const again = repeated(line.steps) !== null;
      if (!isWorked(line) && !again) {
        // The yarn is cut or the work is turned in words of their own: any face may come next.
        if (line.steps.some(movesOn) || line.steps.some(repeatsRows)) before = null;
        continue;
      }
      const next: Face | null = before === null || beginsAnew(line) ? null : faceAfter(before);
      if (before !== null && next !== null && line.side !== null && line.side !== next) {
        const where = {
          file: pattern.source.file,
          span: placeOfLabel(line),
          labels: [
            {
              span: placeOfLabel(before.line),
              text: `${before.face}${before.turned === true ? ', then turned' : ', not turned'}`,
            },
          ],
        };
        const facts = {
          row: nameOf(line),
          face: line.side,
          before: lastOf(before.line),
          had: before.face,
          turned: before.turned === true,
        };
        found.push(diagnose('row/faces', where, facts));
      }
      before = afterLine(line, line.side ?? next, instructions.lines);
    }
    return found;
  });
}

/** The last row of a line by its name: of rows told together it is the one that shows the face. */
function lastOf(line: Line): string {
  const { label } = line;
  const last =
    label?.kind === 'numbered' && label.to !== null && label.to !== 'on' ? label.to.values[0] : null;
  return label?.kind === 'numbered' && last != null ? `${label.word} ${last}` : nameOf(line);
}

function faceAfter({ face, turned }: Before): Face | null {
  if (turned === null) return null;
  return turned ? other(face) : face;
}

function other(face: Face): Face {
  return face === 'RS' ? 'WS' : 'RS';
}

/** What the last row of a line leaves, if it can be told: of a range, only the first is said to show a face. */
function afterLine(line: Line, face: Face | null, lines: readonly Line[]): Before | null {
  const rows = rowsOf(line);
  if (face === null || rows === null || line.sizes !== undefined) return null;
  if (line.steps.some(({ kind }) => kind === 'fasten off')) return null;
  const turned = turnedBehind(line) ?? turnedAsRows(line, lines);
  if (rows === 1) return { line, face, turned };
  if (turned === null) return null;
  return { line, face: turned && rows % 2 === 0 ? other(face) : face, turned };
}

/** Whether the work is turned behind a row; null where nothing is said. */
function turnedBehind({ steps }: Line): boolean | null {
  const said = steps.findLast((step) => step.kind === 'turn' && step.what !== 'do not join');
  return said === undefined || said.kind !== 'turn' ? null : said.what === 'turn';
}

/** Rows that are worked as earlier ones are turned as those, where those are all alike. */
function turnedAsRows({ steps }: Line, lines: readonly Line[]): boolean | null {
  const as = repeated(steps);
  if (as === null) return null;
  const turned = new Set<boolean | null>();
  for (const row of as.rows) {
    const [number, another] = row.values;
    const line = lines.find(
      ({ label }) => label?.kind === 'numbered' && label.to === null && label.from.values[0] === number,
    );
    turned.add(another !== undefined || line === undefined ? null : turnedBehind(line));
  }
  const [all, otherwise] = turned;
  return otherwise === undefined ? (all ?? null) : null;
}

/** `as Row 7` for all the rows of the label, and nothing else. */
function repeated(steps: readonly Step[]): RepeatRowsStep | null {
  const [only, more] = steps.filter(({ kind }) => kind !== 'note' && kind !== 'turn' && kind !== 'yarn');
  if (only?.kind !== 'repeat rows' || more !== undefined || only.until.kind !== 'label') return null;
  return only.rows.length > 0 && only.otherSide !== true && only.atEdge === undefined ? only : null;
}

/** Null where it differs from size to size, or is not said. */
function rowsOf({ label, steps }: Line): number | null {
  if (label === null || label.kind !== 'numbered' || label.others !== undefined)
    return label?.kind === 'next' && label.n === undefined ? 1 : null;
  if (repeated(steps) === null && steps.some(({ kind }) => kind === 'repeat rows')) return null;
  if (label.to === null) return 1;
  if (label.to === 'on') return null;
  const [from, another] = label.from.values;
  const [to, further] = label.to.values;
  return another === undefined && further === undefined && from != null && to != null ? to - from + 1 : null;
}

/** A row that turns first, or begins with yarn joined anew, says itself where it starts. */
function beginsAnew({ steps }: Line): boolean {
  const [first, second] = steps.filter(({ kind }) => kind !== 'note');
  return [first, second].some(
    (step) => step !== undefined && (turns(step) || (step.kind === 'yarn' && step.action === 'join')),
  );
}

function movesOn(step: Step): boolean {
  return (
    step.kind === 'fasten off' || step.kind === 'turn' || (step.kind === 'yarn' && step.action === 'join')
  );
}
