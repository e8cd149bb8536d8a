/**
 * All that was found in a pattern in; what its file does not silence, and what is wrong with the silencing, out.
 *
 * Only warnings and notes can be silenced, each by its code and with a reason.
 */

import { diagnose, isCode } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { nearest } from '../diagnostics/nearest.ts';
import { SILENCEABLE } from '../diagnostics/softer-codes.ts';
import type { Allowed, Pattern } from '../pattern/pattern.ts';

export function silence({ allowed, source }: Pattern, found: readonly Diagnostic[]): Diagnostic[] {
  const faults: Diagnostic[] = [];
  const silenced = new Set<string>();
  // Where something is an error the rest may not have been looked at, so nothing can be said to be unneeded.
  const sound = found.every(({ severity }) => severity !== 'error');
  for (const entry of allowed) {
    const where = { file: source.file, span: entry.span };
    const fault = faultOf(entry, where);
    if (fault !== null) faults.push(fault);
    else if (found.some(({ code }) => code === entry.code)) silenced.add(entry.code);
    else if (sound) faults.push(diagnose('allow/unneeded', where, { code: entry.code }));
  }
  return [...found.filter(({ code, severity }) => severity === 'error' || !silenced.has(code)), ...faults];
}

function faultOf({ code, reason }: Allowed, where: Parameters<typeof diagnose>[1]): Diagnostic | null {
  if (SILENCEABLE.includes(code)) return reason === '' ? diagnose('allow/no-reason', where, { code }) : null;
  if (isCode(code)) return diagnose('allow/error', where, { code, ofAllow: code.startsWith('allow/') });
  return diagnose('allow/unknown', where, { code, nearest: nearest(code, SILENCEABLE) });
}
