import { readFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { removeFolder, rowfold, scratchFolder } from './run-rowfold.ts';

const folder = scratchFolder();
afterAll(() => removeFolder(folder));
const file = path.join(folder, 'patterns/my-square/pattern.yaml');

test('a starter pattern checks clean, without a warning, and is never written over', async () => {
  const made = await rowfold(['new', 'my-square'], folder);
  expect(made).toMatchObject({ code: 0, err: '' });
  expect(readFileSync(file, 'utf8')).toContain('title: "My Square"');

  const checked = await rowfold(['check', 'patterns/my-square', '--json'], folder);
  expect(JSON.parse(checked.out)).toEqual({ ok: true, faults: [] });

  const before = readFileSync(file);
  const again = await rowfold(['new', 'my-square'], folder);
  expect(again.err).toContain('left as it is');
  expect(again.code).toBe(2);
  expect(readFileSync(file)).toEqual(before);
});
