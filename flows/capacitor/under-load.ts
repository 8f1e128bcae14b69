import { amps, confirm, flow, judge, measure, verdict, volts } from '../../engine/vocabulary.ts';
import { QUALIFIED } from '../cautions.ts';
import { LOAD_CALLS } from '../examples/repair.ts';
import { LIMITS } from '../limits.ts';

const LOAD = {
  hermAmps: amps('HERM lead', { over: false, words: ['herm', 'amps', 'herm amps'] }),
  hermVolts: volts('HERM to C', { over: false, words: ['across', 'volts', 'herm volts'] }),
  fanAmps: amps('FAN lead', { over: false, words: ['fan', 'fan amps'], optional: true }),
  fanVolts: volts('FAN to C', { over: false, words: ['fan volts'], optional: true }),
};
/** Verdicts under load that end in another run capacitor. */
export const UNDER_LOAD = ['section-fails-under-load', 'wrong-part-fitted'] as const;

/** Without a capacitance meter: amps and volts of the running HERM section, by a qualified person. */
export const underLoad = flow({
  id: 'under-load',
  version: 1,
  title: 'Under load',
  exits: ['replace', 'good', 'raised'],
  examples: LOAD_CALLS,
  steps: {
    qualified: confirm({
      sitting: true,
      powers: ['yes'],
      say: 'The value can still be found under load: live work for a qualified person. Do you take it?',
      body: [
        'Wires back on as recorded, all tight, tools out, people clear. Your lock comes off by your own hand.',
        'Amps in the HERM lead, volts across HERM and C of the capacitor, motor running.',
      ],
      callouts: [QUALIFIED],
      why: 'µF is amps over 2π·f·volts across the capacitor. The line voltage must not stand in for it.',
      source: ['I / (2π·f·V): physics'],
      yes: 'Qualified, wires back, cover guarded',
      words: ['power on', 'ready', 'wires back'],
      no: { label: 'No: a senior decides', words: ['senior decides', 'not qualified'], to: 'left-open' },
      next: 'figures',
    }),
    figures: measure({
      say: 'Amps in the HERM lead, volts across HERM and C.',
      callouts: [{ level: 'danger', text: 'Line voltage and more is present. The isolation has ended.' }],
      why: 'The capacitor carries more than the line voltage.',
      circuit: 'line',
      fields: LOAD,
      cant: 'left-open',
      next: 'judged',
    }),
    judged: judge('under-load', {
      of: { label: '@cabinet:label', readings: 'figures', before: null },
      limits: LIMITS.underLoad,
      says: {
        repeat: 'Outside the label, with the limit inside the doubt of both meters. Zero the clamp and repeat once.',
        'too-high': 'Above the label. Volts across the capacitor, not the line? Repeat once.',
      },
      then: {
        pass: 'meant',
        'conditional-pass': 'meant',
        repeat: 'second',
        fails: 'fails',
        'too-high': 'second',
        'too-high-twice': 'second',
        undecided: 'left-open',
      },
    }),
    second: measure({
      say: 'Once more: amps in the HERM lead, volts across HERM and C.',
      callouts: [{ level: 'danger', text: 'Line voltage and more is present.' }],
      why: 'One reading near a limit decides nothing.',
      circuit: 'line',
      fields: LOAD,
      cant: 'left-open',
      next: 'twice',
    }),
    twice: judge('under-load', {
      of: { label: '@cabinet:label', readings: 'second', before: 'figures' },
      limits: LIMITS.underLoad,
      then: {
        pass: 'meant',
        'conditional-pass': 'meant',
        repeat: 'left-open',
        fails: 'fails',
        'too-high': 'left-open',
        'too-high-twice': 'fails',
        undecided: 'left-open',
      },
    }),
    // Right by its own print under load: whether it is the part for this unit, the diagram says.
    meant: judge('diagram', {
      of: { label: '@cabinet:label', diagram: '@cabinet:diagram', motor: '@cabinet:motor-label' },
      limits: {},
      quiet: ['same', 'undecided'],
      then: { same: 'good', differs: 'wrong', undecided: 'good' },
    }),
    wrong: verdict({
      verdict: 'wrong-part-fitted',
      title: 'The wrong run capacitor is in: the diagram decides',
      says: ['HERM reads right by its own print under load, and that is not what the wiring diagram asks for.'],
      next: [
        'Make it dead again before a hand goes in. Fit what the diagram asks for.',
        'A senior sees it: the compressor may have run on the wrong part.',
        'Not proven until the restart numbers are in.',
      ],
      who: 'senior',
      judged: ['judged', 'twice', 'meant'],
      evidence: ['@cabinet:label', '@cabinet:diagram', 'figures', 'second'],
      raises: 'verdict',
      then: '!replace',
    }),
    good: verdict({
      verdict: 'section-good-under-load',
      title: 'HERM reads inside its label under load',
      says: ['Computed from amps and volts, with the doubt of both meters. Case and dead values stay unmeasured.'],
      next: ['Measure both sections with a capacitance meter at the next visit.'],
      who: 'junior',
      judged: ['judged', 'twice'],
      evidence: ['@cabinet:label', 'figures', 'second'],
      then: '!good',
    }),
    fails: verdict({
      verdict: 'section-fails-under-load',
      title: 'HERM is out of its label under load: replace the part',
      says: ['Computed from amps and volts, with the doubt of both meters.'],
      next: [
        'Make it dead again before a hand goes in.',
        'Measure the new part dead before you fit it.',
        'Not proven until the restart numbers are in.',
      ],
      who: 'junior',
      judged: ['judged', 'twice'],
      evidence: ['@cabinet:label', 'figures', 'second'],
      then: '!replace',
    }),
    'left-open': verdict({
      verdict: 'value-left-open',
      title: 'The value stays open: a senior decides',
      says: ['No capacitance reading, and none under load that settles it. Nothing is condemned.'],
      next: ['A capacitance meter with a fitting range would decide it.', 'Leave it off.'],
      who: 'senior',
      judged: [],
      evidence: ['qualified', 'figures', 'second'],
      raises: 'verdict',
      then: '!raised',
    }),
  },
});
