/** What a caller is told to do or to leave, how near the danger is, and what goes on the truck by the unit's own record. */
import { describe, expect, test } from 'vitest';
import { told } from '../../engine/judgements/caller/seen.ts';
import type { Force } from '../../engine/judgements/judgement.ts';
import type { Value } from '../../engine/schema.ts';
import { choice, FORCE, labelled, parts, recorded } from './fixture.ts';
import { run } from './run.ts';

const plain = (text: string | undefined) => text?.replaceAll('\u2009', ' ');

describe('what the caller leaves off', () => {
  const said = (of: Parameters<typeof told>[0]) => run('caller-checks', told(of));
  test.each(['again', 'hot'])('a breaker that is %s stays as it is', (breaker) => {
    expect(said({ breaker }).outcome).toBe('leave-off');
    expect(said({ breaker }).findings[0]).toMatchObject({
      ...{ name: '1', word: 'off' },
      text: 'Leave the breaker alone. It tripped twice, was reset, or is warm or wet.',
    });
  });
  test.each(['hum-still', 'fan-still', 'fan-only', 'chatters'])(
    'a motor that does not start (%s) gets no call',
    (seen) => {
      expect(said({ outdoor: seen }).outcome).toBe('leave-off');
      expect(said({ outdoor: seen }).findings[0]?.text).toBe(
        'Thermostat OFF until somebody comes: a motor that hums and does not start gets hot.',
      );
    },
  );
  test('a silent unit may be looked at', () => {
    expect(said({ outdoor: 'silent' }).outcome).toBe('checks');
  });
});

describe('danger', () => {
  const of = (hazard?: ReturnType<typeof choice>, alarm?: Force['alarm']) =>
    run('danger', hazard ? { hazard } : {}, alarm ? { ...FORCE, alarm } : FORCE).outcome;
  test('gas that was said in any words counts like the answer', () => {
    expect(of(choice('hazard', 'gas'))).toBe('gas');
    expect(of(choice('hazard', 'none'), 'gas')).toBe('gas');
    expect(of(undefined, 'smoke')).toBe('danger');
    const [said] = run('danger', {}, { ...FORCE, alarm: 'smoke' }).findings;
    expect(said?.reading).toBe('said in the call');
  });
  test('only somebody who was asked and answered is clear', () => {
    expect(of(choice('hazard', 'none'))).toBe('clear');
    expect(of(choice('hazard'))).toBe('undecided');
    expect(of(parts('V', { hazard: '_' }))).toBe('undecided');
    expect(of()).toBe('undecided');
  });
});

describe('urgency by an alarm', () => {
  const of = (alarm: Force['alarm'], ...reported: string[]) =>
    run('urgency', reported.length > 0 ? { hazard: choice('hazard', ...reported) } : {}, {
      ...FORCE,
      ...(alarm ? { alarm } : {}),
    });
  test('what was called out is now, though no question was answered', () => {
    expect(of('smoke').outcome).toBe('now');
    expect(of('smoke').findings[0]).toMatchObject({ name: 'Hazard', reading: 'smoke', word: 'now' });
    expect(of('smoke', 'none').findings[0]?.reading).toBe('smoke');
  });
  test('what was reported is shown before what was called out', () => {
    expect(of('smoke', 'gas', 'sparks').findings[0]?.reading).toBe('gas, sparks');
  });
});

describe('who has to go', () => {
  const of = (seen: Parameters<typeof told>[0]) => run('likely-causes', told(seen));
  test('a certified person where the refrigerant is among the first two, not where it comes third', () => {
    expect(of({ signs: 'ice' }).outcome).toBe('certified');
    const third = of({ signs: 'ice', blower: 'weak' });
    expect(third.findings.map((f) => f.name)).toEqual(['Filter and air flow', 'Indoor blower', 'Refrigerant']);
    expect(third.outcome).toBe('ranked');
  });
});

describe('what goes on the truck', () => {
  const of = (equipment: Force['equipment']) => run('load', told({ outdoor: 'hum-still' }), { ...FORCE, equipment });
  const known = (
    facts: Record<string, Value | undefined>,
    ...history: Parameters<typeof recorded>
  ): Force['equipment'] => {
    const unit = recorded(...history);
    const there = Object.entries(facts).flatMap(([key, value]) => (value ? [[key, value] as const] : []));
    return unit && { ...unit, facts: Object.fromEntries(there) };
  };
  const lines = (equipment: Force['equipment']) => of(equipment).findings.map((f) => plain(`${f.reading} | ${f.word}`));
  const fla = parts('A', { fla: 1.2 }).fla;
  const { print } = labelled('45+5');

  test('nothing known: the common range', () => {
    expect(of(null).outcome).toBe('common');
    expect(lines(null)).toEqual(['30 to 60 µF with 5 µF, 440 VAC | common range', 'the usual sizes | common range']);
  });
  test('the print of the capacitor, whatever else is known of the unit', () => {
    expect(of(known({ fla, print })).outcome).toBe('marking');
    expect(lines(known({ fla, print }))).toEqual(['45+5 µF, 440 VAC | from the record', 'for 1.2 A | from the record']);
    expect(plain(of(known({ print })).findings[0]?.text)).toBe('Run capacitor: 45+5 µF, 440 VAC, from the record.');
    const single = labelled('40', { volts: null }).print;
    expect(lines(known({ print: single }))[0]).toBe('40 µF | from the record');
  });
  test('without a print, what the capacitor that was fitted last read', () => {
    const fitted = { herm: '44.1', fan: '4.98' };
    expect(lines(known({}, { herm: '35.2' }, fitted))[0]).toBe(
      'the last one fitted read 44.1 and 4.98 µF | from the record',
    );
    expect(plain(of(known({}, fitted)).findings[0]?.text)).toBe(
      'Run capacitor: the last one fitted read 44.1 and 4.98 µF, from the record.',
    );
    expect(lines(known({}, { herm: '35.2' }))[0]).toBe('the last one fitted read 35.2 µF | from the record');
  });
  test('what was read only, or fitted without a reading, is no such capacitor', () => {
    const later = [{ what: 'read', herm: '36.1', fan: '5.02' }, { item: 'Contactor' }] as const;
    expect(lines(known({}, { herm: '44.1' }, ...later))[0]).toBe('the last one fitted read 44.1 µF | from the record');
    expect(of(known({}, ...later)).outcome).toBe('common');
  });
  test('what the other causes ask for has no marking', () => {
    const shown = (seen: Parameters<typeof told>[0]) =>
      run('load', told(seen)).findings.map((f) => `${f.name}: ${f.reading} | ${f.word}`);
    expect(shown({ outdoor: 'cycles' }).slice(0, 2)).toEqual([
      'Coil cleaning: hose, fin comb and cleaner | common range',
      'Refrigerant gear: gauges, scale, recovery and leak detector | common range',
    ]);
    expect(shown({ breaker: 'hot' })).toEqual(['Insulation tester: with fuses of the plate’s size | common range']);
  });
  test('amps that nobody could read are no marking', () => {
    expect(lines(known({ fla: parts('A', { fla: '_' }).fla }))[1]).toBe('the usual sizes | common range');
  });
});
