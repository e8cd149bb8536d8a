/** Words of a round, one after the other -> the same with what comes again put into brackets: `[a, b] 3 times, c`. */

/** Longer blocks than these are no easier to follow than the words themselves. */
const LONGEST_BLOCK = 16;

export function runsFolded(words: readonly string[]): string {
  const said: string[] = [];
  for (let from = 0; from < words.length; ) {
    const { length, times } = bestBlock(words, from);
    const block = words.slice(from, from + length).join(', ');
    said.push(times === 1 ? block : `[${block}] ${times} times`);
    from += length * times;
  }
  return said.join(', ');
}

/** The same, where the second half says what the first does: `*a, b; rep from * once more`. */
export function halvesFolded(words: readonly string[]): string {
  const half = words.length / 2;
  const isTwice = words.length % 2 === 0 && words.every((word, i) => i < half || word === words[i - half]);
  return isTwice ? `*${runsFolded(words.slice(0, half))}; rep from * once more` : runsFolded(words);
}

interface Block {
  readonly length: number;
  readonly times: number;
}

/** The block that saves the most words from here on; of two that save as many, the shorter. */
function bestBlock(words: readonly string[], from: number): Block {
  let best: Block = { length: 1, times: 1 };
  for (let length = 1; length <= LONGEST_BLOCK && from + 2 * length <= words.length; length += 1) {
    const times = timesOver(words, from, length);
    if (length * (times - 1) > best.length * (best.times - 1)) best = { length, times };
  }
  return best;
}

function timesOver(words: readonly string[], from: number, length: number): number {
  let end = from + length;
  while (end < words.length && words[end] === words[end - length]) end += 1;
  return Math.floor((end - from) / length);
}
