import { choose, confirm, verdict } from '../../engine/vocabulary.ts';
import { DELAY } from '../control/words.ts';

/** What the door and its switch say before anything is opened. */
export const door = {
  door: choose({
    say: 'The indoor unit: doors on their switches, its breaker or switch on?',
    why: 'A door off its switch or a breaker takes the 24 V away before any part does.',
    options: {
      fine: {
        label: 'Doors on, power on',
        words: ['doors on', 'all on', 'on', 'fine', 'ok', 'door on power on'],
        to: 'ready',
      },
      door: { label: 'A door was off its switch', words: ['door off', 'door', 'panel off'], to: 'door-put-back' },
      off: {
        label: 'Its breaker or switch is off',
        words: ['breaker off', 'off', 'switch off', 'tripped'],
        to: 'reset',
      },
    },
    cant: 'ready',
  }),
  'door-put-back': confirm({
    say: 'Put the door on its switch, and wait five minutes. Does the outdoor unit run?',
    body: ['Never tape a door switch down.'],
    source: [DELAY],
    yes: 'It runs now',
    words: ['runs', 'runs now', 'it runs', 'running'],
    no: { label: 'Still nothing', words: ['still nothing', 'nothing', 'still silent'], to: 'ready' },
    next: 'door-off',
  }),
  'door-off': verdict({
    verdict: 'indoor-door-off',
    title: 'The indoor unit’s door was off its switch',
    says: ['With the door on its switch the call arrives and it runs.'],
    next: ['Does the door hold by itself?', 'Its figures are read before anybody leaves.'],
    who: 'junior',
    judged: [],
    evidence: ['door', 'door-put-back'],
    then: '!settled',
  }),
  reset: confirm({
    say: 'Fully off, then on, once. Does it hold, and does the outdoor unit run after five minutes?',
    body: ['Not at all where it tripped before, is hot, smells or is wet.'],
    source: [DELAY],
    yes: 'It holds and runs',
    words: ['holds', 'runs', 'it runs', 'holds and runs'],
    no: { label: 'It holds, and still nothing', words: ['still nothing', 'nothing', 'still silent'], to: 'ready' },
    cant: {
      label: 'It trips again, or must not be reset',
      words: ['trips', 'trips again', 'hot', 'wet'],
      to: 'trips',
    },
    next: 'was-off',
  }),
  'was-off': verdict({
    verdict: 'indoor-breaker-was-off',
    title: 'The indoor unit’s breaker or switch was off',
    says: ['On again it holds, and the call arrives.'],
    next: [
      'Who turned it off, or what tripped it? Watch one whole cycle.',
      'Its figures are read before anybody leaves.',
    ],
    who: 'junior',
    judged: [],
    evidence: ['door', 'reset'],
    then: '!settled',
  }),
  trips: verdict({
    verdict: 'indoor-breaker-trips',
    title: 'The indoor unit’s breaker trips or must not be reset',
    says: ['Something behind it is shorted or grounded, or the breaker itself is bad.'],
    next: ['It stays off, both units. A senior leads on at the indoor unit.'],
    who: 'senior',
    judged: [],
    evidence: ['door', 'reset'],
    raises: 'verdict',
    then: '!raised',
  }),
};
