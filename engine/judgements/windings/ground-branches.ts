import { judgement } from '../judgement.ts';
import { finding } from '../say.ts';
import { FRAME_LIMITS, frameBand, frameEdges, frameFinding } from './frame.ts';
import { ohmsOf } from './look.ts';
import { type Cell, ohmParts } from './probing.ts';

const BRANCHES = [
  ['cable', 'Cable alone'],
  ['heater', 'Heater'],
  ['fan', 'Fan, at its own leads'],
  ['comp', 'Compressor, at its own harness'],
] as const;
const OUTCOMES = [...BRANCHES.map(([key]) => key), 'several', 'none', 'undecided'] as const;

/**
 * Which branch reads low to ground, Ω, each alone: `comp`, `fan`, `heater`, `cable`. Only the branch that reads low is
 * guilty; a wire comes before its motor, because it costs less and is more often chafed. `none` only where all that every
 * unit has was read: a cable that was left out may be the one.
 */
export const groundBranches = judgement({
  id: 'ground-branches',
  semantics: 2,
  takes: ['readings'],
  limits: FRAME_LIMITS,
  outcomes: OUTCOMES,
  run({ readings }, limits) {
    const all = BRANCHES.map(([key, name]) => ({ key, name, reading: ohmsOf(readings, key) })).filter(
      // A crankcase heater is not in every unit.
      ({ key, reading }) => reading.kind !== 'none' || key !== 'heater',
    );
    const bands = all.map((b) => ({ ...b, band: frameBand(b.reading, limits) }));
    const low = bands.filter(({ band }) => band === 'low');
    const findings = bands.map(({ name, reading }) => frameFinding(name, reading, limits));
    const word = (text: string) => finding({ name: 'Branches', reading: `${low.length}`, word: 'low', text });
    const [first, ...further] = low;
    if (first && further.length === 0) return { outcome: first.key, findings };
    if (first)
      return {
        outcome: 'several',
        findings: [...findings, word('More than one branch reads low. Split them again, one at a time.')],
      };
    return { outcome: bands.every(({ band }) => band === 'clear') ? 'none' : 'undecided', findings };
  },
  probe(limits) {
    const at = (of: Readonly<Record<string, Cell>>) => ({
      readings: ohmParts({ comp: 'OL', fan: 'OL', cable: 'OL', ...of }),
    });
    return [
      at({}),
      at({ heater: 'OL' }),
      at({ cable: '_' }),
      ...BRANCHES.map(([key]) => at({ [key]: 0 })),
      at({ comp: 0, fan: 0 }),
      ...frameEdges(limits).map((edge) => at({ comp: edge })),
      at({ fan: '_' }),
      {},
    ];
  },
});
