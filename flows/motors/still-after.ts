import {
  act,
  amps,
  choose,
  confirm,
  flow,
  found,
  include,
  judge,
  measure,
  probes,
  verdict,
  volts,
} from '../../engine/vocabulary.ts';
import { STILL_AFTER } from '../examples/fan.ts';
import { LIMITS } from '../limits.ts';
import { located } from '../supply/located.ts';
import { AT_MOST, BETWEEN_STARTS, offSince, REST, restedNow } from './starts.ts';

/** With one of these nobody read good windings and no ground: such a compressor is called nothing. */
const NOT_GOOD = [
  'compressor-windings-not-taken',
  'compressor-windings-undecided',
  'compressor-winding-open',
  'compressor-plug-or-lead',
  'winding-open-at-harness',
  'all-windings-open',
  'common-lead-open',
  'overload-open',
  'overload-stays-open',
  'compressor-grounded',
  'low-to-ground',
  'ground-not-located',
  'ground-gone',
  'fuses-contactor-ground-not-taken',
] as const;

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
      body: [`${REST} after a stop, and ${AT_MOST.toLowerCase()} Pressures have to even out.`],
      why: 'Good dead tests leave three things: no volts, no start, or a motor that fails only on volts.',
      source: [BETWEEN_STARTS],
      options: {
        fan: { label: 'The fan', words: ['fan', 'fan still', 'the fan'], to: 'feed' },
        compressor: { label: 'The compressor', words: ['compressor', 'comp', 'comp hums'], to: 'stopped' },
        pump: { label: 'Heat pump: the fan, and it may be in defrost', words: ['heat pump', 'defrost'], to: 'defrost' },
      },
      cant: 'open',
    }),
    defrost: confirm({
      say: 'Steam, or 10 to 14 minutes of it? A fan that stands in defrost is normal. Is it out of defrost, on a cooling call?',
      yes: 'Out of defrost, cooling call',
      words: ['out of defrost', 'cooling', 'not in defrost'],
      no: { label: 'It was in defrost, now it runs', words: ['was in defrost', 'runs now'], to: '!again' },
      unsure: 'open',
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
        // Volts and a good capacitor say nothing of a shaft that nobody turned.
        unturned: { verdicts: ['fan-not-spun'], to: 'open' },
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
      then: { there: 'switched', none: 'open', between: 'open', undecided: 'open' },
    }),
    switched: choose({
      say: 'What switches the fan?',
      body: ['Heat pump: its board. Others: the contactor itself, by two leads.'],
      why: 'A board that holds the fan in defrost is in order. Without a board, what is lost between is a lead.',
      options: {
        board: {
          label: 'A board, out of defrost, on a cooling call',
          words: ['board', 'the board', 'out of defrost', 'not in defrost'],
          to: 'relay',
        },
        thawing: {
          label: 'A board; it was in defrost and now runs',
          words: ['was in defrost', 'runs now'],
          to: '!again',
        },
        wired: {
          label: 'No board: straight from the contactor',
          words: ['contactor', 'no board', 'straight', 'leads'],
          to: 'open',
        },
        unknown: { label: 'Not sure', words: ['not sure', 'dont know'], to: 'open' },
      },
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
      evidence: ['which', 'feed', 'board', 'switched'],
      then: '!left',
    }),
    stopped: offSince('Before a try: since when is the compressor off?', 'rest', 'tries', 'open'),
    rest: restedNow('tries'),
    tries: measure({
      say: `One try after ${REST}: compressor amps, and the lowest volts at T1 to T2 during the try.`,
      body: [`Off within seconds if it hums. ${AT_MOST}`],
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
      then: { there: 'evened', none: 'no-volts', between: 'sags', undecided: 'open' },
    }),
    // A compressor that was tried against its own pressure has shown nothing.
    evened: judge('evened-out', {
      of: { stopped: 'stopped', tried: 'tries' },
      limits: { least: LIMITS.starts.least },
      quiet: ['rested'],
      then: { rested: 'dead-good', early: 'open', undecided: 'open' },
    }),
    'dead-good': found({
      among: {
        doubtful: { verdicts: NOT_GOOD, to: 'open' },
        measured: { verdicts: ['capacitor-good', 'capacitor-conditional-pass', 'new-part-right'], to: 'pointed' },
      },
      none: 'open',
    }),
    // Whose windings were read goes by what was seen: where that pointed at the fan, the compressor's were not.
    pointed: judge('motors', {
      of: { seen: '@round:observation' },
      limits: {},
      quiet: ['compressor', 'fan', 'both', 'undecided'],
      then: { compressor: 'assist', both: 'assist', fan: 'open', undecided: 'open' },
    }),
    assist: act('fit', {
      say: 'A senior decides about one try with a start assist. Fit it, dead.',
      body: [
        'By the maker’s list, never by its looks. Its wires as the list shows them, away from the terminals’ cover.',
      ],
      why: 'A compressor that starts with an assist is not seized. Without that try nobody calls it so.',
      yes: 'Assist fitted',
      words: ['fitted', 'assist fitted', 'assist in', 'installed'],
      cant: { label: 'No assist, or no senior', words: ['no assist', 'no senior', 'none', 'not tried'], to: 'open' },
      next: 'shut',
    }),
    shut: confirm({
      say: 'Close up and clear the unit. Qualified for one more try?',
      body: ['Rated gloves, eye protection.'],
      yes: 'Closed, clear, qualified for the try',
      words: ['closed', 'closed up', 'cover on', 'clear', 'all clear', 'buttoned up'],
      no: { label: 'Not qualified: a senior', words: ['not qualified'], to: 'open' },
      next: 'stopped-again',
    }),
    'stopped-again': offSince(
      'Before the try with the assist: since when is it off?',
      'rest-again',
      'assisted',
      'open',
    ),
    'rest-again': restedNow('assisted'),
    assisted: measure({
      say: 'One try with the assist: the lowest volts at T1 to T2 during it.',
      body: ['Off within seconds if it hums.'],
      callouts: [{ level: 'danger', text: 'Line voltage is present. Locked rotor overheats within seconds.' }],
      why: 'A try on sagging volts says nothing of the compressor.',
      picture: probes('V AC', ['T1', 'T2', 'line volts, also during the try']),
      circuit: 'line',
      fields: {
        v: volts('T1 to T2 during the try, the lowest', { over: false, words: ['t1t2', 'min', 'lowest'] }),
        amps: amps('Compressor amps', { over: false, optional: true, words: ['comp', 'amps'] }),
      },
      cant: 'open',
      next: 'assisted-held',
    }),
    'assisted-held': judge('volts-held', {
      of: { readings: 'assisted', plate: '@volts', unit: '@class' },
      limits: LIMITS.during,
      then: { there: 'evened-again', none: 'no-volts', between: 'sags', undecided: 'open' },
    }),
    'evened-again': judge('evened-out', {
      of: { stopped: 'stopped-again', tried: 'assisted' },
      limits: { least: LIMITS.starts.least },
      quiet: ['rested'],
      then: { rested: 'outcome', early: 'open', undecided: 'open' },
    }),
    outcome: choose({
      say: 'What came of the try with the assist?',
      why: 'Started, it is tight and not seized. Standing, with all else good, it is.',
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
        unsure: { label: 'Not sure', words: ['not sure', 'cant tell'], to: 'open' },
      },
    }),
    started: verdict({
      verdict: 'starts-with-an-assist',
      title: 'It starts with an assist: tight, not seized',
      says: ['Why it needs one is open: pressures, volts, a worn compressor.'],
      next: ['A senior decides whether the assist stays. The customer hears that it may not last.'],
      who: 'senior',
      judged: ['held'],
      evidence: ['which', 'tries', 'assisted', 'outcome'],
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
      judged: ['held', 'evened', 'assisted-held', 'evened-again'],
      evidence: ['which', 'stopped', 'tries', 'stopped-again', 'assisted', 'outcome'],
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
    sags: include(located, { exits: { raised: '!raised' }, needs: { plate: '@volts', unit: '@class' } }),
    open: verdict({
      verdict: 'no-start-undecided',
      title: 'Why it stands still is undecided',
      says: ['One of the readings that would decide it is missing. No motor is condemned.'],
      next: [
        'Capacitor, windings and ground, volts at the leads, a free shaft and five minutes’ rest would decide it.',
        'A senior sees this call. It stays off.',
      ],
      who: 'senior',
      judged: ['fed', 'at-board', 'held', 'evened', 'evened-again'],
      evidence: ['which', 'feed', 'board', 'switched', 'tries', 'assist', 'assisted', 'outcome'],
      raises: 'verdict',
      then: '!raised',
    }),
  },
});
