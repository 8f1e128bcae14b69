/** A call as it was taken, in lines: who, where, how soon, what is likely, what to load, what they saw, what was told. */
import { VULNERABLE } from '../../decide/call.ts';
import type { Call, Units } from '../../schema.ts';
import { besideText } from '../../units/beside.ts';
import { sayUrgency } from '../../who-goes.ts';
import type { Resolve } from '../../words.ts';

const WORDS: Readonly<Record<string, string>> = {
  [VULNERABLE]: 'Vulnerable there',
  name: 'Caller',
  phone: 'Call-back number',
  address: 'Address',
  access: 'Access',
  unit: 'Make, model, marking',
  said: 'In their words',
  promised: 'Told in words',
};

export function callLines(call: Call, resolve: Resolve, units?: Units): string[] {
  const words = Object.entries(call.words).map(([what, ref]) => `${WORDS[what] ?? what}: ${resolve(ref)}`);
  const causes = call.causes.map(({ cause, because }) => `Likely: ${cause}. ${because}.`);
  return [
    ...words,
    ...(call.urgency === null
      ? []
      : [`How soon: ${sayUrgency(call.urgency)}. ${besideText(call.reasons.join(' '), units)}`]),
    ...causes,
    ...call.load.map((line) => `Load: ${line}`),
    ...call.said.map((line) => besideText(line, units)),
    ...(call.certified ? ['Somebody with the refrigerant certification should go.'] : []),
    ...(call.told.length > 0 ? [`The caller was told: ${besideText(call.told.join('; '), units)}.`] : []),
  ];
}
