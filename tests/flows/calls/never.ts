/**
 * Ways that the pages state and no call can go, each with why. A judgement gives all its outcomes a way, wherever it is
 * used; at a place that knows more, some of them can’t come.
 */
const of = (page: string, ...ways: readonly string[]): string[] => ways.map((way) => `${page}/${way}`);
const each = (pages: readonly string[], ...ways: readonly string[]): string[] => pages.flatMap((p) => of(p, ...ways));
const AFTER = [
  ...['repeat', 'fails', 'ask-third', 'fan-undecided', 'pair', 'swapped', 'too-high', 'too-high-twice', 'wires'],
  ...['ohms', 'open', 'exact', 'contradiction', 'undecided'],
].map((outcome) => `part ${outcome}`);

export const NEVER: Readonly<Record<string, readonly string[]>> = {
  'its reading is there: left out, the question leads elsewhere': [
    ...of('blower-live', 'called undecided', 'fed undecided', 'plugged undecided', 'tapped undecided'),
    ...of('still-after', 'fed undecided', 'at-board undecided', 'held undecided', 'assisted-held undecided'),
    ...of('still-after', 'evened undecided', 'evened-again undecided'),
    ...of('control', 'hop undecided', 'open undecided', 'delay-over undecided', 'coil undecided'),
    ...['y-off/gives undecided', 'cable-end/there undecided'],
    ...of('short-outdoors', 'located undecided', 'in-cable undecided'),
    ...of('warm', 'ohms undecided', 'command undecided', 'valve undecided'),
    ...of('indoor-source', 'short undecided', 'secondary undecided'),
    ...of('gates', 'absence undecided', 'collapse undecided', 'left undecided'),
    ...['breaker/judged undecided', 'chatter/judged undecided', 'circuit/drier undecided', 'ecm-fan/there undecided'],
    ...['restart/drop undecided', 'runs-on/called undecided', 'dual-capacitor-readings/compare undecided'],
    'single-capacitor-readings/compare undecided',
    'phase-monitor/judged undecided',
  ],
  'what it looks at was asked before': [
    ...of('round', 'fan-kind undecided', 'lines undecided'),
    ...of('dead-block', 'any undecided', 'without undecided', 'kind undecided', 'third undecided'),
    ...of('motors', 'lines undecided'),
    ...of('run-capacitor', 'sight undecided', 'sight-unmarked undecided', 'kind undecided'),
    ...of('run-capacitor', 'several undecided', 'several-unmarked undecided'),
    ...of('another-capacitor', 'seen undecided', 'several undecided'),
    ...of('blower-capacitor', 'sight undecided', 'several undecided', 'kind undecided'),
    ...of('gates', 'capacitors undecided', 'alternative undecided'),
    ...['blower-tests/any undecided', 'unmarked-terminals/by-tabs undecided', 'repair/history undecided'],
    'blower-repair/history undecided',
  ],
  'the test is judged first, and its residual after it': [
    ...of('winding-emptied', 'applied charged', 'applied discharged', 'applied meter', 'applied undecided'),
    ...of('winding-emptied', 'left ask', 'left no-charge', 'left undecided'),
  ],
  'a unit with a bus is never restarted here': ['round/opened closed'],
  'another page takes it before': [
    ...of(
      'round',
      'by-observation i',
      'by-observation k',
      'by-observation p',
      'clean i',
      'clean k',
      'clean m',
      'clean p',
    ),
    ...of('round', 'fan-kind closed', 'lines closed'),
    ...of('phase-monitor', 'held k', 'held p'),
    ...of('dead-block', 'without closed', 'kind closed'),
    ...of('motors', 'lines closed', 'and-fan fan'),
  ],
  'not asked here': [
    ...of('phase-monitor', 'judged neutral', 'judged sag', 'judged contacts', 'judged leg-lost'),
    ...of('both-run', 'running unbalanced', 'running fan-high', 'running fan-not-running'),
    ...of('control', 'hop delay', 'hop lp', 'hop hp', 'hop discharge', 'coil source', 'coil wait'),
    ...of('runs-on', 'welded good', 'welded coil-open', 'welded coil-shorted', 'welded contacts', 'welded between'),
    ...each(['start-potential-relay', 'start-current-relay', 'start-ptc'], 'value shorted', 'bleed one-end-off'),
    ...of('compressor-terminals', 'judged overload-open', 'judged common-lead'),
    ...['contactor-dead/judged welded', 'dead-block/contactor welded', 'inverter/three protector-open'],
    ...of('short-outdoors', 'located secondary-open', 'in-cable secondary-open'),
    ...['blower-tests/fuses good', 'indoor-source/fuse good', 'under-load/judged too-high-twice'],
    ...of('insulation', 'before good', 'before none-found', 'before low', 'before warm-first', 'before grounded'),
    'insulation/before undecided',
  ],
  'one section has no other': each(
    ['single-capacitor-readings', 'single-readings-beside'],
    ...['compare ask-third', 'compare fan-undecided', 'compare pair', 'compare swapped', 'compare open'],
    ...['compare exact', 'compare contradiction', 'contradiction next'],
  ),
  'the sections were judged; only the case is new': each(
    ['dual-capacitor-readings', 'single-capacitor-readings', 'single-readings-beside'],
    ...AFTER,
  ),
  'the judge before it has ruled it out': [
    ...of('control', 'hop nothing', 'hop contradicts', 'open through', 'open delay', 'open drop', 'open nothing'),
    ...of('control', 'open low', 'coil drop', 'coil absent'),
    ...of('insulation', 'judged ask', 'judged refused'),
    ...['chatter/judged absent', 'control/delay-over wait', 'single-capacitor-readings/short neither'],
    'single-readings-beside/short neither',
    ...of('indoor-source', 'fed good', 'fed primary', 'fed tap', 'fed overload', 'fed weak'),
    ...['under-load/twice repeat', 'warm/command wait'],
  ],
  'a senior’s word, in tests/engine/make-dead.test.ts': ['gates/alternative ask', 'gates/approve next'],
};
