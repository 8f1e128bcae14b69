import { choose, confirm, flow, include, judge, measure, ohms, probes, verdict } from '../../engine/vocabulary.ts';
import { SILENT } from '../examples/control.ts';
import { LIMITS } from '../limits.ts';
import { printedCoil } from './printed-coil.ts';

/** The outdoor unit is silent: what needs no tool, then the fuses, then which circuit its coil is on. */
export const silent = flow({
  id: 'silent',
  version: 1,
  title: 'Outdoor unit silent',
  exits: ['control', 'indoor', 'dead-tests', 'blower', 'water', 'trips', 'settled', 'raised', 'done'],
  examples: SILENT,
  steps: {
    stat: choose({
      say: 'At the thermostat and the indoor unit: what do you find?',
      body: [
        'Display lit, COOL, set 5 °F below the room, left alone for five minutes. Blower? Float? Alarm? Breaker handle at mid?',
      ],
      why: 'What needs no tool comes first: a setting, a float, a breaker.',
      options: {
        calling: {
          label: 'It calls, the blower runs',
          words: [
            'calling',
            'calls',
            'calling blower on',
            'calling and blower runs',
            'stat calling',
            'blower on',
            'lit cool',
          ],
          to: 'fuses',
        },
        still: {
          label: 'It calls, the blower stands still too',
          words: ['no blower', 'blower off', 'blower still'],
          to: '!blower',
        },
        blank: {
          label: 'The display is blank',
          words: ['blank', 'stat blank', 'thermostat blank', 'display dead', 'no display'],
          to: '!indoor',
        },
        idle: {
          label: 'It doesn’t call: mode or setting',
          words: ['not calling', 'on heat', 'set too high', 'wrong mode', 'off'],
          to: 'set',
        },
        float: { label: 'Water, or the float is up', words: ['float', 'float up', 'water', 'pan full'], to: '!water' },
        alarm: {
          label: 'A leak alarm or a lockout',
          words: ['alarm', 'leak alarm', 'lockout', 'locked out'],
          to: 'alarm',
        },
        tripped: {
          label: 'A breaker or disconnect is off or at mid',
          words: ['breaker off', 'tripped', 'breaker mid', 'disconnect off', 'breaker tripped'],
          to: '!trips',
        },
        shed: {
          label: 'A utility’s load-control box holds it',
          words: ['load control', 'utility box', 'load shed'],
          to: 'shed',
        },
      },
      cant: 'barred',
    }),
    // What the other answers would have told of danger is asked alone: nobody goes past it unsure.
    barred: choose({
      say: 'One thing first: a leak alarm, water at the indoor unit, or a breaker or disconnect off or at mid?',
      body: ['By eye and ear, nothing touched. Whoever is in the house may look.'],
      why: 'Each of them comes before any test. The rest is found by measuring.',
      options: {
        none: {
          label: 'None of them, looked at each',
          words: ['none of them', 'none', 'looked', 'none of those'],
          to: 'fuses',
        },
        alarm: { label: 'A leak alarm or a lockout', words: ['alarm', 'leak alarm', 'lockout'], to: 'alarm' },
        water: { label: 'Water, or the float is up', words: ['water', 'float', 'float up', 'pan full'], to: '!water' },
        tripped: {
          label: 'A breaker or disconnect is off or at mid',
          words: ['breaker off', 'tripped', 'breaker mid', 'disconnect off', 'breaker tripped'],
          to: '!trips',
        },
        unsure: { label: 'Not sure of one of them', words: ['dont know', 'unsure', 'not sure'], to: 'not-seen' },
      },
    }),
    'not-seen': verdict({
      verdict: 'silent-not-looked-at',
      title: 'Why it is silent stays open: nobody could look at the indoor unit',
      says: ['Whether an alarm, water or a tripped breaker holds it is not known. Nothing is opened before that is.'],
      next: [
        'Somebody who gets to the indoor unit and the panel looks: alarm, water, breaker. That decides what is tested.',
        'It stays off until then. A senior sees this call.',
      ],
      who: 'senior',
      judged: [],
      evidence: ['stat', 'barred'],
      raises: 'verdict',
      then: '!raised',
    }),
    alarm: verdict({
      verdict: 'alarm-or-lockout',
      title: 'A leak alarm or a lockout: it counts as a leak',
      says: ['Until a certified person clears it, it is a leak. It is not bypassed and not reset twice.'],
      next: [
        'Air moving, no flame, nothing switched nearby. Out of closed rooms.',
        'A certified person clears it. Tell the customer to leave it alone.',
      ],
      who: 'certified',
      judged: [],
      evidence: ['stat', 'barred'],
      raises: 'verdict',
      then: '!raised',
    }),
    set: confirm({
      say: 'Set COOL, 5 °F below the room, and leave it for five minutes. Does it run?',
      why: 'A delay after each change keeps it out for minutes.',
      source: ['Five minutes: common practice, no single source'],
      yes: 'It runs now',
      words: ['runs', 'runs now', 'running', 'it runs', 'started'],
      no: { label: 'Still silent', words: ['still silent', 'silent', 'nothing', 'still nothing'], to: 'fuses' },
      next: 'was-set',
    }),
    'was-set': verdict({
      verdict: 'thermostat-was-set-wrong',
      title: 'The thermostat did not call: set right',
      says: ['After five minutes of call it runs. No part is at fault so far.'],
      next: ['Its figures are read before anybody leaves.', 'Show the customer the mode and the setting.'],
      who: 'junior',
      judged: [],
      evidence: ['stat', 'set'],
      then: '!settled',
    }),
    shed: verdict({
      verdict: 'held-by-load-control',
      title: 'The utility’s load control holds it off',
      says: ['It runs again when the utility lets it. No part is at fault.'],
      next: ['Tell the customer when their program ends, and whom to call at the utility.', 'Nobody bypasses the box.'],
      who: 'junior',
      judged: [],
      evidence: ['stat'],
      then: '!done',
    }),
    fuses: measure({
      say: 'Fuses or pull-out, out of the holder, in ohms.',
      body: ['No fuses: type can’t. Type ol for over range.'],
      why: 'A blown fuse has a cause, which comes first.',
      source: ['Fuse under 0.5 Ω: common practice, no single source'],
      picture: probes('Ω', ['Fuse, one end', 'Fuse, other end', 'under 0.5 Ω']),
      circuit: 'part',
      fields: {
        fuse1: ohms('First fuse', { words: ['fuses', 'fuse'] }),
        fuse2: ohms('Second fuse', { optional: true, words: ['fuses', 'fuse'] }),
        fuse3: ohms('Third fuse', { optional: true, words: ['fuses', 'fuse'] }),
      },
      cant: 'coil',
      next: 'judged',
    }),
    judged: judge('fuses', {
      of: { readings: 'fuses' },
      limits: LIMITS.fuses,
      quiet: ['good', 'undecided'],
      then: { good: 'coil', blown: 'blown', between: 'coil', undecided: 'coil' },
    }),
    blown: verdict({
      verdict: 'fuse-blown',
      title: 'A fuse is blown: its cause comes first',
      says: ['A fuse opens because of something behind it.'],
      next: [
        'No new fuse before the cause is found. The dead tests come next.',
        'Its size is at most the MOP on the nameplate.',
      ],
      who: 'junior',
      judged: ['judged'],
      evidence: ['fuses'],
      then: '!dead-tests',
    }),
    coil: include(printedCoil, { exits: { apart: '!control', 'not-apart': '!dead-tests' }, needs: {} }),
  },
});
