import { choose, degrees, flow, form, include, judge, several, verdict } from '../../engine/vocabulary.ts';
import { OUTDOORS } from '../examples/cooling/outdoors.ts';
import { LIMITS } from '../limits.ts';
import { circuit } from './circuit.ts';
import { WASH_CALLOUTS, WASH_WORDS } from './wash.ts';

/** The condenser’s own air and the line temperatures that anyone may take; behind it the circuit. */
export const outdoors = flow({
  id: 'outdoors',
  version: 1,
  title: 'Condenser and line temperatures',
  exits: ['restart', 'block', 'raised', 'left'],
  examples: OUTDOORS,
  steps: {
    looked: form({
      say: 'Outdoor unit, closed: what do you see, and how warm are its lines?',
      body: [
        'Coil, fan and which way it blows, what stands around it. Air has to leave upwards and not come back.',
        'A pipe clamp on the small line where it leaves, a thermometer in the shade. Big line too, if you can.',
      ],
      callouts: [{ level: 'warning', text: 'It runs. Hands stay outside the guard; the fan is never pushed.' }],
      why: 'A condenser short of air raises the pressure and takes the cold. Usual is a small line 5 to 20 °F above the outdoor air.',
      source: ['5 to 20 °F usual, above 25 °F short of air: common practice, no single source'],
      parts: {
        seen: several('What you see', {
          nothing: {
            label: 'Nothing: clean, blows up and out',
            alone: true,
            words: ['nothing', 'clean', 'all clean', 'all good', 'ok', 'coil clean', 'nothing odd'],
          },
          matted: {
            label: 'Coil matted',
            words: ['matted', 'coil matted', 'cottonwood', 'dirty coil', 'coil dirty', 'coil plugged', 'grass', 'lint'],
          },
          'outdoor-fan': {
            label: 'Fan slow, or blows the wrong way',
            words: ['slow fan', 'fan slow', 'fan backwards', 'wrong way', 'blows down'],
          },
          recirculation: {
            label: 'Draws its own warm air again',
            words: ['recirculation', 'recirculating', 'fence', 'deck', 'bushes', 'boxed in', 'shrubs'],
          },
          unsure: { label: 'Can’t tell', alone: true, words: ['not sure', 'dont know', 'unsure'] },
        }),
        liquid: degrees('Small line', {
          optional: true,
          words: ['liquid', 'liquid line', 'small', 'small line'],
        }),
        outdoor: degrees('Outdoor air', {
          optional: true,
          words: ['outside', 'outdoor', 'ambient', 'od'],
        }),
        suction: degrees('Big line', {
          optional: true,
          words: ['suction', 'suction line', 'big', 'big line', 'vapor line'],
        }),
      },
      cant: 'condenser',
      next: 'condenser',
    }),
    condenser: judge('condenser', {
      of: { look: 'looked' },
      limits: LIMITS.condenser,
      quiet: ['normal'],
      then: {
        'short-of-air': 'short',
        dirty: 'wash-first',
        warm: 'circuit',
        cool: 'circuit',
        normal: 'circuit',
        undecided: 'circuit',
      },
    }),
    short: verdict({
      verdict: 'condenser-air-short',
      title: 'The condenser is short of air',
      says: ['What was seen explains a small line more than 25 °F above the outdoor air. It is not the charge.'],
      next: [
        'Clean it or clear what stands around it, then measure again.',
        'Heat kills capacitors: look at their readings at the next dead test.',
        'Tell the customer to keep plants and lint away from it.',
        'Not proven until the restart numbers are in.',
      ],
      who: 'junior',
      judged: ['condenser'],
      evidence: ['looked'],
      then: 'wash',
    }),
    wash: choose({
      say: 'Clean the condenser and clear its surroundings. Done?',
      body: [
        'Off at the means with your own lock on. Wash from outside, cabinet closed, from the clean side out where you can.',
        'No water towards the electrical compartment. It dries before power comes back.',
      ],
      callouts: WASH_CALLOUTS,
      why: 'Nothing about the charge means anything before the coil is clean.',
      options: {
        done: {
          label: 'Cleaned, clear',
          words: WASH_WORDS.done,
          to: 'cleaned',
        },
        fan: { label: 'It is the fan', words: ['fan', 'fan is the problem'], to: 'fan' },
        no: { label: 'Not today', words: WASH_WORDS.no, to: 'not-cleaned' },
      },
      cant: 'not-cleaned',
    }),
    cleaned: verdict({
      verdict: 'condenser-cleaned',
      title: 'The condenser has its air again',
      says: ['Coil and surroundings are clear. Whether that was all, the restart shows.'],
      next: ['Restart and prove it.', 'Tell the customer what was cleaned, and to keep it clear.'],
      who: 'junior',
      judged: ['condenser'],
      evidence: ['looked', 'wash'],
      then: '!restart',
    }),
    'wash-first': choose({
      say: 'Clean the condenser and clear its surroundings first. Done?',
      body: [
        'Off at the means with your own lock on. Wash from outside, cabinet closed. No water towards the electrical compartment.',
        'Then on again, and 15 minutes of running.',
      ],
      callouts: WASH_CALLOUTS,
      why: 'A dirty condenser looks like a wrong charge.',
      options: {
        done: {
          label: 'Cleaned, ran 15 minutes',
          words: WASH_WORDS.done,
          to: 'circuit',
        },
        fan: { label: 'It is the fan', words: ['fan', 'fan is the problem'], to: 'fan' },
        no: { label: 'Not today', words: WASH_WORDS.no, to: 'not-cleaned' },
      },
      cant: 'not-cleaned',
    }),
    fan: verdict({
      verdict: 'condenser-fan-weak',
      title: 'The outdoor fan moves too little air: its dead tests decide',
      says: [
        'A slow or reversed fan is a capacitor, a wiring or a motor question. By sight none of them is condemned.',
      ],
      next: ['Thermostat off, then the means: high pressure follows. Fan section, spin and windings next, dead.'],
      who: 'junior',
      judged: ['condenser'],
      evidence: ['looked', 'wash', 'wash-first'],
      then: '!block',
    }),
    circuit: include(circuit, { exits: { restart: '!restart', raised: '!raised', left: '!left' }, needs: {} }),
    'not-cleaned': verdict({
      verdict: 'condenser-left',
      title: 'The condenser waits for another visit',
      says: ['Until it is clean no charge is judged. Running it hot shortens the life of compressor and capacitor.'],
      next: ['Leave it off. The dispatcher books the cleaning.', 'Tell the customer why it waits.'],
      who: 'junior',
      judged: ['condenser'],
      evidence: ['looked'],
      then: '!left',
    }),
  },
});
