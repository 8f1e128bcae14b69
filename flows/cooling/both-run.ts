import { amps, confirm, flow, form, judge, measure, verdict } from '../../engine/vocabulary.ts';
import { QUALIFIED } from '../cautions.ts';
import { BOTH_RUN } from '../examples/cooling/both-run.ts';
import { LIMITS } from '../limits.ts';
import { WAIT } from '../motors/starts.ts';
import { PLATE } from '../unit.ts';

/** Whether both really run, by amps and not by ear, and whether electric heat works against the coil. */
export const bothRun = flow({
  id: 'both-run',
  version: 1,
  title: 'Do both really run?',
  exits: ['runs', 'stopped', 'raised'],
  examples: BOTH_RUN,
  steps: {
    plate: form({
      say: 'From the nameplate: RLA, LRA, fan FLA.',
      body: ['Leave out with _ what you can’t read.'],
      why: 'Without RLA or LRA nobody can tell a compressor that runs from one that stands.',
      parts: PLATE,
      next: 'live',
    }),
    live: confirm({
      sitting: true,
      say: 'A clamp on live wires comes next. Qualified, rated gloves, eye protection?',
      body: ['Cover off only as far as the leads need it. Nothing but the clamp goes in.'],
      callouts: [QUALIFIED],
      why: '“Both run” by ear misleads: a fan alone sounds much like a unit that works.',
      source: ['Qualified for the live reading: 29 CFR 1910.333(c)(2)'],
      yes: 'Qualified and equipped',
      words: ['qualified', 'equipped', 'gloves on'],
      no: { label: 'Not today: go on without', words: ['go on without', 'no clamp', 'not qualified'], to: 'not-taken' },
      next: 'amps',
    }),
    amps: measure({
      say: 'Clamp the compressor’s C lead while it runs, then the feed of the electric heat.',
      body: ['Good: clearly above 2 A at the compressor, no amps at the heat. No electric heat: leave it out.'],
      callouts: [{ level: 'danger', text: 'Line voltage is present. The isolation has ended.' }],
      why: 'Below 2 A the compressor stands, whatever it sounds like. Heat that runs cancels what the coil cools.',
      source: ['Below 2 A it does not run; amps of the electric heat must be 0: common practice, no single source'],
      circuit: 'line',
      fields: {
        comp: amps('Compressor, C lead', { over: false, words: ['c', 'compressor', 'c lead'] }),
        heat: amps('Electric heat', {
          over: false,
          optional: true,
          words: ['strips', 'heat strips', 'strip heat', 'heater'],
        }),
      },
      cant: 'not-taken',
      next: 'running',
    }),
    running: judge('running-amps', {
      of: { amps: 'amps', plate: 'plate' },
      limits: LIMITS.runningAmps,
      quiet: ['running', 'undecided'],
      then: {
        running: 'heat',
        'not-starting': 'stalled',
        'not-running': 'stands',
        'above-mcc': 'heat',
        unbalanced: 'heat',
        'fan-high': 'heat',
        'fan-not-running': 'heat',
        undecided: 'heat',
      },
    }),
    stands: verdict({
      verdict: 'compressor-stands',
      title: 'Only the fan runs: the compressor stands',
      says: ['Its C lead carries next to nothing. This is a compressor that doesn’t start, not a lack of cold.'],
      next: [
        'Thermostat off, then the means.',
        'The dead tests show why it stands. Nothing is condemned yet.',
        'Tell the customer: the fan ran, the compressor did not.',
      ],
      who: 'junior',
      judged: ['running'],
      evidence: ['amps', 'plate'],
      then: '!stopped',
    }),
    stalled: verdict({
      verdict: 'compressor-stalled',
      title: 'The compressor draws locked-rotor current: off within seconds',
      says: ['It doesn’t turn. Amps near LRA alone never show a seized compressor.'],
      next: [`Thermostat off now, then the means. ${WAIT}`, 'The dead tests show why: capacitor, contactor, windings.'],
      who: 'junior',
      judged: ['running'],
      evidence: ['amps', 'plate'],
      then: '!stopped',
    }),
    heat: judge('heat-strips', {
      of: { amps: 'amps' },
      limits: LIMITS.heatStrips,
      quiet: ['off', 'undecided'],
      then: { off: '!runs', on: 'heats', undecided: '!runs' },
    }),
    heats: verdict({
      verdict: 'heat-while-cooling',
      title: 'Electric heat runs while it should cool',
      says: ['The heat draws amps in cooling. The coil works against it, and the charge is not the question.'],
      next: [
        'Heat off at its own breaker, if it has one.',
        'A senior finds what calls it: thermostat setting, W wire, a welded sequencer or relay.',
        'Tell the customer: the heater ran against the cooling and costs power.',
      ],
      who: 'senior',
      judged: ['heat'],
      evidence: ['amps'],
      raises: 'verdict',
      then: '!raised',
    }),
    'not-taken': verdict({
      verdict: 'running-not-measured',
      title: 'Whether both run was not measured',
      says: ['By ear it isn’t sure. What follows is weaker for it.'],
      next: ['Go on with the air. The restart’s amps have to show it.'],
      who: 'junior',
      judged: [],
      evidence: ['live', 'amps'],
      then: '!runs',
    }),
  },
});
