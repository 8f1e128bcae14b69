import { choose, confirm, judge, verdict } from '../../engine/vocabulary.ts';
import { DELAY } from '../control/words.ts';
import { LIMITS } from '../limits.ts';

/** Neither motor draws: whether the contactor is in at all, and since when the call is there. */
export const notIn = {
  'in-yet': choose({
    say: 'Look at the contactor, hands out: is it in? And since when is the call there?',
    body: ['Out: COOL, 5 °F below the room. Set it now where nothing calls, and leave it.'],
    why: 'A contactor that isn’t in has no volts behind it. That is a delay or its control, and no bad pole.',
    source: [DELAY],
    options: {
      in: { label: 'It is in', words: ['in', 'its in', 'pulled in', 'contactor in'], to: 'behind' },
      earlier: {
        label: 'Out, the call there for five minutes or more',
        words: ['out', 'not in', 'stays out', 'over 5 minutes', 'left alone'],
        to: 'since-closed',
      },
      now: {
        label: 'Out, the call given or changed just now',
        words: ['just now', 'now', 'no call', 'changed just now', 'called just now'],
        to: 'out-yet',
      },
    },
    // Nobody saw it: off, and its circuit comes with what is seen next.
    cant: 'off',
  }),
  // Power came on when it was closed up: no call can be there for longer.
  'since-closed': judge('minutes-since', {
    of: { since: 'in-yet', reading: 'in-yet', waited: null, before: null, off: 'closed' },
    limits: LIMITS.delay,
    then: { over: 'not-in', wait: 'out-yet', undecided: 'out-yet' },
  }),
  'out-yet': confirm({
    say: 'Wait until five minutes are over since the call was changed. Leave the call alone. Does it pull in?',
    source: [DELAY],
    yes: 'It pulls in',
    words: ['pulls in', 'pulled in', 'its in', 'runs now', 'it runs'],
    no: { label: 'It stays out', words: ['stays out', 'still out', 'nothing', 'waited'], to: 'since' },
    // The record's own times decide whether they were over.
    unsure: 'since',
    // It was held by its delay: all figures anew.
    next: '!late',
  }),
  since: judge('minutes-since', {
    of: { since: 'in-yet', reading: 'in-yet', waited: 'out-yet', before: null, off: 'closed' },
    limits: LIMITS.delay,
    then: { over: 'not-in', wait: 'off', undecided: 'off' },
  }),
  'not-in': verdict({
    verdict: 'contactor-not-in',
    title: 'The contactor doesn’t pull in, five minutes after the call: its control comes next, no part',
    says: ['No amps, nothing behind it, and it is out. So its poles say nothing.'],
    next: [
      'Off. The next round begins: outdoor unit silent. It reads the call on its way to the coil.',
      'What was touched last first: a coil wire left off, a switch that tripped.',
    ],
    who: 'junior',
    judged: ['judged', 'since-closed', 'since'],
    evidence: ['figures', 'in-yet', 'out-yet'],
    then: '!again',
  }),
  behind: verdict({
    verdict: 'nothing-behind-the-contactor',
    title: 'The contactor is in, and neither motor draws: a senior looks at what lies behind it',
    says: ['A pole that doesn’t close, or a lead behind it. Without amps no drop tells which.'],
    next: [
      'Off. Dead: each contact with the armature pressed in, then the leads on T and the motors’ common.',
      'It stays off until a senior has seen the readings.',
    ],
    who: 'senior',
    judged: ['judged'],
    evidence: ['figures', 'in-yet'],
    raises: 'verdict',
    then: '!raised',
  }),
};
