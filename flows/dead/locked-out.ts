import { approval, confirm, form, judge, one, several, sure, volts } from '../../engine/vocabulary.ts';

const OSHA = '29 CFR 1910.333(b)(2): isolate, lock and tag, discharge, verify, in this order';

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
