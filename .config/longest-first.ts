import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** The files that take longest, the longest first. They start first, or one of them runs alone at the end. */
const LONGEST = [
  'prove/broken',
  'prove/proof',
  'web-chat/drawing',
  'web-chat/trouble',
  'web-chat/job',
  'slack/once',
  'slack/process',
  'slack/postgres',
  'terminal/json',
];

/**
 * The order of the test files: the long ones, then as vitest has it, and last those that share a worker's modules: one
 * behind the other, or each would get a new worker.
 */
export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files);
    const rank = (file: TestSpecification): number => {
      const at = LONGEST.findIndex((name) => file.moduleId.includes(`/tests/${name}.`));
      if (at >= 0) return at;
      return LONGEST.length + (file.project.config.isolate ? 0 : 1);
    };
    return sorted.sort((a, b) => rank(a) - rank(b));
  }
}
