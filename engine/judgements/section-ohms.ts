import type { Finding } from '../schema.ts';
import { judgement, type Limit } from './judgement.ts';
import { over, past, print, read, reads, untaken } from './probing.ts';
import { figureOf, printOf, type Reading, readingOf } from './read.ts';
import { finding, say } from './say.ts';

/**
 * Ω across each section, wires off and discharged: steady near zero is shorted, climbing to OL is not. A steady figure
 * between is neither: a winding or a resistor still sits in parallel. A section that reads µF needs no Ω. Where a part
 * of two terminals is asked for alone, the answer has no `fanc`, not even one that was left out.
 */
export const sectionOhms = judgement({
  id: 'section-ohms',
  semantics: 2,
  takes: ['ohms', 'readings', 'label'],
  limits: ['shorted'],
  outcomes: ['shorted', 'not-shorted', 'undecided'],
  run({ ohms, readings, label }, { shorted }) {
    const single = printOf(label)?.fan === null || (ohms !== undefined && !('fanc' in ohms));
    const sections = [
      { name: single ? 'Section' : 'HERM', ohms: 'hermc', microfarads: 'herm' },
      ...(single ? [] : [{ name: 'FAN', ohms: 'fanc', microfarads: 'fan' }]),
    ].map((section) => {
      const reading = readingOf(ohms, section.ohms, 'Ω');
      const charges = figureOf(readings, section.microfarads, 'µF')?.gt(0) ?? false;
      return { is: stateOf(reading, charges, shorted), finding: said(section.name, reading, charges, shorted) };
    });
    const findings = sections.map((s) => s.finding);
    if (sections.some((s) => s.is === 'shorted')) return { outcome: 'shorted', findings };
    return { outcome: sections.every((s) => s.is === 'climbs') ? 'not-shorted' : 'undecided', findings };
  },
  probe({ shorted }) {
    const below = past(shorted.value, '-0.001');
    return [
      { ohms: { hermc: over, fanc: over } },
      { ohms: { ...reads({ hermc: below }, 'Ω'), fanc: over } },
      { ohms: { hermc: over, ...reads({ fanc: 0 }, 'Ω') } },
      { ohms: { ...reads({ hermc: shorted.value }, 'Ω'), fanc: over } },
      { ohms: { hermc: over, fanc: untaken }, readings: { fan: read(5, 'µF') } },
      { ohms: { hermc: over }, label: print({ herm: '45', fan: null }) },
      { ohms: { hermc: over } },
      { ohms: { hermc: over, fanc: untaken } },
      {},
    ];
  },
});

type State = 'shorted' | 'climbs' | 'open question';
function stateOf(reading: Reading, charges: boolean, shorted: Limit): State {
  if (reading.kind === 'over') return 'climbs';
  if (reading.kind === 'figure') return reading.value.abs().lt(shorted.value) ? 'shorted' : 'open question';
  return charges ? 'climbs' : 'open question';
}

function said(name: string, reading: Reading, charges: boolean, shorted: Limit): Finding {
  const state = stateOf(reading, charges, shorted);
  const shown = reading.kind === 'figure' ? say(reading.value, 'Ω') : reading.kind === 'over' ? 'OL' : 'no reading';
  const text =
    reading.kind === 'none'
      ? charges
        ? `${name} reads µF, so it is not shorted.`
        : `${name} was not read in ohms.`
      : state === 'shorted'
        ? `${name} reads ${shown}, steady near zero. It is shorted.`
        : state === 'climbs'
          ? `${name} climbs to OL, so it is not shorted. The capacitance range was too small, or a lead had no contact.`
          : `${name} reads ${shown}. A winding or a resistor still in parallel reads so.`;
  return finding({
    name: `${name}, ohms`,
    reading: shown,
    limits: `shorted below ${say(shorted.value, 'Ω')}`,
    word: state === 'climbs' ? 'not shorted' : state,
    text,
    source: shorted.source,
  });
}
