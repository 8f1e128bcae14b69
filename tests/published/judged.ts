/** The judgements of supply and motors with the manual's own limits, for checks whose published answer is a word. */
import type { Judged, Judgement, Limit } from '../../engine/judgements/judgement.ts';
import { nameplate } from '../../engine/judgements/supply/nameplate.ts';
import { runningAmps } from '../../engine/judgements/supply/running-amps.ts';
import { supply } from '../../engine/judgements/supply/supply.ts';
import { compressorWindings } from '../../engine/judgements/windings/compressor.ts';
import { fanWindings } from '../../engine/judgements/windings/fan.ts';
import { insulation } from '../../engine/judgements/windings/insulation.ts';
import { loadsToGround } from '../../engine/judgements/windings/loads-to-ground.ts';
import { threeWindings } from '../../engine/judgements/windings/three.ts';
import type { Parts } from '../../engine/schema.ts';
import { LIMITS } from '../../flows/limits.ts';
import { FORCE } from '../judgements/fixture.ts';

const ALL = {
  'compressor-windings': [compressorWindings, LIMITS.compressorWindings],
  'fan-windings': [fanWindings, LIMITS.fanWindings],
  'three-windings': [threeWindings, LIMITS.threeWindings],
  'loads-to-ground': [loadsToGround, LIMITS.loadsToGround],
  insulation: [insulation, LIMITS.insulation],
  nameplate: [nameplate, LIMITS.nameplate],
  supply: [supply, LIMITS.supply],
  'running-amps': [runningAmps, LIMITS.runningAmps],
} as const;

/** Runs a judgement with the limits that a flow hands it; facts left out were never asked. */
export function judged<Id extends keyof typeof ALL>(
  id: Id,
  given: Partial<Record<string, Parts>>,
): Judged<(typeof ALL)[Id][0]['outcomes'][number]> {
  const [j, limits] = ALL[id] as unknown as [
    Judgement<string, string, (typeof ALL)[Id][0]['outcomes'][number]>,
    Readonly<Record<string, Limit>>,
  ];
  return j.run(Object.fromEntries(j.takes.map((name) => [name, given[name]])), limits, FORCE);
}
