import { afterAll, describe, expect, test } from 'vitest';
import { removeFolder, rowfold, scratchFolder } from './run-rowfold.ts';

const folder = scratchFolder();
afterAll(() => removeFolder(folder));

describe('a command that is not understood ends with 2 and says what there is', () => {
  test.each([
    [['chekc'], /no verb chekc.*Did you mean check\?/s],
    [['frobnicate'], /The verbs are new, check, count, build, serve, booklet\./],
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
    const { code, out, err } = await rowfold(words, folder);
    expect(err).toMatch(says);
    expect(out).toBe('');
    expect(code).toBe(2);
  });
});

describe('help teaches with an example and ends with 0', () => {
  test.each(['new', 'check', 'count', 'build', 'serve', 'booklet'])('%s --help', async (verb) => {
    const { code, out, err } = await rowfold([verb, '--help'], folder);
    expect(out).toMatch(new RegExp(`^npm run -s rowfold -- ${verb}`));
    // The first line is how it is used; an example stands further down.
    expect(out.split('\n').slice(1).join('\n')).toContain(`npm run -s rowfold -- ${verb}`);
    expect(out).toContain('--help');
    expect([code, err]).toEqual([0, '']);
  });

  test('--help alone names every verb, and --version the version of package.json', async () => {
    const help = await rowfold(['--help'], folder);
    for (const verb of ['new', 'check', 'count', 'build', 'serve', 'booklet']) {
      expect(help.out).toMatch(new RegExp(`^ {2}${verb} `, 'm'));
    }
    const version = await rowfold(['--version'], folder);
    expect(version.out).toMatch(/^rowfold \d+\.\d+\.\d+\n$/);
    expect([help.code, version.code]).toEqual([0, 0]);
  });
});
