/** The manual's static edges: for the check, the proof's coverage and the printed pages. */

import { type Place, type Plan, skipTarget } from './flatten.ts';

export interface Edge {
  readonly from: string;
  readonly on: string;
  readonly to: string;
}
/** Every way out of a place as the pages state it. */
export function edgesOf(place: Place): Edge[] {
  const edges = Object.entries(place.to).map(([on, to]) => ({ from: place.id, on, to }));
  if (place.next !== null && place.step.verb !== 'judge' && place.step.verb !== 'found')
    edges.push({ from: place.id, on: 'next', to: place.next });
  const skip = 'parts' in place.step ? skipTarget(place) : null;
  if (skip !== null && !place.gate) edges.push({ from: place.id, on: 'skip', to: skip });
  if (skip !== null && place.gate && place.cant !== null) edges.push({ from: place.id, on: 'skip', to: place.cant });
  return edges;
}
export const allEdges = (plan: Plan): Edge[] => [...plan.places.values()].flatMap(edgesOf);
