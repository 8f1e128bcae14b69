import { confirm, flow, judge, measure, megohms, microfarads, ohms, verdict } from '../../engine/vocabulary.ts';
import { SECTIONS } from '../examples/sections.ts';
import { LIMITS } from '../limits.ts';
import { capacitorVerdicts, wrongPart } from './verdicts.ts';

/** The case of one and the same part is one fact, whichever page it was read on: what was read last is kept by a name. */
export const SHELL = {
  words: ['shell', 'can', 'rim'],
  unitNeeded: true,
  as: 'round:case',
  anew: true,
} as const;
const ASKED_FOR = {
  label: '@cabinet:label',
  diagram: '@cabinet:diagram',
  motor: '@cabinet:motor-label',
} as const;
const DIFFERS = { of: ASKED_FOR, limits: {}, quiet: ['same', 'undecided'] } as const;
/** A part that reads right by its own print may still be the wrong one: the unit's diagram is looked at before it is called good. */
export const MEANT = {
  meant: judge('diagram', { ...DIFFERS, then: { same: 'good', differs: 'wrong', undecided: 'good' } }),
  'meant-near': judge('diagram', { ...DIFFERS, then: { same: 'near', differs: 'wrong', undecided: 'near' } }),
} as const;
const LABEL_GOVERNS =
  'The tolerance printed on the part governs (IEC 60252-1 parts print it; ±6 % where none is printed: common practice)';
const inputs = {
  label: '@cabinet:label',
  readings: 'sections',
  third: 'third',
  before: '~sections',
  beforeThird: '~third',
  wires: '~wires',
  exact: 'exact',
  tabs: '@round:tabs',
} as const;

/** Both sections of a dual run capacitor, wires off: one try, which may ask for another. */
export const readings = flow({
  id: 'dual-capacitor-readings',
  version: 1,
  title: 'Both sections',
  exits: ['done', 'again'],
  examples: SECTIONS,
  steps: {
    sections: measure({
      say: 'Measure both sections and the case, wires off.',
      body: [
        'Capacitance: HERM to C, then FAN to C. C is common, not compressor.',
        'HERM to FAN where you have it; leave it out with _ .',
        'Case: each terminal to the bare rim in ohms, fingers off the probes. OL is usual.',
      ],
      callouts: [
        { level: 'warning', text: 'Only on a discharged part. A charged part can spoil the meter and hurts.' },
      ],
      why: 'HERM and FAN are two capacitors that share C. Each has its own limits.',
      source: [LABEL_GOVERNS],
      circuit: 'part',
      fields: {
        herm: microfarads('HERM to C', {
          unless: '~sections',
          words: ['h', 'hermetic', 'comp', 'compressor', 'hc', 'h-c', 'c-h', 'herm-c', 'c-herm'],
        }),
        fan: microfarads('FAN to C', { unless: '~sections', words: ['f', 'fc', 'f-c', 'c-f', 'fan-c', 'c-fan'] }),
        hf: microfarads('HERM to FAN', { words: ['h-f', 'f-h', 'herm-fan', 'fan-herm'], optional: true }),
        case: megohms('Terminals to case, the lowest', { ...SHELL, optional: true }),
      },
      picture: { kind: 'leads', part: 'dual', on: ['herm-c', 'fan-c', 'herm-fan', 'case'], between: 'capacitance' },
      cant: 'section-ohms',
      next: 'compare',
    }),
    compare: judge('section-values', {
      of: inputs,
      limits: LIMITS.sections,
      says: {
        repeat:
          'Outside the label, with the limit inside the meter’s doubt. Zero the leads or take another meter, and repeat once.',
        'ask-third': 'This FAN reading is what HERM to FAN would read. A lead may sit on HERM instead of C.',
        pair: 'The three readings contradict each other. Check which terminal each lead sits on, then repeat.',
        swapped:
          'HERM and FAN look exchanged: leads or terminals are mixed up. Check which terminal is which, then repeat.',
        'too-high': 'Above the upper limit. Read the label again, zero the leads or take another meter, and repeat.',
        wires: 'Zero, OL, absurd, or both sections out at once: the wires and the C terminal come first.',
        ohms: 'The same again with the wires off. The ohms range decides whether a section is shorted.',
        exact: 'Both readings equal the label to the last digit.',
      },
      then: {
        pass: 'shell',
        'conditional-pass': 'shell',
        repeat: '!again',
        fails: 'out',
        'ask-third': 'third',
        'fan-undecided': 'fan-open-question',
        pair: '!again',
        swapped: '!again',
        'too-high': '!again',
        'too-high-twice': 'high',
        wires: 'wires',
        ohms: 'section-ohms',
        open: 'open',
        exact: 'exact',
        contradiction: 'contradiction',
        undecided: 'no-readings',
      },
    }),
    third: measure({
      say: 'FAN to C again with one lead on C, then HERM to FAN.',
      body: ['Look at the terminal marks before each reading. C carries the most tabs.'],
      why: 'HERM to FAN reads the two sections in series. On some parts that lies near the FAN value and hides a bad or a good section.',
      source: ['Series of two capacitors: a·b / (a + b), arithmetic'],
      circuit: 'part',
      restsOn: ['sections'],
      fields: {
        fan: microfarads('FAN to C, again', { words: ['f', 'fc', 'f-c', 'c-f', 'fan-c', 'c-fan', 'fan to c'] }),
        hf: microfarads('HERM to FAN', { words: ['h-f', 'f-h', 'herm-fan', 'fan-herm'] }),
        case: megohms('Terminals to case, the lowest', { ...SHELL, optional: true }),
      },
      picture: { kind: 'leads', part: 'dual', on: ['fan-c', 'herm-fan'], between: 'capacitance' },
      cant: 'compare',
      next: 'compare',
    }),
    exact: confirm({
      say: 'Are these the meter’s readings and not the label’s figures?',
      why: 'A part rarely reads its print to the last digit on both sections. A senior sees this answer.',
      restsOn: ['sections'],
      yes: 'Read on the meter',
      no: { label: 'No, measure again', to: '!again' },
      next: 'compare',
    }),
    wires: confirm({
      say: 'Are the wires off HERM, FAN and C, the C tab sound, and the meter’s range large enough?',
      body: ['OL on a capacitance range is no verdict: over range, shorted, charged, or a winding still in parallel.'],
      why: 'A winding left in parallel, or an open C tab, makes a good part read absurdly.',
      yes: 'All checked',
      unsure: 'no-readings',
      next: '!again',
    }),
    'section-ohms': measure({
      say: 'Ohms, HERM to C and FAN to C. Watch whether it climbs.',
      body: ['Type ol where it climbs to over range.'],
      why: 'Steady near zero is a shorted section. Climbing to OL means the capacitance range was too small.',
      circuit: 'part',
      restsOn: ['sections'],
      fields: {
        hermc: ohms('HERM to C', { words: ['herm', 'herm-c', 'h-c'] }),
        fanc: ohms('FAN to C', { words: ['fan', 'fan-c', 'f-c'] }),
      },
      picture: { kind: 'leads', part: 'dual', on: ['herm-c', 'fan-c'], between: 'ohms' },
      cant: 'no-readings',
      next: 'short',
    }),
    short: judge('section-ohms', {
      of: { ohms: 'section-ohms', readings: 'sections', label: '@cabinet:label' },
      limits: LIMITS.ohms,
      then: { shorted: 'shorted', 'not-shorted': 'no-readings', undecided: 'no-readings' },
    }),
    shell: judge('case-leak', {
      of: {
        readings: 'sections',
        third: 'third',
        alone: 'case',
        before: '~sections',
        beforeThird: '~third',
        beforeAlone: '~case',
        last: '@round:case',
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
      fields: { case: megohms('Terminals to case, the lowest', SHELL) },
      picture: { kind: 'leads', part: 'dual', on: ['case'], between: 'ohms' },
      cant: 'shell',
      next: 'shell',
    }),
    part: judge('section-values', {
      of: inputs,
      limits: LIMITS.sections,
      then: {
        pass: 'meant',
        'conditional-pass': 'meant-near',
        repeat: 'contradiction',
        fails: 'out',
        'ask-third': 'contradiction',
        'fan-undecided': 'fan-open-question',
        pair: 'contradiction',
        swapped: 'contradiction',
        'too-high': 'contradiction',
        'too-high-twice': 'high',
        wires: 'contradiction',
        ohms: 'contradiction',
        open: 'open',
        exact: 'contradiction',
        contradiction: 'contradiction',
        undecided: 'no-readings',
      },
    }),
    ...MEANT,
    ...capacitorVerdicts(['sections', 'third', '@cabinet:label'], ['~sections', '~third']),
    ...wrongPart(['sections', 'third', '@cabinet:label']),
    open: verdict({
      verdict: 'section-open',
      title: 'A section is open: replace the part',
      says: ['It reads next to nothing with the wires off, while the other section reads on the same C and leads.'],
      next: [
        'Look at the tab of that section.',
        'Measure the new part dead before you fit it.',
        'Finish the dead tests. A second fault is usual.',
        'Not proven until the restart numbers are in.',
      ],
      who: 'junior',
      judged: ['compare'],
      evidence: ['sections', 'third', '@cabinet:label', '~wires'],
      then: '!done',
    }),
    'fan-open-question': verdict({
      verdict: 'fan-section-undecided',
      title: 'HERM is judged, FAN is undecided',
      says: ['Without the third reading nobody knows whether FAN or the series of both was read.'],
      next: ['FAN to C with one lead on C, and HERM to FAN, would decide it.', 'A senior sees this call.'],
      who: 'senior',
      judged: ['compare'],
      evidence: ['sections', 'third', '@cabinet:label'],
      raises: 'verdict',
      then: '!done',
    }),
  },
});
