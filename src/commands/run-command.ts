/** The words of a command and a terminal -> its verb run, or what is wrong with the words told. */

import { readFileSync } from 'node:fs';
import { nearest } from '../diagnostics/nearest.ts';
import { blanket } from './blanket.ts';
import { booklet } from './booklet.ts';
import { build } from './build.ts';
import { check } from './check.ts';
import { count } from './count.ts';
import { due } from './due.ts';
import { edge } from './edge.ts';
import { programHelp, verbHelp } from './help.ts';
import { newPattern } from './new.ts';
import { readPasted } from './read.ts';
import { readArguments } from './read-arguments.ts';
import { serve } from './serve.ts';
import { size } from './size.ts';
import { teach } from './teach.ts';
import type { ExitCode, Terminal, Verb } from './verb.ts';
import { yarn } from './yarn.ts';

const verbs: readonly Verb[] = [
  newPattern,
  readPasted,
  check,
  count,
  size,
  edge,
  yarn,
  build,
  due,
  blanket,
  serve,
  booklet,
  teach,
];

export async function runCommand([word, ...rest]: readonly string[], terminal: Terminal): Promise<ExitCode> {
  if (word === '--version') {
    terminal.say(version());
    return 0;
  }
  if (word === '--help' || word === '-h' || word === 'help') {
    terminal.say(programHelp(verbs));
    return 0;
  }
  const verb = verbs.find(({ name }) => name === word);
  if (verb === undefined) {
    terminal.tell(word === undefined ? programHelp(verbs) : unknownVerb(word));
    return 2;
  }
  const read = readArguments(verb, rest);
  switch (read.kind) {
    case 'help':
      terminal.say(verbHelp(verb));
      return 0;
    case 'wrong':
      terminal.tell(`${read.message}\nnpm run -s rowfold -- ${verb.name} --help shows how it is used.`);
      return 2;
    case 'given':
      return verb.run(read.given, terminal);
  }
}

function unknownVerb(word: string): string {
  const names = verbs.map(({ name }) => name);
  const near = nearest(word.replace(/^-+/, ''), names);
  const offer = near === null ? `The verbs are ${names.join(', ')}.` : `Did you mean ${near}?`;
  return `There is no verb ${word}. ${offer}\nnpm run -s rowfold -- --help explains them all.`;
}

function version(): string {
  const described: unknown = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8'));
  const found =
    typeof described === 'object' && described !== null && 'version' in described ? described.version : '';
  return `rowfold ${String(found)}`;
}
