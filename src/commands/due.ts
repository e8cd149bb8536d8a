/** `due`: a folder of alongs -> when the next week comes out, for a maker's eye and for a scheduler. */

import { dayWords, hourWords, isoInstant, placeOfZone } from '../along/clock-words.ts';
import { nextRelease } from '../along/release.ts';
import { alongFaults, readAlongs } from '../site/read-alongs.ts';
import { AS_OF_FLAGS, readAsOf } from './as-of.ts';
import { tellFaults } from './tell-faults.ts';
import type { Verb } from './verb.ts';

export const due: Verb = {
  name: 'due',
  takes: '[PATH] [--as-of TIME] [--json]',
  about: 'when the next week of a crochet-along comes out',
  least: 0,
  most: 1,
  flags: [
    ...AS_OF_FLAGS.filter(({ name }) => name === 'as-of'),
    { name: 'json', value: null, about: 'the same as JSON, for other programs' },
  ],
  teaches: `Prints the next release of each along, the earliest first: the instant in UTC, then what it is.

  npm run -s rowfold -- due
  npm run -s rowfold -- due alongs/my-along

A scheduler that builds at that instant publishes the week on time; one that builds every hour, on the hour, does as
well. Nothing is printed of an along whose weeks are all out.`,
  run: async ({ paths: [path = 'alongs'], flags, values }, terminal) => {
    const asked = readAsOf({ flags, values });
    if (asked.kind === 'wrong') {
      terminal.tell(asked.message);
      return 2;
    }
    const alongs = await readAlongs(path);
    if (alongs.length === 0) {
      terminal.tell(`There is no along in ${path}: an along is a folder with an along.yaml in it.`);
      return 2;
    }
    const next = alongs.flatMap(({ worked }) => {
      if (worked === null || asked.kind !== 'asked' || asked.asOf === null) return [];
      const { along } = worked;
      const release = nextRelease(along, asked.asOf(along.zone));
      return release === null ? [] : [{ along, ...release }];
    });
    const sorted = next.toSorted((a, b) => a.releaseMs - b.releaseMs);
    const unread = alongs.filter(({ worked }) => worked === null);
    tellFaults(unread.map(alongFaults), terminal);
    if (flags.has('json'))
      terminal.say(
        JSON.stringify(
          sorted.map(({ along, number, releaseMs }) => ({
            along: along.slug,
            week: number,
            at: isoInstant(releaseMs),
          })),
          null,
          2,
        ),
      );
    else if (sorted.length > 0)
      for (const { along, number, releaseMs } of sorted)
        terminal.say(
          `${isoInstant(releaseMs)}  ${along.title}, week ${number}: ${dayWords(releaseMs, along.zone)}, ${hourWords(releaseMs, along.zone)} in ${placeOfZone(along.zone)}`,
        );
    else if (unread.length === 0) terminal.tell('Every week of every along is out.');
    return unread.length === 0 ? 0 : 1;
  },
};
