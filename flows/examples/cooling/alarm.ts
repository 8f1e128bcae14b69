/** Worked calls about a leak alarm. */
import type { Example } from '../../../engine/vocabulary.ts';
import { PROVE } from './lines.ts';

export const ALARM: readonly Example[] = [
  {
    title: 'Nobody certified here: it stays locked out',
    lines: ['leak alarm', 'ventilated', 'not reset', 'nobody'],
    then: ['leak-alarm-held'],
    ends: 'raised',
  },
  {
    title: 'Not safe: away from it',
    lines: ['locked out', 'not sure'],
    then: ['leak-alarm-keep-away'],
    ends: 'raised',
  },
  {
    title: 'Searched and found',
    lines: ['blower never stops', 'doors open', 'once', 'certified', 'standing 120, leak found'],
    then: ['leak-found'],
    ends: 'raised',
  },
  {
    title: 'Searched, none found: cleared and restarted',
    lines: ['leak alarm', 'aired', 'not reset', 'certified', 'standing 235, none found', ...PROVE],
    then: ['leak-alarm-cleared', 'runs-nothing-found'],
    ends: 'done',
  },
];
