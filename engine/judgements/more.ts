import { judgement } from './judgement.ts';
import { past, read, untaken } from './probing.ts';
import { figureOf } from './read.ts';
import { digits, finding } from './say.ts';

/** Whether more capacitors were seen than a number: what a page asks before it goes on to the next one. */
export const more = judgement({
  id: 'more',
  semantics: 1,
  takes: ['look'],
  limits: ['than'],
  outcomes: ['more', 'no-more', 'undecided'],
  run({ look }, { than }) {
    const count = figureOf(look, 'count', 'count');
    const limits = `more than ${digits(than.value, 0)}`;
    const said = (reading: string, word: string, text: string) => [
      finding({ name: 'Capacitors', reading, limits, word, text, source: than.source }),
    ];
    if (count === null || count.lt(0)) {
      return { outcome: 'undecided', findings: said('no count', 'missing', 'Nobody counted the capacitors.') };
    }
    const outcome = count.gt(than.value) ? 'more' : 'no-more';
    const word = outcome === 'more' ? limits : `not ${limits}`;
    const reading = digits(count, 0);
    return { outcome, findings: said(reading, word, `Capacitors seen: ${reading}, ${word}.`) };
  },
  probe: ({ than }) => [
    { look: { count: read(than.value, 'count') } },
    { look: { count: read(past(than.value, 1), 'count') } },
    { look: { count: read(0, 'count') } },
    { look: { count: untaken } },
    {},
  ],
});
