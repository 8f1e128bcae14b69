import { judgement } from './judgement.ts';

/** Whether the shop allows a tag with one extra measure where no lock fits. Never undecided: the setting is always in force. */
export const alternative = judgement({
  id: 'alternative',
  semantics: 1,
  takes: [],
  limits: [],
  outcomes: ['allowed', 'ask', 'undecided'],
  run: (_given, _limits, { settings }) => ({ outcome: settings.tagWithExtraMeasure ? 'allowed' : 'ask', findings: [] }),
  probe: () => [{}],
});
