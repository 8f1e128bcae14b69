import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** Test files about all judgements or all limits, the slowest last. */
const BROAD = ['reads-again', 'words', 'exact-limits', 'limits', 'figures', 'every-judgement', 'any-value'];

/** The order of the test files: those of one subject first, which notice most mutants within milliseconds. */
export class NarrowFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const rank = ({ moduleId }: TestSpecification): number =>
      BROAD.findIndex((name) => moduleId.endsWith(`/${name}.test.ts`));
    return [...files].sort((a, b) => rank(a) - rank(b) || (a.moduleId < b.moduleId ? -1 : 1));
  }
}
