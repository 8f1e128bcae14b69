import { confirm, flow, judge, measure, megohms, microfarads, ohms, verdict } from '../../engine/vocabulary.ts';
import { BESIDE, SINGLE } from '../examples/sections.ts';
import { LIMITS } from '../limits.ts';
import { MEANT, SHELL } from './readings.ts';
import { capacitorVerdicts, wrongPart } from './verdicts.ts';

const inputs = {
  label: 'label',
  readings: 'sections',
  third: null,
  before: '~sections',
  beforeThird: null,
  wires: '~wires',
  exact: null,
  tabs: null,
} as const;

/** What a part of one section is read for; where its value is right, the page says what is asked next. */
const steps = <const T extends string, const L extends '@round:case' | null>(
  to: { readonly good: T; readonly near: T },
  shell: Partial<typeof SHELL>,
  last: L,
) =>
  ({
    sections: measure({
      say: 'Measure the capacitor and its case, wires off.',
      body: [
        'Capacitance across its two terminals.',
        'Case: each terminal to the bare rim in ohms, fingers off the probes. OL is usual.',
      ],
      callouts: [
        { level: 'warning', text: 'Only on a discharged part. A charged part can spoil the meter and hurts.' },
      ],
      why: 'One section is no mistake: the fan beside it may be electronically commutated, or have a part of its own.',
      source: ['The tolerance printed on the part governs; ±6 % where none is printed: common practice'],
      circuit: 'part',
      fields: {
        herm: microfarads('Across the terminals', { unless: '~sections', words: ['h', 'cap', 'run', 'value', 'fan'] }),
        case: megohms('Terminals to case, the lowest', { ...shell, optional: true }),
      },
      picture: { kind: 'leads', part: 'single', on: ['across', 'case'], between: 'capacitance' },
      cant: 'section-ohms',
      next: 'compare',
    }),
    compare: judge('section-values', {
      of: inputs,
      limits: LIMITS.sections,
      says: {
        repeat:
          'Outside the label, with the limit inside the meter’s doubt. Zero the leads or take another meter, and repeat once.',
        'too-high': 'Above the upper limit. Read the label again, zero the leads or take another meter, and repeat.',
        wires: 'Zero, OL or absurd: the wires and the leads come first.',
        ohms: 'The same again with the wires off. The ohms range decides whether it is shorted.',
      },
      then: {
        pass: 'shell',
        'conditional-pass': 'shell',
        repeat: '!again',
        fails: 'out',
        'ask-third': 'contradiction',
        'fan-undecided': 'contradiction',
        pair: 'contradiction',
        swapped: 'contradiction',
        'too-high': '!again',
        'too-high-twice': 'high',
        wires: 'wires',
        ohms: 'section-ohms',
        open: 'contradiction',
        exact: 'contradiction',
        contradiction: 'contradiction',
        undecided: 'no-readings',
      },
    }),
    wires: confirm({
      say: 'Are both wires off, the leads sound on another capacitor, and the meter’s range large enough?',
      body: ['OL on a capacitance range is no verdict: over range, shorted, charged, or a winding still in parallel.'],
      why: 'A winding left in parallel, or a dead lead, makes a good part read absurdly.',
      yes: 'All checked',
      unsure: 'no-readings',
      next: '!again',
    }),
    'section-ohms': measure({
      say: 'Ohms across its terminals. Watch whether it climbs.',
      body: ['Type ol where it climbs to over range.'],
      why: 'Steady near zero is shorted. Climbing to OL means the capacitance range was too small.',
      circuit: 'part',
      restsOn: ['sections'],
      fields: { hermc: ohms('Across the terminals', { words: ['herm', 'ohm', 'ohms'] }) },
      picture: { kind: 'leads', part: 'single', on: ['across'], between: 'ohms' },
      cant: 'no-readings',
      next: 'short',
    }),
    short: judge('single-section', {
      of: { label: 'label', readings: 'sections', ohms: 'section-ohms', leads: 'leads' },
      limits: LIMITS.singleSection,
      then: { shorted: 'shorted', open: 'open', leads: 'leads', neither: 'no-readings', undecided: 'no-readings' },
    }),
    leads: confirm({
      say: 'Do these leads read another capacitor, or a short in ohms?',
      body: ['Touch the tips together in ohms, or read a part that you know.'],
      why: 'With one section nothing else shows that the leads are sound. Open condemns only then.',
      restsOn: ['sections'],
      yes: 'The leads read',
      no: { label: 'They don’t', to: 'short' },
      next: 'short',
    }),
    shell: judge('case-leak', {
      of: {
        readings: 'sections',
        third: null,
        alone: 'case',
        before: '~sections',
        beforeThird: null,
        beforeAlone: '~case',
        last,
      },
      limits: LIMITS.shell,
      says: {
        low: 'Low to the case. Bare rim, all wires off, fingers off the probes: repeat before it counts.',
        wet: 'Between 1 and 20 MΩ. Wipe the top dry and repeat.',
      },
      then: { clear: 'part', low: '!again', wet: '!again', leak: 'leak', ask: 'case', undecided: 'no-case' },
    }),
    case: measure({
      say: 'Each terminal to the case, in ohms: the lowest.',
      body: ['Bare rim, not paint. Two fingers on the probes read 1 to 5 MΩ.'],
      circuit: 'part',
      restsOn: ['sections'],
      fields: { case: megohms('Terminals to case, the lowest', shell) },
      picture: { kind: 'leads', part: 'single', on: ['case'], between: 'ohms' },
      cant: 'shell',
      next: 'shell',
    }),
    part: judge('section-values', {
      of: inputs,
      limits: LIMITS.sections,
      then: {
        pass: to.good,
        'conditional-pass': to.near,
        repeat: 'contradiction',
        fails: 'out',
        'ask-third': 'contradiction',
        'fan-undecided': 'contradiction',
        pair: 'contradiction',
        swapped: 'contradiction',
        'too-high': 'contradiction',
        'too-high-twice': 'high',
        wires: 'contradiction',
        ohms: 'contradiction',
        open: 'contradiction',
        exact: 'contradiction',
        contradiction: 'contradiction',
        undecided: 'no-readings',
      },
    }),
    open: verdict({
      verdict: 'section-open',
      title: 'The run capacitor is open: replace the part',
      says: ['It reads next to nothing with the wires off, on leads that read something else.'],
      next: [
        'Look at its tabs.',
        'Measure the new part dead before you fit it.',
        'Finish the dead tests. A second fault is usual.',
        'Not proven until the restart numbers are in.',
      ],
      who: 'junior',
      judged: ['short'],
      evidence: ['sections', 'label', 'leads', '~wires'],
      then: '!done',
    }),
  }) as const;

const page = { version: 1, exits: ['done', 'again'], needs: ['label'] } as const;

/** The run capacitor of the outdoor unit with one section, wires off: one try, which may ask for another. */
export const oneSection = flow({
  ...page,
  id: 'single-capacitor-readings',
  title: 'One section',
  examples: SINGLE,
  steps: {
    ...steps({ good: 'meant', near: 'meant-near' }, SHELL, '@round:case'),
    ...MEANT,
    ...capacitorVerdicts(['sections', 'label'], ['~sections']),
    ...wrongPart(['sections', 'label']),
  },
});

/** Another part with one section: beside the first one, or of a blower. The outdoor unit's diagram is not asked of it. */
export const singleReadings = flow({
  ...page,
  id: 'single-readings-beside',
  title: 'One section, of another part',
  examples: BESIDE,
  steps: {
    ...steps({ good: 'good', near: 'near' }, { words: SHELL.words, unitNeeded: true }, null),
    ...capacitorVerdicts(['sections', 'label'], ['~sections']),
  },
});
