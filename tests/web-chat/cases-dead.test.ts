/** Making it dead as the page shows it: lines that prove nothing, where each leads, and three tries that hold the job. */
import { describe, expect, test } from 'vitest';
import { Cases, notices, PATIENCE, PROVING, RESIDUAL, shown, strip, TO_PROVING, TO_RESIDUAL } from './cases.ts';
import type { PersonAtPhone } from './person.ts';

const cases = new Cases();

const MEANS = 'What opens this unit';
const PROVE = 'Prove the meter';
const TOOL = 'Put the 20 kΩ tool across each pair';
const DISCHARGE = 'Discharge every capacitor';
const HELD = 'Held. A senior has been told.';
const HIGH = '9.3 / 31 0.1 30.9 / 9.3';

async function typed(on: PersonAtPhone, line: string, title: string): Promise<void> {
  await on.type(line);
  await expect.poll(() => on.composer.inputValue(), PATIENCE).toBe('');
  await on.sees(title);
}

describe('given a line that proves nothing, when it is typed, then the page says why and where to', () => {
  /** A line, the question it leads to, how far the strip is, and words of the notices. */
  type Typed = readonly [line: string, title: string, steps: number, ...words: string[]];
  const GHOST: Typed = ['121 / 0 14 0 / 0 0 / 121', TOOL, 5, '14 V on L1–ground may be induced.'];
  test.each<readonly [string, readonly string[], readonly Typed[]]>([
    [
      'the second proving fails',
      TO_PROVING,
      [['121 / 0 0 0 / 0 0 / 0', PROVE, 4, 'The second proving failed', 'Take the whole line again.']],
    ],
    [
      '240 V',
      TO_PROVING,
      [['121 / 240 120 120 / 0 0 / 121', MEANS, 1, 'This is live. Close up.', '240 V on L1–L2 is live.']],
    ],
    [
      'a lost leg',
      TO_PROVING,
      [['121 / 0.4 121 121 / 0 0 / 121', MEANS, 1, 'live with a lost leg', '0.4 V on L1–L2 is dead.']],
    ],
    [
      '14 V that collapses over the tool',
      TO_PROVING,
      [GHOST, ['121 / 0.6 / 121', DISCHARGE, 5, '14 V on L1–ground falls to 0.6 V. It was induced.']],
    ],
    [
      '14 V that doesn’t',
      TO_PROVING,
      [GHOST, ['121 / 14 / 121', MEANS, 1, 'a real source feeds them', '14 V on L1–ground still reads 14 V.']],
    ],
    [
      'the battery is dead',
      TO_RESIDUAL,
      [['0.0 / 0 0 0 / 0.0', DISCHARGE, 5, 'The residuals between do not count.', 'take the whole line again']],
    ],
    [
      '31 V left',
      TO_RESIDUAL,
      [[HIGH, DISCHARGE, 5, 'HERM–C still holds 31 V, over 5 V.', 'FAN–C holds 0.1 V.', 'on bare metal']],
    ],
  ])('%s', async (_, way, lines) => {
    const ines = await cases.phone('ines', await cases.brought(way));
    for (const [line, title, steps, ...words] of lines) {
      await typed(ines, line, title);
      expect(await strip(ines)).toBe(`BEING PROVED (${steps} of 6)`);
      const said = await shown(ines);
      for (const word of words) expect(said).toContain(word);
    }
  });
});

test('three residual lines over a void hold the job; a senior opens three more, the third of them holds again', async () => {
  const job = await cases.brought([...TO_RESIDUAL, HIGH]);
  const ines = await cases.phone('ines', job);
  await typed(ines, HIGH, DISCHARGE);
  await typed(ines, 'power is back', 'Open it, lock it, tag it');
  expect(await notices(ines)).toContain('Power came back, so the isolation has ended.');
  for (const line of ['yes', 'clean, 1 cap, 45+5 6% 440', PROVING]) await cases.tell('ines', job, line);
  await ines.sees(DISCHARGE);
  await typed(ines, HIGH, HELD);
  expect(await strip(ines)).toBe('BEING PROVED (5 of 6)');
  expect(await ines.page.locator('.card .body').textContent()).toContain('The lock stays on.');
  expect(await ines.page.locator('.card').getAttribute('data-kind')).toBe('held');

  await ines.type('approve, go on');
  await ines.refusal.waitFor();
  await ines.type(RESIDUAL);
  await expect.poll(() => ines.refusal.textContent(), PATIENCE).toContain('Not understood');
  await ines.sees(HELD);
  await ines.composer.fill('');

  const ruth = await cases.phone('ruth', job);
  await ruth.sees(HELD);
  await ruth.more('Approve');
  await ruth.page.getByLabel('Reason').fill('saw the tool on video');
  await ruth.page.locator('.words').getByRole('button', { name: 'Approve' }).click();
  await ines.sees(DISCHARGE);
  for (let i = 0; i < 2; i++) await cases.tell('ines', job, HIGH);
  await expect.poll(() => ines.page.locator('.card').getAttribute('data-kind'), PATIENCE).toBe('step');
  await typed(ines, HIGH, HELD);

  await cases.tell('otto', job, 'approve, once more');
  await ines.sees(DISCHARGE);
  await typed(ines, RESIDUAL, 'Fuses, contactor, loads to ground');
  expect(await strip(ines)).toBe('PROVED DEAD');
}, 60_000);
