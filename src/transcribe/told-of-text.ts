/** Faults of a pattern in, the same told of a pasted text out: what a file says under a key stands in the text as a line. */

import type { Diagnostic } from '../diagnostics/diagnostic.ts';

/** What is advised of the keys of a pattern file, and what helps in a text. */
const ADVICE: readonly (readonly [RegExp, string])[] = [
  [
    /describe it under special: if it is a stitch of your own/,
    'explain it above the instructions if it is a stitch of your own, such as "Shell: 5 dc in same st"',
  ],
  [
    /add it under special:, for example {2}(.+)$/,
    'explain it on a line above the instructions, such as "$1".',
  ],
  [/or add (\S+(?: \S+)*?) under special:\.?$/, 'or explain $1 on a line above the instructions.'],
  [/set terms: (US|UK) if/, 'write "$1 terms" near the title if'],
  [/list the sizes under sizes:/, 'name the sizes near the top, such as "Sizes: S (M, L)"'],
  [/list it under yarn:/, 'list it with the yarns'],
  [
    /or say which part it goes on from with onto:/,
    'or begin it with "Join with sl st in any st" where it goes on from the piece before',
  ],
  [
    /give the size a height: \(with a gauge\) or rows:/,
    'state the finished size and the gauge, or how many rows',
  ],
  [
    /give the size repeats:, or a width: together with a gauge:/,
    'state the finished size and the gauge, or begin with the chain itself, such as "Ch 25."',
  ],
  [/like {2}gauge: \{.*\}$/, 'such as "Gauge: 16 sc and 18 rows = 10 cm".'],
];

export function toldOfText(diagnostic: Diagnostic): Diagnostic {
  const attempt = ADVICE.reduce((words, [said, instead]) => words.replace(said, instead), diagnostic.try);
  return attempt === diagnostic.try ? diagnostic : { ...diagnostic, try: attempt };
}
