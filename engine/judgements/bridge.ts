import type { Parts } from '../schema.ts';
import { judgement } from './judgement.ts';
import { pairName, pairVolts } from './line-pairs.ts';
import { chose, past, volts } from './probing.ts';
import { PROVING_LIMITS, prove } from './proving.ts';
import { finding, say } from './say.ts';

/**
 * Whether volts between dead and live collapse when a resistor is put across them. V AC, signs dropped.
 * Volts that hold are real whatever the provings say.
 */
export const bridge = judgement({
  id: 'bridge',
  semantics: 1,
  takes: ['bridge', 'line', 'means'],
  limits: ['dead', ...PROVING_LIMITS],
  outcomes: ['induced', 'real', 'proving', 'undecided'],
  run({ bridge, line, means }, limits) {
    const dead = limits.dead.value;
    const now = pairVolts(bridge);
    const asked = [...pairVolts(line)].filter(([, volts]) => volts.gt(dead));
    const before = prove('Known source, before', bridge, 'before', means, limits);
    const after = prove('Known source, after', bridge, 'after', means, limits);
    const pairs = asked.map(([key, was]) => {
      const is = now.get(key);
      const held = is?.gt(dead);
      const shown = is ? say(is, 'V') : 'no reading';
      const name = `${pairName(key)}, under load`;
      const word = is ? (held ? 'real' : 'induced') : 'missing';
      const text = is
        ? `${say(was, 'V')} on ${pairName(key)} ${held ? `still reads ${shown}. A source feeds it.` : `falls to ${shown}. It was induced.`}`
        : `${pairName(key)} was not read under load.`;
      return {
        is,
        finding: finding({
          name,
          reading: shown,
          limits: `${say(dead, 'V')} or less`,
          word,
          text,
          source: limits.dead.source,
        }),
      };
    });
    const findings = [before.finding, ...pairs.map((p) => p.finding), after.finding];
    if ([...now.values()].some((v) => v.gt(dead))) return { outcome: 'real', findings };
    if (before.is === 'bad' || after.is === 'bad') return { outcome: 'proving', findings };
    const open = before.is === 'missing' || after.is === 'missing' || asked.length === 0 || pairs.some((p) => !p.is);
    return { outcome: open ? 'undecided' : 'induced', findings };
  },
  probe({ dead, sourceMin, sourceWithin, outlet }) {
    const means: Parts = { source: chose('outlet') };
    const ghost = past(dead.value, '0.01');
    const line = volts({
      before: outlet.value,
      l1l2: 0,
      l1g: ghost,
      l2g: dead.value,
      t1g: 0,
      t2g: 0,
      after: outlet.value,
    });
    const source = { before: outlet.value, after: outlet.value };
    const low = past(outlet.value, 0)
      .times(past(100, -Number(sourceWithin.value)))
      .div(100);
    const other: Parts = { source: chose('other'), ...volts({ stated: sourceMin.value }) };
    const least = { before: sourceMin.value, after: sourceMin.value };
    return [
      { bridge: volts({ ...source, l1g: dead.value }), line, means },
      { bridge: volts({ ...source, l1g: ghost }), line, means },
      { bridge: volts({ before: low, after: low, l1g: 0 }), line, means },
      { bridge: volts({ ...source, before: past(low, '-0.01'), l1g: 0 }), line, means },
      { bridge: volts({ ...source, after: past(low, '-0.01'), l1g: 0 }), line, means },
      { bridge: volts({ ...least, l1g: 0 }), line, means: other },
      { bridge: volts({ ...least, after: past(sourceMin.value, '-0.01'), l1g: 0 }), line, means: other },
      { bridge: volts(source), line, means },
      { line, means },
    ];
  },
});
