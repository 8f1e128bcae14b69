import { act, found, judge } from '../../engine/vocabulary.ts';
import { FAULTY, MOTOR } from '../dead/block.ts';
import { GROUND_SETTLED } from '../trips/ground.ts';

/** What is put right before power where it was condemned in this round. */
const PARTS = [...FAULTY, ...MOTOR] as const;
/** What may have opened a fuse and is put right. */
const CAUSES = [...PARTS, ...GROUND_SETTLED] as const;

/** On a call of a trip `trip`, on every other `other`. */
const ofATrip = <const T extends string, const O extends string>(trip: T, other: O) =>
  judge('observed', {
    of: { seen: '@round:observation' },
    limits: {},
    quiet: ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h', 'i', 'j', 'k', 'l', 'm', 'n', 'o', 'p', 'undecided'],
    then: {
      ...{ a: other, b: other, c: other, d: other, e: other, f: other, g: other, h: trip, i: other, j: other },
      ...{ k: other, l: other, m: other, n: other, o: other, p: other, undecided: other },
    },
  });

/**
 * A breaker tripped or a fuse opened: whatever part was found, the insulation test decides before any power, then the
 * part is put right, and one controlled start tells whether it holds. First what goes before the test,
 */
export const first = {
  'cause-first': found({ among: { fuse: { verdicts: ['fuse-blown'], to: 'insulation' } }, none: 'by-trip' }),
  'by-trip': ofATrip('insulation', 'put-right'),
} as const;

/** what follows from it, */
export const decided = {
  // What read low to ground at its own leads stays off, whatever the insulation test reads after it.
  fused: found({
    among: {
      low: { verdicts: ['compressor-low-to-ground'], to: 'contradicts' },
      part: { verdicts: PARTS, to: 'repair' },
      fuse: { verdicts: ['fuse-blown'], to: 'fuse-cause' },
      value: { verdicts: ['value-undecided'], to: 'under-load' },
    },
    none: 'breaker',
  }),
  'put-right': found({
    among: {
      part: { verdicts: PARTS, to: 'repair' },
      value: { verdicts: ['value-undecided'], to: 'under-load' },
    },
    none: 'tripped',
  }),
} as const;

/** and what comes between the part and power. */
export const last = {
  fitted: found({ among: { fuse: { verdicts: ['fuse-blown'], to: 'new-fuse' } }, none: 'trip-then' }),
  'trip-then': ofATrip('breaker', 'tripped'),
  'fuse-cause': found({ among: { cause: { verdicts: CAUSES, to: 'new-fuse' } }, none: 'fuse-alone' }),
  'new-fuse': act('fit', {
    say: 'What opened the fuse is put right: a new one of the printed kind and size, power still locked.',
    body: ['At most the MOP on the nameplate. Clips bright and tight. Every fuse of the holder of one kind.'],
    why: 'Before its cause was found a new fuse would only have opened again, or not, and the wire instead.',
    yes: 'New fuse in',
    words: ['fuse in', 'new fuse', 'new fuse in', 'fused', 'fitted'],
    cant: { label: 'None here of that kind and size', words: ['no fuse', 'none here'], to: 'fuse-alone' },
    unsure: 'fuse-alone',
    next: 'breaker',
  }),
} as const;
