/** What a person has typed and not sent, kept in this tab over a reload. */
import type { Reply } from '../../../engine/index.ts';
import type { Values } from '../parts/values.ts';

export interface Kept {
  /** Which question the values belong to. */
  readonly question: string;
  readonly values: Values;
  readonly typed: string;
  /** A reply without an answer from the server. */
  readonly unsent: Reply | null;
}
export const NOTHING_KEPT: Kept = { question: '', values: {}, typed: '', unsent: null };

const nameOf = (job: string) => `nocool:${job}`;

export function readKept(job: string): Kept {
  try {
    return { ...NOTHING_KEPT, ...(JSON.parse(sessionStorage.getItem(nameOf(job)) ?? '{}') as Partial<Kept>) };
  } catch {
    return NOTHING_KEPT;
  }
}

export function writeKept(job: string, kept: Kept): void {
  try {
    sessionStorage.setItem(nameOf(job), JSON.stringify(kept));
  } catch {
    // A browser without storage loses the draft on a reload, and nothing else.
  }
}
