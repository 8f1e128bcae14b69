import { ampsOf, secondaryVolts } from '../../calc/control-circuit.ts';
import { Exact } from '../../calc/exact.ts';
import { ratedRangeVolts } from '../../calc/supply.ts';
import type { Finding, Parts } from '../../schema.ts';
import { judgement } from '../judgement.ts';
import { chose, past, read, volts } from '../probing.ts';
import { chosenOf, figureOf } from '../read.ts';
import { finding, say, sayRange } from '../say.ts';

/**
 * The 24 V transformer: secondary volts under load against primary, tap and VA. Without volts out and with the
 * primary inside a usual supply it is open, below every one of them the supply is missing, and a primary that nobody read is
 * asked for (`primary` holds what was read of it then); too few volts are laid to the wrong tap, to a primary out of its limits, or to more amps than its VA gives.
 * An idle reading alone proves nothing, and no volts beside a call that has them (`yc`) are a misreading.
 */
export const transformer = judgement({
  id: 'transformer',
  semantics: 3,
  takes: ['readings', 'primary', 'tap', 'va'],
  limits: ['rated', 'loaded', 'primaryWithin', 'absent', 'lowLine'],
  outcomes: ['good', 'open', 'contradicts', 'ask-primary', 'primary', 'tap', 'overload', 'weak', 'undecided'],
  run({ readings, primary: later, tap, va }, limits) {
    const at = (key: string): Exact | null => figureOf(readings, key, 'V')?.abs() ?? null;
    const [idle, loaded] = [at('idle'), at('loaded')];
    const primary = figureOf(later, 'primary', 'V')?.abs() ?? at('primary');
    const [tapVolts, voltAmperes] = [chosenFigure(tap, 'tap'), chosenFigure(va, 'va')];
    const out = loaded ?? idle;
    const least = say(limits.loaded.value, 'V');
    const line = (word: string, text: string, more: Finding[] = []) => [
      finding({
        ...{
          name: 'Secondary',
          reading: out ? say(out, 'V') : 'no reading',
          limits: `${least} or more under load`,
          word,
          text,
        },
        source: limits.loaded.source,
      }),
      ...more,
    ];
    if (out === null) return { outcome: 'undecided', findings: line('missing', 'The secondary was not read.') };
    const shown = say(out, 'V');
    const yc = at('yc');
    if (out.lt(limits.absent.value) && yc?.gte(limits.absent.value)) {
      const text = `R to C reads ${shown} and Y to C ${say(yc, 'V')}: a call has no volts of its own. Read both again.`;
      return { outcome: 'contradicts', findings: line('contradicts', text) };
    }
    if (out.lt(limits.absent.value)) {
      if (primary === null) {
        const text = `The secondary reads ${shown}. Whether volts come in was not read.`;
        return { outcome: 'ask-primary', findings: line('no volts', text) };
      }
      const usual = SUPPLIES.map((rated) => ratedRangeVolts(rated, limits.primaryWithin.value));
      const within = usual.some(({ low, high }) => primary.gte(low) && primary.lte(high));
      const has = `The secondary reads ${shown} with ${say(primary, 'V')} on the primary.`;
      if (within)
        return { outcome: 'open', findings: line('no volts', `${has} Fuse, short and windings are read next, dead.`) };
      if (primary.lt(limits.lowLine.value)) {
        const text = `The secondary reads ${shown} and the primary ${say(primary, 'V')}: no volts come in.`;
        return { outcome: 'primary', findings: line('no volts', text) };
      }
      // Between two supplies a primary has volts and not its own: neither it nor the transformer is condemned on that.
      const ranges = usual.map((range) => sayRange(range, 'V', 1, 0)).join(', ');
      return { outcome: 'undecided', findings: line('no volts', `${has} That lies in none of ${ranges}.`) };
    }
    if (loaded === null) {
      const text = `The secondary reads ${shown} idle. That proves nothing: read it under load.`;
      return { outcome: 'undecided', findings: line('idle only', text) };
    }
    if (loaded.gte(limits.loaded.value)) {
      return { outcome: 'good', findings: line('good', `The secondary reads ${shown} under load, ${least} or more.`) };
    }
    const low = line('low', `The secondary reads ${shown} under load, under ${least}.`);
    const amps = figureOf(readings, 'amps', 'A')?.abs() ?? null;
    if (amps && voltAmperes) {
      const most = ampsOf(voltAmperes, limits.rated.value);
      if (amps.gt(most)) {
        const text = `The load takes ${say(amps, 'A')}. ${say(voltAmperes, 'VA')} at ${say(limits.rated.value, 'V')} give ${say(most, 'A', 3)}.`;
        return { outcome: 'overload', findings: [...low, simple('Load', say(amps, 'A'), 'overload', text)] };
      }
    }
    if (primary === null || tapVolts === null) {
      const text = 'Primary volts, tap, amps and VA tell why.';
      return { outcome: 'weak', findings: [...low, simple('Why', '–', 'not read', text)] };
    }
    const range = ratedRangeVolts(tapVolts, limits.primaryWithin.value);
    const gives = say(secondaryVolts(limits.rated.value, tapVolts, primary), 'V', 1);
    const ratio = say(primary.div(tapVolts).times(100), '%', 1);
    if (primary.gte(range.low) && primary.lte(range.high)) {
      const text = `${say(primary, 'V')} on the ${say(tapVolts, 'V')} tap gives ${gives}. The transformer or its load pulls it down.`;
      return { outcome: 'weak', findings: [...low, simple('Primary', say(primary, 'V'), 'in', text)] };
    }
    // 208 V on the 240 V tap is the usual one; 208 V ± the same percentage is a supply that is right in itself.
    const other = ratedRangeVolts(208, limits.primaryWithin.value);
    const wrongTap = tapVolts.gt(primary) && !tapVolts.eq(208) && primary.gte(other.low) && primary.lte(other.high);
    const text = wrongTap
      ? `${say(primary, 'V')} on the ${say(tapVolts, 'V')} tap is ${ratio} and gives ${gives}. Use the 208\u2009V tap.`
      : `${say(primary, 'V')} on the ${say(tapVolts, 'V')} tap lies outside ${sayRange(range, 'V', 1, 0)}. The supply comes first.`;
    return {
      outcome: wrongTap ? 'tap' : 'primary',
      findings: [...low, simple('Primary', say(primary, 'V'), wrongTap ? 'wrong tap' : 'out', text)],
    };
  },
  probe(limits) {
    const short = past(limits.loaded.value, '-0.01');
    const none = past(limits.absent.value, '-0.01');
    const tap = { tap: chose('240') };
    const dead = { yc: 0 };
    const of = (
      key: string,
      value: Parameters<typeof past>[0],
      more: Record<string, Parameters<typeof past>[0]> = {},
    ) => ({
      readings: volts({ [key]: value, ...more }),
    });
    const full = ampsOf(40, limits.rated.value);
    const loadedWith = (amps: Parameters<typeof past>[0]) => ({
      readings: { ...volts({ loaded: short, primary: 240 }), amps: read(amps, 'A') },
      ...{ tap, va: { va: chose('40') } },
    });
    return [
      of('loaded', limits.loaded.value),
      of('idle', 27),
      of('loaded', none, dead),
      of('loaded', none, { yc: 25, primary: 240 }),
      of('loaded', none, { yc: past(limits.absent.value, '-0.01'), primary: 240 }),
      of('loaded', none, { ...dead, primary: limits.lowLine.value }),
      of('loaded', none, { ...dead, primary: past(limits.lowLine.value, '-0.01') }),
      of('loaded', none, { ...dead, primary: 240 }),
      { ...of('loaded', none, dead), primary: volts({ primary: 240 }) },
      { ...of('loaded', none, { ...dead, primary: 240 }), primary: volts({ primary: 0 }) },
      ...SUPPLIES.flatMap((rated) => {
        const { low, high } = ratedRangeVolts(rated, limits.primaryWithin.value);
        return [low, past(low, '-0.01'), high, past(high, '0.01')].map((primary) =>
          of('loaded', none, { ...dead, primary }),
        );
      }),
      of('loaded', short),
      of('loaded', limits.absent.value),
      loadedWith(past(full, '0.01')),
      loadedWith(past(full, '-0.01')),
      { ...of('loaded', short, { primary: 240 }), tap },
      { ...of('loaded', short, { primary: 216 }), tap },
      { ...of('loaded', short, { primary: '215.99' }), tap },
      { ...of('loaded', short, { primary: 208 }), tap },
      { ...of('loaded', short, { primary: 180 }), tap },
      {},
    ];
  },
});

/** What a 24 V transformer is fed with. */
const SUPPLIES = [120, 208, 240] as const;

const simple = (name: string, reading: string, word: string, text: string): Finding =>
  finding({ name, reading, word, text });

/** A figure chosen as a chip ("240", "40 VA"); null where it isn't one above zero. */
function chosenFigure(parts: Parts | undefined, key: string): Exact | null {
  const [chosen] = chosenOf(parts, key);
  return chosen !== undefined && /^[1-9]\d{0,3}$/.test(chosen) ? new Exact(chosen) : null;
}
