/** Both motors by their amps: the compressor against LRA and MCC, the fan against FLA. RLA is no limit. */
import { mccAmps, shareOf } from '../../calc/amps.ts';
import { Exact } from '../../calc/exact.ts';
import { unbalancePercent } from '../../calc/supply.ts';
import type { Parts } from '../../schema.ts';
import { figureOf } from '../read.ts';
import { finding, say } from '../say.ts';
import { type Judging, percentOf, plateAmps, type RestartLimits } from './judging.ts';

export function judgeCompressor(figures: Parts | undefined, plate: Parts | undefined, limits: RestartLimits): Judging {
  const amps = figureOf(figures, 'comp', 'A')?.abs() ?? null;
  const [lra, rla] = [plateAmps(plate, 'lra'), plateAmps(plate, 'rla')];
  const reading = amps === null ? 'no reading' : say(amps, 'A');
  const of = (is: Judging['is'], word: string, text: string, source: string | null): Judging => ({
    is,
    finding: finding({
      name: 'Compressor',
      reading,
      limits: lra ? `locked rotor ${say(lra, 'A')}` : null,
      word,
      text,
      source,
    }),
  });
  if (amps === null) return of('open', 'missing', 'The compressor’s amps were not read.', null);
  if (amps.lt(limits.idle.value))
    return of('out', 'not running', `The compressor draws ${reading}. It is not running.`, limits.idle.source);
  const few = rla ? shareOf(amps, rla).times(100).lt(limits.few.value) : amps.lt(limits.standing.value);
  if (few) {
    const { source } = rla ? limits.few : limits.standing;
    const share = rla ? `, ${percentOf(amps, rla)} of its RLA` : '';
    const text = `The compressor draws ${reading}${share}: too little for one that runs. It stands, or the clamp isn’t on its lead.`;
    return of('out', 'too few amps', text, source);
  }
  if (lra && shareOf(amps, lra).gte(limits.nearLocked.value)) {
    const text = `The compressor draws ${reading}, ${percentOf(amps, lra)} of its LRA. It is not starting.`;
    return of('stalled', 'near locked rotor', text, limits.nearLocked.source);
  }
  if (!rla) {
    const text = lra
      ? `The compressor draws ${reading}, ${percentOf(amps, lra)} of its LRA.`
      : `The compressor draws ${reading}. Without LRA or RLA nobody can tell running from stalled.`;
    return of(lra ? 'in' : 'open', lra ? 'running' : 'not judged', text, lra ? limits.nearLocked.source : null);
  }
  // Reckoned from RLA: `plate` doesn't ask for a printed MCC. Of three legs the heaviest counts.
  const mcc = mccAmps(rla, limits.mccRatio.value);
  const heaviest = Exact.max(amps, ...['comp2', 'comp3'].flatMap((key) => figureOf(figures, key, 'A')?.abs() ?? []));
  if (heaviest.gt(mcc)) {
    const text = `The compressor draws ${say(heaviest, 'A')}, above the ${say(mcc, 'A', 1)} that its protector lets pass for long, reckoned from RLA. Turn it off.`;
    return of('heavy', 'above MCC', text, limits.mccRatio.source);
  }
  const above = amps.gt(rla);
  const text = `The compressor draws ${reading}, ${percentOf(amps, rla)} of its RLA.${above ? ' RLA is no limit: look at head, coil and volts.' : ''}`;
  const is = lra || !above ? 'in' : 'open';
  return of(is, above ? 'above RLA' : 'running', text, 'RLA is no limit: common practice, no single source');
}

/** A three-phase compressor draws alike on its three legs; one that draws nothing is single-phasing. */
export function judgeLegs(figures: Parts | undefined, { legsApart }: RestartLimits): Judging {
  const legs = ['comp', 'comp2', 'comp3'].flatMap((key) => figureOf(figures, key, 'A')?.abs() ?? []);
  const limits = `${say(legsApart.value, '%')} at most`;
  const of = (is: Judging['is'], reading: string, word: string, text: string): Judging => ({
    is,
    finding: finding({ name: 'Legs of the compressor', reading, limits, word, text, source: legsApart.source }),
  });
  if (legs.length < 3) return of('open', 'no reading', 'missing', 'The amps of all three legs were not read.');
  // That it draws nothing at all is said of the compressor.
  if (legs.every((amps) => amps.isZero())) return of('open', '–', 'not running', 'No leg draws anything.');
  const apart = unbalancePercent(legs);
  const shown = say(apart, '%', 1);
  if (apart.lte(legsApart.value)) return of('in', shown, 'in', `The three legs are ${shown} apart.`);
  return of('out', shown, 'apart', `The three legs are ${shown} apart. Turn it off: a line or a winding is at fault.`);
}

export function judgeFan(
  figures: Parts | undefined,
  plate: Parts | undefined,
  { fewFan }: Pick<RestartLimits, 'fewFan'>,
  motor: 'fan' | 'blower' = 'fan',
): Judging {
  const amps = figureOf(figures, 'fan', 'A')?.abs() ?? null;
  const fla = plateAmps(plate, 'fla');
  const reading = amps === null ? 'no reading' : say(amps, 'A');
  const few = amps !== null && fla !== null && shareOf(amps, fla).times(100).lt(fewFan.value);
  const is = amps === null ? 'open' : amps.isZero() || few ? 'out' : fla && amps.gt(fla) ? 'high' : 'in';
  const text = {
    open: `The ${motor}’s amps were not read.`,
    out:
      amps && fla && few && !amps.isZero()
        ? `The ${motor} draws ${reading}, ${percentOf(amps, fla)} of its FLA: too little for one that runs. It stands, or the clamp isn’t on its lead.`
        : `The ${motor} draws nothing. It is not running.`,
    high: fla ? `The ${motor} draws ${reading}, above its FLA of ${say(fla, 'A')}.` : '',
    in:
      fla && amps
        ? `The ${motor} draws ${reading}, ${percentOf(amps, fla)} of its FLA.`
        : `The ${motor} draws ${reading}. Its FLA is not known, so this is recorded and not judged.`,
  }[is];
  const word = { open: 'missing', out: 'not running', high: 'above FLA', in: fla ? 'in' : 'not judged' }[is];
  const name = motor === 'fan' ? 'Fan' : 'Blower';
  const limits = fla ? `${say(fla, 'A')} or less` : null;
  return { is, finding: finding({ name, reading, limits, word, text, source: 'FLA on the nameplate' }) };
}
