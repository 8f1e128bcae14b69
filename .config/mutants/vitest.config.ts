import { defineConfig } from 'vitest/config';
import { NarrowFirst } from './narrow-first.ts';

/**
 * The tests that mutants are tried against: arithmetic, judgements, published figures, limits. Those that start
 * ngspice are left out: they check the same formulas against it, and take as long as all the others together.
 */
export default defineConfig({
  test: {
    root: new URL('../..', import.meta.url).pathname,
    include: ['tests/{calc,judgements,published}/**/*.test.ts', 'tests/flows/limits.test.ts'],
    exclude: ['tests/published/{capacitance,discharge}.test.ts'],
    setupFiles: ['.config/mutants/no-chance.ts'],
    testTimeout: 30_000,
    // One worker and one load of the modules for each mutant, not for each file. A mutant still gets its own worker, so
    // what runs only while a module loads is tried too.
    isolate: false,
    sequence: { sequencer: NarrowFirst },
    runner: '.config/mutants/first-notice.ts',
  },
});
