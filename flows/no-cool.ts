import { choose, flow, include, judge, manual, note, verdict } from '../engine/vocabulary.ts';
import { blower } from './blower.ts';
import { deadBlock } from './dead-block.ts';
import { ROOT, ROUND } from './examples/start.ts';
import { LIMITS } from './limits.ts';
import { dead } from './make-dead.ts';
import { repair } from './repair.ts';
import { restart } from './restart.ts';
import { underLoad } from './under-load.ts';

const NOT_COVERED = [
  'This version leads the dead tests, the repair and the restart of single-phase units and of PSC blowers with a run capacitor. Nothing is guessed beyond it.',
];

/** One round: observe, classify, test, verdict, fit, restart. A failed restart begins the next. */
const round = flow({
  id: 'round',
  version: 1,
  title: 'Observe and classify',
  exits: ['done', 'raised', 'left', 'again'],
  examples: ROUND,
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
      as: 'round:observation',
      options: {
        a: {
          label: 'Outdoor unit silent',
          words: ['silent', 'dead', 'nothing runs outside', 'outdoor unit dead', 'not doing anything'],
          to: 'what-you-see',
        },
        b: {
          label: 'Hum, nothing turns',
          words: ['hums nothing turns', 'hum', 'hums', 'humming', 'just hums', 'buzz no spin'],
          to: 'class',
        },
        c: {
          label: 'Compressor runs, fan still',
          words: ['fan still', 'fan not turning', 'fan not spinning', 'condenser fan out', 'fan dead'],
          to: 'class',
        },
        d: {
          label: 'Fan runs, compressor hums, clicks off or is silent',
          words: [
            'fan runs comp hums',
            'compressor hums',
            'comp wont start',
            'compressor not starting',
            'comp clicks off',
          ],
          to: 'class',
        },
        e: {
          label: 'Both run, air not cold',
          words: ['not cold', 'running not cooling', 'both run no cooling', 'blowing cool not cold'],
          to: 'what-you-see',
        },
        f: {
          label: 'Starts and stops every few minutes',
          words: ['short cycling', 'short cycles', 'kicks on and off', 'cycling'],
          to: 'class',
        },
        g: {
          label: 'Contactor buzzes or chatters',
          words: ['chatters', 'buzzes', 'contactor chattering', 'contactor buzzing'],
          to: 'what-you-see',
        },
        h: {
          label: 'Breaker trips or fuse opens',
          words: [
            'breaker trips',
            'fuse blows',
            'trips',
            'breaker tripped',
            'blown fuse',
            'keeps tripping',
            'pops breaker',
          ],
          to: 'class',
        },
        i: {
          label: 'Outdoor runs, indoor blower doesn’t',
          words: ['no blower', 'no air inside', 'blower dead', 'blower not running'],
          to: 'blower',
        },
        j: {
          label: 'Ice on coil or lines',
          words: ['ice', 'frozen', 'iced up', 'frozen coil', 'ice on the lineset'],
          to: 'what-you-see',
        },
        k: {
          label: 'Water at the indoor unit, float tripped',
          words: ['water', 'float', 'float switch tripped', 'leaking water', 'pan full'],
          to: 'what-you-see',
        },
        l: {
          label: 'Other noise or smell',
          words: ['noise', 'smell', 'grinding', 'squealing', 'loud'],
          to: 'what-you-see',
        },
        m: {
          label: 'Outdoor runs with the thermostat OFF',
          words: ['runs with stat off', 'wont shut off', 'runs all the time'],
          to: 'what-you-see',
        },
        n: {
          label: 'Warm air in cooling',
          words: ['warm air', 'hot air', 'blowing hot', 'blows warm'],
          to: 'what-you-see',
        },
        o: {
          label: 'Error code or blinking board',
          words: ['error code', 'blinking', 'flashing light', 'fault code'],
          to: 'what-you-see',
        },
        p: {
          label: 'Blower never stops, compressor locked out, alarm',
          words: ['leak alarm', 'locked out', 'blower never stops'],
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
          label: 'PSC with a run capacitor of two or three terminals',
          words: ['psc', 'dual', 'dual cap', 'single'],
          to: 'block',
        },
        ecm: {
          label: 'Single-section capacitor, electronically commutated fan',
          words: ['ecm', 'electronic fan'],
          to: 'ecm-fan',
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
    'ecm-fan': judge('motors', {
      of: { seen: '@round:observation' },
      limits: {},
      quiet: ['compressor', 'fan', 'both', 'undecided'],
      then: { compressor: 'block', fan: 'fan-electronics', both: 'block', undecided: 'block' },
    }),
    'fan-electronics': note({
      say: 'The fan’s electronics are not measured here. Note what a senior needs.',
      body: [
        'Stop here with the cover on. Off at the means; its own bus holds for five minutes and more.',
        'Code or light, connector dry or wet, does the blade turn freely by hand with the power locked off?',
      ],
      callouts: [{ level: 'danger', text: 'No discharge tool and no capacitor procedure on an electronic fan.' }],
      why: 'A fan with electronics has no run capacitor. Volts and command at its plug decide, by the maker’s test.',
      next: 'electronics-raised',
      cant: 'electronics-raised',
    }),
    'electronics-raised': verdict({
      verdict: 'electronic-fan-handed-over',
      title: 'The electronic fan stands still: over to a senior',
      says: ['“No capacitor” condemns no electronic fan. Line volts, command, a free blade and a dry connector do.'],
      next: ['A senior takes it from here, with the maker’s test.'],
      who: 'senior',
      judged: [],
      evidence: ['observation', 'class', 'fan-electronics'],
      raises: 'not-covered',
      then: '!raised',
    }),
    block: include(deadBlock, {
      exits: { repair: 'repair', clean: 'restart', 'under-load': 'under-load', raised: '!raised' },
      needs: {},
    }),
    'under-load': include(underLoad, {
      exits: { replace: 'repair', good: 'restart', raised: '!raised' },
      needs: {},
    }),
    repair: include(repair, { exits: { fitted: 'restart', left: '!left' }, needs: {} }),
    restart: include(restart, {
      exits: { done: '!done', again: '!again', raised: '!raised', left: '!left' },
      needs: {},
    }),
    blower: include(blower, {
      cabinet: 'indoor',
      exits: { done: '!done', again: '!again', raised: '!raised', left: '!left' },
      needs: {},
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
  examples: ROOT,
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
  cabinets: { outdoor: 'Outdoor unit', indoor: 'Indoor unit' },
  fromRecord: ['rla', 'lra', 'fla'],
  labelTolerance: LIMITS.label.tolerance,
  endings: {
    done: { title: 'Proven', says: 'The repair is proven. A senior reads and signs the record.' },
    raised: { title: 'With a senior', says: 'A senior has the record. Leave the unit off and closed until you hear.' },
    left: { title: 'Left off', says: 'The unit stays off. Say how it is left, so that the next person knows.' },
  },
});
