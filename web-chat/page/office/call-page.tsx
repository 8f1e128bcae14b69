/** A call with the caller on the line: one form after another, all by keyboard, and the board at the end. */
import { useEffect, useRef, useState } from 'preact/hooks';
import type { JobView, Known } from '../../../engine/desk/types.ts';
import type { GivenParts, Refusal } from '../../../engine/index.ts';
import { postReply, type Sent } from '../net/api.ts';
import { clientId } from '../net/client-id.ts';
import { Outdated, useOutdated } from '../outdated.tsx';
import { PartsForm } from '../parts/parts-form.tsx';
import { filledIn, questionKey, type Values } from '../parts/values.ts';
import type { CallState } from '../state.ts';
import { Notices, Panel } from '../ticket/panels.tsx';
import { KnownLines } from './known.tsx';
import { postKnown, postUnit } from './net.ts';

/** Milliseconds of silence before what was typed is looked up, and characters from which on it is. */
const [PAUSE, ENOUGH] = [250, 3];
const NOTHING: Known = { calls: [], units: [] };

export function CallPage({ build, view: first }: CallState) {
  const [view, setView] = useState(first);
  const [refusal, setRefusal] = useState<Refusal | null>(null);
  const [trouble, setTrouble] = useState<string | null>(null);
  const [busy, setBusy] = useState(false);
  const [known, setKnown] = useState<Known | null>(null);
  const [picked, setPicked] = useState<string | null>(null);
  const [live, setLive] = useState(false);
  const prompt = view.form ?? view.prompt;
  const key = questionKey(prompt);
  const [values, setValues] = useState<Values>(filledIn(prompt));
  // The same form pressed twice counts once; a changed one is another.
  const client = useRef<string | null>(null);
  const outdated = useOutdated(build);
  const form = useRef<HTMLDivElement>(null);
  const lookUp = useLookUp(setKnown);

  useEffect(() => setLive(true), []);
  useEffect(() => {
    form.current?.querySelector<HTMLElement>('input, select, textarea, button')?.focus();
  }, [key]);

  const took = (next: JobView): void => {
    if (next.opens !== null) {
      location.assign(`/board#${encodeURIComponent(next.opens)}`);
      return;
    }
    setView(next);
    const asked = next.form ?? next.prompt;
    if (questionKey(asked) !== key) {
      setValues(filledIn(asked));
      setKnown(null);
    }
  };
  const send = async (given: GivenParts): Promise<void> => {
    if (busy) return;
    // A form that is sent with nothing on it is a form all the same: all that is missing is named.
    const empty = Object.keys(given).length === 0 && prompt === view.form;
    const parts = empty ? { [prompt.parts[0]?.key ?? '']: '' } : given;
    client.current ??= clientId();
    setBusy(true);
    const sent = await postReply(view.job, { kind: 'answer', client: client.current, seq: prompt.seq, parts });
    setBusy(false);
    if (!sent.ok) return setTrouble(wordsOf(sent));
    client.current = null;
    setTrouble(null);
    setRefusal(sent.value.refusal);
    took(sent.value.view);
  };
  const change = (next: Values): void => {
    client.current = null;
    for (const part of prompt.parts) {
      const now = next[part.key];
      if (part.kind === 'note' && part.finds && typeof now === 'string' && now !== values[part.key]) lookUp(now);
    }
    setValues(next);
  };
  const pick = async (unit: string): Promise<void> => {
    const sent = await postUnit(view.job, unit, clientId());
    if (!sent.ok) return setTrouble(wordsOf(sent));
    setPicked(unit);
    setView(sent.value.view);
  };
  /** Without an end: the line went dead, or it was a wrong number. It is found again, and goes on where it was. */
  const putAway = async (): Promise<void> => {
    const sent = await postReply(view.job, { kind: 'command', client: clientId(), name: 'stop' });
    if (!sent.ok) return setTrouble(wordsOf(sent));
    if (sent.value.refusal) return setTrouble(sent.value.refusal.text);
    location.assign('/board');
  };
  const over = view.prompt.kind === 'finished' || view.prompt.kind === 'signed';

  return (
    <main class="office call" data-live={live}>
      <header class="heading">
        <h1>{view.title}</h1>
        <nav class="row" aria-label="Elsewhere">
          <a class="key" href="/board">
            Board
          </a>
          <a class="key" href={`/jobs/${encodeURIComponent(view.job)}`}>
            Change an answer
          </a>
          {!over && view.prompt.kind !== 'paused' && (
            <button type="button" class="key" onClick={() => void putAway()}>
              Line is gone: put it away
            </button>
          )}
        </nav>
        {view.training && <p>Training: never counts.</p>}
        {outdated && <Outdated />}
      </header>
      <section class="asking" aria-labelledby="asked">
        <h2 id="asked">{prompt.title}</h2>
        {prompt.callouts.map((callout) => (
          <Panel key={callout.text} {...callout} />
        ))}
        <Notices notices={prompt.notices} />
        {prompt.body.map((line) => (
          <p key={line}>{line}</p>
        ))}
        {trouble !== null && (
          <p class="refusal" role="alert">
            {trouble}
          </p>
        )}
        <div ref={form} key={key}>
          {over ? (
            <a class="key main wide" href="/board">
              To the board
            </a>
          ) : (
            <PartsForm
              prompt={prompt}
              values={values}
              photos={{}}
              refusal={refusal}
              disabled={busy}
              oneLine
              onValues={change}
              onPhotos={() => undefined}
              onParts={(parts) => void send(parts)}
              onLine={async () => false}
            />
          )}
        </div>
      </section>
      {known !== null && <KnownLines known={known} picked={picked} onPick={(unit) => void pick(unit)} />}
    </main>
  );
}

const wordsOf = (sent: Extract<Sent<unknown>, { ok: false }>): string =>
  sent.why === 'lost' ? 'Not sent: no contact with the server. Send it again; nothing typed is lost.' : sent.what;

/** Looks up what is being typed, once the fingers rest. An answer that comes late never hides a later one. */
function useLookUp(show: (known: Known) => void): (typed: string) => void {
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const turn = useRef(0);
  useEffect(() => () => clearTimeout(timer.current), []);
  return (typed) => {
    clearTimeout(timer.current);
    const mine = ++turn.current;
    timer.current = setTimeout(async () => {
      if (typed.trim().length < ENOUGH) return show(NOTHING);
      const got = await postKnown(typed);
      if (got.ok && mine === turn.current) show(got.value);
    }, PAUSE);
  };
}
