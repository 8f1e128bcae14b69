import { Exact } from '../../calc/exact.ts';
import type { CapacitorLabel } from '../../schema.ts';
import { judgement } from '../judgement.ts';
import { past, print, untaken } from '../probing.ts';
import { printOf } from '../read.ts';
import { finding, say } from '../say.ts';
import { printed, printedVolts, sayPrint } from './wanted.ts';

/**
 * Whether the part in the unit is what the diagram asks for. Higher volts are no difference; the diagram governs, but for
 * the capacitor of a motor that was fitted since (`motor`, its plate's rating): of that one it says nothing.
 */
export const diagram = judgement({
  id: 'diagram',
  semantics: 1,
  takes: ['label', 'diagram', 'motor'],
  limits: [],
  outcomes: ['same', 'differs', 'undecided'],
  run({ label, diagram, motor }) {
    const [own, asked] = [printOf(label), printOf(diagram)];
    const said = (word: string, text: string) => [
      finding({
        name: 'Diagram',
        reading: own ? sayPrint(printed(own)) : 'not known',
        limits: asked && sayPrint(printed(asked)),
        ...{ word, text, source: 'the wiring diagram' },
      }),
    ];
    if (printOf(motor)) {
      const text = 'A new motor went in, and its own plate decides about its capacitor. The diagram is not asked.';
      return { outcome: 'undecided', findings: said('undecided', text) };
    }
    if (!own || !asked) {
      const text = `The print on the ${own ? 'diagram' : 'part'} is not known. The two are not compared.`;
      return { outcome: 'undecided', findings: said('undecided', text) };
    }
    const against = differences(own, asked);
    if (against.length === 0)
      return { outcome: 'same', findings: said('same', 'The part in the unit is what the diagram asks for.') };
    const text = [...against, 'The part in the unit is not what the diagram asks for.'].join(' ');
    return { outcome: 'differs', findings: said('differs', text) };
  },
  probe: () => {
    const label = print({ herm: '45', fan: '5' });
    const asked = (of: Partial<CapacitorLabel>) => ({ label, diagram: print({ herm: '45', fan: '5', ...of }) });
    return [
      asked({}),
      asked({ herm: '45.0001' }),
      asked({ fan: '5.0001' }),
      asked({ fan: null }),
      asked({ volts: past('440', '0.01').toFixed() }),
      asked({ volts: '370' }),
      asked({ volts: null }),
      asked({ herm: '227', fan: null, range: { low: '189', high: '227' } }),
      { label: print({ herm: '45', fan: null }), diagram: label },
      { label, diagram: print({ herm: '45', fan: '7.5' }), motor: label },
      { label: { print: untaken }, diagram: label },
      { label },
      {},
    ];
  },
});

function differences(own: CapacitorLabel, asked: CapacitorLabel): string[] {
  if (own.range || asked.range) {
    const [have, want] = [own, asked].map((of) => sayPrint({ ...printed(of), volts: null }));
    return have === want ? volts(own, asked) : [`The part is ${have}, the diagram asks for ${want}.`];
  }
  const herm = new Exact(own.herm).eq(asked.herm) ? [] : [differs('HERM', own.herm, asked.herm)];
  return [...herm, ...fan(own.fan, asked.fan), ...volts(own, asked)];
}

const differs = (name: string, have: string, want: string): string =>
  `${name} is ${say(have, 'µF')}, the diagram asks for ${say(want, 'µF')}.`;

function fan(have: string | null, want: string | null): string[] {
  if (have === null)
    return want === null ? [] : [`The part has no FAN section, the diagram asks for ${say(want, 'µF')}.`];
  if (want === null) return [`The part has a FAN section of ${say(have, 'µF')}, the diagram shows none.`];
  return new Exact(have).eq(want) ? [] : [differs('FAN', have, want)];
}

function volts(own: CapacitorLabel, asked: CapacitorLabel): string[] {
  const [have, want] = [printedVolts(own), printedVolts(asked)];
  if (!have || !want || have.gte(want)) return [];
  return [`The part is for ${say(have, 'V')}, the diagram asks for ${say(want, 'V')}.`];
}
