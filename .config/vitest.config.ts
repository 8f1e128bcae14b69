import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    typecheck: { enabled: true, tsconfig: './tsconfig.json', include: ['tests/**/*.test-d.ts'] },
    testTimeout: 30_000,
    hookTimeout: 60_000,
    maxWorkers: 2,
  },
});
