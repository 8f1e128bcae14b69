/** Typed data → a picture and the same in words. Pure: the same data gives the same bytes on any machine. */
import { unreachable } from '../errors.ts';
import type { PictureData } from './data.ts';
import { decay } from './decay.ts';
import { type Drawn, framed, type Manner, type Sketch } from './frame.ts';
import { leads } from './leads.ts';
import { path } from './path.ts';
import { probes } from './probes.ts';
import { scale } from './scale.ts';
import { windings } from './windings.ts';

function sketch(data: PictureData): Sketch {
  switch (data.kind) {
    case 'leads':
      return leads(data);
    case 'probes':
      return probes(data);
    case 'scale':
      return scale(data);
    case 'decay':
      return decay(data);
    case 'windings':
      return windings(data);
    case 'path':
      return path(data);
    default:
      return unreachable(data);
  }
}
export const draw = (data: PictureData, manner: Manner = {}): Drawn => framed(sketch(data), manner);
