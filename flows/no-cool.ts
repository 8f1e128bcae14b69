import { choose, flow, include, manual, note, verdict } from '../engine/vocabulary.ts';
import { dualCapacitor } from './dual-capacitor.ts';
import { LIMITS } from './limits.ts';
import { dead } from './make-dead.ts';
import { restart } from './restart.ts';

const NOT_COVERED = [
  'This version leads calls on PSC units with one dual run capacitor. Nothing is guessed beyond it.',
];

/** One round: observe, classify, test, verdict, fit, restart. A failed restart begins the next. */
const round = flow({
  id: 'round',
  version: 1,
  title: 'Observe and classify',
  exits: ['done', 'raised', 'left', 'again'],
  steps: {
    observation: choose({
      say: 'What does the unit do?',
      body: [
        'Stand back, thermostat calling, look and listen. Open nothing yet.',
        'If the call says a breaker trips, something burns, or it hums: energise nothing, answer from the call.',
      ],
      callouts: [
        {
          level: 'warning',
          text: 'Hum, still fan or chatter: off within seconds, at the thermostat first, then the pull-out. Never push the fan with power on.',
        },
        {
          level: 'notice',
          text: 'Qualified people only. Your employer’s program, the maker’s instructions and local codes govern. This does not replace a licensed person.',
        },
      ],
      why: 'The observation decides the order of tests.',
      options: {
        a: { label: 'Outdoor unit silent', words: ['silent', 'dead'], to: 'what-you-see' },
        b: { label: 'Hum, nothing turns', words: ['hums nothing turns', 'hum', 'hums'], to: 'class' },
        c: { label: 'Compressor runs, fan still', words: ['fan still', 'fan not turning'], to: 'class' },
        d: {
          label: 'Fan runs, compressor hums, clicks off or is silent',
          words: ['fan runs comp hums', 'compressor hums'],
          to: 'class',
        },
        e: { label: 'Both run, air not cold', words: ['not cold'], to: 'what-you-see' },
        f: { label: 'Starts and stops every few minutes', words: ['short cycling', 'short cycles'], to: 'class' },
        g: { label: 'Contactor buzzes or chatters', words: ['chatters', 'buzzes'], to: 'what-you-see' },
        h: { label: 'Breaker trips or fuse opens', words: ['breaker trips', 'fuse blows', 'trips'], to: 'class' },
        i: { label: 'Outdoor runs, indoor blower doesn’t', words: ['no blower'], to: 'what-you-see' },
        j: { label: 'Ice on coil or lines', words: ['ice', 'frozen'], to: 'what-you-see' },
        k: { label: 'Water at the indoor unit, float tripped', words: ['water', 'float'], to: 'what-you-see' },
        l: { label: 'Other noise or smell', words: ['noise', 'smell'], to: 'what-you-see' },
        m: { label: 'Outdoor runs with the thermostat OFF', words: ['runs with stat off'], to: 'what-you-see' },
        n: { label: 'Warm air in cooling', words: ['warm air', 'hot air'], to: 'what-you-see' },
        o: { label: 'Error code or blinking board', words: ['error code', 'blinking'], to: 'what-you-see' },
        p: {
          label: 'Blower never stops, compressor locked out, alarm',
          words: ['leak alarm', 'locked out'],
          to: 'what-you-see',
        },
      },
    }),
    class: choose({
      say: 'What kind of unit is it?',
      body: ['From the record, the nameplate and what is outside. Open nothing for this.'],
      callouts: [
        {
          level: 'danger',
          text: 'An inverter’s bus holds far more energy than a run capacitor. Not sure counts as inverter.',
        },
      ],
      why: 'Inverter equipment never reaches the capacitor procedure or the discharge tool.',
      as: 'class',
      options: {
        psc: {
          label: 'PSC, one dual run capacitor (three terminals)',
          words: ['psc', 'dual', 'dual cap'],
          to: 'capacitor',
        },
        ecm: {
          label: 'Single-section capacitor, electronically commutated fan',
          words: ['ecm', 'single'],
          to: 'what-you-see',
        },
        inverter: {
          label: 'Inverter, communicating or mini-split',
          words: ['mini-split', 'mini split', 'communicating'],
          to: 'bus',
        },
        'three-phase': { label: 'Three-phase', words: ['3-phase', '3 phase', 'three phase'], to: 'what-you-see' },
        refrigeration: {
          label: 'Condensing unit of a walk-in or reach-in',
          words: ['walk-in', 'reach-in', 'walk in'],
          to: 'what-you-see',
        },
        'out-of-scope': {
          label: 'VRF, chiller, ammonia, CO₂, above 600 V, gas side',
          words: ['vrf', 'chiller'],
          to: 'what-you-see',
        },
        unsure: { label: 'Not sure', words: ['dont know', 'don’t know', 'unsure', 'not sure'], to: 'bus' },
      },
    }),
    capacitor: include(dualCapacitor, {
      exits: { good: 'rest-of-block', replace: 'restart', undecided: '!raised' },
      needs: {},
    }),
    restart: include(restart, {
      exits: { done: '!done', again: '!again', raised: '!raised', left: '!left' },
      needs: {},
    }),
    'rest-of-block': verdict({
      verdict: 'dead-tests-not-finished',
      title: 'The capacitor is not the fault; the rest is not yet asked here',
      says: [
        'Not yet asked: fuses, contactor contacts and coil, all loads to ground, fan spin, windings from the harness.',
      ],
      next: ['Measure these in this isolation, note them here, and ask a senior.', 'Nothing else is condemned.'],
      who: 'senior',
      judged: [],
      evidence: ['observation'],
      raises: 'not-covered',
      then: '!raised',
    }),
    bus: note({
      say: 'Leave it closed. Note what a senior needs.',
      body: [
        'Unit off at its means, locked if you can. Photo of the nameplate and of any code or blinking light.',
        'Name of the indoor and outdoor unit, how many wires run between them, what the label says about waiting.',
      ],
      callouts: [
        {
          level: 'danger',
          text: 'Treat it as an inverter until the nameplate or an open cabinet shows otherwise. No discharge tool, no capacitor procedure.',
        },
      ],
      why: 'A DC bus holds about ten times a run capacitor’s energy and stays charged for minutes.',
      next: 'bus-raised',
      cant: 'bus-raised',
    }),
    'bus-raised': verdict({
      verdict: 'inverter-handed-over',
      title: 'Inverter or not sure: over to a senior',
      says: NOT_COVERED,
      next: ['A senior takes it from here, with the maker’s instructions.'],
      who: 'senior',
      judged: [],
      evidence: ['observation', 'class', 'bus'],
      raises: 'not-covered',
      then: '!raised',
    }),
    'what-you-see': note({
      say: 'This version does not lead this call. Note what a senior needs.',
      body: [
        'What you see and hear, since when, thermostat display, blower, breaker position.',
        'Nameplate: volts, phase, RLA, LRA, fan FLA, refrigerant. Filter, coil, ice, water.',
      ],
      callouts: [{ level: 'notice', text: 'Leave it off and closed. The call goes to a senior with your note.' }],
      next: 'raised',
      cant: 'raised',
    }),
    raised: verdict({
      verdict: 'not-covered',
      title: 'Noted and raised to a senior',
      says: NOT_COVERED,
      next: ['A senior takes it from here.'],
      who: 'senior',
      judged: [],
      evidence: ['observation', 'class', 'what-you-see'],
      raises: 'not-covered',
      then: '!raised',
    }),
  },
});

const root = flow({
  id: 'no-cool-root',
  version: 1,
  title: 'No-cool call',
  exits: ['done', 'raised', 'left'],
  steps: {
    round: include(round, {
      exits: { done: '!done', raised: '!raised', left: '!left' },
      needs: {},
      again: { times: 3, spent: 'spent' },
      round: true,
    }),
    spent: verdict({
      verdict: 'rounds-spent',
      title: 'Three rounds without a proven repair',
      says: ['No fourth round on one visit without a senior.'],
      next: ['Leave it off. A senior reads the three rounds.'],
      who: 'senior',
      judged: [],
      evidence: [],
      raises: 'verdict',
      then: '!raised',
    }),
  },
});

export const noCool = manual({
  id: 'no-cool',
  version: 1,
  title: 'No-cool call',
  root,
  isolation: dead,
  cabinets: { outdoor: 'Outdoor unit' },
  fromRecord: ['rla', 'lra', 'fla'],
  labelTolerance: LIMITS.label.tolerance,
  endings: {
    done: { title: 'Proven', says: 'The repair is proven. A senior reads and signs the record.' },
    raised: { title: 'With a senior', says: 'A senior has the record. Leave the unit off and closed until you hear.' },
    left: { title: 'Left off', says: 'The unit stays off. Say how it is left, so that the next person knows.' },
  },
});
