/** The gates that every cabinet has, whatever holds a charge in it: fit, locked out, proved dead between two provings. */
import { approval, confirm, form, judge, measure, one, probesOf, several, sure, volts } from '../engine/vocabulary.ts';
import { LIMITS } from './limits.ts';

export const gateVolts = (ask: string, words: readonly string[]) => volts(ask, { over: false, words });
const between = { above: LIMITS.absence.dead, below: LIMITS.absence.live };
const LEGS = { fact: 'means', part: 'supply', is: ['two-legs', 'three'] } as const;
const THREE = { fact: 'means', part: 'supply', is: ['three'] } as const;
const OSHA = '29 CFR 1910.333(b)(2): isolate, lock and tag, discharge, verify, in this order';
const PROVE =
  'Live-dead-live: DOE-HDBK-1092 recommends it below 600 V too; NFPA 70E 120.5 asks for it at any voltage (secondary source)';

/** From the person to the lock. */
export const lockedOut = <const T extends string>(next: T) =>
  ({
    fit: confirm({
      say: 'Are you and your meter fit for this?',
      body: [
        'You are dry, with firm footing and enough light.',
        'Safety glasses and rated gloves are on, rings and watch are off.',
        'Meter and leads are whole and rated for the circuit, CAT III 600 V or better.',
        'You are not alone if your employer’s program asks so.',
      ],
      callouts: [
        { level: 'warning', text: 'No electrical work in rain or standing water.' },
        {
          level: 'notice',
          text: 'Qualified people only. Your employer’s program, the maker’s instructions and local codes govern.',
        },
      ],
      why: 'A wet stance, a bare hand or a meter below the circuit’s category turns a slip into an injury.',
      source: [
        '29 CFR 1910.334(c): qualified persons, instruments inspected and rated',
        'CAT III 600 V: common practice, no single source',
      ],
      yes: 'Yes, all of it',
      words: ['all fit', 'fit'],
      no: {
        label: 'No, something is missing',
        words: [
          'missing',
          'no gloves',
          'no glasses',
          'no ppe',
          'forgot my gloves',
          'forgot my glasses',
          'wet',
          'its wet',
          'raining',
          'its raining',
          'rain',
          'standing water',
          'too dark',
          'im alone',
          'esta lloviendo',
        ],
        to: 'unfit',
      },
      next: 'means',
    }),
    unfit: form({
      say: 'What is missing? Put it right before you go on.',
      body: ['Type stop to leave the unit off and come back.'],
      parts: {
        missing: several('What was missing', {
          dry: { label: 'Dry place', words: ['wet', 'rain'] },
          footing: { label: 'Footing' },
          light: { label: 'Light', words: ['dark'] },
          protection: { label: 'Glasses or gloves', words: ['gloves', 'glasses', 'ppe'] },
          meter: { label: 'Meter or leads', words: ['meter', 'leads'] },
          company: { label: 'A second person', words: ['alone', 'second person'] },
        }),
        ready: sure('It is put right now', 'Put right'),
      },
      next: 'means',
    }),
    means: form({
      say: 'Thermostat OFF. What opens this unit, and what else could feed it?',
      body: [
        'An open contactor or a thermostat at OFF is never isolation: a single-pole contactor leaves one leg hot.',
      ],
      callouts: [{ level: 'danger', text: 'The line side of an opened disconnect stays live.' }],
      why: 'Every source has to be open, and the meter has to be proved on a source that you know.',
      source: ['29 CFR 1910.333(b)(2)(ii)(B): all sources; interlocks and selector switches are not the sole means'],
      parts: {
        means: several('What opens it, in your sight and control', {
          'pull-out': {
            label: 'Pull-out',
            words: ['pullout', 'disconnect', 'non-fused disconnect', 'nonfused disconnect', 'unfused disconnect'],
          },
          switch: { label: 'Switch' },
          breaker: { label: 'Breaker', words: ['cb', 'breakers'] },
          'fused-switch': { label: 'Fused switch', words: ['fused', 'fused disconnect', 'fusible disconnect'] },
          plug: { label: 'Plug' },
        }),
        feeds: several('Any second feed', {
          none: {
            label: 'No other feed',
            alone: true,
            words: [
              'no other feed',
              'no other feeds',
              'none',
              'no second feed',
              'no 2nd feed',
              'no other',
              'nothing else',
              'nothing else feeds it',
              'only feed',
              'single feed',
              'one feed',
            ],
          },
          indoor: {
            label: 'The other unit, indoor or outdoor',
            words: [
              ...['other unit', 'indoor unit', 'outdoor unit', 'unit cooler', 'evaporator', 'evap fans'],
              ...['unit cooler fans', 'unit cooler on a second breaker'],
            ],
          },
          heater: {
            label: 'Crankcase or defrost heater',
            words: ['heater', 'heaters', 'defrost', 'defrost heater', 'crankcase heater'],
          },
          pump: { label: 'Pump' },
          generator: { label: 'Generator' },
          pv: { label: 'PV or battery', words: ['solar', 'pv'] },
        }),
        supply: one(
          'Supply of this unit',
          {
            'two-legs': {
              label: '208 to 240 V, two legs',
              words: [
                ...['240', '230', '208', '240v', '230v', '208v', '208/230', '208/240', '208-230', '208-240'],
                ...['two legs', '2 legs'],
              ],
            },
            neutral: { label: '115 or 120 V, one leg and neutral', words: ['115', '115v', '120v', 'one leg', '1 leg'] },
            three: {
              label: 'Three lines',
              words: [
                'three lines',
                '3 lines',
                'three-phase',
                '3-phase',
                '3 phase',
                'three phase',
                '3ph',
                'three legs',
                '3 legs',
              ],
            },
          },
          { as: 'cabinet:supply' },
        ),
        source: one('Known source for the meter', {
          outlet: {
            label: 'Outlet, 120 V',
            words: [
              'outlet',
              'wall outlet',
              '120v outlet',
              '120 outlet',
              'outlet 120',
              'outlet 120v',
              'receptacle',
              'gfci',
            ],
          },
          line240: {
            label: 'Line side of the locked means, 240 V',
            words: ['line 240', 'line side', 'line side 240', 'line side 240v', '240 line side', '240v line side'],
          },
          line230: {
            label: 'Line side, 230 V',
            words: ['line 230', 'line side 230', 'line side 230v', '230 line side', '230v line side'],
          },
          line208: {
            label: 'Line side, 208 V',
            words: ['line 208', 'line side 208', 'line side 208v', '208 line side', '208v line side'],
          },
          unit120: {
            label: 'Proving unit, 120 V',
            words: ['proving unit 120', '120 proving unit', '120v proving unit'],
          },
          unit240: {
            label: 'Proving unit, 240 V',
            words: ['proving unit 240', '240 proving unit', '240v proving unit'],
          },
          other: { label: 'Proving unit with another print', words: ['other'] },
        }),
        stated: volts('What the proving unit should read', { over: false, when: { part: 'source', is: ['other'] } }),
      },
      next: 'locked',
    }),
    locked: confirm<T | '!fed' | 'alternative'>({
      say: 'Open it, lock it, tag it, try it.',
      body: [
        'Interrupt the load first, then open every means.',
        'A pull-out comes out of its holder and into your pocket.',
        'Your own lock and tag are on each means.',
        'Give a call for cooling: nothing starts. Take the call off again.',
      ],
      callouts: [{ level: 'warning', text: 'A pull-out drawn under load arcs. A pull-out can go back upside-down.' }],
      why: 'De-energised without lock and tag counts as energised.',
      source: [OSHA, '29 CFR 1910.333(b)(1): not locked or tagged = treated as energised'],
      yes: 'Open, locked, tagged, tried',
      words: [
        'loto',
        'loto done',
        'locked out tagged out',
        'locked out and tagged out',
        'locked and tagged out',
        'lock and tag on',
        'locked tagged tested',
        'locked tagged tried nothing starts',
        'locked tagged nothing started',
        'locked tagged nothing starts',
        'locked and tagged nothing starts',
        'lock and tag on tried nothing starts',
        'lock and tag on nothing starts',
        'open locked tagged tried nothing starts',
      ],
      no: {
        label: 'Something started',
        words: [
          'fan started',
          'it started',
          'unit started',
          'compressor started',
          'still starts',
          'still runs',
          'still running',
          'it runs',
          'came on',
          'fan came on',
          'it came on',
          'kicked on',
        ],
        to: '!fed',
      },
      cant: { label: 'No lock fits', words: ['lock wont fit', 'lock not fit', 'lock not fitting'], to: 'alternative' },
      next,
    }),
    alternative: judge('alternative', {
      of: {},
      limits: {},
      then: { allowed: 'tag', ask: 'approve', undecided: 'approve' },
    }),
    tag: confirm<T | 'approve'>({
      say: 'Tag it and take one extra measure.',
      body: [
        'The tag hangs where the lock would.',
        'One extra measure keeps it open: a fuse out and in your pocket, a wire lifted, or a person at the means.',
        'Give a call for cooling: nothing starts. Take the call off again.',
      ],
      callouts: [{ level: 'warning', text: 'A tag alone holds nothing back.' }],
      source: ['29 CFR 1910.333(b)(2)(iii)(C), (D): a tag without a lock needs one additional measure'],
      yes: 'Tagged, extra measure taken, tried',
      words: [
        'tagged fuse out tried',
        'tagged fuse pulled tried',
        'tagged fuse in my pocket tried',
        'tagged wire lifted tried',
        'tagged and tried, extra measure taken, nothing starts',
      ],
      cant: { label: 'That is not possible here', to: 'approve' },
      next,
    }),
    approve: approval({
      say: 'A senior has to approve how this means is held open.',
      body: ['Keep the cover on and your hands out.', 'Type stop to leave the unit off and come back.'],
      what: 'lock-alternative',
      next,
    }),
  }) as const;

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

const CLOSE = 'Close up. Go back to the means.';
/** By which every make-dead can be left, before those of what its own cabinet holds. */
export const GATE_EXITS = [
  'proved',
  'fed',
  'before',
  'after',
  'line',
  'live',
  'lost-leg',
  'lines',
  'real',
  'no-source',
  'no-tool',
] as const;

/** What the ways out of these gates mean, in every cabinet. */
export const LEAVING = {
  fed: {
    forget: 'means',
    notice: 'Something still starts: another source feeds this unit. Find it before you go on.',
  },
  before: {
    forget: 'proving',
    notice:
      'The meter did not prove on the known source. Check leads, range and battery, then take the whole line again.',
  },
  after: {
    forget: 'proving',
    notice: 'The second proving failed, so the readings between it don’t count. Take the whole line again.',
  },
  line: { forget: 'proving', notice: 'The line is not complete. Take it again whole.' },
  live: { forget: 'means', notice: `This is live. ${CLOSE}` },
  'lost-leg': {
    forget: 'means',
    notice: `This is live with a lost leg: both legs show volts to ground. ${CLOSE} The lost leg is a finding.`,
  },
  lines: {
    forget: 'means',
    notice: 'A three-phase unit has three lines. Name them at the means, and read all six pairs.',
  },
  real: { forget: 'means', notice: `The volts hold under the tool, so a real source feeds them. ${CLOSE}` },
  'no-source': {
    forget: 'proving',
    notice:
      'Without a known source nothing is proved dead: an outlet, the line side of the locked means, or a proving unit from the truck. Take back the means to name another. Else type senior, or stop.',
  },
  'no-tool': {
    forget: 'proving',
    notice: 'Without the tool these volts are not explained. Fetch the resistor lead from the truck, or type senior.',
  },
} as const;
