import { judge, measure, verdict, volts } from '../../engine/vocabulary.ts';
import { LIMITS } from '../limits.ts';

/**
 * No pair shows volts at the unit. A means that is still out, probes on paint and a dead meter read the same: the line
 * side of the means tells, and a meter that reads it works. `open`: what nothing is concluded on leads there.
 */
export const noSupply = <const J extends string, const E extends string, const O extends string>(
  says: string,
  judged: readonly J[],
  evidence: readonly E[],
  open: O,
) =>
  ({
    'line-side': measure<'fed-there' | O>({
      say: 'Nothing at the unit. Its means in? Then the same pair on the line side of the means.',
      body: [
        'A pull-out still in your pocket, or put back upside-down, reads so. Bright metal, no paint.',
        'A means that you may not open: can’t. Nothing there either: the meter on a source that you know, then can’t.',
      ],
      callouts: [{ level: 'danger', text: 'Line voltage is present. Not qualified for it: can’t.' }],
      why: 'Volts there and none behind it: the means or its fuse. A meter that reads them works.',
      circuit: 'line',
      fields: { v: volts('Line side of the means', { over: false, words: ['means', 'line side', 'feed'] }) },
      cant: open,
      next: 'fed-there',
    }),
    'fed-there': judge('fed-volts', {
      of: { readings: 'line-side', plate: '@volts', unit: '@class' },
      limits: LIMITS.fedVolts,
      then: { there: 'absent', none: 'fed-by-nothing', between: open, undecided: open },
    }),
    'fed-by-nothing': verdict<'!raised', J | E | 'line-side' | 'fed-there'>({
      verdict: 'nothing-at-the-means',
      title: 'Nothing at the line side of the means either: breaker, utility, or a meter that doesn’t read',
      says: ['A dead meter reads so as well, so it is not known which. No part of the unit is at fault by it.'],
      next: [
        'The meter on a source that you know. It reads: panel, breaker or utility, an electrician’s.',
        'It stays off. A senior sees this call. Tell the customer that the line is looked for.',
      ],
      who: 'senior',
      judged: [...judged, 'fed-there'],
      evidence: [...evidence, 'line-side'],
      raises: 'verdict',
      then: '!raised',
    }),
    absent: verdict<'!left', J | E | 'line-side' | 'fed-there'>({
      verdict: 'supply-absent',
      title: 'No supply at the unit, and its means is fed: the means or its fuse',
      says: [`No pair shows volts at the unit, and the line side of its means does. ${says}`.trim()],
      next: [
        'Off. Fuse and means are tested dead; its line side stays live. The panel is an electrician’s.',
        'Tell the customer whom to call.',
      ],
      who: 'junior',
      judged: [...judged, 'fed-there'],
      evidence: [...evidence, 'line-side'],
      then: '!left',
    }),
  }) as const;
