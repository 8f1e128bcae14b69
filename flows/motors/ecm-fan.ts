import { act, choose, confirm, flow, judge, measure, verdict, volts } from '../../engine/vocabulary.ts';
import { rested } from '../blower/drive.ts';
import { ECM_FAN } from '../examples/fan.ts';
import { LIMITS } from '../limits.ts';
import { probesPlaced } from './live-probes.ts';

/** An electronic outdoor fan stands still: no capacitor decides it. Closed looks, then volts at its plug, then a senior. */
export const ecmFan = flow({
  id: 'ecm-fan',
  version: 1,
  title: 'Electronic fan',
  exits: ['raised'],
  examples: ECM_FAN,
  steps: {
    turns: choose({
      say: 'Off at the means. Through the guard, touch nothing: what do you see?',
      body: ['Blade free of sticks, plug dry, wires whole. Wind alone turns a free blade.'],
      callouts: [
        {
          level: 'danger',
          text: 'No discharge tool and no capacitor procedure on an electronic fan. Its own bus holds for five minutes and more.',
        },
      ],
      why: 'A blocked blade or a wet plug stops a sound motor.',
      options: {
        free: { label: 'Free, dry, whole', words: ['free', 'dry', 'looks ok', 'nothing odd', 'fine'], to: 'rests' },
        blocked: { label: 'Blade blocked or rubbing', words: ['blocked', 'stuck', 'rubs', 'stick'], to: 'seen' },
        wet: { label: 'Plug or motor wet', words: ['wet', 'water'], to: 'seen' },
      },
      // Nothing live beside a plug that may be wet.
      cant: 'handed-over',
    }),
    // The cover comes off for the probes: its bus first.
    rests: rested('ready', 'handed-over'),
    ready: confirm({
      sitting: true,
      say: 'Live readings at the fan’s plug: are you qualified and equipped for them?',
      body: ['First the probes, with the cabinet locked and proved dead. Then people clear, power and a call.'],
      callouts: [
        {
          level: 'warning',
          text: 'Live readings are for qualified people. NFPA 70E and your employer’s program govern.',
        },
      ],
      yes: 'Qualified, equipped',
      words: ['qualified', 'ready', 'yes'],
      no: { label: 'Not here, not now', words: ['no', 'not now', 'not qualified'], to: 'handed-over' },
      next: 'spin',
    }),
    spin: act('spin', {
      say: 'Locked, its bus rested, proved dead: the plug dry and whole? Turn the blade by hand: free?',
      body: ['The plug apart and together again, pins straight, no green, no water.'],
      callouts: [{ level: 'warning', text: 'A blade cuts. Gloves stay on.' }],
      why: 'By sight a bearing that binds looks free. A blade that can’t turn stops a sound motor.',
      yes: 'Dry, whole, spins free',
      words: ['dry', 'free', 'dry and free', 'spins free'],
      no: { label: 'Wet, loose, rubbing or stiff', words: ['wet', 'loose', 'rubs', 'stiff'], to: 'seen' },
      cant: { label: 'Can’t reach it', to: 'handed-over' },
      next: 'probes',
    }),
    probes: probesPlaced('at the fan’s plug', 'line', 'handed-over'),
    line: measure({
      say: 'With a call: line volts at the fan’s plug.',
      callouts: [{ level: 'danger', text: 'Line voltage is present. The isolation has ended.' }],
      why: 'It has line volts always, and turns only on a command.',
      circuit: 'line',
      fields: { v: volts('Line volts at the plug', { over: false, words: ['line', 'volts', 'plug'] }) },
      cant: 'handed-over',
      next: 'there',
    }),
    there: judge('fed-volts', {
      of: { readings: 'line', plate: '@volts', unit: '@class' },
      limits: LIMITS.fedVolts,
      then: { there: 'command', none: 'unfed', between: 'handed-over', undecided: 'handed-over' },
    }),
    command: choose({
      say: 'Command or data at its plug, as the maker says: is it there?',
      body: ['By the maker’s own test alone. 24 V, a pulse or data: its sheet says which.'],
      options: {
        there: { label: 'There', words: ['there', 'present', 'yes', 'command ok'], to: 'motor' },
        gone: { label: 'Not there', words: ['not there', 'none', 'no command'], to: 'no-command' },
        unknown: { label: 'Not tested', words: ['not tested', 'dont know', 'not sure', 'no sheet'], to: 'handed-over' },
      },
    }),
    seen: verdict({
      verdict: 'electronic-fan-blocked-or-wet',
      title: 'The electronic fan is blocked or wet: no motor is condemned on that',
      says: ['A blade that can’t turn, or water in the plug, stops a sound motor.'],
      next: ['A senior has it cleared or dried with the power locked, its bus rested, and tried again.'],
      who: 'senior',
      judged: [],
      evidence: ['turns', 'spin'],
      raises: 'verdict',
      then: '!raised',
    }),
    unfed: verdict({
      verdict: 'electronic-fan-not-fed',
      title: 'No line volts at the electronic fan: its feed first',
      says: ['The motor is not on volts, so nothing is known of it.'],
      next: ['Connector, board, contactor: a senior leads on.'],
      who: 'senior',
      judged: ['there'],
      evidence: ['line'],
      raises: 'verdict',
      then: '!raised',
    }),
    'no-command': verdict({
      verdict: 'electronic-fan-not-called',
      title: 'Line volts are there, the command isn’t: what calls it',
      says: ['A board or its sensor decides the fan’s speed. The motor is not condemned.'],
      next: ['A senior leads on by the maker’s sheet.'],
      who: 'senior',
      judged: ['there'],
      evidence: ['line', 'command'],
      raises: 'verdict',
      then: '!raised',
    }),
    motor: verdict({
      verdict: 'electronic-motor-suspect',
      title: 'Line and command there, free and dry, and it stands still: motor or module',
      says: ['That is all four. The maker’s own test decides between motor and module.'],
      next: [
        'A senior confirms with the maker’s test before anything is ordered.',
        'Tell the customer that it is the fan’s motor or its electronics.',
      ],
      who: 'senior',
      judged: ['there'],
      evidence: ['turns', 'spin', 'line', 'command'],
      raises: 'verdict',
      then: '!raised',
    }),
    'handed-over': verdict({
      verdict: 'electronic-fan-handed-over',
      title: 'The electronic fan stands still: over to a senior',
      says: ['“No capacitor” condemns no electronic fan. Line volts, command, a free blade and a dry connector do.'],
      next: ['A senior takes it from here, with the maker’s test.'],
      who: 'senior',
      judged: ['there'],
      evidence: ['turns', 'line', 'command'],
      raises: 'not-covered',
      then: '!raised',
    }),
  },
});
