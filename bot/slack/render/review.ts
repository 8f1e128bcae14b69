/** One call as a senior looks at it before a word that counts: what needs attention, what was found, what can be done. */
import type { KnownBlock, ModalView } from '@slack/types';
import type { ReviewView } from '../../../engine/desk/index.ts';
import type { CommandName } from '../../../engine/index.ts';
import { LIMITS } from '../limits.ts';
import { calloutBlocks } from './callouts.ts';
import { isolationBlock } from './isolation.ts';
import { notice } from './modals.ts';
import { marked, paragraphs, plain, within } from './text.ts';
import { orderButton } from './told.ts';

const NAMES: Readonly<Partial<Record<CommandName, string>>> = {
  release: 'Release',
  approve: 'Approve',
  ask: 'Ask',
  sign: 'Sign',
  'send back': 'Send back',
};
/** Things of each kind that are shown; all of them stand on the review desk. */
const SHOWN = 20;

/** `link`: signs this person in on the web and opens the review desk at this call. */
export function look({ view, attention, evidence, may }: ReviewView, link: string, thread: string | null): ModalView {
  const { prompt, job, title } = view;
  const names = (id: string): string => view.people[id]?.name ?? id;
  const [items, left] = [attention.slice(0, SHOWN), attention.length - SHOWN];
  const readings = evidence.filter(({ findings }) => findings.length > 0).length;
  const blocks: KnownBlock[] = [
    ...calloutBlocks(prompt),
    { type: 'header', text: plain(title, LIMITS.header) },
    ...isolationBlock(prompt, names),
    ...paragraphs([
      ...(view.training ? ['Training: never counts.'] : []),
      `Now: ${prompt.title}`,
      ...prompt.verdicts.flatMap(({ title: found, says }) => [`Verdict: ${found}`, ...says]),
      ...(items.length === 0 ? ['Nothing needs attention.'] : ['Needs attention:']),
      ...items.map(({ head, words }) => `• ${head}: ${words}`),
      ...(left > 0 ? [`• and ${left} more, on the web`] : []),
      `${view.ticket.length} lines on the ticket, ${readings} with figures.`,
    ]),
    {
      type: 'actions',
      block_id: 'review',
      elements: [
        ...may.flatMap((name) => (NAMES[name] ? [orderButton(name, NAMES[name], job)] : [])),
        orderButton('note', 'Note', job),
      ],
    },
    {
      type: 'actions',
      block_id: 'desk',
      elements: [
        {
          type: 'button',
          action_id: 'link',
          text: plain('Conversation and evidence, on the web', LIMITS.button),
          url: link,
        },
      ],
    },
    ...(thread === null ? [] : [{ type: 'context' as const, elements: [marked(`<${thread}|Open the thread>`)] }]),
  ];
  return { ...notice('Review', []), blocks: within(blocks) };
}
