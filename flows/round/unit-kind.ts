import { choose } from '../../engine/vocabulary.ts';

/** What is asked the same way wherever the kind decides where hands may go; `to` says where each kind leads. */
const classes = <const T extends string>(
  to: Readonly<Record<'psc' | 'ecm' | 'three' | 'box' | 'closed' | 'out', T>>,
) => ({
  psc: {
    label: 'PSC with a run capacitor of two or three terminals',
    words: ['psc', 'dual', 'dual cap', 'dual run cap', 'dual capacitor', 'single', 'single cap', 'single run cap'],
    to: to.psc,
  },
  ecm: {
    label: 'Single-section capacitor, electronically commutated fan',
    words: ['ecm', 'ecm fan', 'ecm motor', 'electronic fan'],
    to: to.ecm,
  },
  inverter: {
    label: 'Inverter, communicating or mini-split',
    words: ['mini-split', 'mini split', 'minisplit', 'ductless', 'communicating'],
    to: to.closed,
  },
  'three-phase': {
    label: 'Three-phase',
    words: ['3-phase', '3 phase', 'three phase', '3ph', '3 ph', 'trifasico'],
    to: to.three,
  },
  refrigeration: {
    label: 'Condensing unit of a walk-in or reach-in',
    words: ['walk-in', 'reach-in', 'walk in', 'walk in cooler', 'walk in freezer', 'reach in cooler'],
    to: to.box,
  },
  'out-of-scope': {
    label: 'VRF, chiller, ammonia, CO₂, above 600 V, gas side',
    words: ['vrf', 'chiller'],
    to: to.out,
  },
  unsure: { label: 'Not sure', words: ['dont know', 'don’t know', 'unsure', 'not sure'], to: to.closed },
});

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
  options: classes({
    psc: 'stays-on',
    ecm: 'stays-on',
    three: 'monitor',
    box: 'box',
    closed: 'inverter',
    out: 'out-of-scope',
  }),
});

/** The blower has no call: the search may end in the outdoor unit, and hands go into one of a known kind alone. */
export const kindForSource = choose({
  say: 'No fan call reaches the board. Before its source is sought: what kind of unit is outdoors?',
  body: ['From the record, the nameplate and what is outside. Open nothing for this.'],
  why: 'The search may lead to its strip. Not sure counts as inverter: there this page ends.',
  as: 'class',
  options: classes({ psc: 'source', ecm: 'source', three: 'source', box: 'source', closed: '!left', out: '!left' }),
});

/** Ice or water, before the kind of unit is asked: what a house is told of its thermostat and its air, a box hasn't. */
export const houseOrBox = <const H extends string, const B extends string>(house: H, box: B) =>
  choose<H | B>({
    say: 'Where: at the indoor unit of a house or shop, or in a walk-in or reach-in?',
    why: 'The room’s air thaws a house’s coil. A box has defrost, a heated drain and fans of its own.',
    options: {
      house: {
        label: 'Indoor unit, its coil or lines',
        words: ['house', 'indoor', 'indoor unit', 'shop', 'attic', 'closet', 'office'],
        to: house,
      },
      box: {
        label: 'Walk-in or reach-in',
        words: ['walk-in', 'walk in', 'reach-in', 'reach in', 'freezer', 'cooler', 'box'],
        to: box,
      },
    },
    cant: house,
  });
