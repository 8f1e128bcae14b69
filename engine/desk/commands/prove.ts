/**
 * npm run prove: walks every reachable state of every manual on the shelf, prints what was walked, then lets every broken
 * variant be caught and shows the conversation that shows it. `--brief` leaves the conversations out.
 * Exit codes: 0 proved · 1 a breach, an unreached step, or a variant that slipped through · 2 wrong usage.
 */
import { SHELF } from '../../../flows/index.ts';
import { flatten } from '../../flatten.ts';
import { BROKEN, type Breach, catchIt, prove, rulesTable, type Subject, walksTable } from '../../prove/index.ts';
import { may } from '../rights.ts';

const say = (line = ''): void => void process.stdout.write(`${line}\n`);
const seconds = (since: number): string => `${((Date.now() - since) / 1000).toFixed(1)} s`;
const args = process.argv.slice(2);
if (args.some((a) => a !== '--brief')) {
  process.stderr.write('usage: npm run prove [-- --brief]\n');
  process.exit(2);
}
const brief = args.includes('--brief');
const rights = may as Subject['may'];
const show = (b: Breach): void => {
  say(`  ${b.rule}: ${b.what}`);
  if (!brief) for (const line of b.conversation) say(`      ${line}`);
};

let sound = true;
for (const manual of SHELF) {
  // A walk has nothing to prove where nothing is opened: then no step may touch anything, and none may ask to.
  if (Object.keys(manual.cabinets).length === 0) {
    const touching = [...flatten(manual).places.values()].filter((place) => place.class !== 'eyes');
    say(`${manual.id} ${manual.version}: nothing is opened; steps that touch anything: ${touching.length}`);
    sound &&= touching.length === 0;
    continue;
  }
  const begun = Date.now();
  const proof = prove(manual, rights);
  say(`${manual.id} ${manual.version}: ${proof.breaches.length === 0 ? 'no breach' : 'BREACHES'} (${seconds(begun)})`);
  for (const line of walksTable(proof)) say(line);
  for (const b of proof.breaches) show(b);
  for (const step of proof.unreached) say(`  never reached: ${step}`);
  sound &&= proof.breaches.length === 0 && proof.unreached.length === 0;

  const since = Date.now();
  let caught = 0;
  for (const variant of BROKEN) {
    const { breach, states } = catchIt(variant, manual, rights);
    say(`${breach ? 'caught ' : 'MISSED '} ${variant.rule.padEnd(3)} ${variant.name} (${states} states)`);
    if (breach) {
      caught++;
      show(breach);
    }
  }
  say(`${caught} of ${BROKEN.length} broken variants caught (${seconds(since)})`);
  sound &&= caught === BROKEN.length;
  if (sound) for (const line of rulesTable()) say(line);
}
process.exit(sound ? 0 : 1);
