import { useEffect, useState } from 'preact/hooks';
import type { Board, JobCard, JobView } from '../../../engine/desk/types.ts';
import { HowSoon } from '../jobs/how-soon.tsx';
import { getView } from '../net/api.ts';
import { useSettled } from '../net/clock.ts';
import { looking } from '../net/feed.ts';
import { clockTime } from '../ticket/time.ts';
import { Give } from './give.tsx';
import { isCall, pageOf } from './where.ts';

/** Lines of the ticket that are shown of a job that is followed. */
const LINES = 4;

interface CardProps {
  readonly card: JobCard;
  readonly board: Board;
  /** Whether this person may say who goes. */
  readonly gives: boolean;
  readonly onGiven: () => void;
}
/** One ticket of the rack: given out and followed without leaving it. */
export function BoardCard({ card, board, gives, onGiven }: CardProps) {
  const { job, title, urgency, causes, load, assigned } = card;
  const name = (id: string): string => board.crew.find((line) => line.id === id)?.name ?? id;
  const calling = isCall(card);
  const settled = useSettled();
  // What is asked first says nothing of a call on which nobody has begun.
  const fresh = card.state === 'under-way' && !card.begun;
  const over = card.state === 'finished' || card.state === 'signed';
  const given = ['under-way', 'held', 'paused', 'emergency'].includes(card.state);
  return (
    <article class="board-card" id={`card-${job}`} data-state={card.state}>
      <h3>
        <a href={pageOf(card)}>{title}</a>
      </h3>
      {calling && (
        <p>{`Since ${clockTime(card.opened, settled)}. Whoever opens it goes on with it, or puts it away.`}</p>
      )}
      {card.training && <p>Training: never counts.</p>}
      {!over && <HowSoon urgency={urgency} />}
      {!fresh && <p>{card.where}</p>}
      {card.verdict !== null && <p>{card.verdict}</p>}
      {card.begun && !calling && !over && <p>{card.isolation}</p>}
      {(causes.length > 0 || load.length > 0) && (
        <p>
          {causes.length > 0 && `Likely: ${causes.join(', ')}. `}
          {load.length > 0 && `Load: ${load.join(' ')}`}
        </p>
      )}
      {assigned.length > 0 && <p>{assigned.map(name).join(', ')}</p>}
      {gives && given && <Give card={card} crew={board.crew} onGiven={onGiven} />}
      {!calling && <Follow card={card} />}
    </article>
  );
}

/** What happens on a job, as it happens. */
function Follow({ card }: { card: JobCard }) {
  const [open, setOpen] = useState(false);
  const [view, setView] = useState<JobView | null>(null);
  const [look] = useState(() =>
    looking(
      () => getView(card.job),
      (got) => got.ok && setView(got.value),
    ),
  );
  useEffect(() => {
    if (open) look();
  }, [open, card.job, card.updated]);
  return (
    <details open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary class="key">Follow</summary>
      {view === null ? (
        <p>…</p>
      ) : (
        <div class="following">
          <p>
            <strong>{view.prompt.title}</strong>
          </p>
          {view.ticket.slice(-LINES).map(({ seq, title, says }) => (
            <p key={seq}>
              {title} <small>{says.join(' · ')}</small>
            </p>
          ))}
        </div>
      )}
    </details>
  );
}
