import { shareOf } from '../../calc/amps.ts';
import { fuseBoundAmps, mcaAmps, standardAmpsDown } from '../../calc/circuit.ts';
import { Exact, type Figure, type Range, within } from '../../calc/exact.ts';
import type { Finding, Parts } from '../../schema.ts';
import { judgement, type Limit } from '../judgement.ts';
import { past, reads, untaken } from '../probing.ts';
import { figureOf } from '../read.ts';
import { digits, finding, say, sayRange } from '../say.ts';
import { digitsBeside } from './say-beside.ts';

const LIMITS = ['ratioLow', 'ratioHigh', 'usualLow', 'usualHigh', 'mcaWithin'] as const;
type PlateLimits = Readonly<Record<(typeof LIMITS)[number], Limit>>;
interface Plate {
  readonly rla: Exact | null;
  readonly lra: Exact | null;
  readonly fla: Exact | null;
  readonly mca: Exact | null;
  readonly mop: Exact | null;
}
interface Checked {
  readonly odd: boolean;
  readonly finding: Finding;
}

/**
 * Whether the figures of a nameplate can belong together, A: LRA/RLA, MCA against 1.25·RLA + FLA, MOP against 2.25·RLA +
 * FLA and MCA. What is printed governs: odd figures are read again, never corrected. Undecided where no two can be compared.
 */
export const nameplate = judgement({
  id: 'nameplate',
  semantics: 1,
  takes: ['plate'],
  limits: LIMITS,
  outcomes: ['plausible', 'odd', 'undecided'],
  run({ plate }, limits) {
    const of = plateOf(plate);
    const checked = [ratio(of, limits), fan(of), wires(of, limits), fuse(of), order(of)].filter((c) => c !== null);
    const findings = checked.map((c) => c.finding);
    if (checked.length === 0) return { outcome: 'undecided', findings: [nothing] };
    return { outcome: checked.some((c) => c.odd) ? 'odd' : 'plausible', findings };
  },
  probe(limits) {
    const good = { rla: 20, lra: 110, fla: '2.5', mca: '27.5', mop: 45 };
    const at = (of: Readonly<Record<string, Figure>>) => ({ plate: reads({ ...good, ...of }, 'A') });
    const part = (of: Readonly<Record<string, Figure>>) => ({ plate: reads(of, 'A') });
    const lra = (share: Figure) => new Exact(share).times(20);
    const mca = wireRange(new Exact('27.5'), limits);
    return [
      at({}),
      ...[limits.ratioLow, limits.usualLow].flatMap(({ value }) => [
        at({ lra: lra(value) }),
        at({ lra: past(lra(value), '-0.001') }),
      ]),
      ...[limits.ratioHigh, limits.usualHigh].flatMap(({ value }) => [
        at({ lra: lra(value) }),
        at({ lra: past(lra(value), '0.001') }),
      ]),
      at({ mca: mca.low }),
      at({ mca: past(mca.low, '-0.001') }),
      at({ mca: mca.high }),
      at({ mca: past(mca.high, '0.001') }),
      at({ mop: '47.5' }),
      at({ mop: '47.501' }),
      at({ mop: '27.5' }),
      at({ mop: '27.499' }),
      part({ rla: 20, fla: 20 }),
      part({ rla: 20, fla: '20.001' }),
      part({ rla: 20, lra: 110 }),
      part({ rla: 20 }),
      { plate: { rla: untaken, lra: untaken } },
      {},
    ];
  },
});

const nothing = finding({
  name: 'Nameplate',
  reading: 'no reading',
  word: 'missing',
  text: 'No two figures of the nameplate can be compared.',
});

function plateOf(plate: Parts | undefined): Plate {
  const amps = (key: string): Exact | null => {
    const value = figureOf(plate, key, 'A');
    return value?.gt(0) ? value : null;
  };
  return { rla: amps('rla'), lra: amps('lra'), fla: amps('fla'), mca: amps('mca'), mop: amps('mop') };
}

function ratio({ rla, lra }: Plate, { ratioLow, ratioHigh, usualLow, usualHigh }: PlateLimits): Checked | null {
  if (!rla || !lra) return null;
  const times = shareOf(lra, rla);
  const borders = [ratioLow, ratioHigh, usualLow, usualHigh].map(({ value }) => value);
  const shown = digitsBeside(times, borders, 2);
  const range = (low: Limit, high: Limit): Range => ({ low: new Exact(low.value), high: new Exact(high.value) });
  const odd = !within(times, range(ratioLow, ratioHigh));
  const usual = within(times, range(usualLow, usualHigh));
  const bounds = `${digits(ratioLow.value, 2)} to ${digits(ratioHigh.value, 2)} times RLA`;
  const text = odd
    ? `LRA is ${shown} times RLA, outside ${bounds}. Read both again: one may be another line of the plate.`
    : `LRA is ${shown} times RLA, ${usual ? 'as usual' : `plausible; ${digits(usualLow.value, 2)} to ${digits(usualHigh.value, 2)} is usual`}.`;
  const word = odd ? 'odd' : usual ? 'usual' : 'plausible';
  return {
    odd,
    finding: finding({ name: 'LRA to RLA', reading: shown, limits: bounds, word, text, source: ratioLow.source }),
  };
}

/** A fan that draws more than its compressor: the two lines are swapped. */
function fan({ rla, fla }: Plate): Checked | null {
  if (!rla || !fla) return null;
  const odd = fla.gt(rla);
  const [f, r] = [say(fla, 'A'), say(rla, 'A')];
  return {
    odd,
    finding: finding({
      name: 'Fan FLA',
      reading: f,
      limits: `${r} or less`,
      word: odd ? 'odd' : 'plausible',
      text: odd
        ? `The fan’s FLA of ${f} is above the compressor’s RLA of ${r}. Read both again.`
        : `The fan’s FLA of ${f} is not above the compressor’s RLA of ${r}.`,
      source: 'arithmetic',
    }),
  };
}

/** Plates print MCA rounded, and leave out or add small loads. */
function wireRange(expected: Exact, { mcaWithin }: PlateLimits): Range {
  const room = expected.times(mcaWithin.value).div(100);
  return { low: expected.minus(room), high: expected.plus(room) };
}

function wires({ rla, fla, mca }: Plate, limits: PlateLimits): Checked | null {
  if (!rla || !mca) return null;
  const expected = mcaAmps(rla, fla ?? 0);
  const range = wireRange(expected, limits);
  // Without the fan's FLA only the lower end is known.
  const odd = fla ? !within(mca, range) : mca.lt(range.low);
  const [shown, sum] = [say(mca, 'A'), say(expected, 'A')];
  const rule = fla ? '1.25 times RLA plus the fan' : '1.25 times RLA, without the fan,';
  return {
    odd,
    finding: finding({
      name: 'MCA',
      reading: shown,
      limits: fla ? sayRange(range, 'A', 4, 0) : `${say(range.low, 'A')} or more`,
      word: odd ? 'odd' : 'plausible',
      text: `MCA reads ${shown}; ${rule} is ${sum}. ${odd ? 'Read them again. What is printed governs.' : 'They belong together.'}`,
      source: `NEC 440 as quoted by a maker’s manual (secondary source); ${limits.mcaWithin.source}`,
    }),
  };
}

function fuse({ rla, fla, mop }: Plate): Checked | null {
  if (!rla || !fla || !mop) return null;
  const bound = fuseBoundAmps(rla, fla);
  const odd = mop.gt(bound);
  const [shown, most] = [say(mop, 'A'), say(bound, 'A')];
  const size = standardAmpsDown(bound);
  const down = size === null ? '' : `, ${say(size, 'A')} as a standard size`;
  return {
    odd,
    finding: finding({
      name: 'MOP',
      reading: shown,
      limits: `${most} or less`,
      word: odd ? 'odd' : 'plausible',
      text: `MOP reads ${shown}; 2.25 times RLA plus the fan is ${most}${down}. ${odd ? 'Read them again. What is printed governs.' : 'They belong together.'}`,
      source: 'NEC 440.22(A) as quoted by a trade quiz (secondary source)',
    }),
  };
}

/** A fuse below the wires' MCA opens in normal running. */
function order({ mca, mop }: Plate): Checked | null {
  if (!mca || !mop) return null;
  const odd = mop.lt(mca);
  const [m, o] = [say(mca, 'A'), say(mop, 'A')];
  return {
    odd,
    finding: finding({
      name: 'MOP to MCA',
      reading: o,
      limits: `${m} or more`,
      word: odd ? 'odd' : 'plausible',
      text: odd ? `MOP of ${o} is below MCA of ${m}. Read both again.` : `MOP of ${o} is not below MCA of ${m}.`,
      source: 'arithmetic',
    }),
  };
}
