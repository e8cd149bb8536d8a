/** A border round a net: what goes into its corner spaces and what into the others, put together into one step that goes round. */

import type { NoteStep, Place, RepeatStep, Step, WorkStep } from './tree.ts';

/** `7 dc into each corner sp, 3 dc into every other sp round`, either way about; null for any other two steps. */
export function spacesAndCorners(before: WorkStep, step: WorkStep): WorkStep | null {
  const corner = isAtCorners(before) ? before : isAtCorners(step) ? step : null;
  const other = corner === before ? step : before;
  if (corner === null || corner.place === null || !('what' in corner.place)) return null;
  const { place } = other;
  if (place?.kind !== 'each' || place.stop.kind !== 'end' || other.corners !== undefined) return null;
  if (place.what.kind !== 'space' || place.what.corner) return null;
  const here: Place = { kind: 'same', what: { kind: 'st' }, asJoin: false, span: corner.span };
  // "Every other sp" beside the corners is each of the others.
  const { every: _, ...each } = place;
  return {
    ...other,
    place: each,
    corners: { body: [{ ...corner, place: here }], what: corner.place.what },
    span: { start: before.span.start, end: step.span.end },
  };
}

function isAtCorners({ place }: WorkStep): boolean {
  if (place === null || (place.kind !== 'each' && place.kind !== 'next')) return false;
  if (place.what.kind !== 'space' || !place.what.corner) return false;
  return place.kind === 'each' || place.n?.values.every((n) => n !== null && n > 2) === true;
}

/** `7 dc into the corner sp, 3 dc into each sp to the next corner` as often as it goes round; null where no corner is told. */
export function allSides(steps: readonly Step[], { span }: NoteStep): readonly Step[] | null {
  const at = steps.findIndex(
    (step) =>
      step.kind === 'work' &&
      step.place?.kind === 'next' &&
      step.place.what.kind === 'space' &&
      step.place.what.corner,
  );
  const body = at < 0 ? [] : steps.slice(at);
  const [first] = body;
  if (first === undefined || body.length < 2) return null;
  const repeat: RepeatStep = {
    kind: 'repeat',
    body,
    lastPassEnds: null,
    stop: { kind: 'end', word: 'around', span },
    span: { start: first.span.start, end: span.end },
  };
  return [...steps.slice(0, at), repeat];
}
