/** Measures as a pattern file writes them, `10 cm`, `180 g`, `5 mm (H-8)`, and the bounds that all its values have. */

import { z } from 'zod';
import { parseMeasure, sidesOf } from '../units.ts';
import { BOUNDS } from './bounds.ts';
import { readHook } from './hook.ts';

type Bounds = readonly [number, number];

/** What a measure's fault carries beside the library's own words. */
export type MeasureFault =
  | { readonly fault: 'measure'; readonly wants: 'length' | 'mass' }
  | {
      readonly fault: 'range';
      readonly wants: 'length' | 'mass';
      readonly least: number | null;
      readonly most: number | null;
    };

export const text = () => z.string().trim().min(1);
export const wholeNumber = ([least, most]: Bounds) => z.int().min(least).max(most);

/** `15 cm`, `180 m`: a text whose bounds are in mm. */
export const length = (bounds: Bounds) => measure('length', bounds);
/** `100 g`: a text whose bounds are in g. */
export const mass = (bounds: Bounds) => measure('mass', bounds);

function measure(wants: 'length' | 'mass', [least, most]: Bounds) {
  return z.string().superRefine((written, context) => {
    const fault = measureFault(written, wants, least, most);
    if (fault !== null) context.addIssue({ code: 'custom', params: fault });
  });
}

/** `320 m` or `180 g`: yarn unravelled and measured, or weighed. */
export const yarnAmount = z.string().superRefine((written, context) => {
  const wants = parseMeasure(written)?.kind === 'mass' ? 'mass' : 'length';
  const [least, most] = wants === 'mass' ? BOUNDS.usedMassG : BOUNDS.usedLengthMm;
  const fault = measureFault(written, wants, least, most);
  if (fault !== null) context.addIssue({ code: 'custom', params: fault });
});

/** `10 cm`, `4 in`; `15.2 x 14 cm` of a swatch that was measured both ways. */
export const over = z.string().superRefine((written, context) => {
  const [least, most] = BOUNDS.gaugeOverMm;
  for (const side of sidesOf(written)) {
    const fault = measureFault(side, 'length', least, most);
    if (fault === null) continue;
    context.addIssue({ code: 'custom', params: fault });
    return;
  }
});

/** `5 mm`, and with the letter printed on it `5 mm (H-8)`. */
export const hook = z.string().superRefine((written, context) => {
  const [least, most] = BOUNDS.hookMm;
  const fault = measureFault(readHook(written)?.measure ?? written, 'length', least, most);
  if (fault !== null) context.addIssue({ code: 'custom', params: fault });
});

function measureFault(
  written: string,
  wants: 'length' | 'mass',
  least: number,
  most: number,
): Record<string, unknown> | null {
  const read = parseMeasure(written);
  if (read?.kind !== wants) return { fault: 'measure', wants } satisfies MeasureFault;
  const amount = read.kind === 'length' ? read.mm : read.g;
  if (amount < least) return { fault: 'range', wants, least, most: null } satisfies MeasureFault;
  return amount > most ? ({ fault: 'range', wants, least: null, most } satisfies MeasureFault) : null;
}
