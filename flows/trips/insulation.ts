import {
  flow,
  form,
  include,
  judge,
  measure,
  megohms,
  one,
  probes,
  several,
  verdict,
} from '../../engine/vocabulary.ts';
import { INSULATION } from '../examples/trips.ts';
import { LIMITS } from '../limits.ts';
import { windingEmptied } from './winding-emptied.ts';

const asked = { state: 'setup', test: 'setup', machine: 'setup', maker: 'reading', temperature: null } as const;

/** Insulation of the compressor's windings to ground: one try, which may ask for another. After a trip or a fuse it decides. */
export const insulation = flow({
  id: 'insulation',
  version: 1,
  title: 'Insulation',
  exits: ['good', 'left', 'raised', 'again'],
  examples: INSULATION,
  steps: {
    setup: form({
      say: 'Insulation test of the compressor: what is so, and what do you test with?',
      body: ['Leads off at its harness, crankcase heater off, boards unplugged. Never on a compressor under vacuum.'],
      callouts: [
        {
          level: 'danger',
          text: 'Under vacuum its terminals arc at low pressure. 500 V DC at most, never into electronics.',
        },
      ],
      why: 'An ohmmeter finds dead shorts only. After a breaker or a fuse opened, the insulation test decides.',
      source: ['500 V DC for windings below 1000 V: table of a motor-repair body (secondary source)'],
      parts: {
        state: several('What is so', {
          none: {
            label: 'Leads off, heater off, nothing connected',
            words: ['leads off', 'nothing connected', 'all off', 'ready'],
            alone: true,
          },
          cold: { label: 'Shell cold, may hold liquid', words: ['cold', 'cold shell', 'shell cold'] },
          heater: { label: 'Heater still on or connected', words: ['heater on'] },
          electronics: { label: 'A board is still connected', words: ['board connected'] },
          vacuum: { label: 'Under vacuum or open to it', words: ['vacuum', 'under vacuum'] },
        }),
        machine: one('Compressor', {
          scroll: { label: 'Scroll', words: ['scroll compressor'] },
          reciprocating: { label: 'Reciprocating', words: ['recip', 'piston'] },
          unknown: { label: 'Not known', words: ['dont know', 'not sure'] },
        }),
        test: one('Tester', {
          '500': { label: '500 V DC', words: ['500', '500v', 'megger'] },
          '250': { label: '250 V DC', words: ['250', '250v'] },
          meter: { label: 'An ohmmeter alone', words: ['ohmmeter', 'meter only', 'multimeter'] },
        }),
      },
      cant: 'not-taken',
      next: 'before',
    }),
    before: judge('insulation', {
      of: { ...asked, maker: null, reading: null, earlier: null, earlierTest: null },
      limits: LIMITS.insulation,
      then: {
        ask: 'reading',
        good: 'reading',
        'none-found': 'reading',
        low: 'reading',
        'warm-first': 'reading',
        grounded: 'reading',
        refused: 'not-now',
        undecided: 'not-taken',
      },
    }),
    reading: measure({
      say: 'Each winding terminal to bare metal for one minute, the lowest, in megohms.',
      body: ['Bare copper, not paint. Type ol for over range. The maker’s least, where it is printed.'],
      callouts: [{ level: 'warning', text: 'The test charges the winding. Fingers off until it is discharged.' }],
      why: 'The maker’s figure decides; else 0.5 MΩ for a scroll, 2 MΩ for a reciprocating compressor.',
      source: ['Least insulation: two compressor makers’ papers (secondary sources)'],
      picture: probes('MΩ', ['Winding terminal', 'Bare copper', 'the maker’s least, or 0.5 and 2 MΩ']),
      circuit: 'part',
      fields: {
        megohms: megohms('Winding to ground, the lowest', { words: ['insulation', 'meg', 'megs', 'ground'] }),
        maker: megohms('The maker’s least, where printed', { optional: true, words: ['maker', 'printed'] }),
      },
      cant: 'not-taken',
      next: 'emptied',
    }),
    // Before anything is concluded: also a low reading put its volts on the winding.
    emptied: include(windingEmptied, {
      exits: { empty: 'judged', unproved: 'charged' },
      needs: { test: 'setup' },
      again: { times: 3, spent: 'charged' },
    }),
    judged: judge('insulation', {
      of: { ...asked, reading: 'reading', earlier: '~reading', earlierTest: '~setup' },
      limits: LIMITS.insulation,
      says: { low: 'Once is no verdict. Heater off, leads clean: read it again.' },
      then: {
        ask: 'not-taken',
        good: '!good',
        // Weaker than the test that a breaker or a fuse asks for: it energises nothing.
        'none-found': 'not-taken',
        low: '!again',
        'warm-first': 'warm',
        grounded: 'grounded',
        refused: 'not-now',
        undecided: 'not-taken',
      },
    }),
    warm: verdict({
      verdict: 'insulation-cold-and-low',
      title: 'Low on a cold shell: warm it for 12 to 24 hours and repeat',
      says: ['Liquid refrigerant in a cold shell reads low. That is no ground yet.'],
      next: [
        'Crankcase heater on, means to the compressor open, 12 to 24 hours. Then the test again.',
        'Tell the customer why it takes a day.',
      ],
      who: 'junior',
      judged: ['judged'],
      evidence: ['setup', 'reading'],
      then: '!left',
    }),
    grounded: verdict({
      verdict: 'compressor-insulation-failed',
      title: 'The compressor’s insulation failed twice: it stays off',
      says: ['At its own harness, heater off, not cold, below the least on two readings.'],
      next: [
        'Never energise it. Leave it locked and tagged.',
        'A senior confirms; a certified person takes the acid test.',
      ],
      who: 'senior',
      judged: ['judged'],
      evidence: ['setup', 'reading', '~reading'],
      raises: 'verdict',
      then: '!raised',
    }),
    'not-now': verdict({
      verdict: 'insulation-not-now',
      title: 'No insulation test in this state',
      says: ['Vacuum, a connected board or too many volts would do harm. Nothing was tested.'],
      next: [
        'Vacuum: a certified person breaks it first. Boards: unplug them.',
        'It stays off until it was tested. A senior sees this call.',
      ],
      who: 'senior',
      judged: ['before', 'judged'],
      evidence: ['setup'],
      raises: 'verdict',
      then: '!raised',
    }),
    charged: verdict({
      verdict: 'winding-charge-not-gone',
      title: 'The winding is not proved discharged: hands off',
      says: ['The insulation test left a charge, and no reading shows that it is gone.'],
      next: [
        'Hands and tools out. Leave it locked, cover on.',
        'A senior brings a tool and a meter that prove it. It stays off.',
      ],
      who: 'senior',
      judged: [],
      evidence: ['setup', 'reading'],
      raises: 'verdict',
      then: '!raised',
    }),
    'not-taken': verdict({
      verdict: 'insulation-not-taken',
      title: 'The insulation was not settled: no power yet',
      says: ['After a breaker or a fuse opened, an ohmmeter alone says too little.'],
      next: ['A senior brings a tester, or decides about one controlled start.', 'It stays off.'],
      who: 'senior',
      judged: ['judged'],
      evidence: ['setup', 'reading', '~reading'],
      raises: 'verdict',
      then: '!raised',
    }),
  },
});
