import { act, found, judge } from '../../engine/vocabulary.ts';
import { FAULTY, MOTOR } from '../dead/block.ts';
import { OPENED_HOT } from '../restart/restart.ts';
import { GROUND_SETTLED } from '../trips/ground.ts';

/** What is put right before power where it was condemned in this round. */
const PARTS = [...FAULTY, ...MOTOR] as const;
/** What may have opened a fuse and is put right. */
const CAUSES = [...PARTS, ...GROUND_SETTLED] as const;

/** Whether one opened on this call, whatever it began with: a fuse by word, a breaker, neither. */
const told = <const F extends string, const B extends string, const N extends string>(
  fuse: F,
  breaker: B,
  neither: N,
) =>
  judge('tripped', {
    of: { seen: '@round:observation', told: '@round:trip' },
    limits: {},
    quiet: ['fuse', 'breaker', 'neither', 'undecided'],
    then: { fuse, breaker, neither, undecided: neither },
  });

/**
 * A breaker tripped or a fuse opened: whatever part was found, the insulation test decides before any power, then the
 * part is put right, and one controlled start tells whether it holds. First what goes before the test,
 */
export const first = {
  'cause-first': found({ among: { fuse: { verdicts: ['fuse-blown'], to: 'insulation' } }, none: 'by-trip' }),
  'by-trip': told('insulation', 'insulation', 'put-right'),
} as const;

/** also where nothing was found and it tripped all the same; */
export const clean = { 'clean-trip': told('insulation', 'insulation', 'not-the-fan') } as const;

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
    none: 'told-of',
  }),
  'told-of': told('fuse-cause', 'cools-first', 'cools-first'),
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
  'trip-then': told('new-fuse', 'cools-first', 'tripped'),
  'fuse-cause': found({ among: { cause: { verdicts: CAUSES, to: 'new-fuse' } }, none: 'fuse-alone' }),
  'new-fuse': act('fit', {
    say: 'What opened the fuse is put right: a new one of the printed kind and size, power still locked.',
    body: ['At most the MOP on the nameplate. Clips bright and tight. Every fuse of the holder of one kind.'],
    why: 'Before its cause was found a new fuse would only have opened again, or not, and the wire instead.',
    yes: 'New fuse in',
    words: ['fuse in', 'new fuse', 'new fuse in', 'fused', 'fitted'],
    cant: { label: 'None here of that kind and size', words: ['no fuse', 'none here'], to: 'fuse-alone' },
    unsure: 'fuse-alone',
    next: 'cools-first',
  }),
  // On an overload that is open nothing is started: the restart asks first whether it has cooled.
  'cools-first': found({ among: { open: { verdicts: OPENED_HOT, to: 'tripped' } }, none: 'breaker' }),
} as const;
