import { choose, confirm, flow, form, judge, measure, noted, one, psig, verdict } from '../../engine/vocabulary.ts';
import { ALARM } from '../examples/cooling/alarm.ts';

/** Blower that never stops, compressor locked out, alarm: a leak until a certified person clears it. */
export const alarm = flow({
  id: 'alarm',
  version: 1,
  title: 'Leak alarm',
  exits: ['restart', 'raised'],
  examples: ALARM,
  steps: {
    air: confirm({
      say: 'It counts as a leak. No flame, nothing switched, people out of closed rooms?',
      body: [
        'The blower runs on purpose: leave it running. Doors and windows open.',
        'Dizzy, a smell, a hiss indoors: get out and type it.',
      ],
      callouts: [
        { level: 'danger', text: 'It may burn, and it takes the air to breathe. Don’t silence it, don’t unplug it.' },
      ],
      why: 'The detector thins what leaks with air. Switches and flames are what sets it alight.',
      source: ['ASHRAE 34: A2L and A3 burn; no switching near a leak: rule of this manual'],
      yes: 'So it is, blower left running',
      words: ['clear', 'ventilated', 'doors open', 'aired', 'all out'],
      no: { label: 'Not so, or not sure', words: ['not sure', 'not so'], to: 'away' },
      next: 'facts',
    }),
    away: verdict({
      verdict: 'leak-alarm-keep-away',
      title: 'A leak alarm, and the place is not safe: away from it',
      says: ['Nobody works beside it.'],
      next: [
        'Everybody out, air moving only where nothing has to be switched.',
        'A senior and a certified person hear of it now; fire service where it smells or hisses.',
        'Tell the customer to stay out.',
      ],
      who: 'certified',
      judged: [],
      evidence: ['air'],
      raises: 'verdict',
      then: '!raised',
    }),
    facts: form({
      say: 'What is on it, and was it reset already?',
      body: ['From nameplate and display, without touching a button.'],
      why: 'A second reset hides a leak that comes and goes.',
      parts: {
        reset: one('Reset so far', {
          no: { label: 'Not reset', words: ['not reset', 'never', '0', 'not yet'] },
          once: { label: 'Once', words: ['once', '1', 'reset once'] },
          more: { label: 'More often', words: ['twice', 'more', '2', 'several times'] },
          unsure: { label: 'Not known', words: ['dont know', 'unsure', 'not known'] },
        }),
        shown: noted('Refrigerant, code or light, since when', { optional: true }),
      },
      cant: 'person',
      next: 'person',
    }),
    person: choose({
      say: 'Is a person certified for refrigerant here, with a detector made for it?',
      body: ['In person. From afar nobody clears it. It is not bypassed, and not reset twice.'],
      why: 'Only a search shows whether it leaks. A reset shows nothing.',
      options: {
        yes: {
          label: 'Yes, certified, with a detector',
          words: ['certified', 'i am certified', 'im certified'],
          to: 'search',
        },
        no: { label: 'No', words: ['not certified', 'nobody', 'no one', 'no detector'], to: 'held' },
        unsure: { label: 'Not sure', words: ['dont know', 'unsure', 'not sure'], to: 'held' },
      },
    }),
    search: measure({
      say: 'Standing pressure, then the whole circuit searched: what did it come to?',
      body: [
        'Indoor coil, joints, valves, line set, outdoor coil; detector, then bubbles.',
        'No leak and the sensor shown bad counts as none found.',
      ],
      callouts: [{ level: 'danger', text: 'No ignition source before a hose goes on.' }],
      why: 'A pressure that stands where it belongs and a clean search together clear it.',
      circuit: 'refrigerant',
      fields: {
        standing: psig('Standing pressure', { words: ['pressure', 'standing'] }),
        result: one('Search', {
          found: { label: 'Leak found', words: ['found', 'leaks', 'leak found', 'leaking at'] },
          none: { label: 'None found, all searched', words: ['none', 'none found', 'no leak', 'nothing found'] },
          unsure: { label: 'Not sure, not all reached', words: ['unsure', 'not sure', 'not all'] },
        }),
      },
      cant: 'held',
      next: 'searched',
    }),
    searched: judge('leak-search', {
      of: { search: 'search' },
      limits: {},
      then: { found: 'found', none: 'cleared', undecided: 'held' },
    }),
    found: verdict({
      verdict: 'leak-found',
      title: 'The alarm was right: a leak is found',
      says: ['A certified person found where it leaks.'],
      next: [
        'It stays locked out. A certified person recovers, mends, tests with nitrogen, evacuates, weighs in.',
        'Tell the customer where it leaks, and that the alarm did its work.',
      ],
      who: 'certified',
      judged: ['searched'],
      evidence: ['air', 'facts', 'search'],
      raises: 'verdict',
      then: '!raised',
    }),
    cleared: verdict({
      verdict: 'leak-alarm-cleared',
      title: 'No leak: a certified person clears the alarm',
      says: ['The whole circuit was searched, the standing pressure is on the record, and no leak was found.'],
      next: [
        'Sensor by the maker’s test; one reset, no second.',
        'Restart and prove it. It alarms again: off, a senior.',
        'Tell the customer what set it off, if it is known.',
      ],
      who: 'certified',
      judged: ['searched'],
      evidence: ['air', 'facts', 'search'],
      raises: 'verdict',
      then: '!restart',
    }),
    held: verdict({
      verdict: 'leak-alarm-held',
      title: 'Treated as a leak until a certified person clears it',
      says: ['Not bypassed, not reset twice. The lockout stays.'],
      next: [
        'Blower on, doors open, no flame. The dispatcher sends a certified person.',
        'Tell the customer to leave it so and to stay out of closed rooms with it.',
      ],
      who: 'certified',
      judged: [],
      evidence: ['air', 'facts', 'person', 'search'],
      raises: 'verdict',
      then: '!raised',
    }),
  },
});
