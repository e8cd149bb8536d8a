import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    benchmark: { include: ['tests/bench/**/*.bench.ts'] },
    // The program's own files run as they do for the people who use it, not rewritten for testing.
    server: { deps: { external: [/\/src\//] } },
    execArgv: ['--import', 'tsx'],
  },
});
