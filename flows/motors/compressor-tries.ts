import { act, amps, choose, confirm, found, judge, measure, probes, volts } from '../../engine/vocabulary.ts';
import { HAS_TO_COOL } from '../dead/block.ts';
import { LIMITS } from '../limits.ts';
import { AT_MOST, offSince, REST, restedNow } from './starts.ts';

/** With one of these nobody read good windings and no ground: such a compressor is called nothing. */
const NOT_GOOD = [
  'compressor-windings-not-taken',
  'start-relay-undecided',
  'start-capacitor-undecided',
  'compressor-windings-undecided',
  'compressor-winding-open',
  'compressor-plug-or-lead',
  'winding-open-at-harness',
  'all-windings-open',
  'common-lead-open',
  'overload-open',
  'compressor-open-until-cool',
  ...HAS_TO_COOL,
  'overload-stays-open',
  'compressor-grounded',
  'low-to-ground',
  'ground-not-located',
  'ground-gone',
  'fuses-contactor-ground-not-taken',
] as const;
const NO_CLAMP = 'No clamp meter, no try: skip it.';

/** The compressor stands: one try rested, then one with an assist by a senior’s word. */
export const compressorTries = {
  stopped: offSince('Before a try: since when is the compressor off?', 'rest', 'tries', 'open'),
  rest: restedNow('stopped', 'tries', 'open'),
  tries: measure({
    say: `One try after ${REST}: compressor amps, and the lowest volts at T1 to T2 during the try.`,
    body: [`Off within seconds if it hums. ${AT_MOST}`, NO_CLAMP],
    callouts: [{ level: 'danger', text: 'Line voltage is present. Locked rotor overheats within seconds.' }],
    why: 'No amps is an open wire or overload, not a seized compressor. Locked-rotor amps alone seize none either.',
    circuit: 'line',
    fields: {
      v: volts('T1 to T2 during the try, the lowest', { over: false, words: ['t1t2', 'min', 'lowest'] }),
      comp: amps('Compressor amps', { over: false, words: ['comp', 'amps'] }),
    },
    cant: 'open',
    next: 'held',
  }),
  held: judge('volts-held', {
    of: { readings: 'tries', plate: '@volts', unit: '@class' },
    limits: LIMITS.during,
    then: { there: 'drew', none: 'no-volts', between: 'sags', undecided: 'open' },
  }),
  // Only a motor that draws its locked-rotor amps stalls; one that draws nothing gets nothing.
  drew: judge('running-amps', {
    of: { amps: 'tries', plate: '@lra' },
    limits: LIMITS.runningAmps,
    then: {
      'not-starting': 'evened',
      'not-running': 'nothing-drawn',
      running: 'open',
      'above-mcc': 'open',
      unbalanced: 'open',
      'fan-high': 'open',
      'fan-not-running': 'open',
      undecided: 'open',
    },
  }),
  // A compressor that was tried against its own pressure has shown nothing.
  evened: judge('evened-out', {
    of: { stopped: 'stopped', tried: 'tries', ran: '@round:ran' },
    limits: { least: LIMITS.starts.least, typed: LIMITS.starts.typed },
    quiet: ['rested'],
    then: { rested: 'dead-good', early: 'open', undecided: 'open' },
  }),
  'dead-good': found({
    among: {
      doubtful: { verdicts: NOT_GOOD, to: 'open' },
      measured: { verdicts: ['capacitor-good', 'capacitor-conditional-pass', 'new-part-right'], to: 'pointed' },
    },
    none: 'open',
  }),
  // Whose windings were read goes by what was seen: where that pointed at the fan, the compressor's were not.
  pointed: judge('motors', {
    of: { seen: '@round:observation' },
    limits: {},
    quiet: ['compressor', 'fan', 'both', 'undecided'],
    then: { compressor: 'assist', both: 'assist', fan: 'open', undecided: 'open' },
  }),
  assist: act('fit', {
    say: 'A senior decides about one try with a start assist. Fit it, dead.',
    body: [
      'By the maker’s list, never by its looks. Its wires as the list shows them, away from the terminals’ cover.',
    ],
    why: 'A compressor that starts with an assist is not seized. Without that try nobody calls it so.',
    yes: 'Assist fitted',
    words: ['fitted', 'assist fitted', 'assist in', 'installed'],
    cant: { label: 'No assist, or no senior', words: ['no assist', 'no senior', 'none', 'not tried'], to: 'open' },
    next: 'shut',
  }),
  shut: confirm({
    sitting: true,
    powers: ['yes'],
    say: 'Close up and clear the unit. Qualified for one more try?',
    body: ['Rated gloves, eye protection.'],
    yes: 'Closed, clear, qualified for the try',
    words: ['closed', 'closed up', 'cover on', 'clear', 'all clear', 'buttoned up'],
    no: { label: 'Not qualified: a senior', words: ['not qualified'], to: 'open' },
    next: 'stopped-again',
  }),
  'stopped-again': offSince('Before the try with the assist: since when is it off?', 'rest-again', 'assisted', 'open'),
  'rest-again': restedNow('stopped-again', 'assisted', 'open'),
  assisted: measure({
    say: 'One try with the assist: compressor amps, and the lowest volts at T1 to T2 during it.',
    body: ['Off within seconds if it hums.', NO_CLAMP],
    callouts: [{ level: 'danger', text: 'Line voltage is present. Locked rotor overheats within seconds.' }],
    why: 'A try on sagging volts, or without its amps, says nothing of the compressor.',
    picture: probes('V AC', ['T1', 'T2', 'line volts, also during the try']),
    circuit: 'line',
    fields: {
      v: volts('T1 to T2 during the try, the lowest', { over: false, words: ['t1t2', 'min', 'lowest'] }),
      comp: amps('Compressor amps', { over: false, words: ['comp', 'amps'] }),
    },
    cant: 'open',
    next: 'assisted-held',
  }),
  'assisted-held': judge('volts-held', {
    of: { readings: 'assisted', plate: '@volts', unit: '@class' },
    limits: LIMITS.during,
    then: { there: 'drew-again', none: 'no-volts', between: 'sags', undecided: 'open' },
  }),
  'drew-again': judge('running-amps', {
    of: { amps: 'assisted', plate: '@lra' },
    limits: LIMITS.runningAmps,
    then: {
      'not-starting': 'evened-again',
      'not-running': 'nothing-drawn',
      running: 'evened-again',
      'above-mcc': 'open',
      unbalanced: 'open',
      'fan-high': 'open',
      'fan-not-running': 'open',
      undecided: 'open',
    },
  }),
  'evened-again': judge('evened-out', {
    of: { stopped: 'stopped-again', tried: 'assisted', ran: 'tries' },
    limits: { least: LIMITS.starts.least, typed: LIMITS.starts.typed },
    quiet: ['rested'],
    then: { rested: 'outcome', early: 'open', undecided: 'open' },
  }),
  outcome: choose({
    say: 'What came of the try with the assist?',
    why: 'Started, it is tight and not seized. Standing, with all else good, it is.',
    options: {
      starts: {
        label: 'It started with the assist',
        words: ['started', 'it started', 'runs', 'starts'],
        to: 'started',
      },
      stands: {
        label: 'It still stands',
        words: ['still stands', 'still locked', 'stands', 'no start'],
        to: 'stalled',
      },
      unsure: { label: 'Not sure', words: ['not sure', 'cant tell'], to: 'open' },
    },
  }),
  stalled: judge('running-amps', {
    of: { amps: 'assisted', plate: '@lra' },
    limits: LIMITS.runningAmps,
    quiet: ['not-starting', 'running'],
    then: {
      'not-starting': 'seized',
      'not-running': 'open',
      running: 'open',
      'above-mcc': 'open',
      unbalanced: 'open',
      'fan-high': 'open',
      'fan-not-running': 'open',
      undecided: 'open',
    },
  }),
};
