import {
  act,
  choose,
  confirm,
  flow,
  include,
  judge,
  measure,
  probes,
  verdict,
  volts,
} from '../../engine/vocabulary.ts';
import { foreignFound } from '../control/foreign.ts';
import { changed, DELAY, delayOver } from '../control/words.ts';
import { CABLE_END, PAIR_INDOORS } from '../examples/cable.ts';
import { LIMITS } from '../limits.ts';

/** The indoor end of a spare conductor: hands in the indoor unit again. */
const pairIndoors = flow({
  id: 'pair-indoors',
  version: 1,
  title: 'The spare conductor’s indoor end',
  exits: ['on', 'not'],
  examples: PAIR_INDOORS,
  steps: {
    on: act('rewire', {
      say: 'At the indoor board: the same spare conductor on Y or C, the old one capped. Tug it.',
      why: 'A conductor that is on at one end alone carries nothing.',
      yes: 'On the spare here too',
      words: ['on', 'spare on', 'on the spare', 'done'],
      cant: { label: 'Not today', words: ['not today', 'no such colour'], to: '!not' },
      next: '!on',
    }),
  },
});

/** W6 at the outdoor end of the cable: hands there under the outdoor unit's own lock, then the call read once more. */
export const cableEnd = flow({
  id: 'cable-end',
  version: 1,
  title: 'The cable’s outdoor end',
  exits: ['settled', 'left', 'raised'],
  needs: ['source', 'path', 'board'],
  examples: CABLE_END,
  steps: {
    look: act('tug', {
      say: 'The cable’s end in the outdoor unit, dead: follow it to the strip and tug Y and C.',
      body: [
        'The indoor unit stays off. Splices, push-ons, a jacket rubbed on the cabinet’s edge, a wire broken in its sleeve.',
      ],
      why: '24 V go in indoors and none come out here: what lies between is open.',
      yes: 'Found: open or loose here',
      words: ['found', 'found it', 'loose', 'broken', 'open here'],
      cant: { label: 'Nothing to see here', words: ['nothing', 'nothing here', 'not found', 'looks fine'], to: 'who' },
      next: 'remake',
    }),
    remake: act('rewire', {
      say: 'Re-make the end, dead: cut back to sound copper, strip, a splice or terminal made for it, clear of line wires.',
      body: ['Y and C back where they sat. Tug each. Too short: don’t stretch it, that is a new conductor.'],
      why: 'A twist in tape opens again. Control wires beside line wires need the distance or insulation that the code asks for.',
      yes: 'Re-made, tugged',
      words: ['remade', 're-made', 'made', 'mended', 'fixed', 'spliced', 'done'],
      cant: { label: 'Too short, or broken further in', words: ['too short', 'broken further in'], to: 'who' },
      next: 'closed',
    }),
    who: choose({
      say: 'A sound pair of this cable, or a new conductor: who may put it in here?',
      body: ['Local code and your employer’s program say. In some places low-voltage wiring takes a licence.'],
      why: 'A cable through walls and yard is somebody’s licensed work in many places.',
      options: {
        pair: {
          label: 'A sound spare pair is there, and I may use it',
          words: ['spare pair', 'spare', 'i may', 'sound pair'],
          to: 'pair',
        },
        other: {
          label: 'A new cable, or somebody licensed',
          words: ['licensed', 'electrician', 'new cable', 'not me', 'no spare'],
          to: 'still-open',
        },
        unsure: { label: 'Not sure', words: ['not sure', 'unsure', 'dont know'], to: 'still-open' },
      },
    }),
    pair: act('rewire', {
      say: 'Put the open one of Y and C on the spare conductor at this end, dead, and cap the old one.',
      body: ['Note its colour: the same goes on at the other end.'],
      why: 'One left bare finds a neighbour.',
      yes: 'On the spare here, the old one capped',
      words: ['spare on', 'on the spare', 'done'],
      cant: { label: 'Not today', words: ['not today'], to: 'still-open' },
      next: 'source',
    }),
    // The other end of the spare conductor is in the other cabinet.
    source: include(pairIndoors, { cabinet: 'indoor', exits: { on: 'closed', not: 'still-open' }, needs: {} }),
    closed: confirm({
      sitting: true,
      powers: ['yes'],
      say: 'Indoor unit closed and on again; the outdoor line stays off and locked. Qualified for probes at the strip?',
      body: ['Tools out at both ends, people clear. No door switch taped.'],
      callouts: [
        {
          level: 'warning',
          text: 'Live readings are for qualified people. NFPA 70E and your employer’s program govern.',
        },
      ],
      why: 'A mended cable is mended when the call arrives.',
      yes: 'Closed indoors, outdoor line locked, qualified',
      words: ['closed', 'closed and on', 'qualified', 'ready'],
      no: { label: 'Not here, not now', words: ['not now', 'not qualified', 'no'], to: 'not-read' },
      next: 'call',
    }),
    call: choose({
      say: 'Give the call for cooling and leave it. When was it last changed?',
      why: 'Before the delay is over, 0 V says nothing.',
      source: [DELAY],
      options: changed('wait', 'arrives'),
      cant: 'wait',
    }),
    wait: delayOver('arrives'),
    arrives: measure({
      say: 'Y to C at the outdoor strip, the call there.',
      body: ['Probes only, tools out of the contactor: it may pull in.'],
      callouts: [
        { level: 'danger', text: 'Power is back indoors: the isolation has ended. The outdoor line stays locked.' },
      ],
      why: '24 to 28 V is usual, 20.4 V the least.',
      source: ['20.4 V, 85 % of 24 V: common practice, no single source'],
      picture: probes('V AC', ['Y at the strip', 'C', '24 to 28 V, 20.4 V the least']),
      circuit: 'line',
      fields: { v: volts('Y to C at the strip', { over: false, words: ['y-c', 'yc', 'y to c', 'strip'] }) },
      cant: 'not-read',
      next: 'there',
    }),
    there: judge('volts-there', {
      of: { readings: 'arrives' },
      limits: LIMITS.controlThere,
      then: { there: 'mended', none: 'elapsed', between: 'not-read', high: 'foreign', undecided: 'not-read' },
    }),
    elapsed: judge('minutes-since', {
      of: { since: 'call', reading: 'arrives', waited: 'wait', before: null, off: null },
      limits: LIMITS.delay,
      then: { over: 'still-open', wait: 'not-read', undecided: 'not-read' },
    }),
    mended: verdict({
      verdict: 'thermostat-cable-mended',
      title: 'The cable was open at its outdoor end: mended, and the call arrives',
      says: ['24 V at the indoor board and none outdoors before; with its end made anew the call is there.'],
      next: ['Route it clear of edges and line wires.', 'Not proven until the restart numbers are in.'],
      who: 'junior',
      judged: ['source', 'path', 'there'],
      evidence: ['board', 'look', 'remake', 'pair', 'arrives'],
      then: '!settled',
    }),
    'still-open': verdict({
      verdict: 'thermostat-cable-open',
      title: 'The cable between the units is open: a new one, by whoever may',
      says: ['24 V at the indoor board, none outdoors, after five minutes of call.'],
      next: [
        'Whoever the code and the employer let pulls a new cable. Until then it stays off, its ends capped.',
        'Tell the customer when.',
      ],
      who: 'junior',
      judged: ['source', 'path', 'there', 'elapsed'],
      evidence: ['board', 'look', 'remake', 'who', 'pair', 'arrives'],
      then: '!left',
    }),
    foreign: foreignFound(['there'], ['arrives']),
    'not-read': verdict({
      verdict: 'cable-not-retested',
      title: 'The cable’s end was made anew, and whether the call arrives is not known',
      says: ['Without 20.4 V at the strip, five minutes after a change of call, it is not mended.'],
      next: [
        'Y to C at the outdoor strip with the call there would decide it.',
        'It stays off. A senior sees this call.',
      ],
      who: 'senior',
      judged: ['source', 'path', 'there', 'elapsed'],
      evidence: ['board', 'look', 'remake', 'pair', 'call', 'arrives'],
      raises: 'verdict',
      then: '!raised',
    }),
  },
});
