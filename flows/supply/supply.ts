import { confirm, flow, include, judge, measure, verdict, volts } from '../../engine/vocabulary.ts';
import { GLOVES } from '../cautions.ts';
import { leftOff } from '../endings.ts';
import { SUPPLY } from '../examples/supply.ts';
import { LIMITS } from '../limits.ts';
import { NAMEPLATE_VOLTS, whichPlate } from '../unit.ts';
import { noSupply } from './absent.ts';
import { located } from './located.ts';

const V = (words: readonly string[], optional = false) => ({ over: false, words, ...(optional ? { optional } : {}) });
/** By how the unit was said to be fed when it was locked. */
const fed = (...is: string[]) => ({ fact: '@cabinet:supply', part: 'supply', is }) as const;
const LEGS = fed('two-legs');
const LINES = fed('three');
const NEUTRAL = fed('neutral');
const TO_GROUND = {
  l1g: volts('L1 to ground', { ...V(['l1-g']), when: LEGS }),
  l2g: volts('L2 to ground', { ...V(['l2-g']), when: LEGS }),
};
const OF_NEUTRAL = {
  hn: volts('Hot to neutral', { ...V(['h-n', 'hot neutral']), when: NEUTRAL }),
  hg: volts('Hot to ground', { ...V(['h-g', 'hot ground']), when: NEUTRAL }),
  ng: volts('Neutral to ground', { ...V(['n-g', 'neutral ground']), when: NEUTRAL }),
};

/** The supply under power, in one line, before the restart: the line itself, and what the start makes of it. */
export const supply = flow({
  id: 'supply',
  version: 1,
  title: 'Supply',
  exits: ['good', 'raised', 'left'],
  examples: SUPPLY,
  steps: {
    ready: confirm({
      sitting: true,
      powers: ['yes'],
      say: 'Close up and clear the unit; power on from a safe position.',
      body: [
        'Tools out, people clear. Your lock comes off by your own hand. Live readings for qualified people, one sitting.',
      ],
      callouts: [
        GLOVES,
        { level: 'warning', text: 'It hums and nothing turns: off within seconds, at the thermostat first.' },
      ],
      source: ['29 CFR 1910.333(b)(2)(v): tools removed, people warned and clear, lock removed by who applied it'],
      yes: 'Clear, qualified for the live readings',
      words: ['clear', 'closed', 'closed and clear', 'power on', 'qualified'],
      no: {
        label: 'Not today: it stays off',
        words: ['stays off', 'not today', 'leave it off', 'left off'],
        to: 'stays-off',
      },
      as: 'round:powered',
      next: 'line',
    }),
    line: measure({
      say: 'The supply in one line: every pair, and the lowest while it starts.',
      body: ['Line side of the contactor. A pair near zero with both legs present is a lost leg.'],
      callouts: [{ level: 'danger', text: 'Line voltage is present. The isolation has ended.' }],
      why: 'A lost leg, a sag or a weak connection hums and trips without any part being bad.',
      source: [
        '197 to 253 V for a 208/230 V single-phase hermetic, 187 to 253 V three-phase: a compressor maker’s bulletin (secondary source)',
      ],
      circuit: 'line',
      fields: {
        l1l2: volts('L1 to L2', { ...V(['l1-l2', 'line']), when: fed('two-legs', 'three') }),
        ...TO_GROUND,
        l2l3: volts('L2 to L3', { ...V(['l2-l3']), when: LINES }),
        l1l3: volts('L1 to L3', { ...V(['l1-l3']), when: LINES }),
        ...OF_NEUTRAL,
        min: volts('The line at the start, the lowest', V(['lowest', 'min', 'sag'], true)),
        t1t2: volts('T1 to T2 at the start, the lowest', V(['t1-t2', 't1t2 min'], true)),
        volts: NAMEPLATE_VOLTS,
      },
      cant: 'not-read',
      next: 'judged',
    }),
    judged: judge('supply', {
      of: { line: 'line', plate: '@volts', machine: null },
      limits: LIMITS.supply,
      then: {
        good: '!good',
        'which-plate': 'printed',
        absent: 'line-side',
        'leg-lost': 'lost',
        neutral: 'neutral',
        'single-phasing': 'single-phasing',
        unbalanced: 'unbalanced',
        out: 'out',
        sag: 'out',
        contacts: 'load-side',
        'no-ground': 'ground-again',
        report: 'report',
        undecided: 'not-read',
      },
    }),
    printed: whichPlate('judged', 'out'),
    // One leg to ground read nothing: on bare metal once more, before anybody works at a cabinet that may be live.
    'ground-again': measure({
      say: 'A leg read nothing to ground. Hands off the cabinet. On bare metal, another spot: the pairs again.',
      body: ['A ground that is open leaves the cabinet at whatever touches it inside.'],
      callouts: [{ level: 'danger', text: 'The cabinet itself may be live. Touch nothing of it but with the probe.' }],
      why: 'A probe on paint reads nothing, and so does a ground that is none.',
      circuit: 'line',
      fields: {
        l1l2: volts('L1 to L2', { ...V(['l1-l2', 'line']), when: LEGS }),
        ...TO_GROUND,
        ...OF_NEUTRAL,
      },
      cant: 'no-ground',
      next: 'grounded',
    }),
    grounded: judge('supply', {
      of: { line: 'ground-again', plate: '@volts', machine: null },
      limits: LIMITS.supply,
      then: {
        good: '!good',
        'which-plate': 'not-read',
        absent: 'line-side',
        'leg-lost': 'lost',
        neutral: 'neutral',
        'single-phasing': 'no-ground',
        unbalanced: 'no-ground',
        out: 'out',
        sag: 'out',
        contacts: 'load-side',
        'no-ground': 'no-ground',
        report: '!good',
        undecided: 'no-ground',
      },
    }),
    'load-side': verdict({
      verdict: 'load-side-falls-at-start',
      title: 'T1 to T2 falls at the start while the line holds: the contactor’s poles come next, no part yet',
      says: ['What is lost between L and T at the start is lost in a pole or a lug, and starves what starts.'],
      next: ['Each closed pole is read across, under load, once it runs. Nothing is proven before.'],
      who: 'junior',
      judged: ['judged', 'grounded'],
      evidence: ['line', 'ground-again'],
      then: '!good',
    }),
    'no-ground': verdict({
      verdict: 'no-ground-at-the-unit',
      title: 'The line is there, and a leg reads nothing to ground: off, hands off, a senior or an electrician',
      says: ['An open ground, or a supply with a grounded leg. Which of them is not for a junior to find out.'],
      next: [
        'Off at the panel, not at the unit. Nobody touches the cabinet until its ground is found whole.',
        'Tell the customer to keep away from it.',
      ],
      who: 'senior',
      judged: ['judged', 'grounded'],
      evidence: ['line', 'ground-again'],
      raises: 'verdict',
      then: '!raised',
    }),
    ...noSupply('', ['judged', 'grounded'], ['line', 'ground-again'], 'not-read'),
    lost: verdict({
      verdict: 'leg-lost',
      title: 'A leg is lost: leave it off',
      says: ['Line to line is gone while the legs show volts to ground: a fuse, a lug or the utility.'],
      next: [
        'Off. L to ground alone would not have shown it.',
        'Electrician or utility. Tell the customer not to run it.',
      ],
      who: 'junior',
      judged: ['judged', 'grounded'],
      evidence: ['line', 'ground-again'],
      then: '!left',
    }),
    neutral: verdict({
      verdict: 'neutral-not-sound',
      title: 'The neutral is not sound: leave it off',
      says: ['Volts stand between neutral and ground, or between hot and neutral too few: it is open or loose.'],
      next: [
        'Off. A loose neutral puts volts on what nobody expects to be live: prove it dead before anybody looks for it.',
        'Electrician or utility. Tell the customer not to run it.',
      ],
      who: 'junior',
      judged: ['judged', 'grounded'],
      evidence: ['line', 'ground-again'],
      then: '!left',
    }),
    'single-phasing': verdict({
      verdict: 'single-phasing',
      title: 'Single-phasing: off',
      says: ['One pair is right and two are far below: one line is missing.'],
      next: [
        'Volts across each fuse tell a dead one. Electrician or utility.',
        'It is not started until three lines are there.',
      ],
      who: 'senior',
      judged: ['judged'],
      evidence: ['line'],
      raises: 'verdict',
      then: '!raised',
    }),
    unbalanced: verdict({
      verdict: 'supply-unbalanced',
      title: 'The three lines are too far apart: off',
      says: ['Above 5 % the windings cook.'],
      next: ['A senior confirms. Single-phase loads on one leg, or the utility.'],
      who: 'senior',
      judged: ['judged'],
      evidence: ['line'],
      raises: 'verdict',
      then: '!raised',
    }),
    report: verdict({
      verdict: 'supply-unbalance-reported',
      title: 'The three lines differ by more than 2 %: reported',
      says: ['It may run, and it runs hotter.'],
      next: ['Tell the customer: an electrician spreads the loads.'],
      who: 'junior',
      judged: ['judged'],
      evidence: ['line'],
      then: '!good',
    }),
    out: include(located, { exits: { raised: '!raised' }, needs: { plate: '@volts', unit: '@class' } }),
    'not-read': verdict({
      verdict: 'supply-not-read',
      title: 'The supply was not read in full',
      says: ['What follows is weaker for it: the restart’s own line has to show it.'],
      next: ['Go on.'],
      who: 'junior',
      judged: ['judged', 'grounded'],
      evidence: ['line', 'ground-again'],
      then: '!good',
    }),
    'stays-off': leftOff('ready'),
  },
});
