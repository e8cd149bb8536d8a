/** A yarn's colour -> a small square of it, as SVG; decoration only, since the colour is named beside it. */

import type { Markup } from './page-data.ts';

export function swatch(hex: string | null): Markup | null {
  if (hex === null || !/^#[0-9a-f]{6}$/i.test(hex)) return null;
  const square = `<rect x="0.5" y="0.5" width="23" height="23" fill="${hex}" stroke="currentColor"/>`;
  return `<svg viewBox="0 0 24 24" width="24" height="24" aria-hidden="true">${square}</svg>`;
}
