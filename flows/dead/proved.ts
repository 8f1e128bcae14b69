import { judge, measure, probesOf, sure, volts } from '../../engine/vocabulary.ts';
import { LIMITS } from '../limits.ts';

const gateVolts = (ask: string, words: readonly string[]) => volts(ask, { over: false, words });
const between = { above: LIMITS.absence.dead, below: LIMITS.absence.live };
const LEGS = { fact: 'means', part: 'supply', is: ['two-legs', 'three'] } as const;
const THREE = { fact: 'means', part: 'supply', is: ['three'] } as const;
const OSHA = '29 CFR 1910.333(b)(2): isolate, lock and tag, discharge, verify, in this order';
const PROVE =
  'Live-dead-live: DOE-HDBK-1092 recommends it below 600 V too; NFPA 70E 120.5 asks for it at any voltage (secondary source)';

/** What the two load readings are called in this cabinet, and where their leads go. */
interface LoadSide {
  readonly t1g: string;
  readonly t2g: string;
  readonly t1: string;
  readonly t2: string;
}
/** Every pair that make-dead reads, by the part that asks for it. What is dead is the judge’s to say. */
const pairs = ({ t1, t2 }: LoadSide) =>
  ({
    l1l2: ['L1', 'L2'],
    l1g: ['L1', 'bare ground'],
    l2g: ['L2', 'bare ground'],
    l1l3: ['L1', 'L3'],
    l2l3: ['L2', 'L3'],
    l3g: ['L3', 'bare ground'],
    hn: ['hot', 'neutral'],
    hg: ['hot', 'bare ground'],
    ng: ['neutral', 'bare ground'],
    t1g: [t1, 'bare ground'],
    t2g: [t2, 'bare ground'],
    t3g: ['T3', 'bare ground'],
    x12: ['second feed', 'its other wire'],
    x1g: ['second feed', 'bare ground'],
    x2g: ['its other wire', 'bare ground'],
  }) as const;
/** Live-dead-live, and the tool across what may be induced. */
export const provedDead = <const T extends string>(load: LoadSide, next: T) =>
  ({
    proving: measure({
      say: 'Prove the meter, prove it dead, prove the meter again.',
      body: [
        'Known source first, then every pair, then the same source again.',
        'Probes only. Ground is bare metal, not paint.',
        'A proximity tester or a lamp proves nothing.',
      ],
      callouts: [{ level: 'danger', text: 'Treat every conductor as live until this line is accepted.' }],
      why: 'A meter that died between the two source readings shows zero on a live part. The whole line counts, or none of it.',
      source: [OSHA, PROVE],
      picture: probesOf('V AC', {
        before: ['known source', 'its other side', 'as stated'],
        ...pairs(load),
        after: ['the same source', 'its other side', 'as before'],
      }),
      circuit: 'line',
      fields: {
        still: sure('Your lock is still on and the means is still open', 'Still locked and open', {
          when: { again: true },
        }),
        before: gateVolts('Known source, before', ['source', 'known']),
        l1l2: volts('L1 to L2', {
          over: false,
          words: ['l1-l2'],
          when: LEGS,
        }),
        l1g: volts('L1 to ground', {
          over: false,
          words: ['l1-g'],
          when: LEGS,
        }),
        l2g: volts('L2 to ground', {
          over: false,
          words: ['l2-g'],
          when: LEGS,
        }),
        l1l3: volts('L1 to L3', { over: false, words: ['l1-l3'], when: THREE }),
        l2l3: volts('L2 to L3', { over: false, words: ['l2-l3'], when: THREE }),
        l3g: volts('L3 to ground', { over: false, words: ['l3-g'], when: THREE }),
        hn: volts('Hot to neutral', {
          over: false,
          words: ['h-n'],
          when: { fact: 'means', part: 'supply', is: ['neutral'] },
        }),
        hg: volts('Hot to ground', {
          over: false,
          words: ['h-g'],
          when: { fact: 'means', part: 'supply', is: ['neutral'] },
        }),
        ng: volts('Neutral to ground', {
          over: false,
          words: ['n-g'],
          when: { fact: 'means', part: 'supply', is: ['neutral'] },
        }),
        t1g: gateVolts(load.t1g, ['t1-g']),
        t2g: volts(load.t2g, { over: false, words: ['t2-g'], when: LEGS }),
        t3g: volts('T3 to ground, load side', { over: false, words: ['t3-g'], when: THREE }),
        x12: volts('Second feed, across', {
          over: false,
          words: ['x1-x2', '2nd feed', 'second feed'],
          when: { fact: 'means', part: 'feeds', not: ['none'] },
        }),
        x1g: volts('Second feed, first wire to ground', {
          over: false,
          words: ['x1-g', '2nd feed', 'second feed'],
          when: { fact: 'means', part: 'feeds', not: ['none'] },
        }),
        x2g: volts('Second feed, second wire to ground', {
          over: false,
          words: ['x2-g', '2nd feed', 'second feed'],
          when: { fact: 'means', part: 'feeds', not: ['none'] },
        }),
        after: gateVolts('The same source, after', ['again']),
      },
      cant: '!no-source',
      next: 'absence',
    }),
    absence: judge('absence', {
      of: { line: 'proving', means: 'means', unit: '@class' },
      limits: LIMITS.absence,
      quiet: ['dead'],
      then: {
        dead: next,
        live: '!live',
        'lost-leg': '!lost-leg',
        lines: '!lines',
        'first-proving': '!before',
        'second-proving': '!after',
        ghost: 'bridge',
        undecided: '!line',
      },
    }),
    bridge: measure({
      say: 'Put the 20 kΩ tool across each pair that shows volts, and read across it.',
      body: [
        'Known source first, then the pairs asked, then the same source again.',
        'Insulated probes. The tool stays on while you read.',
      ],
      callouts: [{ level: 'danger', text: 'Treat the pair as live until the reading collapses.' }],
      why: 'Induced volts collapse under a load of 20 kΩ. A real source holds.',
      source: ['0.125 W in 20 kΩ at 50 V: arithmetic', 'our setting: 5 V accepted'],
      picture: probesOf('V AC', pairs(load)),
      circuit: 'line',
      fields: {
        before: gateVolts('Known source, before', ['source', 'known']),
        l1l2: volts('L1 to L2 across the tool', { over: false, when: { fact: 'proving', part: 'l1l2', ...between } }),
        l1g: volts('L1 to ground across the tool', { over: false, when: { fact: 'proving', part: 'l1g', ...between } }),
        l2g: volts('L2 to ground across the tool', { over: false, when: { fact: 'proving', part: 'l2g', ...between } }),
        l1l3: volts('L1 to L3 across the tool', { over: false, when: { fact: 'proving', part: 'l1l3', ...between } }),
        l2l3: volts('L2 to L3 across the tool', { over: false, when: { fact: 'proving', part: 'l2l3', ...between } }),
        l3g: volts('L3 to ground across the tool', { over: false, when: { fact: 'proving', part: 'l3g', ...between } }),
        hn: volts('Hot to neutral across the tool', { over: false, when: { fact: 'proving', part: 'hn', ...between } }),
        hg: volts('Hot to ground across the tool', { over: false, when: { fact: 'proving', part: 'hg', ...between } }),
        ng: volts('Neutral to ground across the tool', {
          over: false,
          when: { fact: 'proving', part: 'ng', ...between },
        }),
        t1g: volts('T1 to ground across the tool', { over: false, when: { fact: 'proving', part: 't1g', ...between } }),
        t2g: volts('T2 to ground across the tool', { over: false, when: { fact: 'proving', part: 't2g', ...between } }),
        t3g: volts('T3 to ground across the tool', { over: false, when: { fact: 'proving', part: 't3g', ...between } }),
        x12: volts('Second feed across the tool', { over: false, when: { fact: 'proving', part: 'x12', ...between } }),
        x1g: volts('Second feed, first wire to ground across the tool', {
          over: false,
          when: { fact: 'proving', part: 'x1g', ...between },
        }),
        x2g: volts('Second feed, second wire to ground across the tool', {
          over: false,
          when: { fact: 'proving', part: 'x2g', ...between },
        }),
        after: gateVolts('The same source, after', ['again']),
      },
      cant: '!no-tool',
      next: 'collapse',
    }),
    collapse: judge('bridge', {
      of: { bridge: 'bridge', line: 'proving', means: 'means' },
      limits: LIMITS.bridge,
      then: { induced: next, real: '!real', proving: '!after', undecided: '!line' },
    }),
  }) as const;
