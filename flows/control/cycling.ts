import { choose, flow, verdict } from '../../engine/vocabulary.ts';
import { mattedFirst } from '../cooling/wash.ts';
import { iceFirst } from '../endings.ts';
import { CYCLING } from '../examples/control.ts';

/** Starts and stops every few minutes: how long tells who drops it, and what needs no tool comes first. */
export const cycling = flow({
  id: 'cycling',
  version: 1,
  title: 'Short cycling',
  exits: ['dead-tests', 'airflow', 'left', 'done'],
  examples: CYCLING,
  steps: {
    times: choose({
      say: 'Time one cycle: how long does it run, how long is it off?',
      why: 'Seconds: a control or a pressure switch. Minutes: an overload. Long: the thermostat.',
      source: ['What each cycle points at: common practice, no single source'],
      as: 'round:cycle',
      options: {
        seconds: {
          label: 'On or off for 10 to 60 seconds',
          words: ['seconds', '30 seconds', 'off 30 sec', 'less than a minute'],
          to: 'look',
        },
        minutes: {
          label: 'On for 3 to 10 minutes',
          words: ['minutes', 'few minutes', '5 minutes', 'on 5 min'],
          to: 'look',
        },
        long: {
          label: 'Longer, in step with the thermostat',
          words: ['long', '20 minutes', 'with the stat'],
          to: 'stat',
        },
        unknown: { label: 'Not timed', words: ['not timed', 'dont know', 'not sure'], to: 'look' },
      },
    }),
    stat: choose({
      say: 'At the thermostat: in the sun, over a register, set to a narrow swing, or is the house cool within minutes?',
      why: 'A thermostat in moving or warm air cycles a sound unit. Too large a unit cools in minutes; that is last.',
      options: {
        place: {
          label: 'In the sun, in a draught, over a register',
          words: ['sun', 'draft', 'over a register', 'location'],
          to: 'placed',
        },
        large: {
          label: 'Cool within minutes, every cycle',
          words: ['cools fast', 'oversize', 'oversized'],
          to: 'placed',
        },
        fine: { label: 'Nothing odd', words: ['nothing', 'nothing odd', 'fine'], to: 'look' },
      },
      cant: 'look',
    }),
    placed: verdict({
      verdict: 'cycles-with-the-thermostat',
      title: 'It cycles with the thermostat: its place or the unit’s size',
      says: ['The cycles follow the thermostat. No part was found at fault.'],
      next: ['Tell the customer what was seen. Moving a thermostat or a size is planned work, not a repair.'],
      who: 'junior',
      judged: [],
      evidence: ['times', 'stat'],
      then: '!done',
    }),
    look: choose({
      say: 'Filter, indoor coil and lines, outdoor coil: what do you see?',
      body: ['No tool, no cover.'],
      why: 'Ice, a plugged filter or a matted coil opens pressure switches and overloads before any part is bad.',
      options: {
        fine: {
          label: 'Clean, nothing odd',
          words: ['clean', 'nothing', 'nothing odd', 'all clean', 'fine'],
          to: '!dead-tests',
        },
        ice: { label: 'Ice on coil or lines', words: ['ice', 'iced', 'frozen'], to: 'iced' },
        filter: {
          label: 'Filter or indoor coil plugged',
          words: ['filter', 'dirty filter', 'plugged filter'],
          to: '!airflow',
        },
        matted: {
          label: 'Outdoor coil matted',
          words: ['matted', 'dirty coil', 'cottonwood', 'outdoor coil dirty'],
          to: 'matted',
        },
      },
      // Not seen is not clean: the dead tests read the fan and its section, and nothing is said of the air.
      cant: '!dead-tests',
    }),
    ...mattedFirst('look', '!dead-tests'),
    iced: iceFirst('look'),
  },
});
