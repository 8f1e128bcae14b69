/** CoolProp's saturation pressures every 5 °F, from a file that its header describes: an opinion besides our own arithmetic. */
import { readFileSync } from 'node:fs';
import type { Refrigerant } from '../../engine/calc/refrigerant/refrigerants.ts';
import type { Curve } from '../../engine/calc/refrigerant/saturation-curves.ts';

const file = new URL('./saturation-every-5-degrees.csv', import.meta.url);
const [names = [], ...rows] = readFileSync(file, 'utf8')
  .trim()
  .split('\n')
  .filter((line) => !line.startsWith('#'))
  .map((line) => line.split(','));

export interface Column {
  readonly refrigerant: Refrigerant;
  readonly curve: Curve;
  /** kPa absolute by °F. */
  readonly kilopascals: ReadonlyMap<number, number>;
}

/** Every column of the file. A pure fluid's one curve is filed as dew. */
export const COLUMNS: readonly Column[] = names.slice(1).map((name, i) => {
  const [fluid = '', curve = 'dew'] = name.split('_');
  return {
    refrigerant: fluid.replace('R', 'R-') as Refrigerant,
    curve: curve as Curve,
    kilopascals: new Map(rows.map((row) => [Number(row[0]), Number(row[i + 1])])),
  };
});

/** kPa absolute that CoolProp gives; throws for a temperature that the file doesn't have. */
export function figureAt(refrigerant: Refrigerant, curve: Curve, fahrenheit: number): number {
  const of = COLUMNS.filter((column) => column.refrigerant === refrigerant);
  const column = of.find((candidate) => candidate.curve === curve) ?? of[0];
  const found = column?.kilopascals.get(fahrenheit);
  if (found === undefined) throw new Error(`no figure for ${refrigerant} at ${fahrenheit} °F`);
  return found;
}

const PSI = 6.894757293;
/** °F at an absolute pressure in psi: a straight line in 1/T and ln p between the two figures around it. */
export function temperatureAt(refrigerant: Refrigerant, curve: Curve, psia: number): number {
  let low = -40;
  while (figureAt(refrigerant, curve, low + 5) < psia * PSI) low += 5;
  const point = (at: number) => ({ x: 1 / (at + 459.67), y: Math.log(figureAt(refrigerant, curve, at)) });
  const [a, b] = [point(low), point(low + 5)];
  return 1 / (a.x + ((Math.log(psia * PSI) - a.y) / (b.y - a.y)) * (b.x - a.x)) - 459.67;
}
/** psig at a temperature that the file has, by the rounded constants that its table was printed with. */
export const psigAt = (refrigerant: Refrigerant, curve: Curve, fahrenheit: number): number =>
  figureAt(refrigerant, curve, fahrenheit) / PSI - 14.695949;
