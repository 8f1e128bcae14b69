/**
 * The refrigerants that are known here, with the class that says what may burn.
 * Source of the classes: ASHRAE 34, as the fluid files of CoolProp and class pages print them.
 */
export const REFRIGERANTS = ['R-22', 'R-32', 'R-134a', 'R-290', 'R-404A', 'R-410A', 'R-454B'] as const;
export type Refrigerant = (typeof REFRIGERANTS)[number];
/** A: lower toxicity. 1 no flame, 2L burns slowly (10 cm/s at most), 3 burns. */
export type SafetyClass = 'A1' | 'A2L' | 'A3';

const CLASSES: Readonly<Record<Refrigerant, SafetyClass>> = {
  'R-22': 'A1',
  'R-32': 'A2L',
  'R-134a': 'A1',
  'R-290': 'A3',
  'R-404A': 'A1',
  'R-410A': 'A1',
  'R-454B': 'A2L',
};
export const safetyClassOf = (refrigerant: Refrigerant): SafetyClass => CLASSES[refrigerant];

/** Whether a leak may burn, so that every source of ignition comes first. */
export const mayBurn = (refrigerant: Refrigerant): boolean => safetyClassOf(refrigerant) !== 'A1';
