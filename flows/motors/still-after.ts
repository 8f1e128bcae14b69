import { choose, confirm, flow, include, verdict } from '../../engine/vocabulary.ts';
import { STILL_AFTER } from '../examples/fan.ts';
import { located } from '../supply/located.ts';
import { byKind } from '../unit.ts';
import { compressorTries } from './compressor-tries.ts';
import { ecmFan } from './ecm-fan.ts';
import { fanFed } from './fan-fed.ts';
import { AT_MOST, BETWEEN_STARTS, REST } from './starts.ts';

/** The dead tests found nothing or were put right, and one motor still stands: volts where it is fed. One live sitting. */
export const stillAfter = flow({
  id: 'still-after',
  version: 1,
  title: 'Still standing with everything good',
  exits: ['again', 'replace', 'left', 'raised'],
  examples: STILL_AFTER,
  steps: {
    which: choose({
      sitting: true,
      say: 'Call there, contactor in: which motor stands still?',
      body: [`${REST} after a stop, and ${AT_MOST.toLowerCase()} Pressures have to even out.`],
      callouts: [
        {
          level: 'warning',
          text: 'Live readings go on, for qualified people with gloves and eye protection. NFPA 70E and your employer’s program govern.',
        },
      ],
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
    'fan-kind': byKind('feed', { ecm: 'electronic', closed: 'open', undecided: 'open' }),
    electronic: include(ecmFan, { exits: { raised: '!raised' }, needs: {} }),
    ...fanFed,
    ...compressorTries,
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
