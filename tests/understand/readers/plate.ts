/** Prints of motors, contactors, capacitors and data plates, all invented: each piece with what it was taken for. */
import { describe, expect, test } from 'vitest';
import type { Part } from '../../../engine/schema.ts';
import { readLine, readPlate, sayPlate } from '../../../engine/understand/index.ts';
import { field } from '../parts.ts';

/** "rla 17.9 A", in the order of the print; headings left out. */
const taken = (text: string): string[] =>
  readPlate(text).parts.flatMap(({ role, values, unit }) =>
    role === 'heading' ? [] : [[role, values.join('/'), unit].filter((word) => word !== '').join(' ')],
  );

const DATA_PLATE = `MODEL NL4-036  SERIAL 0042117
VOLTS 208/230  PH 1  HZ 60
MIN VOLTS 197  MAX VOLTS 253
COMPRESSOR RLA 17.9 LRA 96
FAN MOTOR FLA 1.2 HP 1/4
MIN CIRCUIT AMPACITY 23.6
MAX FUSE OR CKT BKR 40
R-410A  FACTORY CHARGE 8 LB 6 OZ
DESIGN PRESSURE HIGH 446 PSIG LOW 236 PSIG`;

describe('a data plate', () => {
  test('line by line', () => {
    const { kind, unread } = readPlate(DATA_PLATE);
    expect(kind).toBe('unit');
    expect(unread).toEqual([]);
    expect(taken(DATA_PLATE)).toEqual([
      'number NL4-036',
      'number 0042117',
      'volts 208/230 V',
      'phase 1',
      'hertz 60 Hz',
      'lowest-volts 197 V',
      'highest-volts 253 V',
      'rla 17.9 A',
      'lra 96 A',
      'fla 1.2 A',
      'horsepower 1/4',
      'mca 23.6 A',
      'mop 40 A',
      'refrigerant R-410A',
      'charge 8/6 lb and oz',
      'pressure-high 446 psig',
      'pressure-low 236 psig',
    ]);
  });

  test.each([
    ['208/230-1-60, RLA 17.9 LRA 96, fan FLA 1.2, MCA 23.6, MOP 40. R-410A.'],
    ['208/230-1-60\nrla: 17.9\nlra: 96\nfla: 1.2\nmca: 23.6\nmop: 40\nr410a'],
    ['208-230/60/1 17.9 RLA 96 LRA\n1.2 FLA, 23.6 MCA, 40 MOP R 410A'],
    ['208/230V 1PH 60Hz RLA\n17.9\nLRA\n96\nFLA\n1.2\nMCA\n23.6\nMOP\n40 AMPS\nR410A'],
    [
      'rated load amps 17,9 locked rotor amps 96 full load amps 1,2 min ckt ampacity 23,6 max overcurrent protection 40 refrigerant R-410A volts 208/230 ph 1 hz 60',
    ],
  ])('%s', (text) => {
    const roles = new Map(readPlate(text).parts.map(({ role, values }) => [role, values.join('/')]));
    expect(Object.fromEntries(roles)).toMatchObject({
      volts: '208/230',
      phase: '1',
      hertz: '60',
      rla: '17.9',
      lra: '96',
      fla: '1.2',
      mca: '23.6',
      mop: '40',
    });
    expect(roles.get('refrigerant')?.replace(/\W/g, '').toUpperCase()).toBe('R410A');
    expect(readPlate(text)).toMatchObject({ kind: 'unit', unread: [] });
  });

  test.each([
    ['RLA .8', ['rla 0.8 A']],
    ['RLA. .8', ['rla 0.8 A']],
    ['RLA. 8', ['rla 8 A']],
    ['R.L.A. .8', ['rla 0.8 A']],
    ['fla.8', ['fla 0.8 A']],
    ['fla: .8', ['fla 0.8 A']],
    ['fla=.8', ['fla 0.8 A']],
    ['fla ,8', ['fla 0.8 A']],
    ['fla .80A', ['fla 0.80 A']],
    ['fla .125', ['fla 0.125 A']],
    ['.8 FLA', ['fla 0.8 A']],
    ['.8FLA', ['fla 0.8 A']],
    ['17.9RLA 96LRA .8FLA', ['rla 17.9 A', 'lra 96 A', 'fla 0.8 A']],
    ['amps .8', ['amps 0.8 A']],
    ['HP .5 RPM 825', ['horsepower .5', 'speed 825 rpm']],
    ['.25 hp', ['horsepower .25']],
    ['charge .9 kg', ['charge 0.9 kg']],
  ])('%s', (text, expected) => {
    expect(taken(text)).toEqual(expected);
    expect(readPlate(text).unread).toEqual([]);
  });

  test.each([
    ['R-404A 2.3 kg', ['refrigerant R-404A', 'charge 2.3 kg']],
    ['r32 charge 92 oz', ['refrigerant r32', 'charge 92 oz']],
    ['CHARGE: 5 lbs R-454B', ['charge 5 lb', 'refrigerant R-454B']],
    ['HS 300 PSIG LS 150 PSIG TEST', ['pressure-high 300 psig', 'pressure-low 150 psig']],
    ['MOTOR 1/4 HP CAP 5/370', ['horsepower 1/4', 'sections 5 µF', 'volts 370 V']],
    ['V 208/230 A 2.4 RPM 825', ['volts 208/230 V', 'amps 2.4 A', 'speed 825 rpm']],
    [
      'DEFINITE PURPOSE CONTACTOR 2P 40 FLA 50 RES 24 VAC 50/60',
      ['poles 2', 'fla 40 A', 'resistive 50 A', 'volts 24 V', 'hertz 50/60 Hz'],
    ],
    ['MIN CKT AMP 23.6 MAX OVERCURRENT 40', ['mca 23.6 A', 'mop 40 A']],
    ['HI 450 LO 250 PSIG', ['pressure-high 450 psig', 'pressure-low 250 psig']],
    ['DESIGN PRESSURE HIGH SIDE 450 / LOW SIDE 250 PSI', ['pressure-high 450 psig', 'pressure-low 250 psig']],
    ['HI 450 PSIG LO 250', ['pressure-high 450 psig', 'pressure-low 250 psig']],
    ['DESIGN PRESSURE 450 PSI HIGH 240 PSI LOW', ['pressure-high 450 psig', 'pressure-low 240 psig']],
    ['460 V 3 PH 60 HZ RLA 7.1 LRA 54', ['volts 460 V', 'phase 3', 'hertz 60 Hz', 'rla 7.1 A', 'lra 54 A']],
  ])('%s', (text, expected) => {
    expect(taken(text)).toEqual(expected);
    expect(readPlate(text).unread).toEqual([]);
  });
});

test('a plate pasted as a phone reads it', () => {
  const pasted = `MODEL: NL4-036
SER# 0042117
208/230V-1Ph-60Hz
COMP. RLA 17.9 LRA 96.0
O.D. FAN FLA 0.8 1/6HP
MIN. CKT. AMPS 23.2
MAX. FUSE/CKT. BRKR (HACR) 40
REFRIG R410A 6LB 8OZ
FOR OUTDOOR USE`;
  expect(taken(pasted)).toEqual([
    'number NL4-036',
    'number 0042117',
    'volts 208/230 V',
    'phase 1',
    'hertz 60 Hz',
    'rla 17.9 A',
    'lra 96.0 A',
    'fla 0.8 A',
    'horsepower 1/6',
    'mca 23.2 A',
    'mop 40 A',
    'refrigerant R410A',
    'charge 6/8 lb and oz',
  ]);
  expect(readPlate(pasted).unread).toEqual(['O.D']);
});

describe('a motor', () => {
  test.each([
    [
      'HP 1/4 V 208-230 PH 1 HZ 60 RPM 1075 FLA 1.4 AMB 70C INS CL B CONT SF 1.0 CAP 5 MFD 370V ROT CW FRAME 48Y',
      [
        'horsepower 1/4',
        'volts 208/230 V',
        'phase 1',
        'hertz 60 Hz',
        'speed 1075 rpm',
        'fla 1.4 A',
        'ambient 70 °C',
        'insulation-class B',
        'duty CONT',
        'service-factor 1.0',
        'sections 5 µF',
        'volts 370 V',
        'rotation CW',
        'frame 48Y',
      ],
    ],
    [
      '1/5 HP 825 RPM\n208-230V 60Hz 1.0 A\n40°C AMB class B\nTEAO reversible\n7.5 MFD 370V',
      [
        'horsepower 1/5',
        'speed 825 rpm',
        'volts 208/230 V',
        'hertz 60 Hz',
        'amps 1.0 A',
        'ambient 40 °C',
        'insulation-class B',
        'enclosure TEAO',
        'rotation reversible',
        'sections 7.5 µF',
        'volts 370 V',
      ],
    ],
  ])('%s', (text, expected) => {
    expect(taken(text)).toEqual(expected);
    expect(readPlate(text)).toMatchObject({ kind: 'motor', unread: [] });
  });
});

describe('a contactor', () => {
  test.each([
    [
      '2 POLE 30 FLA 40 RES 240/277V COIL 24V 50/60HZ LRA 150',
      ['poles 2', 'fla 30 A', 'resistive 40 A', 'volts 240/277 V', 'coil-volts 24 V', 'hertz 50/60 Hz', 'lra 150 A'],
    ],
    ['CONTACTOR 2P 40A FLA 50A RES 24V COIL', ['poles 2', 'fla 40 A', 'resistive 50 A', 'coil-volts 24 V']],
    ['1 pole 30 amp contactor, coil 208/240 vac', ['poles 1', 'amps 30 A', 'coil-volts 208/240 V']],
  ])('%s', (text, expected) => {
    expect(taken(text)).toEqual(expected);
    expect(readPlate(text)).toMatchObject({ kind: 'contactor', unread: [] });
  });
});

describe('a capacitor', () => {
  test('within a motor’s print', () => {
    expect(taken('CAP 5MFD/370V')).toEqual(['sections 5 µF', 'volts 370 V']);
  });
  test('run', () => {
    const text = '45+5 µF ±6 % 440 VAC 50/60 Hz\nProtected 10,000 AFC 40/85/21\nIEC 60252-1 P2 CBB65A-1';
    expect(readPlate(text)).toMatchObject({ kind: 'run capacitor', unread: [] });
    expect(taken(text)).toEqual([
      'sections 45/5 µF',
      'tolerance 6 %',
      'volts 440 V',
      'hertz 50/60 Hz',
      'protection Protected',
      'fault-current 10,000',
      'climate 40/85/21',
      'standard 60252-1',
      'protection P2',
      'number CBB65A-1',
    ]);
  });
  test('start', () => {
    expect(readPlate('189-227 MFD 330 VAC 50/60 HZ')).toMatchObject({ kind: 'start capacitor', unread: [] });
    expect(taken('189-227 MFD 330 VAC')).toEqual(['range 189/227 µF', 'volts 330 V']);
    expect(taken('MFD 88-108 VAC 330 HZ 60')).toEqual(['range 88/108 µF', 'volts 330 V', 'hertz 60 Hz']);
  });
});

describe('what is not understood comes back as typed', () => {
  test.each([
    ['RLA 17.9 LRA 96 sticker torn, half gone', ['sticker torn', 'half gone']],
    ['RLA 17.9 LRA 96 (5.4x)', ['5.4x']],
    ['RLA 17.9 LRA 9O', ['RLA 17.9 LRA 9O']],
    ['RLA 10²', ['RLA 10²']],
    ['RLA 1.234,5', ['RLA 1.234,5']],
    ['RLA 1,234', ['RLA 1,234']],
    ['RLA ١٧', ['RLA ١٧']],
    ['RLA 9000', ['RLA 9000']],
    ['COIL .24 V', ['COIL .24 V']],
    ['HIGH .5 PSIG', ['.5 PSIG']],
    ['HI 450 LO 250', ['HI 450 LO 250']],
    ['FLA,8', ['FLA', '8']],
    ['X2RLA 5', ['X2RLA 5']],
    ['230%', ['230%']],
    ['P236 RLA', ['P236 RLA']],
    ['MODEL 10,000 OZ', ['000 OZ']],
    ['45+5 µF -5+10%', ['-5+10%']],
    ['30 FLA 40', ['30 FLA 40']],
    ['VOLTS 23O', ['VOLTS 23O']],
    ['HZ 55', ['HZ 55']],
    ['hello', ['hello']],
    ['😀', ['😀']],
    ['', []],
  ])('%s', (text, unread) => {
    expect(readPlate(text).unread).toEqual(unread);
  });
  test('a text too long for a plate is wholly unread', () => {
    const long = 'RLA 17.9 '.repeat(400).trim();
    expect(readPlate(long)).toEqual({ kind: null, parts: [], unread: [long] });
  });
  test('in a sentence for a person', () => {
    expect(sayPlate(readPlate('1/4 HP 1075 RPM odd'))).toBe(
      'That reads as the print of a motor. Taken: 1/4 HP (horsepower); 1075 RPM (speed). Not understood: “odd”.',
    );
    expect(sayPlate(readPlate('odd'))).toBe('Not understood: “odd”.');
  });
});

describe('pasted where some of its figures are asked', () => {
  const optional = { optional: true, over: false };
  const plate: Part[] = [
    field('rla', 'A', optional),
    field('lra', 'A', optional),
    field('fla', 'A', { ...optional, words: ['fan'] }),
  ];
  test('each goes to the field of its name, and the rest is kept', () => {
    const { given, unread } = readLine(DATA_PLATE, plate);
    expect(given).toEqual({ rla: '17.9', lra: '96', fla: '1.2' });
    expect(unread).toEqual([
      'MODEL NL4-036  SERIAL 0042117',
      'VOLTS 208/230  PH 1  HZ 60',
      'MIN VOLTS 197  MAX VOLTS 253',
      'COMPRESSOR',
      'FAN MOTOR',
      'HP 1/4',
      'MIN CIRCUIT AMPACITY 23.6',
      'MAX FUSE OR CKT BKR 40',
      'R-410A  FACTORY CHARGE 8 LB 6 OZ',
      'DESIGN PRESSURE HIGH 446 PSIG LOW 236 PSIG',
    ]);
  });
  test.each([
    ['RLA 17.9 LRA 96 fan 1.2', { rla: '17.9', lra: '96', fla: '1.2' }],
    ['17.9 rla 96 lra', { rla: '17.9', lra: '96' }],
    ['208/230-1-60 RLA 17.9A LRA 96A', { rla: '17.9A', lra: '96A' }],
    ['rla 14.1 lra 73 fla .8', { rla: '14.1', lra: '73', fla: '.8' }],
    ['RLA14.1 LRA73 FLA.8', { rla: '14.1', lra: '73', fla: '.8' }],
    ['14.1rla 73lra .8fla', { rla: '14.1', lra: '73', fla: '.8' }],
    ['rla 14,1 lra 73 fla ,8', { rla: '14,1', lra: '73', fla: ',8' }],
    ['RLA: 14.1 A, LRA: 73 A, FLA: .80A', { rla: '14.1', lra: '73', fla: '.80A' }],
    ['rla 14.1 lra _ fla 0.8', { rla: '14.1', lra: '_', fla: '0.8' }],
    ['14.1 73 .8', { rla: '14.1', lra: '73', fla: '.8' }],
    ['rla 17.9 rla 14 lra 96', { lra: '96' }],
  ])('%s', (text, expected) => {
    expect(readLine(text, plate).given).toEqual(expected);
  });
});
