import { choose, verdict } from '../../engine/vocabulary.ts';

export const WASH_CALLOUTS = [
  { level: 'warning', text: 'Water and power don’t meet: off, locked, electrical cover on.' },
] as const;
export const WASH_WORDS = {
  done: ['cleaned', 'washed', 'coil washed', 'washed out', 'cleared'],
  no: ['later', 'no water', 'cant today'],
} as const;

/** The condenser was matted and was washed in this round, before any test. */
export const WASHED = ['condenser-washed-first'] as const;
export const washedFirst = <const R extends string, const T extends string>(evidence: readonly R[], then: T) =>
  verdict<T, R>({
    verdict: 'condenser-washed-first',
    title: 'The condenser was matted: washed before the tests',
    says: ['It trips switches and overloads on a sound unit, and heat kills the fan’s section. The tests go on.'],
    next: ['A switch that opened on it is reset once.', 'Tell the customer to keep it clear.'],
    who: 'junior',
    judged: [],
    evidence,
    then,
  });

/** A matted condenser where it is seen before anything is opened: washed from outside, or the unit waits for it. */
export const mattedFirst = <const R extends string, const T extends string>(seen: R, then: T) =>
  ({
    matted: choose<'matted-washed' | 'matted-left'>({
      say: 'Clean the condenser and clear its surroundings before anything else. Done?',
      body: [
        'Off at the means with your own lock on. Wash from outside, cabinet closed, from the clean side out where you can.',
        'No water towards the electrical compartment. It dries before power comes back.',
      ],
      callouts: WASH_CALLOUTS,
      why: 'Matted it trips pressure switches and overloads on a sound unit, and heat kills the fan’s section.',
      options: {
        done: { label: 'Cleaned, clear', words: WASH_WORDS.done, to: 'matted-washed' },
        no: { label: 'Not today', words: WASH_WORDS.no, to: 'matted-left' },
      },
      cant: 'matted-left',
    }),
    'matted-washed': washedFirst<R | 'matted', T>([seen, 'matted'], then),
    'matted-left': verdict<'!left', R | 'matted'>({
      verdict: 'condenser-left',
      title: 'The condenser waits for another visit',
      says: ['Until it is clean nothing is judged. Running it hot shortens the life of compressor and capacitor.'],
      next: ['Leave it off. The dispatcher books the cleaning.', 'Tell the customer why it waits.'],
      who: 'junior',
      judged: [],
      evidence: [seen, 'matted'],
      then: '!left',
    }),
  }) as const;
