import {
  act,
  choose,
  confirm,
  flow,
  form,
  found,
  judge,
  measure,
  one,
  verdict,
  volts,
} from '../../engine/vocabulary.ts';
import { QUALIFIED } from '../cautions.ts';
import { foreignFound } from '../control/foreign.ts';
import { BLOWER_LIVE } from '../examples/blower.ts';
import { LIMITS } from '../limits.ts';
import { probesPlaced } from '../motors/live-probes.ts';
import { INDOOR_VOLTS } from '../unit.ts';
import { rested } from './drive.ts';

const LIVE = { level: 'danger', text: 'Line voltage is present. The isolation has ended.' } as const;

/** The blower gets its call or not, and its volts or not: the live half, after the dead tests or where there are none. */
export const blowerLive = flow({
  id: 'blower-live',
  version: 1,
  title: 'Blower, live',
  exits: ['source', 'left', 'raised'],
  examples: BLOWER_LIVE,
  steps: {
    ready: confirm({
      sitting: true,
      say: 'Live readings at the indoor unit: outdoor unit still off, people clear, qualified and equipped?',
      body: ['First the probes, with the indoor unit locked and proved dead. Then power and fan at ON. One sitting.'],
      callouts: [QUALIFIED],
      why: 'Good dead tests leave the call, the relay, and a motor that fails only on volts.',
      yes: 'Qualified, equipped',
      words: ['qualified', 'ready', 'yes'],
      no: { label: 'Not here, not now', words: ['no', 'not now', 'not qualified'], to: 'open' },
      next: 'probes',
    }),
    // An electronic motor’s bus has rested before this page; a capacitor is discharged by make-dead.
    probes: probesPlaced('at the indoor board', 'call', 'open'),
    call: measure({
      say: 'Fan at ON: volts G to C at the indoor board.',
      callouts: [LIVE],
      why: 'Without a call the board has nothing to switch.',
      source: ['24 to 28 V, 20.4 V the least: common practice, no single source'],
      circuit: 'line',
      fields: { v: volts('G to C', { over: false, words: ['g-c', 'gc', 'g to c'] }) },
      cant: 'open',
      next: 'called',
    }),
    called: judge('volts-there', {
      of: { readings: 'call' },
      limits: LIMITS.controlThere,
      then: { there: 'motor', none: 'not-called', between: 'open', high: 'foreign', undecided: 'open' },
    }),
    'not-called': verdict({
      verdict: 'no-fan-call',
      title: 'No fan call reaches the board: thermostat, its cable, or no 24 V',
      says: ['G to C reads nothing with the fan at ON. The motor is not in question.'],
      next: [
        'R to C at the board comes next: there, the thermostat or its cable. Not there: the source of the 24 V.',
        'Both units stay off. Tell the customer it is not the motor.',
      ],
      who: 'junior',
      judged: ['called'],
      evidence: ['call'],
      then: '!source',
    }),
    motor: choose({
      say: 'The call is there. What drives the blower?',
      options: {
        psc: { label: 'PSC with a run capacitor', words: ['psc', 'capacitor'], to: 'feed' },
        constant: {
          label: 'Electronic, taps of 24 V (constant torque)',
          words: ['constant torque', 'taps', 'ecm'],
          to: 'plug',
        },
        variable: {
          label: 'Electronic, variable or communicating',
          words: ['variable', 'variable speed', 'communicating'],
          to: 'coded',
        },
      },
      cant: 'open',
    }),
    feed: measure({
      say: 'Volts at the blower’s leads: common to the speed in use.',
      callouts: [LIVE],
      why: 'Volts there and no start: the motor. None: the board’s relay or a lead.',
      circuit: 'line',
      fields: {
        v: volts('At the blower’s leads', {
          over: false,
          words: ['leads', 'volts', 'blower'],
        }),
      },
      cant: 'open',
      next: 'fed',
    }),
    fed: judge('fed-volts', {
      of: { readings: 'feed', plate: '@cabinet:volts', unit: null },
      limits: LIMITS.fedVolts,
      then: { there: 'measured', none: 'relay', between: 'open', undecided: 'open' },
    }),
    measured: found({
      among: {
        // Volts and a good capacitor say nothing of a shaft that nobody turned.
        unturned: { verdicts: ['blower-not-spun'], to: 'open' },
        good: { verdicts: ['capacitor-good', 'capacitor-conditional-pass', 'new-part-right'], to: 'electric' },
      },
      none: 'open',
    }),
    electric: verdict({
      verdict: 'blower-motor-electric',
      title: 'The blower has volts and a good capacitor, turns free, and doesn’t start: replace the motor',
      says: ['Capacitor measured, volts at its leads, free by hand: what is left is the motor.'],
      next: [
        'The motor that the nameplate asks for, with the capacitor it asks for. It waits for the part.',
        'Both units stay off until it is in. Tell the customer.',
      ],
      who: 'junior',
      judged: ['fed'],
      evidence: ['call', 'feed'],
      then: '!left',
    }),
    plug: measure({
      say: 'Line volts at the electronic blower’s plug. They are there always, with a call or without.',
      callouts: [LIVE],
      body: ['Its nameplate’s volts too: 120 V may be right, or one leg of two.'],
      why: 'It has line volts always and turns on 24 V at one tap.',
      circuit: 'line',
      fields: {
        v: volts('Line at the plug', { over: false, words: ['line', 'plug', 'volts'] }),
        volts: one('Volts printed', INDOOR_VOLTS, { optional: true, as: 'cabinet:volts' }),
      },
      cant: 'open',
      next: 'plugged',
    }),
    plugged: judge('fed-volts', {
      of: { readings: 'plug', plate: '@cabinet:volts', unit: null },
      limits: LIMITS.fedVolts,
      then: { there: 'tap', none: 'unfed', between: 'open', undecided: 'which-volts' },
    }),
    'which-volts': form({
      say: 'What volts does the blower’s nameplate print?',
      why: 'By its own print alone the line at its plug is right or wrong.',
      parts: { volts: one('Volts printed', INDOOR_VOLTS, { as: 'cabinet:volts' }) },
      cant: 'open',
      next: 'plugged-by-print',
    }),
    'plugged-by-print': judge('fed-volts', {
      of: { readings: 'plug', plate: '@cabinet:volts', unit: null },
      limits: LIMITS.fedVolts,
      then: { there: 'tap', none: 'unfed', between: 'open', undecided: 'open' },
    }),
    tap: measure({
      say: '24 V at each of its taps to C, fan at ON: the highest of them.',
      body: ['Every tap once: a call runs the motor at one of them, and which one is the board’s choice.'],
      callouts: [LIVE],
      why: 'One tap without volts says nothing while another may have them.',
      circuit: 'line',
      fields: {
        v: volts('Highest at a tap', {
          over: false,
          words: ['tap', 'taps', '24', 'highest'],
        }),
      },
      cant: 'open',
      next: 'tapped',
    }),
    tapped: judge('volts-there', {
      of: { readings: 'tap' },
      limits: LIMITS.controlThere,
      then: { there: 'bus-first', none: 'relay', between: 'open', high: 'foreign', undecided: 'open' },
    }),
    'bus-first': rested('dry', 'open'),
    dry: act('spin', {
      say: 'Locked, its bus rested, proved dead: plugs dry and whole? Turn the wheel by hand: free?',
      body: ['The plugs apart and together again, pins straight, no green, no water.'],
      callouts: [
        {
          level: 'danger',
          text: 'Its own bus holds for five minutes and more, or what its label says: wait that out first.',
        },
        { level: 'warning', text: 'Sheet metal and the wheel’s vanes cut. Gloves stay on.' },
      ],
      why: 'A wet plug or a wheel that binds stops a sound motor.',
      yes: 'Dry, whole, spins free',
      words: ['dry', 'free', 'dry and free', 'spins free'],
      no: { label: 'Wet, loose, blocked or stiff', words: ['wet', 'loose', 'blocked', 'stiff'], to: 'held' },
      cant: { label: 'Can’t reach it', to: 'open' },
      next: 'suspect',
    }),
    held: verdict({
      verdict: 'electronic-blower-blocked-or-wet',
      title: 'The electronic blower is wet, loose, blocked or stiff: that first, no motor on volts',
      says: [
        'A wheel that can’t turn, or water in the plug, stops a sound motor. Stiff with the wheel clear: bearings.',
      ],
      next: [
        'A senior has it cleared, dried or its bearings judged, locked and rested, and tried again.',
        'Both units stay off. Tell the customer.',
      ],
      who: 'senior',
      judged: ['plugged', 'plugged-by-print', 'tapped'],
      evidence: ['plug', 'tap', 'dry'],
      raises: 'verdict',
      then: '!raised',
    }),
    relay: verdict({
      verdict: 'board-blower-relay',
      title: 'A fan call and no volts at the blower: the board’s relay or a lead',
      says: ['G to C is there, and nothing comes out to the motor: 0 V at its leads, or at every tap.'],
      next: [
        'The lead and its push-on first, dead. Then the board, by the maker’s number.',
        'Both units stay off until then. Tell the customer.',
      ],
      who: 'junior',
      judged: ['called', 'fed', 'plugged', 'plugged-by-print', 'tapped'],
      evidence: ['call', 'feed', 'plug', 'tap'],
      then: '!left',
    }),
    suspect: verdict({
      verdict: 'electronic-blower-suspect',
      title: 'Line and command there, dry and free, and it stands still: motor or module',
      says: ['That is all four. The maker’s own test decides between motor and module.'],
      next: [
        'A senior confirms with the maker’s test before anything is ordered.',
        'Both units stay off. Tell the customer.',
      ],
      who: 'senior',
      judged: ['plugged', 'plugged-by-print', 'tapped'],
      evidence: ['plug', 'tap', 'dry'],
      raises: 'verdict',
      then: '!raised',
    }),
    unfed: verdict({
      verdict: 'electronic-blower-not-fed',
      title: 'No line volts at the electronic blower: its feed first',
      says: ['The motor is not on volts, so nothing is known of it.'],
      next: ['Door switch, breaker, connector. A senior leads on.'],
      who: 'senior',
      judged: ['plugged', 'plugged-by-print'],
      evidence: ['plug'],
      raises: 'verdict',
      then: '!raised',
    }),
    coded: verdict({
      verdict: 'electronic-blower-handed-over',
      title: 'A variable or communicating blower: over to a senior with its code',
      says: ['Its code and the maker’s test decide. A code alone replaces no board and no motor.'],
      next: ['A senior takes it from here. Both units stay off.'],
      who: 'senior',
      judged: ['called'],
      evidence: ['call', 'motor'],
      raises: 'not-covered',
      then: '!raised',
    }),
    foreign: foreignFound(['called', 'tapped'], ['call', 'tap']),
    open: verdict({
      verdict: 'blower-no-start-undecided',
      title: 'Why the blower stands still is undecided',
      says: ['One of the readings that would decide it is missing. No motor is condemned.'],
      next: [
        'G to C; of a PSC motor its capacitor, its spin and the volts at its leads; of an electronic one its plate, plug and taps.',
        'A senior sees this call. Both units stay off.',
      ],
      who: 'senior',
      judged: ['called', 'fed', 'plugged', 'plugged-by-print', 'tapped'],
      evidence: ['call', 'feed', 'plug', 'tap', 'dry'],
      raises: 'verdict',
      then: '!raised',
    }),
  },
});
