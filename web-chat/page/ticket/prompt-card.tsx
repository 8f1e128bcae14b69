/** The question that stands: what to do, what to beware of, what to answer. */
import type { ComponentChildren, Ref } from 'preact';
import type { JobView } from '../../../engine/desk/types.ts';
import type { Prompt } from '../../../engine/index.ts';
import { Body } from './body.tsx';
import { Hold } from './hold.tsx';
import { Notices, Panel } from './panels.tsx';
import { Pictures, picturesOf } from './pictures.tsx';
import { Verdict } from './verdict.tsx';

const CLASS = {
  eyes: 'eyes only',
  proving: 'probes only',
  inside: 'hands inside',
  'control live': 'control live',
  live: 'line voltage present',
} as const;

interface CardProps {
  readonly prompt: Prompt;
  readonly view: JobView;
  readonly heading: Ref<HTMLHeadingElement | null>;
  /** Fewer words: what to beware of and what to answer stay, the rest is a tap away. */
  readonly brief: boolean;
  /** What a senior's question is answered by. */
  readonly reply: ComponentChildren;
  /** Controls and what came back, under the question. */
  readonly children: ComponentChildren;
}

export function PromptCard({ prompt, view, heading, brief, reply, children }: CardProps) {
  const step = prompt.kind === 'step';
  const pictures = picturesOf(prompt, null);
  // One picture is looked at; several, or one beside a list, are opened one by one.
  const open = !brief && (!step || (pictures.length === 1 && !prompt.body.some((text) => /^\d+\. /.test(text))));
  return (
    <article class="card" data-kind={prompt.kind} data-again={prompt.amends !== null}>
      <p class="kicker">
        {prompt.amends === null ? prompt.progress.label : 'Changing an earlier answer'}
        {step && ` · ${CLASS[prompt.class]}`}
      </p>
      {justDrawn(view).map((title) => (
        <p key={title} class="drawn">
          <strong>{title}</strong> It stands above.
        </p>
      ))}
      <Notices notices={prompt.notices} />
      <h2 ref={heading} tabIndex={-1}>
        {prompt.title}
      </h2>
      {prompt.callouts.map((callout) => (
        <Panel key={callout.text} {...callout} />
      ))}
      <Body lines={prompt.body} brief={brief && step} />
      {prompt.holdSeconds !== undefined && <Hold key={`${prompt.seq}`} seconds={prompt.holdSeconds} />}
      {/* The one that ended the call stands first: it says what to do now. */}
      {(prompt.kind === 'finished' || prompt.kind === 'signed') &&
        [...prompt.verdicts]
          .reverse()
          .map((verdict) => (
            <Verdict key={verdict.place} verdict={verdict} pictures={picturesOf(prompt, verdict.place)} />
          ))}
      <Pictures pictures={pictures} open={open} />
      {view.question !== null && prompt.amends === null && (
        <div class="question">
          <p class="kicker">A senior asks</p>
          <p>{view.question}</p>
          {reply}
        </div>
      )}
      {children}
    </article>
  );
}

/** Verdicts that the last answer led to: whoever gave it hears of them, and they stay to be read above. */
function justDrawn({ ticket, prompt }: JobView): string[] {
  if (prompt.kind === 'finished' || prompt.kind === 'signed') return [];
  const last = ticket.findLastIndex(({ kind }) => kind === 'answered' || kind === 'amended');
  return ticket.slice(last + 1).flatMap(({ kind, title }) => (kind === 'concluded' ? [`${title}.`] : []));
}
