/** What a saying comes to when its turn comes: drawn of the job as it stands then. */
import type { Entry } from '../../schema.ts';
import { conclusionIn } from '../../units/shown.ts';
import type { JobView, LowStock } from '../types.ts';
import { printOf } from './due.ts';
import { toPng } from './png.ts';
import type { Content, What } from './types.ts';

/** What is looked up only where a saying needs it. */
export interface Sources {
  /** The entry that it is about. */
  readonly entry: () => Promise<Entry | undefined>;
  /** What runs low by that entry. */
  readonly low: (seq: number) => Promise<LowStock | null>;
  /** Whether this person reviews jobs. */
  readonly reviews: (person: string) => Promise<boolean>;
}
/** Null: there is nothing to say of it any more. */
export async function contentOf(
  what: Exclude<What, { kind: 'close' | 'redraw' }>,
  view: JobView,
  from: Sources,
): Promise<Content | null> {
  switch (what.kind) {
    case 'head':
      return { kind: 'head' };
    case 'question':
      return printOf(view.prompt) === what.print ? { kind: 'question' } : null;
    case 'event': {
      const [line, entry] = [view.ticket.find(({ seq }) => seq === what.seq), await from.entry()];
      const called = entry?.kind === 'assigned' || entry?.kind === 'handed-over' ? [entry.body.to] : [];
      return line ? { kind: 'event', line, mention: called } : null;
    }
    case 'attention': {
      // At the end of a call it is the end that is told, whatever entry came last.
      const line = view.ticket.find(({ seq }) => seq === what.seq) ?? view.ticket.at(-1);
      return line ? { kind: 'attention', line, to: what.to, reviews: await from.reviews(what.to) } : null;
    }
    case 'low': {
      const stock = await from.low(what.seq);
      return stock && { kind: 'low', stock, to: what.to };
    }
    case 'verdict': {
      const entry = await from.entry();
      return entry?.kind === 'concluded'
        ? { kind: 'verdict', verdict: conclusionIn(entry.body, view.units ?? undefined) }
        : null;
    }
    case 'picture': {
      const picture = view.prompt.pictures.filter(({ verdict }) => verdict === what.of)[what.n];
      return picture
        ? { kind: 'picture', title: picture.title, text: picture.text, png: await toPng(picture.svg) }
        : null;
    }
  }
}
