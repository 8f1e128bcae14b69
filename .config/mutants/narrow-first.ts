import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** Test files about all judgements or all limits, the slowest last. */
const BROAD = ['reads-again', 'words', 'exact-limits', 'limits', 'figures', 'every-judgement', 'any-value'];
/** What runs while a module loads is tried against every file: what is said of it is noticed soonest by its stored words. */
const OF_ALL = ['words', 'judgements/', 'calc/'];
const EVERY = 50;

/** The order of the test files: those of one subject first, which notice most mutants within milliseconds. */
export class NarrowFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const broad = ({ moduleId }: TestSpecification): number =>
      BROAD.findIndex((name) => moduleId.endsWith(`/${name}.test.ts`));
    const among = ({ moduleId }: TestSpecification): number => {
      const at = OF_ALL.findIndex(
        (name) => moduleId.includes(`/tests/${name}`) || moduleId.endsWith(`/${name}.test.ts`),
      );
      return at < 0 ? OF_ALL.length : at;
    };
    const all = files.length > EVERY;
    return [...files].sort(
      (a, b) => (all ? among(a) - among(b) : 0) || broad(a) - broad(b) || (a.moduleId < b.moduleId ? -1 : 1),
    );
  }
}
