/** The demo patterns' files, each with the name of its folder; what else lies beside them, settings and a picture, is none. */

import { readdirSync, readFileSync } from 'node:fs';

const DEMO = new URL('../../patterns/', import.meta.url);

export const DEMO_NAMES: readonly string[] = readdirSync(DEMO, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => name)
  .sort();

export function demoText(name: string): string {
  return readFileSync(new URL(`${name}/pattern.yaml`, DEMO), 'utf8');
}
