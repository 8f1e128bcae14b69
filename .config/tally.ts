import type { Reporter } from 'vitest/node';

/**
 * Prints the run's tally as its very last line, alone: `N passed, N failed`, with `, N skipped` where any were.
 *
 * Written while the process exits, because vitest still talks after the last reporter (unhandled errors, slow
 * closing), and a line that scripts read must not have anything under it. What fails outside a test (a file that
 * doesn't load, a type error in a source, a test run that found nothing) counts as failed: the line and the exit code
 * never disagree.
 */
export class Tally implements Reporter {
  #passed = 0;
  #failed = 0;
  #skipped = 0;

  onInit(): void {
    process.once('exit', (code) => {
      if (code !== 0 && this.#failed === 0) this.#failed = 1;
      if (this.#failed > 0) process.exitCode ||= 1;
      process.stdout.write(`${tallyLine(this.#passed, this.#failed, this.#skipped)}\n`);
    });
  }

  onTestRunEnd(...[modules, unhandled]: Parameters<NonNullable<Reporter['onTestRunEnd']>>): void {
    [this.#passed, this.#failed, this.#skipped] = [0, unhandled.length, 0];
    for (const module of modules) {
      let failedHere = 0;
      for (const test of module.children.allTests()) {
        const { state } = test.result();
        if (state === 'passed') this.#passed++;
        else if (state === 'failed') failedHere++;
        else this.#skipped++;
      }
      this.#failed += failedHere || (module.ok() ? 0 : 1);
    }
  }
}

const tallyLine = (passed: number, failed: number, skipped: number): string =>
  `${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`;
