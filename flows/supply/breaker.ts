import { amps, choose, confirm, flow, form, judge, measure, verdict, volts } from '../../engine/vocabulary.ts';
import { GLOVES } from '../cautions.ts';
import { leftOff } from '../endings.ts';
import { BREAKER } from '../examples/supply.ts';
import { LIMITS } from '../limits.ts';

/** Nothing downstream is found and it trips: the breaker itself, under load. */
export const breaker = flow({
  id: 'breaker',
  version: 1,
  title: 'Breaker',
  exits: ['holds', 'left', 'raised'],
  examples: BREAKER,
  steps: {
    shut: confirm({
      sitting: true,
      powers: ['yes'],
      say: 'What was found is put right, or nothing was. Close up and clear for one controlled start.',
      body: [
        'Every lead back where it sat, boards plugged in, tools out, people clear.',
        'Your lock comes off by your own hand.',
      ],
      callouts: [{ level: 'warning', text: 'Not at all where the breaker is hot, smells or is wet.' }],
      why: 'After the ground and the insulation were found safe, one start tells whether it holds.',
      source: ['29 CFR 1910.333(b)(2)(v): tools removed, people warned and clear, lock removed by who applied it'],
      yes: 'Closed, clear, lock off',
      words: ['closed', 'closed up', 'closed and clear', 'clear', 'buttoned up'],
      no: {
        label: 'Not today: it stays off',
        words: ['not today', 'stays off', 'leave it off'],
        to: 'stays-off',
      },
      next: 'start',
    }),
    start: choose({
      say: 'Breaker fully off, then on, once, and a call: what does it do?',
      callouts: [{ level: 'warning', text: 'Once. It trips again, or the new fuse opens: it stays off.' }],
      options: {
        holds: { label: 'It holds and runs', words: ['holds', 'it holds', 'runs', 'running'], to: '!holds' },
        later: {
          label: 'It runs, and trips after a while',
          words: ['trips after a while', 'trips later', 'after minutes'],
          to: 'plate',
        },
        trips: {
          label: 'It trips again at once',
          words: ['trips', 'trips again', 'tripped again', 'blows again', 'fuse opens'],
          to: 'handed-over',
        },
        off: { label: 'Not today: it stays off', words: ['not today', 'stays off', 'leave it off'], to: 'stays-off' },
      },
      cant: 'handed-over',
    }),
    plate: form({
      say: 'The breaker: its rating, and MOP on the nameplate.',
      parts: {
        rating: amps('Breaker’s rating', { over: false, words: ['breaker', 'rated', 'rating'] }),
        mop: amps('MOP, largest fuse or breaker', {
          over: false,
          optional: true,
          words: ['mop', 'max fuse', 'max breaker'],
        }),
      },
      cant: 'handed-over',
      next: 'panel',
    }),
    panel: confirm({
      sitting: true,
      powers: ['yes'],
      say: 'One start more, the last, to read the breaker under load in its open panel. Qualified and equipped for that?',
      body: ['Breaker cold and dry, people clear. An electrician’s work where the code or your employer says so.'],
      callouts: [GLOVES],
      why: 'What trips after minutes is told by what flows through it, and by the volts across it.',
      yes: 'Qualified, equipped, breaker cold',
      words: ['qualified', 'equipped', 'ready'],
      no: { label: 'Not here, not now', words: ['not qualified', 'not now', 'no'], to: 'handed-over' },
      next: 'load',
    }),
    load: measure({
      say: 'While it runs: amps through the breaker, and volts across it, line lug to load lug.',
      callouts: [
        {
          level: 'danger',
          text: 'A panel is open and live: an electrician’s or a qualified person’s work. Not qualified: can’t.',
        },
      ],
      why: 'A breaker that trips below its rating, or drops volts across itself, is the fault.',
      source: ['Drop above 0.2 V across a closed breaker: common practice, no single source'],
      circuit: 'line',
      fields: {
        amps: amps('Amps through it', { over: false, words: ['load', 'amps'] }),
        drop: volts('Across the breaker', { over: false, words: ['across', 'drop'] }),
      },
      cant: 'handed-over',
      next: 'judged',
    }),
    judged: judge('breaker', {
      of: { readings: 'load', plate: 'plate' },
      limits: LIMITS.breaker,
      then: { weak: 'weak', over: 'over', sound: 'which', undecided: 'handed-over' },
    }),
    which: choose({
      say: 'Below its rating and no drop. Did it trip like that?',
      options: {
        trips: { label: 'Yes, it trips below its rating', words: ['trips', 'yes', 'it tripped'], to: 'weak' },
        holds: { label: 'No, it holds', words: ['holds', 'no'], to: '!holds' },
      },
      cant: 'handed-over',
    }),
    weak: verdict({
      verdict: 'breaker-weak',
      title: 'The breaker itself is at fault: an electrician',
      says: ['It drops volts across itself, or trips below its rating, and nothing behind it was found.'],
      next: [
        'A senior confirms; an electrician replaces it, size at most the MOP.',
        'Tell the customer not to reset it.',
      ],
      who: 'senior',
      judged: ['judged'],
      evidence: ['plate', 'load', 'which'],
      raises: 'verdict',
      then: '!raised',
    }),
    over: verdict({
      verdict: 'load-above-the-breaker',
      title: 'The load is above the breaker’s rating, or the breaker above MOP',
      says: ['A breaker that trips on too much load does its work. One above MOP protects nothing.'],
      next: ['A senior compares MCA, MOP and the running amps.', 'It stays off.'],
      who: 'senior',
      judged: ['judged'],
      evidence: ['plate', 'load'],
      raises: 'verdict',
      then: '!raised',
    }),
    'stays-off': leftOff('start'),
    'handed-over': verdict({
      verdict: 'breaker-not-measured',
      title: 'The breaker was not measured: over to an electrician',
      says: ['Tripping twice condemns no breaker. Its drop and its amps under load would.'],
      next: ['A senior calls an electrician. It stays off.'],
      who: 'senior',
      judged: ['judged'],
      evidence: ['plate', 'load'],
      raises: 'verdict',
      then: '!raised',
    }),
  },
});
