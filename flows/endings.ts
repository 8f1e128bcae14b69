/** Verdicts of several pages that end in the same words: the unit stays off, for a reason that somebody else puts right. */
import { verdict } from '../engine/vocabulary.ts';

const STAYS_OFF = { who: 'junior', judged: [], then: '!left' } as const;

export const leftOff = <const R extends string>(...evidence: R[]) =>
  verdict<'!left', R>({
    ...STAYS_OFF,
    verdict: 'left-off',
    title: 'Left off',
    says: ['Not restarted, not proven.'],
    next: ['Somebody restarts and proves it at the next visit.'],
    evidence,
  });

export const noPart = <const R extends string>(...evidence: R[]) =>
  verdict<'!left', R>({
    ...STAYS_OFF,
    verdict: 'no-part',
    title: 'The part is not here: the unit stays off',
    says: ['The verdict stands. The repair waits for the part.'],
    next: [
      'Leave it locked or make it safe, cover on.',
      'Type stop and say how it is left. The dispatcher brings the part.',
    ],
    evidence,
  });

/** The way out of putting wires back, on every page that has them off. */
export const NO_WIRING = {
  label: 'No record, no diagram: how they go is not known',
  words: ['wiring lost', 'no diagram', 'not sure'],
  to: 'lost',
} as const;
export const wiringLost = <const R extends string>(...evidence: R[]) =>
  verdict<'!left', R>({
    verdict: 'wiring-not-known',
    title: 'How the wires go back is not known: it stays off, and a senior leads on',
    says: ['Nothing is put back by guess: wires on the wrong terminals take a motor or a board.'],
    next: [
      'The wiring diagram of this model, from its maker, and a senior beside it.',
      'Leave it locked or make it safe, cover on. Type stop and say how it is left.',
    ],
    who: 'senior',
    judged: [],
    evidence,
    raises: 'verdict',
    then: '!left',
  });

export const iceFirst = <const R extends string>(...evidence: R[]) =>
  verdict<'!left', R>({
    ...STAYS_OFF,
    verdict: 'ice-comes-first',
    title: 'Ice comes first: thaw it, then go on',
    says: ['On ice no cycle, no charge and no compressor is judged.'],
    next: [
      'COOL off, fan at ON, one to four hours. Watch the water, chip nothing.',
      'Then the call goes on from the ice. Tell the customer to leave it so.',
    ],
    evidence,
  });
