/** App Home: a person's calls; for those who take them, who is on the line; for a senior what is to be reviewed, by risk. */
import type { Button, HomeView, KnownBlock } from '@slack/types';
import type { Home, JobCard, LowStock, ReviewCard, ReviewQueue } from '../../../engine/desk/index.ts';
import { LIMITS } from '../limits.ts';
import { orderValue } from '../parse.ts';
import { cut, escaped, marked, paragraphs, plain, wallTime } from './text.ts';
import { reviewButtons } from './told.ts';

/** How many of each are shown: with a section each, and a row of buttons where they are reviewed, they fit on one page. */
const MOST = { taking: 5, review: 15, waits: 15, open: 20, low: 20 } as const;
type Thread = (job: string) => string | null;
const button = (action_id: string, label: string): Button => ({
  type: 'button',
  action_id,
  text: plain(label, LIMITS.button),
});

const KIND: Readonly<Partial<Record<JobCard['state'], 'emergency' | 'held' | 'finished' | 'signed'>>> = {
  emergency: 'emergency',
  held: 'held',
  finished: 'finished',
  signed: 'signed',
};
const STATE: Readonly<Record<JobCard['state'], string>> = {
  emergency: 'EMERGENCY',
  held: 'HELD',
  paused: 'PAUSED',
  finished: 'FINISHED, to be signed',
  signed: 'SIGNED',
  'under-way': 'Under way',
  unreadable: 'CAN’T BE READ',
  taking: 'BEING TAKEN',
  'put-away': 'Put away',
  taken: 'Taken',
};

/** `thread`: the address of a job's thread; null where it has none yet. */
export function home({ person, taking, review, waits, open, all, low }: Home, thread: Thread): HomeView {
  return {
    type: 'home',
    blocks: [
      { type: 'header', text: plain(`Calls of ${person.name}`, LIMITS.header) },
      {
        type: 'actions',
        block_id: 'top',
        elements: [
          ...(taking === null ? [] : [{ ...button('take-call', 'Take a call'), style: 'primary' as const }]),
          button('new-call', 'New call'),
          button('web', 'Sign in on the web'),
        ],
      },
      ...(taking === null || taking.length === 0 ? [] : onTheLine(taking)),
      ...(review === null ? [] : reviewed(review, thread)),
      ...(all && (review === null || waits.length > 0) ? listed('Needs attention', waits, thread, MOST.waits) : []),
      ...listed(all ? 'Open calls' : 'Your calls', open, thread, MOST.open),
      ...(low.length === 0 ? [] : lowStock(low)),
      {
        type: 'context',
        elements: [marked('Answer in a call’s thread, by buttons or by typing. */nocool help* says what works.')],
      },
    ],
  };
}

const title = (words: string, count: number | string): KnownBlock => ({
  type: 'header',
  text: plain(`${words} (${count})`, LIMITS.header),
});
const more = (left: number): KnownBlock[] =>
  left > 0 ? [{ type: 'section', text: plain(`And ${left} more, on the web.`) }] : [];
const none = (of: readonly unknown[]): KnownBlock[] =>
  of.length === 0 ? [{ type: 'section', text: plain('None.') }] : [];

function onTheLine(cards: readonly JobCard[]): KnownBlock[] {
  return [
    title('Being taken', cards.length),
    ...cards.slice(0, MOST.taking).map((card, n) => ({
      type: 'section' as const,
      text: marked(cardText(card, null)),
      accessory: { ...button(`call.go.${n}`, 'Go on'), value: card.job },
    })),
    ...more(cards.length - MOST.taking),
  ];
}
/** In the order in which a senior reads them, each with what needs attention. */
function reviewed({ jobs, next }: ReviewQueue, thread: Thread): KnownBlock[] {
  const shown = jobs.slice(0, MOST.review);
  const left = jobs.length - shown.length;
  return [
    title('To review', next === null ? jobs.length : `${jobs.length} and more`),
    ...shown.flatMap((card) => [
      { type: 'section' as const, text: marked(cardText(card, thread(card.job), attentionLines(card))) },
      { type: 'actions' as const, block_id: `review.${card.job}`, elements: buttonsOf(card) },
    ]),
    ...none(jobs),
    ...(next === null ? more(left) : [{ type: 'section' as const, text: plain('And more, on the web.') }]),
  ];
}
const attentionLines = ({ attention }: ReviewCard): string[] => [
  ...attention.slice(0, 3).map(({ head, words }) => `• ${head}: ${cut(words, 200)}`),
  ...(attention.length > 3 ? [`• and ${attention.length - 3} more`] : []),
];
function listed(name: string, cards: readonly JobCard[], thread: Thread, most: number): KnownBlock[] {
  return [
    title(name, cards.length),
    ...cards
      .slice(0, most)
      .map((card) => ({ type: 'section' as const, text: marked(cardText(card, thread(card.job))) })),
    ...none(cards),
    ...more(cards.length - most),
  ];
}
function lowStock(low: readonly LowStock[]): KnownBlock[] {
  const lines = low.map(({ truck, item, left }) => `${truck}: ${item}, ${left} left`);
  return [title('Low stock', low.length), ...paragraphs(lines.slice(0, MOST.low)), ...more(lines.length - MOST.low)];
}
/** An id of a control is unique on the page. */
const buttonsOf = (card: JobCard): Button[] =>
  [
    { ...button('look', 'Look'), value: orderValue(card.job, 'where') },
    ...reviewButtons(card.job, KIND[card.state] ?? 'step'),
  ].map((each) => ({ ...each, action_id: `${each.action_id}.${card.job}` }));
function cardText(
  { title, state, where, isolation, until, verdict }: JobCard,
  at: string | null,
  lines: readonly string[] = [],
): string {
  const name = `*${escaped(cut(title, 300))}*`;
  const said = [
    `${at === null ? name : `<${at}|${escaped(cut(title, 300))}>`} · ${STATE[state]}`,
    escaped(cut(where, 300)),
    // Whoever reads it later sees that it no longer stands, whether or not this page was drawn anew.
    `${escaped(cut(isolation, 300))}${until === null ? '' : `, until ${wallTime(until)}`}`,
    ...(verdict === null ? [] : [`Verdict: ${escaped(cut(verdict, 300))}`]),
    ...lines.map(escaped),
  ];
  return said.filter((each) => each !== '').join('\n');
}

/** For an account that is nobody's yet. */
export function stranger(): HomeView {
  return {
    type: 'home',
    blocks: [
      { type: 'header', text: plain('Who are you?', LIMITS.header) },
      {
        type: 'section',
        text: plain(
          'This account belongs to nobody of the crew yet. Ask your shop for a sign-in link, and paste it here.',
        ),
      },
      { type: 'actions', block_id: 'top', elements: [button('join', 'Paste the link')] },
    ],
  };
}
