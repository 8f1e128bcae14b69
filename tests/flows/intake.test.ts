/** A call as it is taken: one by one or as forms, dangers from anywhere, and what the job will know of it. */
import { describe, expect, test } from 'vitest';
import { compile } from '../../engine/compile.ts';
import { learnt } from '../../engine/decide/call.ts';
import { formPrompt } from '../../engine/form.ts';
import { memoryOf, planOf } from '../../engine/replay.ts';
import type { Equipment, GivenParts } from '../../engine/schema.ts';
import { SHELF } from '../../flows/index.ts';
import { Conversation, type PersonId, plate } from '../people.ts';

const manual = SHELF.find((m) => m.caller);
if (!manual) throw new Error('no manual takes calls');
const machine = compile(manual);
const taking = (equipment?: Partial<Equipment>) =>
  new Conversation({ machine, assigned: [], ...(equipment ? { equipment } : {}) });
const says = (c: Conversation, ...lines: string[]): Conversation => {
  for (const line of lines) {
    c.type(line, 'dana');
    expect(`${line}: ${c.refusal?.text ?? 'taken'}`).toBe(`${line}: taken`);
  }
  return c;
};
const form = (c: Conversation) => formPrompt(c.standing, c.at);
/** Fills the form that stands, by the last part of each key. */
const fills = (c: Conversation, given: Readonly<Record<string, string | string[]>>, by: PersonId = 'dana') => {
  const parts: GivenParts = {};
  for (const part of form(c)?.parts ?? [])
    for (const [name, value] of Object.entries(given))
      if (part.key.endsWith(name.includes('#') ? name : `#${name}`)) parts[part.key] = value;
  return c.tap(parts, by);
};
const WHO = { name: 'Lena Orchard', phone: '555 0142', address: 'Brook Terrace 7', before: ['new'], kind: ['split'] };
const SIGHT = {
  ...{ 'seen-outdoors#outdoor': ['hum-still'], blower: ['still'], display: ['cooling'], breaker: ['tripped'] },
  ...{ signs: ['none'], 'since-when#since': ['today'], vulnerable: ['infant'], indoor: '96', rh: '65' },
};
const learntBy = (c: Conversation) => learnt(planOf(c.standing), memoryOf(c.standing));

describe('the form', () => {
  test('danger is asked first and alone; then who and where; then, after what decides a way, what they see', () => {
    const c = taking();
    expect([form(c), c.prompt().parts.map((p) => p.key)]).toEqual([null, ['hazard']]);
    says(c, 'none');
    const names = (): string[] => form(c)?.parts.map(({ key }) => key.replace(/^.*#/, '')) ?? [];
    expect(names()).toEqual(['name', 'phone', 'address', 'ways', 'access', 'before', 'kind']);
    fills(c, WHO);
    expect(names()).toEqual([
      ...['outdoor', 'blower', 'display', 'breaker', 'signs', 'since', 'recent', 'unit'],
      ...['vulnerable', 'indoor', 'outdoor', 'rh', 'said'],
    ]);
  });
  test('the temperature of goods is asked of a cold room alone', () => {
    const c = fills(says(taking(), 'none'), { ...WHO, kind: ['cold-room'] });
    expect(form(c)?.parts.map(({ ask }) => ask)).toEqual(expect.arrayContaining(['Goods', 'Hours above']));
  });
  test('filled at once or typed one by one: the same answers at the same places, the same verdict', () => {
    const at = (c: Conversation) =>
      c.entries.flatMap((e) => (e.kind === 'answered' ? [[e.body.place, Object.keys(e.body.parts)]] : []));
    const filled = fills(fills(says(taking(), 'none'), WHO), SIGHT);
    const typed = says(
      taking(),
      ...['none', 'Lena Orchard', '555 0142', 'Brook Terrace 7', 'gate', 'new', 'split', 'hums', 'no air', 'on'],
      ...['tripped', 'nothing', 'today'],
    );
    says(typed, 'skip no plate', 'baby', 'indoors 96 humidity 65', 'skip no more words');
    expect(filled.place).toBe(typed.place);
    expect(at(filled).map(([place]) => place)).toEqual(at(typed).map(([place]) => place));
    for (const c of [filled, typed]) says(c, 'done');
    expect(learntBy(filled).call).toMatchObject({ urgency: 'now', causes: learntBy(typed).call.causes });
  });
  test('what is wrong or missing is named, nothing is kept of the form, and the good parts come back', () => {
    const c = fills(says(taking(), 'none'), WHO);
    const before = c.entries.length;
    fills(c, { ...SIGHT, indoor: 'warm', blower: [] });
    expect(c.entries.length).toBe(before);
    expect(c.refusal?.parts.map((key) => key.replace(/^.*#/, ''))).toEqual(['blower', 'indoor']);
    expect(Object.keys(c.refusal?.draft ?? {}).some((key) => key.endsWith('#outdoor'))).toBe(true);
    expect(Object.keys(c.refusal?.draft ?? {}).some((key) => key.endsWith('#indoor'))).toBe(false);
  });
  test('a part that this form does not ask is refused, and so is somebody who takes no calls', () => {
    const c = says(taking(), 'none');
    expect(c.tap({ 'call-who/caller-name#name': 'A', 'else#where': 'B' }, 'dana').refusal?.code).toBe('unknown-option');
    expect(fills(c, WHO, 'ines').refusal?.code).toBe('no-right');
  });
});

describe('danger', () => {
  test('a hazard that is chosen is an alarm on the record, and the call goes on to who and where', () => {
    const c = says(taking(), 'gas smell');
    expect(c.kinds).toEqual(['answered', 'alarmed']);
    expect(memoryOf(c.standing).alarm?.hazard).toBe('gas');
    expect(c.prompt().callouts[0]?.text).toMatch(/^Emergency.*no switch.*911/);
    says(c, 'told');
    fills(c, WHO);
    expect([c.place, c.verdicts]).toEqual(['!open', ['emergency-call']]);
    expect(learntBy(c).call).toMatchObject({ urgency: 'now', causes: [], load: [] });
  });
  test('one that is typed into a form is an alarm too, and what was filled in is kept', () => {
    const c = fills(says(taking(), 'none'), { ...WHO, access: 'there is smoke in the hall' });
    expect(c.kinds).toEqual([...Array(6).fill('answered'), 'alarmed']);
    expect(c.prompt().title).toBe('Tell the caller now, in these words.');
    says(c, 'told');
    expect(c.place).toBe('!open');
  });
  test('once a senior has released it, the call goes on where it was', () => {
    const c = fills(says(taking(), 'none'), { ...WHO, access: 'smoke from the hall' });
    c.send({ kind: 'command', client: 'r', name: 'release', text: 'a barbecue' }, 'ruth');
    expect(c.place).toBe('call-sight/seen-outdoors');
  });
  test('words that may be an old mark are asked, and the answer they came with counts', () => {
    const c = says(taking(), 'none', 'Lena Orchard', '555 0142', 'Brook Terrace 7', 'gate', 'new', 'split');
    fills(c, { ...SIGHT, said: 'a burnt mark on the disconnect' });
    expect([c.place, c.kinds.at(-1)]).toEqual(['!hazard', 'noted']);
    c.tap({ choice: ['old-mark'] }, 'dana');
    expect(c.place).toBe('make-safe');
  });
});

describe('what the job will know', () => {
  const of = (sight: Readonly<Record<string, string | string[]>>, equipment?: Partial<Equipment>, kind = 'split') => {
    const c = fills(fills(says(taking(equipment), 'none'), { ...WHO, kind: [kind] }), { ...SIGHT, ...sight });
    return says(c, c.place === 'make-safe' ? 'done' : 'later');
  };
  test.each([
    [
      'a hum, nothing turns',
      { 'seen-outdoors#outdoor': ['hum-still'], breaker: ['on'], blower: ['blows'] },
      'Run capacitor',
      false,
    ],
    [
      'its fan stands still',
      { 'seen-outdoors#outdoor': ['fan-still'], breaker: ['on'], blower: ['blows'] },
      'Run capacitor',
      false,
    ],
    ['chatter', { 'seen-outdoors#outdoor': ['chatters'], blower: ['blows'], breaker: ['on'] }, 'Contactor', false],
    [
      'a blank thermostat',
      { 'seen-outdoors#outdoor': ['silent'], display: ['blank'], breaker: ['on'], blower: ['blows'] },
      'Low-voltage control circuit',
      false,
    ],
    [
      'ice, runs',
      { 'seen-outdoors#outdoor': ['runs'], signs: ['ice'], breaker: ['on'], blower: ['blows'] },
      'Filter and air flow',
      true,
    ],
    [
      'water',
      { 'seen-outdoors#outdoor': ['unsure'], signs: ['water'], breaker: ['on'], blower: ['blows'] },
      'Drain and float switch',
      false,
    ],
  ])('%s: %s', (_, sight, first, certified) => {
    const { call } = learntBy(of(sight));
    expect([call.causes[0]?.cause, call.certified]).toEqual([first, certified]);
    expect(call.causes.every(({ because }) => because !== '')).toBe(true);
  });
  test('the load is by the marking that the shop knows, else by the common range', () => {
    const hum = { 'seen-outdoors#outdoor': ['hum-still'], breaker: ['on'], blower: ['blows'] };
    const typed = { ref: 'a', hash: '0'.repeat(64) };
    const label = { herm: '40', fan: '7.5', below: '6', above: '6', printed: true, volts: '440' };
    const known = {
      facts: { ...plate('14.7', '80', '1.1'), 'label@outdoor': { kind: 'label' as const, label, typed } },
    };
    expect(learntBy(of(hum, known)).call.load).toEqual([
      'Run capacitor: 40+7.5\u2009µF, 440\u2009VAC, from the record.',
      'Outdoor fan motor: for 1.1\u2009A, from the record.',
    ]);
    expect(learntBy(of(hum)).call.load[0]).toBe(
      'Run capacitor: 30 to 60\u2009µF with 5\u2009µF, 440\u2009VAC, common range.',
    );
  });
  test('goods above 41 °F go first, with the hours that are left', () => {
    const { call } = learntBy(
      of(
        { 'seen-outdoors#outdoor': ['silent'], goods: '47', 'how-hot#since': '3', vulnerable: ['none'], indoor: '70' },
        undefined,
        'cold-room',
      ),
    );
    expect(call.urgency).toBe('first');
    expect(call.reasons.join(' ')).toContain('1\u2009h of 4\u2009h are left');
  });
  test('words of the caller are references alone, under what they are', () => {
    const c = of({});
    expect(Object.keys(learntBy(c).words).sort()).toEqual(['address', 'name', 'phone']);
    const record = JSON.stringify(c.entries);
    for (const words of ['Orchard', '555 0142', '5550142', 'Brook Terrace']) expect(record).not.toContain(words);
    expect(c.texts.map(({ text }) => text)).toEqual(expect.arrayContaining(['Lena Orchard', '555 0142']));
  });
});

test('nothing on it touches anything, and stopping asks for no cover and no lock', () => {
  expect([...machine.plan.places.values()].filter((p) => p.class !== 'eyes')).toEqual([]);
  const c = taking();
  c.type('stop', 'dana');
  expect([c.kinds, c.prompt().kind, c.prompt().title]).toEqual([['paused'], 'paused', 'This call was put away.']);
  c.type('go on', 'dana');
  expect(c.prompt().title).toBe('Is any of this happening?');
});
