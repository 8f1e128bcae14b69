import { mccAmps, type Running, runningOf, shareOf } from '../../calc/amps.ts';
import { Exact, type Figure } from '../../calc/exact.ts';
import { unbalancePercent } from '../../calc/supply.ts';
import type { Finding, Parts } from '../../schema.ts';
import { judgement, type Limit } from '../judgement.ts';
import { past, reads, untaken } from '../probing.ts';
import { figureOf, leftOpen } from '../read.ts';
import { finding, say } from '../say.ts';
import { sayBeside } from './say-beside.ts';

const LIMITS = ['nearLocked', 'idle', 'mccRatio', 'usualLow', 'usualHigh', 'legs'] as const;
type AmpsLimits = Readonly<Record<(typeof LIMITS)[number], Limit>>;
type Is = Running | 'fan above FLA' | 'fan not running' | 'legs apart' | 'fine' | 'open';
interface Judged {
  readonly is: Is;
  readonly finding: Finding;
}
/** First that is found decides: what must be switched off first, then what is a finding. */
const ORDER = [
  ['not starting', 'not-starting'],
  ['not running', 'not-running'],
  ['above MCC', 'above-mcc'],
  ['legs apart', 'unbalanced'],
  ['fan not running', 'fan-not-running'],
  ['fan above FLA', 'fan-high'],
  ['open', 'undecided'],
] as const;

/**
 * Running amps against the nameplate: `comp` or the three legs `leg1`…`leg3` of the compressor, `fan`, A; `rla`, `lra`,
 * `fla`, `mcc` of the plate. RLA is no limit; MCC is, printed or as a multiple of RLA. What nobody was asked isn't judged.
 */
export const runningAmps = judgement({
  id: 'running-amps',
  semantics: 1,
  takes: ['amps', 'plate'],
  limits: LIMITS,
  outcomes: [
    'running',
    'not-starting',
    'not-running',
    'above-mcc',
    'unbalanced',
    'fan-high',
    'fan-not-running',
    'undecided',
  ],
  run({ amps, plate }, limits) {
    const judged = [...judgeCompressor(amps, plate, limits), ...judgeFan(amps, plate, limits)];
    const findings = judged.map((j) => j.finding);
    const found = ORDER.find(([is]) => judged.some((j) => j.is === is));
    if (judged.length === 0) return { outcome: 'undecided', findings: [missing('Amps', 'No amps were read.')] };
    return { outcome: found?.[1] ?? 'running', findings };
  },
  probe: (limits) => probeAmps(limits),
});

const LEGS = ['leg1', 'leg2', 'leg3'] as const;
const ampsIn = (parts: Parts | undefined, key: string): Exact | null => figureOf(parts, key, 'A')?.abs() ?? null;
const plateIn = (plate: Parts | undefined, key: string): Exact | null => {
  const amps = figureOf(plate, key, 'A');
  return amps?.gt(0) ? amps : null;
};
const missing = (name: string, text: string): Finding =>
  finding({ name, reading: 'no reading', word: 'missing', text });
const percent = (amps: Exact, plate: Exact): string => say(shareOf(amps, plate).times(100), '%', 0);

function judgeCompressor(amps: Parts | undefined, plate: Parts | undefined, limits: AmpsLimits): Judged[] {
  const legs = LEGS.map((key) => ampsIn(amps, key));
  const whole = legs.flatMap((leg) => leg ?? []);
  const asked = ['comp', ...LEGS].some((key) => leftOpen(amps, key, 'A')) || (whole.length > 0 && whole.length < 3);
  if (asked) return [{ is: 'open', finding: missing('Compressor', 'The compressor’s amps were not read in full.') }];
  const comp = ampsIn(amps, 'comp') ?? (whole.length === 3 ? Exact.max(...whole) : null);
  if (!comp) return [];
  const one = judgeOne(comp, plate, limits);
  return whole.length === 3 && comp.gt(0) ? [one, judgeLegs(whole, limits)] : [one];
}

function judgeOne(amps: Exact, plate: Parts | undefined, limits: AmpsLimits): Judged {
  const [rla, lra, printed] = [plateIn(plate, 'rla'), plateIn(plate, 'lra'), plateIn(plate, 'mcc')];
  const mcc = printed ?? (rla && mccAmps(rla, limits.mccRatio.value));
  const word = runningOf(
    amps,
    { rlaAmps: rla, lraAmps: lra, mccAmps: mcc },
    limits.nearLocked.value,
    limits.idle.value,
  );
  const reading = say(amps, 'A');
  const draws = `The compressor draws ${reading}`;
  const ofRla = rla ? `, ${percent(amps, rla)} of its RLA` : lra ? `, ${percent(amps, lra)} of its LRA` : '';
  const usual = `${say(limits.usualLow.value, '%')} to ${say(limits.usualHigh.value, '%')} is usual`;
  const inUsual =
    rla &&
    shareOf(amps, rla).times(100).gte(limits.usualLow.value) &&
    shareOf(amps, rla).times(100).lte(limits.usualHigh.value);
  const bound = mcc ? say(mcc, 'A') : '';
  const texts: Readonly<Record<Running, string>> = {
    'not running': `${draws}: it is not running. Look for an open wire, plug or overload.`,
    'not starting': `${draws}${lra ? `, ${percent(amps, lra)} of its LRA` : ''}: it is not starting. Turn it off within seconds.`,
    'above MCC': `${draws}, above the ${bound} that its protector lets pass for long${printed ? '' : ', reckoned from RLA'}. That is a finding.`,
    'above RLA': `${draws}${rla ? `, above its RLA of ${say(rla, 'A')}` : ''}. RLA is no limit: look at head, coil and volts.`,
    running: `${draws}${ofRla}${rla && !inUsual ? `; ${usual}` : ''}.`,
  };
  const sources: Readonly<Record<Running, string>> = {
    'not running': limits.idle.source,
    'not starting': limits.nearLocked.source,
    'above MCC': printed ? 'MCC on the nameplate' : limits.mccRatio.source,
    'above RLA': 'RLA is no limit: common practice, no single source',
    running: limits.usualLow.source,
  };
  return {
    is: word ?? 'open',
    finding: finding({
      name: 'Compressor',
      reading,
      limits: mcc ? `${bound} or less` : null,
      word: word ?? 'not judged',
      text: word ? texts[word] : `${draws}${ofRla}. Without LRA nobody can tell running from stalled.`,
      source: word ? sources[word] : null,
    }),
  };
}

function judgeLegs(legs: readonly Exact[], { legs: limit }: AmpsLimits): Judged {
  const unbalance = unbalancePercent(legs);
  const apart = unbalance.gt(limit.value);
  const shown = sayBeside(unbalance, [limit.value], '%', 1);
  return {
    is: apart ? 'legs apart' : 'fine',
    finding: finding({
      name: 'Three legs',
      reading: legs.map((leg) => say(leg, 'A')).join(', '),
      limits: `${say(limit.value, '%')} or less`,
      word: apart ? 'apart' : 'alike',
      text: apart
        ? `The legs are ${shown} apart. Rotate all three leads one place: what stays with the leg is the supply, what moves the motor.`
        : `The legs are ${shown} apart.`,
      source: limit.source,
    }),
  };
}

function judgeFan(amps: Parts | undefined, plate: Parts | undefined, { idle }: AmpsLimits): Judged[] {
  if (leftOpen(amps, 'fan', 'A')) return [{ is: 'open', finding: missing('Fan', 'The fan’s amps were not read.') }];
  const fan = ampsIn(amps, 'fan');
  if (!fan) return [];
  const fla = plateIn(plate, 'fla');
  const reading = say(fan, 'A');
  const is: Is = fan.isZero() ? 'fan not running' : fla?.lt(fan) ? 'fan above FLA' : 'fine';
  const word =
    is === 'fine' ? (fla ? 'running' : 'not judged') : is === 'fan not running' ? 'not running' : 'above FLA';
  const text =
    is === 'fan not running'
      ? 'The fan draws nothing. It is not running.'
      : fla
        ? `The fan draws ${reading}, ${is === 'fine' ? `${percent(fan, fla)} of` : 'above'} its FLA of ${say(fla, 'A')}.`
        : `The fan draws ${reading}. Its FLA is not known, so this is recorded and not judged.`;
  const source = is === 'fan not running' ? idle.source : 'FLA on the nameplate';
  return [
    {
      is,
      finding: finding({ name: 'Fan', reading, limits: fla ? `${say(fla, 'A')} or less` : null, word, text, source }),
    },
  ];
}

function probeAmps(limits: AmpsLimits): { amps?: Parts; plate?: Parts }[] {
  const plate = reads({ rla: 20, lra: 100, fla: '1.2' }, 'A');
  const at = (comp: Figure, fan: Figure) => ({ amps: reads({ comp, fan }, 'A'), plate });
  const legs = (a: Figure, b: Figure, c: Figure) => ({ amps: reads({ leg1: a, leg2: b, leg3: c }, 'A'), plate });
  const locked = new Exact(limits.nearLocked.value).times(100);
  const mcc = mccAmps(20, limits.mccRatio.value);
  // Two legs at 12 A and one above them by what makes the limit: 200·x / (36 + x).
  const apart = new Exact(limits.legs.value)
    .times(36)
    .div(new Exact(200).minus(limits.legs.value))
    .toDecimalPlaces(3, Exact.ROUND_DOWN);
  const usual = [limits.usualLow, limits.usualHigh].map(({ value }) => new Exact(value).div(5));
  return [
    at(14, '0.9'),
    ...usual.flatMap((amps) => [at(past(amps, '-0.001'), '0.9'), at(amps, '0.9'), at(past(amps, '0.001'), '0.9')]),
    at(limits.idle.value, '0.9'),
    at(past(limits.idle.value, '-0.001'), '0.9'),
    at(20, '1.2'),
    at('20.001', '1.201'),
    at(mcc, '0.9'),
    at(past(mcc, '0.001'), '0.9'),
    at(locked, '0.9'),
    at(locked.minus('0.001'), '0.9'),
    at(14, 0),
    at(14, '1.201'),
    legs(12, 12, 12),
    legs(12, 12, apart.plus(12)),
    legs(12, 12, apart.plus('12.001')),
    { amps: reads({ leg1: 12, leg2: 12 }, 'A'), plate },
    { amps: reads({ comp: 14 }, 'A') },
    { amps: reads({ fan: '0.9' }, 'A') },
    { amps: { ...reads({ comp: 14 }, 'A'), fan: untaken }, plate },
    { amps: { comp: untaken }, plate },
    {},
  ];
}
