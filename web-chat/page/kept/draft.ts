/** What a person has typed and not given, kept in this tab over a reload. */
import type { Values } from '../parts/values.ts';

export interface Draft {
  /** Which question the values belong to. */
  readonly question: string;
  readonly values: Values;
  readonly typed: string;
}
const NOTHING: Draft = { question: '', values: {}, typed: '' };

const nameOf = (job: string) => `nocool:${job}`;

export function readDraft(job: string): Draft {
  try {
    return { ...NOTHING, ...(JSON.parse(sessionStorage.getItem(nameOf(job)) ?? '{}') as Partial<Draft>) };
  } catch {
    return NOTHING;
  }
}

export function writeDraft(job: string, draft: Draft): void {
  try {
    sessionStorage.setItem(nameOf(job), JSON.stringify(draft));
  } catch {
    // A browser without storage loses the draft on a reload, and nothing else.
  }
}
