/** Questions shaped like the steps of whole calls, also of pages that are still to be written. */
import type { Part } from '../../engine/schema.ts';
import { act, choose, confirm, field, label, note, option, photo } from './parts.ts';

const volts = (key: string, ...words: string[]) => field(key, 'V', { over: false, words });
const ohms = (key: string, ...words: string[]) => field(key, 'Ω', { words });
const amps = (key: string, ...words: string[]) => field(key, 'A', { over: false, words });
const microfarads = (key: string, ...words: string[]) => field(key, 'µF', { words });
const maybe = <P extends Part>(part: P): P => ({ ...part, optional: true });

export const observation = choose('choice', false, [
  option(
    'a',
    'Outdoor unit silent',
    'silent',
    'dead',
    'nothing runs outside',
    'outdoor unit dead',
    'not doing anything',
  ),
  option('b', 'Hum, nothing turns', 'hums nothing turns', 'hum', 'hums', 'humming', 'just hums', 'buzz no spin'),
  option(
    'c',
    'Compressor runs, fan still',
    'fan still',
    'fan not turning',
    'fan not spinning',
    'condenser fan out',
    'fan dead',
  ),
  option(
    'd',
    'Fan runs, compressor hums, clicks off or is silent',
    'fan runs comp hums',
    'compressor hums',
    'comp wont start',
    'compressor not starting',
    'comp clicks off',
  ),
  option(
    'e',
    'Both run, air not cold',
    'not cold',
    'running not cooling',
    'both run no cooling',
    'blowing cool not cold',
  ),
  option('f', 'Starts and stops every few minutes', 'short cycling', 'short cycles', 'kicks on and off', 'cycling'),
  option('g', 'Contactor buzzes or chatters', 'chatters', 'buzzes', 'contactor chattering', 'contactor buzzing'),
  option(
    'h',
    'Breaker trips or fuse opens',
    'breaker trips',
    'fuse blows',
    'trips',
    'breaker tripped',
    'blown fuse',
    'keeps tripping',
    'pops breaker',
  ),
  option('i', 'Outdoor runs, indoor blower doesn’t', 'no blower', 'no air inside', 'blower dead', 'blower not running'),
  option('j', 'Ice on coil or lines', 'ice', 'frozen', 'iced up', 'frozen coil', 'ice on the lineset'),
  option(
    'k',
    'Water at the indoor unit, float tripped',
    'water',
    'float',
    'float switch tripped',
    'leaking water',
    'pan full',
  ),
  option('l', 'Other noise or smell', 'noise', 'smell', 'grinding', 'squealing', 'loud'),
  option('m', 'Outdoor runs with the thermostat OFF', 'runs with stat off', 'wont shut off', 'runs all the time'),
  option('n', 'Warm air in cooling', 'warm air', 'hot air', 'blowing hot', 'blows warm'),
  option('o', 'Error code or blinking board', 'error code', 'blinking', 'flashing light', 'fault code'),
  option('p', 'Blower never stops, compressor locked out, alarm', 'leak alarm', 'locked out', 'blower never stops'),
]);
export const unitClass = choose('class', false, [
  option('psc', 'PSC, one dual run capacitor (three terminals)', 'psc', 'dual', 'dual cap'),
  option('ecm', 'Single-section capacitor, electronically commutated fan', 'ecm', 'single'),
  option('refrigeration', 'Condensing unit of a walk-in or reach-in', 'walk-in', 'reach-in'),
  option('unsure', 'Not sure'),
]);
export const fit = confirm(
  'ok',
  'Are you and your meter fit for this?',
  option('yes', 'Yes, all of it', 'fit'),
  option('no', 'No, something is missing'),
);
export const means: Part[] = [
  choose('means', true, [
    option('pull-out', 'Pull-out', 'pullout', 'disconnect'),
    option('switch', 'Switch'),
    option('breaker', 'Breaker', 'cb'),
    option('plug', 'Plug'),
  ]),
  choose('feeds', true, [
    option('none', 'No other feed', 'no second feed'),
    option('indoor', 'Indoor unit'),
    option('heater', 'Crankcase or defrost heater', 'heater'),
    option('cooler', 'Unit cooler, fans and defrost', 'unit cooler'),
  ]),
];
export const locked = confirm(
  'ok',
  'Open it, lock it, tag it, try it.',
  option('yes', 'Open, locked, tagged, tried'),
  option('no', 'Something started'),
  option('cant', 'No lock fits'),
);
export const look: Part[] = [
  choose('condition', true, [
    option('clean', 'Clean, nothing odd', 'cover off clean', 'clean'),
    option('bulged', 'Bulged top', 'swollen'),
    option('burnt', 'Terminal burnt through', 'tab burnt off'),
    option('rust', 'Rust, dirt or age', 'rusty'),
  ]),
  field('count', 'count', { over: false, words: ['cap', 'caps'] }),
  { ...label, optional: true },
];
export const proving: Part[] = [
  volts('before', 'source', 'known'),
  volts('l1l2', 'l1-l2'),
  volts('l1g', 'l1-g'),
  volts('l2g', 'l2-g'),
  volts('t1g', 't1-g'),
  volts('t2g', 't2-g'),
  volts('after', 'again'),
];
export const provingTwoFeeds: Part[] = [
  ...proving.slice(0, -1),
  volts('x12', '2nd feed'),
  volts('x1g', '2nd feed'),
  volts('x2g', '2nd feed'),
  ...proving.slice(-1),
];
export const residual: Part[] = [
  volts('batteryBefore', 'battery'),
  volts('hc', 'h-c', 'herm'),
  volts('fc', 'f-c', 'fan'),
  volts('hf', 'h-f'),
  volts('batteryAfter', 'again'),
];
export const residualTwoCaps: Part[] = [
  volts('batteryBefore', 'battery'),
  volts('start'),
  volts('run'),
  volts('batteryAfter'),
];
export const control: Part[] = [
  ohms('f1', 'fuses'),
  ohms('f2', 'fuses'),
  ohms('k1', 'contacts'),
  ohms('k2', 'contacts'),
  ohms('coil'),
  ohms('t1g', 't1-g'),
  ohms('t2g', 't2-g'),
];
export const fuses: Part[] = [ohms('f1', 'fuses'), ohms('f2', 'fuses')];
export const wiresOff: Part[] = [
  act(
    'ok',
    'Record the wiring, then take the wires off HERM, FAN and C.',
    option('done', 'Recorded, wires off'),
    option('cant', 'They don’t come off'),
  ),
  { ...note, key: 'colours', optional: true },
  photo,
];
export const sections: Part[] = [
  microfarads('herm', 'h', 'comp'),
  microfarads('fan', 'f'),
  maybe(microfarads('hf', 'h-f')),
  maybe(field('case', 'MΩ', { unitNeeded: true, words: ['shell', 'rim'] })),
];
export const sectionsAgain: Part[] = sections.map(maybe);
export const third: Part[] = [microfarads('fan', 'f'), microfarads('hf', 'h-f')];
export const spin: Part[] = [
  choose('spin', true, [
    option('free', 'Spins free', 'free', 'spin free'),
    option('stiff', 'Stiff', 'spin stiff', 'tight'),
    option('scrapes', 'Scrapes', 'scraping', 'rubs'),
    option('play', 'Play in the shaft', 'play in shaft', 'wobbles'),
  ]),
];
export const windings: Part[] = ['cr', 'cs', 'sr', 'g'].map((key) => ohms(key));
export const fanWindings: Part[] = [ohms('ab', 'fan'), ohms('bc', 'fan'), ohms('ac', 'fan'), ohms('frame')];
export const newPart: Part[] = [microfarads('herm'), microfarads('fan')];
export const figures: Part[] = [
  volts('l1l2', 'volts', 'v'),
  volts('t1t2'),
  amps('comp', 'c', 'compressor'),
  amps('fan', 'f'),
  maybe(field('split', 'Δ°F')),
];
export const lowest: Part[] = [volts('lowest', 't1t2 min')];
export const controlLive: Part[] = [volts('yc', 'y-c', 'y-c outdoor'), maybe(volts('coil'))];
export const switches: Part[] = [volts('delay'), volts('lp'), volts('hp')];
export const coilOhms: Part[] = [ohms('coil')];
export const startOhms: Part[] = [ohms('startohm', 'start ohm')];
export const startPart: Part[] = [maybe(ohms('resistor')), microfarads('start'), ohms('ohm')];
export const runPart: Part[] = [microfarads('run'), field('case', 'MΩ', { unitNeeded: true })];
export const relay: Part[] = [ohms('contacts', '1-2'), ohms('coil', '5-2')];
export const board: Part[] = [volts('in', 'board line in'), volts('out', 'board fan out')];
