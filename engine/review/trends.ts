/** What was read on a unit over its visits, one reading after the other: each as a table, and drawn where there are two. */
import { drawTrend, type TrendPoint } from '../picture/trend.ts';
import { sayUnit } from '../say-unit.ts';
import type { Past, Unit, Units } from '../schema.ts';
import { besideFigure } from '../units/beside.ts';

export interface Trend {
  name: string;
  /** The oldest first. */
  visits: { at: string; job: string; reading: string; what: string }[];
  picture: { title: string; svg: string } | null;
}
interface Point extends TrendPoint {
  readonly job: string;
}

/** `cabinets`: what the manual calls them; readings of the first one go without its name. `units`: shown beside. */
export function trendsOf(history: readonly Past[], cabinets: Readonly<Record<string, string>>, units?: Units): Trend[] {
  const series = new Map<string, { readonly unit: Unit; readonly points: Point[] }>();
  const add = (name: string, cabinet: string | undefined, unit: Unit, point: Point): void => {
    const whole = cabinet === undefined ? name : `${name}, ${cabinets[cabinet] ?? cabinet}`;
    const known = series.get(whole) ?? { unit, points: [] };
    known.points.push(point);
    series.set(whole, known);
  };
  for (const { at, job, what, cabinet, herm, fan, figures } of history) {
    const fitted = what === 'fitted';
    if (herm !== null) add(fan === null ? 'Capacitor' : 'HERM', cabinet, 'µF', { at, job, value: herm, fitted });
    if (fan !== null) add('FAN', cabinet, 'µF', { at, job, value: fan, fitted });
    for (const { name, unit, value, cabinet: of } of figures ?? [])
      add(name, of, unit, { at, job, value, fitted: false });
  }
  return [...series].map(([name, { unit, points }], i) => ({
    name,
    visits: points.map(({ at, job, value, fitted }) => ({
      ...{ at, job, reading: besideFigure(value, unit, units), what: fitted ? 'new part' : 'read' },
    })),
    picture: points.length < 2 ? null : drawnTrend(name, unit, points, i),
  }));
}

function drawnTrend(name: string, unit: Unit, points: readonly Point[], i: number): Trend['picture'] {
  const { title, svg } = drawTrend(name, sayUnit(unit), points, `trend ${i}`);
  return { title, svg };
}
