/** Faults that a page's script met -> what is told of the first, in a maker's words. Loaded when there is one. */

import { type Code, diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { LaterFault } from '../own/fault-later.ts';

export function tellFault(fault: Diagnostic): string {
  if (!isLater(fault)) return fault.message;
  const { message, why } = diagnose(fault.code, fault.where, fault.facts);
  return `${message}. ${why}`;
}

function isLater(fault: Diagnostic): fault is LaterFault<Code> {
  return 'facts' in fault;
}
