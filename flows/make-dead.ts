import {
  approval,
  confirm,
  count,
  flow,
  form,
  isolation,
  judge,
  measure,
  one,
  pictured,
  printed,
  several,
  shown,
  sure,
  volts,
} from '../engine/vocabulary.ts';
import { MAKE_DEAD } from './examples/start.ts';
import { LIMITS } from './limits.ts';

const gateVolts = (ask: string, words: readonly string[]) => volts(ask, { over: false, words });
const between = { above: LIMITS.absence.dead, below: LIMITS.absence.live };
const OSHA = '29 CFR 1910.333(b)(2): isolate, lock and tag, discharge, verify, in this order';
const PROVE =
  'Live-dead-live: DOE-HDBK-1092 recommends it below 600 V too; NFPA 70E 120.5 asks for it at any voltage (secondary source)';

/** Make it dead and prove it: six prompts, four by tapping, two typed lines. */
export const makeDead = flow({
  id: 'make-dead',
  version: 1,
  title: 'Make it dead',
  exits: [
    'proved',
    'fed',
    'before',
    'after',
    'line',
    'live',
    'lost-leg',
    'real',
    'no-source',
    'no-tool',
    'residual',
    'no-resistor',
  ],
  examples: MAKE_DEAD,
  steps: {
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
      words: ['geared up', 'gloves and glasses on', 'all fit', 'fit'],
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
              'no other',
              'nothing else',
              'nothing else feeds it',
              'only feed',
              'single feed',
              'one feed',
            ],
          },
          indoor: { label: 'The other unit, indoor or outdoor', words: ['indoor unit', 'outdoor unit'] },
          heater: { label: 'Crankcase or defrost heater', words: ['heater'] },
          pump: { label: 'Pump' },
          generator: { label: 'Generator' },
          pv: { label: 'PV or battery', words: ['solar', 'pv'] },
        }),
        supply: one('Supply of this unit', {
          'two-legs': {
            label: '208 to 240 V, two legs',
            words: ['240', '230', '208', '240v', '230v', '208v', '208/230', 'two legs', '2 legs'],
          },
          neutral: { label: '115 or 120 V, one leg and neutral', words: ['115', '115v', '120v', 'one leg', '1 leg'] },
        }),
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
    locked: confirm({
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
      next: 'look',
    }),
    alternative: judge('alternative', {
      of: {},
      limits: {},
      then: { allowed: 'tag', ask: 'approve', undecided: 'approve' },
    }),
    tag: confirm({
      say: 'Tag it and take one extra measure.',
      body: [
        'The tag hangs where the lock would.',
        'One extra measure keeps it open: a fuse out and in your pocket, a wire lifted, or a person at the means.',
        'Give a call for cooling: nothing starts. Take the call off again.',
      ],
      callouts: [{ level: 'warning', text: 'A tag alone holds nothing back.' }],
      source: ['29 CFR 1910.333(b)(2)(iii)(C), (D): a tag without a lock needs one additional measure'],
      yes: 'Tagged, extra measure taken, tried',
      cant: { label: 'That is not possible here', to: 'approve' },
      next: 'look',
    }),
    approve: approval({
      say: 'A senior has to approve how this means is held open.',
      body: ['Keep the cover on and your hands out.', 'Type stop to leave the unit off and come back.'],
      what: 'lock-alternative',
      next: 'look',
    }),
    look: form({
      say: 'Cover off, eyes only. What do you see, and how many capacitors?',
      body: [
        'Touch nothing yet. A start assist may hide behind the wrap.',
        'The print gives the hold time; leave it out if you can’t read it.',
      ],
      callouts: [{ level: 'danger', text: 'Capacitors may be charged. Keep fingers and tools out.' }],
      why: 'The number of capacitors sets how many residual readings are due.',
      parts: {
        condition: several(
          'What you see',
          {
            clean: {
              label: 'Clean, nothing odd',
              alone: true,
              words: [
                'cover off clean',
                'clean',
                'looks clean',
                'ok',
                'nothing',
                'nothing odd',
                'looks good',
                'all good',
              ],
            },
            bulged: {
              label: 'Bulged top',
              words: [
                'swollen',
                'swelled',
                'swelled up',
                'swelling',
                'bulging',
                'domed',
                'puffed up',
                'top swelled up',
                'inflado',
              ],
            },
            oil: { label: 'Oil', words: ['oily', 'leaking oil'] },
            vented: { label: 'Vent or disc popped', words: ['popped', 'disc popped', 'vent popped', 'vent open'] },
            'burnt-through': { label: 'Terminal burnt through', words: ['tab burnt off'] },
            scorched: { label: 'Scorched wire or tab, old mark', words: ['scorched'] },
            loose: { label: 'Loose connection', words: ['loose', 'loose wire', 'loose wires', 'loose tab'] },
            rust: { label: 'Rust, dirt or age', words: ['rusty', 'dirty', 'old'] },
            wet: { label: 'Wet inside' },
            chewed: { label: 'Chewed wires', words: ['chewed', 'mice', 'mouse', 'mouse nest', 'rats', 'ants', 'nest'] },
          },
          { as: 'cabinet:condition' },
        ),
        count: count('Number of capacitors', {
          over: false,
          as: 'cabinet:count',
          words: [
            'cap',
            'caps',
            'capacitor',
            'capacitors',
            'dual cap',
            'dual caps',
            'run cap',
            'dual run cap',
            'dual capacitor',
            'run capacitor',
          ],
        }),
        print: printed('Print of the run capacitor', { optional: true, as: 'cabinet:label' }),
        terminals: one(
          'Its terminals, where the print can’t be read',
          {
            two: { label: 'Two', words: ['two terminals', '2 terminals'] },
            three: { label: 'Three: C, HERM, FAN', words: ['three terminals', '3 terminals'] },
          },
          { optional: true },
        ),
        photo: pictured('Photo', { optional: true }),
      },
      next: 'proving',
    }),
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
      circuit: 'line',
      fields: {
        still: sure('Your lock is still on and the means is still open', 'Still locked and open', {
          when: { again: true },
        }),
        before: gateVolts('Known source, before', ['source', 'known']),
        l1l2: volts('L1 to L2', {
          over: false,
          words: ['l1-l2'],
          when: { fact: 'means', part: 'supply', is: ['two-legs'] },
        }),
        l1g: volts('L1 to ground', {
          over: false,
          words: ['l1-g'],
          when: { fact: 'means', part: 'supply', is: ['two-legs'] },
        }),
        l2g: volts('L2 to ground', {
          over: false,
          words: ['l2-g'],
          when: { fact: 'means', part: 'supply', is: ['two-legs'] },
        }),
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
        t1g: gateVolts('T1 to ground, load side', ['t1-g']),
        t2g: volts('T2 to ground, load side', {
          over: false,
          words: ['t2-g'],
          when: { fact: 'means', part: 'supply', is: ['two-legs'] },
        }),
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
      of: { line: 'proving', means: 'means' },
      limits: LIMITS.absence,
      quiet: ['dead'],
      then: {
        dead: 'capacitors',
        live: '!live',
        'lost-leg': '!lost-leg',
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
      circuit: 'line',
      fields: {
        before: gateVolts('Known source, before', ['source', 'known']),
        l1l2: volts('L1 to L2 across the tool', { over: false, when: { fact: 'proving', part: 'l1l2', ...between } }),
        l1g: volts('L1 to ground across the tool', { over: false, when: { fact: 'proving', part: 'l1g', ...between } }),
        l2g: volts('L2 to ground across the tool', { over: false, when: { fact: 'proving', part: 'l2g', ...between } }),
        hn: volts('Hot to neutral across the tool', { over: false, when: { fact: 'proving', part: 'hn', ...between } }),
        hg: volts('Hot to ground across the tool', { over: false, when: { fact: 'proving', part: 'hg', ...between } }),
        ng: volts('Neutral to ground across the tool', {
          over: false,
          when: { fact: 'proving', part: 'ng', ...between },
        }),
        t1g: volts('T1 to ground across the tool', { over: false, when: { fact: 'proving', part: 't1g', ...between } }),
        t2g: volts('T2 to ground across the tool', { over: false, when: { fact: 'proving', part: 't2g', ...between } }),
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
      then: { induced: 'capacitors', real: '!real', proving: '!after', undecided: '!line' },
    }),
    capacitors: judge('capacitors', {
      of: { look: 'look' },
      limits: {},
      quiet: ['none', 'some'],
      then: { none: '!proved', some: 'residual', undecided: '!line' },
    }),
    residual: measure({
      say: 'Discharge every capacitor through the resistor tool, then measure what is left.',
      body: [
        'Resistor tool: 20 kΩ, 5 W, insulated probes rated for the volts. Hold on each pair: HERM–C, FAN–C, HERM–FAN; two terminals: across them.',
        'Then DC volts: a 9 V battery, each pair, the battery again.',
        'Discharge even if the first reading is near zero.',
      ],
      callouts: [
        { level: 'danger', text: 'A screwdriver is no discharge tool.' },
        { level: 'warning', text: 'Fingers stay off the terminals until this line is accepted.' },
      ],
      why: 'A wired capacitor usually empties through the windings. It holds its charge exactly where a wire or a winding is open.',
      source: [
        '29 CFR 1910.333(b)(2)(ii)(C): capacitors discharged',
        '20 kΩ resistor: common practice, no single source',
        'our setting: 5 V DC',
      ],
      circuit: 'part',
      shows: [shown('hold', { of: { label: '@cabinet:label', look: 'look' }, limits: LIMITS.hold })],
      fields: {
        batteryBefore: volts('9 V battery, before', { over: false, words: ['battery', 'batt', '9v'] }),
        hc: volts('HERM to C or across', {
          over: false,
          signed: true,
          words: ['h-c', 'c-h', 'herm', 'herm-c', 'c-herm', 'herm to c'],
        }),
        fc: volts('FAN to C', {
          over: false,
          signed: true,
          words: ['f-c', 'c-f', 'fan', 'fan-c', 'c-fan', 'fan to c'],
          when: { fact: 'look', part: 'terminals', unless: 'two' },
        }),
        hf: volts('HERM to FAN', {
          over: false,
          signed: true,
          words: ['h-f', 'f-h', 'herm-fan', 'fan-herm', 'herm to fan'],
          when: { fact: 'look', part: 'terminals', unless: 'two' },
        }),
        c2: volts('Second capacitor', {
          over: false,
          signed: true,
          when: { fact: 'look', part: 'count', above: LIMITS.count.one },
        }),
        c3: volts('Third capacitor', {
          over: false,
          signed: true,
          when: { fact: 'look', part: 'count', above: LIMITS.count.two },
        }),
        c4: volts('Fourth capacitor', {
          over: false,
          signed: true,
          when: { fact: 'look', part: 'count', above: LIMITS.count.three },
        }),
        batteryAfter: volts('Battery, after', { over: false, words: ['again', 'battery again', 'batt again'] }),
      },
      cant: '!no-resistor',
      next: 'left',
    }),
    left: judge('residual', {
      of: { line: 'residual', look: 'look' },
      limits: LIMITS.residual,
      then: {
        discharged: '!proved',
        'too-high': '!residual',
        battery: '!residual',
        disagree: '!residual',
        undecided: '!residual',
      },
    }),
  },
});

const CLOSE = 'Close up. Go back to the means.';
export const dead = isolation({
  page: makeDead,
  leaving: {
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
    residual: {
      forget: 'residual',
      notice: 'Discharge again on bare metal, then take the whole line again.',
      tries: {
        times: 3,
        held: 'Three residual lines were not accepted. Close up. The lock stays on. A senior or the owner opens another three.',
      },
    },
    'no-resistor': {
      forget: 'residual',
      notice:
        'No discharge tool or no battery, no hands inside. Use the resistor lead and a 9 V battery from the truck, or a meter’s low-impedance mode where its manual and your shop allow it. Else type senior, or stop.',
    },
  },
  reentry: { age: 'proving', void: 'locked', holder: 'fit' },
  minutes: LIMITS.isolation.minutes,
  prompts: ['fit', 'means', 'locked', 'look', 'proving', 'residual'],
  grows: { step: 'look', part: 'count' },
});
