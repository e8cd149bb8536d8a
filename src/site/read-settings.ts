/** A folder of patterns in, the settings of its site out: those of `site.yaml` in it, or the usual ones. */

import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { type ReadSettings, readSettings, SETTINGS_FILE, USUAL_SETTINGS } from './site-settings.ts';

export async function settingsOf(folder: string): Promise<ReadSettings> {
  const text = await readFile(path.join(folder, SETTINGS_FILE), 'utf8').catch(() => null);
  return text === null ? { kind: 'read', settings: USUAL_SETTINGS } : readSettings(text);
}
