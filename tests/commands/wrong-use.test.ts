import { tmpdir } from 'node:os';
import { describe, expect, test } from 'vitest';
import { runCommand } from '../../src/commands/run-command.ts';
import { type Ended, rowfold } from './run-rowfold.ts';

/** The command run without a process of its own: none of these gets as far as a pattern. */
async function run(words: readonly string[]): Promise<Ended> {
  let out = '';
  let err = '';
  const code = await runCommand(words, {
    say: (line) => {
      out += `${line}\n`;
    },
    tell: (line) => {
      err += `${line}\n`;
    },
    colour: false,
    over: null,
    ask: null,
    width: 80,
  });
  return { code, out, err };
}

test('what a command ends with is what its process ends with', async () => {
  for (const words of [['chekc'], ['--help'], ['count', 'a', '--size']]) {
    expect(await rowfold(words, tmpdir())).toEqual(await run(words));
  }
});

describe('a command that is not understood ends with 2 and says what there is', () => {
  test.each([
    [['chekc'], /no verb chekc.*Did you mean check\?/s],
    [
      ['frobnicate'],
      /The verbs are new, read, check, count, size, edge, yarn, build, due, blanket, serve, booklet, teach\./,
    ],
    [['check', '--jsno'], /no flag --jsno\. Did you mean --json\?/],
    [['check', '-x'], /no flag -x\./],
    [['check', '--json=yes'], /--json takes no value/],
    [['count'], /count needs PATH/],
    [['count', 'a', 'b'], /count takes no more than 1/],
    [['count', 'a', '--size'], /--size needs a value: --size NAME/],
    [['count', 'a', '--size', '--json'], /--size needs a value/],
    [['build', 'patterns'], /build takes no more than 0/],
    [['build', '--out='], /--out needs a value/],
    [['serve', '--port', 'high'], /--port takes a whole number from 1 to 65535, not high/],
    [['serve', '--port', '70000'], /not 70000/],
    [['booklet', 'a', '--paper', 'A5'], /--paper takes A4, Letter, not A5/],
    [['booklet', 'a', '--terms', 'uk-fll'], /Did you mean uk-full\?/],
    [['new', 'My Square'], /Try: npm run -s rowfold -- new my-square/],
    [['new', '../elsewhere'], /small letters, digits and hyphens/],
    [['new', '…'], /small letters, digits and hyphens/],
    [[], /VERB/],
  ])('rowfold %j', async (words, says) => {
    const { code, out, err } = await run(words);
    expect(err).toMatch(says);
    expect(out).toBe('');
    expect(code).toBe(2);
  });
});

describe('help teaches with an example and ends with 0', () => {
  test.each(['new', 'read', 'check', 'count', 'build', 'serve', 'booklet'])('%s --help', async (verb) => {
    const { code, out, err } = await run([verb, '--help']);
    expect(out).toMatch(new RegExp(`^npm run -s rowfold -- ${verb}`));
    // The first line is how it is used; an example stands further down.
    expect(out.split('\n').slice(1).join('\n')).toContain(`npm run -s rowfold -- ${verb}`);
    expect(out).toContain('--help');
    expect([code, err]).toEqual([0, '']);
  });

  test('--help alone names every verb, and --version the version of package.json', async () => {
    const help = await run(['--help']);
    for (const verb of ['new', 'read', 'check', 'count', 'build', 'serve', 'booklet']) {
      expect(help.out).toMatch(new RegExp(`^ {2}${verb} `, 'm'));
    }
    const version = await run(['--version']);
    expect(version.out).toMatch(/^rowfold \d+\.\d+\.\d+\n$/);
    expect([help.code, version.code]).toEqual([0, 0]);
  });
});
