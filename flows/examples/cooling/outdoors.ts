/** Worked calls of the condenser and the lines that anyone may measure. */
import type { Example } from '../../../engine/vocabulary.ts';
import { LIVE, toCircuit, toSplit, WEAK_SPLIT } from './lines.ts';

const seen = (line: string): string[] => [...toSplit(), WEAK_SPLIT, line];
export const OUTDOORS: readonly Example[] = [
  {
    title: 'Matted with cottonwood: cleaned and proven',
    lines: [...seen('cottonwood, small line 118 outdoor 90'), 'washed', ...LIVE],
    then: ['condenser-air-short', 'condenser-cleaned', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'Boxed in, and it can’t be cleared today',
    lines: [...seen('fence, small line 118 outdoor 90'), 'not today'],
    then: ['condenser-air-short', 'condenser-left'],
    ends: 'left',
  },
  {
    title: 'Dirty, and the fan is slow',
    lines: [...seen('coil dirty, small line 108 outdoor 90'), 'it is the fan'],
    then: ['condenser-fan-weak'],
  },
  {
    title: 'Nothing seen, and no certified person here',
    lines: [...toCircuit(), 'nobody'],
    then: ['certified-person-wanted'],
    ends: 'raised',
  },
];
