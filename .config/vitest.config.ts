import { defineConfig } from 'vitest/config';
import { LongestFirst } from './longest-first.ts';
import { Tally } from './tally.ts';

/** Folders whose tests start nothing and leave nothing behind: they share their modules, and so the compiled manual. */
const PURE = 'tests/{calc,engine,flows,judgements,published,replay,review,understand}';

export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    // Type tests: vitest runs tsc over the whole tree once, so a type error in any source fails the run as well.
    typecheck: { enabled: true, tsconfig: './tsconfig.json', include: ['tests/**/*.test-d.ts'] },
    // Starts nothing by itself: the first test that asks gets a PostgreSQL server, and the others share it.
    globalSetup: ['tests/store/postgres-setup.ts'],
    reporters: ['default', new Tally()],
    // Real processes, disks and browsers on a machine that others use too: on CI a test may be tried once more.
    retry: process.env.CI ? 1 : 0,
    testTimeout: 30_000,
    hookTimeout: 60_000,
    maxWorkers: 2,
    sequence: { sequencer: LongestFirst },
    projects: [
      {
        extends: true,
        test: {
          name: 'apart',
          include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
          exclude: [`${PURE}/**`],
        },
      },
      {
        extends: true,
        test: { name: 'pure', include: [`${PURE}/**/*.test.ts`], isolate: false, typecheck: { enabled: false } },
      },
    ],
  },
});
