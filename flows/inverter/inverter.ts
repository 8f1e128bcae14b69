import {
  act,
  choose,
  flow,
  form,
  judge,
  measure,
  noted,
  ohms,
  one,
  pictured,
  verdict,
} from '../../engine/vocabulary.ts';
import { INVERTER } from '../examples/inverter.ts';
import { LIMITS } from '../limits.ts';

/** Inverter, communicating, mini-split, or nobody is sure: what may be read of it, then over to a senior with the list. */
export const inverter = flow({
  id: 'inverter',
  version: 1,
  title: 'Inverter or mini-split',
  exits: ['raised'],
  examples: INVERTER,
  steps: {
    closed: form({
      say: 'Closed, no tool: code, lights and remote.',
      body: ['Photo of the code or the LED. Remote at COOL, lowest setting. Both ends powered? Count the blinks.'],
      callouts: [
        {
          level: 'danger',
          text: 'An inverter’s bus holds far more energy than a run capacitor. Not sure counts as inverter.',
        },
      ],
      why: 'The maker’s table reads the code. A code alone replaces no board.',
      parts: {
        code: noted('Code or blinks, as shown', { optional: true }),
        photo: pictured('Photo of code or lights', { optional: true }),
        power: one('Both ends powered', {
          both: { label: 'Both show a light or move', words: ['both', 'both powered', 'yes'] },
          indoor: { label: 'Indoor only', words: ['indoor only', 'outdoor dead'] },
          none: { label: 'None', words: ['none', 'nothing', 'dead'] },
        }),
      },
      next: 'may-open',
      cant: 'handed-over',
    }),
    'may-open': choose({
      say: 'Dead tests inside need the maker’s label, its wait and its P and N points. Do you have them?',
      body: ['Without them it stays closed and goes to a senior.'],
      why: 'A bus of hundreds of volts waits behind the cover.',
      options: {
        yes: { label: 'Label read, points known, trained for it', words: ['yes', 'have them', 'trained'], to: 'fuses' },
        no: { label: 'No: it stays closed', words: ['no', 'stays closed', 'closed', 'not trained'], to: 'handed-over' },
      },
    }),
    fuses: measure({
      say: 'Line fuses and the board’s fuse, in ohms.',
      body: ['Out of their holders or one end free. Type ol for over range.'],
      why: 'A blown fuse on an inverter stands for a shorted bus or module until shown otherwise.',
      source: ['Fuse under 0.5 Ω: common practice, no single source'],
      circuit: 'part',
      fields: {
        fuse1: ohms('First fuse', { words: ['fuses', 'fuse', 'line fuse'] }),
        fuse2: ohms('Second fuse', { optional: true, words: ['fuses', 'fuse', 'board fuse'] }),
      },
      cant: 'plug',
      next: 'judged',
    }),
    judged: judge('fuses', {
      of: { readings: 'fuses' },
      limits: LIMITS.fuses,
      quiet: ['good', 'undecided'],
      then: { good: 'plug', blown: 'blown', between: 'plug', undecided: 'plug' },
    }),
    blown: verdict({
      verdict: 'inverter-fuse-blown',
      title: 'A fuse of the inverter is blown: never just a new fuse',
      says: ['The bus or the power module counts as shorted until it is shown whole.'],
      next: ['No new fuse. Finish the list: a senior and the maker decide.'],
      who: 'junior',
      judged: ['judged'],
      evidence: ['fuses'],
      then: 'plug',
    }),
    plug: act('wires off', {
      say: 'Take the compressor’s plug off the board.',
      body: ['U, V, W by colour: note them. Photo helps.'],
      yes: 'Plug off, noted',
      words: ['plug off', 'off', 'unplugged'],
      cant: { label: 'It doesn’t come off', to: 'sensors' },
      next: 'windings',
    }),
    windings: measure({
      say: 'Compressor in ohms, plug off: U to V, V to W, U to W, then to ground.',
      body: ['Three equal pairs, 0.3 to 2 Ω is usual. No insulation tester unless the board is unplugged.'],
      why: 'Equal pairs and no ground clear the compressor; the module is the maker’s to test.',
      source: ['0.3 to 2 Ω: common practice, no single source'],
      circuit: 'part',
      fields: {
        first: ohms('U to V', { words: ['u-v', 'uv'] }),
        second: ohms('V to W', { words: ['v-w', 'vw'] }),
        third: ohms('U to W', { words: ['u-w', 'uw'] }),
        frame: ohms('To ground, the lowest', { words: ['ground', 'gnd', 'g', 'to ground'] }),
      },
      cant: 'sensors',
      next: 'three',
    }),
    three: judge('three-windings', {
      of: { readings: 'windings', earlier: null, warm: null },
      limits: LIMITS.threeWindings,
      then: {
        good: 'sensors',
        'ask-warm': 'sensors',
        'protector-open': 'sensors',
        open: 'sensors',
        grounded: 'sensors',
        repeat: 'sensors',
        undecided: 'sensors',
      },
    }),
    sensors: measure({
      say: 'Sensors in ohms, each unplugged; look at the fan’s plug and at the signal cable’s splices.',
      body: ['Beside the maker’s table. 10 kΩ at 77 °F is common. Leave out what you can’t reach with _.'],
      why: 'A sensor off its table, or a splice in the signal cable, gives codes that no board cures.',
      source: ['10 kΩ at 77 °F: from memory, it only advises'],
      circuit: 'part',
      fields: {
        outdoor: ohms('Outdoor air', { optional: true, words: ['ambient', 'outdoor'] }),
        coil: ohms('Coil', { optional: true }),
        discharge: ohms('Discharge', { optional: true }),
        splice: one(
          'Signal cable',
          {
            whole: { label: 'One piece', words: ['whole', 'no splice', 'one piece'] },
            spliced: { label: 'Spliced', words: ['splice', 'spliced'] },
          },
          { optional: true },
        ),
      },
      cant: 'handed-over',
      next: 'handed-over',
    }),
    'handed-over': verdict({
      verdict: 'inverter-handed-over',
      title: 'Inverter or not sure: over to a senior with what was read',
      says: ['A code alone, or a bare “no start”, condemns nothing here.'],
      next: [
        'Signal wire, module and board are read by the maker’s test, by somebody trained for it.',
        'Closed, locked or off at its means. Tell the customer who comes and why.',
      ],
      who: 'senior',
      judged: ['judged', 'three'],
      evidence: ['closed', 'may-open', 'fuses', 'windings', 'sensors'],
      raises: 'not-covered',
      then: '!raised',
    }),
  },
});
