/**
 * npm run pages: every page of every manual on the shelf as a reviewer reads it: each step with its derived class, what it
 * asks, where each answer leads, and every limit with its unit and source. `npm run -s pages > file` keeps it.
 * Exit codes: 0 printed · 1 a manual is not sound (its faults are listed) · 2 wrong usage.
 */
import { SHELF } from '../../../flows/index.ts';
import { check } from '../../check.ts';
import { fingerprint } from '../../fingerprint.ts';
import { flatten, type Place } from '../../flatten.ts';

const say = (line = ''): void => void process.stdout.write(`${line}\n`);
if (process.argv.length > 2) {
  process.stderr.write('usage: npm run pages\n');
  process.exit(2);
}
let sound = true;
for (const manual of SHELF) {
  say(`# ${manual.title} (${manual.id} ${manual.version}, ${fingerprint(manual).slice(0, 12)})`);
  const seen = new Set<string>();
  let page = '';
  for (const place of flatten(manual).places.values()) {
    const name = `${place.page}/${place.name}`;
    if (seen.has(name)) continue;
    seen.add(name);
    if (place.page !== page) say(`\n## ${place.title} (${place.page})`);
    page = place.page;
    print(place);
  }
  const faults = check(manual);
  for (const f of faults) say(`FAULT ${f.place}: ${f.what}`);
  sound &&= faults.length === 0;
}
process.exit(sound ? 0 : 1);

function print(place: Place): void {
  const { step } = place;
  const short = (id: string): string => id.replace(/~\d+/g, '');
  if (step.verb === 'judge') {
    say(`\n${place.name} — decides by ${step.judgement}`);
    for (const [outcome, to] of Object.entries(place.to)) say(`  ${outcome} → ${short(to)}`);
    for (const [limit, l] of Object.entries(step.limits)) say(`  limit ${limit}: ${l.value} ${l.unit} (${l.source})`);
    return;
  }
  if (step.verb === 'found') {
    say(`\n${place.name} — sorts by what was found`);
    for (const [group, to] of Object.entries(place.to))
      say(`  ${group}${group === 'none' ? '' : ` (${step.among[group]?.join(', ')})`} → ${short(to)}`);
    return;
  }
  if (step.verb === 'verdict') {
    say(`\n${place.name} — VERDICT ${step.verdict} (${step.who}): ${step.title}`);
    for (const line of [...step.says, ...step.next]) say(`  ${line}`);
    return;
  }
  say(`\n${place.name} — [${place.class}] ${step.verb}: ${step.say}`);
  for (const c of step.callouts ?? []) say(`  ${c.level.toUpperCase()}: ${c.text}`);
  for (const line of step.body ?? []) say(`  ${line}`);
  if ('parts' in step) {
    for (const [key, part] of Object.entries(step.parts)) {
      const options = 'options' in part ? Object.keys(part.options ?? {}).join(', ') : '';
      say(
        `  asks ${key}: ${part.ask}${part.part === 'field' ? ` [${part.quantity}]` : ''}${options === '' ? '' : ` (${options})`}${part.optional ? ', may be left out' : ''}`,
      );
    }
    for (const [option, to] of Object.entries(place.to)) say(`  ${option} → ${short(to)}`);
  }
  if (place.next !== null) say(`  next → ${short(place.next)}`);
  if (place.cant !== null) say(`  can’t → ${short(place.cant)}`);
  for (const source of step.source ?? []) say(`  source: ${source}`);
}
