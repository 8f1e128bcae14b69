/** The question that stands: what to do, what to beware of, what to answer. */
import type { ComponentChildren, Ref } from 'preact';
import type { JobView } from '../../../engine/desk/types.ts';
import type { Prompt } from '../../../engine/index.ts';
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

/** A line of a numbered list hangs on its number, so that it is found again where it is picked. */
function Line({ text }: { text: string }) {
  const [, number, words] = /^(\d+\.) (.*)$/s.exec(text) ?? [];
  if (number === undefined) return <p>{text}</p>;
  return (
    <p class="numbered">
      <strong>{number}</strong> <span>{words}</span>
    </p>
  );
}

interface CardProps {
  readonly prompt: Prompt;
  readonly view: JobView;
  readonly heading: Ref<HTMLHeadingElement | null>;
  /** Controls and what came back, under the question. */
  readonly children: ComponentChildren;
}

export function PromptCard({ prompt, view, heading, children }: CardProps) {
  const step = prompt.kind === 'step';
  return (
    <article class="card" data-kind={prompt.kind} data-again={prompt.amends !== null}>
      <p class="kicker">
        {prompt.amends === null ? prompt.progress.label : 'Changing an earlier answer'}
        {step && ` · ${CLASS[prompt.class]}`}
      </p>
      <Notices notices={prompt.notices} />
      <h2 ref={heading} tabIndex={-1}>
        {prompt.title}
      </h2>
      {prompt.callouts.map((callout) => (
        <Panel key={callout.text} {...callout} />
      ))}
      {prompt.body.length > 0 && (
        <div class="body">
          {prompt.body.map((text, i) => (
            <Line key={i} text={text} />
          ))}
        </div>
      )}
      {(prompt.kind === 'finished' || prompt.kind === 'signed') &&
        prompt.verdicts.map((verdict) => (
          <Verdict key={verdict.place} verdict={verdict} pictures={picturesOf(prompt, verdict.place)} />
        ))}
      <Pictures pictures={picturesOf(prompt, null)} />
      {view.question !== null && prompt.amends === null && (
        <div class="question">
          <p class="kicker">A senior asks</p>
          <p>{view.question}</p>
        </div>
      )}
      {children}
    </article>
  );
}
