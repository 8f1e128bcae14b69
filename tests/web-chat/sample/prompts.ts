/** Hand-made prompts of every kind and with every kind of part, as full as they come, to draw and measure. */
import type { IsolationLine, Option, Part, Prompt } from '../../../engine/index.ts';
import type { PictureData } from '../../../engine/picture/data.ts';
import { draw } from '../../../engine/picture/draw.ts';
import { SAMPLES } from '../../picture/samples.ts';

export const NOW = '2031-07-14T18:02:11.000Z';
const later = (minutes: number): string => new Date(Date.parse(NOW) + minutes * 60_000).toISOString();

const strip = (state: IsolationLine['state'], more: Partial<IsolationLine> = {}): IsolationLine => ({
  cabinet: 'Outdoor unit',
  state,
  holder: 'jo',
  since: null,
  until: null,
  done: 0,
  of: 6,
  words: {
    'not-proved': 'ENERGIZED OR NOT PROVED',
    'being-proved': 'BEING PROVED (4 of 6)',
    proved: 'PROVED DEAD',
    'control-live': 'CONTROL LIVE',
  }[state],
  ...more,
});
export const STRIPS = {
  'not-proved': strip('not-proved', { holder: null }),
  'being-proved': strip('being-proved', { done: 4, until: later(28) }),
  proved: strip('proved', { done: 6, since: later(-6), until: later(24) }),
  'control-live': strip('control-live', { done: 6, since: later(-6), until: later(4) }),
} as const;

const options = (...labels: string[]): Option[] => labels.map((label, i) => ({ id: `o${i}`, label, words: [] }));
const field = (key: string, ask: string, more: Partial<Extract<Part, { kind: 'field' }>> = {}): Part => ({
  kind: 'field',
  key,
  ask,
  optional: false,
  unit: 'V',
  words: [],
  over: false,
  unitNeeded: false,
  remembered: null,
  from: '0',
  to: '1000',
  ...more,
});
const choose = (key: string, ask: string, several: boolean, labels: string[], remembered: string[] = []): Part => ({
  kind: 'choose',
  key,
  ask,
  optional: false,
  several,
  options: options(...labels),
  remembered,
});

const base: Prompt = {
  job: 'sample',
  seq: 7,
  last: 7,
  place: 'sample',
  kind: 'step',
  class: 'eyes',
  title: 'What does the unit do?',
  body: ['Stand back, thermostat calling, look and listen. Open nothing yet.'],
  callouts: [],
  notices: [],
  parts: [],
  recalls: [],
  line: null,
  skippable: false,
  why: 'The observation decides the order of tests.',
  sources: ['common practice, no single source'],
  progress: { answered: 3, label: 'Observe and classify' },
  isolation: [STRIPS['not-proved']],
  holder: null,
  amends: null,
  verdicts: [],
  pictures: [],
  question: null,
};
const of = (more: Partial<Prompt>): Prompt => ({ ...base, ...more });

/** Drawn pictures, of the question or of the sample's verdict. */
const pictures = (verdict: string | null, ...names: string[]): Prompt['pictures'] =>
  names.map((name, i) => {
    const data = SAMPLES[name] as PictureData;
    return { kind: data.kind, verdict, ...draw(data, { key: `${verdict}#${i}` }) };
  });
const verdict: Prompt['verdicts'][number] = {
  place: 'sample',
  verdict: 'sample',
  title: 'The run capacitor fails its value: replace it',
  says: ['HERM is under its label, FAN is good.'],
  next: ['Measure the new part dead before you fit it.', 'Not proven until the restart numbers are in.'],
  who: 'senior',
  findings: ['pass', 'conditional pass', 'conditional fail', 'fail', 'undecided', 'confirmed'].map((word, i) => ({
    name: ['HERM', 'FAN', 'Compressor'][i % 3] ?? '',
    reading: '36.1\u2009µF',
    limits: '42.30–47.70\u2009µF',
    doubt: '35.21–36.99\u2009µF',
    word,
    text: '36.1\u2009µF is −19.8\u2009% from the label. The whole doubt lies outside.',
    source: 'the label of the part',
  })),
  evidence: [3, 4],
};

/** By name, so that a failing one can be told. */
export const PROMPTS: Readonly<Record<string, Prompt>> = {
  'choose one': of({
    callouts: [
      { level: 'warning', text: 'Hum, still fan or chatter: off within seconds, at the thermostat first.' },
      { level: 'notice', text: 'Qualified people only. This does not replace a licensed person.' },
    ],
    parts: [
      choose('choice', 'What you see', false, [
        'Outdoor unit silent',
        'Hum, nothing turns',
        'Compressor runs, fan still',
        'Fan runs, compressor hums, clicks off or is silent',
        'Blower never stops, compressor locked out, alarm',
      ]),
    ],
    notices: [{ code: 'n', text: 'Changed. Later answers that still fit are kept, the others are set aside.' }],
  }),
  'choose several beside one': of({
    class: 'proving',
    title: 'Thermostat OFF. What opens this unit, and what else could feed it?',
    callouts: [{ level: 'danger', text: 'The line side of an opened disconnect stays live.' }],
    isolation: [STRIPS['being-proved']],
    parts: [
      choose(
        'means',
        'What opens it, in your sight and control',
        true,
        ['Pull-out', 'Switch', 'Breaker', 'Plug'],
        ['o0'],
      ),
      choose('supply', 'Supply of this unit', false, ['208 to 240 V, two legs', '115 or 120 V, one leg and neutral']),
      {
        kind: 'confirm',
        key: 'still',
        ask: 'Your lock is still on',
        optional: false,
        options: options('Still locked and open'),
      },
      field('stated', 'What the proving unit should read', { optional: true }),
    ],
  }),
  confirm: of({
    class: 'proving',
    title: 'Open it, lock it, tag it, try it.',
    body: ['Interrupt the load first, then open every means.', 'Your own lock and tag are on each means.'],
    callouts: [{ level: 'caution', text: 'A pull-out can go back upside-down.' }],
    isolation: [STRIPS['being-proved']],
    parts: [
      {
        kind: 'confirm',
        key: 'ok',
        ask: 'Confirm',
        optional: false,
        options: options('Open, locked, tagged, tried', 'Something started', 'No lock fits'),
      },
    ],
  }),
  'act with a note and a photo': of({
    class: 'inside',
    title: 'Record the wiring, then take the wires off HERM, FAN and C.',
    isolation: [STRIPS.proved],
    holder: 'jo',
    parts: [
      {
        kind: 'act',
        key: 'ok',
        ask: 'Do it',
        optional: false,
        options: options('Recorded, wires off', 'They don’t come off'),
      },
      { kind: 'note', key: 'colours', ask: 'Colours: C, HERM, FAN', optional: true },
      { kind: 'photo', key: 'photo', ask: 'Photo of the wiring', optional: true },
    ],
  }),
  'proving line': of({
    class: 'proving',
    title: 'Prove the meter, prove it dead, prove the meter again.',
    callouts: [{ level: 'danger', text: 'Treat every conductor as live until this line is accepted.' }],
    isolation: [STRIPS['being-proved']],
    line: 'before l1l2 l1g l2g t1g t2g x12 x1g after',
    parts: [
      {
        kind: 'confirm',
        key: 'still',
        ask: 'Your lock is still on',
        optional: false,
        options: options('Still locked and open'),
      },
      field('before', 'Known source, before'),
      field('l1l2', 'L1 to L2'),
      field('x1g', 'Second feed, first wire to ground across the tool'),
      field('residual', 'HERM to C, direct volts', { from: '-1000' }),
      field('after', 'The same source, after'),
    ],
  }),
  'readings with OL and a unit to choose': of({
    class: 'inside',
    title: 'Capacitance: HERM to C, FAN to C; each terminal to case.',
    isolation: [STRIPS.proved],
    holder: 'jo',
    skippable: true,
    line: 'herm fan (hf) case',
    parts: [
      field('herm', 'HERM to C', { unit: 'µF', over: true, to: '400' }),
      field('hf', 'HERM to FAN', { unit: 'µF', over: true, optional: true, to: '400' }),
      field('case', 'Each terminal to case', { unit: 'MΩ', over: true, unitNeeded: true, to: '100000' }),
      field('count', 'Number of capacitors', { unit: 'count', to: '20' }),
      field('both', 'Signed and over range', { over: true, from: '-1000' }),
      field('supply', 'Supply air', { unit: '°F', prefers: '°C', from: '-60' }),
    ],
  }),
  'control live': of({
    class: 'control live',
    title: 'Volts across the coil, line voltage locked out.',
    isolation: [STRIPS['control-live'], { ...STRIPS.proved, cabinet: 'Indoor unit' }],
    holder: 'jo',
    parts: [field('coil', 'Across the coil')],
  }),
  'live, another person’s lock': of({
    class: 'live',
    title: 'All live figures in one sitting.',
    holder: 'sam',
    parts: [field('l1l2', 'L1 to L2'), field('comp', 'Compressor', { unit: 'A' })],
  }),
  label: of({
    title: 'The print on the part, as on the label.',
    parts: [
      { kind: 'label', key: 'label', ask: 'Print', optional: false, remembered: '45+5\u2009µF ±6\u2009% 440\u2009VAC' },
    ],
  }),
  note: of({
    title: 'Leave it closed. Note what a senior needs.',
    parts: [{ kind: 'note', key: 'note', ask: 'Note', optional: false }],
    skippable: true,
  }),
  photo: of({
    title: 'A photo of the nameplate.',
    parts: [{ kind: 'photo', key: 'photo', ask: 'Photo', optional: false }],
  }),
  'an answer to change': of({
    amends: 4,
    class: 'proving',
    title: 'Prove the meter, prove it dead, prove the meter again.',
    parts: [
      field('before', 'Known source, before', { remembered: '121' }),
      field('l1l2', 'L1 to L2', { remembered: '0.2' }),
    ],
    line: 'before l1l2',
  }),
  waiting: of({
    kind: 'waiting',
    class: 'proving',
    title: 'A senior has to approve how this means is held open.',
    body: ['Keep the cover on and your hands out.'],
  }),
  emergency: of({
    kind: 'emergency',
    title: 'Emergency. Get away from the unit.',
    body: ['Don’t touch a person until the power is off.', 'Call 911.', 'CPR and AED if somebody does not respond.'],
    callouts: [{ level: 'danger', text: 'Every isolation of this job has ended. Nothing counts as dead.' }],
    parts: [choose('choice', 'Answer when you are away and safe', false, ['Seen', 'Heard of, not here'])],
  }),
  'hazard question': of({
    kind: 'hazard-question',
    title: 'Is this happening now, or is somebody hurt?',
    callouts: [{ level: 'warning', text: 'If it is happening now: get away first, answer later.' }],
    parts: [
      choose('choice', 'Which is it?', false, [
        'Happening now, or someone is hurt',
        'An old mark, long ago, or elsewhere',
      ]),
    ],
  }),
  stopping: of({
    kind: 'stopping',
    title: 'Before you stop: make it safe.',
    parts: [
      choose('cover', 'The cover', false, ['Cover is on', 'Cover is off, area guarded']),
      choose('lock', 'The lock', false, ['My lock stays on', 'No lock on, power may return']),
    ],
  }),
  paused: of({
    kind: 'paused',
    title: 'Paused. Come back when it is safe.',
    parts: [{ kind: 'confirm', key: 'ok', ask: 'Continue', optional: false, options: options('Go on') }],
  }),
  'taking over': of({
    kind: 'taking-over',
    title: 'This job changes hands.',
    callouts: [{ level: 'danger', text: 'Not proved dead for you. Begin with make-dead.' }],
    parts: [{ kind: 'confirm', key: 'ok', ask: 'Take it over', optional: false, options: options('I take it over') }],
  }),
  held: of({ kind: 'held', title: 'Held. A senior has been told.' }),
  finished: of({
    kind: 'finished',
    title: 'Proven',
    body: ['A senior reads and signs the record.'],
    verdicts: [verdict],
    pictures: [
      ...pictures('sample', 'scale-fail', 'scale-conditional-fail', 'windings-fit'),
      ...pictures(null, 'path-long'),
    ],
  }),
  'readings with pictures': of({
    class: 'inside',
    title: 'Pick the new part and measure it dead, before it is fitted.',
    body: [
      'HERM to C, FAN to C.',
      '1. Drawer A: 40+5\u2009µF 440\u2009V, 3 left. HERM gets 40\u2009µF, 0.0\u2009% off the rated 40\u2009µF.',
      '2. Drawer C: 40\u2009µF 440\u2009V, 1 left. Drawer D: 5\u2009µF 440\u2009V, 4 left. Two parts with a jumper between both C.',
      '35+5\u2009µF 440\u2009V: HERM −12.5\u2009%, below the label’s limits.',
    ],
    isolation: [STRIPS.proved],
    holder: 'jo',
    line: 'herm fan',
    pictures: pictures(null, 'leads-dual', 'leads-start', 'decay-run'),
    parts: [field('herm', 'HERM to C', { unit: 'µF' }), field('fan', 'FAN to C', { unit: 'µF' })],
  }),
  signed: of({ kind: 'signed', title: 'Signed', body: ['A senior has signed this record.'], verdicts: [verdict] }),
  'asked by a senior': of({
    question: { seq: 6, text: { ref: 'r', hash: 'a'.repeat(64) } },
    parts: [choose('choice', 'What you see', false, ['Hum', 'Silent'])],
  }),
};
