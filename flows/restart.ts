import { act, amps, choose, confirm, flow, form, judge, measure, verdict, volts } from '../engine/vocabulary.ts';
import { LIMITS } from './limits.ts';

/** From the new part to the figures that prove the repair. */
export const restart = flow({
  id: 'fit-and-restart',
  version: 1,
  title: 'Fit, restart, prove',
  exits: ['done', 'again', 'raised', 'left'],
  steps: {
    fit: act('fit', {
      say: 'Fit the new part.',
      body: [
        'Same µF on each section, same or higher volts, same or better protection.',
        'Measured dead before it goes in. Strapped.',
      ],
      callouts: [{ level: 'warning', text: 'Never the next size up. A start capacitor is no run capacitor.' }],
      why: 'More µF heats the winding, less takes its torque.',
      source: [
        'Same µF, same or higher volts: a maker’s tip reprinted by a trade page (secondary source) and common practice',
      ],
      yes: 'Measured, fitted, strapped',
      cant: { label: 'No such part on the truck', to: 'no-part' },
      next: 'rewire',
    }),
    rewire: act('rewire', {
      say: 'Put the wires back from the record.',
      body: ['C, HERM and FAN as recorded before they came off.'],
      yes: 'Wires back as recorded',
      next: 'tug',
    }),
    tug: act('tug', {
      say: 'Tug each connector.',
      body: ['None slides. A loose tab burns.'],
      yes: 'All tight',
      next: 'plate',
    }),
    plate: form({
      say: 'From the nameplate: RLA, LRA, fan FLA.',
      body: ['Leave out with _ what you can’t read.'],
      parts: {
        rla: amps('RLA', { optional: true, as: 'rla', over: false }),
        lra: amps('LRA', { optional: true, as: 'lra', over: false }),
        fla: amps('Fan FLA', { optional: true, as: 'fla', over: false, words: ['fan'] }),
      },
      next: 'closed',
    }),
    closed: confirm({
      say: 'Close up and clear the unit.',
      body: [
        'Tools out, cover on, people clear.',
        'Your lock comes off by your own hand.',
        'Power on from a safe position.',
      ],
      callouts: [
        {
          level: 'warning',
          text: 'Live readings are for qualified people with rated gloves and eye protection. NFPA 70E and your employer’s program govern.',
        },
      ],
      source: ['29 CFR 1910.333(b)(2)(v): tools removed, people warned and clear, lock removed by who applied it'],
      yes: 'Closed, clear, qualified for the live readings',
      no: { label: 'Not today: it stays off', to: 'stays-off' },
      next: 'figures',
    }),
    figures: measure({
      say: 'All live figures in one sitting.',
      body: ['L1 to L2, compressor amps, fan amps.'],
      callouts: [{ level: 'danger', text: 'Line voltage is present. The isolation has ended.' }],
      why: 'A verdict is not proven until these figures are in.',
      source: [
        '197 to 253 V for a 208/230 V single-phase hermetic: a compressor maker’s bulletin (secondary source)',
        'fan above FLA is a finding; RLA is not a limit: common practice',
      ],
      circuit: 'line',
      fields: {
        l1l2: volts('L1 to L2', { over: false, words: ['volts', 'v'] }),
        comp: amps('Compressor', { over: false, words: ['c', 'compressor'] }),
        fan: amps('Fan', { over: false, words: ['f'] }),
      },
      cant: 'no-figures',
      next: 'judged',
    }),
    judged: judge('restart', {
      of: { figures: 'figures', later: null, plate: 'plate' },
      limits: LIMITS.restart,
      says: {
        supply: 'The supply is outside its limits.',
        'not-starting':
          'The compressor is not running on these amps. Turn it off now: locked rotor overheats within seconds.',
        'fan-high': 'The fan draws more than its FLA.',
      },
      then: {
        in: 'cools',
        wait: 'cools',
        supply: 'supply',
        drop: 'off',
        'not-starting': 'off',
        'fan-high': 'off',
        sound: 'off',
        'split-out': 'off',
        undecided: 'no-figures',
      },
    }),
    cools: choose({
      say: 'Both motors run and the air gets cold?',
      body: ['Fan direction right, contactor clean, no new noise. Temperature split after 10 to 15 minutes.'],
      options: {
        yes: { label: 'Runs and cools', words: ['cools', 'cold', 'ok'], to: 'proven' },
        no: { label: 'The fault is back, or something else is out', words: ['not cold', 'same fault'], to: 'off' },
      },
    }),
    off: confirm({
      say: 'Turn it off. The next round begins from the observation.',
      body: ['Wait five minutes before another start. At most three rounds, then a senior.'],
      yes: 'Off',
      next: '!again',
    }),
    proven: verdict({
      verdict: 'repair-proven',
      title: 'The repair is proven',
      says: ['The restart figures are in and lie within what was checked.'],
      next: [
        'Tell the customer what was found and fitted.',
        'Clean what made the part hot: coil, airflow.',
        'A senior reads and signs the record.',
      ],
      who: 'junior',
      judged: ['judged'],
      evidence: ['figures', 'plate', 'cools'],
      then: '!done',
    }),
    supply: verdict({
      verdict: 'supply-out',
      title: 'The supply is out of limits: turn it off',
      says: ['Volts outside the limits cook motors and capacitors.'],
      next: ['A senior confirms. Lug, utility or electrician.'],
      who: 'senior',
      judged: ['judged'],
      evidence: ['figures'],
      raises: 'verdict',
      then: '!raised',
    }),
    'no-figures': verdict({
      verdict: 'restart-not-proven',
      title: 'Restarted, not proven',
      says: ['Without the figures the repair is not proven.'],
      next: ['L1 to L2, compressor amps and fan amps would prove it. A senior sees this call.'],
      who: 'senior',
      judged: ['judged'],
      evidence: ['figures'],
      raises: 'verdict',
      then: '!raised',
    }),
    'no-part': verdict({
      verdict: 'no-part',
      title: 'The part is not here: the unit stays off',
      says: ['The verdict stands. The repair waits for the part.'],
      next: [
        'Leave it locked or make it safe, cover on.',
        'Type stop and say how it is left. The dispatcher brings the part.',
      ],
      who: 'junior',
      judged: [],
      evidence: ['fit'],
      then: '!left',
    }),
    'stays-off': verdict({
      verdict: 'left-off',
      title: 'Left off',
      says: ['Fitted, not restarted, not proven.'],
      next: ['Somebody restarts and proves it at the next visit.'],
      who: 'junior',
      judged: [],
      evidence: ['closed'],
      then: '!left',
    }),
  },
});
