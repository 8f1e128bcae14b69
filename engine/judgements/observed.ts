import { judgement } from './judgement.ts';
import { chose, untaken } from './probing.ts';
import { chosenOf } from './read.ts';
import { finding } from './say.ts';

/** The observations of a no-cool call, by their letters. */
const LETTERS = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h', 'i', 'j', 'k', 'l', 'm', 'n', 'o', 'p'] as const;

/** Which observation the round began with, so that a page can go on by it. Takes `seen`, one choice among the letters. */
export const observed = judgement({
  id: 'observed',
  semantics: 1,
  takes: ['seen'],
  limits: [],
  outcomes: [...LETTERS, 'undecided'],
  run({ seen }) {
    const chosen = chosenOf(seen, 'choice');
    const letter = LETTERS.find((one) => chosen.length === 1 && chosen[0] === one);
    const of = (reading: string, word: string, text: string) =>
      finding({
        name: 'Observation',
        reading,
        word,
        text,
        source: letter ? 'common practice, no single source' : null,
      });
    if (letter === undefined)
      return { outcome: 'undecided', findings: [of('not seen', 'undecided', 'Nobody said what the unit does.')] };
    return { outcome: letter, findings: [of(letter, letter, 'What the unit does decides the order of tests.')] };
  },
  probe: () => [
    ...LETTERS.map((letter) => ({ seen: { choice: chose(letter) } })),
    { seen: { choice: chose('a', 'b') } },
    { seen: { choice: chose('z') } },
    { seen: { choice: untaken } },
    {},
  ],
});
