import type { Parts } from '../../schema.ts';
import { judgement } from '../judgement.ts';
import { chose, over, past, print, reads, untaken } from '../probing.ts';
import { takenOf } from './new-part-pick.ts';
import { type NewPartLimits, readNewPart } from './new-part-reading.ts';
import { askedFor, wantedOf } from './wanted.ts';

/**
 * The new run capacitor before it is fitted: whether the one that was picked may go in, and whether it reads right,
 * dead. `part` holds the choice `pick`, the label `print` of any other part, and the figures herm, fan, hf in µF and case
 * in MΩ; `earlier` is the try before. A new part outside its limits is not repeated: another one is taken.
 */
export const newPart = judgement({
  id: 'new-part',
  semantics: 1,
  takes: ['old', 'diagram', 'part', 'earlier'],
  limits: ['volts', 'fail', 'clear', 'habit'],
  outcomes: ['good', 'refused', 'no-choice', 'out', 'undecided'],
  run({ old, diagram, part, earlier }, limits, force) {
    const rating = wantedOf(old, diagram, limits.volts);
    if (rating === null) return { outcome: 'undecided', findings: [askedFor(null)] };
    const taken = takenOf(rating, part, force.truck);
    if (taken.is !== 'taken')
      return { outcome: taken.is, findings: [taken.finding, askedFor(rating, 'asked for')], uses: taken.uses };
    const lines = readNewPart(rating.label, part, earlier, limits, force);
    const findings = [taken.finding, ...lines.map((line) => line.finding)];
    const has = (is: string): boolean => lines.some((line) => line.is === is);
    if (has('out')) return { outcome: 'out', findings, uses: [] };
    if (has('open')) return { outcome: 'undecided', findings, uses: [] };
    return { outcome: 'good', findings, uses: taken.uses };
  },
  probe: (limits) => probeParts(limits),
});

function probeParts({ fail, clear }: NewPartLimits): { old?: Parts; diagram?: Parts; part?: Parts; earlier?: Parts }[] {
  const old = print({ herm: '60', fan: '30' });
  const wide = print({ herm: '80', fan: '5' });
  const other = (label: Parts, of: Parts): Parts => ({ ...of, ...label, pick: chose('other') });
  const both = reads({ herm: '60.1', fan: '30.1' }, 'µF');
  const read = (of: Parts): { old: Parts; part: Parts } => ({ old, part: other(old, { ...both, ...of }) });
  const at = (value: Parameters<typeof past>[0]): Parts => reads({ case: value }, 'MΩ');
  const out = read(reads({ herm: past('56.4', '-0.0001') }, 'µF'));
  return [
    read({}),
    read(reads({ hf: '20.1' }, 'µF')),
    read(reads({ herm: '56.4' }, 'µF')),
    out,
    { ...read({}), earlier: out.part },
    read(reads({ fan: past('31.8', '0.0001') }, 'µF')),
    read(reads({ herm: '30.1', fan: '60.1' }, 'µF')),
    read(reads({ hf: '30.1' }, 'µF')),
    read({ case: over }),
    read(at(past(clear.value, '0.01'))),
    read(at(clear.value)),
    read(at(fail.value)),
    read(at(past(fail.value, '-0.01'))),
    read({ fan: untaken }),
    read({ herm: over }),
    { old: wide, part: other(wide, reads({ herm: '80.1', fan: '4.71' }, 'µF')) },
    { old, part: other(print({ herm: '70', fan: '30' }), both) },
    { old, part: other(print({ herm: '60', fan: '30', volts: '370' }), both) },
    { old, part: other(print({ herm: '60', fan: '30', volts: null }), both) },
    { old, part: { ...both, pick: chose('other') } },
    {
      old: print({ herm: '45', fan: '5' }),
      part: { ...reads({ herm: '45.3', fan: '5.04' }, 'µF'), pick: chose('first') },
    },
    { old, part: { ...both, pick: chose('second') } },
    { old, part: both },
    { part: other(old, both) },
    { old },
    {},
  ];
}
