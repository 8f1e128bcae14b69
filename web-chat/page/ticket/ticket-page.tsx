/** A job: the strip, the ticket so far, the question, and the keys under the thumb. */
import { useState } from 'preact/hooks';
import type { GivenParts, Prompt, Reply } from '../../../engine/index.ts';
import { Conditions } from '../conditions.tsx';
import { clientId } from '../net/client-id.ts';
import { useAnswerTime, useSettled } from '../net/clock.ts';
import { PartsForm } from '../parts/parts-form.tsx';
import { questionKey, spelledOut } from '../parts/values.ts';
import { isSenior, type TicketState } from '../state.ts';
import { Answer, Change } from './change.tsx';
import { CloseOut } from './close-out.tsx';
import type { CommandKey } from './commands.ts';
import { Dock } from './dock.tsx';
import { Lines } from './lines.tsx';
import { NotSent } from './not-sent.tsx';
import { PromptCard } from './prompt-card.tsx';
import { Strip } from './strip.tsx';
import { useDraft } from './use-draft.ts';
import { useJob } from './use-job.ts';
import { useLeadEye, useShowUp } from './use-lead-eye.ts';

type Bare<T> = T extends Reply ? Omit<T, 'client' | 'said'> : never;

export function TicketPage({ me, view: first }: TicketState) {
  const job = useJob(first);
  const { view, again, refusal, sending } = job;
  const prompt = again ?? view.prompt;
  const answeredAt = useAnswerTime(view.now);
  const { values, setValues, typed, setTyped } = useDraft(first.job, prompt, {
    refusal,
    unsent: job.unsent,
    onUnsent: job.restoreUnsent,
  });
  const [lost, setLost] = useState('');
  const [reason, setReason] = useState('');
  const { heading, lead } = useLeadEye(questionKey(prompt));
  const info = useShowUp<HTMLDivElement>(job.info);

  const reply = async (bare: Bare<Reply>): Promise<boolean> => {
    const had = spelledOut(prompt, values);
    lead();
    setReason('');
    const taken = await job.send({ ...bare, client: clientId(), said: answeredAt() } as Reply);
    setLost(taken ? '' : had);
    return taken;
  };
  const sendParts = (parts: GivenParts) => {
    const { seq, amends } = prompt;
    const why = reason.trim() === '' ? {} : { reason: reason.trim() };
    void reply(amends === null ? { kind: 'answer', seq, parts } : { kind: 'amend', of: amends, parts, ...why });
  };
  const sendText = (text: string): Promise<boolean> => {
    const draft = refusal?.draft ?? {};
    return reply({
      kind: 'text',
      seq: prompt.seq,
      text,
      ...(prompt.amends === null ? {} : { amends: prompt.amends }),
      ...(Object.keys(draft).length === 0 ? {} : { draft }),
    });
  };
  const sendTyped = async (): Promise<void> => {
    if (typed.trim() !== '' && !sending && (await sendText(typed.trim()))) setTyped('');
  };
  const command = (name: CommandKey['name'], words: string) =>
    void reply({ kind: 'command', name, ...(words === '' ? {} : { text: words }) });
  const takeBack = (reason: string) =>
    void reply({ kind: 'withdraw', of: prompt.amends ?? 0, ...(reason === '' ? {} : { reason }) });
  const holder = prompt.holder !== null && prompt.holder !== me.id ? prompt.holder : null;

  return (
    <div class="ticket" data-live={useSettled()}>
      <Strip view={view} contact={job.contact} onStale={job.refresh} />
      <main>
        <header class="heading">
          <h1>{view.title}</h1>
          <a class="key" href="/">
            Calls
          </a>
          {view.training && <p class="stamp">Training: never counts</p>}
        </header>
        <Lines view={view} onChange={(seq) => void reply({ kind: 'command', name: 'back', of: seq })} />
        {job.info && (
          <div class="info" role="status" ref={info}>
            {job.info.map((line, i) => (
              <p key={i}>{line}</p>
            ))}
          </div>
        )}
        <PromptCard prompt={prompt} view={view} heading={heading}>
          {refusal?.code === 'stale' && lost !== '' && <p class="lost">{`Not kept. You had: ${lost}`}</p>}
          <PartsForm
            key={questionKey(prompt)}
            prompt={holder === null ? prompt : withoutParts(prompt)}
            values={values}
            refusal={refusal}
            disabled={sending}
            onValues={setValues}
            onParts={sendParts}
            onLine={sendText}
          />
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
          {view.question !== null && !again && (
            <Answer disabled={sending} onSend={(words) => command('reply', words)} />
          )}
          <NotSent job={job} />
        </PromptCard>
        <CloseOut summary={view.summary} />
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
        onTyped={setTyped}
        onSend={() => void sendTyped()}
        onCommand={({ name }, words) => command(name, words)}
      />
    </div>
  );
}

/** Another person's lock: what is asked is shown, and nothing to answer it with. */
const withoutParts = (prompt: Prompt): Prompt => ({ ...prompt, parts: [], line: null });
