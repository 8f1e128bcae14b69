import { describe, expect, test } from 'vitest';
import { readLabel } from '../../../engine/understand/index.ts';

const usual = { tolerance: '6' };
const read = (text: string): string => {
  const reading = readLabel(text, usual);
  if ('problem' in reading) return 'problem';
  const { herm, fan, below, above, printed, volts } = reading.label;
  return [
    herm,
    fan ?? '-',
    below === above ? below : `${below}/${above}`,
    printed ? 'printed' : 'usual',
    volts ?? '-',
  ].join(' ');
};

describe('understood', () => {
  test.each([
    ['45+5 µF ±6 % 440 VAC 50/60 Hz Protected 10,000 AFC 40/85/21', '45 5 6 printed 440'],
    ['45+5 6% 440', '45 5 6 printed 440'],
    ['40/5 6% 440', '40 5 6 printed 440'],
    ['40/5 MFD 370V', '40 5 6 usual 370'],
    ['45/5 mfd ±6% 440V', '45 5 6 printed 440'],
    ['25+5 µF ±5%', '25 5 5 printed -'],
    ['35 uf +/-5%', '35 - 5 printed -'],
    ['7.5 MFD', '7.5 - 6 usual -'],
    ['7.5 MFD -5/+10%', '7.5 - 5/10 printed -'],
    ['7.5 MFD -5%/+10%', '7.5 - 5/10 printed -'],
    ['30 µF +10/-5% 370', '30 - 5/10 printed 370'],
    ['30 µF +10% -5% 370', '30 - 5/10 printed 370'],
    ['45+5 -0/+10% 440 V', '45 5 0/10 printed 440'],
    ['45+5uF±6%440VAC', '45 5 6 printed 440'],
    ['45/5 440/370', '45 5 6 usual 440'],
    ['45/5 mfd 370/440VAC', '45 5 6 usual 440'],
    ['45/5 MFD 370V/440V', '45 5 6 usual 440'],
    ['5+45 µF 440', '45 5 6 usual 440'],
    ['45 MFD + 5 MFD 440V', '45 5 6 usual 440'],
    ['45 µF + 5 440 V', '45 5 6 usual 440'],
    ['45 and 5 mfd 370', '45 5 6 usual 370'],
    ['HERM 45 FAN 5 MFD 440', '45 5 6 usual 440'],
    ['herm 80 uf fan 7.5 uf 6% 440v', '80 7.5 6 printed 440'],
    ['80+7.5 370/440 V~', '80 7.5 6 usual 440'],
    ['45.5 µF 440', '45.5 - 6 usual 440'],
    ['7,5 µF 440', '7.5 - 6 usual 440'],
    ['45+5 6 percent 440 volts', '45 5 6 printed 440'],
    ['45+5 ±6 440', '45 5 6 printed 440'],
    ['35 5% 370', '35 - 5 printed 370'],
    ['35 440V', '35 - 6 usual 440'],
    ['45/5/440', '45 5 6 usual 440'],
    ['40/5/370V', '40 5 6 usual 370'],
    ['7500 nF 440', '7.5 - 6 usual 440'],
    ['45+5 µF ±6 % 440 VAC IEC 60252-1:2013 P2 S2 CBB65A-1 -40/+70°C 60Hz', '45 5 6 printed 440'],
    ['CBB65 50+5µF 450VAC 50/60Hz 25/70/21 Class B P0', '50 5 6 usual 450'],
    ['40/85/21 40/5 MFD 50/60 Hz 440 VAC 5%', '40 5 5 printed 440'],
    ['４５＋５ µF ±６％ ４４０V', '45 5 6 printed 440'],
    ['45+5 MFD\n±6%\n440 VAC', '45 5 6 printed 440'],
    ['5.0 MFD', '5 - 6 usual -'],
    ['MFD 45/5 VAC 440 HZ 60', '45 5 6 usual 440'],
    ['MFD: 45/5\nVAC: 440\nHZ: 50/60', '45 5 6 usual 440'],
    ['VAC 440 MFD 45/5', '45 5 6 usual 440'],
    ['45 + 5 MFD ± 5%\n440 VAC 50/60 Hz\n10,000 A.F.C.\nNO PCB', '45 5 5 printed 440'],
  ])('%s', (text, expected) => {
    expect(read(text)).toBe(expected);
  });

  test('the usual tolerance is the given one', () => {
    expect(readLabel('7.5 MFD', { tolerance: '10' })).toMatchObject({
      label: { below: '10', above: '10', printed: false },
    });
  });
});

describe('asked back', () => {
  test.each([
    '',
    'hello',
    '35',
    '440',
    '440 V',
    '6%',
    '50/60 Hz',
    '40/85/21',
    '10,000 AFC',
    '45 mF 440',
    '45 5 uf 440',
    '45,5 µF 440',
    '45,5 440',
    '45-5 µF',
    '45+5+2 µF',
    '45+5 40/5 440',
    '45+5 µF 10 µF',
    '45+5 44',
    '45+5 1,440',
    '45+5 ,440',
    '45+5 i think 440',
    'maybe 45/5 440',
    '45+5? 440 V',
    ',8 290',
    'VOLTS 446 MFD .8',
    '45+5 µF 4400',
    '45+5 120V',
    '45 +5% 440',
    '45+5-6% 440',
    '45+5 6% 5% 440',
    '45+5 60% 440',
    '0.5 µF 440',
    '150 µF 440',
    '1,000 µF',
    '80+75 µF 440',
    'FAN 45 HERM 5 MFD',
    'herm 44.6 fan 5.03',
    'herm 44.6uF fan 5.03uF',
    'herm 45 fan 5 case ol',
    '45+5 440 370',
    '1/4 HP 1075 RPM 208-230V',
    'HP 1/4 V 208-230 RPM 1075 CAP 5 MFD 370V',
    '2 POLE 30 FLA 40 RES 240V COIL 24V',
    'RLA 17.9 LRA 96 208/230-1-60',
    '4S+5 µF 440 V',
    '45+5 µF ±б % 440 VAC',
  ])('%s', (text) => {
    expect(read(text)).toBe('problem');
  });

  test.each(['88-106 MFD 330V', '189–227 µF 220-250VAC', '88 to 106 mfd', '88-106 330V'])(
    '%s is a start capacitor',
    (text) => {
      expect(readLabel(text, usual)).toMatchObject({
        problem: expect.stringMatching(/start capacitor.*run capacitor/),
      });
    },
  );
});

describe('of a start part', () => {
  const start = (text: string) => readLabel(text, { tolerance: '6', start: true });
  test.each([
    ['161-193 MFD 250 VAC', '161', '193', '250'],
    ['161-193 MFD 110-125 VAC 60HZ', '161', '193', '125'],
    ['189–227 µF 220-250VAC', '189', '227', '250'],
    ['MFD 88-108 VAC 330 HZ 60', '88', '108', '330'],
    ['250 VAC 161-193 MFD', '161', '193', '250'],
    ['START CAPACITOR\n88-106 MFD\n330V', '88', '106', '330'],
  ])('%s', (text, low, high, volts) => {
    expect(start(text)).toMatchObject({ label: { range: { low, high }, volts } });
  });
  test.each(['161-193 MFD 250 330 VAC', '88-108 VAC', '88-108 MFD 125 V 330 V', '45+5 440'])('%s is asked', (text) => {
    expect(start(text)).toHaveProperty('problem');
  });
});
