/** One walk of the proof in a thread of its own: told which, it says what it saw. */
import { parentPort, workerData } from 'node:worker_threads';
import { SHELF } from '../../../flows/index.ts';
import { goOver, type Subject, type WalkName } from '../../prove/index.ts';
import { may } from '../rights.ts';

interface Asked {
  readonly id: string;
  readonly version: number;
  readonly walk: WalkName;
}
const { id, version, walk } = workerData as Asked;
const manual = SHELF.find((one) => one.id === id && one.version === version);
if (!manual) throw new Error(`no manual on the shelf is ${id} ${version}`);
parentPort?.postMessage(goOver(manual, may as Subject['may'], walk));
