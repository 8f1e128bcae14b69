import { amps, choose, confirm, flow, found, judge, measure, probes, verdict, volts } from '../../engine/vocabulary.ts';
import { STILL_AFTER } from '../examples/fan.ts';
import { LIMITS } from '../limits.ts';

/** The dead tests found nothing or were put right, and one motor still stands: volts where it is fed. One live sitting. */
export const stillAfter = flow({
  id: 'still-after',
  version: 1,
  title: 'Still standing with everything good',
  exits: ['again', 'replace', 'left', 'raised'],
  examples: STILL_AFTER,
  steps: {
    which: choose({
      say: 'Call there, contactor in: which motor stands still?',
      body: ['Five minutes after a stop, and at most three tries: pressures have to even out.'],
      why: 'Good dead tests leave three things: no volts, no start, or a motor that fails only on volts.',
      source: ['Five minutes between starts, three tries: common practice, no single source'],
      options: {
        fan: { label: 'The fan', words: ['fan', 'fan still', 'the fan'], to: 'feed' },
        compressor: { label: 'The compressor', words: ['compressor', 'comp', 'comp hums'], to: 'tries' },
        pump: { label: 'Heat pump: the fan, and it may be in defrost', words: ['heat pump', 'defrost'], to: 'defrost' },
      },
    }),
    defrost: confirm({
      say: 'Steam, or 10 to 14 minutes of it? A fan that stands in defrost is normal. Is it out of defrost, on a cooling call?',
      yes: 'Out of defrost, cooling call',
      words: ['out of defrost', 'cooling', 'not in defrost'],
      no: { label: 'It was in defrost, now it runs', words: ['was in defrost', 'runs now'], to: '!again' },
      next: 'feed',
    }),
    feed: measure({
      say: 'Volts at the fan’s feed, under the call: at its leads, or at the board’s fan terminals.',
      callouts: [{ level: 'danger', text: 'Line voltage is present. Never push a fan with power on.' }],
      why: 'Volts and free and no start: the motor. No volts with the line at the board: its relay or a lead.',
      picture: probes('V AC', ['Fan’s feed', 'Its other lead', 'there or nothing: never between']),
      circuit: 'line',
      fields: {
        v: volts('Volts at the fan’s feed', {
          over: false,
          words: ['fan', 'volts', 'feed', 'fan out', 'board fan out', 'out'],
        }),
      },
      cant: 'open',
      next: 'fed',
    }),
    fed: judge('volts-there', {
      of: { readings: 'feed' },
      limits: LIMITS.lineThere,
      then: { there: 'cleared', none: 'board', between: 'open', undecided: 'open' },
    }),
    cleared: found({
      among: {
        measured: {
          verdicts: ['capacitor-good', 'capacitor-conditional-pass', 'section-fails-value', 'new-part-right'],
          to: 'motor',
        },
      },
      none: 'open',
    }),
    motor: verdict({
      verdict: 'fan-motor-electric',
      title: 'The fan motor has volts and a good capacitor, turns free, and doesn’t start: replace the motor',
      says: ['Capacitor measured, volts at its leads, free by hand: what is left is the motor.'],
      next: [
        'Turn it off. The motor that the nameplate asks for, with the capacitor it asks for.',
        'Not proven until the restart numbers are in.',
      ],
      who: 'junior',
      judged: ['fed'],
      evidence: ['which', 'feed'],
      then: '!replace',
    }),
    board: measure({
      say: 'No volts at the fan. Volts where the line comes in: at the board, or at the contactor’s load side.',
      body: ['Heat pump: the board switches the fan. Not in defrost, contactor in, cooling call.'],
      callouts: [{ level: 'danger', text: 'Line voltage is present.' }],
      why: 'Line in and none out: the board’s relay or the lead. None in: it is lost before the board.',
      picture: probes('V AC', ['Line in, L1', 'Line in, L2', 'line volts']),
      circuit: 'line',
      fields: {
        v: volts('Line in', { over: false, words: ['line in', 'board line in', 'board in', 'in', 'load side'] }),
      },
      cant: 'open',
      next: 'at-board',
    }),
    'at-board': judge('volts-there', {
      of: { readings: 'board' },
      limits: LIMITS.lineThere,
      then: { there: 'relay', none: 'open', between: 'open', undecided: 'open' },
    }),
    relay: verdict({
      verdict: 'board-fan-relay',
      title: 'Line in, none out: the board’s fan relay or the lead',
      says: ['Contactor in, a cooling call, not in defrost, 0 V at the fan terminals, line at the board.'],
      next: [
        'The lead and its push-on first, dead. Then the board, by the maker’s number.',
        'It waits for the part. Tell the customer.',
      ],
      who: 'junior',
      judged: ['fed', 'at-board'],
      evidence: ['which', 'feed', 'board'],
      then: '!left',
    }),
    tries: measure({
      say: 'One try after five minutes: compressor amps, and the lowest volts at T1 to T2 during the try.',
      body: ['Off within seconds if it hums. At most three tries.'],
      callouts: [{ level: 'danger', text: 'Line voltage is present. Locked rotor overheats within seconds.' }],
      why: 'Locked-rotor amps alone seize no compressor: volts during the try, the capacitor and the windings have to be right.',
      circuit: 'line',
      fields: {
        v: volts('T1 to T2 during the try, the lowest', { over: false, words: ['t1t2', 'min', 'lowest'] }),
        amps: amps('Compressor amps', { over: false, optional: true, words: ['comp', 'amps'] }),
      },
      cant: 'open',
      next: 'held',
    }),
    held: judge('volts-held', {
      of: { readings: 'tries', plate: '@volts', unit: '@class' },
      limits: LIMITS.during,
      then: { there: 'dead-good', none: 'no-volts', between: 'sags', undecided: 'open' },
    }),
    'dead-good': found({
      among: {
        measured: { verdicts: ['capacitor-good', 'capacitor-conditional-pass', 'new-part-right'], to: 'assist' },
      },
      none: 'open',
    }),
    assist: choose({
      say: 'A senior decides about one try with a start assist. What came of it?',
      body: ['Fitted dead, by the maker’s list. Five minutes after the last stop.'],
      why: 'A compressor that starts with an assist is not seized.',
      options: {
        starts: {
          label: 'It started with the assist',
          words: ['started', 'it started', 'runs', 'starts'],
          to: 'started',
        },
        stands: {
          label: 'It still stands',
          words: ['still stands', 'still locked', 'stands', 'no start'],
          to: 'seized',
        },
        none: { label: 'No assist, or no senior', words: ['no assist', 'no senior', 'none', 'not tried'], to: 'open' },
      },
    }),
    started: verdict({
      verdict: 'starts-with-an-assist',
      title: 'It starts with an assist: tight, not seized',
      says: ['Why it needs one is open: pressures, volts, a worn compressor.'],
      next: ['A senior decides whether the assist stays. The customer hears that it may not last.'],
      who: 'senior',
      judged: ['held'],
      evidence: ['which', 'tries', 'assist'],
      raises: 'verdict',
      then: '!raised',
    }),
    seized: verdict({
      verdict: 'compressor-seized',
      title: 'The compressor is seized: a senior confirms',
      says: [
        'Capacitor within its label, volts held during the try, windings and ground good, five minutes evened out, an assist tried.',
      ],
      next: ['A senior confirms before anybody tells the customer. Why: liquid, oil, heat.'],
      who: 'senior',
      judged: ['held'],
      evidence: ['which', 'tries', 'assist'],
      raises: 'verdict',
      then: '!raised',
    }),
    'no-volts': verdict({
      verdict: 'no-volts-at-the-compressor',
      title: 'No volts behind the contactor during the try',
      says: ['Contacts, a plug or a lead lose them. The compressor is not in question yet.'],
      next: ['Across each closed pole, then the leads, dead. A senior leads on.'],
      who: 'senior',
      judged: ['held'],
      evidence: ['which', 'tries'],
      raises: 'verdict',
      then: '!raised',
    }),
    sags: verdict({
      verdict: 'supply-sags',
      title: 'The supply sags at the start: a connection or the feed',
      says: ['Below the lower limit during the try no compressor is judged.'],
      next: ['Read where it falls: panel, means, unit. A senior confirms. Lug, utility or electrician.'],
      who: 'senior',
      judged: ['held'],
      evidence: ['which', 'tries'],
      raises: 'verdict',
      then: '!raised',
    }),
    open: verdict({
      verdict: 'no-start-undecided',
      title: 'Why it stands still is undecided',
      says: ['One of the readings that would decide it is missing. No motor is condemned.'],
      next: [
        'Capacitor, volts at the leads, a free shaft and five minutes’ rest would decide it.',
        'A senior sees this call. It stays off.',
      ],
      who: 'senior',
      judged: ['fed', 'at-board', 'held'],
      evidence: ['which', 'feed', 'board', 'tries', 'assist'],
      raises: 'verdict',
      then: '!raised',
    }),
  },
});
