import { choose, judge, measure, ohms, verdict } from '../../engine/vocabulary.ts';
import { LIMITS } from '../limits.ts';

/**
 * What opened on heat is read again, dead, before any power: `of` says which pairs those are in this cabinet. Hours have
 * gone by then, so the cabinet is proved dead anew.
 */
export const cooled = <const T extends string, const U extends string>(of: string, closed: T, off: U) =>
  ({
    cool: choose<'pair-again' | U>({
      say: 'An overload is open. Has it cooled, hours later?',
      body: ['No warmer than the air around it. The lock stays on until then, and nothing is started meanwhile.'],
      why: 'Power on an open overload proves nothing, and the cause is still there.',
      options: {
        cooled: { label: 'Cooled: read it again', words: ['cooled', 'cooled off', 'cooled down'], to: 'pair-again' },
        not: {
          label: 'Not today: it stays off',
          words: ['stays off', 'leave it off', 'leaving it off', 'not yet', 'still hot', 'still open', 'not sure'],
          to: off,
        },
      },
      cant: off,
      whileOff: 'until-read',
    }),
    'pair-again': measure<'reads' | U>({
      say: 'What read OL, once more, dead: the same pair.',
      body: [of, 'Leads together first: near 0 Ω. Type ol for over range.'],
      why: 'Only a reading shows that it has closed.',
      circuit: 'part',
      fields: { pair: ohms('What read OL', { words: ['pair', 'c-r', 'cr', 'overload', 'reads'] }) },
      cant: off,
      next: 'reads',
    }),
    reads: judge('reads-again', {
      of: { readings: 'pair-again' },
      limits: LIMITS.readsAgain,
      then: { reads: closed, open: 'still-open', undecided: 'still-open' },
    }),
    'still-open': verdict({
      verdict: 'overload-still-open',
      title: 'It does not read again: no power, over to a senior',
      says: ['An overload that is still warm, a wire or a winding. By this reading nobody knows which.'],
      next: ['It stays locked. A senior decides when it is read again, and where.', 'Tell the customer that it waits.'],
      who: 'senior',
      judged: ['reads'],
      evidence: ['cool', 'pair-again'],
      raises: 'verdict',
      then: '!raised',
    }),
  }) as const;
