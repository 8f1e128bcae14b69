/**
 * Emergencies, above whatever page a senior, a dispatcher or the owner looks at. It stays until this person has seen it,
 * and says itself again and again until then.
 */
import { useEffect, useRef, useState } from 'preact/hooks';
import type { AlarmLine } from '../../../engine/desk/types.ts';
import { getAlarms, postReply } from '../net/api.ts';
import { clientId } from '../net/client-id.ts';
import { listenToAll } from '../net/feed.ts';
import { Triangle } from '../ticket/panels.tsx';

/** Milliseconds after which it is said again, and looked for again where the feed says nothing. */
const AGAIN = 20_000;

export function Alarms() {
  const [alarms, setAlarms] = useState<readonly AlarmLine[]>([]);
  /** Raised each time it is said again: a screen reader reads what is drawn anew. */
  const [said, setSaid] = useState(0);
  const [trouble, setTrouble] = useState(false);
  const client = useRef<Record<string, string>>({});
  const look = async (): Promise<void> => {
    const got = await getAlarms();
    if (got.ok) setAlarms(got.value);
  };
  useEffect(() => {
    void look();
    const again = setInterval(() => {
      if (document.visibilityState !== 'visible') return;
      setSaid((n) => n + 1);
      void look();
    }, AGAIN);
    const stop = listenToAll({ news: () => void look(), contact: (there) => there && void look() });
    return () => {
      clearInterval(again);
      stop();
    };
  }, []);
  const waiting = alarms.filter(({ mine }) => !mine);
  useEffect(() => {
    const bare = document.title.replace(/^EMERGENCY · /, '');
    document.title = waiting.length > 0 ? `EMERGENCY · ${bare}` : bare;
  }, [waiting.length]);
  const seen = async ({ job, seq }: AlarmLine): Promise<void> => {
    const id = `${job} ${seq}`;
    client.current[id] ??= clientId();
    const sent = await postReply(job, { kind: 'command', client: client.current[id] ?? clientId(), name: 'seen' });
    setTrouble(!sent.ok);
    await look();
  };
  if (waiting.length === 0) return null;
  return (
    <section class="alarms" aria-label="Emergencies">
      <div role="alert" key={said}>
        {waiting.map((alarm) => (
          <div key={`${alarm.job} ${alarm.seq}`} class="panel" data-level="danger">
            <p class="signal">
              <Triangle />
              DANGER: EMERGENCY
            </p>
            <p>
              <a href={`/jobs/${encodeURIComponent(alarm.job)}`}>{alarm.title}</a>
              {`: ${HAZARDS[alarm.hazard]}, reported by ${alarm.by}. `}
              {alarm.seen.length === 0 ? 'Nobody has seen it yet.' : `Seen by ${alarm.seen.join(', ')}.`}
            </p>
            <p>
              <button type="button" class="key main" onClick={() => void seen(alarm)}>
                I have seen it
              </button>
            </p>
          </div>
        ))}
      </div>
      {trouble && <p class="refusal">Not sent. Press it again.</p>}
    </section>
  );
}

const HAZARDS: Readonly<Record<AlarmLine['hazard'], string>> = {
  shock: 'a shock',
  fire: 'fire',
  smoke: 'smoke',
  burning: 'something burns',
  explosion: 'an explosion',
  gas: 'gas is smelt',
  hurt: 'somebody is hurt',
  collapse: 'somebody collapsed',
  heat: 'heat stroke',
  refrigerant: 'refrigerant leaks',
  other: 'an emergency',
};
