/** Worked calls of walk-ins and reach-ins. */
import type { Example } from '../../engine/vocabulary.ts';
import { BOX_COOLS, PROVING } from './lines.ts';

const BOX = ['d', 'walk-in'];
/** Make-dead of a box with one run capacitor, and its dead tests, nothing found. */
const BOX_DEAD = [
  ...['yes', 'breaker, no other feed, two legs, outlet', 'yes', 'clean, 1 cap, 25 6% 440, two terminals'],
  ...[PROVING, '9.3 / 0.2 / 9.3', 'contacts .1 .1 coil 12.6 t1g ol t2g ol overload 0.1', 'run only'],
  ...['no diagram', 'wires off', '24.6 case ol', 'spin free', 'cr 1.4 cs 4.6 sr 6.0 g ol'],
];
export const REFRIGERATION: readonly Example[] = [
  {
    title: 'A start relay open behind a resistor that reads like a leak: the relay, not the capacitor',
    lines: [
      ...[...BOX, 'product 47 hours 3 r404a hums trips'],
      ...['yes', 'breaker, heater, two legs, outlet', 'yes', 'clean, 2 caps, 25 6% 440, two terminals'],
      ...['121 / 0 0 0 / 0 0 / 0 0 0 / 121', '9.3 / 0.2 0.1 / 9.3'],
      ...[
        'contacts .1 .1 coil 12.6 t1g ol t2g ol overload 0.1',
        'start and run',
        'no diagram',
        'wires off',
        '24.6 case ol',
      ],
      ...['potential', 'resistor one end off', '189-227 MFD 330 VAC', 'start 201 bleed 15k 1-2 ol 5-2 5.4k'],
      ...['spin free', 'cr 1.4 cs 4.6 sr 6.0 g ol', 'nothing', 'start parts fitted', 'wires back'],
      ...['9.6 56 1.0', 'closed', '239 238 comp 7.1 fan .9 box 47', 'box 41'],
    ],
    then: ['capacitor-good', 'start-relay-fails', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'Start part or run part, nobody can tell: neither is judged, and nothing is started',
    lines: [
      ...[...BOX, 'product 47 r134a hums trips', 'yes', 'breaker, no other feed, two legs, outlet', 'yes'],
      ...['clean, 1 cap, two terminals', PROVING, '9.3 / 0.2 / 9.3'],
      ...['contacts .1 .1 coil 12.6 t1g ol t2g ol overload 0.1', 'no idea', 'spin free', 'cr 1.4 cs 4.6 sr 6.0 g ol'],
    ],
    then: ['capacitors-not-told'],
    ends: 'raised',
  },
  {
    title: 'Start capacitor alone, the external overload open',
    lines: [
      ...[...BOX, 'product 47 r134a hums trips', 'yes', 'breaker, no other feed, two legs, outlet', 'yes'],
      ...['clean, 1 cap, two terminals', PROVING, '9.3 / 0.2 / 9.3'],
      ...[
        'contacts .1 .1 coil 12.6 t1g ol t2g ol overload ol',
        'cold',
        'start only',
        'current',
        'resistor one end off',
      ],
      ...[
        '189-227 MFD 330 VAC',
        'start 201 bleed 15k contacts ol coil 0.6 upright',
        'spin free',
        'cr 1.4 cs 4.6 sr 6.0 g ol',
      ],
      ...[
        'nothing',
        'overload fitted',
        'wires back',
        '9.6 56 1.0',
        'closed',
        '239 238 comp 7.1 fan .9 box 47',
        'box 41',
      ],
    ],
    then: ['external-overload-open', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'The external overload open, cold, and with it both pairs to C: the overload, no terminal cover',
    lines: [
      ...[...BOX, 'product 47 r134a hums trips', 'yes', 'breaker, no other feed, two legs, outlet', 'yes'],
      ...['clean, 1 cap, two terminals', PROVING, '9.3 / 0.2 / 9.3'],
      ...[
        'contacts .1 .1 coil 12.6 t1g ol t2g ol overload ol',
        'cold',
        'start only',
        'current',
        'resistor one end off',
      ],
      ...['189-227 MFD 330 VAC', 'start 201 bleed 15k contacts ol coil 0.6 upright', 'spin free'],
      ...['cr ol cs ol sr 6.0 g ol', 'cold', 'nothing', 'overload fitted'],
    ],
    then: ['external-overload-open', 'common-lead-open'],
  },
  {
    title: 'The external overload open on a hot shell, and both pairs to C: it cools, the terminals stay shut',
    lines: [
      ...[...BOX, 'product 47 r134a hums trips', 'yes', 'breaker, no other feed, two legs, outlet', 'yes'],
      ...['clean, 1 cap, two terminals', PROVING, '9.3 / 0.2 / 9.3'],
      ...['contacts .1 .1 coil 12.6 t1g ol t2g ol overload ol', 'hot', 'start only', 'current', 'resistor one end off'],
      ...['189-227 MFD 330 VAC', 'start 201 bleed 15k contacts ol coil 0.6 upright', 'spin free'],
      ...['cr ol cs ol sr 6.0 g ol', 'hot', '9.6 56 1.0', 'not yet'],
    ],
    then: ['external-overload-has-to-cool', 'overload-open', 'left-off'],
    ends: 'left',
  },
  {
    title: 'The external overload open on a hot shell: it cools and reads again, and why it got hot is not known',
    lines: [
      ...[...BOX, 'product 47 r134a hums trips', 'yes', 'breaker, no other feed, two legs, outlet', 'yes'],
      ...['clean, 1 cap, two terminals', PROVING, '9.3 / 0.2 / 9.3'],
      ...['contacts .1 .1 coil 12.6 t1g ol t2g ol overload ol', 'hot', 'start only', 'current', 'resistor one end off'],
      ...['189-227 MFD 330 VAC', 'start 201 bleed 15k contacts ol coil 0.6 upright', 'spin free'],
      ...['cr 1.4 cs 4.6 sr 6.0 g ol', '9.6 56 1.0', 'cooled', '0.2', 'closed'],
      ...['239 238 comp 7.1 fan .9 box 47', 'box 41'],
    ],
    then: ['external-overload-has-to-cool', 'overload-without-cause'],
    ends: 'raised',
  },
  {
    title: 'A refrigerant that burns: over to a senior',
    lines: [...BOX, 'product 44 r290 hums trips'],
    then: ['flammable-refrigerant-handed-over'],
    ends: 'raised',
  },
  {
    title: 'Nobody can read which refrigerant it is: it counts as one that burns',
    lines: [...BOX, 'product 44 other hums trips', 'unreadable'],
    then: ['refrigerant-may-burn'],
    ends: 'raised',
  },
  {
    title: 'The refrigerant left out, and the plate says propane',
    lines: [...BOX, 'product 44 hums trips', 'propane'],
    then: ['flammable-refrigerant-handed-over'],
    ends: 'raised',
  },
  {
    title: 'It stood in defrost',
    lines: [...BOX, 'product 43 r404a defrost', 'runs', ...BOX_COOLS],
    then: ['stood-in-defrost', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'The box holds it off',
    lines: [...BOX, 'product 43 r404a evap fans', 'fans still, iced, calls'],
    then: ['held-by-the-box'],
    ends: 'raised',
  },
  {
    title: 'High pressure tripped on a dirty condenser: cleaned, reset once, the dead tests, proven',
    lines: [...[...BOX, 'product 43 r404a high pressure', 'grease', 'cleaned and reset', ...BOX_DEAD], ...BOX_COOLS],
    then: ['box-high-pressure-reset', 'capacitor-good', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'High pressure tripped behind a weak fan: the dead tests find its motor',
    lines: [...BOX, 'product 43 r404a high pressure', 'fan stiff', ...BOX_DEAD.slice(0, -2)],
    then: ['box-high-pressure-fan', 'capacitor-good'],
  },
  {
    title: 'High pressure tripped, the fan good in every dead test: certified, no reset',
    lines: [...BOX, 'product 43 r404a high pressure', 'fan not seen', ...BOX_DEAD],
    then: ['box-high-pressure-fan', 'capacitor-good', 'high-pressure-not-the-fan'],
    ends: 'raised',
  },
  {
    title: 'It runs and the box stays warm: what is seen at the evaporator, then a senior',
    lines: ['e', 'walk-in', 'product 47 hours 2 r404a it runs', 'clean', 'fans turn, coil clear, calls'],
    then: ['box-runs-warm'],
    ends: 'raised',
  },
  {
    title: 'It runs on a dirty condenser: cleaned, the box watched, proven',
    lines: ['e', 'walk-in', 'product 47 r404a it runs', 'grease', 'cleaned', ...BOX_COOLS],
    then: ['box-condenser-cleaned', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'It runs and the condenser’s fan stands: its dead tests',
    lines: ['c', 'walk-in', 'product 47 r404a it runs', 'fan still', ...BOX_DEAD.slice(0, 4)],
    then: ['box-fan-weak'],
  },
  {
    title: 'Silent, called, nothing of the box holds it: its coil’s print, no thermostat of a house',
    lines: ['a', 'walk-in', 'product 47 r404a nothing', '240', ...BOX_DEAD],
    then: ['control-not-apart', 'capacitor-good'],
  },
  {
    title: 'High pressure tripped on a clean condenser: certified',
    lines: [...BOX, 'product 43 r404a high pressure', 'clean'],
    then: ['box-high-pressure-unexplained'],
    ends: 'raised',
  },
  {
    title: 'High pressure tripped on a dirty condenser that is not cleaned now: it stays off',
    lines: [...BOX, 'product 43 r404a high pressure', 'dirty', 'not now'],
    then: ['box-left-dirty'],
    ends: 'raised',
  },
  {
    title: 'A dirty condenser that is not cleaned now: said, and the dead tests go on',
    lines: [...BOX, 'product 43 r404a dirty', 'not now', 'yes'],
    then: ['condenser-left-dirty'],
  },
  {
    title: 'Oil safety: certified',
    lines: [...BOX, 'product 43 r404a oil safety'],
    then: ['pressure-or-oil-safety-open'],
    ends: 'raised',
  },
];
