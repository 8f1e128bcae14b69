/** The head of a job's thread: its summary with the isolation, drawn anew as the job goes on. */
import type { KnownBlock } from '@slack/types';
import type { JobView } from '../../../engine/desk/index.ts';
import { LIMITS } from '../limits.ts';
import { orderValue } from '../parse.ts';
import { callLines } from './call.ts';
import { dangers } from './callouts.ts';
import { isolationBlock, isolationWords, type Names } from './isolation.ts';
import { type Drawing, spoken } from './question.ts';
import { escaped, marked, paragraphs, plain } from './text.ts';

const STATES: Readonly<Partial<Record<JobView['prompt']['kind'], string>>> = {
  emergency: 'EMERGENCY',
  held: 'HELD, a senior is needed',
  waiting: 'WAITING FOR A SENIOR',
  paused: 'PAUSED',
  stopping: 'STOPPING',
  'taking-over': 'CHANGING HANDS',
  finished: 'FINISHED, to be signed',
  signed: 'SIGNED',
};

export function head(view: JobView, names: Names, webUrl: string): Drawing {
  const { prompt, title, training, job } = view;
  const state = STATES[prompt.kind] ?? 'Under way';
  const assigned = view.ticket.findLast(({ kind }) => kind === 'assigned' || kind === 'handed-over')?.says ?? [];
  const verdicts = prompt.verdicts.map((v) => `Verdict: ${v.title}`);
  const lines = [
    ...(training ? ['Training: never counts.'] : []),
    `${state} · ${prompt.progress.label}`,
    ...callLines(view.call),
    ...(assigned.length === 0 ? ['Nobody is assigned.'] : [`Crew: ${assigned.join(', ').replace(/^to /, '')}`]),
    ...(prompt.kind === 'finished' || prompt.kind === 'signed' ? [] : [`Now: ${prompt.title}`]),
    ...verdicts,
  ];
  const danger = prompt.kind === 'emergency' ? dangers(prompt).map((text) => `DANGER: ${text}`) : [];
  const blocks: KnownBlock[] = [
    ...paragraphs(danger),
    { type: 'header', text: plain(title, LIMITS.header) },
    ...isolationBlock(prompt, names),
    ...paragraphs(lines),
    ...(prompt.kind === 'signed'
      ? []
      : [
          {
            type: 'actions' as const,
            block_id: 'head',
            elements: [
              {
                type: 'button' as const,
                action_id: 'give',
                text: plain(assigned.length === 0 ? 'Who goes' : 'Hand over', LIMITS.button),
                value: orderValue(job, 'hand over'),
              },
            ],
          },
        ]),
    {
      type: 'context',
      elements: [
        marked(
          `Answer in this thread. <${new URL(`/jobs/${encodeURIComponent(job)}`, webUrl).href}|The same call on the web>${escaped('')}`,
        ),
      ],
    },
  ];
  return { text: spoken([...danger, title, isolationWords(prompt), ...lines]), blocks };
}
