/** App Home: a person's calls, and for those who watch over calls what needs attention. */
import type { Button, HomeView, KnownBlock } from '@slack/types';
import type { JobCard, Person } from '../../../engine/desk/index.ts';
import { LIMITS } from '../limits.ts';
import { cut, escaped, marked, plain } from './text.ts';
import { reviewButtons } from './told.ts';

/** A call takes a section and a row of buttons at most. */
const SHOWN = 20;
const button = (action_id: string, label: string): Button => ({
  type: 'button',
  action_id,
  text: plain(label, LIMITS.button),
});

const WAITS: ReadonlySet<JobCard['state']> = new Set(['emergency', 'held', 'finished', 'unreadable']);
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
export function home(person: Person, cards: readonly JobCard[], thread: (job: string) => string | null): HomeView {
  const over = person.roles.some((role) => role === 'senior' || role === 'owner' || role === 'dispatcher');
  const senior = person.roles.some((role) => role === 'senior' || role === 'owner');
  const waits = over ? cards.filter(({ state }) => WAITS.has(state)) : [];
  const open = cards.filter((card) => card.state !== 'signed' && !waits.includes(card));
  const mine = over ? open : open.filter(({ assigned }) => assigned.includes(person.id));
  return {
    type: 'home',
    blocks: [
      { type: 'header', text: plain(`Calls of ${person.name}`, LIMITS.header) },
      {
        type: 'actions',
        block_id: 'top',
        elements: [button('new-call', 'New call'), button('web', 'Sign in on the web')],
      },
      ...(over ? listed('Needs attention', waits, thread, senior) : []),
      ...listed(over ? 'Open calls' : 'Your calls', mine, thread, false),
      {
        type: 'context',
        elements: [marked('Answer in a call’s thread, by buttons or by typing. */nocool help* says what works.')],
      },
    ],
  };
}

function listed(
  title: string,
  cards: readonly JobCard[],
  thread: (job: string) => string | null,
  review: boolean,
): KnownBlock[] {
  const more = cards.length - SHOWN;
  return [
    { type: 'header', text: plain(`${title} (${cards.length})`, LIMITS.header) },
    ...cards
      .slice(0, SHOWN)
      .flatMap((card) => [
        { type: 'section' as const, text: marked(cardText(card, thread(card.job))) },
        ...(review ? [{ type: 'actions' as const, block_id: `review.${card.job}`, elements: buttonsOf(card) }] : []),
      ]),
    ...(cards.length === 0 ? [{ type: 'section' as const, text: plain('None.') }] : []),
    ...(more > 0 ? [{ type: 'section' as const, text: plain(`And ${more} more, on the web.`) }] : []),
  ];
}
/** An id of a control is unique on the page. */
const buttonsOf = (card: JobCard): Button[] =>
  reviewButtons(card.job, KIND[card.state] ?? 'step').map((each) => ({
    ...each,
    action_id: `${each.action_id}.${card.job}`,
  }));
function cardText({ title, state, where, isolation, verdict }: JobCard, at: string | null): string {
  const name = `*${escaped(cut(title, 300))}*`;
  const lines = [
    `${at === null ? name : `<${at}|${escaped(cut(title, 300))}>`} · ${STATE[state]}`,
    escaped(cut(where, 300)),
    escaped(cut(isolation, 300)),
    ...(verdict === null ? [] : [`Verdict: ${escaped(cut(verdict, 300))}`]),
  ];
  return lines.filter((each) => each !== '').join('\n');
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
