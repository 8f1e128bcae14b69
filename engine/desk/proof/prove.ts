/** The proof of a manual on the shelf, its walks beside each other on as many cores as there are. */
import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import { type Gone, type Proof, together, type WalkName, walksOf } from '../../prove/index.ts';
import type { Manual } from '../../vocabulary.ts';

/** A walk keeps every state it has seen: with room for what is young, less of it is moved about. */
const ROOM = { maxOldGenerationSizeMb: 6144, maxYoungGenerationSizeMb: 256 } as const;

/** @throws what a walk threw. */
export async function prove(manual: Manual): Promise<Proof> {
  const left = [...walksOf(manual)];
  const gone: Gone[] = [];
  const hand = async (): Promise<void> => {
    for (let name = left.shift(); name; name = left.shift()) gone.push(await walker(manual, name));
  };
  await Promise.all(Array.from({ length: Math.min(availableParallelism(), left.length) }, hand));
  return together(manual, gone);
}

function walker({ id, version }: Manual, walk: WalkName): Promise<Gone> {
  return new Promise((resolve, reject) => {
    const program = new URL('./walker.js', import.meta.url);
    const worker = new Worker(program, { workerData: { id, version, walk }, resourceLimits: ROOM });
    worker.once('message', resolve);
    worker.once('error', reject);
    worker.once('exit', (code) => reject(new Error(`the walk ${walk} ended with ${code} and said nothing`)));
  });
}
