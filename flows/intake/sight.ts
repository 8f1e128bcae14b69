import { flow, form, noted, one, several } from '../../engine/vocabulary.ts';
import { SIGHT } from './examples.ts';

const UNSURE = { label: 'Not sure', words: ['dont know', 'don’t know', 'unknown', 'cant see'] };

/** What the caller sees and hears from where they stand. */
export const sight = flow({
  id: 'caller-sight',
  version: 1,
  title: 'What the caller sees',
  exits: ['on'],
  examples: SIGHT,
  steps: {
    'seen-outdoors': form({
      say: 'What does the outdoor unit do?',
      why: 'It decides what is likely, and what goes on the truck.',
      parts: {
        outdoor: one(
          'Outdoor unit',
          {
            silent: { label: 'Silent', words: ['nothing', 'dead', 'not running'] },
            'hum-still': { label: 'Hums, nothing turns', words: ['hums', 'humming', 'hum'] },
            'fan-still': { label: 'Runs, its fan stands still', words: ['fan still', 'fan not turning'] },
            'fan-only': { label: 'Fan turns, then a hum or a click', words: ['fan turns', 'clicks', 'fan runs'] },
            chatters: { label: 'Buzzes or chatters', words: ['buzzes', 'chattering'] },
            cycles: { label: 'Starts and stops', words: ['on and off', 'short cycling'] },
            runs: { label: 'Runs as always', words: ['running', 'runs'] },
            unsure: UNSURE,
          },
          { as: 'caller:outdoor' },
        ),
      },
      next: 'seen-indoors',
    }),
    'seen-indoors': form({
      say: 'Does air come out indoors?',
      parts: {
        blower: one(
          'Air indoors',
          {
            blows: { label: 'Blows as always', words: ['blowing', 'yes'] },
            weak: { label: 'Little air', words: ['weak', 'little'] },
            still: { label: 'No air', words: ['no', 'none', 'not blowing'] },
            unsure: UNSURE,
          },
          { as: 'caller:blower' },
        ),
      },
      next: 'seen-display',
    }),
    'seen-display': form({
      say: 'What does the thermostat show?',
      parts: {
        display: one(
          'Thermostat',
          {
            cooling: { label: 'On, calls for cooling', words: ['on', 'cool', 'calling'] },
            blank: { label: 'Blank', words: ['dead', 'nothing', 'off'] },
            code: { label: 'A code or a fault', words: ['code', 'error'] },
            unsure: UNSURE,
          },
          { as: 'caller:display' },
        ),
      },
      next: 'seen-breaker',
    }),
    'seen-breaker': form({
      say: 'How is the breaker?',
      why: 'One that tripped twice, or is warm or wet, is left alone.',
      parts: {
        breaker: one(
          'Breaker',
          {
            on: { label: 'On', words: ['fine', 'ok'] },
            tripped: { label: 'Tripped once', words: ['tripped', 'off'] },
            again: { label: 'Tripped again, or reset already', words: ['tripped twice', 'keeps tripping', 'reset'] },
            hot: { label: 'Warm, wet, or it smells', words: ['warm', 'hot', 'wet'] },
            unsure: UNSURE,
          },
          { as: 'caller:breaker' },
        ),
      },
      next: 'seen-signs',
    }),
    'seen-signs': form({
      say: 'Anything else to see or hear?',
      parts: {
        signs: several(
          'To see or hear',
          {
            ice: { label: 'Ice on pipes or coil', words: ['ice', 'frozen'] },
            water: { label: 'Water at the indoor unit', words: ['water', 'leaking water'] },
            noise: { label: 'A new noise', words: ['noise', 'grinding', 'rattling', 'squealing'] },
            alarm: { label: 'A leak alarm', words: ['leak alarm'] },
            none: { label: 'Nothing else', alone: true, words: ['no', 'none', 'nothing'] },
          },
          { as: 'caller:signs' },
        ),
      },
      next: 'since-when',
    }),
    'since-when': form({
      say: 'Since when, and did anybody work on it?',
      parts: {
        since: one(
          'Since when',
          {
            today: { label: 'Today', words: ['this morning', 'just now', 'hours'] },
            days: { label: 'Some days', words: ['yesterday', 'days', 'two days'] },
            longer: { label: 'Longer', words: ['weeks', 'a week', 'months'] },
            unsure: UNSURE,
          },
          { optional: true, as: 'caller:since' },
        ),
        recent: one(
          'Worked on lately',
          {
            nobody: { label: 'By nobody', words: ['nobody worked on it', 'no work'] },
            ours: { label: 'By us', words: ['by you', 'you were here'] },
            others: { label: 'By others', words: ['another company', 'my neighbor', 'by somebody else'] },
          },
          { optional: true, as: 'caller:recent' },
        ),
      },
      next: 'which-unit',
    }),
    'which-unit': form({
      say: 'Make, model, age or marking, where they can read it?',
      parts: { unit: noted('Make, model, marking', { optional: true, as: 'caller:unit', finds: 'unit' }) },
      next: '!on',
    }),
  },
});
