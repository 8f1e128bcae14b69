import { defineConfig } from 'vitest/config';

/** `npm run bench`: one after the other, since they would take each other's time. */
export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['tests/bench/*.bench.ts'],
    testTimeout: 3_600_000,
    maxWorkers: 1,
  },
});
