import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    // Half of a small machine would stand idle otherwise.
    maxWorkers: '100%',
    testTimeout: 60_000,
    hookTimeout: 180_000,
  },
});
