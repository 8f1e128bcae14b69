import { judgement } from '../judgement.ts';
import { past, read, untaken } from '../probing.ts';
import { figureOf } from '../read.ts';
import { finding, say } from '../say.ts';

/** The fall of the liquid line's temperature across a part, mostly the drier: `drier` with °F `before` and `after`. */
export const drier = judgement({
  id: 'drier',
  semantics: 1,
  takes: ['drier'],
  limits: ['fall'],
  outcomes: ['restricted', 'free', 'undecided'],
  run({ drier: lines }, { fall }) {
    const [before, after] = [figureOf(lines, 'before', '°F'), figureOf(lines, 'after', '°F')];
    const of = (outcome: 'restricted' | 'free' | 'undecided', reading: string, text: string) => ({
      outcome,
      findings: [
        finding({
          name: 'Across the part',
          reading,
          limits: `${say(fall.value, '°F')} or less`,
          word: outcome === 'undecided' ? 'not judged' : outcome,
          text,
          source: fall.source,
        }),
      ],
    });
    if (before === null || after === null)
      return of('undecided', 'no reading', 'It takes the line’s temperature on both sides of the part.');
    const drop = before.minus(after);
    return drop.gt(fall.value)
      ? of('restricted', say(drop, '°F'), `The line falls by ${say(drop, '°F')} across it: it restricts.`)
      : of('free', say(drop, '°F'), `The line falls by ${say(drop, '°F')} across it: it is free.`);
  },
  probe: ({ fall }) => [
    { drier: { before: read(100, '°F'), after: read(past(100, `-${fall.value}`), '°F') } },
    { drier: { before: read(100, '°F'), after: read(past(100, `-${fall.value}`).minus('0.1'), '°F') } },
    { drier: { before: read(90, '°F'), after: read(91, '°F') } },
    { drier: { before: read(100, '°F'), after: untaken } },
    { drier: { before: untaken, after: read(100, '°F') } },
    {},
  ],
});
