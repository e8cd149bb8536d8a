/** Facts about a printed booklet in, the words of a fault out: one function per code. */

import type { Wording } from '../diagnostic.ts';

export const bookletFaults = {
  'booklet/character': ({ character, codePoint }: UnprintedCharacter): Wording => ({
    severity: 'error',
    message: `the booklet's fonts have no "${character}" (U+${codePoint.toString(16).toUpperCase().padStart(4, '0')})`,
    why: 'The printed page would show an empty box in its place.',
    try: 'write it in letters, figures or common signs.',
  }),
} as const;

interface UnprintedCharacter {
  readonly character: string;
  readonly codePoint: number;
}
