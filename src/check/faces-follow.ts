/** `Row 1 (RS) … turn. Row 2 (RS)`: a face that does not follow from the one before. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Line } from '../notation/line.ts';
import type { Step } from '../notation/tree.ts';
import { isWorked, nameOf, placeOfLabel, turns } from './lines-of-rows.ts';
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
      if (!isWorked(line)) {
        // The yarn is cut or the work is turned in words of their own: any face may come next.
        if (line.steps.some(movesOn)) before = null;
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
          before: nameOf(before.line),
          had: before.face,
          turned: before.turned === true,
        };
        found.push(diagnose('row/faces', where, facts));
      }
      before = afterLine(line, line.side ?? next);
    }
    return found;
  });
}

function faceAfter({ face, turned }: Before): Face | null {
  if (turned === null) return null;
  return turned ? other(face) : face;
}

function other(face: Face): Face {
  return face === 'RS' ? 'WS' : 'RS';
}

/** What the last row of a line leaves, if it can be told: of a range, only the first is said to show a face. */
function afterLine(line: Line, face: Face | null): Before | null {
  const rows = rowsOf(line);
  if (face === null || rows === null || line.sizes !== undefined) return null;
  const said = line.steps.findLast((step) => step.kind === 'turn' && step.what !== 'do not join');
  if (line.steps.some(({ kind }) => kind === 'fasten off')) return null;
  const turned = said === undefined || said.kind !== 'turn' ? null : said.what === 'turn';
  if (rows === 1) return { line, face, turned };
  if (turned === null) return null;
  return { line, face: turned && rows % 2 === 0 ? other(face) : face, turned };
}

/** Null where it differs from size to size, or is not said. */
function rowsOf({ label, steps }: Line): number | null {
  if (label === null || label.kind !== 'numbered' || label.others !== undefined)
    return label?.kind === 'next' && label.n === undefined ? 1 : null;
  if (steps.some(({ kind }) => kind === 'repeat rows')) return null;
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
