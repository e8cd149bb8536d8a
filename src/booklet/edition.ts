/** Which edition of a booklet is wanted: how it is printed, and what it holds. */

import type { Form } from './paper.ts';

/** Words and charts, or one of them alone. */
export type Holds = 'all' | 'words' | 'charts';

export interface Edition {
  readonly form: Form;
  readonly holds: Holds;
  /** Without pictures, tints and coloured type. */
  readonly lowInk: boolean;
}

export const USUAL_EDITION: Edition = { form: 'flat', holds: 'all', lowInk: false };
