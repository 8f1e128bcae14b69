/** What is told beside the questions: verdicts, what happened, what was answered, what waits for somebody. */
import type { KnownBlock } from '@slack/types';
import type { JobView, LowStock, TicketLine } from '../../../engine/desk/index.ts';
import type { CommandName, Conclusion, Finding } from '../../../engine/index.ts';
import { LIMITS } from '../limits.ts';
import { orderValue } from '../parse.ts';
import { isolationBlock, type Names } from './isolation.ts';
import { type Drawing, spoken } from './question.ts';
import { escaped, marked, paragraphs, plain, within } from './text.ts';

const WHO: Readonly<Record<Conclusion['who'], string | null>> = {
  junior: null,
  senior: 'A senior confirms this.',
  certified: 'A certified person decides this.',
};

export function verdict({ title, says, findings, next, who }: Conclusion): Drawing {
  const sources = new Set(findings.flatMap(({ source }) => (source === null ? [] : [source])));
  const confirms = WHO[who];
  const lines = [
    ...says,
    ...findings.flatMap(findingLines),
    ...[...sources].map((source) => `Source: ${source}`),
    ...next.map((text) => `→ ${text}`),
    ...(confirms === null ? [] : [confirms]),
  ];
  const head = `VERDICT: ${title}`;
  return {
    text: spoken([head, ...says]),
    blocks: within([{ type: 'section', text: marked(`*${escaped(head)}*`) }, ...paragraphs(lines)]),
  };
}
function findingLines({ name, reading, limits, doubt, word, text }: Finding): string[] {
  const figures = [
    reading,
    ...(limits === null ? [] : [`limits ${limits}`]),
    ...(doubt === null ? [] : [`with the meter’s doubt ${doubt}`]),
  ];
  return [`${name}: ${word.toUpperCase()} · ${figures.join(' · ')}`, text];
}

/** `mentions`: accounts that are called by it. */
export function event(line: TicketLine, names: Names, mentions: readonly string[]): Drawing {
  const called = mentions.map((account) => `<@${account}>`);
  const head = `${line.title}${line.by === 'nocool' ? '' : ` (${names(line.by)})`}`;
  const text = [escaped(head), ...called].join(' ');
  return {
    text: [text, spoken(line.says)].join('\n').slice(0, LIMITS.text),
    blocks: [
      { type: 'section', text: marked(`*${escaped(head)}* ${called.join(' ')}`.trim()) },
      ...paragraphs(line.says),
    ],
  };
}

/** The question with its answer in the place of its buttons. */
export function closed(lines: readonly TicketLine[], names: Names): Drawing {
  if (lines.length === 0) {
    const fell = 'This question fell before it was answered.';
    return { text: fell, blocks: [{ type: 'context', elements: [marked(fell)] }] };
  }
  const head = lines.map(({ title }) => title);
  const said = lines.map(({ says, by }) => `✓ ${says.length === 0 ? 'Answered' : says.join(' · ')} (${names(by)})`);
  return {
    text: spoken([...head, ...said]),
    blocks: [...paragraphs(head).map(asContext), ...paragraphs(said)],
  };
}
const asContext = (block: KnownBlock): KnownBlock =>
  block.type === 'section' && block.text ? { type: 'context', elements: [block.text] } : block;

/** To one person: what waits, where, and what they can do about it from here. */
export function attention(
  { line, reviews }: { readonly line: TicketLine; readonly reviews: boolean },
  view: JobView,
  names: Names,
  thread: string | null,
): Drawing {
  const { prompt, job, title } = view;
  const head = `${title}: ${prompt.kind === 'finished' ? 'finished, to be signed' : line.title}`;
  const blocks: KnownBlock[] = [
    { type: 'section', text: marked(`*${escaped(head)}*`) },
    ...isolationBlock(prompt, names),
    ...paragraphs([...(prompt.kind === 'finished' ? [] : line.says), `Now: ${prompt.title}`]),
    {
      type: 'actions',
      block_id: 'review',
      elements: [
        ...seenButton(view),
        ...(reviews ? reviewButtons(job, prompt.kind) : [orderButton('note', 'Note', job)]),
      ],
    },
    ...(thread === null ? [] : [{ type: 'context' as const, elements: [marked(`<${thread}|Open the thread>`)] }]),
  ];
  return { text: spoken([head, `Now: ${prompt.title}`]), blocks };
}

/** To whom the shop's settings name: a part that was fitted leaves few of them. */
export function low({ truck, item, left, low: at }: LowStock, usedOn: string): Drawing {
  const lines = [`Low stock on ${truck}: ${item}, ${left} left. It is low at ${at}.`, `Used on: ${usedOn}`];
  return { text: spoken(lines), blocks: paragraphs(lines) };
}

/** Ends the saying again of an emergency: one tap, and the record says whose. */
const seenButton = ({ alarm, job }: JobView) =>
  alarm === null
    ? []
    : [
        {
          type: 'button' as const,
          action_id: 'order',
          text: plain('I have seen it', LIMITS.button),
          value: orderValue(job, 'seen'),
        },
      ];

/** What a senior can do with a call as it stands; each opens a form, so nothing happens by one tap. */
export function reviewButtons(job: string, kind: JobView['prompt']['kind']) {
  const may: readonly (readonly [CommandName, string])[] = [
    ...(kind === 'emergency' ? [['release', 'Release'] as const] : []),
    ...(kind === 'held' || kind === 'waiting' ? [['approve', 'Approve'] as const] : []),
    ...(kind === 'finished' ? [['sign', 'Sign'] as const, ['send back', 'Send back'] as const] : []),
    ...(kind === 'finished' || kind === 'signed' ? [] : [['ask', 'Ask'] as const]),
    ['note', 'Note'],
  ];
  return may.map(([name, label]) => orderButton(name, label, job));
}
/** Words after which a job goes on, or ends, on a senior's word: asked once before their form, and once by it. */
const WEIGHTY: Readonly<Partial<Record<CommandName, string>>> = {
  release: 'The emergency ends, and the job goes on from the lock. Only when everybody is safe.',
  approve: 'The job goes on by your word. You have looked at what it asks.',
  sign: 'You have read the record and stand for it.',
};
export function orderButton(name: CommandName, label: string, job: string) {
  const says = WEIGHTY[name];
  return {
    type: 'button' as const,
    action_id: `review.${name}`,
    text: plain(label, LIMITS.button),
    value: orderValue(job, name),
    ...(says === undefined
      ? {}
      : {
          confirm: {
            title: plain(`${label}?`, LIMITS.confirmTitle),
            text: plain(says, LIMITS.confirmText),
            confirm: plain(label, LIMITS.confirmButton),
            deny: plain('Not yet', LIMITS.confirmButton),
            ...(name === 'release' ? { style: 'danger' as const } : {}),
          },
        }),
  };
}
