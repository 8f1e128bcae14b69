import { act, choose, flow, judge, measure, ohms, probes, verdict } from '../../engine/vocabulary.ts';
import { GROUND } from '../examples/trips.ts';
import { LIMITS } from '../limits.ts';

/** Verdicts of a ground after which there is something to prove at a restart. */
export const GROUND_SETTLED = ['wire-chafed', 'heater-grounded'] as const;

/** The loads read low to ground: split the branches until the low one is found. The wire comes before the motor. */
export const ground = flow({
  id: 'ground',
  version: 1,
  title: 'Which branch is grounded',
  exits: ['replace', 'settled', 'compressor', 'raised'],
  examples: GROUND,
  steps: {
    split: measure({
      say: 'Take the branches apart and read each alone to ground, bare metal.',
      body: [
        'Compressor at its own harness, crankcase heater off. Fan at its own leads. Heater alone. The cable alone, both ends free.',
        'Type ol for over range; leave out with _ what the unit hasn’t.',
      ],
      why: 'Only the branch that reads low is guilty. Together they say nothing of each.',
      source: ['Splitting the branches: common practice, no single source'],
      picture: probes(
        'Ω',
        ['Compressor, its harness', 'bare metal', 'OL at meter volts'],
        ['Fan, its own leads', 'bare metal', 'OL at meter volts'],
        ['Heater', 'bare metal', 'OL at meter volts'],
        ['Cable, both ends free', 'bare metal', 'OL at meter volts'],
      ),
      circuit: 'part',
      fields: {
        comp: ohms('Compressor to ground', { words: ['compressor', 'comp'] }),
        fan: ohms('Fan to ground', { words: ['fan motor'] }),
        heater: ohms('Heater to ground', { optional: true, words: ['crankcase', 'heater'] }),
        cable: ohms('Cable to ground', { optional: true, words: ['wire', 'cable', 'whip'] }),
      },
      cant: 'open',
      next: 'branch',
    }),
    branch: judge('ground-branches', {
      of: { readings: 'split' },
      limits: LIMITS.groundBranches,
      then: {
        comp: '!compressor',
        fan: 'fan',
        heater: 'heater',
        cable: 'wire',
        several: 'open',
        none: 'gone',
        undecided: 'open',
      },
    }),
    fan: verdict({
      verdict: 'fan-to-frame',
      title: 'The fan motor reads low to its frame: replace the motor',
      says: ['Low to the frame at its own leads, past the harness.'],
      next: [
        'Never energise it.',
        'The motor that the nameplate asks for, with the capacitor it asks for.',
        'Not proven until the restart numbers are in.',
      ],
      who: 'junior',
      judged: ['branch'],
      evidence: ['split'],
      then: '!replace',
    }),
    heater: act('wires off', {
      say: 'The heater is grounded. Take it out of the circuit: its wires off, each insulated.',
      body: ['It keeps liquid out of the oil in the cold: it is replaced, not forgotten.'],
      yes: 'Off, insulated',
      words: ['off', 'heater off', 'wires off', 'insulated'],
      cant: { label: 'Not possible', to: 'open' },
      next: 'heater-out',
    }),
    'heater-out': verdict({
      verdict: 'heater-grounded',
      title: 'The crankcase heater is grounded: off until a new one is in',
      says: ['It alone reads low to ground. The motors are clear.'],
      next: [
        'A new heater of the same watts and volts before the cold season.',
        'Tell the customer that it runs without it until then.',
        'Not proven until the restart numbers are in.',
      ],
      who: 'junior',
      judged: ['branch'],
      evidence: ['split', 'heater'],
      then: '!settled',
    }),
    wire: choose({
      say: 'The cable alone reads low. Look along it: where is it rubbed, cut or crushed?',
      body: ['Edges of the cabinet, the fan’s guard, tubing, a staple.'],
      options: {
        found: { label: 'Chafed place found', words: ['found', 'chafed', 'rubbed', 'found it', 'cut'], to: 'mended' },
        none: { label: 'Nothing to see', words: ['nothing', 'not found', 'cant see it'], to: 'open' },
      },
    }),
    mended: act('rewire', {
      say: 'Replace or mend the wire, and route it clear of edges.',
      body: ['Splices only where the code allows them. Same gauge, same temperature rating.'],
      yes: 'Mended, routed clear',
      words: ['mended', 'replaced', 'fixed', 'wire replaced'],
      cant: { label: 'Not today', to: 'open' },
      next: 'retest',
    }),
    retest: measure({
      say: 'The mended wire to ground once more.',
      body: ['Type ol for over range.'],
      why: 'It clears beyond the chafe: that is its proof.',
      circuit: 'part',
      fields: { leads: ohms('The wire to ground', { words: ['cable', 'wire', 'ground'] }) },
      cant: 'open',
      next: 'cleared',
    }),
    cleared: judge('leads-to-ground', {
      of: { readings: 'retest', plate: null },
      limits: LIMITS.loadsToGround,
      then: { 'none-found': 'chafed', low: 'open', undecided: 'open' },
    }),
    chafed: verdict({
      verdict: 'wire-chafed',
      title: 'A wire was chafed to ground: mended',
      says: ['It read low alone, and clears now. The motors are clear.'],
      next: ['What rubbed it is bent or padded.', 'Not proven until the restart numbers are in.'],
      who: 'junior',
      judged: ['branch', 'cleared'],
      evidence: ['split', 'wire', 'mended', 'retest'],
      then: '!settled',
    }),
    gone: verdict({
      verdict: 'ground-gone',
      title: 'Apart, no branch reads low: the ground lies where they join',
      says: ['A wet plug, a harness, or a wire that moved. It may come back.'],
      next: ['A senior looks at the joints. Nothing is energised.'],
      who: 'senior',
      judged: ['branch'],
      evidence: ['split'],
      raises: 'verdict',
      then: '!raised',
    }),
    open: verdict({
      verdict: 'ground-not-located',
      title: 'A ground that is not located: it stays off',
      says: ['Low to ground, and which branch it is remains open.'],
      next: ['A senior splits the branches until the low one is found.', 'Nothing is energised.'],
      who: 'senior',
      judged: ['branch', 'cleared'],
      evidence: ['split', 'wire', 'retest'],
      raises: 'verdict',
      then: '!raised',
    }),
  },
});
