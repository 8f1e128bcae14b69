import fc from 'fast-check';

/** A mutant lives or dies the same on every run: no chance, and not so many tries that a run takes the night. */
fc.configureGlobal({ seed: 20261125, numRuns: 50 });
