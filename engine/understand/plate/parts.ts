/** What a plate is read into: each piece of its text with what it was taken for. */

export type PlateRole =
  | 'volts'
  | 'lowest-volts'
  | 'highest-volts'
  | 'coil-volts'
  | 'phase'
  | 'hertz'
  | 'rla'
  | 'lra'
  | 'fla'
  | 'mca'
  | 'mop'
  | 'resistive'
  | 'amps'
  | 'watts'
  | 'horsepower'
  | 'speed'
  | 'poles'
  | 'service-factor'
  | 'ambient'
  | 'temperatures'
  | 'insulation-class'
  | 'frame'
  | 'rotation'
  | 'duty'
  | 'enclosure'
  | 'refrigerant'
  | 'charge'
  | 'pressure-high'
  | 'pressure-low'
  | 'pressure'
  | 'sections'
  | 'range'
  | 'tolerance'
  | 'fault-current'
  | 'climate'
  | 'protection'
  | 'standard'
  | 'number'
  | 'heading';

export interface PlatePart {
  readonly role: PlateRole;
  /** As typed. */
  readonly text: string;
  /** Plain decimals in the order of the print, in `unit`; a fraction as printed ("1/4"). Empty for what is words. */
  readonly values: readonly string[];
  readonly unit: string;
  /** Where in the text the piece and its values stand. */
  readonly from: number;
  readonly to: number;
}

/** What a role is called to a person. */
export const ROLE_NAMES: Readonly<Record<PlateRole, string>> = {
  volts: 'volts',
  'lowest-volts': 'lowest volts',
  'highest-volts': 'highest volts',
  'coil-volts': 'coil volts',
  phase: 'phase',
  hertz: 'frequency',
  rla: 'RLA',
  lra: 'LRA',
  fla: 'FLA',
  mca: 'MCA',
  mop: 'MOP',
  resistive: 'resistive amps',
  amps: 'amps',
  watts: 'watts',
  horsepower: 'horsepower',
  speed: 'speed',
  poles: 'poles',
  'service-factor': 'service factor',
  ambient: 'ambient',
  temperatures: 'temperatures',
  'insulation-class': 'insulation class',
  frame: 'frame',
  rotation: 'rotation',
  duty: 'duty',
  enclosure: 'enclosure',
  refrigerant: 'refrigerant',
  charge: 'charge',
  'pressure-high': 'design pressure, high side',
  'pressure-low': 'design pressure, low side',
  pressure: 'pressure',
  sections: 'capacitance',
  range: 'capacitance, a range',
  tolerance: 'tolerance',
  'fault-current': 'fault current',
  climate: 'climatic category',
  protection: 'protection class',
  standard: 'standard',
  number: 'model, serial or part number',
  heading: 'heading',
};
