import { useId, useState } from 'preact/hooks';
import type { JobCard } from '../../../engine/desk/types.ts';
import { postFind } from './net.ts';
import { pageOf } from './where.ts';

/** Calls by caller, place, unit or verdict, the closed ones too. */
export function Finding() {
  const id = useId();
  const [words, setWords] = useState('');
  const [found, setFound] = useState<readonly JobCard[] | null>(null);
  const [trouble, setTrouble] = useState(false);
  const find = async (event: Event): Promise<void> => {
    event.preventDefault();
    if (words.trim() === '') return setFound(null);
    const got = await postFind(words);
    setTrouble(!got.ok);
    if (got.ok) setFound(got.value);
  };
  return (
    <search>
      <form class="finding" onSubmit={(event) => void find(event)}>
        <label for={id}>Find a call: caller, number, place, unit, marking, verdict</label>
        <div class="row">
          <input
            id={id}
            type="search"
            value={words}
            maxLength={200}
            autocomplete="off"
            onInput={(event) => setWords(event.currentTarget.value)}
          />
          <button type="submit" class="key">
            Find
          </button>
        </div>
        {trouble && <p role="alert">No contact. Try it again.</p>}
        {found !== null && (
          <ul class="cards" aria-label="Found">
            {found.length === 0 && <li>Nothing has these words.</li>}
            {found.map((card) => (
              <li key={card.job}>
                <a href={pageOf(card)}>{card.title}</a>
                <p>{`${card.updated.slice(0, 10)}: ${card.verdict ?? card.where}`}</p>
              </li>
            ))}
          </ul>
        )}
      </form>
    </search>
  );
}
