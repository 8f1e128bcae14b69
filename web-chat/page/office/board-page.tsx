/** The board: a rack of tickets by how they stand, the most urgent first; who is free; what runs out. */
import { useEffect, useState } from 'preact/hooks';
import type { Board, JobCard } from '../../../engine/desk/types.ts';
import { keepLooking, looking } from '../net/feed.ts';
import { Outdated, useOutdated } from '../outdated.tsx';
import { type BoardState, isOfOffice, isSenior } from '../state.ts';
import { BoardCard } from './board-card.tsx';
import { CrewPanel, LowPanel } from './crew-panel.tsx';
import { Finding } from './finding.tsx';
import { getBoard } from './net.ts';
import { TakeCall } from './take-call.tsx';

/** Cards of one column that are drawn at first, and more of at a time. */
const SHOWN = 30;

const COLUMNS: readonly { readonly title: string; readonly holds: (card: JobCard) => boolean }[] = [
  { title: 'Emergency', holds: ({ alarm, state }) => alarm !== null || state === 'emergency' },
  { title: 'On the line', holds: ({ state }) => state === 'taking' },
  { title: 'Nobody has it', holds: ({ begun, assigned, state }) => openYet(state) && !begun && assigned.length === 0 },
  { title: 'Given out', holds: ({ begun, state }) => openYet(state) && !begun },
  { title: 'Under way', holds: ({ state }) => state === 'under-way' },
  { title: 'Waits', holds: ({ state }) => state === 'held' || state === 'paused' || state === 'unreadable' },
  { title: 'To be signed', holds: ({ state }) => state === 'finished' },
  { title: 'Signed', holds: ({ state }) => state === 'signed' },
];
const openYet = (state: JobCard['state']): boolean => state === 'under-way';

export function BoardPage({ me, build, board: first }: BoardState) {
  const [board, setBoard] = useState<Board>(first);
  const [old, setOld] = useState(false);
  const [live, setLive] = useState(false);
  const outdated = useOutdated(build);
  const office = isOfOffice(me);
  const [look] = useState(() =>
    looking(getBoard, (got) => {
      setOld(!got.ok);
      if (got.ok) setBoard(got.value);
    }),
  );
  useEffect(() => {
    setLive(true);
    const target = decodeURIComponent(location.hash.slice(1));
    if (target !== '') document.getElementById(`card-${target}`)?.querySelector('a')?.focus();
    return keepLooking(look, () => setOld(true));
  }, []);
  const columns = byColumn(board.jobs);
  return (
    <main class="office" data-live={live}>
      <header class="heading">
        <h1>{office ? 'Board' : 'My day'}</h1>
        <nav class="row" aria-label="Elsewhere">
          <a class="key" href="/">
            Calls
          </a>
          {office && (
            <a class="key" href="/shop">
              Crew and shop
            </a>
          )}
          {isSenior(me) && (
            <a class="key" href="/review">
              Review
            </a>
          )}
        </nav>
        {office && <TakeCall />}
        {old && <p role="status">No contact. This board may be old.</p>}
        {outdated && <Outdated />}
      </header>
      <Finding />
      <div class="rack">
        {columns.map((column) => (
          <Column key={column.title} {...column} board={board} gives={office} onGiven={look} />
        ))}
      </div>
      <CrewPanel board={board} />
      {office && <LowPanel low={board.low} />}
    </main>
  );
}

interface ColumnProps {
  readonly title: string;
  readonly cards: readonly JobCard[];
  readonly board: Board;
  readonly gives: boolean;
  readonly onGiven: () => void;
}
function Column({ title, cards, ...more }: ColumnProps) {
  const [shown, setShown] = useState(SHOWN);
  const rest = cards.length - shown;
  return (
    <section class="column" aria-label={title}>
      <h2>
        {title} <small>{cards.filter(({ training }) => !training).length}</small>
      </h2>
      {cards.slice(0, shown).map((card) => (
        <BoardCard key={card.job} card={card} {...more} />
      ))}
      {rest > 0 && (
        <button type="button" class="key wide" onClick={() => setShown(shown + SHOWN)}>
          {`Show ${Math.min(rest, SHOWN)} more of ${rest}`}
        </button>
      )}
    </section>
  );
}

/** Each card in the first column that holds it; columns with none are left out. */
function byColumn(jobs: readonly JobCard[]): { title: string; cards: JobCard[] }[] {
  const columns = COLUMNS.map(({ title }) => ({ title, cards: [] as JobCard[] }));
  for (const card of jobs) columns[COLUMNS.findIndex(({ holds }) => holds(card))]?.cards.push(card);
  return columns.filter(({ cards }) => cards.length > 0);
}
