import { form, several } from '../../engine/vocabulary.ts';

/** A part that failed is a symptom too. */
export const why = {
  why: form({
    say: 'Why did it fail? A part that failed is a symptom too.',
    body: ['Look before you fit: fan, coil, contactor, the old part’s print.'],
    why: 'Heat, a stiff fan, bad volts or too low a rating kill the next part as well.',
    source: ['What kills a capacitor: common practice, no single source'],
    parts: {
      cause: several('What you see', {
        nothing: {
          label: 'Nothing that explains it',
          alone: true,
          words: [
            'nothing',
            'nothing obvious',
            'age',
            'old',
            'old age',
            'just old',
            'worn out',
            'no cause',
            'no reason',
          ],
        },
        coil: {
          label: 'Coil dirty',
          words: ['coil', 'dirty', 'dirty coil', 'plugged coil', 'coil plugged', 'cottonwood', 'matted'],
        },
        fan: {
          label: 'Fan stiff, hot or slow',
          words: [
            'fan hot',
            'fan slow',
            'slow fan',
            'hot fan',
            'fan motor hot',
            'fan motor slow',
            'stiff fan',
            'fan stiff',
            'fan is stiff',
          ],
        },
        contactor: {
          label: 'Contactor pitted',
          words: ['pitted', 'pitted contacts', 'contacts pitted', 'pitted contactor', 'contactor'],
        },
        volts: {
          label: 'Volts high or sagging',
          words: [
            'volts',
            'high volts',
            'voltage high',
            'high voltage',
            'low voltage',
            'voltage low',
            'surge',
            'power surge',
            'sagging',
          ],
        },
        rating: { label: 'Old part rated too low in volts', words: ['too low', '370'] },
        tab: { label: 'Tab or wire burnt, old mark', words: ['tab', 'burnt tab'] },
        recent: {
          label: 'Replaced not long ago',
          words: [
            'recent',
            'replaced recently',
            'replaced last year',
            'replaced last month',
            'replaced last season',
            'been replaced',
            'new last year',
          ],
        },
      }),
    },
    next: 'history',
  }),
};
