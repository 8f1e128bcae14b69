import { act, choose, confirm, flow, judge, measure, probes, verdict, volts } from '../../engine/vocabulary.ts';
import { BUS_HOLDS, drives, rested } from '../blower/drive.ts';
import { foreignFound } from '../control/foreign.ts';
import { Y_OFF } from '../examples/control.ts';
import { LIMITS } from '../limits.ts';

/** A call that the thermostat doesn't give: Y off the indoor board, dead, then what the board's own Y has. */
export const yOff = flow({
  id: 'y-off',
  version: 1,
  title: 'Y off at the board',
  exits: ['raised', 'left'],
  needs: ['coil', 'called'],
  examples: Y_OFF,
  steps: {
    drive: choose({
      say: 'A call is there that the thermostat doesn’t give. Next the indoor board. What drives the blower there?',
      callouts: [BUS_HOLDS],
      why: 'Y comes off with that cabinet dead, under a lock of its own.',
      as: 'cabinet:drive',
      anew: true,
      options: drives('pulled', 'rested', 'open'),
    }),
    rested: rested('pulled', 'open'),
    pulled: act('wires off', {
      say: 'Lift every field wire off Y at the indoor board, and cap them.',
      body: [
        'The one to the thermostat and the one to the outdoor unit. Note where each sat.',
        'Clips on Y and C now, while it is dead, led out; the door back on its switch by its own panel.',
      ],
      why: 'With its wires off, Y shows what the board itself gives.',
      yes: 'Y’s wires are off, capped; clips on',
      words: ['off', 'lifted', 'y is off', 'wires off'],
      cant: { label: 'Could not try', words: ['not tried', 'could not try'], to: 'open' },
      next: 'ready',
    }),
    ready: confirm({
      sitting: true,
      powers: ['yes'],
      say: 'A live reading at the indoor board comes next: are you qualified and equipped for it?',
      body: ['Rated gloves, eye protection, the primary’s terminals covered, no rings. One sitting.'],
      callouts: [
        { level: 'danger', text: 'Line voltage is present beside the board.' },
        {
          level: 'warning',
          text: 'Live readings are for qualified people. NFPA 70E and your employer’s program govern.',
        },
      ],
      yes: 'Qualified, equipped',
      words: ['qualified', 'yes', 'ready'],
      no: { label: 'Not here, not now', words: ['not qualified', 'no', 'not now'], to: 'open' },
      next: 'bare',
    }),
    bare: measure({
      say: 'Indoor power on again, thermostat OFF, Y bare: volts from the board’s Y to C.',
      callouts: [{ level: 'danger', text: 'Line voltage is present. The isolation has ended.' }],
      why: 'None: what calls hangs on the wires that came off. Volts: the board itself.',
      source: ['24 to 28 V, 20.4 V the least: common practice, no single source'],
      picture: probes('V AC', ['Y of the board, bare', 'C', 'no volts from a sound board']),
      circuit: 'line',
      fields: { v: volts('Y to C, Y bare', { over: false, words: ['y-c', 'y to c', 'yc'] }) },
      cant: 'open',
      next: 'gives',
    }),
    gives: judge('volts-there', {
      of: { readings: 'bare' },
      limits: LIMITS.controlThere,
      then: { there: 'board', none: 'cable', between: 'open', high: 'foreign', undecided: 'open' },
    }),
    cable: verdict({
      verdict: 'thermostat-cable-shorted',
      title: 'The thermostat or its cable calls by itself',
      says: ['With its wires off the board’s Y has no volts: what gives the call hangs on those wires.'],
      next: [
        'Y off at the thermostat too: gone, the thermostat; still there, the cable.',
        'It stays off until one of them is replaced. Tell the customer.',
      ],
      who: 'junior',
      judged: ['called', 'gives'],
      evidence: ['coil', 'pulled', 'bare'],
      then: '!left',
    }),
    board: verdict({
      verdict: 'board-holds-the-call',
      title: 'The board holds the call with Y off',
      says: ['The volts come from the board itself, without a call from the thermostat.'],
      next: ['A senior confirms before a board is replaced. It stays off.'],
      who: 'senior',
      judged: ['called', 'gives'],
      evidence: ['coil', 'pulled', 'bare'],
      raises: 'verdict',
      then: '!raised',
    }),
    foreign: foreignFound(['called', 'gives'], ['coil', 'bare']),
    open: verdict({
      verdict: 'call-not-located',
      title: 'A call is there with the thermostat OFF, and where it comes from is open',
      says: ['Y off at the board would tell thermostat and cable from board.'],
      next: ['It stays off. A senior leads on.'],
      who: 'senior',
      judged: ['called', 'gives'],
      evidence: ['coil', 'pulled', 'bare'],
      raises: 'verdict',
      then: '!raised',
    }),
  },
});
