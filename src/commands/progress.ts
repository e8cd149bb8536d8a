/** What a long build is at -> a line that goes forward in a terminal, or a plain line now and then where it is none. */

import type { Terminal } from './verb.ts';

/** Whoever keeps what is printed in a file wants to see that it goes on, and not every step of it. */
const NOW_AND_THEN_MS = 5000;

export interface Progress {
  readonly at: (words: string) => void;
  /** Takes the line away, for what is printed next. */
  readonly done: () => void;
}

export function progressOf({ over, tell, width }: Pick<Terminal, 'over' | 'tell' | 'width'>): Progress {
  if (over !== null)
    return {
      at: (words) => over(words.length < width ? words : `${words.slice(0, width - 2)}…`),
      done: () => over(''),
    };
  let last = performance.now();
  return {
    at: (words) => {
      const now = performance.now();
      if (now - last < NOW_AND_THEN_MS) return;
      last = now;
      tell(words);
    },
    done: () => {
      last = performance.now();
    },
  };
}
