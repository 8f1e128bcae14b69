/** Worked calls of the intake, each line as the dispatcher types it. Nobody here exists. */
import type { Example } from '../../engine/vocabulary.ts';

/** From the first question to the kind of system. */
const called = (kind: string): string[] => [
  ...['none', 'Lena Orchard', '555 0142', 'Brook Terrace 7', 'gate, the code is on the card', 'new'],
  kind,
];
const nothingElse = ['nothing', 'today, nobody worked on it', 'skip no plate in reach'];

export const WHO: readonly Example[] = [
  {
    title: 'The same trouble is open already: no second call',
    lines: ['none', 'Lena Orchard', '555 0142', 'Brook Terrace 7', 'free', 'open', 'split'],
    then: ['called-again'],
    ends: 'known',
  },
];

export const SIGHT: readonly Example[] = [
  {
    title: 'A walk-in at 47 °F for three hours: the goods go first, and nobody is asked for a thermostat',
    lines: [
      ...called('walk-in'),
      ...['silent', 'no air', 'not sure', 'on', ...nothingElse, 'nobody', 'outdoors 88 goods 47 for 3', 'nothing'],
      ...['still not', 'somebody comes, doors closed'],
    ],
    then: ['call-taken'],
    ends: 'open',
  },
];

export const CALL: readonly Example[] = [
  {
    title: 'Hums, nothing turns, 96 °F at 65 % and a baby: off at once, and a van goes now',
    lines: [
      ...called('split'),
      ...['hums', 'no air', 'on', 'tripped', ...nothingElse, 'baby', 'indoors 96 humidity 65', 'nothing'],
      ...['done', 'somebody comes, leave it off, cool place'],
    ],
    then: ['call-taken'],
    ends: 'open',
  },
  {
    title: 'Ice and little air: to thaw, and somebody certified is likelier to be needed',
    lines: [
      ...called('heat pump'),
      ...['runs as always', 'little air', 'on', 'on', 'ice', 'two days, by us', 'skip not on hand', 'nobody'],
      ...['indoors 82', 'it did this last summer as well', 'done', 'thaw'],
    ],
    then: ['call-taken'],
    ends: 'open',
  },
  {
    title: 'A blank thermostat and new batteries: settled on the phone',
    lines: [
      ...called('central'),
      'silent',
      'no air',
      'blank',
      'on',
      ...nothingElse,
      'nobody',
      'indoors 79',
      'nothing',
      'it cools',
    ],
    then: ['settled-on-the-phone'],
    ends: 'told',
  },
  {
    title: 'Smoke: out, emergency services, who and where, and nothing is checked',
    lines: ['smoke, sparks', 'told', 'Lena Orchard', '555 0142', 'Brook Terrace 7', 'free', 'new', 'not sure'],
    then: ['emergency-call'],
    ends: 'open',
  },
  {
    title: 'Gas is smelt: no switch, no phone indoors',
    lines: ['gas smell', 'told', 'Lena Orchard', '555 0142', 'Brook Terrace 7', 'free', 'new', 'package'],
    then: ['emergency-call'],
    ends: 'open',
  },
  {
    title: 'Smoke is spoken of only later: the checks end there',
    lines: [
      ...called('split'),
      ...[
        'silent',
        'no air',
        'on',
        'on',
        ...nothingElse,
        'nobody',
        'indoors 84',
        'now there is smoke from the air handler',
      ],
      'told',
    ],
    then: ['emergency-call'],
    ends: 'open',
  },
];

export const CLOSED_PAGE: readonly Example[] = [];
