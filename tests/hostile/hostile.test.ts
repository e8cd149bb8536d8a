/** Hostile files, each checked by the program in a process of its own: it ends by itself, with the fault that says why. */

import { spawn } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, test } from 'vitest';
import { removeFolder, scratchFolder } from '../commands/run-rowfold.ts';
import { HOSTILE, type HostileCase } from './hostile-cases.ts';

const START = fileURLToPath(new URL('../../rowfold.mjs', import.meta.url));
/** A guard against what never ends, not a measure: all of them end in a second or few. */
const STUCK_MS = 60_000;
/** Memory that a machine of today can spare, so that a case that eats it up fails instead of swapping. */
const MOST_MB = 1_500;

const folder = scratchFolder();
afterAll(() => removeFolder(folder));

interface Ended {
  readonly signal: string | null;
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

function check(file: string): Promise<Ended> {
  return new Promise((resolve, reject) => {
    const words = [`--max-old-space-size=${MOST_MB}`, START];
    const child = spawn(process.execPath, [...words, 'check', file, '--json'], { cwd: folder });
    const stuck = setTimeout(() => child.kill('SIGKILL'), STUCK_MS);
    let out = '';
    let err = '';
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      out += text;
    });
    child.stderr.setEncoding('utf8').on('data', (text: string) => {
      err += text;
    });
    child.on('error', reject);
    child.on('close', (code, signal) => {
      clearTimeout(stuck);
      resolve({ code, signal, out, err });
    });
  });
}

function write({ file, plainText }: HostileCase, nth: number): string {
  const name = plainText === true ? `text-${nth}.txt` : path.join(`piece-${nth}`, 'pattern.yaml');
  mkdirSync(path.dirname(path.join(folder, name)), { recursive: true });
  writeFileSync(path.join(folder, name), file());
  return name;
}

describe.concurrent('a hostile file', () => {
  for (const [nth, hostile] of HOSTILE.entries()) {
    test(
      hostile.name,
      async () => {
        const { signal, code, out, err } = await check(write(hostile, nth));
        expect({ signal, code, err }).toEqual({ signal: null, code: 1, err: '' });
        const { ok, faults } = JSON.parse(out);
        expect(ok).toBe(false);
        const codes = new Set(faults.map((fault: { readonly code: string }) => fault.code));
        // What hangs on it is told with it.
        codes.delete('row/hangs-on');
        expect([...codes]).toEqual(hostile.codes);
        // One fault says it; a maker is not buried under echoes of it.
        expect(faults.length).toBeLessThanOrEqual(2);
      },
      STUCK_MS + 10_000,
    );
  }
});
