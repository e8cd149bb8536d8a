import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { progressOf } from '../../src/commands/progress.ts';

beforeEach(() => void vi.useFakeTimers({ toFake: ['performance'] }));
afterEach(() => void vi.useRealTimers());

function watched(terminal: boolean) {
  const over: string[] = [];
  const told: string[] = [];
  const progress = progressOf({
    over: terminal ? (line) => void over.push(line) : null,
    tell: (line) => void told.push(line),
    width: 20,
  });
  return { over, told, progress };
}

test('in a terminal one line goes forward, never longer than the terminal is wide, and is taken away at the end', () => {
  const { over, told, progress } = watched(true);
  progress.at('setting the pages');
  progress.at('Grey Square: charts and booklets (1 of 9)');
  progress.done();
  expect(over).toEqual(['setting the pages', 'Grey Square: chart…', '']);
  expect(told).toEqual([]);
});

test('elsewhere a plain line is told now and then', () => {
  const { over, told, progress } = watched(false);
  for (let i = 1; i <= 100; i++) {
    progress.at(`pattern ${i} of 100`);
    vi.advanceTimersByTime(200);
  }
  expect(told).toEqual(['pattern 26 of 100', 'pattern 51 of 100', 'pattern 76 of 100']);
  expect(over).toEqual([]);
});

test('a build that is done at once says nothing', () => {
  const { told, progress } = watched(false);
  progress.at('reading the patterns');
  progress.done();
  expect(told).toEqual([]);
});
