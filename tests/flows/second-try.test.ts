/** Tries count by the record's times, not by what is said of them: of the control circuit, and of a compressor's start. */
import { expect, test } from 'vitest';
import { CONTROL } from '../../flows/examples/control.ts';
import { WARM } from '../../flows/examples/cooling/warm.ts';
import { ECM_FAN, STILL_AFTER } from '../../flows/examples/fan.ts';
import { NOT_IN } from '../../flows/examples/repair.ts';
import { FAN_WINDINGS } from '../../flows/examples/windings.ts';
import { LIMITS } from '../../flows/limits.ts';
import { Conversation } from '../people.ts';

/** To the first question of the call, as a worked call types it. */
const lines = CONTROL.find(({ title }) => title.startsWith('The low-pressure switch'))?.lines ?? [];
const toCall = lines.slice(0, lines.indexOf('left alone'));
const atCall = (): Conversation => new Conversation().types(...toCall);
const NONE = 'y-c 25.6 coil 0';

test('the worked call leads there', () => {
  expect(atCall().place).toBe('round~1/control~1/call');
});

test.each([
  ['changed just now', 6, 'across-24'],
  ['changed just now', 4, 'waited'],
  ['not sure', 6, 'across-24'],
  ['not sure', 4, 'waited'],
] as const)('%s, and "left alone" %s minutes later: %s', (said, minutes, place) => {
  // Not sure whether they were over: that leads on too, and its judge counts.
  const c = atCall().types(said, NONE, 'not sure').wait(minutes);
  expect(c.types('unchanged', NONE).place.split('/').at(-1)).toBe(place);
});

test('changed again at the second try: its own five minutes', () => {
  const c = atCall().types('changed just now', NONE, 'not sure').wait(6).types('changed just now', NONE);
  expect(c.place).toBe('round~1/control~2/waited');
});

test('left alone at the first try is taken where the record has nothing against it', () => {
  expect(atCall().types('left alone', NONE).place).toBe('round~1/control~1/across-24');
  // The call was taken off when the means was opened: two minutes ago it can't have been left alone for five.
  expect(atCall().wait(2).types('unchanged', NONE).place).toBe('round~1/control~1/waited');
  expect(atCall().wait(5).types('unchanged', NONE).place).toBe('round~1/control~1/across-24');
});

test('out for five minutes is not taken right after power came on', () => {
  const out = NOT_IN.find(({ title }) => title.startsWith('The contactor is out five minutes'))?.lines ?? [];
  const at = (minutes: number) =>
    new Conversation()
      .types(...out.slice(0, out.indexOf('left alone')))
      .wait(minutes)
      .types('out');
  expect(at(2).place).toBe('round~1/restart/out-yet');
  expect([at(5).verdicts.at(-1), at(2).wait(3).types('stays out').verdicts.at(-1)]).toEqual([
    'contactor-not-in',
    'contactor-not-in',
  ]);
});

/** A heat pump in heating, its coil good: to the question since when the call stands. */
const valve = WARM.find(({ title }) => title === 'No command at a good coil')?.lines ?? [];
test.each([
  [Number(LIMITS.delay.least.value), 'reversing-not-commanded'],
  [Number(LIMITS.delay.least.value) - 2, 'reversing-undecided'],
])('the call changed just now, and 0 V read %s minutes later: %s', (minutes, verdict) => {
  const c = new Conversation().types(...valve.slice(0, valve.indexOf('left alone')), 'just now').wait(minutes);
  expect(c.types('not sure', 'coil 0').verdicts).toEqual([verdict]);
});

/** An electronic fan: its means is said to be off. */
const bus = ECM_FAN.find(({ title }) => title.startsWith('Line and command there'))?.lines ?? [];
test.each([
  [Number(LIMITS.busRest.least.value), 'ready'],
  [Number(LIMITS.busRest.least.value) - 2, 'longer'],
])('its means off just now, and waited %s minutes later: %s', (minutes, place) => {
  const c = new Conversation()
    .types(...bus.slice(0, bus.indexOf('rested')))
    .wait(minutes)
    .types('not sure');
  expect(c.place.split('/').at(-1)).toBe(place);
});

test('too early, and then long enough by the same first answer: its bus has rested', () => {
  const c = new Conversation()
    .types(...bus.slice(0, bus.indexOf('rested')))
    .wait(3)
    .types('not sure');
  expect(c.place.split('/').at(-1)).toBe('longer');
  expect(c.type('waited').refusal?.text).toBe('By this record 2 min 0 s are left of it. Wait, then answer again.');
  expect(c.wait(2).types('waited').place.split('/').at(-1)).toBe('ready');
});
test('too early twice: nothing is opened', () => {
  const c = new Conversation()
    .types(...bus.slice(0, bus.indexOf('rested')))
    .wait(3)
    .types('not sure', 'not sure');
  expect([c.place, c.verdicts]).toEqual(['!raised', ['electronic-fan-handed-over']]);
});

/** A compressor stalls, every dead test good: to the question since when it is off. */
const stalls = STILL_AFTER.find(({ title }) => title.startsWith('Volts held, capacitor good'))?.lines ?? [];
const { least, tries, typed } = LIMITS.starts;

test.each([
  [Number(least.value), 'proving'],
  [Number(least.value) - 1, '!raised'],
])('off just now, and tried %s minutes later: %s', (minutes, place) => {
  const c = new Conversation().types(...stalls.slice(0, stalls.indexOf('rested')), 'off now').wait(minutes);
  if (place === '!raised') {
    expect(c.type('waited').refusal?.code).toBe('too-early');
    c.types('not sure');
  } else c.types('waited', '221 comp 92', 'yes', 'clean, 1 cap');
  // On to the assist, which goes in under a new proof of dead.
  expect(c.place.split('/').at(-1)).toBe(place);
  expect(c.verdicts.includes('no-start-undecided')).toBe(place === '!raised');
});

const rests = Number(least.value) - Number(typed.value);
test.each([
  [rests, 0, 'proving'],
  [rests - 1, 59, '!raised'],
])('rested long enough, it is said, %s minutes and %s seconds after its amps: %s', (minutes, seconds, place) => {
  const c = new Conversation().types(...stalls.slice(0, stalls.indexOf('rested')));
  // As a person who doesn't wait, `rested` itself is not typed.
  c.wait(minutes, seconds).types('off 5 minutes', '221 comp 92');
  if (place !== '!raised') c.types('yes', 'clean, 1 cap');
  expect(c.place.split('/').at(-1)).toBe(place);
  expect(c.verdicts.includes('no-start-undecided')).toBe(place === '!raised');
});
test('the try with the assist is a start of its own, minutes after the one before', () => {
  const at = stalls.lastIndexOf('rested');
  const c = new Conversation().types(...stalls.slice(0, at)).types('not sure');
  expect([c.place, c.verdicts.at(-1)]).toEqual(['!raised', 'no-start-undecided']);
});

test('a visit has as many rounds as the limit has tries', () => {
  const rounds = [...new Conversation().standing.machine.plan.places.values()].map(({ round }) => round);
  expect(Math.max(...rounds)).toBe(Number(tries.value));
});

test('an overload that has cooled for hours is read again under a new proof of dead, before any power', () => {
  const hot = FAN_WINDINGS.find(({ title }) => title.startsWith('Open on a hot motor: its protector'))?.lines ?? [];
  const c = new Conversation().types(...hot.slice(0, hot.indexOf('cooled'))).wait(240);
  // The lock is confirmed with the line, and the residual read anew.
  expect(c.types('cooled').place).toBe('dead:outdoor/proving');
  c.types('still locked, 121 / 0.2 0 0.1 / 0 0 / 121', '9.3 / 0.6 0.1 0.5 / 9.3');
  expect(c.place).toBe('round~1/restart/pair-again');
  expect(c.types('15').place).toBe('round~1/restart/closed');
});
