import { choose, confirm, flow, verdict } from '../../engine/vocabulary.ts';
import { FAN_RESTS } from '../examples/first-looks.ts';

/** The compressor runs and the fan stands: two things are meant to stop it. Watched to their end, before anything is opened. */
export const fanRests = flow({
  id: 'fan-rests',
  version: 1,
  title: 'Is the fan meant to stand?',
  exits: ['tests', 'not-cold', 'done', 'raised', 'left'],
  examples: FAN_RESTS,
  steps: {
    meant: choose({
      say: 'It is off now. Was the fan meant to stand: defrost, or a control for cold weather?',
      body: [
        'Defrost: a heat pump that was heating, frost or steam at its coil. Straight cooling has none.',
        'Low-ambient control: it is cold out, and a control at the fan stops it until the pressure is up.',
        'Eyes only, nothing is opened for this.',
      ],
      why: 'A fan that is meant to stand is no fault, and no part is changed for it.',
      source: ['A fan stands in defrost for 10 to 14 minutes: common practice, no single source'],
      options: {
        neither: {
          label: 'Neither: warm out, or straight cooling',
          words: ['neither', 'no', 'not in defrost', 'no defrost', 'straight cool', 'cooling only', 'warm out', 'none'],
          to: '!tests',
        },
        defrost: {
          label: 'Heat pump, frost or steam at the coil',
          words: ['defrost', 'in defrost', 'steam', 'steaming', 'frost', 'frosted'],
          to: 'watch',
        },
        cold: {
          label: 'Cold out, and a control stops the fan',
          words: [
            'low ambient',
            'low ambient control',
            'low-ambient',
            'cold out',
            'head pressure control',
            'fan cycling',
          ],
          to: 'watch',
        },
        unsure: { label: 'Not sure', words: ['not sure', 'unsure', 'dont know', 'cant tell'], to: '!tests' },
      },
    }),
    watch: choose({
      say: 'Cover on, stand back, power on and call. Watch it to its end, 14 minutes at most: does the fan start again?',
      body: ['A call for what it was doing: heating in defrost, cooling with a low-ambient control.'],
      callouts: [
        {
          level: 'warning',
          text: 'Off at once, at the thermostat first, where the compressor growls or clicks off, or no frost melts. Never push the fan with power on.',
        },
      ],
      why: 'Only a fan that starts again by itself was meant to stand. One that stays still is tested.',
      source: ['10 to 14 minutes: common practice, no single source'],
      options: {
        started: {
          label: 'It started again by itself',
          words: ['started', 'it started', 'started again', 'fan runs', 'runs', 'runs again', 'came back on'],
          to: 'cools',
        },
        still: {
          label: 'It stands still, or I turned it off: off now',
          words: [
            'still',
            'stands still',
            'still off',
            'not started',
            'didnt start',
            'turned it off',
            'off',
            'off now',
          ],
          to: '!tests',
        },
        unwatched: {
          label: 'Can’t watch it now: off',
          words: ['cant watch', 'cant', 'not sure', 'no time', 'not now', 'not watched'],
          to: 'unwatched',
        },
      },
    }),
    cools: choose({
      say: 'At COOL, both running: does the air get cold?',
      body: ['Ten minutes after both run. After defrost: first back to COOL, five minutes’ wait.'],
      why: 'The fan is explained. The call was that it doesn’t cool.',
      options: {
        cold: { label: 'It cools', words: ['cold', 'cools', 'it cools', 'cold air', 'yes'], to: 'meant-to-stand' },
        warm: { label: 'It doesn’t', words: ['no', 'not cold', 'warm', 'doesnt cool'], to: 'meant-not-cold' },
        unsure: {
          label: 'Too cold out to tell, or not sure',
          words: ['not sure', 'too cold out'],
          to: 'not-seen',
        },
      },
    }),
    'meant-to-stand': verdict({
      verdict: 'fan-was-meant-to-stand',
      title: 'The fan was meant to stand: defrost or low-ambient control, no part is at fault',
      says: ['It started again by itself, watched to its end.'],
      next: [
        'Tell the customer: in cold weather the fan may stand for some minutes while the compressor runs, with steam.',
        'Longer than 14 minutes, or in warm weather, is no longer normal: turn it off and call again.',
      ],
      who: 'junior',
      judged: [],
      evidence: ['meant', 'watch', 'cools'],
      then: '!done',
    }),
    'not-seen': verdict({
      verdict: 'fan-stood-cooling-not-seen',
      title: 'The fan was meant to stand; whether it cools was not seen',
      says: ['It started again by itself, watched to its end. The call was that it doesn’t cool, and that is open.'],
      next: [
        'A senior decides: seen again on a warmer day, or measured now.',
        'Tell the customer that in cold weather the fan may stand for some minutes while the compressor runs.',
      ],
      who: 'senior',
      judged: [],
      evidence: ['meant', 'watch', 'cools'],
      raises: 'verdict',
      then: '!raised',
    }),
    'meant-not-cold': verdict({
      verdict: 'fan-stood-and-not-cold',
      title: 'The fan was meant to stand, and it doesn’t cool: air and circuit next',
      says: ['It started again by itself. Why it doesn’t cool is another question.'],
      next: ['Go on as with both running and the air not cold.'],
      who: 'junior',
      judged: [],
      evidence: ['meant', 'watch', 'cools'],
      then: '!not-cold',
    }),
    unwatched: confirm({
      say: 'Not watched, so the fan is not called sound. Go on with the dead tests?',
      why: 'A still fan that nobody watched counts as one that doesn’t run.',
      yes: 'Dead tests',
      words: ['dead tests', 'go on'],
      no: { label: 'Not today: it stays off', words: ['stays off', 'not today', 'leave it off'], to: 'stays-off' },
      next: '!tests',
    }),
    'stays-off': verdict({
      verdict: 'fan-not-watched',
      title: 'Nobody watched whether the fan starts again: it stays off',
      says: ['Neither called normal nor tested. A compressor without its fan overheats.'],
      next: ['Leave it off at the thermostat and the means.', 'Tell the customer not to run it until somebody comes.'],
      who: 'junior',
      judged: [],
      evidence: ['meant', 'watch', 'unwatched'],
      then: '!left',
    }),
  },
});
