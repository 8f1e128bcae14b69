import { flow, judge, measure, one, verdict, volts } from '../../engine/vocabulary.ts';
import { LOCATED } from '../examples/supply.ts';
import { LIMITS } from '../limits.ts';
import { AT_MOST, WAIT } from '../motors/starts.ts';
import { THREE_PHASE } from '../unit.ts';

const V = (words: readonly string[]) => ({ over: false, optional: true, words }) as const;

/** One reading of the supply was out: read again, while something draws, and on both sides of what may lose it. */
export const located = flow({
  id: 'supply-located',
  version: 1,
  title: 'Where the supply is lost',
  exits: ['raised'],
  needs: ['plate', 'unit'],
  examples: LOCATED,
  steps: {
    repeat: measure({
      say: 'Once more, the pair that was out: at the unit, at the line side of its means, and across each closed pole of the means.',
      body: [
        `The lowest while it runs or starts; it hums: off within seconds. ${AT_MOST} ${WAIT}`,
        'Too high: don’t start it. Read both places with nothing drawing.',
        'Fuses in the means count with their pole. A panel or means that you may not open: leave it out with _.',
      ],
      callouts: [{ level: 'danger', text: 'Line voltage is present. Not qualified for it: can’t.' }],
      why: 'One reading decides no supply. Where it falls under load there is the joint; out on both sides, it comes so.',
      source: [
        'Read twice, and located by the drop: common practice, no single source',
        'Fall of at most 10 % at the start: common practice, no single source',
      ],
      circuit: 'line',
      fields: {
        load: one('Meanwhile', {
          runs: { label: 'It runs', words: ['runs', 'running', 'run'] },
          starts: { label: 'It starts, or tries', words: ['starts', 'starting', 'tries', 'at the start'] },
          idle: { label: 'Nothing draws', words: ['idle', 'off', 'nothing draws', 'no load', 'at rest'] },
        }),
        unit: volts('At the unit', { over: false, words: ['unit', 'at the unit', 'contactor'] }),
        rest: volts('At the unit, nothing drawing', V(['rest', 'before', 'before the start'])),
        feed: volts('Line side of the means', V(['means', 'feed', 'disconnect', 'line side'])),
        p1: volts('Across the means’ first pole', V(['pole 1', 'poles', 'pole', 'across'])),
        p2: volts('Across its second pole', V(['pole 2', 'poles', 'pole', 'across'])),
        p3: volts('Across its third pole', { ...V(['pole 3', 'poles', 'pole', 'across']), when: THREE_PHASE }),
      },
      cant: 'open',
      next: 'where',
    }),
    where: judge('supply-located', {
      of: { readings: 'repeat', plate: 'plate', unit: 'unit' },
      limits: LIMITS.supplyLocated,
      then: { feed: 'out', means: 'out', between: 'out', holds: 'open', undecided: 'open' },
    }),
    out: verdict({
      verdict: 'supply-out',
      title: 'The supply is out of limits or sags, and where is found: turn it off',
      says: [
        'Read twice, and located. Volts outside the limits, or falling too far at the start, cook motors and capacitors.',
      ],
      next: [
        'A senior confirms. Lug or means: an electrician, dead. Before the means: panel, feeder, the utility.',
        'It stays off. Tell the customer whom to call.',
      ],
      who: 'senior',
      judged: ['where'],
      evidence: ['repeat'],
      raises: 'verdict',
      then: '!raised',
    }),
    open: verdict({
      verdict: 'supply-not-located',
      title: 'The supply read out of limits once: not confirmed, or not located, so undecided',
      says: ['One reading decides no supply, and where it is lost is not known.'],
      next: [
        'The same pair while it runs, at the unit and before the means, and across each closed pole would decide it.',
        'It stays off. A senior sees this call.',
      ],
      who: 'senior',
      judged: ['where'],
      evidence: ['repeat'],
      raises: 'verdict',
      then: '!raised',
    }),
  },
});
