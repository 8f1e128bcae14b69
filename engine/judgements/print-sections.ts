import { judgement } from './judgement.ts';
import { print, untaken } from './probing.ts';
import { printOf } from './read.ts';
import { finding, say } from './say.ts';

/** How many sections a run capacitor's print shows. A start part's range is no print of a run part. */
export const printSections = judgement({
  id: 'print-sections',
  semantics: 1,
  takes: ['label'],
  limits: [],
  outcomes: ['dual', 'single', 'undecided'],
  run({ label }) {
    const print = printOf(label);
    const said = (reading: string, word: string, text: string) => [finding({ name: 'Sections', reading, word, text })];
    if (print === null) return { outcome: 'undecided', findings: said('not known', 'missing', 'No print is known.') };
    const herm = say(print.herm, 'µF');
    if (print.range) {
      const text = `The print shows a range up to ${herm}. That is a start capacitor.`;
      return { outcome: 'undecided', findings: said(herm, 'start', text) };
    }
    if (print.fan === null) {
      const text = `The print shows ${herm}: one section.`;
      return { outcome: 'single', findings: said(herm, 'single', text) };
    }
    const fan = say(print.fan, 'µF');
    const text = `The print shows HERM ${herm} and FAN ${fan}: two sections that share C.`;
    return { outcome: 'dual', findings: said(`${herm}, ${fan}`, 'dual', text) };
  },
  probe: () => [
    { label: print({ herm: '45', fan: '5' }) },
    { label: print({ herm: '45', fan: null }) },
    { label: print({ herm: '227', fan: null, range: { low: '189', high: '227' } }) },
    { label: { print: untaken } },
    {},
  ],
});
