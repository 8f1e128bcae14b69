import { choose, confirm, found, verdict } from '../../engine/vocabulary.ts';
import { DELAY } from '../control/words.ts';

/** What was read before with the door or the breaker as it was: at the strip, the outdoor line locked, or the fan’s call. */
const LOCKED = <const T extends string>(to: T) => ({
  locked: { verdicts: ['no-call-outdoors', 'call-low-outdoors', 'no-fan-call'], to },
});

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
      mine: {
        label: 'I took a door off myself',
        words: ['i took it off', 'took it off', 'i took the door off', 'i opened it'],
        to: 'put-back',
      },
      off: {
        label: 'Its breaker or switch is off',
        words: ['breaker off', 'off', 'switch off', 'tripped'],
        to: 'reset',
      },
    },
    cant: 'ready',
  }),
  // A door that somebody took off to look explains no call, and what was read outdoors meanwhile says nothing.
  'put-back': confirm({
    say: 'Put it back on its switch by its own panel. Was it on its switch until you came here just now?',
    body: ['Never tape a door switch down.'],
    why: 'Off its switch it takes the 24 V away: what was read outdoors then is its own doing.',
    yes: 'Back on; it was on until now',
    words: ['back on', 'put back', 'was on', 'door back on'],
    no: {
      label: 'It was off before, or not sure',
      words: ['was off', 'it was off', 'off before', 'not sure'],
      to: 'door-put-back',
    },
    unsure: 'door-put-back',
    next: 'taken-off',
  }),
  'taken-off': verdict({
    verdict: 'indoor-door-taken-off',
    title: 'A door was taken off for a look, and is on its switch again',
    says: ['By word it was on until then. What was read outdoors before is not dated by the record.'],
    next: ['A cable is called open only where the call is read at its outdoor end with the door on.'],
    who: 'junior',
    judged: [],
    evidence: ['door', 'put-back'],
    then: 'ready',
  }),
  // Read outdoors with its line locked, nothing of the outdoor unit runs: the restart shows whether the call arrives.
  'door-put-back': found({ among: LOCKED('door-back'), none: 'door-runs' }),
  'door-back': confirm({
    say: 'Put the door on its switch by its own panel. On, and does it hold by itself?',
    body: ['Never tape a door switch down.'],
    yes: 'On its switch, it holds',
    words: ['on', 'door on', 'holds', 'back on'],
    no: { label: 'It doesn’t hold', words: ['doesnt hold', 'wont stay', 'loose'], to: 'not-read' },
    unsure: 'not-read',
    next: 'door-off',
  }),
  'door-runs': confirm({
    say: 'Put the door on its switch, and wait five minutes. Does the outdoor unit run?',
    body: ['Never tape a door switch down.'],
    source: [DELAY],
    yes: 'It runs now',
    words: ['runs', 'runs now', 'it runs', 'running'],
    no: { label: 'Still nothing', words: ['still nothing', 'nothing', 'still silent'], to: 'ready' },
    cant: { label: 'It is locked or turned off', words: ['locked', 'turned off', 'its off'], to: 'door-off' },
    unsure: 'ready',
    next: 'door-off',
  }),
  'door-off': verdict({
    verdict: 'indoor-door-off',
    title: 'The indoor unit’s door was off its switch',
    says: ['Off its switch it takes the 24 V away. It is on again; whether that was all, the restart shows.'],
    next: ['Does the door hold by itself?', 'Its figures are read before anybody leaves.'],
    who: 'junior',
    judged: [],
    evidence: ['door', 'put-back', 'door-back', 'door-runs'],
    then: '!settled',
  }),
  reset: confirm({
    say: 'Fully off, then on, once. Does it hold?',
    body: ['Not at all where it tripped before, is hot, smells or is wet.'],
    yes: 'It holds',
    words: ['holds', 'it holds', 'stays on'],
    cant: {
      label: 'It trips again, or must not be reset',
      words: ['trips', 'trips again', 'hot', 'wet'],
      to: 'trips',
    },
    unsure: 'trips',
    next: 'holds',
  }),
  holds: found({ among: LOCKED('was-off'), none: 'reset-runs' }),
  'reset-runs': confirm({
    say: 'It holds. Five minutes later: does the outdoor unit run?',
    source: [DELAY],
    yes: 'It runs now',
    words: ['runs', 'it runs', 'running', 'holds and runs'],
    no: { label: 'Still nothing', words: ['still nothing', 'nothing', 'still silent'], to: 'ready' },
    cant: { label: 'It is locked or turned off', words: ['locked', 'turned off', 'its off'], to: 'was-off' },
    unsure: 'ready',
    next: 'was-off',
  }),
  'was-off': verdict({
    verdict: 'indoor-breaker-was-off',
    title: 'The indoor unit’s breaker or switch was off',
    says: ['On again it holds. Whether that was all, the restart shows.'],
    next: [
      'Who turned it off, or what tripped it? Watch one whole cycle.',
      'Its figures are read before anybody leaves.',
    ],
    who: 'junior',
    judged: [],
    evidence: ['door', 'reset', 'reset-runs'],
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
