import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { watchFolders } from '../../src/serve/watch-folders.ts';
import { removeFolder, scratchFolder } from '../commands/run-rowfold.ts';

const folder = scratchFolder();
afterAll(() => removeFolder(folder));

const eventually = <T>(look: () => T) => expect.poll(look, { timeout: 30_000 });

test('a folder that is made later is watched from then on, and what it holds is acted on once it is quiet', async () => {
  const patterns = path.join(folder, 'patterns');
  let acted = 0;
  const stop = watchFolders([patterns], 20, async () => void acted++);
  mkdirSync(path.join(patterns, 'reed'), { recursive: true });
  await eventually(() => acted).toBe(1);
  writeFileSync(path.join(patterns, 'reed/pattern.yaml'), 'title: Reed');
  await eventually(() => acted).toBe(2);
  rmSync(patterns, { recursive: true });
  await eventually(() => acted).toBeGreaterThan(2);
  mkdirSync(patterns);
  await new Promise((resolve) => setTimeout(resolve, 1500));
  const before = acted;
  writeFileSync(path.join(patterns, 'site.yaml'), '');
  await eventually(() => acted).toBeGreaterThan(before);
  stop();
  const after = acted;
  writeFileSync(path.join(patterns, 'site.yaml'), 'name: Sedge');
  await new Promise((resolve) => setTimeout(resolve, 200));
  expect(acted).toBe(after);
});

test('it never acts twice at once: what is changed meanwhile leads to one run more, also during the first', async () => {
  const file = path.join(folder, 'pattern.yaml');
  writeFileSync(file, 'a');
  let running = 0;
  let most = 0;
  let runs = 0;
  const act = async (): Promise<void> => {
    running++;
    most = Math.max(most, running);
    await new Promise((resolve) => setTimeout(resolve, 150));
    running--;
    runs++;
  };
  const stop = watchFolders([folder], 10, act, act);
  for (const text of ['b', 'c', 'd']) {
    writeFileSync(file, text);
    await new Promise((resolve) => setTimeout(resolve, 25));
  }
  await eventually(() => runs).toBe(2);
  expect(most).toBe(1);
  stop();
});
