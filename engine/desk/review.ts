/** The review desk: which jobs a senior reads next, and why. */
import type { BoardRow, QueueMark, Store } from '../store/port.ts';
import { isUnreadable, unreadable } from './card.ts';
import { may } from './rights.ts';
import type { KeptCard } from './summary.ts';
import { NoRight, type Person, type ReviewCard, type ReviewDesk } from './types.ts';

interface ReviewParts {
  readonly store: Store;
  readonly personOf: (id: string) => Promise<Person>;
  /** The card of a line of the board, made anew where it was missing or old. */
  readonly cardIn: (row: BoardRow) => Promise<KeptCard & { readonly anew: boolean }>;
}

/** Jobs on one page of the queue. */
const PAGE = 20;
/** How often a page is read again because cards on it were made anew and may belong elsewhere. */
const READINGS = 50;
const NOBODY = { own: false, holder: false, gate: false, reason: false, participates: false };

export function createReview({ store, personOf, cardIn }: ReviewParts): ReviewDesk {
  const mustReview = async (id: string): Promise<void> => {
    const { roles } = await personOf(id);
    if (!may(roles, 'review', NOBODY)) throw new NoRight('Only a senior or the owner reviews jobs.');
  };
  const cardOf = async (row: BoardRow): Promise<{ card: ReviewCard; anew: boolean }> => {
    try {
      const { card, attention, anew } = await cardIn(row);
      return { card: { ...card, attention: [...attention] }, anew };
    } catch (error) {
      // One record that can't be read hides no other, and is for a senior to know of.
      if (!isUnreadable(error)) throw error;
      return { card: { ...unreadable(row, error), attention: [] }, anew: false };
    }
  };

  return {
    async queue(by, after) {
      await mustReview(by);
      const mark = after === undefined ? null : markIn(after);
      for (let reading = 1; ; reading++) {
        const rows = await store.queue(mark, PAGE + 1);
        const shown = rows.slice(0, PAGE);
        const cards: Awaited<ReturnType<typeof cardOf>>[] = [];
        for (const row of shown) cards.push(await cardOf(row));
        // A card that was made anew may stand elsewhere in the queue, or not at all any more.
        if (cards.some(({ anew }) => anew) && reading < READINGS) continue;
        const last = shown.at(-1);
        return { jobs: cards.map(({ card }) => card), next: rows.length > PAGE && last ? written(last) : null };
      }
    },
  };
}

const written = ({ review, nr, updated }: QueueMark): string => `${review}.${nr}.${updated}`;
function markIn(text: string): QueueMark | null {
  const found = /^(\d{1,9})\.(\d{1,15})\.(\d{4}-[\d:.TZ-]{1,30})$/.exec(text);
  return found ? { review: Number(found[1]), nr: Number(found[2]), updated: found[3] ?? '' } : null;
}
