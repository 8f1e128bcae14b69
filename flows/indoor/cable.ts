import { act, include, verdict } from '../../engine/vocabulary.ts';
import { asDriven, rested } from '../blower/drive.ts';
import { cableEnd } from './cable-end.ts';

/** The call leaves the board and doesn’t arrive, or doesn’t leave the thermostat. */
export const cable = {
  'cable-drive': asDriven('cable', 'cable-rested', 'cable-open'),
  'cable-rested': rested('cable', 'cable-open'),
  cable: act('rewire', {
    say: 'The call leaves the board and doesn’t arrive: mend the cable, both units off, at the board and on its way.',
    body: [
      'Mowers, pets, staples; splices in the yard.',
      'Its end inside the outdoor unit comes next, under the lock of that one.',
    ],
    yes: 'Found and mended',
    words: ['mended', 'fixed', 'splice fixed', 'found it', 'repaired'],
    no: {
      label: 'Sound here: its outdoor end is left',
      words: ['sound here', 'outdoor end', 'not found'],
      to: 'outdoor-end',
    },
    cant: { label: 'Not today', words: ['not today', 'cant find it'], to: 'cable-open' },
    next: 'cable-mended',
  }),
  // The other end is in the other cabinet: its own isolation comes first.
  'outdoor-end': include(cableEnd, {
    cabinet: 'outdoor',
    exits: { settled: '!settled', left: '!left', raised: '!raised' },
    needs: { source: 'source', path: 'path', board: 'board' },
  }),
  'cable-mended': verdict({
    verdict: 'thermostat-cable-mended',
    title: 'The cable between the units was open: mended',
    says: ['24 V at the indoor board, none outdoors, after five minutes of call.'],
    next: ['Route it clear of mowers and edges.', 'Not proven until the restart numbers are in.'],
    who: 'junior',
    judged: ['source', 'path'],
    evidence: ['board', 'cable'],
    then: '!settled',
  }),
  'cable-open': verdict({
    verdict: 'thermostat-cable-open',
    title: 'The cable between the units is open',
    says: ['24 V at the indoor board, none outdoors, after five minutes of call.'],
    next: ['A new cable is pulled. Until then it stays off.', 'Tell the customer when.'],
    who: 'junior',
    judged: ['source', 'path'],
    evidence: ['board'],
    then: '!left',
  }),
  thermostat: verdict({
    verdict: 'thermostat-or-its-cable',
    title: 'The call doesn’t leave the thermostat',
    says: ['R to C is right at the board, Y to C is nothing, and the float is closed or absent.'],
    next: [
      '24 V R to Y at the thermostat’s base: the thermostat is open. None there: its cable.',
      'Tell the customer it is a thermostat or its wire, not the unit.',
    ],
    who: 'junior',
    judged: ['source', 'elapsed', 'path', 'path-again'],
    evidence: ['call', 'board', 'has-float', 'across-float'],
    then: '!left',
  }),
};
