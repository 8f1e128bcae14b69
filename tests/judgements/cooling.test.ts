import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Parts } from '../../engine/schema.ts';
import { choice, parts } from './fixture.ts';
import { probed, run } from './run.ts';

const T = '\u2009';
const F = (of: Record<string, number | string>): Parts => parts('°F', of);
const thin = (text: string): string => text.replaceAll(/(?<=\d) (?=°F|%|psig|minutes)/g, T);
const textsOf = (judged: { findings: readonly { text: string }[] }): string[] => judged.findings.map((f) => f.text);

describe('split', () => {
  const air = (of: Record<string, number | string>, rh?: number | string): Parts => ({
    ...F(of),
    ...(rh === undefined ? {} : parts('%', { rh })),
  });
  const of = (given: Parts) => run('split', { air: given });

  test.each([
    // 75 °F and 63 °F wet-bulb let 19.9 °F expect, 3 °F on either side.
    [58.1, 'within'],
    [58.2, 'low'],
    [52.1, 'within'],
    [52, 'high'],
  ])('return 75 °F, 63 °F wet-bulb, supply %d °F: %s', (supply, expected) => {
    expect(of(air({ return: 75, wb: 63, supply })).outcome).toBe(expected);
  });

  test.each([
    [59, 'within'],
    [59.1, 'undecided'],
    [53, 'within'],
    [52.9, 'undecided'],
    // Saturated air lets 6.7 °F expect, a dry coil 25 °F: beyond them by 3 °F no humidity explains it.
    [71.3, 'undecided'],
    [71.4, 'low'],
    [47, 'undecided'],
    [46.9, 'high'],
    [80, 'low'],
  ])('humidity not read, return 75 °F, supply %d °F: %s', (supply, expected) => {
    expect(of(air({ return: 75, supply })).outcome).toBe(expected);
  });

  test.each([
    [16, 'within'],
    [15.9, 'undecided'],
    [22, 'within'],
    [22.1, 'undecided'],
    [-5, 'undecided'],
  ])('a split of %d °F with nothing else: %s', (split, expected) => {
    expect(of(parts('Δ°F', { split })).outcome).toBe(expected);
  });

  test.each([
    ['too cold a return', air({ return: 59.9, supply: 45, wb: 55 }), 'undecided'],
    ['the coldest return that says something', air({ return: 60, supply: 45, wb: 55 }), 'within'],
    ['the warmest', air({ return: 95, supply: 73, wb: 75 }), 'within'],
    ['too warm', air({ return: 95.1, supply: 73, wb: 75 }), 'undecided'],
    ['a wet-bulb above the dry-bulb', air({ return: 75, supply: 57, wb: 75.1 }), 'undecided'],
    ['a humidity of 101 %', air({ return: 75, supply: 57 }, 101), 'undecided'],
    ['humidity in place of a wet-bulb', air({ return: 75, supply: 55.2 }, 52), 'within'],
    ['a wet-bulb counts before a humidity', air({ return: 75, supply: 55.2, wb: 63 }, 101), 'within'],
    [
      'two temperatures count before their difference',
      { ...air({ return: 75, supply: 57 }), ...parts('Δ°F', { split: 40 }) },
      'within',
    ],
    ['humidity left out', air({ return: 75, supply: 57 }, '_'), 'within'],
    ['supply left out', air({ return: 75, supply: '_', wb: 63 }), 'undecided'],
    ['nothing', {}, 'undecided'],
  ])('%s: %s', (_, given, expected) => {
    expect(of(given).outcome).toBe(expected);
  });

  test('what is said', () => {
    const said = (given: Parts): string => of(given).findings[0]?.text ?? '';
    expect(said(air({ return: 75, supply: 57, wb: 63 }))).toBe(
      thin('The air is cooled by 18 °F. Expected is 19.9 °F ±3 °F, for a return at 52 % humidity.'),
    );
    expect(said(air({ return: 75, supply: 60, wb: 63 }))).toMatch(
      / It is low: little capacity, much air, or heat from elsewhere\.$/,
    );
    expect(said(air({ return: 75, supply: 50, wb: 63 }))).toMatch(/ It is high: too little air over the coil\.$/);
    expect(said(air({ return: 75, supply: 62 }))).toBe(
      thin(
        'The air is cooled by 13 °F. The humidity was not read, so the plain range of 16–22 °F stands in. The return’s wet-bulb or humidity decides.',
      ),
    );
    expect(said(air({ return: 75, supply: 80 }))).toMatch(thin('The supply is 5 °F warmer than the return.'));
    expect(said(air({ return: 75, supply: 75 }))).toMatch(thin('The air is cooled by 0 °F.'));
    expect(said(air({ return: 99, supply: 80 }))).toBe(
      thin('The return is at 99 °F. A split says something from 60–95 °F only.'),
    );
    expect(said(air({ return: 75, supply: 57, wb: 76 }))).toBe(
      thin('No air has 75 °F and a wet-bulb of 76 °F. One of them was misread.'),
    );
    expect(said(air({ return: 75, supply: 57 }, 120))).toBe(thin('120 % is no relative humidity.'));
    expect(said({})).toBe('The split was not read. It takes the return’s and the supply’s temperature.');
  });

  test('the finding carries reading, limits, word and both sources', () => {
    expect(of(air({ return: 75, supply: 57, wb: 63 })).findings[0]).toMatchObject({
      name: 'Split',
      reading: `18${T}°F`,
      limits: `16.9–22.9${T}°F`,
      word: 'within',
      source: 'set for this test; set for this test',
    });
    expect(of(air({ return: 75, supply: 57 })).findings[0]).toMatchObject({
      limits: `16–22${T}°F`,
      source: 'set for this test',
    });
    expect(of(air({ return: 75, supply: 62 })).findings[0]?.word).toBe('not judged');
    expect(of({}).findings[0]).toMatchObject({ reading: 'no reading', word: 'not judged', limits: null, source: null });
    expect(of(air({ return: 99, supply: 80 })).findings[0]?.reading).toBe(`19${T}°F`);
  });

  test('a colder supply is never lower: low, within, high follow each other', () => {
    const order = ['low', 'within', 'high'];
    fc.assert(
      fc.property(
        fc.integer({ min: 600, max: 950 }),
        fc.integer({ min: 10, max: 95 }),
        fc.integer({ min: -100, max: 400 }),
        fc.integer({ min: 1, max: 100 }),
        (tenths, rh, split, more) => {
          const at = (s: number) => of(air({ return: tenths / 10, supply: (tenths - s) / 10 }, rh)).outcome;
          expect(order.indexOf(at(split))).toBeGreaterThanOrEqual(0);
          expect(order.indexOf(at(split + more))).toBeGreaterThanOrEqual(order.indexOf(at(split)));
        },
      ),
    );
  });
});

const refrigerant = (name: string): Parts => choice('refrigerant', name);
const label = (target: number): Parts => parts('Δ°F', { target });

describe('superheat', () => {
  const at = (saturation: number | string, line: number | string): Parts => F({ saturation, line });
  const gauge = (suction: number | string, line: number | string): Parts => ({
    ...parts('psig', { suction }),
    ...F({ line }),
  });
  const txv = choice('metering', 'txv');
  const fixed = (wb: number | string, outdoor: number | string): Parts => ({
    ...choice('metering', 'fixed'),
    ...F({ wb, outdoor }),
  });

  test.each([
    ['label 10: 5 is in', at(45, 50), label(10), 'normal'],
    ['4.9 is not', at(45, 49.9), label(10), 'low'],
    ['15 is in', at(45, 60), label(10), 'normal'],
    ['15.1 is not', at(45, 60.1), label(10), 'high'],
    ['valve: 8', at(45, 53), txv, 'normal'],
    ['valve: 7.9', at(45, 52.9), txv, 'low'],
    ['valve: 12', at(45, 57), txv, 'normal'],
    ['valve: 12.1', at(45, 57.1), txv, 'high'],
    ['a label counts before the valve', at(45, 60), { ...txv, ...label(10) }, 'normal'],
    ['orifice, target 13: 8', at(45, 53), fixed(67, 95), 'normal'],
    ['orifice, target 13: 7.9', at(45, 52.9), fixed(67, 95), 'low'],
    ['orifice, target 13: 18', at(45, 63), fixed(67, 95), 'normal'],
    ['orifice, target 13: 18.1', at(45, 63.1), fixed(67, 95), 'high'],
    ['orifice, target 5 is the least', at(45, 50), fixed(61, 93), 'normal'],
    ['orifice, target 4.9', at(45, 50), fixed(61, 93.2), 'undecided'],
    ['orifice without a wet-bulb', at(45, 55), fixed('_', 95), 'undecided'],
    ['orifice without the outdoor temperature', at(45, 55), fixed(67, '_'), 'undecided'],
    ['no target at all', at(45, 55), {}, 'undecided'],
    ['a metering nobody knows', at(45, 55), choice('metering', 'cant'), 'undecided'],
    ['3 under saturation is liquid', at(45, 42), txv, 'low'],
    ['3.1 under it is a wrong reading', at(45, 41.9), txv, 'undecided'],
    ['line not read', at(45, '_'), txv, 'undecided'],
    ['saturation not read', at('_', 55), txv, 'undecided'],
  ])('%s: %s', (_, readings, target, expected) => {
    expect(run('superheat', { readings, target }).outcome).toBe(expected);
  });

  test.each([
    ['r-410a', 130, 55, 'normal', `10${T}°F`],
    ['r-22', 68.5, 60, 'high', `20${T}°F`],
    ['r-32', 125, 46, 'low', `4.3${T}°F`],
    ['r-134a', 35, 50, 'normal', `10${T}°F`],
    ['r-290', 63.9, 50, 'normal', `10${T}°F`],
    ['r-404a', 85.4, 50, 'normal', `10${T}°F`],
    ['r-454b', 107.5, 50, 'normal', `10${T}°F`],
  ])('%s at %d psig, line %d °F: %s', (name, suction, line, expected, reading) => {
    const judged = run('superheat', { refrigerant: refrigerant(name), readings: gauge(suction, line), target: txv });
    expect(judged.outcome).toBe(expected);
    expect(judged.findings.at(-1)?.reading).toBe(reading);
  });

  test('what the gauge shows counts before a pressure', () => {
    const readings = { ...gauge(130, 55), ...F({ saturation: 40 }) };
    expect(run('superheat', { refrigerant: refrigerant('r-410a'), readings, target: txv }).findings[0]).toMatchObject({
      reading: `15${T}°F`,
      doubt: null,
      source: 'set for this test; saturation: as the gauge shows it',
    });
  });

  test('what is said', () => {
    const said = (name: string, readings: Parts, target: Parts = txv): string[] =>
      textsOf(run('superheat', { refrigerant: refrigerant(name), readings, target }));
    expect(said('r-410a', gauge(130, 55))).toEqual([
      thin('Saturation is 45 °F, the line 55 °F: 10 °F. It should be 8–12 °F.'),
    ]);
    expect(said('r-410a', gauge(130, 35))).toEqual([
      thin(
        'Saturation is 45 °F, the line 35 °F: −10 °F. That cannot be in a line that holds what it should: read pressure, refrigerant and clamp again.',
      ),
    ]);
    expect(said('r-410a', gauge(-14.7, 55))).toEqual([
      thin(
        '−14.7 psig is under what is known of this refrigerant: it would boil below −40 °F. Read gauge and plate again.',
      ),
    ]);
    expect(said('r-410a', gauge(650, 55))).toEqual([
      thin(
        '650 psig is over what is known of this refrigerant: it would condense above 150 °F. Read gauge and plate again.',
      ),
    ]);
    expect(said('r-410a', gauge(700, 55))).toEqual([
      thin('700 psig is at or above its critical point: nothing boils or condenses there. Read gauge and plate again.'),
    ]);
    expect(said('r-410a', gauge('_', 55))).toEqual(['The suction pressure was not read.']);
    expect(said('r-410a', gauge(130, '_'))).toEqual(['The suction line’s temperature was not read.']);
    expect(said('r-12', gauge(130, 55))).toEqual([
      'The refrigerant is not known, so a pressure has no saturation temperature.',
    ]);
    expect(said('r-410a', gauge(130, 55), fixed(58, 95))).toEqual([
      thin(
        'Saturation is 45 °F, the line 55 °F: 10 °F. The target would be −0.5 °F. Under 5 °F no charge is judged by it.',
      ),
    ]);
    expect(said('r-410a', gauge(130, 55), fixed(58, '_'))).toEqual([
      thin(
        'Saturation is 45 °F, the line 55 °F: 10 °F. A fixed orifice needs the return’s wet-bulb and the outdoor temperature for its target.',
      ),
    ]);
    expect(said('r-410a', gauge(130, 55), {})).toEqual([
      thin(
        'Saturation is 45 °F, the line 55 °F: 10 °F. What meters the refrigerant is not known: look for its target.',
      ),
    ]);
  });

  test('the finding carries its figures, its doubt and its sources', () => {
    const of = (name: string, target: Parts) =>
      run('superheat', { refrigerant: refrigerant(name), readings: gauge(130, 55), target }).findings.at(-1);
    expect(of('r-410a', label(10))).toEqual({
      name: 'Superheat, R-410A',
      reading: `10${T}°F`,
      limits: `5–15${T}°F`,
      doubt: `±1.5${T}% of the pressure`,
      word: 'normal',
      text: thin('Saturation is 45 °F, the line 55 °F: 10 °F. It should be 5–15 °F.'),
      source: 'the equipment’s label; saturation: ancillary equations of CoolProp',
    });
    expect(of('r-454b', txv)?.source).toBe('set for this test; saturation: a flash over CoolProp’s data');
    expect(of('r-410a', {})).toMatchObject({
      word: 'not judged',
      limits: null,
      source: 'ancillary equations of CoolProp',
    });
    expect(run('superheat', { readings: at(45, 30), target: txv }).findings[0]).toMatchObject({
      name: 'Superheat',
      word: 'not judged',
      source: 'as the gauge shows it',
    });
    for (const readings of [gauge('_', 55), gauge(130, '_')])
      expect(run('superheat', { refrigerant: refrigerant('r-22'), readings, target: txv }).findings[0]).toMatchObject({
        reading: 'no reading',
        word: 'not judged',
      });
  });

  test('what may burn is said first, whatever else was read', () => {
    for (const [name, safety] of [
      ['r-32', 'A2L'],
      ['r-454b', 'A2L'],
      ['r-290', 'A3'],
    ] as const) {
      for (const readings of [gauge(100, 55), {}]) {
        const [first, ...rest] = run('superheat', { refrigerant: refrigerant(name), readings, target: txv }).findings;
        expect(first).toEqual({
          name: `Safety class of ${name.toUpperCase()}`,
          reading: safety,
          limits: null,
          doubt: null,
          word: 'may burn',
          text: 'A leak of it may burn. Before a hose goes on: no flame, no spark, nothing switched nearby, air moving.',
          source: 'ASHRAE 34',
        });
        expect(rest).toHaveLength(1);
      }
    }
    for (const name of ['r-22', 'r-134a', 'r-404a', 'r-410a'])
      expect(
        run('superheat', { refrigerant: refrigerant(name), readings: gauge(60, 55), target: txv }).findings,
      ).toHaveLength(1);
  });
});

describe('subcooling', () => {
  const at = (saturation: number | string, line: number | string): Parts => F({ saturation, line });
  const gauge = (liquid: number | string, line: number | string): Parts => ({
    ...parts('psig', { liquid }),
    ...F({ line }),
  });
  test.each([
    ['no label: 8', at(105, 97), {}, 'normal'],
    ['7.9', at(105, 97.1), {}, 'low'],
    ['15', at(105, 90), {}, 'normal'],
    ['15.1', at(105, 89.9), {}, 'high'],
    ['label 10: 7', at(105, 98), label(10), 'normal'],
    ['6.9', at(105, 98.1), label(10), 'low'],
    ['13', at(105, 92), label(10), 'normal'],
    ['13.1', at(105, 91.9), label(10), 'high'],
    ['3 above saturation: flash gas', at(105, 108), {}, 'low'],
    ['3.1 above it: a wrong reading', at(105, 108.1), {}, 'undecided'],
    ['line not read', at(105, '_'), {}, 'undecided'],
    ['no pressure', at('_', 95), {}, 'undecided'],
  ])('%s: %s', (_, readings, target, expected) => {
    expect(run('subcooling', { readings, target }).outcome).toBe(expected);
  });
  test('what is said, with the pressure’s side', () => {
    const said = (readings: Parts, target: Parts = {}) =>
      run('subcooling', { refrigerant: refrigerant('r-410a'), readings, target });
    expect(said(gauge(340, 95)).findings).toEqual([
      {
        name: 'Subcooling, R-410A',
        reading: `9.6${T}°F`,
        limits: `8–15${T}°F`,
        doubt: `±1.5${T}% of the pressure`,
        word: 'normal',
        text: thin('Saturation is 104.6 °F, the line 95 °F: 9.6 °F. It should be 8–15 °F.'),
        source: 'set for this test; saturation: ancillary equations of CoolProp',
      },
    ]);
    expect(said(gauge(340, 95), label(10)).findings[0]).toMatchObject({
      limits: `7–13${T}°F`,
      source: 'the equipment’s label; saturation: ancillary equations of CoolProp',
    });
    expect(textsOf(said(gauge('_', 95)))).toEqual(['The liquid pressure was not read.']);
    expect(textsOf(said(gauge(340, '_')))).toEqual(['The liquid line’s temperature was not read.']);
  });
  test('it counts from bubble: R-454B at 300 psig condenses from 99.2 °F on, not 101.9', () => {
    const judged = run('subcooling', { refrigerant: refrigerant('r-454b'), readings: gauge(300, 90) });
    expect(judged.findings.at(-1)?.reading).toBe(`9.2${T}°F`);
  });
});

describe('cause of a refrigerant pattern', () => {
  const ready = {
    ...choice('certified', 'yes'),
    ...choice('stable', 'yes'),
    ...choice('no-ice', 'yes'),
    ...choice('clean', 'yes'),
  };
  const KEYS = ['suction', 'head', 'superheat', 'subcooling'];
  const WORD: Record<string, string> = { l: 'low', n: 'normal', h: 'high' };
  const pattern = (letters: string): Parts =>
    Object.assign({}, ...KEYS.map((key, i) => choice(key, WORD[letters[i] ?? ''] ?? 'cant')));
  const of = (letters: string, given: Parts = ready) =>
    run('refrigerant-cause', { pattern: pattern(letters), ready: given });

  /** The whole table: suction, head, superheat, subcooling. */
  const TABLE: Record<string, string> = {
    nnnn: 'normal',
    llhl: 'undercharge',
    ...{ llhn: 'restriction', llhh: 'restriction', lnhn: 'restriction', lnhh: 'restriction' },
    ...{ llln: 'airflow', lnln: 'airflow' },
    ...{ hhnh: 'overcharge', hhlh: 'overcharge' },
    hhnn: 'condenser-air',
    ...{ hlhl: 'not-pumping', hlhn: 'not-pumping', hlnl: 'not-pumping', hlnn: 'not-pumping' },
    ...{ hnll: 'overfeeding', hlll: 'overfeeding' },
  };
  const all = [...'lnh'].flatMap((a) =>
    [...'lnh'].flatMap((b) => [...'lnh'].flatMap((c) => [...'lnh'].map((d) => a + b + c + d))),
  );

  test.each(all.map((letters) => [letters, TABLE[letters] ?? 'undecided']))('%s: %s', (letters, expected) => {
    const judged = of(letters);
    expect(judged.outcome).toBe(expected);
    expect(judged.findings.length).toBeGreaterThan(0);
    if (expected === 'undecided') expect(judged.findings.every((f) => f.word === 'fits no cause')).toBe(true);
    else expect(judged.findings.map((f) => f.word)).toEqual([expected]);
  });

  test('what each cause asks for', () => {
    const text = (letters: string): string => textsOf(of(letters)).join(' ');
    expect(text('nnnn')).toBe('The circuit reads as it should. The trouble is not in the charge.');
    expect(text('llhl')).toBe('It is short of refrigerant. Find the leak first.');
    expect(text('llhn')).toBe('Something restricts the liquid. Measure across the drier and look at the valve.');
    expect(text('llln')).toBe('Too little air or load at the evaporator, or ice. It is not the charge.');
    expect(text('hhnh')).toBe(
      'Too much refrigerant, or air in it. The standing pressure against the ambient saturation tells which.',
    );
    expect(text('hhnn')).toBe('The condenser gets too little air, or warm air again.');
    expect(text('hlhl')).toBe(
      'It does not pump. Rule out reversing valve, unloader and rotation before the compressor.',
    );
    expect(text('hnll')).toBe('The metering device feeds too much. Look at the bulb and how it is strapped.');
  });

  test('undecided says which figure would decide, cause by cause', () => {
    expect(textsOf(of('llnl'))).toEqual([
      'With superheat high it would be an undercharge. Read superheat again.',
      'With suction high it would be a compressor that does not pump. Read suction again.',
    ]);
    expect(textsOf(of('llll'))).toEqual([
      'With superheat high it would be an undercharge. Read superheat again.',
      'With subcooling normal it would be a matter of air or load. Read subcooling again.',
      'With suction high it would be a metering device that feeds too much. Read suction again.',
    ]);
    expect(textsOf(of('hhhn'))).toEqual([
      'With superheat normal it would be a matter of the condenser’s air. Read superheat again.',
      'With head low it would be a compressor that does not pump. Read head again.',
    ]);
    expect(textsOf(of('hhhh'))).toEqual([
      'With superheat normal or low it would be an overcharge or air in it. Read superheat again.',
    ]);
    expect(textsOf(of('lnnn'))).toEqual([
      'With suction normal it would be a circuit in order. Read suction again.',
      'With superheat high it would be a restriction. Read superheat again.',
      'With superheat low it would be a matter of air or load. Read superheat again.',
    ]);
    expect(textsOf(of('nhll'))).toEqual([
      'These four do not belong together. Take all of them again before anything else.',
    ]);
  });

  test.each([
    ['certified', 'Only a certified person concludes on refrigerant.'],
    ['stable', thin('It has to run for 15 minutes before its figures stand still.')],
    ['no-ice', 'On ice no figure of the circuit means anything. Thaw it first.'],
    ['clean', 'Filter and both coils have to be clean first: dirt looks like a wrong charge.'],
  ])('not %s: nothing is concluded', (key, text) => {
    for (const given of [
      { ...ready, ...choice(key, 'no') },
      Object.fromEntries(Object.entries(ready).filter(([k]) => k !== key)),
    ]) {
      const judged = of('llhl', given);
      expect(judged.outcome).toBe('undecided');
      expect(judged.findings.map((f) => [f.word, f.text])).toEqual([['not judged', text]]);
    }
  });
  test('all that is missing is said at once, and one figure alone concludes nothing', () => {
    expect(of('llhl', {}).findings).toHaveLength(4);
    const judged = of('ll?l');
    expect(judged.outcome).toBe('undecided');
    expect(judged.findings).toEqual([
      {
        name: 'Pattern',
        reading: 'suction low, head low, superheat not read, subcooling low',
        limits: null,
        doubt: null,
        word: 'not judged',
        text: 'All four figures are needed. One alone concludes nothing.',
        source: 'common practice, no single source',
      },
    ]);
    for (const letters of ['?lhl', 'l?hl', 'llh?']) expect(of(letters).outcome).toBe('undecided');
    const two = { ...pattern('llhl'), ...choice('suction', 'low', 'high') };
    expect(run('refrigerant-cause', { pattern: two, ready }).outcome).toBe('undecided');
    expect(run('refrigerant-cause', {}).outcome).toBe('undecided');
  });
});

describe('the probes stand on both sides of each limit', () => {
  test('split', () => {
    expect(probed('split')).toEqual([
      ...['within: 16.9 °F', 'low: 16.8 °F', 'within: 22.9 °F', 'high: 23 °F'],
      ...['within: 16 °F', 'undecided: 15.9 °F', 'within: 22 °F', 'undecided: 22.1 °F'],
      ...['undecided: 3.7 °F', 'low: 3.6 °F', 'undecided: 28 °F', 'high: 28.1 °F'],
      ...['within: 19.9 °F', 'undecided: 19.9 °F', 'within: 25 °F', 'undecided: 25.1 °F', 'within: 16 °F'],
      ...['undecided: no reading', 'undecided: no reading'],
    ]);
  });
  test('superheat', () => {
    expect(probed('superheat')).toEqual([
      ...['normal: 5 °F', 'low: 4.9 °F', 'normal: 15 °F', 'high: 15.1 °F'],
      ...['normal: 8 °F', 'low: 7.9 °F', 'normal: 12 °F', 'high: 12.1 °F'],
      ...['normal: 10 °F', 'undecided: 10 °F', 'low: −3 °F', 'undecided: −3.1 °F'],
      ...['normal: 10 °F', 'normal: 11.2 °F', 'undecided: no reading', 'undecided: no reading'],
      ...['undecided: no reading', 'undecided: 10 °F', 'undecided: no reading'],
    ]);
  });
  test('subcooling', () => {
    expect(probed('subcooling')).toEqual([
      ...['normal: 7 °F', 'low: 6.9 °F', 'normal: 13 °F', 'high: 13.1 °F'],
      ...['normal: 8 °F', 'low: 7.9 °F', 'normal: 15 °F', 'high: 15.1 °F'],
      ...['low: −3 °F', 'undecided: −3.1 °F', 'normal: 9.6 °F', 'high: 15.1 °F'],
      ...['undecided: no reading', 'undecided: no reading', 'undecided: no reading', 'undecided: no reading'],
    ]);
  });
  test('refrigerant cause: every pattern there is, then what is missing', () => {
    const all = probed('refrigerant-cause');
    expect(new Set(all.slice(0, 81)).size).toBe(81);
    expect(all.slice(0, 81).filter((line) => !line.startsWith('undecided'))).toHaveLength(17);
    const undercharge = 'suction low, head low, superheat high, subcooling low';
    expect(all.slice(81)).toEqual([
      ...Array(5).fill(`undecided: ${undercharge}`),
      'undecided: suction low, head not read, superheat high, subcooling low',
      'undecided: suction not read, head not read, superheat not read, subcooling not read',
    ]);
  });
});
