/** A question put to whoever sits at the terminal -> what she typed, or null when she ended her typing. */

import { createInterface } from 'node:readline';

export function askAtTerminal(question: string): Promise<string | null> {
  return new Promise((resolve) => {
    const asking = createInterface({ input: process.stdin, output: process.stdout });
    let typed: string | null = null;
    asking.once('SIGINT', () => asking.close());
    asking.once('close', () => resolve(typed));
    asking.question(`${question} `, (words) => {
      typed = words;
      asking.close();
    });
  });
}
