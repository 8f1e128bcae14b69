import { judgement } from './judgement.ts';
import { chose, untaken } from './probing.ts';
import { chosenOf } from './read.ts';
import { finding } from './say.ts';

/**
 * Whether a breaker or a fuse opened on this call: `seen` is the observation that it began with (`h`), `told` how fast it
 * trips, asked wherever somebody says that it did (`fuse`: a fuse opened). After either the insulation decides, common
 * practice.
 */
export const tripped = judgement({
  id: 'tripped',
  semantics: 1,
  takes: ['seen', 'told'],
  limits: [],
  outcomes: ['fuse', 'breaker', 'neither', 'undecided'],
  run({ seen, told }) {
    const [observed] = chosenOf(seen, 'choice');
    const [trip] = chosenOf(told, 'choice');
    const outcome =
      trip === 'fuse'
        ? 'fuse'
        : trip !== undefined || observed === 'h'
          ? 'breaker'
          : observed === undefined
            ? 'undecided'
            : 'neither';
    const text = {
      fuse: 'A fuse opened. The insulation test decides before any power, and its cause comes before a new one.',
      breaker: 'A breaker or a fuse opened. The insulation test decides before any power.',
      neither: 'Nobody said that a breaker or a fuse opened.',
      undecided: 'Nobody said what the unit does.',
    }[outcome];
    const reading = { fuse: 'fuse', breaker: 'trips', neither: 'none', undecided: 'not said' }[outcome];
    const source = outcome === 'undecided' ? null : 'common practice, no single source';
    return { outcome, findings: [finding({ name: 'Breaker or fuse', reading, word: outcome, text, source })] };
  },
  probe: () => [
    { seen: { choice: chose('h') } },
    { seen: { choice: chose('a') } },
    { seen: { choice: chose('a') }, told: { choice: chose('once') } },
    { seen: { choice: chose('a') }, told: { choice: chose('fuse') } },
    { seen: { choice: chose('h') }, told: { choice: chose('fuse') } },
    { seen: { choice: chose('h') }, told: { choice: untaken } },
    { seen: { choice: untaken } },
    {},
  ],
});
