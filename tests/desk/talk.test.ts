/** Conversations by chance on the real desk, against rules that read nothing but entries and prompts. */
import { describe, expect, test } from 'vitest';
import { asItIs, BROKEN_TALK, talk, tellBreach } from '../../engine/desk/talk/index.ts';
import { SHELF } from '../../flows/index.ts';

const product = asItIs(SHELF[0]);
const SEED = 20261129;

describe('20,000 turns', () => {
  test('break no rule, and get past every gate', { timeout: 600_000 }, async () => {
    const talked = await talk(product, { turns: 20_000, seed: SEED });
    expect(tellBreach(talked)).toEqual(['  breaches: 0']);
    // Conversations that went nowhere would prove nothing.
    const { conversations, refused, turns, proved, judged, restarts, verdicts, endings, crashes, replays } =
      talked.figures;
    expect(turns).toBeGreaterThanOrEqual(20_000);
    expect(refused / turns).toBeLessThan(0.45);
    expect(proved / conversations).toBeGreaterThan(0.5);
    expect(judged / conversations).toBeGreaterThan(0.8);
    expect(restarts).toBeGreaterThan(100);
    expect(Object.keys(verdicts).length).toBeGreaterThan(80);
    expect(Object.keys(endings).length).toBeGreaterThan(3);
    expect(crashes).toBeGreaterThan(500);
    expect(replays).toBeGreaterThan(200);
  });
});

/** Those that some hundred turns catch; the others: npm run prove -- --talk 3000 --broken. */
const SOON: readonly string[] = [
  'a taken-over isolation stays proved',
  'an emergency is only a note',
  'the age of a proof is only a note',
  'a gate taken back still counts',
  'a reply sent again counts twice',
  'stop is not heard',
  '40 V between legs counts as dead',
];
/** It stops where it breaks a rule; a changed page changes what is said by chance, and how soon that is. */
const turns = 4000;
describe('a broken product is caught', () => {
  test.each(SOON)('%s', { timeout: 120_000 }, async (name) => {
    const broken = BROKEN_TALK.find((b) => b.name === name);
    if (!broken) throw new Error(`nothing is broken by the name ${name}`);
    const { breach } = await talk(broken.product(product), { turns, seed: 7, tries: 0 });
    expect(breach, name).not.toBeNull();
    if (broken.rules.length > 0) expect(broken.rules).toContain(breach?.rule);
  });

  test('and what shows it is made short, and can be read', { timeout: 120_000 }, async () => {
    const broken = BROKEN_TALK.find((b) => b.name === 'stop is not heard');
    const talked = await talk(broken?.product(product) ?? product, { turns, seed: 7 });
    // Stop alone, or stop after the one step without which nothing would be heard instead of it.
    expect(talked.breach?.conversation.length).toBeLessThanOrEqual(2);
    expect(tellBreach(talked).join('\n')).toMatch(
      /BREACH of "stop".*\n.*seed 7, \d\d+ steps shortened to [12]:\n[\s\S]*: stop/,
    );
  });
});
