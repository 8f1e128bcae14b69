/** Worked calls of a unit that runs and doesn’t cool: the air side. */
import type { Example } from '../../../engine/vocabulary.ts';
import { GOOD_SPLIT, HIGH_SPLIT, LIVE, toSplit, WEAK_SPLIT } from './lines.ts';

export const NOT_COLD: readonly Example[] = [
  {
    title: 'A clogged filter and a high split: changed and proven',
    lines: [...toSplit('filter clogged'), HIGH_SPLIT, 'filter changed', ...LIVE],
    then: ['airflow-short', 'air-side-righted', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'The split is high and nothing was seen',
    lines: [...toSplit(), HIGH_SPLIT],
    then: ['airflow-short-elsewhere'],
    ends: 'raised',
  },
  {
    title: 'Dirt with a weak split: put right, and it was that',
    lines: [...toSplit('filter, registers closed'), WEAK_SPLIT, 'new filter in', GOOD_SPLIT, ...LIVE],
    then: ['air-side-was-it', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'It cools as it should: nothing found',
    lines: [...toSplit(), GOOD_SPLIT, ...LIVE],
    then: ['cools-as-it-should', 'runs-nothing-found'],
    ends: 'done',
  },
  {
    title: 'The coil wants another visit',
    lines: [...toSplit('coil dirty'), HIGH_SPLIT, 'not today'],
    then: ['airflow-short', 'air-side-left'],
    ends: 'left',
  },
];
