import { choose, flow } from '../../engine/vocabulary.ts';
import { WHOSE_HUM } from '../examples/first-looks.ts';

/** Something hums and nothing turns: a stalled compressor, or a contactor or transformer on its 24 V. By ear and eye, off. */
export const whoseHum = flow({
  id: 'whose-hum',
  version: 1,
  title: 'Whose hum?',
  exits: ['motors', 'control'],
  examples: WHOSE_HUM,
  steps: {
    whose: choose({
      say: 'It is off now. Whose hum was it, as you heard and saw it from outside?',
      body: [
        'A stalled compressor growls, its lines shake, and it clicks off within seconds.',
        'A contactor or transformer on 24 V hums faint and steady, and nothing shakes.',
      ],
      callouts: [
        {
          level: 'warning',
          text: 'Locked rotor burns windings within seconds. It is not started again to listen. Anything unsure counts as the compressor.',
        },
      ],
      why: 'The two are looked for in different places, and a growl is never listened to twice.',
      source: ['Faint control hum, growl of a stalled motor: common practice, no single source'],
      options: {
        growl: {
          label: 'A growl, or something shakes: a motor',
          words: ['growl', 'growls', 'loud', 'shakes', 'compressor', 'motor', 'stalled', 'clicks off'],
          to: '!motors',
        },
        faint: {
          label: 'Faint and steady, nothing shakes: control',
          words: ['faint', 'faint hum', 'quiet', 'steady', 'contactor', 'transformer', 'control', 'nothing shakes'],
          to: '!control',
        },
        unsure: {
          label: 'Not sure, or not heard by me',
          words: ['not sure', 'unsure', 'dont know', 'cant tell', 'not heard'],
          to: '!motors',
        },
      },
    }),
  },
});
