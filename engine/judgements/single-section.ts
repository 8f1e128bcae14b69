import { Exact } from '../calc/exact.ts';
import { judgement } from './judgement.ts';
import { chose, over, past, print, read, reads } from './probing.ts';
import { confirmed, figureOf, printOf, readingOf } from './read.ts';
import { finding, say } from './say.ts';

/**
 * A run capacitor with one section that reads next to nothing or OL: open or shorted. It has no other section to prove
 * the leads on, so open counts only where the leads read another capacitor or a short right then. A part that reads µF
 * is neither, and `section-values` judges it.
 */
export const singleSection = judgement({
  id: 'single-section',
  semantics: 1,
  takes: ['label', 'readings', 'ohms', 'leads'],
  limits: ['openShare', 'shorted'],
  outcomes: ['open', 'shorted', 'neither', 'leads', 'undecided'],
  run({ label, readings, ohms, leads }, { openShare, shorted }) {
    const part = printOf(label);
    const microfarads = figureOf(readings, 'herm', 'µF');
    const resistance = readingOf(ohms, 'hermc', 'Ω');
    const reading = microfarads ? say(microfarads, 'µF') : 'no reading';
    const line = (word: string, text: string, source: string | null = null) => [
      finding({ name: 'Capacitor', reading, word, text, source }),
    ];
    if (part === null || part.fan !== null) {
      const text = part
        ? 'The part has two sections: each proves the leads for the other.'
        : 'The rating is not known.';
      return { outcome: 'undecided', findings: line('undecided', text) };
    }
    const least = new Exact(part.herm).times(openShare.value).div(100);
    if (microfarads?.gte(least)) {
      const text = `It reads ${reading}, so it is neither open nor shorted.`;
      return { outcome: 'neither', findings: line('neither', text) };
    }
    if (resistance.kind === 'figure' && resistance.value.abs().lt(shorted.value)) {
      const text = `It reads ${say(resistance.value, 'Ω')}, steady near zero. It is shorted.`;
      return { outcome: 'shorted', findings: line('shorted', text, shorted.source) };
    }
    // OL in µF alone is no open part: only next to nothing is.
    if (microfarads === null || microfarads.lt(0)) {
      return { outcome: 'undecided', findings: line('undecided', 'No reading in µF. OL there is no verdict.') };
    }
    const under = `under ${say(openShare.value, '%')} of ${say(part.herm, 'µF')}`;
    if (leads === undefined) {
      const text = `It reads ${reading}, ${under}. Read another capacitor, or a short in ohms, with these leads.`;
      return { outcome: 'leads', findings: line('ask', text, openShare.source) };
    }
    if (!confirmed(leads)) {
      return {
        outcome: 'undecided',
        findings: line('undecided', 'The leads were not shown to read. Nothing is condemned.'),
      };
    }
    const text = `It reads ${reading}, ${under}, wires off. The leads read another capacitor or a short. It is open.`;
    return { outcome: 'open', findings: line('open', text, openShare.source) };
  },
  probe({ openShare, shorted }) {
    const label = print({ herm: '35', fan: null });
    const open = new Exact(35).times(openShare.value).div(100);
    const next = reads({ herm: past(open, '-0.0001') }, 'µF');
    return [
      { label, readings: reads({ herm: open }, 'µF') },
      { label, readings: next },
      { label, readings: next, leads: { ok: chose('yes') } },
      { label, readings: next, leads: { ok: chose('no') } },
      { label, readings: { herm: over }, ohms: { hermc: read(past(shorted.value, '-0.001'), 'Ω') } },
      { label, readings: { herm: over }, ohms: { hermc: read(shorted.value, 'Ω') } },
      { label, readings: { herm: over }, ohms: { hermc: over }, leads: { ok: chose('yes') } },
      { label: print({ herm: '35', fan: '5' }), readings: next },
      {},
    ];
  },
});
