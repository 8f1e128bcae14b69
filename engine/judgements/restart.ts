import { shareOf } from '../calc/amps.ts';
import { Exact, type Range, within } from '../calc/exact.ts';
import { ratedRangeVolts } from '../calc/supply.ts';
import type { Finding, Parts } from '../schema.ts';
import { judgement, type Limit } from './judgement.ts';
import { chose, past, read, untaken } from './probing.ts';
import { chosenOf, figureOf } from './read.ts';
import { finding, say, sayRange } from './say.ts';

type RestartLimits = Readonly<Record<'low' | 'high' | 'ratedWithin' | 'nearLocked' | 'idle', Limit>>;
interface Judging {
  readonly is: 'in' | 'out' | 'open';
  readonly finding: Finding;
}

/**
 * The live figures after a repair: supply V, compressor A against LRA, fan A against FLA. RLA is no limit, so above it
 * only the words change. Without LRA or RLA nobody can tell a stalled compressor from a running one.
 */
export const restart = judgement({
  id: 'restart',
  semantics: 1,
  takes: ['figures', 'plate'],
  limits: ['low', 'high', 'ratedWithin', 'nearLocked', 'idle'],
  outcomes: ['in', 'supply', 'not-starting', 'fan-high', 'undecided'],
  run({ figures, plate }, limits) {
    const supply = judgeSupply(figures, plate, limits);
    const compressor = judgeCompressor(figures, plate, limits);
    const fan = judgeFan(figures, plate);
    const findings = [supply, compressor, fan].map((j) => j.finding);
    if (supply.is === 'out') return { outcome: 'supply', findings };
    if (compressor.is === 'out' || fan.is === 'out') return { outcome: 'not-starting', findings };
    if (fan.is === 'high') return { outcome: 'fan-high', findings };
    const open = [supply, compressor, fan].some((j) => j.is === 'open');
    return { outcome: open ? 'undecided' : 'in', findings };
  },
  probe: (limits) => probeFigures(limits),
});

/** 208/230 V has limits of its own; a single printed voltage ± its percentage. Not read: 208/230 V is assumed. */
function supplyRange(
  plate: Parts | undefined,
  limits: RestartLimits,
): { range: Range; source: string; assumed: boolean } {
  const figures = chosenOf(plate, 'volts').flatMap((option) => option.match(/\d{2,3}/g) ?? []);
  const [rated, second] = [...new Set(figures)];
  if (rated === undefined || second !== undefined) {
    const range = { low: new Exact(limits.low.value), high: new Exact(limits.high.value) };
    return { range, source: limits.low.source, assumed: rated === undefined };
  }
  return { range: ratedRangeVolts(rated, limits.ratedWithin.value), source: limits.ratedWithin.source, assumed: false };
}

function judgeSupply(figures: Parts | undefined, plate: Parts | undefined, limits: RestartLimits): Judging {
  const { range, source, assumed } = supplyRange(plate, limits);
  const volts = figureOf(figures, 'l1l2', 'V')?.abs() ?? null;
  const said = sayRange(range, 'V', 1, 0);
  const is = volts === null ? 'open' : within(volts, range) ? 'in' : 'out';
  const reading = volts === null ? 'no reading' : say(volts, 'V');
  const plainly = {
    open: 'L1–L2 was not read.',
    in: `L1–L2 reads ${reading}, inside ${said}.`,
    out: `L1–L2 reads ${reading}, outside ${said}.`,
  }[is];
  const text = assumed ? `${plainly} A 208/230\u2009V nameplate is assumed.` : plainly;
  return {
    is,
    finding: finding({ name: 'L1–L2', reading, limits: said, word: is === 'open' ? 'missing' : is, text, source }),
  };
}

function judgeCompressor(figures: Parts | undefined, plate: Parts | undefined, limits: RestartLimits): Judging {
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
  if (lra && shareOf(amps, lra).gte(limits.nearLocked.value)) {
    const text = `The compressor draws ${reading}, ${percent(amps, lra)} of its LRA. It is not starting.`;
    return of('out', 'near locked rotor', text, limits.nearLocked.source);
  }
  if (!rla) {
    const text = lra
      ? `The compressor draws ${reading}, ${percent(amps, lra)} of its LRA.`
      : `The compressor draws ${reading}. Without LRA or RLA nobody can tell running from stalled.`;
    return of(lra ? 'in' : 'open', lra ? 'running' : 'not judged', text, lra ? limits.nearLocked.source : null);
  }
  const above = amps.gt(rla);
  const text = `The compressor draws ${reading}, ${percent(amps, rla)} of its RLA.${above ? ' RLA is no limit: look at head, coil and volts.' : ''}`;
  const is = lra || !above ? 'in' : 'open';
  return of(is, above ? 'above RLA' : 'running', text, 'RLA is no limit: common practice, no single source');
}

function judgeFan(
  figures: Parts | undefined,
  plate: Parts | undefined,
): { is: Judging['is'] | 'high'; finding: Finding } {
  const amps = figureOf(figures, 'fan', 'A')?.abs() ?? null;
  const fla = plateAmps(plate, 'fla');
  const reading = amps === null ? 'no reading' : say(amps, 'A');
  const is = amps === null ? 'open' : amps.isZero() ? 'out' : fla && amps.gt(fla) ? 'high' : 'in';
  const text = {
    open: 'The fan’s amps were not read.',
    out: 'The fan draws nothing. It is not running.',
    high: fla ? `The fan draws ${reading}, above its FLA of ${say(fla, 'A')}.` : '',
    in:
      fla && amps
        ? `The fan draws ${reading}, ${percent(amps, fla)} of its FLA.`
        : `The fan draws ${reading}. Its FLA is not known, so this is recorded and not judged.`,
  }[is];
  const word = { open: 'missing', out: 'not running', high: 'above FLA', in: fla ? 'in' : 'not judged' }[is];
  const limits = fla ? `${say(fla, 'A')} or less` : null;
  return { is, finding: finding({ name: 'Fan', reading, limits, word, text, source: 'FLA on the nameplate' }) };
}

const plateAmps = (plate: Parts | undefined, key: 'rla' | 'lra' | 'fla'): Exact | null => {
  const amps = figureOf(plate, key, 'A');
  return amps?.gt(0) ? amps : null;
};
const percent = (amps: Exact, plate: Exact): string => say(shareOf(amps, plate).times(100), '%', 0);

function probeFigures(limits: RestartLimits): { figures?: Parts; plate?: Parts }[] {
  const { low, high, ratedWithin, nearLocked, idle } = limits;
  const plate: Parts = { rla: read(17.9, 'A'), lra: read(100, 'A'), fla: read(1.2, 'A') };
  const at = (l1l2: Exact | string | number, comp: Exact | string | number, fan: Exact | string | number): Parts => ({
    l1l2: read(l1l2, 'V'),
    comp: read(comp, 'A'),
    fan: read(fan, 'A'),
  });
  const locked = new Exact(nearLocked.value).times(100);
  const rated = ratedRangeVolts(230, ratedWithin.value);
  const single: Parts = { ...plate, volts: chose('230') };
  return [
    ...[
      at(low.value, 13.1, 0.9),
      at(past(low.value, '-0.01'), 13.1, 0.9),
      at(high.value, 13.1, 0.9),
      at(past(high.value, '0.01'), 13.1, 0.9),
      at(low.value, locked, 0.9),
      at(low.value, locked.minus('0.001'), 0.9),
      at(low.value, idle.value, 0.9),
      at(low.value, past(idle.value, '-0.001'), 0.9),
      at(low.value, 18, 1.2),
      at(low.value, 13.1, 1.201),
      at(low.value, 13.1, 0),
    ].map((figures) => ({ figures, plate })),
    { figures: at(rated.low, 13.1, 0.9), plate: single },
    { figures: at(rated.low.minus('0.01'), 13.1, 0.9), plate: single },
    { figures: at(low.value, 13.1, 0.9) },
    { figures: { ...at(low.value, 13.1, 0.9), fan: untaken }, plate },
    {},
  ];
}
