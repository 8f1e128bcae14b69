/**
 * Emergencies, above whatever page a senior, a dispatcher or the owner looks at. It says itself again and again until
 * somebody has seen it; that counts for the emergency. The others then see who it was, until they have seen it too.
 * Under them, for seniors and owners, where somebody waits for an approval: by the same feed, and in the title.
 */
import { useEffect, useRef, useState } from 'preact/hooks';
import type { AlarmLine, AwaitedLine } from '../../../engine/desk/types.ts';
import { getAlarms, getAwaited, postReply } from '../net/api.ts';
import { clientId } from '../net/client-id.ts';
import { listenToAll, looking } from '../net/feed.ts';
import { Triangle } from '../ticket/panels.tsx';
import { useRoomAbove } from './above.ts';
import { Awaited } from './awaited.tsx';

/** Milliseconds after which it is said again, and looked for again where the feed says nothing. */
const AGAIN = 20_000;
/** Milliseconds after which it is asked for again where the server was too busy. */
const SOON = 1_000;

export function Alarms({ senior }: { readonly senior: boolean }) {
  const [alarms, setAlarms] = useState<readonly AlarmLine[]>([]);
  const [awaited, setAwaited] = useState<readonly AwaitedLine[]>([]);
  /** Raised each time it is said again: a screen reader reads what is drawn anew. */
  const [said, setSaid] = useState(0);
  const [trouble, setTrouble] = useState(false);
  const client = useRef<Record<string, string>>({});
  const [look] = useState(() => {
    const emergencies = looking(getAlarms, (got) => got.ok && setAlarms(got.value), SOON);
    const approvals = looking(getAwaited, (got) => got.ok && setAwaited(got.value), SOON);
    return () => {
      emergencies();
      if (senior) approvals();
    };
  });
  useEffect(() => {
    look();
    const again = setInterval(() => {
      if (document.visibilityState !== 'visible') return;
      setSaid((n) => n + 1);
      look();
    }, AGAIN);
    const stop = listenToAll({ news: look, contact: (there) => there && look() });
    return () => {
      clearInterval(again);
      stop();
    };
  }, []);
  useRoomAbove();
  const waiting = alarms.filter(({ mine }) => !mine);
  const [unseen, seen] = [
    waiting.filter((alarm) => heardBy(alarm).length === 0),
    waiting.filter((alarm) => heardBy(alarm).length > 0),
  ];
  useEffect(() => {
    const bare = document.title.replace(/^(EMERGENCY · )?(\(\d+\) )?/, '');
    const counted = awaited.length > 0 ? `(${awaited.length}) ${bare}` : bare;
    document.title = unseen.length > 0 ? `EMERGENCY · ${counted}` : counted;
  }, [unseen.length, awaited.length]);
  const see = async ({ job, seq }: AlarmLine): Promise<void> => {
    const id = `${job} ${seq}`;
    client.current[id] ??= clientId();
    const sent = await postReply(job, { kind: 'command', client: client.current[id] ?? clientId(), name: 'seen' });
    setTrouble(!sent.ok);
    look();
  };
  const panels = (of: readonly AlarmLine[]) =>
    of.map((alarm) => <AlarmPanel key={`${alarm.job} ${alarm.seq}`} alarm={alarm} onSeen={() => void see(alarm)} />);
  const approvals = awaited.length > 0 && <Awaited lines={awaited} />;
  if (waiting.length === 0) return approvals || null;
  return (
    <>
      <section class="alarms" aria-label="Emergencies">
        {unseen.length > 0 && (
          <div role="alert" key={said}>
            {panels(unseen)}
          </div>
        )}
        {seen.length > 0 && <div role="status">{panels(seen)}</div>}
        {trouble && <p class="refusal">Not sent. Press it again.</p>}
      </section>
      {approvals}
    </>
  );
}

/** Whoever reported it knew: that nobody else did is the danger. */
const heardBy = ({ seen, by }: AlarmLine): string[] => seen.filter((name) => name !== by);

const AlarmPanel = ({ alarm, onSeen }: { readonly alarm: AlarmLine; readonly onSeen: () => void }) => (
  <div class="panel" data-level="danger">
    <p class="signal">
      <Triangle />
      DANGER: EMERGENCY
    </p>
    <p>
      <a href={`/jobs/${encodeURIComponent(alarm.job)}`}>{alarm.title}</a>
      {`: ${HAZARDS[alarm.hazard]}, reported by ${alarm.by}. `}
      {heardBy(alarm).length === 0 ? 'Nobody has seen it yet.' : `Seen by ${heardBy(alarm).join(', ')}.`}
    </p>
    <p>
      <button type="button" class={heardBy(alarm).length === 0 ? 'key main' : 'key'} onClick={onSeen}>
        {heardBy(alarm).length === 0 ? 'I have seen it' : 'I have seen it too'}
      </button>
    </p>
  </div>
);

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
