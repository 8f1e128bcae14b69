/** What one person is told beside what all read: a refusal, an answer to why, the question that stands now. */
import type { WebClient } from '@slack/web-api';
import { NoRight, NotFound, NotKept, type Turn } from '../../engine/desk/index.ts';
import type { GivenParts, Prompt } from '../../engine/index.ts';
import type { Names } from './render/isolation.ts';
import { formButton } from './render/parts.ts';
import { type Drawing, question, spoken } from './render/question.ts';
import { paragraphs } from './render/text.ts';

/** Where a person is told something that nobody else sees. From a home there is no channel: their own account stands for one. */
export interface Aside {
  readonly channel: string;
  readonly user: string;
  readonly thread_ts?: string;
}
export async function tell(client: WebClient, to: Aside, drawing: Drawing): Promise<void> {
  const quiet = { link_names: false, parse: 'none' } as const;
  const alone = to.channel === to.user || to.channel.startsWith('D');
  if (alone) await client.chat.postMessage({ channel: to.channel, ...drawing, ...quiet });
  else await client.chat.postEphemeral({ ...to, ...drawing, ...quiet });
}
export const lines = (said: readonly string[]): Drawing => ({ text: spoken(said), blocks: paragraphs(said) });

const namesIn =
  ({ view }: Turn): Names =>
  (id) =>
    view.people[id]?.name ?? id;

/** What this person needs to hear of a turn; null where the thread says it all. */
export function asideOf(turn: Turn, draft: GivenParts): Drawing | null {
  const { refusal, info, again, view } = turn;
  const around = { names: namesIn(turn), asked: view.question };
  if (again) return question(again, around);
  if (refusal) {
    // Whoever answered what no longer stands sees at once what does.
    if (refusal.code === 'stale') return question(view.prompt, { ...around, lead: [refusal.text] });
    return withRest(lines([refusal.text, ...keptLines(view.prompt, draft)]), view.prompt, draft);
  }
  return info === null ? null : lines(info);
}
function keptLines({ parts }: Prompt, draft: GivenParts): string[] {
  const kept = parts.filter(({ key }) => draft[key] !== undefined).map(({ ask }) => ask);
  return kept.length === 0 ? [] : [`Kept of what you said: ${kept.join('; ')}. Answer the rest.`];
}
/** A button that asks for what is missing alone. */
const withRest = (drawing: Drawing, prompt: Prompt, draft: GivenParts): Drawing =>
  Object.keys(draft).length === 0
    ? drawing
    : {
        ...drawing,
        blocks: [
          ...drawing.blocks,
          { type: 'actions', block_id: 'rest', elements: [formButton(prompt, 'Answer the rest')] },
        ],
      };

/** What an error means to whoever asked; an unknown one is a bug, of which nothing is told. */
export function troubleWords(error: unknown): string | null {
  if (error instanceof NotKept)
    return error.certain ? 'Nothing was kept. Send it again.' : 'It may have been kept. Send it again: it counts once.';
  if (error instanceof NotFound) return error.message || 'There is nothing here.';
  if (error instanceof NoRight) return error.message || 'This is not yours to do.';
  return null;
}
