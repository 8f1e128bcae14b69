/** What a technician, a dispatcher or a caller may say at any time: nothing of it may answer a gate by chance. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readLine } from '../../../engine/understand/index.ts';
import { Conversation } from '../../people.ts';
import { BLOCK, COMPRESSOR, MEANS } from './calls.ts';

test('a gate is not answered by what is said of something else', () => {
  const said = ['now', 'maybe', 'nothing'].flatMap((level) =>
    readFileSync(new URL(`../corpus/${level}.txt`, import.meta.url), 'utf8')
      .split('\n')
      .filter((line) => /^[^#[]/.test(line)),
  );
  const taken = new Set<string>();
  const c = new Conversation().types('d', 'psc');
  const on = [
    'yes',
    MEANS,
    'yes',
    'clean, 1 cap, 45+5 6% 440',
    '121 / 0.2 0 0.1 / 0 0 / 121',
    '9.3 / 0.6 0.1 0.5 / 9.3',
  ];
  const lines = [
    ...on,
    BLOCK,
    'no diagram',
    'wires off',
    'herm 36.1 fan 5.02 hf 4.4 case ol',
    'spin free',
    COMPRESSOR,
    'nothing',
  ];
  for (const line of [...lines, 'other 45+5 440 herm 45.3 fan 5.04', 'fitted', 'wires back', '17.9 96 1.2', 'closed']) {
    const { parts } = c.prompt();
    if (parts.some(({ key, kind }) => key === 'ok' && kind !== 'choose'))
      for (const text of said) {
        const ok = readLine(text, parts).given.ok?.[0];
        if (ok === 'yes' || ok === 'done') taken.add(text);
      }
    c.types(line);
  }
  expect([...taken].sort()).toEqual([
    'all good',
    'arc flash in the disconnect, im ok',
    'done',
    'fan spins free, 12 turns',
    'locked and tagged',
    'ok',
    'wires off herm fan c',
    'yes',
  ]);
});
