/** A call as it was taken, in lines: who, where, how soon, what is likely, what to load, what they saw, what was told. */
import type { Call } from '../../schema.ts';
import { sayUrgency } from '../../who-goes.ts';
import type { Resolve } from '../../words.ts';

const WORDS: Readonly<Record<string, string>> = {
  name: 'Caller',
  phone: 'Call-back number',
  address: 'Address',
  access: 'Access',
  unit: 'Make, model, marking',
  said: 'In their words',
  promised: 'Told in words',
};

export function callLines(call: Call, resolve: Resolve): string[] {
  const words = Object.entries(call.words).map(([what, ref]) => `${WORDS[what] ?? what}: ${resolve(ref)}`);
  const causes = call.causes.map(({ cause, because }) => `Likely: ${cause}. ${because}.`);
  return [
    ...words,
    ...(call.urgency === null ? [] : [`How soon: ${sayUrgency(call.urgency)}. ${call.reasons.join(' ')}`]),
    ...causes,
    ...call.load.map((line) => `Load: ${line}`),
    ...call.said,
    ...(call.certified ? ['Somebody with the refrigerant certification should go.'] : []),
    ...(call.told.length > 0 ? [`The caller was told: ${call.told.join('; ')}.`] : []),
  ];
}
