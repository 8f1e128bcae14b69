/** A series of switches between the call and the coil, as a technician hops along it. */
import { acrossSwitch, type Hop, type HopLimits, hop } from '../../calc/control-circuit.ts';
import type { Finding, Parts } from '../../schema.ts';
import type { Limit } from '../judgement.ts';
import { figureOf } from '../read.ts';
import { finding, say } from '../say.ts';

/** In the order the call passes them; each reading stands after its device, against C. */
export const PLACES = [
  ['start', 'the strip'],
  ['delay', 'the delay'],
  ['lp', 'the low-pressure switch'],
  ['hp', 'the high-pressure switch'],
  ['discharge', 'the discharge thermostat'],
  ['coil', 'the wire to the coil'],
] as const;
export type Place = (typeof PLACES)[number][0];
export type Device = Exclude<Place, 'start' | 'coil'>;
export const DEVICES: readonly Device[] = ['delay', 'lp', 'hp', 'discharge'];
export const nameOf = (place: string): string => PLACES.find(([key]) => key === place)?.[1] ?? place;

export const limitsOf = (limits: Readonly<Record<'closed' | 'open', Limit>>): HopLimits => ({
  closedVolts: limits.closed.value,
  openVolts: limits.open.value,
});

/** Where nobody read the strip, R–C under the same load stands for it. */
export const walk = (readings: Parts | undefined, limits: HopLimits): Hop =>
  hop(
    PLACES.map(([name]) => ({
      name,
      volts: figureOf(readings, name, 'V') ?? (name === 'start' ? figureOf(readings, 'rc', 'V') : null),
    })),
    limits,
  );

/** Full volts at a place that lies behind one without: along one wire that can't be. */
export function isBehind(readings: Parts | undefined, { openVolts }: HopLimits): boolean {
  const read = PLACES.flatMap(([name]) => figureOf(readings, name, 'V')?.abs() ?? []);
  const none = read.findIndex((v) => v.lt(openVolts));
  return none >= 0 && read.slice(none + 1).some((v) => v.gte(openVolts));
}

/** Of what was read between the strip and the coil: nothing, so what lies between is one stretch. */
const isOneStretch = (readings: Parts | undefined): boolean =>
  DEVICES.every((device) => figureOf(readings, device, 'V') === null);

export interface Crossed {
  readonly device: Device;
  readonly is: ReturnType<typeof acrossSwitch>;
  readonly finding: Finding;
}

/** Devices that somebody read across, in order. */
export const crossed = (across: Parts | undefined, limits: HopLimits, source: string): Crossed[] =>
  DEVICES.flatMap((device) => {
    const volts = figureOf(across, device, 'V');
    if (volts === null) return [];
    const is = acrossSwitch(volts, limits);
    const shown = say(volts, 'V');
    const open = say(limits.openVolts, 'V');
    const text = {
      open: `${shown} across ${nameOf(device)}: it is open.`,
      closed: `${shown} across ${nameOf(device)}: it is closed.`,
      neither: `${shown} across ${nameOf(device)}: neither open nor closed. A contact or a joint drops it.`,
    }[is];
    const band = `closed under ${say(limits.closedVolts, 'V')}, open from ${open}`;
    const name = `Across ${nameOf(device)}`;
    return [{ device, is, finding: finding({ name, reading: shown, limits: band, word: is, text, source }) }];
  });

/** `found`: the one switch that reads open across; null where all that were read are closed. */
export function walkFinding(along: Hop, source: string, readings: Parts | undefined, found?: Device | null): Finding {
  const from = figureOf(readings, 'start', 'V') === null ? 'the source' : 'the strip';
  const stretch = isOneStretch(readings);
  const of = (reading: string, word: string, text: string): Finding =>
    finding({ name: 'Along the switches', reading, word, text, source });
  switch (along.is) {
    case 'unread':
      return of('no reading', 'missing', 'The volts along the switches were not read.');
    case 'nothing':
      return of('no volts', 'nothing', `No volts at ${nameOf(along.at)}. What is open lies before it.`);
    case 'low':
      return of(say(along.volts, 'V'), 'low', `${say(along.volts, 'V')} at ${nameOf(along.at)}: too low to hop on.`);
    case 'open': {
      const [before, after] = [say(along.beforeVolts, 'V'), say(along.afterVolts, 'V')];
      if (!stretch) {
        const text = `${before} before ${nameOf(along.device)}, ${after} after. It is the open one.`;
        return of(after, 'open', text);
      }
      const what = found === undefined ? 'What is open lies' : `Open is ${found ? nameOf(found) : 'the wire'}`;
      return of(after, 'open', `${before} at ${from}, ${after} at the coil. ${what} between them.`);
    }
    case 'drop': {
      const drop = say(along.dropVolts, 'V');
      if (stretch) return of(drop, 'drop', `${drop} are lost between ${from} and the coil with the call there.`);
      return of(drop, 'drop', `${nameOf(along.device)} drops ${drop} with the call there.`.replace(/^t/, 'T'));
    }
    case 'through':
      return of('same volts', 'through', 'The same volts all along. The call reaches the last place read.');
  }
}
