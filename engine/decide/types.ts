/** What a decision is made from and what comes of it. */
import { type Digest, textRef } from '../chain.ts';
import type { Standing } from '../replay.ts';
import type { Draft, Given, GivenParts, Prompt, Refusal, Text, TextRef } from '../schema.ts';

/** Everything a person may want to do with a job. The desk holds the table role × use case. */
export type UseCase =
  | 'answer'
  | 'hold'
  | 'amend'
  | 'withdraw'
  | 'raise'
  | 'stop'
  | 'alarm'
  | 'report'
  | 'note'
  | 'hand-over'
  | 'take-over'
  | 'not-here'
  | 'release'
  | 'approve'
  | 'ask'
  | 'reply'
  | 'sign'
  | 'send-back';

/** How the person stands to what they want to touch. */
export interface Relation {
  /** Their own answer, or their own alarm. */
  readonly own: boolean;
  /** Whose lock it is. */
  readonly holder: boolean;
  /** The answer is a gate of an isolation. */
  readonly gate: boolean;
  readonly reason: boolean;
}
export interface Context {
  readonly by: string;
  readonly at: string;
  readonly said: string | null;
  readonly client: string;
  may(use: UseCase, relation: Relation): boolean;
  /** A fresh random salt for each text that is kept. */
  salt(): string;
  /** The machine's own digest, where it has one. */
  readonly digest?: Digest;
  readonly people: readonly { readonly id: string; readonly name: string }[];
}
export interface Decision {
  readonly drafts: readonly Draft[];
  /** Where the job stands once these are on the record; its last hash is still the one before them. */
  readonly after: Standing;
  readonly texts: readonly Text[];
  readonly refusal: Refusal | null;
  readonly info: readonly string[] | null;
  readonly again: Prompt | null;
}
/** What one handler wants; `decide` completes it. */
export type Wish = Partial<Omit<Decision, 'after'>>;

export const refuse = (
  code: Refusal['code'],
  text: string,
  more: { parts?: readonly string[]; draft?: GivenParts; drafts?: readonly Draft[]; texts?: readonly Text[] } = {},
): Wish => ({
  drafts: more.drafts ?? [],
  texts: more.texts ?? [],
  refusal: { code, text, parts: [...(more.parts ?? [])], draft: more.draft ?? {} },
});

/** Keeps typed words beside the record: the body holds the reference and the salted hash. */
export interface Scribe {
  readonly texts: Text[];
  keep(words: string): TextRef;
}
export function scribe(context: Context): Scribe {
  const texts: Text[] = [];
  return {
    texts,
    keep(words) {
      const { ref, row } = textRef(
        words,
        context.salt(),
        `${context.by}.${context.client}.${texts.length + 1}`,
        context.digest,
      );
      texts.push(row);
      return ref;
    },
  };
}
export const NOBODY: Relation = { own: false, holder: false, gate: false, reason: false };
export const asText = (given: Given | undefined): string => (Array.isArray(given) ? given.join(' ') : (given ?? ''));
