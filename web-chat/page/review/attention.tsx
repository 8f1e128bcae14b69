import type { ReviewView } from '../../../engine/desk/types.ts';
import { focusOn } from './use-keys.ts';

/** The line of the conversation in which an entry stands. */
export const entryId = (seq: number): string => `entry-${seq}`;

/** Leads to an entry instead of only scrolling there: the keyboard goes on from it. */
export const EntryLink = ({ seq, words }: { seq: number; words: string }) => (
  <a
    href={`#${entryId(seq)}`}
    onClick={(event) => {
      event.preventDefault();
      focusOn(entryId(seq));
    }}
  >
    {words}
  </a>
);

/** What a senior should look at, each thing linked to its entry. */
export const AttentionList = ({ items }: { items: ReviewView['attention'] }) => (
  <section class="attention" aria-labelledby="attention">
    <h2 id="attention" tabIndex={-1}>
      What needs attention
    </h2>
    {items.length === 0 ? (
      <p>Nothing stands out. Read it all the same.</p>
    ) : (
      <ul>
        {items.map(({ head, words, seq }, i) => (
          <li key={`${seq} ${i}`}>
            <strong>{head}</strong>
            <EntryLink seq={seq} words={`${words} (entry ${seq})`} />
          </li>
        ))}
      </ul>
    )}
  </section>
);
