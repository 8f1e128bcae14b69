/** What a finished call says for the customer and for the shop: nothing but what the record and its pages have. */
import { describe, expect, test } from 'vitest';
import { type CloseOut, closeOut } from '../../engine/report/summary.ts';
import { at, atFigures, BLOCK, GOOD, MOTORS, PLATE, typed, WEAK_HERM } from '../engine/given.ts';
import { Conversation, machine, PEOPLE, plate, stocked } from '../people.ts';

const wordsOf = (c: Conversation, ref: string): string =>
  ref === 'title' ? 'Warm air' : (c.texts.find((t) => t.ref === ref)?.text ?? '(removed)');
const nameOf = (id: string): string => Object.values(PEOPLE).find((p) => p.id === id)?.name ?? id;
const drawn = (c: Conversation): CloseOut | null => closeOut(c.standing, c.entries, (r) => wordsOf(c, r.ref), nameOf);
function summary(c: Conversation): CloseOut {
  const found = drawn(c);
  if (!found) throw new Error(`no summary at ${c.place}`);
  // As a test reads it: thin spaces are spaces.
  const plain = (lines: string[]): string[] => lines.map((line) => line.replaceAll('\u2009', ' '));
  return { customer: plain(found.customer), shop: plain(found.shop) };
}

const toMotors = (c: Conversation, ...lines: string[]): Conversation =>
  c.types(
    'c',
    'psc',
    'neither',
    'yes',
    'pull-out, no other feed, two legs, line side',
    'yes',
    'clean, 1 cap',
    ...lines,
  );
const proven = (): Conversation =>
  toMotors(
    new Conversation({ equipment: { facts: plate('14.1', '73', '0.8') }, truck: [stocked('40+5', '440')] }),
    '238 / 0 0 0 / 0 0 / 238',
    '9.2 / 0.3 212 188 / 9.2',
    '9.2 / 0.3 0.4 0.1 / 9.2',
    BLOCK,
    '40/5 440',
    'wires off herm fan c ; 40/5 6% 440',
    'herm 39.4 fan 2.9 hf 2.70 case ol',
    'spin free',
    'fan 15 33 48 frame ol',
    'coil dirty',
    'first herm 40.1 fan 5.02',
    'fitted',
    'wires back',
    'closed',
    '240 239 comp 12.8 fan .6 split 19',
  );
const motor = (): Conversation =>
  typed(at('readings', {}), [
    GOOD,
    'stiff',
    'cr .9 cs 2.7 sr 3.6 g ol',
    'nothing',
    'motor fitted',
    '45+5 6% 440',
    'other 45+5 440 herm 45.2 fan 5.01',
    'fitted',
    'wires back',
    PLATE,
    'closed',
    '240 239 comp 12.8 fan 1.1 split 19',
  ]);
const nothingFound = (): Conversation =>
  typed(at('readings'), [GOOD, ...MOTORS, PLATE, 'closed', '240 239 comp 13.1 fan .9 split 19']);
const raised = (): Conversation => new Conversation().types('a', 'vrf', 'skip the caller has to leave');
const leftOff = (): Conversation => typed(at('readings'), [WEAK_HERM, ...MOTORS, 'coil dirty', 'skip no part like it']);
const notRun = (): Conversation => atFigures().types('skip no clamp with me');

const CALLS = { proven, motor, 'nothing found': nothingFound, raised, 'left off': leftOff, 'not run': notRun };

test('a job under way has none', () => {
  expect(drawn(at('readings'))).toBeNull();
  expect(drawn(proven().type('smoke from the unit'))).toBeNull();
});

test('given a weak fan section replaced and proven, then the customer reads what was found, fitted and read', () => {
  expect(summary(proven()).customer).toEqual([
    'Visit of 2026-07-14, by Ines Vale.',
    'Found: The run capacitor is out of its label: replace it.',
    'HERM is the part of the capacitor that serves the compressor, FAN the part that serves the fan.',
    'HERM: 39.4 µF, allowed 37.60–42.40 µF: inside.',
    'FAN: 2.9 µF, allowed 4.70–5.30 µF: outside.',
    'Fitted: run capacitor, 40+5 µF 440 V.',
    'HERM: before 39.4 µF, new part 40.1 µF, allowed 37.60–42.40 µF.',
    'FAN: before 2.9 µF, new part 5.02 µF, allowed 4.70–5.30 µF.',
    'At the end: The repair is proven.',
    'Supply voltage: 240 V, allowed 197–253 V: inside.',
    'Compressor current: 12.8 A.',
    'Fan current: 0.6 A, allowed 0.8 A or less: inside.',
    'Air is cooled by: 19 °F, allowed 14–23 °F: inside.',
    'It ran while these figures were read.',
    'How it was left: Proven.',
    'Not signed yet: a senior reads the record first.',
  ]);
});

test('given the same, then the shop reads the lock, the line not accepted, the cause, the part and the stock', () => {
  const { shop } = summary(proven().wait(10).type('note key under the mat'));
  expect(shop.filter((line) => !/^(Rests|Verdict|HERM|FAN|New part|L1|T1|Compressor|Fan|Split)/.test(line))).toEqual([
    'Call: Warm air. Ended: Proven.',
    expect.stringMatching(/^Pages: no-cool 1, fingerprint [0-9a-f]{12}\.$/),
    'Opened 2026-07-14 15:00 UTC by Dana Quill; last entry #33, 2026-07-14 15:10 UTC.',
    'Crew: Ines Vale.',
    'Lock, Outdoor unit: Ines Vale, gates #10 to #16, 2026-07-14 15:00 UTC to 2026-07-14 15:00 UTC.',
    'Not accepted, Outdoor unit: #15, 2026-07-14 15:00 UTC, Ines Vale: Discharge every capacitor through the resistor tool, then measure what is left. 9 V battery, before: 9.2 V; HERM to C or across: 0.3 V; FAN to C: 212 V; HERM to FAN: 188 V; Battery, after: 9.2 V. Discharge again on bare metal, then take the whole line again.',
    'Note: key under the mat (#33, 2026-07-14 15:10 UTC, Ines Vale).',
    'Why it failed, #24: Coil dirty.',
    'Fitted, #27, 2026-07-14 15:00 UTC, Ines Vale: Fitted, strapped.',
    'Part used, #28: Bin 40+5, 1 used, 0 left on the truck.',
    'Not signed.',
  ]);
  expect(shop).toContain(
    'Verdict #21, 2026-07-14 15:00 UTC: The run capacitor is out of its label: replace it. (section-fails-value)',
  );
  expect(shop).toContain(
    'FAN: 2.9 µF; limits 4.70–5.30 µF; doubt ±0.08 µF (2.82–2.98 µF); fail. FAN reads 2.9 µF, −42.0 % off the rated 5 µF. The label allows 4.70–5.30 µF, and all of the doubt lies below it. Source: ±6 % printed on the part; words of ILAC-G8, non-binary rule, doubt ±(1.9 % + 2 counts) taken as rectangular.',
  );
  expect(shop).toContain(
    'Rests on #20, 2026-07-14 15:00 UTC, Ines Vale: Measure both sections and the case, wires off. HERM to C: 39.4 µF; FAN to C: 2.9 µF; HERM to FAN: 2.7 µF; Terminals to case, the lowest: OL.',
  );
});

test('given a call that is raised unseen, then it says so and claims nothing', () => {
  expect(summary(raised())).toEqual({
    customer: [
      'Visit of 2026-07-14, by Ines Vale.',
      'Nothing was fitted.',
      'At the end: Out of scope: over to a senior, who calls whom it belongs to.',
      'Not proven: the visit ended without readings that prove that it runs as it should.',
      'How it was left: With a senior.',
      'Not yet confirmed by a senior: Out of scope: over to a senior, who calls whom it belongs to.',
      'Not signed yet: a senior reads the record first.',
    ],
    shop: [
      'Call: Warm air. Ended: With a senior. Not proven.',
      expect.stringMatching(/^Pages: /),
      'Opened 2026-07-14 15:00 UTC by Dana Quill; last entry #9, 2026-07-14 15:00 UTC.',
      'Crew: Ines Vale.',
      'Lock: none was put on.',
      'Verdict #8, 2026-07-14 15:00 UTC: Out of scope: over to a senior, who calls whom it belongs to. (out-of-scope) A senior confirms it.',
      'Rests on #5, 2026-07-14 15:00 UTC, Ines Vale: What does the unit do? Outdoor unit silent.',
      'Rests on #6, 2026-07-14 15:00 UTC, Ines Vale: What kind of unit is it? VRF, chiller, ammonia, CO₂, above 600 V, gas side.',
      'Rests on #7, 2026-07-14 15:00 UTC, Ines Vale: This equipment is out of scope here. Note what whoever takes it needs. no answer.',
      'Skipped #7, Ines Vale: This equipment is out of scope here. Note what whoever takes it needs. Reason: the caller has to leave.',
      'Raised to a senior, handed over with what was read (#9, 2026-07-14 15:00 UTC, Ines Vale).',
      'Not signed.',
    ],
  });
});

test('given a motor, then it is fitted beside a capacitor that was good, and both readings stand', () => {
  const { customer } = summary(motor());
  expect(customer).toContain('Found: The run capacitor is good.');
  expect(customer).toContain('Found: The fan motor’s bearings are done: replace the motor.');
  expect(customer.filter((line) => line.startsWith('Fitted'))).toEqual([
    'Fitted: Motor fitted.',
    'Fitted: run capacitor, 45+5 µF 440 V.',
  ]);
  expect(customer).toContain('HERM: before 44.6 µF, new part 45.2 µF, allowed 42.30–47.70 µF.');
  expect(customer).toContain('It ran while these figures were read.');
});

test('given a sound unit, then nothing was fitted and it ran', () => {
  const { customer } = summary(nothingFound());
  expect(customer).toContain('Nothing was fitted.');
  expect(customer).toContain('At the end: It runs within what was checked: no part found at fault.');
  expect(customer).toContain('It ran while these figures were read.');
});

test.each([
  ['left off', leftOff, 'Left off', 'Nothing was fitted.'],
  ['fitted and not read running', notRun, 'With a senior', 'Fitted: run capacitor, 45+5 µF 440 V.'],
] as const)('given a unit %s, then it is not proven', (_, call, left, fitted) => {
  const { customer, shop } = summary(call());
  for (const line of [fitted, `How it was left: ${left}.`]) expect(customer).toContain(line);
  expect(customer.join()).toContain('Not proven');
  expect(customer.join()).not.toContain('It ran');
  expect(shop[0]).toBe(`Call: Warm air. Ended: ${left}. Not proven.`);
});

test('given a senior who signs, then both say who and when', () => {
  const { customer, shop } = summary(proven().wait(5).type('sign', 'ruth'));
  expect(customer.at(-1)).toBe('Read and signed by Ruth Marlow on 2026-07-14.');
  expect(shop.at(-1)).toBe('Signed by Ruth Marlow, 2026-07-14 15:05 UTC.');
});

test('given a reading changed after the verdict, then the verdict that fell is named and no longer found', () => {
  const c = at('readings').types(WEAK_HERM).type('back herm 44.6 hf 4.51');
  const { customer, shop } = summary(typed(c, [...MOTORS, PLATE, 'closed', '240 239 comp 13.1 fan .9 split 19']));
  expect(customer).not.toContain('Found: The run capacitor is out of its label: replace it.');
  expect(shop.filter((line) => /^(Set aside|Changed)/.test(line))).toEqual([
    expect.stringMatching(/^Set aside: verdict #17, The run capacitor is out .* Its answers changed or fell\.$/),
    expect.stringMatching(/^Changed #16 /),
  ]);
});

test('given power that came back, then the end of the isolation and the second lock are named', () => {
  const c = at('readings').wait(2).type('power is back');
  typed(c, ['yes', 'clean, 1 cap', '121 / 0 0 0 / 0 0 / 121', '9.3 / .1 .1 0 / 9.3']);
  const { shop } = summary(typed(c, [GOOD, ...MOTORS, PLATE, 'stays off']));
  expect(shop.filter((line) => line.startsWith('Lock, '))).toHaveLength(2);
  expect(shop.join('\n')).toMatch(/Isolation ended at 2026-07-14 15:02 UTC, power came back/);
});

describe.each(Object.entries(CALLS))('given a call %s', (_, call) => {
  const c = call();
  const { customer, shop } = summary(c);
  const figures = (text: string): string[] => text.replaceAll('\u2009', ' ').match(/\d+(?:[.,]\d+)*/g) ?? [];

  test('then every figure stands in the record, or in the words of a question that the shop reads with its answer', () => {
    const record = new Set(figures(JSON.stringify([c.entries, c.texts])));
    const pages = [...machine.plan.places.values()].flatMap(({ step }) => figures(JSON.stringify(step)));
    const invented = (lines: string[], known: ReadonlySet<string>): string[] =>
      lines.flatMap(figures).filter((figure) => !known.has(figure));
    expect(invented(customer, record)).toEqual([]);
    // A fingerprint is cut short.
    const evidence = shop.filter((line) => !line.startsWith('Pages: '));
    expect(invented(evidence, new Set([...record, ...pages]))).toEqual([]);
    expect(invented([...customer, 'HERM: 39.87 µF.'], record)).toEqual(['39.87']);
  });
  test('then every verdict is in both, and every finding and every piece of evidence is in the shop’s', () => {
    for (const { title, findings, evidence } of c.prompt().verdicts) {
      if (!findings.some((f) => f.name === 'New part')) expect(customer.join('\n')).toContain(title);
      expect(shop.join('\n')).toContain(title);
      for (const f of findings) expect(shop.join('\n')).toContain(f.text.replaceAll('\u2009', ' '));
      for (const seq of evidence) expect(shop.join('\n')).toContain(`Rests on #${seq},`);
    }
  });
  test('then the customer meets no word of the trade but HERM and FAN, explained before they are used', () => {
    expect(customer.join('\n')).not.toMatch(/\b(RLA|LRA|FLA|T1|L1|OL|ILAC|doubt|place|verdict|isolation)\b|~\d/);
    const first = customer.findIndex((line) => /\b(HERM|FAN)\b/.test(line));
    if (first >= 0) expect(customer[first]).toMatch(/^HERM is the part/);
    expect(customer.filter((line) => line.startsWith('HERM is')).length).toBe(first >= 0 ? 1 : 0);
  });
});

test('a verdict’s title ends no sentence, so that one can be made of it', () => {
  const titles = [...machine.plan.places.values()].flatMap(({ step }) => (step.verb === 'verdict' ? [step.title] : []));
  expect(titles.filter((title) => /[.!?]$/.test(title))).toEqual([]);
});
