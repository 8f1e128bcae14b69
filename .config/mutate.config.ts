import { defineConfig } from 'vitest/config';

/**
 * The tests that mutants are tried against: arithmetic, judgements, published figures, limits. Those that start
 * ngspice are left out: they check the same formulas against it, and take as long as all the others together.
 * TESTS narrows them (`TESTS=tests/calc`). Not Stryker's own --testFiles: with it, a mutant that is met only while its
 * file loads is switched on too late, and all of those seem to live.
 */
const only = process.env.TESTS?.split(',').map((folder) =>
  folder.endsWith('.ts') ? folder : `${folder}/**/*.test.ts`,
);

export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: only ?? ['tests/{calc,judgements,published}/**/*.test.ts', 'tests/flows/limits.test.ts'],
    exclude: ['tests/published/{capacitance,discharge}.test.ts'],
    setupFiles: ['.config/mutate-setup.ts'],
    testTimeout: 30_000,
  },
});
