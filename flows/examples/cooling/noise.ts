/** Worked calls about a noise or a smell. */
import type { Example } from '../../../engine/vocabulary.ts';
import { PLACED } from '../blower.ts';
import { COMPRESSOR } from '../lines.ts';
import { LIVE, PROVE, TO_MOTORS } from './lines.ts';

const DEAD = ['psc', ...TO_MOTORS];
const proven = (title: string, lines: readonly string[], verdict: string, ends = 'repair-proven'): Example => ({
  title,
  lines: ['noise', ...lines, ...PROVE],
  then: [verdict, ends],
  ends: 'done',
});
const ended = (title: string, lines: readonly string[], verdict: string, ends: 'raised' | 'left' = 'raised') => ({
  title,
  lines: ['noise', ...lines],
  then: [verdict],
  ends,
});
export const NOISE: readonly Example[] = [
  {
    title: 'The outdoor fan screeches: its bearings by the dead tests',
    lines: [
      ...['screeching', 'screech', ...DEAD, 'stiff, has play', COMPRESSOR, 'fan 14 31 45 frame ol', 'age'],
      ...[
        'motor fitted',
        '45+5 6% 440',
        'other 45+5 440 herm 45.3 fan 5.04',
        'fitted',
        'wires back',
        '17.9 96 1.2',
        ...LIVE,
      ],
    ],
    then: ['fan-screech', 'capacitor-good', 'fan-bearings', 'new-part-right', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'The blower screeches: to its own page',
    lines: [
      'noise',
      'blower screech',
      'outdoor off',
      'nothing',
      'ecm',
      'off now',
      'rested',
      'qualified',
      ...PLACED,
      '25.8',
      'variable',
    ],
    then: ['blower-screech', 'electronic-blower-handed-over'],
    ends: 'raised',
  },
  {
    title: 'The contactor buzzes: the volts at its coil',
    lines: ['noise', 'contactor buzz', 'psc', 'blinks'],
    then: ['contactor-noise', 'thermostat-without-common'],
    ends: 'raised',
  },
  proven('A loose guard rattled', ['rattling', 'tightened'], 'rattle-put-right'),
  ended('A bent blade', ['rattle', 'bent blade'], 'blade-not-right', 'left'),
  proven('Backwards after a blink of the supply', ['loud buzz', 'single phase', 'quiet now'], 'ran-backwards'),
  ended('Three-phase and loud', ['loud whine', 'three phase'], 'rotation-suspected'),
  ended('Loud again after five minutes', ['whine', 'one', 'loud again'], 'compressor-loud'),
  proven('A clatter at start and stop', ['clatter'], 'mounts-knock', 'runs-nothing-found'),
  ended('It hammers while it runs', ['knocking'], 'slugging-suspected'),
  proven('A hiss after the stop', ['hiss after stop'], 'hiss-is-equalising', 'runs-nothing-found'),
  ended('An oily stain and a hiss', ['oil stain'], 'leak-suspected'),
  ended('The coil waits', ['musty', 'not today'], 'coil-smell-left', 'left'),
  ended('Nobody can name it', ['something else', 'warbles for a second at dusk'], 'noise-unnamed'),
];
