/** Faults -> how many there are of each kind, and a fault as a note in the margin, in HTML. */

import type { Diagnostic, Severity } from '../diagnostics/diagnostic.ts';
import { escaped } from '../escaped.ts';

/** The worst first. */
const SEVERITIES: readonly Severity[] = ['error', 'warning', 'note'];

const NAMES: Readonly<Record<Severity, string>> = { error: 'Error', warning: 'Warning', note: 'Note' };

/** `2 errors and 1 note`; null where there are none. */
export function countWords(faults: readonly { readonly severity: Severity }[]): string | null {
  const counted = SEVERITIES.flatMap((severity) => {
    const n = faults.filter((fault) => fault.severity === severity).length;
    return n === 0 ? [] : [`${n} ${severity}${n === 1 ? '' : 's'}`];
  });
  if (counted.length === 0) return null;
  return counted.length === 1
    ? (counted[0] ?? null)
    : `${counted.slice(0, -1).join(', ')} and ${counted.at(-1)}`;
}

export function worstOf(faults: readonly { readonly severity: Severity }[]): Severity | null {
  return SEVERITIES.find((severity) => faults.some((fault) => fault.severity === severity)) ?? null;
}

/** What is so, why it matters, what to try. Its kind is told in words, and by a shape of its own. `below` stands at its end. */
export function faultNote({ severity, sizes, message, why, try: attempt }: Diagnostic, below = ''): string {
  const ofSizes = sizes.length === 0 ? '' : `, ${sizes.length === 1 ? 'size' : 'sizes'} ${sizes.join(', ')}`;
  return `<div class="told-note ${severity}">
<p class="kind">${sign(severity)}${NAMES[severity]}${escaped(ofSizes)}</p>
<p class="what">${escaped(sentence(message))}</p>
<p>${escaped(why)}</p>
<p><b>Try:</b> ${escaped(attempt)}</p>${below}
</div>`;
}

/** A knot, a loop or a dot; the word beside it says the same. */
export function sign(severity: Severity): string {
  return `<span class="sign ${severity}" aria-hidden="true"></span>`;
}

function sentence(message: string): string {
  const begun = message.charAt(0).toUpperCase() + message.slice(1);
  return /[.!?]$/.test(begun) ? begun : `${begun}.`;
}
