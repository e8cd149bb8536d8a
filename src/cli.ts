/** Words of a command in, its verb run: lines out and an exit code of 0 (well), 1 (faults) or 2 (wrong use). */

import { readFileSync } from 'node:fs';
import { booklet } from './commands/booklet.ts';
import { build } from './commands/build.ts';
import { check } from './commands/check.ts';
import { count } from './commands/count.ts';
import { programHelp, verbHelp } from './commands/help.ts';
import { newPattern } from './commands/new.ts';
import { readArguments } from './commands/read-arguments.ts';
import { serve } from './commands/serve.ts';
import type { ExitCode, Terminal, Verb } from './commands/verb.ts';
import { nearest } from './diagnostics/nearest.ts';

const verbs: readonly Verb[] = [newPattern, check, count, build, serve, booklet];

const terminal: Terminal = {
  say: (line) => void process.stdout.write(`${line}\n`),
  tell: (line) => void process.stderr.write(`${line}\n`),
  // By the informal standard of NO_COLOR, and never into a file or another program.
  colour: process.stdout.isTTY === true && process.stderr.isTTY === true && !process.env.NO_COLOR,
};

// Whoever reads the answer may have seen enough, as `head` does.
for (const stream of [process.stdout, process.stderr]) {
  stream.on('error', (fault: NodeJS.ErrnoException) => {
    if (fault.code === 'EPIPE') process.exit();
    throw fault;
  });
}

process.exitCode = await run(process.argv.slice(2));

async function run([word, ...rest]: readonly string[]): Promise<ExitCode> {
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
  const described: unknown = JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8'));
  const found =
    typeof described === 'object' && described !== null && 'version' in described ? described.version : '';
  return `rowfold ${String(found)}`;
}
