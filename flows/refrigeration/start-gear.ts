import {
  confirm,
  flow,
  judge,
  measure,
  microfarads,
  ohms,
  one,
  type PartSpec,
  verdict,
} from '../../engine/vocabulary.ts';
import { CURRENT, POTENTIAL, PTC } from '../examples/second.ts';
import { LIMITS } from '../limits.ts';
import { REST } from '../motors/starts.ts';

/** Verdicts that end in another start capacitor, its resistor or its relay. */
export const START_GEAR = [
  'start-capacitor-by-sight',
  'start-capacitor-fails',
  'bleed-resistor-open',
  'start-relay-fails',
] as const;
const NEXT = [
  'Replace a relay by its code, never by its looks. Relay and start capacitor go together.',
  'Finish the dead tests. A second fault is usual.',
  'Not proven until the restart numbers are in.',
];
const PRACTICE = 'Bleed resistor 10 to 20 kΩ; contacts and coils of start relays: common practice, no single source';
const start = microfarads('Start capacitor', { words: ['cap', 'value'] });
const bleed = ohms('Bleed resistor, one end off', { words: ['resistor', 'alone'], optional: true });
const body = [
  'Capacitance across its terminals, wires and one end of the resistor off.',
  'Across the capacitor the resistor reads like a leak: 10 to 20 kΩ there is the resistor.',
];

/** The capacitor and its resistor: the same for every relay. */
const shared = {
  value: judge('start-capacitor', {
    of: { label: 'label', readings: 'readings', earlier: '~readings', ohms: null, leads: 'leads' },
    limits: LIMITS.startCapacitor,
    says: { repeat: 'Outside its range, or no verdict. Zero the leads, check the range, and repeat once.' },
    then: {
      pass: 'bleed',
      repeat: '!again',
      low: 'fails',
      high: 'high',
      leads: 'leads',
      open: 'fails',
      shorted: 'fails',
      undecided: 'unclear',
    },
  }),
  leads: confirm({
    say: 'Do these leads read another capacitor, or a short in ohms?',
    why: 'Next to nothing is open only on leads that read something else.',
    restsOn: ['readings'],
    yes: 'The leads read',
    no: { label: 'They don’t', to: 'value' },
    next: 'value',
  }),
  fails: verdict({
    verdict: 'start-capacitor-fails',
    title: 'The start capacitor is below its printed range, open or shorted: replace it',
    says: ['A start capacitor is judged by the range printed on it, with the meter’s doubt.'],
    next: NEXT,
    who: 'junior',
    judged: ['value'],
    evidence: ['label', 'readings', '~readings'],
    then: 'bleed',
  }),
  high: verdict({
    verdict: 'start-capacitor-reads-high',
    title: 'The start capacitor reads above its printed range twice: flagged',
    says: ['Makers let a start capacitor exceed what it prints. That condemns nothing by itself.'],
    next: ['A senior compares the print with the diagram: is it the part that belongs here?', 'Go on.'],
    who: 'senior',
    judged: ['value'],
    evidence: ['label', 'readings', '~readings'],
    raises: 'verdict',
    then: 'bleed',
  }),
  unclear: verdict({
    verdict: 'start-capacitor-undecided',
    title: 'The start capacitor’s value is undecided',
    says: ['OL, the meter’s range or a missing print leaves it open. Nothing is condemned.'],
    next: ['A meter with a larger range would decide it.', 'Go on.'],
    who: 'junior',
    judged: ['value'],
    evidence: ['label', 'readings', '~readings'],
    then: 'bleed',
  }),
  bleed: judge('bleed-resistor', {
    of: { readings: 'readings' },
    limits: LIMITS.bleedResistor,
    quiet: ['undecided'],
    then: { good: 'relay', open: 'bleed-open', between: 'relay', 'one-end-off': 'relay', undecided: 'relay' },
  }),
  'bleed-open': verdict({
    verdict: 'bleed-resistor-open',
    title: 'The bleed resistor is open: replace it',
    says: ['Without it the start capacitor keeps its charge.'],
    next: NEXT,
    who: 'junior',
    judged: ['bleed'],
    evidence: ['readings'],
    then: 'relay',
  }),
} as const;

const after = {
  'relay-fails': verdict({
    verdict: 'start-relay-fails',
    title: 'The start relay fails: replace it by its code',
    says: ['Its contacts or its coil read what they must not read at rest.'],
    next: NEXT,
    who: 'junior',
    judged: ['relay', 'relay-twice'],
    evidence: ['readings', 'relay-again'],
    then: '!done',
  }),
  // Neither right nor wrong at rest: nothing starts on it as if it were right, and nothing is condemned.
  'relay-unclear': verdict({
    verdict: 'start-relay-undecided',
    title: 'The start relay is undecided: twice between good and bad, or not read',
    says: ['It is not condemned on that, and not called good.'],
    next: [
      'Nothing is started on it: a relay that doesn’t let go bursts or stalls what it starts.',
      'A senior sees it. Finish the dead tests.',
    ],
    who: 'senior',
    judged: ['relay', 'relay-twice'],
    evidence: ['readings', 'relay-again'],
    raises: 'verdict',
    then: '!done',
  }),
} as const;

const AT_REST = {
  contacts: ohms('Relay 1 to 2, contacts', { words: ['1-2', '2-1', 'contact'] }),
  coil: ohms('Relay 5 to 2, coil', { words: ['5-2', '2-5'] }),
};
const HELD_UPRIGHT = {
  contacts: ohms('Relay contacts at rest', { words: ['contact'] }),
  coil: ohms('Relay coil'),
  // Lying, its contacts may fall shut: then they condemn nothing.
  upright: one('Relay held', {
    yes: { label: 'Upright', words: ['upright', 'held upright'] },
    no: { label: 'Lying, or not sure', words: ['lying', 'on its side', 'not upright', 'not sure'] },
  }),
};
const PTC_COLD = { ptc: ohms('PTC, cold') };
/** Read between good and bad: once more, before anything starts on it. */
const relayAgain = (say: string, fields: Readonly<Record<string, PartSpec<never>>>) =>
  measure<'relay-unclear' | 'relay-twice'>({
    say,
    body: ['Leads together first: near 0 Ω. Its wires off, bare metal.'],
    why: 'Between good and bad it is neither. Read once more it is told before anything starts on it.',
    source: [PRACTICE],
    circuit: 'part',
    fields,
    cant: 'relay-unclear',
    next: 'relay-twice',
  });

/** A start capacitor with a potential relay. */
export const potentialRelay = flow({
  id: 'start-potential-relay',
  version: 1,
  title: 'Start capacitor, potential relay',
  exits: ['done', 'again'],
  needs: ['label'],
  examples: POTENTIAL,
  steps: {
    readings: measure({
      say: 'Start capacitor, its resistor, and the relay at rest, wires off.',
      body: [
        ...body,
        'Relay at rest: 1 to 2 closed, 5 to 2 the coil. Welded contacts read closed too: beside a burst start capacitor both go.',
      ],
      why: 'A start capacitor that is low, or a relay that does not let go, bursts or stalls the compressor.',
      source: [PRACTICE],
      circuit: 'part',
      fields: {
        start,
        bleed,
        ...AT_REST,
      },
      picture: { kind: 'leads', part: 'start', on: ['across'], between: 'capacitance', bleed: 'one end off' },
      cant: 'value',
      next: 'value',
    }),
    ...shared,
    relay: judge('potential-relay', {
      of: { readings: 'readings' },
      limits: LIMITS.potentialRelay,
      then: {
        good: '!done',
        'contacts-open': 'relay-fails',
        'coil-open': 'relay-fails',
        between: 'relay-again',
        undecided: 'relay-unclear',
      },
    }),
    'relay-again': relayAgain('The relay at rest once more: 1 to 2, and 5 to 2.', AT_REST),
    'relay-twice': judge('potential-relay', {
      of: { readings: 'relay-again' },
      limits: LIMITS.potentialRelay,
      then: {
        good: '!done',
        'contacts-open': 'relay-fails',
        'coil-open': 'relay-fails',
        between: 'relay-unclear',
        undecided: 'relay-unclear',
      },
    }),
    ...after,
  },
});

/** A start capacitor with a current relay. */
export const currentRelay = flow({
  id: 'start-current-relay',
  version: 1,
  title: 'Start capacitor, current relay',
  exits: ['done', 'again'],
  needs: ['label'],
  examples: CURRENT,
  steps: {
    readings: measure({
      say: 'Start capacitor, its resistor, and the relay at rest, held upright.',
      body: [...body, 'Relay upright, at rest: its contacts read OL, its coil near zero.'],
      why: 'A start capacitor that is low, or a relay that does not let go, bursts or stalls the compressor.',
      source: [PRACTICE],
      circuit: 'part',
      fields: {
        start,
        bleed,
        ...HELD_UPRIGHT,
      },
      picture: { kind: 'leads', part: 'start', on: ['across'], between: 'capacitance', bleed: 'one end off' },
      cant: 'value',
      next: 'value',
    }),
    ...shared,
    relay: judge('current-relay', {
      of: { readings: 'readings', upright: 'readings' },
      limits: LIMITS.currentRelay,
      then: {
        good: '!done',
        'contacts-closed': 'relay-fails',
        'coil-open': 'relay-fails',
        between: 'relay-again',
        undecided: 'relay-unclear',
      },
    }),
    'relay-again': relayAgain('The relay once more, held upright: contacts and coil.', HELD_UPRIGHT),
    'relay-twice': judge('current-relay', {
      of: { readings: 'relay-again', upright: 'relay-again' },
      limits: LIMITS.currentRelay,
      then: {
        good: '!done',
        'contacts-closed': 'relay-fails',
        'coil-open': 'relay-fails',
        between: 'relay-unclear',
        undecided: 'relay-unclear',
      },
    }),
    ...after,
  },
});

/** A start assist with a PTC, or a PTC alone. */
export const ptc = flow({
  id: 'start-ptc',
  version: 1,
  title: 'Start assist with a PTC',
  exits: ['done', 'again'],
  needs: ['label'],
  examples: PTC,
  steps: {
    readings: measure({
      say: 'Start capacitor, its resistor, and the PTC, cold.',
      body: [...body, `A PTC is hot by design: ${REST} after a start before it is read. Shake it: does it rattle?`],
      why: 'A start capacitor that is low, or a relay that does not let go, bursts or stalls the compressor.',
      source: [PRACTICE],
      circuit: 'part',
      fields: {
        start,
        bleed,
        ...PTC_COLD,
        shaken: one(
          'Shaken by hand',
          {
            quiet: { label: 'Quiet', words: ['quiet', 'no rattle', 'silent'] },
            rattles: { label: 'It rattles', words: ['rattles', 'rattle', 'broken pill'] },
          },
          { optional: true },
        ),
      },
      picture: { kind: 'leads', part: 'start', on: ['across'], between: 'capacitance', bleed: 'one end off' },
      cant: 'value',
      next: 'value',
    }),
    ...shared,
    relay: judge('ptc', {
      of: { readings: 'readings', rattles: 'readings' },
      limits: LIMITS.ptc,
      then: { good: '!done', failed: 'relay-fails', between: 'relay-again', undecided: 'relay-unclear' },
    }),
    'relay-again': relayAgain('The PTC once more, cold.', PTC_COLD),
    'relay-twice': judge('ptc', {
      of: { readings: 'relay-again', rattles: 'readings' },
      limits: LIMITS.ptc,
      then: { good: '!done', failed: 'relay-fails', between: 'relay-unclear', undecided: 'relay-unclear' },
    }),
    ...after,
  },
});
