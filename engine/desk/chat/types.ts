/**
 * A job in a chat outside, where a whole crew reads along: what has to be said there, and how a platform says it. A
 * platform brings a Voice; what is said when, once, in order and after every kind of trouble, is decided here for all.
 */
import type { Conclusion } from '../../schema.ts';
import type { JobView, LowStock, TicketLine } from '../types.ts';

/** What is said, as the store keeps it: ids and numbers, never words of a person. */
export type What =
  /** The head of the job's thread: its summary with the isolation, drawn anew as the job goes on. */
  | { readonly kind: 'head' }
  /** `last`: up to which entry the job had come; `print` tells apart two questions at one place. */
  | { readonly kind: 'question'; readonly last: number; readonly print: string }
  | { readonly kind: 'event'; readonly seq: number }
  | { readonly kind: 'verdict'; readonly seq: number }
  /** `of`: the place of its verdict; null: of the question. */
  | { readonly kind: 'picture'; readonly of: string | null; readonly n: number }
  /** To one person alone: something waits for them. */
  | { readonly kind: 'attention'; readonly seq: number; readonly to: string }
  /** To one person alone: a part that the job used runs low. */
  | { readonly kind: 'low'; readonly seq: number; readonly to: string }
  /** A question that no longer stands gets its answer and loses its buttons. `of`: the saying, with the entries that answered it. */
  | { readonly kind: 'close'; readonly of: string; readonly after: number; readonly to: number }
  /** The head is drawn anew. */
  | { readonly kind: 'redraw' };

/** What a platform draws. */
export type Content =
  | { readonly kind: 'head' }
  | { readonly kind: 'question' }
  | { readonly kind: 'event'; readonly line: TicketLine; readonly mention: readonly string[] }
  | { readonly kind: 'verdict'; readonly verdict: Conclusion }
  | { readonly kind: 'picture'; readonly title: string; readonly text: string; readonly png: Uint8Array }
  /** `reviews`: a senior’s words are theirs to give. */
  | { readonly kind: 'attention'; readonly line: TicketLine; readonly to: string; readonly reviews: boolean }
  | { readonly kind: 'low'; readonly stock: LowStock; readonly to: string }
  /** Empty lines: it fell before anybody answered. */
  | { readonly kind: 'closed'; readonly lines: readonly TicketLine[] };

export interface Spoken {
  /** The saying's id: whoever looks for it later finds it by this. */
  readonly id: string;
  readonly job: string;
  readonly view: JobView;
  /** Where the head of this job's thread stands; null for the head itself. */
  readonly under: string | null;
  readonly content: Content;
}

/** What a platform can do. Places are its own words; nobody else reads them. */
export interface Voice {
  /** Its name: `slack`. In the store, in ids, in client ids. */
  readonly chat: string;
  /** Says it and gives the place where it stands. Throws Later, Never; anything else leaves open whether it stands. */
  say(spoken: Spoken): Promise<string>;
  /** Where it stands, if it does: whoever said it was interrupted. */
  find(spoken: Spoken): Promise<string | null>;
  /** Draws what stands there anew. */
  draw(place: string, spoken: Spoken): Promise<void>;
}

/** It was surely not taken, and may be sent again after so many milliseconds: nothing at all is sent before. */
export class Later extends Error {
  override name = 'Later';
  readonly ms: number;
  constructor(what: string, ms: number) {
    super(what);
    this.ms = ms;
  }
}
/** It will not be taken, however often it is sent. */
export class Never extends Error {
  override name = 'Never';
}
