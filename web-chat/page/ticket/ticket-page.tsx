/** A job: the strip, the ticket so far, the question, and the keys under the thumb. */
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Prompt } from '../../../engine/index.ts';
import { Conditions } from '../conditions.tsx';
import { forgetPhotos } from '../kept/photo-draft.ts';
import { type KeptReply, openShelf } from '../kept/shelf.ts';
import { useSettled } from '../net/clock.ts';
import { useOutdated } from '../outdated.tsx';
import { PartsForm } from '../parts/parts-form.tsx';
import { questionKey } from '../parts/values.ts';
import { BRIEF_COOKIE, isSenior, type TicketState } from '../state.ts';
import { forgetPages } from '../worker/register.ts';
import { Answer, Change } from './change.tsx';
import { CloseOut } from './close-out.tsx';
import { Dock } from './dock.tsx';
import { Fell, Lines, notBegun } from './lines.tsx';
import { CameBack, Unheard, Unsent, waitingOf } from './on-phone.tsx';
import { PromptCard } from './prompt-card.tsx';
import { Strip } from './strip.tsx';
import { Unsure } from './unsure.tsx';
import { useDraft } from './use-draft.ts';
import { useGiving } from './use-giving.ts';
import { useJob } from './use-job.ts';
import { useLeadEye, useShowUp } from './use-lead-eye.ts';

export function TicketPage({ me, view: first, build, brief: wasBrief }: TicketState) {
  const job = useJob(first, me.id);
  const { view, again, refusal, sending } = job;
  const prompt = again ?? view.prompt;
  const draft = useDraft({ job: first.job, person: me.id, prompt, standing: view.prompt, refusal });
  const { typed, setTyped } = draft;
  const [brief, setBrief] = useState(wasBrief);
  const { heading, lead } = useLeadEye(questionKey(prompt), notBegun(first));
  const info = useShowUp<HTMLDivElement>(job.info);
  const outdated = useOutdated(build);
  const waiting = waitingOf(job);
  const answered = again ? undefined : waiting.find(({ reply }) => reply.kind === 'answer' && reply.seq === prompt.seq);

  // Whoever was signed out, or their shop, wants nothing of theirs left here but what was never sent.
  const signedOut = job.trouble?.why === 'signed-out' || job.outbox.trouble?.why === 'signed-out';
  useEffect(() => {
    if (signedOut)
      void Promise.all([forgetPages(), openShelf().then((shelf) => shelf.forgetViews(null)), forgetPhotos(null)]);
  }, [signedOut]);

  const { sendParts, sendText, command, takeBack, open, lost, reason, setReason } = useGiving({
    job,
    me,
    prompt,
    draft,
    lead,
  });
  const sendTyped = async (): Promise<void> => {
    const line = typed.trim();
    if (line === '' || sending) return;
    // Whoever typed on meanwhile keeps what was typed: only the line that went is taken away.
    if (await sendText(line)) setTyped((now) => (now.trim() === line ? '' : now));
    else refused.current = line;
  };
  // What was refused stays to be put right, and goes with its question: the next one is not answered by it.
  const refused = useRef('');
  const stands = questionKey(view.prompt);
  useEffect(() => {
    if (refused.current !== '' && refused.current === typed.trim()) setTyped('');
    refused.current = '';
  }, [stands]);
  const fill = (kept: KeptReply) => refill(kept, prompt, { ...draft, drop: job.outbox.drop });
  const setWords = (few: boolean) => {
    // biome-ignore lint/suspicious/noDocumentCookie: the Cookie Store API is not in every browser yet.
    document.cookie = `${BRIEF_COOKIE}=${few ? 1 : 0}; path=/; max-age=31536000; samesite=lax`;
    setBrief(few);
  };
  const holder = prompt.holder !== null && prompt.holder !== me.id ? prompt.holder : null;
  const shut = holder !== null || answered !== undefined;

  const card = (
    <PromptCard
      prompt={prompt}
      view={view}
      heading={heading}
      brief={brief}
      reply={<Answer disabled={sending} onSend={(words) => command({ name: 'reply', label: 'Reply' }, words)} />}
    >
      <CameBack job={job} again={fill} />
      {refusal?.code === 'stale' && lost !== '' && <p class="lost">{`Not kept. You had: ${lost}`}</p>}
      {!job.contact && prompt.kind === 'step' && !shut && <p class="lost">{WITHOUT_CONTACT}</p>}
      <PartsForm
        key={questionKey(prompt)}
        prompt={shut ? { ...prompt, parts: [], line: null } : prompt}
        values={draft.values}
        photos={draft.photos}
        refusal={refusal}
        disabled={sending}
        onValues={draft.setValues}
        onPhotos={draft.setPhotos}
        onParts={sendParts}
        onLine={sendText}
      />
      {answered && <p class="holder">Answered on this phone, not sent. It stands below.</p>}
      {holder !== null && (
        <p class="holder">{`Only ${view.people[holder]?.name ?? holder} answers here: it is their lock.`}</p>
      )}
      {again && (
        <Change
          disabled={sending}
          reason={isSenior(me) ? reason : null}
          onReason={setReason}
          onLeave={job.leaveAgain}
          onTakeBack={takeBack}
        />
      )}
      <Unsure job={job} />
      <Unsent job={job} />
    </PromptCard>
  );
  // Hundreds of lines are not drawn anew at each keystroke.
  const opens = useRef(open);
  opens.current = open;
  const lines = useMemo(() => <Lines view={view} changing={null} onChange={(seq) => opens.current(seq)} />, [view]);
  const inPlace = again?.amends != null && view.ticket.some(({ seq }) => seq === again.amends);
  return (
    <div class="ticket" data-live={useSettled()}>
      <Strip
        view={view}
        received={job.received}
        contact={job.contact}
        waiting={waiting.length}
        outdated={outdated}
        onStale={job.refresh}
      />
      <main>
        <header class="heading">
          <h1>{view.title}</h1>
          <a class="key" href="/">
            Calls
          </a>
          {view.call?.vulnerable != null && (
            <p class="there">
              <strong>At the address:</strong> {view.call.vulnerable}
            </p>
          )}
          {view.training && <p class="stamp">Training: never counts</p>}
        </header>
        {inPlace ? <Lines view={view} changing={{ seq: again.amends ?? 0, card }} onChange={open} /> : lines}
        <Fell lines={job.fell} />
        <Unheard job={job} />
        {job.info && (
          <div class="info" role="status" ref={info}>
            {job.info.map((line, i) => (
              <p key={i}>{line}</p>
            ))}
          </div>
        )}
        {!inPlace && card}
        <CloseOut view={view} me={me} />
        {isSenior(me) && (
          <p class="row">
            <a class="key" href={`/review/${encodeURIComponent(view.job)}`}>
              Review
            </a>
            <a class="key" href={`/api/jobs/${encodeURIComponent(view.job)}/export`} download>
              The record as a file
            </a>
          </p>
        )}
        <Conditions />
      </main>
      <p class="unseen" role="status">
        {sending
          ? 'Sending'
          : `${prompt.title} ${prompt.isolation.map((line) => `${line.cabinet}: ${line.words}`).join('. ')}`}
      </p>
      <Dock
        view={view}
        me={me}
        typed={typed}
        disabled={sending}
        brief={brief}
        onBrief={setWords}
        onTyped={setTyped}
        onSend={() => void sendTyped()}
        onCommand={command}
      />
    </div>
  );
}

const WITHOUT_CONTACT =
  'No contact: what you answer now waits on this phone. It authorises nothing, and an isolation is proved again.';

/** Puts what came back where it may be given again. Never at a gate: there it is read anew, at the unit. */
function refill(
  { reply, order, back }: KeptReply,
  { class: kind }: Prompt,
  to: {
    readonly setTyped: (typed: string) => void;
    readonly drop: (order: number) => Promise<void>;
  },
): (() => void) | null {
  if (reply.kind !== 'text' || back?.code === 'gate' || kind === 'proving') return null;
  return () => {
    to.setTyped(reply.text);
    void to.drop(order);
  };
}
