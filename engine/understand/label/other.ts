/** Numbers of a print that are neither sections nor volts nor tolerance: hertz, fault current, climate, standards. */
import type { Decimal } from 'decimal.js';
import { lower } from '../fold.ts';
import type { LabelPrint } from './print.ts';
import { OTHER_UNITS } from './token.ts';

export function markOther(print: LabelPrint): void {
  for (const i of print.open()) {
    const unit = print.text(i + 1);
    if (unit === 'hz') claimAll(print, print.chainBack(i, ['/', '-'], isHertz));
    else if (unit === 'vdc')
      claimAll(
        print,
        print.chainBack(i, ['/', '-'], (n) => n.gte(100)),
      );
    else if (OTHER_UNITS.has(unit)) claimAll(print, [i, ...lowerTemperature(print, i)]);
    else if (isFrequencyPair(print, i)) claimAll(print, [i, i + 2]);
    else if (isClimate(print, i)) claimAll(print, [i, i + 2, i + 4]);
    else if (STANDARDS.has(lower(print.text(i - 1)))) claimStandard(print, i);
  }
}

/** 50/60 is a supply frequency even where no "Hz" follows. */
const isFrequencyPair = (print: LabelPrint, i: number): boolean =>
  print.isOpen(i) &&
  print.isOpen(i + 2) &&
  print.text(i + 1) === '/' &&
  `${print.text(i)}/${print.text(i + 2)}` === '50/60';

/** Climatic category of IEC 60068-1: lowest and highest temperature, days of damp heat (4, 10, 21 or 56). */
function isClimate(print: LabelPrint, i: number): boolean {
  const three = [i, i + 2, i + 4];
  if (!three.every((j) => print.isOpen(j)) || print.text(i + 1) !== '/' || print.text(i + 3) !== '/') return false;
  return ['4', '04', '10', '21', '56'].includes(print.text(i + 4));
}

/** "IEC 60252-1:2013": the number and what is joined to it. */
function claimStandard(print: LabelPrint, from: number): void {
  let i = from;
  print.claim(i);
  while (['-', '/', ':', '+'].includes(print.text(i + 1)) && print.isTight(i + 1) && print.isOpen(i + 2)) {
    i += 2;
    print.claim(i);
  }
}

const claimAll = (print: LabelPrint, all: readonly number[]): void => {
  for (const i of all) print.claim(i);
};
const isHertz = (n: Decimal): boolean => n.eq(50) || n.eq(60);

/** "-40/+70 °C": the number before belongs to it. */
const lowerTemperature = (print: LabelPrint, i: number): number[] =>
  print.text(i - 1) === '+' && print.text(i - 2) === '/' && print.isOpen(i - 3) && print.text(i - 4) === '-'
    ? [i - 3]
    : [];

const STANDARDS = new Set('iec en ul eia csa ansi gb t din vde class type no lot date'.split(' '));
