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
import { HAS_TO_COOL, MOTOR } from '../dead-block.ts';
import { STILL_AFTER } from '../examples/fan.ts';
import { LIMITS } from '../limits.ts';
import { located } from '../supply/located.ts';
import { KINDS } from '../unit.ts';
import { ecmFan } from './ecm-fan.ts';
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
  ...HAS_TO_COOL,
  'overload-stays-open',
  'compressor-grounded',
  'low-to-ground',
  'ground-not-located',
  'ground-gone',
  'fuses-contactor-ground-not-taken',
] as const;

/**
 * With one of these nobody read the shaft or the windings of the motor that is in there now, or they read bad: such a
 * motor is called nothing on volts. A motor that was fitted in this round is one of them.
 */
const FAN_NOT_READ = [
  ...MOTOR,
  'fan-not-spun',
  'fan-blade-rubs',
  'fan-windings-not-taken',
  'fan-windings-undecided',
  'fan-protector-open',
] as const;
/** The other run capacitor of the cabinet was read within its print, or a right one was fitted in its place. */
const OTHER_READ = [
  'block/another/capacitor-good',
  'block/another/capacitor-conditional-pass',
  'block/yet-another/capacitor-good',
  'block/yet-another/capacitor-conditional-pass',
  'repair/new-other/new-part-right',
] as const;
const NO_CLAMP = 'No clamp meter, no try: skip it.';
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
        fan: { label: 'The fan', words: ['fan', 'fan still', 'the fan'], to: 'fan-kind' },
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
      next: 'fan-kind',
    }),
    // The run capacitor of a unit with an electronic fan is the compressor's: it says nothing of this motor.
    'fan-kind': judge('unit-class', {
      of: { unit: '@class' },
      limits: {},
      quiet: KINDS,
      then: {
        psc: 'feed',
        ecm: 'electronic',
        'three-phase': 'feed',
        refrigeration: 'feed',
        closed: 'open',
        undecided: 'open',
      },
    }),
    electronic: include(ecmFan, { exits: { raised: '!raised' }, needs: {} }),
    feed: measure({
      say: 'Volts where the fan’s leads end, under the call: on the board’s fan terminals or at the contactor.',
      callouts: [{ level: 'danger', text: 'Line voltage is present. Never push a fan with power on.' }],
      why: 'Volts there, free, its windings read through the same leads, no start: the motor. No volts: its relay or a lead.',
      picture: probes('V AC', ['Fan’s feed', 'Its other lead', 'the nameplate’s volts, or nothing']),
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
    fed: judge('fed-volts', {
      of: { readings: 'feed', plate: '@volts', unit: '@class' },
      limits: LIMITS.fedVolts,
      then: { there: 'fan-read', none: 'board', between: 'open', undecided: 'open' },
    }),
    // Volts where its leads end are volts at the motor only where its windings were read through these leads.
    'fan-read': judge('motors', {
      of: { seen: '@round:observation' },
      limits: {},
      quiet: ['compressor', 'fan', 'both', 'undecided'],
      then: { compressor: 'open', both: 'cleared', fan: 'cleared', undecided: 'open' },
    }),
    cleared: found({
      among: {
        // Volts and a good capacitor say nothing of a shaft that nobody turned, nor of windings that nobody read.
        unturned: { verdicts: FAN_NOT_READ, to: 'open' },
        measured: {
          verdicts: ['capacitor-good', 'capacitor-conditional-pass', 'section-fails-value', 'new-part-right'],
          to: 'sections',
        },
      },
      none: 'open',
    }),
    // A part with one section is the compressor's: the fan's own is another part, and that one was read or not.
    sections: judge('print-sections', {
      of: { label: '@cabinet:label' },
      limits: {},
      quiet: ['dual', 'single', 'undecided'],
      then: { dual: 'motor', single: 'whose', undecided: 'open' },
    }),
    whose: judge('unit-class', {
      of: { unit: '@class' },
      limits: {},
      quiet: KINDS,
      then: {
        psc: 'fans-own',
        ecm: 'open',
        // A three-phase compressor has none: the one that is there is the fan's.
        'three-phase': 'motor',
        refrigeration: 'fans-own',
        closed: 'open',
        undecided: 'open',
      },
    }),
    'fans-own': found({ among: { read: { verdicts: OTHER_READ, to: 'motor' } }, none: 'open' }),
    motor: verdict({
      verdict: 'fan-motor-electric',
      title: 'The fan motor has volts and a good capacitor, turns free, and doesn’t start: replace the motor',
      says: [
        'Capacitor measured, volts where its leads end, windings read through these leads, free by hand: the motor is left.',
      ],
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
    'at-board': judge('fed-volts', {
      of: { readings: 'board', plate: '@volts', unit: '@class' },
      limits: LIMITS.fedVolts,
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
      body: [`Off within seconds if it hums. ${AT_MOST}`, NO_CLAMP],
      callouts: [{ level: 'danger', text: 'Line voltage is present. Locked rotor overheats within seconds.' }],
      why: 'No amps is an open wire or overload, not a seized compressor. Locked-rotor amps alone seize none either.',
      circuit: 'line',
      fields: {
        v: volts('T1 to T2 during the try, the lowest', { over: false, words: ['t1t2', 'min', 'lowest'] }),
        comp: amps('Compressor amps', { over: false, words: ['comp', 'amps'] }),
      },
      cant: 'open',
      next: 'held',
    }),
    held: judge('volts-held', {
      of: { readings: 'tries', plate: '@volts', unit: '@class' },
      limits: LIMITS.during,
      then: { there: 'drew', none: 'no-volts', between: 'sags', undecided: 'open' },
    }),
    // Only a motor that draws its locked-rotor amps stalls; one that draws nothing gets nothing.
    drew: judge('running-amps', {
      of: { amps: 'tries', plate: '@lra' },
      limits: LIMITS.runningAmps,
      then: {
        'not-starting': 'evened',
        'not-running': 'nothing-drawn',
        running: 'open',
        'above-mcc': 'open',
        unbalanced: 'open',
        'fan-high': 'open',
        'fan-not-running': 'open',
        undecided: 'open',
      },
    }),
    // A compressor that was tried against its own pressure has shown nothing.
    evened: judge('evened-out', {
      of: { stopped: 'stopped', tried: 'tries', ran: '@round:ran' },
      limits: { least: LIMITS.starts.least, typed: LIMITS.starts.typed },
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
      say: 'One try with the assist: compressor amps, and the lowest volts at T1 to T2 during it.',
      body: ['Off within seconds if it hums.', NO_CLAMP],
      callouts: [{ level: 'danger', text: 'Line voltage is present. Locked rotor overheats within seconds.' }],
      why: 'A try on sagging volts, or without its amps, says nothing of the compressor.',
      picture: probes('V AC', ['T1', 'T2', 'line volts, also during the try']),
      circuit: 'line',
      fields: {
        v: volts('T1 to T2 during the try, the lowest', { over: false, words: ['t1t2', 'min', 'lowest'] }),
        comp: amps('Compressor amps', { over: false, words: ['comp', 'amps'] }),
      },
      cant: 'open',
      next: 'assisted-held',
    }),
    'assisted-held': judge('volts-held', {
      of: { readings: 'assisted', plate: '@volts', unit: '@class' },
      limits: LIMITS.during,
      then: { there: 'drew-again', none: 'no-volts', between: 'sags', undecided: 'open' },
    }),
    'drew-again': judge('running-amps', {
      of: { amps: 'assisted', plate: '@lra' },
      limits: LIMITS.runningAmps,
      then: {
        'not-starting': 'evened-again',
        'not-running': 'nothing-drawn',
        running: 'evened-again',
        'above-mcc': 'open',
        unbalanced: 'open',
        'fan-high': 'open',
        'fan-not-running': 'open',
        undecided: 'open',
      },
    }),
    'evened-again': judge('evened-out', {
      of: { stopped: 'stopped-again', tried: 'assisted', ran: 'tries' },
      limits: { least: LIMITS.starts.least, typed: LIMITS.starts.typed },
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
          to: 'stalled',
        },
        unsure: { label: 'Not sure', words: ['not sure', 'cant tell'], to: 'open' },
      },
    }),
    stalled: judge('running-amps', {
      of: { amps: 'assisted', plate: '@lra' },
      limits: LIMITS.runningAmps,
      quiet: ['not-starting', 'running'],
      then: {
        'not-starting': 'seized',
        'not-running': 'open',
        running: 'open',
        'above-mcc': 'open',
        unbalanced: 'open',
        'fan-high': 'open',
        'fan-not-running': 'open',
        undecided: 'open',
      },
    }),
    'nothing-drawn': verdict({
      verdict: 'compressor-draws-nothing',
      title: 'Volts there and no amps: an open wire, plug or overload, no seized compressor',
      says: ['Volts held at T1 to T2, and the compressor drew nothing. A seized one draws its locked-rotor amps.'],
      next: [
        'Off and dead again. An assist comes out. The wires on C, R and S, then the three pairs from the harness ends.',
        'Open pairs on a hot shell are its overload: hours, then it reads again.',
        'Tell the customer that it is not known yet whether it is a wire or the compressor.',
      ],
      who: 'junior',
      judged: ['held', 'drew', 'assisted-held', 'drew-again'],
      evidence: ['which', 'tries', 'assisted'],
      then: '!again',
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
        'Locked-rotor amps in both tries while the volts held, five minutes evened out, an assist tried.',
        'Capacitor within its label, windings and ground good.',
      ],
      next: ['A senior confirms before anybody tells the customer. Why: liquid, oil, heat.'],
      who: 'senior',
      judged: ['held', 'drew', 'evened', 'assisted-held', 'evened-again', 'drew-again'],
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
      says: ['A reading that would decide it is missing, or doesn’t fit the rest. No motor is condemned.'],
      next: [
        'Capacitor, windings and ground, a free shaft, volts, amps beside the LRA and five minutes’ rest would decide it.',
        'A senior sees this call. It stays off.',
      ],
      who: 'senior',
      judged: ['fed', 'at-board', 'held', 'drew', 'evened', 'evened-again', 'drew-again'],
      evidence: ['which', 'feed', 'board', 'switched', 'tries', 'assist', 'assisted', 'outcome'],
      raises: 'verdict',
      then: '!raised',
    }),
  },
});
