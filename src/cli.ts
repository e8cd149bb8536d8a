/** Words of a command in, its lines and its exit code out: 0 well, 1 faults in the patterns, 2 wrong use. */

import { askAtTerminal } from './commands/ask-at-terminal.ts';
import { runCommand } from './commands/run-command.ts';

// Whoever reads the answer may have seen enough, as `head` does.
for (const stream of [process.stdout, process.stderr]) {
  stream.on('error', (fault: NodeJS.ErrnoException) => {
    if (fault.code === 'EPIPE') process.exit();
    throw fault;
  });
}

process.exitCode = await runCommand(process.argv.slice(2), {
  say: (line) => void process.stdout.write(`${line}\n`),
  tell: (line) => void process.stderr.write(`${line}\n`),
  // By the informal standard of NO_COLOR, and never into a file or another program.
  colour: process.stdout.isTTY === true && process.stderr.isTTY === true && !process.env.NO_COLOR,
  // Erase in line and carriage return (ECMA-48).
  over: process.stderr.isTTY === true ? (line) => void process.stderr.write(`\r\x1b[2K${line}`) : null,
  ask: process.stdin.isTTY === true && process.stdout.isTTY === true ? askAtTerminal : null,
  width: process.stdout.columns || Number(process.env.COLUMNS) || 100,
});
