import { choose, flow, include, judge, measure, ohms, verdict, volts } from '../../engine/vocabulary.ts';
import { iceFirst } from '../endings.ts';
import { RUNS_ON } from '../examples/control.ts';
import { yOff } from '../indoor/y-off.ts';
import { LIMITS } from '../limits.ts';
import { byKind, THREE_PHASE } from '../unit.ts';
import { foreignFound } from './foreign.ts';
import { CONTROL_LIVE, stillDead } from './words.ts';

const POLE = { words: ['contacts', 'contact', 'poles'] } as const;
/** Contacts of a contactor that nothing pulls. */
const released = <const N extends string>(spec: { say: string; body: readonly string[]; next: N }) =>
  measure<N | 'not-read', '@class'>({
    ...spec,
    why: 'Closed with the armature up is welded.',
    source: ['Welded under 1 Ω with the armature up: common practice, no single source'],
    circuit: 'part',
    fields: {
      pole1: ohms('First contact, armature up', POLE),
      pole2: ohms('Second contact, armature up', { optional: true, ...POLE }),
      pole3: ohms('Third contact, armature up', { optional: true, ...POLE, when: THREE_PHASE }),
    },
    cant: 'not-read',
  });
const LETS_GO = {
  good: 'not-read',
  'coil-open': 'not-read',
  'coil-shorted': 'not-read',
  contacts: 'not-read',
  between: 'not-read',
  undecided: 'not-read',
} as const;

/** The outdoor unit runs with the thermostat OFF: welded contacts, or a call that nobody gave. */
export const runsOn = flow({
  id: 'runs-on',
  version: 1,
  title: 'Runs with the thermostat OFF',
  exits: ['replace', 'raised', 'left'],
  examples: RUNS_ON,
  steps: {
    // A box has no indoor unit, and its thermostat stands where its goods are.
    whose: byKind('indoor', { refrigeration: 'coil' }),
    indoor: choose({
      say: 'Thermostat OFF, outdoor unit running. What does the indoor unit do?',
      body: ['Open the outdoor means under load only where it is rated for it: else the breaker.'],
      why: 'Outdoor on and indoor off ices the coil.',
      options: {
        still: { label: 'Blower off', words: ['blower off', 'off', 'indoor off'], to: 'coil' },
        runs: { label: 'Blower runs', words: ['blower on', 'runs', 'indoor runs'], to: 'coil' },
        ice: { label: 'Ice on coil or lines', words: ['ice', 'iced'], to: 'iced' },
      },
      cant: 'coil',
    }),
    iced: iceFirst('indoor'),
    coil: choose({
      say: 'What does the contactor’s coil print, and where does its call come from?',
      callouts: [
        { level: 'danger', text: 'A coil of 120 to 240 V is line voltage: it is never tested as a control circuit.' },
      ],
      options: {
        '24': { label: '24 V, from the indoor unit', words: ['24', '24v', '24 volt', 'split'], to: 'off-24' },
        other: {
          label: 'Line voltage, package unit, or not sure',
          words: ['120', '240', 'package', 'not sure', 'line voltage'],
          to: 'contacts',
        },
      },
    }),
    'off-24': measure({
      say: 'Thermostat OFF, line locked: volts across the coil.',
      callouts: [CONTROL_LIVE],
      why: 'No volts and pulled in: the contacts are welded. Volts: somebody calls.',
      circuit: 'control',
      fields: { v: volts('Across the coil', { over: false, words: ['coil'] }), l1l2: stillDead() },
      cant: 'contacts',
      next: 'called',
    }),
    called: judge('volts-there', {
      of: { readings: 'off-24' },
      limits: LIMITS.controlThere,
      then: { there: 'whose-call', none: 'contacts', between: 'contacts', high: 'foreign', undecided: 'contacts' },
    }),
    'whose-call': byKind('source', { refrigeration: 'box-calls' }),
    'box-calls': verdict({
      verdict: 'box-control-calls',
      title: 'Volts at the coil: the box’s own control calls, the contactor is not at fault',
      says: ['Its thermostat, a solenoid that doesn’t close, or a pump-down switch keeps the call. Which is open.'],
      next: [
        'Off at its means, goods watched. A senior follows the call from the coil back.',
        'Tell the customer: a control, not the compressor.',
      ],
      who: 'senior',
      judged: ['called'],
      evidence: ['off-24'],
      raises: 'verdict',
      then: '!raised',
    }),
    // The board is in the other cabinet: hands go in there under its own lock alone.
    source: include(yOff, {
      cabinet: 'indoor',
      exits: { raised: '!raised', left: '!left' },
      needs: { coil: 'off-24', called: 'called' },
    }),
    // With a wire off its coil nothing pulls it: whatever reads at the coil, what is closed then is welded.
    contacts: released({
      say: 'No call, one wire off the coil, armature up by itself: each contact in ohms.',
      body: ['Line to load. A bar instead of a contact reads zero by design: leave it out with _.'],
      next: 'welded',
    }),
    welded: judge('contactor', {
      of: { readings: null, first: null, released: 'contacts', rated: null },
      limits: LIMITS.contactor,
      then: { ...LETS_GO, welded: 'contacts-again' },
    }),
    'contacts-again': released({
      say: 'Closed with its armature up: a bar, or a weld? Look, then the same contacts once more in ohms.',
      body: [
        'The wire still off the coil, the armature up. A bar is left out with _. Bright metal, leads together first.',
      ],
      next: 'welded-twice',
    }),
    'welded-twice': judge('contactor', {
      of: { readings: null, first: 'contacts', released: 'contacts-again', rated: null },
      limits: LIMITS.contactor,
      then: { ...LETS_GO, welded: 'weld' },
    }),
    weld: verdict({
      verdict: 'contactor-welded',
      title: 'The contactor is welded: replace it',
      says: ['Closed with the armature up and a wire off its coil, twice.'],
      next: [
        'Find why: chatter, low control volts, a short.',
        'Same coil volts, poles and amps.',
        'Not proven until the restart numbers are in.',
      ],
      who: 'junior',
      judged: ['welded', 'welded-twice'],
      evidence: ['off-24', 'contacts', 'contacts-again'],
      then: '!replace',
    }),
    foreign: foreignFound(['called'], ['off-24']),
    'not-read': verdict({
      verdict: 'runs-on-undecided',
      title: 'Why it runs with the thermostat OFF is undecided',
      says: ['The contacts let go and no call was found, or nobody could read them.'],
      next: [
        'Volts at the coil with the thermostat OFF would decide it.',
        'Its coil’s wire back on, or capped and noted. It stays off. A senior sees this call.',
      ],
      who: 'senior',
      judged: ['called', 'welded', 'welded-twice'],
      evidence: ['off-24', 'contacts', 'contacts-again'],
      raises: 'verdict',
      then: '!raised',
    }),
  },
});
