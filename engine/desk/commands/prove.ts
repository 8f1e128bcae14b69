/**
 * npm run prove: walks every reachable state of every manual on the shelf, prints what was walked, then lets every broken
 * variant be caught and shows the conversation that shows it. `--brief` leaves the conversations out.
 *
 *   --talk N [--seed S] [--broken]   N turns of conversations by chance instead, against the rules of the trade; with
 *                                    --broken each product that is broken on purpose has to be caught within N turns
 *   --spin [FILE]                    writes make-dead and the check of the run capacitor in SPIN's language (no-cool.pml
 *                                    by default), and where spin and a C compiler are installed lets it prove the rules
 *
 * Exit codes: 0 proved · 1 a breach, an unreached step, or a variant that slipped through · 2 wrong usage.
 */
import { writeFileSync } from 'node:fs';
import { SHELF } from '../../../flows/index.ts';
import { flatten } from '../../flatten.ts';
import { BROKEN, type Breach, catchIt, rulesTable, type Subject, walksTable } from '../../prove/index.ts';
import { CAPACITOR_CHECK, CLAIMS, promela } from '../../prove/spin/index.ts';
import { prove } from '../proof/prove.ts';
import { check, spinVersion } from '../proof/spin.ts';
import { may } from '../rights.ts';
import { asItIs, BROKEN_TALK, talk, tellBreach, tellFigures } from '../talk/index.ts';

const say = (line = ''): void => void process.stdout.write(`${line}\n`);
const seconds = (since: number): string => `${((Date.now() - since) / 1000).toFixed(1)} s`;
const USAGE = 'usage: npm run prove [-- --brief | --talk N [--seed S] [--broken] [--brief] | --spin [FILE]]\n';
const wrong = (): never => {
  process.stderr.write(USAGE);
  process.exit(2);
};

/** Options by their names; a value is what follows one and is none itself. */
function optionsOf(args: readonly string[]): Map<string, string | null> {
  const options = new Map<string, string | null>();
  for (let i = 0; i < args.length; i++) {
    const [name, value] = [args[i] ?? '', args[i + 1]];
    const takes = ['--talk', '--seed', '--spin'].includes(name);
    if (!takes && !['--brief', '--broken'].includes(name)) wrong();
    const given = value !== undefined && !value.startsWith('--');
    options.set(name, takes && given ? value : null);
    if (takes && given) i++;
  }
  return options;
}
const options = optionsOf(process.argv.slice(2));
const brief = options.has('--brief');
const whole = (name: string, usual: number): number => {
  const value = options.has(name) ? Number(options.get(name)) : usual;
  return Number.isInteger(value) && value > 0 && value < 2 ** 31 ? value : wrong();
};

/** Manuals on which something is opened; on the others no step touches anything. */
const OPENED = SHELF.filter((manual) => Object.keys(manual.cabinets).length > 0);

if (options.has('--talk')) process.exit((await conversations(whole('--talk', 1), whole('--seed', 1))) ? 0 : 1);
if (options.has('--spin')) process.exit((await bySpin(options.get('--spin') ?? 'no-cool.pml')) ? 0 : 1);
process.exit((await walked()) ? 0 : 1);

async function bySpin(file: string): Promise<boolean> {
  const [manual] = OPENED;
  if (!manual) return wrong();
  const model = promela(flatten(manual), CAPACITOR_CHECK);
  writeFileSync(file, model);
  say(`${file}: make-dead and ${CAPACITOR_CHECK.procedure} of ${manual.id} ${manual.version}, ${CLAIMS.length} claims`);
  const version = await spinVersion();
  if (version === null) {
    say('spin or a C compiler is not installed here, so nothing was proved by it. Debian: apt-get install spin gcc');
    return true;
  }
  const begun = Date.now();
  const checked = await check(model, CLAIMS);
  for (const { claim, holds, states, trail } of checked) {
    say(
      `${holds === claim.holds ? 'as it has to be' : 'WRONG          '} ${claim.rule.padEnd(3)} ${claim.says} (${states} states)`,
    );
    if (holds || brief || !claim.holds) continue;
    for (const line of trail) say(`      ${line}`);
  }
  const right = checked.filter(({ claim, holds }) => holds === claim.holds).length;
  say(`${right} of ${checked.length} claims as they have to be, by ${version} (${seconds(begun)})`);
  return right === checked.length;
}

async function conversations(turns: number, seed: number): Promise<boolean> {
  let sound = true;
  for (const manual of OPENED) {
    const product = asItIs(manual);
    if (options.has('--broken')) {
      let [caught, tried] = [0, 0];
      for (const { name, rules, product: broken } of BROKEN_TALK) {
        const made = broken(product);
        // What is broken in `decide` alone can't be put into a desk; the proof catches it.
        if (made === product) continue;
        tried++;
        const talked = await talk(made, { turns, seed, ...(brief ? { tries: 0 } : {}) });
        if (talked.breach) caught++;
        // The proof's own variants are told apart by the proof; that a conversation shows them too is more than is asked.
        else sound &&= rules.length === 0;
        say(`${talked.breach ? 'caught ' : 'MISSED '} ${name} (${talked.figures.turns} turns)`);
        if (talked.breach) for (const line of tellBreach(talked, brief)) say(line);
      }
      say(`${manual.id} ${manual.version}: ${caught} of ${tried} broken products caught by seed ${seed}`);
      continue;
    }
    const begun = Date.now();
    let told = begun;
    const onward = (so: number): void => {
      if (Date.now() - told < 10_000) return;
      told = Date.now();
      process.stderr.write(`${so} of ${turns} turns, ${seconds(begun)}\n`);
    };
    const talked = await talk(product, { turns, seed, onward });
    say(`${manual.id} ${manual.version}: ${talked.breach ? 'A BREACH' : 'no breach'} (${seconds(begun)})`);
    for (const line of [...tellFigures(talked.figures), ...tellBreach(talked)]) say(line);
    sound &&= talked.breach === null;
  }
  return sound;
}

async function walked(): Promise<boolean> {
  const rights = may as Subject['may'];
  const show = (b: Breach): void => {
    say(`  ${b.rule}: ${b.what}`);
    if (!brief) for (const line of b.conversation) say(`      ${line}`);
  };
  let sound = true;
  for (const manual of SHELF) {
    // A walk has nothing to prove where nothing is opened: then no step may touch anything, and none may ask to.
    if (!OPENED.includes(manual)) {
      const touching = [...flatten(manual).places.values()].filter((place) => place.class !== 'eyes');
      say(`${manual.id} ${manual.version}: nothing is opened; steps that touch anything: ${touching.length}`);
      sound &&= touching.length === 0;
      continue;
    }
    const begun = Date.now();
    const proof = await prove(manual);
    say(
      `${manual.id} ${manual.version}: ${proof.breaches.length === 0 ? 'no breach' : 'BREACHES'} (${seconds(begun)})`,
    );
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
  return sound;
}
