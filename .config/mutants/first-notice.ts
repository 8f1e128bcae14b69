import { type CancelReason, TestRunner } from 'vitest';

/** Once a test has noticed the mutant, the test files behind it aren't even loaded. */
export default class FirstNotice extends TestRunner {
  private noticed = false;

  override cancel(reason: CancelReason): void {
    this.noticed = true;
    super.cancel(reason);
  }

  override importFile(path: string, source: 'collect' | 'setup'): unknown {
    if (!this.noticed) return super.importFile(path, source);
  }
}
