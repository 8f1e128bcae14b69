import { choose, degrees, flow, form, humidity, include, judge, several, verdict } from '../../engine/vocabulary.ts';
import { NOT_COLD } from '../examples/cooling/not-cold.ts';
import { LIMITS } from '../limits.ts';
import { behindPanel } from './behind-panel.ts';
import { bothRun } from './both-run.ts';
import { outdoors } from './outdoors.ts';

const air = {
  return: degrees('Return air, dry-bulb', { words: ['ret', 'return', 'return air', 'in'] }),
  supply: degrees('Supply air', { words: ['sup', 'supply', 'supply air', 'out'] }),
  wb: degrees('Return air, wet-bulb', { optional: true, words: ['wet bulb', 'wet-bulb', 'wb'] }),
  rh: humidity('Or its humidity', { optional: true, words: ['rh', 'humidity', 'relative humidity'] }),
};
const NEAR_COIL =
  'Near the coil, not at the grilles, after 15 minutes. Wet-bulb or humidity of the return: one of them.';
const SPLIT = [
  'Expected from the return’s humidity, ±3 °F: our model of the coil, after a trade-training article (secondary source)',
];

/** Both run and the air isn’t cold: air first, then amps, then the split, then the outdoor unit, last the charge. */
export const notCold = flow({
  id: 'not-cold',
  version: 1,
  title: 'Runs, not cold',
  exits: ['restart', 'block', 'raised', 'left'],
  examples: NOT_COLD,
  steps: {
    looked: form({
      say: 'Air side: what holds the air back?',
      body: [
        'Filter, what can be seen of the indoor coil, registers and dampers, blower speed.',
        'Return: does it draw hot air from attic or crawl space? Ice anywhere: type back, it is another call.',
      ],
      why: 'Air is the cheapest cause and looks like a wrong charge.',
      source: ['Air before charge: common practice, no single source'],
      parts: {
        seen: several('What you see', {
          nothing: {
            label: 'Nothing: clean and open',
            alone: true,
            words: ['nothing', 'clean', 'all clean', 'clean and open', 'all good', 'ok', 'filter clean', 'nothing odd'],
          },
          filter: {
            label: 'Filter clogged',
            words: ['filter', 'dirty filter', 'filter dirty', 'clogged filter', 'plugged filter', 'filter plugged'],
          },
          'indoor-coil': { label: 'Indoor coil dirty', words: ['coil', 'dirty coil', 'coil dirty', 'coil plugged'] },
          registers: {
            label: 'Registers or dampers closed',
            words: ['registers', 'registers closed', 'dampers', 'dampers closed', 'closed registers', 'vents closed'],
          },
          blower: {
            label: 'Blower slow, or its wheel dirty',
            words: ['slow blower', 'blower slow', 'dirty wheel', 'wheel dirty', 'low speed'],
          },
          'return-leak': {
            label: 'Return draws hot air',
            words: ['return leak', 'leaky return', 'return leaking', 'duct leak', 'attic air'],
          },
          unsure: { label: 'Can’t tell', alone: true, words: ['not sure', 'dont know', 'unsure'] },
        }),
      },
      cant: 'running',
      next: 'running',
    }),
    running: include(bothRun, {
      exits: { runs: 'air', stopped: '!block', raised: '!raised' },
      needs: {},
    }),
    air: form({
      say: 'The split: return and supply air, and how humid the return is.',
      body: [NEAR_COIL],
      why: 'Humid air is cooled by fewer degrees. The split says whether the coil works for the air it gets.',
      source: SPLIT,
      parts: air,
      cant: 'airflow',
      next: 'airflow',
    }),
    airflow: judge('airflow', {
      of: { look: 'looked', air: 'air' },
      limits: LIMITS.split,
      quiet: ['weak'],
      then: {
        short: 'short',
        'short-elsewhere': 'short-elsewhere',
        dirty: 'right',
        'dirty-weak': 'right-first',
        within: 'cools',
        weak: 'outdoors',
        undecided: 'outdoors',
      },
    }),
    short: verdict({
      verdict: 'airflow-short',
      title: 'Too little air over the indoor coil',
      says: ['Something holds the air back, and the split is high. It is not the charge.'],
      next: [
        'Put right what was seen, then measure again.',
        'Why did it get so far: filter size, how often changed, closed rooms?',
        'Tell the customer how often the filter wants changing, and that closed registers cost cold.',
        'Not proven until the restart numbers are in.',
      ],
      who: 'junior',
      judged: ['airflow'],
      evidence: ['looked', 'air'],
      then: 'right',
    }),
    'short-elsewhere': verdict({
      verdict: 'airflow-short-elsewhere',
      title: 'Too little air, and nothing seen that holds it back',
      says: ['The split is high. Duct, blower speed, a coil dirty on its far side: a senior finds which.'],
      next: [
        'A senior decides about static pressure, speed tap and opening the coil.',
        'Tell the customer: too little air reaches the coil; the charge is not touched.',
      ],
      who: 'senior',
      judged: ['airflow'],
      evidence: ['looked', 'air'],
      raises: 'verdict',
      then: '!raised',
    }),
    right: choose({
      say: 'Put the air side right. Done?',
      body: [
        'Filter, registers, dampers, return: now.',
        'Coil or wheel behind a panel: no hand in there before the indoor unit is proved dead. Say so, and that comes next.',
      ],
      callouts: [
        { level: 'warning', text: 'A wheel that starts takes fingers. No panel comes off with the blower live.' },
      ],
      why: 'What holds the air back is put right before anything else is judged.',
      options: {
        done: {
          label: 'Put right',
          words: ['fixed', 'changed', 'cleaned', 'filter changed', 'new filter', 'new filter in', 'opened'],
          to: 'righted',
        },
        panel: {
          label: 'Coil or wheel behind a panel',
          words: ['behind a panel', 'panel', 'coil', 'wheel', 'coil or wheel'],
          to: 'blower',
        },
        no: { label: 'Not today', words: ['later', 'cant today', 'needs another visit'], to: 'not-righted' },
      },
      cant: 'not-righted',
    }),
    'right-first': choose({
      say: 'Put the air side right first. Done?',
      body: [
        'Filter, registers, dampers, return: now. Then 15 minutes of running.',
        'Coil or wheel behind a panel: no hand in there before the indoor unit is proved dead. Say so, and that comes next.',
      ],
      callouts: [
        { level: 'warning', text: 'A wheel that starts takes fingers. No panel comes off with the blower live.' },
      ],
      why: 'No charge is judged on a dirty coil or a clogged filter.',
      options: {
        done: {
          label: 'Put right, ran 15 minutes',
          words: ['fixed', 'changed', 'cleaned', 'filter changed', 'new filter', 'new filter in', 'opened'],
          to: 'air-again',
        },
        panel: {
          label: 'Coil or wheel behind a panel',
          words: ['behind a panel', 'panel', 'coil', 'wheel', 'coil or wheel'],
          to: 'blower',
        },
        no: { label: 'Not today', words: ['later', 'cant today', 'needs another visit'], to: 'not-righted' },
      },
      cant: 'not-righted',
    }),
    // A place of the indoor cabinet.
    blower: include(behindPanel, {
      cabinet: 'indoor',
      exits: { cleaned: 'righted', not: 'not-righted' },
      needs: {},
    }),
    righted: verdict({
      verdict: 'air-side-righted',
      title: 'The air side is put right',
      says: ['What held the air back is gone. Whether that was all, the restart shows.'],
      next: ['Restart and prove it.', 'Tell the customer what was clogged or closed, and what to watch.'],
      who: 'junior',
      judged: ['airflow'],
      evidence: ['looked', 'right'],
      then: '!restart',
    }),
    'air-again': form({
      say: 'The split once more: return and supply air, and how humid the return is.',
      body: [NEAR_COIL],
      why: 'It may have been the air alone.',
      source: SPLIT,
      parts: air,
      cant: 'split',
      next: 'split',
    }),
    split: judge('split', {
      of: { air: 'air-again' },
      limits: LIMITS.split,
      then: { within: 'was-air', low: 'outdoors', high: 'outdoors', undecided: 'outdoors' },
    }),
    'was-air': verdict({
      verdict: 'air-side-was-it',
      title: 'It was the air side: it cools as it should now',
      says: ['With the air side put right the split is what this air lets expect.'],
      next: ['Restart and prove it.', 'Tell the customer what was clogged or closed, and what to watch.'],
      who: 'junior',
      judged: ['airflow', 'split'],
      evidence: ['looked', 'air', 'air-again'],
      then: '!restart',
    }),
    cools: verdict({
      verdict: 'cools-as-it-should',
      title: 'The air is cooled as it should be',
      says: ['Nothing holds the air back, and the split is what this air lets expect. No fault is found here.'],
      next: [
        'Take the restart’s figures.',
        'Load, ducts, doors, attic: why the rooms stay warm is the next question, not the unit.',
        'Tell the customer what was measured, and that the unit does its work.',
      ],
      who: 'junior',
      judged: ['airflow'],
      evidence: ['looked', 'air'],
      then: '!restart',
    }),
    outdoors: include(outdoors, {
      exits: { restart: '!restart', block: '!block', raised: '!raised', left: '!left' },
      needs: {},
    }),
    'not-righted': verdict({
      verdict: 'air-side-left',
      title: 'The air side waits for another visit',
      says: ['Until it is put right no charge is judged, and it may ice.'],
      next: [
        'Leave cooling off where the coil is short of air; fan alone does no harm.',
        'The dispatcher books the cleaning. Tell the customer why it waits.',
      ],
      who: 'junior',
      judged: ['airflow'],
      evidence: ['looked', 'air'],
      then: '!left',
    }),
  },
});
