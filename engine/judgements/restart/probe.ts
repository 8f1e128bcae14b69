/** Restarts on both sides of each limit. */
import { Exact } from '../../calc/exact.ts';
import { ratedRangeVolts } from '../../calc/supply.ts';
import type { Parts } from '../../schema.ts';
import { chose, past, read, untaken } from '../probing.ts';
import type { RestartLimits } from './judging.ts';

type Figure = Exact | string | number;
type Line = { figures?: Parts; later?: Parts; plate?: Parts; printed?: Parts; unit?: Parts };

export function probeFigures(limits: RestartLimits): Line[] {
  const { low, high, ratedWithin, nearLocked, mccRatio, idle, dropAsk, notIn, sag, splitLow, splitHigh, standing } =
    limits;
  const few = new Exact('17.9').times(limits.few.value).div(100);
  const fewFan = new Exact('1.2').times(limits.fewFan.value).div(100);
  const plate: Parts = { rla: read(17.9, 'A'), lra: read(100, 'A'), fla: read(1.2, 'A') };
  const split = (of: Figure): Parts => ({ split: read(of, 'Δ°F') });
  const cool = split(splitLow.value);
  const at = (l1l2: Figure, comp: Figure = 13.1, fan: Figure = 0.9): Parts => ({
    l1l2: read(l1l2, 'V'),
    comp: read(comp, 'A'),
    fan: read(fan, 'A'),
    ...cool,
  });
  const locked = new Exact(nearLocked.value).times(100);
  const mcc = new Exact('17.9').times(mccRatio.value);
  const rated = ratedRangeVolts(230, ratedWithin.value);
  const line = new Exact(high.value);
  const sagged = line.times(new Exact(100).minus(sag.value)).div(100);
  const load = (t1t2: Figure): Parts => ({ ...at(line), t1t2: read(t1t2, 'V') });
  const starting = (min: Figure): Parts => ({ ...at(line), min: read(min, 'V') });
  const { split: _, ...bare } = at(line);
  const single: Parts = { ...plate, volts: chose('230') };
  const unknown: Parts = { lra: read(100, 'A'), fla: read(1.2, 'A') };
  return [
    ...[...threePhase(limits, plate), ...boxed(limits, plate)],
    ...[standing.value, past(standing.value, '-0.001')].map((comp) => ({
      figures: at(low.value, comp),
      plate: unknown,
    })),
    ...[
      at(low.value),
      at(past(low.value, '-0.01')),
      at(high.value),
      at(past(high.value, '0.01')),
      at(low.value, locked),
      at(low.value, locked.minus('0.001')),
      at(low.value, mcc),
      at(low.value, mcc.plus('0.001')),
      at(low.value, idle.value),
      at(low.value, past(idle.value, '-0.001')),
      at(low.value, few),
      at(low.value, few.minus('0.001')),
      at(low.value, 13.1, fewFan),
      at(low.value, 13.1, fewFan.minus('0.001')),
      at(low.value, 18, 1.2),
      at(low.value, 13.1, 1.201),
      at(low.value, 13.1, 0),
      load(line.minus(dropAsk.value)),
      load(line.minus(dropAsk.value).plus('0.01')),
      { ...at(line, 0, 0), t1t2: read(line.minus(notIn.value), 'V') },
      { ...at(line, 0, 0), t1t2: read(line.minus(notIn.value).plus('0.01'), 'V') },
      starting(sagged.toDecimalPlaces(2, Exact.ROUND_UP)),
      starting(sagged.toDecimalPlaces(2, Exact.ROUND_DOWN).minus('0.01')),
      { ...at(past(low.value, 1)), min: read(past(low.value, '-0.01'), 'V') },
      { ...bare, ...split(splitHigh.value) },
      { ...bare, ...split(past(splitHigh.value, '0.1')) },
      { ...bare, ...split(past(splitLow.value, '-0.1')) },
      { ...at(line), sound: chose('fine') },
      { ...at(line), sound: chose('noise') },
      { ...at(line), sound: chose('chatter') },
      bare,
    ].map((figures) => ({ figures, plate })),
    { figures: bare, plate, later: cool },
    { figures: bare, plate, later: { ...cool, sound: chose('backwards') } },
    { figures: bare, plate, later: { split: untaken } },
    { figures: at('462'), plate },
    { figures: at('462'), plate, printed: { volts: chose('460') } },
    { figures: at(rated.low), plate: single },
    { figures: at(rated.low.minus('0.01')), plate: single },
    { figures: at(low.value) },
    { figures: { ...at(low.value), fan: untaken }, plate },
    {},
  ];
}

/** Lines and legs of a three-phase unit on both sides of what they may be apart. */
function threePhase({ lowThree, linesApart, legsApart }: RestartLimits, plate: Parts): Line[] {
  const unit = { choice: chose('three-phase') };
  const line = (l1l2: Figure, l2l3: Figure, l1l3: Figure, comp3: Figure = 13): Line => ({
    figures: {
      ...{ l1l2: read(l1l2, 'V'), l2l3: read(l2l3, 'V'), l1l3: read(l1l3, 'V') },
      ...{ comp: read(13, 'A'), comp2: read(13, 'A'), comp3: read(comp3, 'A'), fan: read(0.9, 'A') },
      split: read(19, 'Δ°F'),
    },
    plate,
    unit,
  });
  const least = lowThree.value;
  // The third of three, the other two alike, that lies p of the mean above the mean: 2·x·(1 + p)/(2 − p).
  const off = (x: number, percent: string): Exact => {
    const p = new Exact(percent).div(100);
    return new Exact(2 * x).times(new Exact(1).plus(p)).div(new Exact(2).minus(p));
  };
  return [
    line(least, least, least),
    line(past(least, '-0.01'), least, least),
    line(least, least, past(least, '-0.01')),
    line(220, 220, off(220, linesApart.value).toDecimalPlaces(2, Exact.ROUND_DOWN)),
    line(220, 220, off(220, linesApart.value).toDecimalPlaces(2, Exact.ROUND_UP)),
    line(220, 220, 220, off(13, legsApart.value).toDecimalPlaces(3, Exact.ROUND_DOWN)),
    line(220, 220, 220, off(13, legsApart.value).toDecimalPlaces(3, Exact.ROUND_UP)),
    { ...line(220, 220, 220), figures: { ...line(220, 220, 220).figures, comp3: untaken } },
  ];
}

/** Boxes that fall by as much as they must, and a little less. */
function boxed({ boxFall }: RestartLimits, plate: Parts): Line[] {
  const unit = { choice: chose('refrigeration') };
  const box = (of: Figure): Parts => ({ box: read(of, '°F') });
  const figures = { l1l2: read(240, 'V'), comp: read(13, 'A'), fan: read(0.9, 'A'), ...box(47) };
  const fallen = new Exact(47).minus(boxFall.value);
  return [
    { figures, plate, unit },
    { figures, plate, unit, later: box(fallen) },
    { figures, plate, unit, later: box(past(fallen.toString(), '0.1')) },
    { figures, plate, unit, later: { box: untaken } },
  ];
}
