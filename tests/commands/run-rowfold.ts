/** Words of a command in, what it printed and how it ended out: the command line run as its users run it. */

import { type ChildProcess, spawn } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { starterPattern } from '../../src/commands/starter-pattern.ts';

const START = fileURLToPath(new URL('../../rowfold.mjs', import.meta.url));

export interface Ended {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

export function startRowfold(words: readonly string[], folder: string): ChildProcess {
  return spawn(process.execPath, [START, ...words], {
    cwd: folder,
    env: { ...process.env, NO_COLOR: '1' },
  });
}

export function rowfold(words: readonly string[], folder: string): Promise<Ended> {
  return new Promise((resolve, reject) => {
    const child = startRowfold(words, folder);
    let out = '';
    let err = '';
    child.stdout?.setEncoding('utf8').on('data', (text: string) => {
      out += text;
    });
    child.stderr?.setEncoding('utf8').on('data', (text: string) => {
      err += text;
    });
    child.on('error', reject);
    child.on('close', (code) => resolve({ code, out, err }));
  });
}

/** An empty folder of the test's own. */
export function scratchFolder(): string {
  return mkdtempSync(path.join(tmpdir(), 'rowfold-test-'));
}

export function removeFolder(folder: string): void {
  rmSync(folder, { recursive: true, force: true });
}

/** Writes `patterns/<name>/pattern.yaml` and gives its path as it is typed. */
export function writePattern(folder: string, name: string, text: string | Uint8Array): string {
  mkdirSync(path.join(folder, 'patterns', name), { recursive: true });
  writeFileSync(path.join(folder, 'patterns', name, 'pattern.yaml'), text);
  return `patterns/${name}/pattern.yaml`;
}

/** A pattern without faults, and the same with a row that claims a stitch it does not make. */
export const GOOD = starterPattern('Grey Square');
export const WRONG = GOOD.replace(
  'each ch across, turn. (16 (24, 32) sts)',
  'each ch across, turn. (17 (24, 32) sts)',
);

export function copyFolder(from: string, to: string): void {
  cpSync(from, to, { recursive: true });
}
