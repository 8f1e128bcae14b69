import {
  amps,
  confirm,
  degreesApart,
  flow,
  form,
  found,
  include,
  judge,
  measure,
  one,
  verdict,
  volts,
} from '../../engine/vocabulary.ts';
import { REPLACED } from '../capacitor/verdicts.ts';
import { QUALIFIED } from '../cautions.ts';
import { BLOWER_RESTART } from '../examples/blower.ts';
import { LIMITS } from '../limits.ts';
import { ROUNDS } from '../motors/starts.ts';
import { cooled } from '../restart/cooled.ts';
import { NOTHING_ODD } from '../restart/sound.ts';
import { located } from '../supply/located.ts';
import { INDOOR_VOLTS } from '../unit.ts';
import { BLOWER_MOTOR } from './dead-tests.ts';

const sound = {
  fine: NOTHING_ODD,
  noise: { label: 'A new noise', words: ['noise', 'noisy', 'rattles', 'rattling', 'rubs', 'growls', 'squeals'] },
  backwards: {
    label: 'The wheel turns the wrong way',
    words: ['backwards', 'runs backwards', 'running backwards', 'wrong way', 'reversed'],
  },
};
const OPENED_HOT = ['blower-protector-open', 'blower-open-until-cool'] as const;
/** What ends in a blower that has something to show for it. */
const REPAIRED = [
  ...REPLACED,
  ...BLOWER_MOTOR,
  'blower-wheel-cleared',
  'blower-door-off',
  'drain-cleared',
  'no-float-there',
] as const;

const NOT_OPENED = ['drain-in-order', 'drain-in-order-no-float'] as const;

/** Power on, the blower's figures, then the outdoor unit on again and the split. */
export const blowerRestart = flow({
  id: 'blower-restart',
  version: 1,
  title: 'Blower, restart and prove',
  exits: ['done', 'again', 'live', 'raised', 'left'],
  examples: BLOWER_RESTART,
  steps: {
    plate: form({
      say: 'From the indoor unit’s nameplate: its volts, the blower’s FLA.',
      body: ['Leave FLA out with _ where you can’t read it.'],
      parts: {
        volts: one('Volts printed', INDOOR_VOLTS, { as: 'cabinet:volts' }),
        fla: amps('Blower FLA', { optional: true, as: 'cabinet:fla', over: false, words: ['blower'] }),
      },
      next: 'hot',
    }),
    hot: found({ among: { open: { verdicts: [...OPENED_HOT], to: 'cool' } }, none: 'closed' }),
    ...cooled('Common to each speed: the one that read OL.', 'closed', 'stays-off'),
    closed: confirm({
      sitting: true,
      powers: ['yes'],
      say: 'Close up and clear the indoor unit.',
      body: [
        'Tools out, doors on, filter in, people clear.',
        'Your lock comes off by your own hand. Power on, fan at ON.',
      ],
      callouts: [QUALIFIED],
      source: ['29 CFR 1910.333(b)(2)(v): tools removed, people warned and clear, lock removed by who applied it'],
      yes: 'Closed, clear, qualified for the live readings',
      words: [
        'closed',
        'closed up',
        'closed and clear',
        'all closed up',
        'buttoned up',
        'door on power on',
        'power on',
        'turned on',
        'turned it on',
      ],
      no: {
        label: 'Not today: it stays off',
        words: ['stays off', 'not today', 'leave it off', 'leaving it off', 'left off'],
        to: 'stays-off',
      },
      next: 'figures',
    }),
    figures: measure({
      say: 'The blower’s live figures in one sitting.',
      body: [
        'Line volts, blower amps on its common, doors on: an open door unloads the blower.',
        'Then the outdoor unit on again. The split after 10 to 15 minutes: return minus supply.',
      ],
      callouts: [{ level: 'danger', text: 'Line voltage is present. The isolation has ended.' }],
      why: 'A verdict is not proven until these figures are in.',
      source: ['A blower above its FLA is a finding: common practice, no single source'],
      circuit: 'line',
      fields: {
        l1l2: volts('Line volts', { over: false, words: ['volts', 'v', 'line', 'supply volts', 'line volts'] }),
        fan: amps('Blower', { over: false, words: ['blower', 'amps'] }),
        split: degreesApart('Split, return minus supply', {
          words: ['delta', 'delta t', 'td', 'dt', 'temp split', 'temperature split'],
          optional: true,
        }),
        sound: one('What you see and hear', sound, { optional: true }),
      },
      cant: 'no-figures',
      next: 'judged',
    }),
    judged: judge('blower-restart', {
      of: { figures: 'figures', later: 'later', plate: 'plate' },
      limits: LIMITS.restart,
      says: {
        wait: 'All that was read so far is in. The split is still to come.',
        supply: 'The supply is outside its limits.',
        'not-running': 'The blower draws nothing. Outdoor unit off again.',
        'fan-high': 'The blower draws more than its FLA.',
        sound: 'Something sounds or turns wrong.',
        'split-out': 'The split is out of its usual range: air or charge is another question.',
      },
      then: {
        in: 'outcome',
        wait: 'later',
        supply: 'supply',
        'not-running': 'still',
        'fan-high': 'off',
        sound: 'off',
        'split-out': 'off',
        undecided: 'no-figures',
      },
    }),
    later: form({
      say: 'Outdoor unit on. After 10 to 15 minutes: the split, return minus supply.',
      body: ['Measured near the coil, not at the grilles. Nothing odd to see or hear?'],
      why: 'Amps show that the blower runs. The split shows that it cools.',
      source: ['14 to 23 °F at usual humidity and airflow: common practice, sources differ'],
      parts: {
        split: degreesApart('Split, return minus supply', {
          words: ['delta', 'delta t', 'td', 'dt', 'temp split', 'temperature split'],
        }),
        sound: one('What you see and hear', sound, { optional: true }),
      },
      cant: 'judged',
      next: 'judged',
    }),
    outcome: found({
      among: {
        repaired: { verdicts: REPAIRED, to: 'proven' },
        hot: { verdicts: [...OPENED_HOT], to: 'why-hot' },
      },
      none: 'nothing-found',
    }),
    // Of a drain in order nobody has opened the unit yet, nor asked what drives its blower: the next round does.
    still: found({ among: { closed: { verdicts: [...REPAIRED, ...NOT_OPENED], to: 'off' } }, none: '!live' }),
    off: confirm({
      say: 'Turn both units off. The next round begins from the observation.',
      body: [`At most ${ROUNDS} rounds, then a senior.`],
      yes: 'Off',
      unsure: '!again',
      next: '!again',
    }),
    proven: verdict({
      verdict: 'blower-proven',
      title: 'The blower’s repair is proven',
      says: ['The blower’s figures are in and lie within what was checked.'],
      next: [
        'Tell the customer what was found and fitted.',
        'Clean what made it hot: filter, coil, wheel.',
        'A senior reads and signs the record.',
      ],
      who: 'junior',
      judged: ['judged'],
      evidence: ['figures', 'plate', 'later'],
      then: '!done',
    }),
    'nothing-found': verdict({
      verdict: 'blower-runs-nothing-found',
      title: 'The blower runs within what was checked: no part found at fault',
      says: ['The dead tests found nothing, and the figures are in.'],
      next: [
        'Tell the customer what was measured.',
        'Watch one whole cycle. If it comes back, a senior sees the readings.',
      ],
      who: 'junior',
      judged: ['judged'],
      evidence: ['figures', 'plate', 'later'],
      then: '!done',
    }),
    supply: include(located, { exits: { raised: '!raised' }, needs: { plate: 'plate', unit: 'plate' } }),
    'why-hot': verdict({
      verdict: 'blower-protector-without-cause',
      title: 'The blower runs again, and why its protector opened is not known: not proven',
      says: ['A protector opens on heat. It has cooled, and what made it hot was not found.'],
      next: [
        'Filter, wheel, ducts, capacitor, bearings, volts: a senior says which is looked at first.',
        'Tell the customer that it may stop again.',
      ],
      who: 'senior',
      judged: ['judged'],
      evidence: ['cool', 'figures', 'later'],
      raises: 'verdict',
      then: '!raised',
    }),
    'no-figures': verdict({
      verdict: 'blower-not-proven',
      title: 'The blower was restarted, not proven',
      says: ['Without the figures the repair is not proven.'],
      next: ['Line volts, blower amps and the split would prove it. A senior sees this call.'],
      who: 'senior',
      judged: ['judged'],
      evidence: ['figures', 'later'],
      raises: 'verdict',
      then: '!raised',
    }),
    'stays-off': verdict({
      verdict: 'blower-left-off',
      title: 'Left off',
      says: ['Not restarted, not proven. The outdoor unit stays off too.'],
      next: ['Somebody restarts and proves it at the next visit.'],
      who: 'junior',
      judged: [],
      evidence: ['closed', 'cool'],
      then: '!left',
    }),
  },
});
