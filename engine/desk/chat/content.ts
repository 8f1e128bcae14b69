/** What a saying comes to when its turn comes: drawn of the job as it stands then. */
import type { Entry } from '../../schema.ts';
import type { JobView, LowStock } from '../types.ts';
import { printOf } from './due.ts';
import { toPng } from './png.ts';
import type { Content, What } from './types.ts';

/** Null: there is nothing to say of it any more. `entryOf` gives the entry that it is about, `lowBy` what runs low by one. */
export async function contentOf(
  what: Exclude<What, { kind: 'close' | 'redraw' }>,
  view: JobView,
  entryOf: () => Promise<Entry | undefined>,
  lowBy: (seq: number) => Promise<LowStock | null>,
): Promise<Content | null> {
  switch (what.kind) {
    case 'head':
      return { kind: 'head' };
    case 'question':
      return printOf(view.prompt) === what.print ? { kind: 'question' } : null;
    case 'event': {
      const [line, entry] = [view.ticket.find(({ seq }) => seq === what.seq), await entryOf()];
      const called = entry?.kind === 'assigned' || entry?.kind === 'handed-over' ? [entry.body.to] : [];
      return line ? { kind: 'event', line, mention: called } : null;
    }
    case 'attention': {
      // At the end of a call it is the end that is told, whatever entry came last.
      const line = view.ticket.find(({ seq }) => seq === what.seq) ?? view.ticket.at(-1);
      return line ? { kind: 'attention', line, to: what.to } : null;
    }
    case 'low': {
      const stock = await lowBy(what.seq);
      return stock && { kind: 'low', stock, to: what.to };
    }
    case 'verdict': {
      const entry = await entryOf();
      return entry?.kind === 'concluded' ? { kind: 'verdict', verdict: entry.body } : null;
    }
    case 'picture': {
      const picture = view.prompt.pictures.filter(({ verdict }) => verdict === what.of)[what.n];
      return picture
        ? { kind: 'picture', title: picture.title, text: picture.text, png: await toPng(picture.svg) }
        : null;
    }
  }
}
