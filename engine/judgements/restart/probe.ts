/** Restarts on both sides of each limit. */
import { Exact } from '../../calc/exact.ts';
import { ratedRangeVolts } from '../../calc/supply.ts';
import type { Parts } from '../../schema.ts';
import { chose, past, read, untaken } from '../probing.ts';
import type { RestartLimits } from './judging.ts';

type Figure = Exact | string | number;
type Line = { figures?: Parts; later?: Parts; plate?: Parts };

export function probeFigures(limits: RestartLimits): Line[] {
  const { low, high, ratedWithin, nearLocked, idle, dropAsk, sag, splitLow, splitHigh } = limits;
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
  const rated = ratedRangeVolts(230, ratedWithin.value);
  const line = new Exact(high.value);
  const sagged = line.times(new Exact(100).minus(sag.value)).div(100);
  const load = (t1t2: Figure): Parts => ({ ...at(line), t1t2: read(t1t2, 'V') });
  const starting = (min: Figure): Parts => ({ ...at(line), min: read(min, 'V') });
  const { split: _, ...bare } = at(line);
  const single: Parts = { ...plate, volts: chose('230') };
  return [
    ...[
      at(low.value),
      at(past(low.value, '-0.01')),
      at(high.value),
      at(past(high.value, '0.01')),
      at(low.value, locked),
      at(low.value, locked.minus('0.001')),
      at(low.value, idle.value),
      at(low.value, past(idle.value, '-0.001')),
      at(low.value, 18, 1.2),
      at(low.value, 13.1, 1.201),
      at(low.value, 13.1, 0),
      load(line.minus(dropAsk.value)),
      load(line.minus(dropAsk.value).plus('0.01')),
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
    { figures: at(rated.low), plate: single },
    { figures: at(rated.low.minus('0.01')), plate: single },
    { figures: at(low.value) },
    { figures: { ...at(low.value), fan: untaken }, plate },
    {},
  ];
}
