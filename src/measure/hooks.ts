/** A hook's width in millimetres in, the sizes printed on it out: the US letter and number, the old UK number. */

import table from '../../shared/hooks.json' with { type: 'json' };

export interface HookSize {
  readonly mm: number;
  /** `H-8`, as the Craft Yarn Council lists it; null where it lists none or the letters are not settled. */
  readonly us: string | null;
  /** The old UK and Canadian number, `6`; null where there was none. */
  readonly ukOld: string | null;
}

/** Hooks for yarn, finest first. Steel hooks are left out: their numbers contradict each other. */
export const HOOKS: readonly HookSize[] = table.regular.map(({ mm, us, ukOld, settled }) => ({
  mm,
  us: settled ? us : null,
  ukOld,
}));

/** The hook of just this width, or null when no list has one. */
export function hookSize(mm: number): HookSize | null {
  return HOOKS.find((hook) => Math.abs(hook.mm - mm) < 0.01) ?? null;
}
