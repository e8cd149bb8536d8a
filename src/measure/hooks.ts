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

/** Charts print one letter for hooks up to a quarter of a millimetre apart (G is 4 or 4.25 mm). */
const CHARTS_DIFFER_MM = 0.26;

/** Every hook that bears a US letter and number, `H-8`, or a letter alone, `G`; none where no list has it. */
export function hooksNamed(us: string): readonly HookSize[] {
  const wanted = partsOf(us);
  return HOOKS.filter((hook) => {
    if (hook.us === null) return false;
    const has = partsOf(hook.us);
    const letterFits = wanted.letters.length === 0 || wanted.letters.some((one) => has.letters.includes(one));
    return letterFits && (wanted.number === '' ? has.letters.length > 0 : has.number === wanted.number);
  });
}

/** Whether a hook of this width may bear this letter or number. */
export function bears(mm: number, us: string): boolean {
  const named = hooksNamed(us);
  if (named.length > 0) return named.some((hook) => Math.abs(hook.mm - mm) < CHARTS_DIFFER_MM);
  // `G-7`: a hook with a number alone is sold under the letter of its neighbour too.
  const { letters, number } = partsOf(us);
  const alone = HOOKS.some((hook) => hook.us === number && Math.abs(hook.mm - mm) < CHARTS_DIFFER_MM);
  return alone && letters.some((letter) => hooksNamed(letter).some((hook) => Math.abs(hook.mm - mm) <= 0.5));
}

/** `M/N-13` -> M and N, 13. */
function partsOf(us: string): { readonly letters: readonly string[]; readonly number: string } {
  const [, letters = '', number = ''] = /^([A-Z](?:\/[A-Z])*)?-?(.*)$/.exec(us) ?? [];
  return { letters: letters.split('/').filter((letter) => letter !== ''), number };
}
