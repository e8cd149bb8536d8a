/** A folder of patterns in, the settings of its site out: those of `site.yaml` in it, or the usual ones; the portrait looked at. */

import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { pictureFaults } from '../check/photographs.ts';
import { seenPhotographs } from '../pattern/photograph.ts';
import { lookAtPhotographs } from './look-at-photographs.ts';
import { type ReadSettings, readSettings, SETTINGS_FILE, USUAL_SETTINGS, wrong } from './site-settings.ts';

export async function settingsOf(folder: string): Promise<ReadSettings> {
  const file = path.join(folder, SETTINGS_FILE);
  const text = await readFile(file, 'utf8').catch(() => null);
  if (text === null) return { kind: 'read', settings: USUAL_SETTINGS };
  const read = readSettings(text);
  if (read.kind === 'wrong' || read.settings.portrait === null) return read;
  const { portrait } = read.settings;
  const looks = await lookAtPhotographs([portrait.file], folder);
  const span = { start: 0, end: 0 };
  const [fault] = pictureFaults(portrait, looks, { file, span }, { file, span }).filter(
    ({ severity }) => severity === 'error',
  );
  if (fault !== undefined) return wrong(lineOf(text, 'portrait'), fault.message);
  const [seenPortrait = null] = seenPhotographs([portrait], looks);
  return { kind: 'read', settings: { ...read.settings, seenPortrait } };
}

function lineOf(text: string, key: string): number | null {
  const at = text.split('\n').findIndex((line) => line.startsWith(`${key}:`));
  return at === -1 ? null : at + 1;
}
