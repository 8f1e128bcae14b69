import { flow, include, manual, verdict } from '../engine/vocabulary.ts';
import { dead } from './dead/make-dead.ts';
import { ROOT } from './examples/start.ts';
import { busDead } from './inverter/bus-dead.ts';
import { LIMITS } from './limits.ts';
import { ROUNDS } from './motors/starts.ts';
import { round } from './round/round.ts';

const root = flow({
  id: 'no-cool-root',
  version: 1,
  title: 'No-cool call',
  exits: ['done', 'unrepaired', 'raised', 'left'],
  examples: ROOT,
  steps: {
    round: include(round, {
      exits: { done: '!done', unrepaired: '!unrepaired', raised: '!raised', left: '!left' },
      needs: {},
      again: { times: ROUNDS, spent: 'spent' },
      round: true,
    }),
    spent: verdict({
      verdict: 'rounds-spent',
      title: 'Three rounds without a proven repair',
      says: ['No fourth round on one visit without a senior.'],
      next: ['Leave it off. A senior reads the three rounds.'],
      who: 'senior',
      judged: [],
      evidence: [],
      raises: 'verdict',
      then: '!raised',
    }),
  },
});

export const noCool = manual({
  id: 'no-cool',
  version: 1,
  title: 'No-cool call',
  root,
  isolation: dead,
  isolations: { inverter: busDead },
  cabinets: { outdoor: 'Outdoor unit', indoor: 'Indoor unit', inverter: 'Inverter unit' },
  fromRecord: ['rla', 'lra', 'fla'],
  labelTolerance: LIMITS.label.tolerance,
  endings: {
    done: {
      title: 'Proven',
      says: 'The restart figures are in and within what was checked. A senior reads and signs the record.',
    },
    unrepaired: {
      title: 'Nothing repaired',
      says: 'No part is at fault, none was changed, and no repair is proven. A senior reads and signs the record.',
    },
    raised: { title: 'With a senior', says: 'A senior has the record. Leave the unit off and closed until you hear.' },
    left: { title: 'Left off', says: 'The unit stays off. Say how it is left, so that the next person knows.' },
  },
});
