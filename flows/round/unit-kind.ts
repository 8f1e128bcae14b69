import { choose } from '../../engine/vocabulary.ts';

const CLASSES = {
  psc: {
    label: 'PSC with a run capacitor of two or three terminals',
    words: ['psc', 'dual', 'dual cap', 'dual run cap', 'dual capacitor', 'single', 'single cap', 'single run cap'],
    to: 'stays-on',
  },
  ecm: {
    label: 'Single-section capacitor, electronically commutated fan',
    words: ['ecm', 'ecm fan', 'ecm motor', 'electronic fan'],
    to: 'stays-on',
  },
  inverter: {
    label: 'Inverter, communicating or mini-split',
    words: ['mini-split', 'mini split', 'minisplit', 'ductless', 'communicating'],
    to: 'inverter',
  },
  'three-phase': {
    label: 'Three-phase',
    words: ['3-phase', '3 phase', 'three phase', '3ph', '3 ph', 'trifasico'],
    to: 'monitor',
  },
  refrigeration: {
    label: 'Condensing unit of a walk-in or reach-in',
    words: ['walk-in', 'reach-in', 'walk in', 'walk in cooler', 'walk in freezer', 'reach in cooler'],
    to: 'box',
  },
  'out-of-scope': {
    label: 'VRF, chiller, ammonia, CO₂, above 600 V, gas side',
    words: ['vrf', 'chiller'],
    to: 'out-of-scope',
  },
  unsure: { label: 'Not sure', words: ['dont know', 'don’t know', 'unsure', 'not sure'], to: 'inverter' },
} as const;

/** What kind of unit it is: it decides the branch, and that no hands go into an inverter by the wrong page. */
export const unitKind = choose({
  say: 'What kind of unit is it?',
  body: ['From the record, the nameplate and what is outside. Open nothing for this.'],
  callouts: [
    {
      level: 'danger',
      text: 'An inverter’s bus holds far more energy than a run capacitor. Not sure counts as inverter.',
    },
  ],
  why: 'Inverter equipment never reaches the capacitor procedure or the discharge tool.',
  as: 'class',
  options: CLASSES,
});
