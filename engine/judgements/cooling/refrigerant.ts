/** What gauge and clamp say of a refrigerant: which it is, whether it may burn, its saturation. */
import type { Exact } from '../../calc/exact.ts';
import { mayBurn, REFRIGERANTS, type Refrigerant, safetyClassOf } from '../../calc/refrigerant/refrigerants.ts';
import { accuracyPercentOf, type Saturated } from '../../calc/refrigerant/saturation.ts';
import { bubbleFahrenheit, dewFahrenheit } from '../../calc/refrigerant/superheat.ts';
import type { Finding, Parts } from '../../schema.ts';
import { chosenOf, figureOf } from '../read.ts';
import { finding, say } from '../say.ts';

/** The refrigerant chosen ("r-410a"); null where none or one that isn't known here. */
export function refrigerantOf(parts: Parts | undefined): Refrigerant | null {
  const [chosen] = chosenOf(parts, 'refrigerant');
  return REFRIGERANTS.find((name) => name.toLowerCase() === chosen) ?? null;
}

/** What comes before any hose where a leak may burn. */
export function ignitionWarning(refrigerant: Refrigerant | null): Finding[] {
  if (refrigerant === null || !mayBurn(refrigerant)) return [];
  const safety = safetyClassOf(refrigerant);
  return [
    finding({
      name: `Safety class of ${refrigerant}`,
      reading: safety,
      word: 'may burn',
      text: 'A leak of it may burn. Before a hose goes on: no flame, no spark, nothing switched nearby, air moving.',
      source: 'ASHRAE 34',
    }),
  ];
}

/** Superheat counts from dew at the suction's pressure, subcooling from bubble at the liquid's. */
export type Side = 'suction' | 'liquid';
export type Saturation =
  | { readonly is: 'known'; readonly fahrenheit: Exact; readonly doubt: string | null; readonly source: string }
  | { readonly is: 'open'; readonly text: string };

const REFUSED: Readonly<Record<Extract<Saturated, { ok: false }>['why'], string>> = {
  low: 'is under what is known of this refrigerant: it would boil below −40\u2009°F',
  high: 'is over what is known of this refrigerant: it would condense above 150\u2009°F',
  critical: 'is at or above its critical point: nothing boils or condenses there',
};

/** The saturation temperature: as the person's gauge shows it, else from pressure and refrigerant. */
export function saturationOf(readings: Parts | undefined, refrigerant: Refrigerant | null, side: Side): Saturation {
  const shown = figureOf(readings, 'saturation', '°F');
  if (shown !== null) return { is: 'known', fahrenheit: shown, doubt: null, source: 'as the gauge shows it' };
  const psig = figureOf(readings, side, 'psig');
  if (psig === null) return { is: 'open', text: `The ${side} pressure was not read.` };
  if (refrigerant === null)
    return { is: 'open', text: 'The refrigerant is not known, so a pressure has no saturation temperature.' };
  const found = (side === 'suction' ? dewFahrenheit : bubbleFahrenheit)(refrigerant, psig);
  if (!found.ok) return { is: 'open', text: `${say(psig, 'psig')} ${REFUSED[found.why]}. Read gauge and plate again.` };
  return {
    is: 'known',
    fahrenheit: found.value.toDecimalPlaces(1),
    doubt: `±${say(accuracyPercentOf(refrigerant), '%')} of the pressure`,
    source: refrigerant === 'R-454B' ? 'a flash over CoolProp’s data' : 'ancillary equations of CoolProp',
  };
}
