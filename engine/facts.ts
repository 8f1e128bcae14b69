/** What the record says as facts: of a place, and of the whole job. */
import type { Fact, JobFact } from './memory.ts';
import type { Entry, Parts, Value } from './schema.ts';

type Answered = Entry & { readonly kind: 'answered' };
type Amended = Entry & { readonly kind: 'amended' };

/** The older of the server's and the device's time. */
export const older = (at: string, said: string | null): string => (said !== null && said < at ? said : at);

/** When the answer was given. An entry's own `at` is the server's alone, so a fact doesn't show it. */
export function givenAt(fact: Fact): string {
  const { at, said } = fact as Answered;
  return older(at, said);
}
/** When the server heard of it: never earlier than it was given, whatever the device's clock claims. */
export const heardAt = (fact: Fact): string => (fact as Answered).at;
export const isSkipped = (fact: Fact | undefined): boolean => fact?.body.skipped !== undefined;

/** The same observation with other figures. */
export const amendedFact = (fact: Fact, parts: Parts, amended: number): Fact => ({
  ...fact,
  body: { ...fact.body, parts },
  amended,
});

/** A view of the entry, which is at hand anyway: a job has dozens of these. */
class OfJob implements JobFact {
  constructor(
    private readonly entry: Answered | Amended,
    readonly part: string,
  ) {}
  get seq(): number {
    return this.entry.seq;
  }
  get of(): number {
    return this.entry.kind === 'amended' ? this.entry.body.of : this.entry.seq;
  }
  get by(): string {
    return this.entry.by;
  }
  get value(): Value {
    return this.entry.body.parts[this.part] as Value;
  }
}
/** A part of an answer, or of its amendment, that counts for the whole job. */
export const jobFactOf = (entry: Answered | Amended, part: string): JobFact => new OfJob(entry, part);
