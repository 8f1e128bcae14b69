/** The isolation strip: what is proved, by whom, since when, for how long. Always in view, right without colour. */
import { useEffect, useRef } from 'preact/hooks';
import type { JobView } from '../../../engine/desk/types.ts';
import type { IsolationLine } from '../../../engine/index.ts';
import { type Received, useServerTime, useSettled } from '../net/clock.ts';
import { Outdated } from '../outdated.tsx';
import { clockTime } from './time.ts';

const NOT_PROVED = 'ENERGIZED OR NOT PROVED';
const MINUTE = 60_000;
/** Minutes under which seconds are shown. */
const SHORT = 5;

interface StripProps {
  readonly view: JobView;
  readonly received: Received;
  readonly contact: boolean;
  /** How many replies are on this phone alone. */
  readonly waiting: number;
  /** The server is of another build than this page. */
  readonly outdated: boolean;
  /** Called once when an isolation passes its time, so that the server's view follows. */
  readonly onStale: () => void;
}

export function Strip({ view, received, contact, waiting, outdated, onStale }: StripProps) {
  const time = useServerTime(view.now, received);
  const lines = view.prompt.isolation.map((line) => ({ line, left: leftOf(line, time) }));
  const passed = lines.filter(({ left }) => left !== null && left < 0).map(({ line }) => line.until);
  useOnce(passed.join(' '), onStale);
  return (
    <section class="strip" aria-label="Isolation">
      {lines.map(({ line, left }) => (
        <Line key={line.cabinet} line={line} left={left} people={view.people} />
      ))}
      {!contact && <p class="contact">No contact. What you see may be old. Treat it as not proved.</p>}
      {waiting > 0 && (
        <p class="contact">{`${waiting} ${waiting === 1 ? 'reply is' : 'replies are'} on this phone alone, not sent.`}</p>
      )}
      {outdated && <Outdated />}
    </section>
  );
}

function Line({ line, left, people }: { line: IsolationLine; left: number | null; people: JobView['people'] }) {
  const settled = useSettled();
  const stale = left !== null && left < 0;
  const state = stale ? 'not-proved' : line.state;
  const holder = line.holder === null ? null : (people[line.holder]?.initials ?? line.holder);
  const since = line.since === null ? '' : ` since ${clockTime(line.since, settled)}`;
  const shown = !stale && (state === 'proved' || state === 'control-live');
  return (
    <div class="strip-line" data-state={state}>
      <span class="pattern" aria-hidden="true">
        {state === 'being-proved' && <Steps done={line.done} of={line.of} />}
      </span>
      <p>
        <span class="cabinet">{line.cabinet}</span> <strong>{stale ? NOT_PROVED : line.words}</strong>
        {shown && left !== null && <span class="left">{leftWords(left)}</span>}
        {shown && holder !== null && <span class="since">{`${holder}${since}`}</span>}
        {stale && (
          <span class="since" role="alert">
            Too old. Prove it again.
          </span>
        )}
      </p>
    </div>
  );
}

/** Its pattern is its progress. */
const Steps = ({ done, of }: { done: number; of: number }) => (
  <>
    {Array.from({ length: of }, (_, i) => (
      <i key={i} data-done={i < done} />
    ))}
  </>
);

/** Milliseconds an isolation still stands; on its deadline it still does. Null where nothing runs out. */
function leftOf({ state, until }: IsolationLine, time: number): number | null {
  return until === null || state === 'not-proved' ? null : Date.parse(until) - time;
}

function leftWords(left: number): string {
  const seconds = Math.floor(left / 1000);
  if (left >= SHORT * MINUTE) return `${Math.floor(left / MINUTE)}\u2009min left`;
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')} left`;
}

function useOnce(what: string, call: () => void): void {
  const told = useRef('');
  useEffect(() => {
    if (what === '' || told.current === what) return;
    told.current = what;
    call();
  }, [what, call]);
}
