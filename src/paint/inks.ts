/** An ink's name in, its colour out: the house colours, and the names by which a page's style sheet may change them. */

import type { Ink } from '../scene/scene.ts';

/** On white paper ink has 16:1, second 6.6:1, faint 4.6:1 by WCAG 2.2; in grey, second is much lighter than ink. */
export const INKS: Readonly<Record<'ink' | 'second' | 'faint' | 'paper', string>> = {
  ink: '#1f2326',
  second: '#8a4a1f',
  faint: '#6f7377',
  paper: '#ffffff',
};

/** The colour itself, `none` for no ink. */
export function colourOf(ink: Ink): string {
  switch (ink) {
    case 'ink':
    case 'second':
    case 'faint':
    case 'paper':
      return INKS[ink];
    default:
      return ink;
  }
}

/** The colour as a style sheet may change it: `var(--chart-second, #8a4a1f)`. */
export function themedColourOf(ink: Ink): string {
  switch (ink) {
    case 'ink':
    case 'second':
    case 'faint':
    case 'paper':
      return `var(--chart-${ink}, ${INKS[ink]})`;
    default:
      return ink;
  }
}
