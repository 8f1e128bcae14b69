import type { Parts } from '../../schema.ts';
import { judgement } from '../judgement.ts';
import { chose, read, untaken } from '../probing.ts';
import { finding } from '../say.ts';
import { seenIn } from './seen.ts';
import { split } from './split.ts';

const PRACTICE = 'common practice, no single source';
const TEXTS = {
  short: 'Something holds the air back, and the split is high: too little air over the coil.',
  'short-elsewhere': 'The split is high and nothing was seen that holds the air back. It is in ducts, speed or coil.',
  dirty: 'Something holds the air back, and the split is as it should be. It is put right all the same.',
  'dirty-weak': 'Something holds the air back. That comes first: dirt looks like a wrong charge.',
  within: 'Nothing holds the air back, and the split is as it should be.',
  weak: 'The split doesn’t tell of too little air. The outdoor unit is next.',
  undecided: 'Nobody can tell from this whether air is missing.',
} as const;

/**
 * The air side: what was seen of filter, coil, registers, blower and return (`look`), with the split (`air`, as the
 * judgement `split` takes it). A sight alone condemns nothing, a high split alone doesn't say where.
 */
export const airflow = judgement({
  id: 'airflow',
  semantics: 1,
  takes: ['look', 'air'],
  limits: split.limits,
  outcomes: ['short', 'short-elsewhere', 'dirty', 'dirty-weak', 'within', 'weak', 'undecided'],
  run({ look, air }, limits, force) {
    const measured = split.run({ air }, limits, force);
    const seen = seenIn(look);
    const outcome = outcomeOf(seen.is, measured.outcome);
    const said = finding({
      name: 'Air side',
      reading: seen.words,
      word: outcome,
      text: TEXTS[outcome],
      source: PRACTICE,
    });
    return { outcome, findings: [...measured.findings, said] };
  },
  probe(limits) {
    const look = (id: string): Parts => ({ seen: chose(id) });
    const [filter, clear, unsure] = [look('filter'), look('nothing'), look('unsure')];
    const lines = split.probe(limits).flatMap(({ air }) => (air ? [air] : []));
    const at = (supply: number): Parts => ({ return: read(75, '°F'), wb: read(63, '°F'), supply: read(supply, '°F') });
    const [cold, usual, warm] = [at(50), at(56), at(63)];
    return [
      ...[cold, usual, warm].flatMap((air) => [filter, clear, unsure].map((seen) => ({ look: seen, air }))),
      ...lines.map((air) => ({ look: clear, air })),
      ...INDOORS.map((id) => ({ look: look(id), air: cold })),
      { look: { seen: chose('filter', 'unsure') }, air: { ...usual, supply: untaken } },
      { look: { seen: untaken }, air: usual },
      { air: usual },
      { look: clear },
      {},
    ];
  },
});
const INDOORS = ['indoor-coil', 'registers', 'blower', 'return-leak'];

type Outcome = keyof typeof TEXTS;
function outcomeOf(seen: 'something' | 'clear' | 'open', split: 'within' | 'low' | 'high' | 'undecided'): Outcome {
  if (seen === 'something') return split === 'high' ? 'short' : split === 'within' ? 'dirty' : 'dirty-weak';
  if (split === 'high') return 'short-elsewhere';
  if (split === 'low') return 'weak';
  return split === 'within' && seen === 'clear' ? 'within' : 'undecided';
}
