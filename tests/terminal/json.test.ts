/** The line protocol for programs: one object a turn, and whatever is sent, it goes on. */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { TO_READINGS } from '../people.ts';
import { at, OwnProcess, Program, run, verdicts } from './program.ts';

vi.setConfig({ testTimeout: 120_000 });

let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'nocool-terminal-'));
});
afterAll(() => rm(folder, { recursive: true }));
const file = (name: string): string => join(folder, `${name}.sqlite`);

describe('objects', () => {
  test('the first comes before anything is sent, with the entries of the opening', async () => {
    const terminal = new Program('--new', 'House is hot');
    const first = await terminal.next();
    expect(Object.keys(first)).toEqual(['prompt', 'entries', 'refusal', 'info']);
    expect(first.entries.map((e) => e.kind)).toEqual(['opened', 'set', 'assigned']);
    expect(await terminal.end()).toBe(0);
  });

  test('a whole script in one go: an object for the start and for each reply, none for a setting', async () => {
    const input = [at(0), ...TO_READINGS, at(1), 'herm 36.1 fan 5.02 hf 4.4 case ol', ''].join('\n');
    const { stdout, stderr, code } = await run(['--json'], input);
    const told = stdout
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line));
    expect([told.length, stderr, code]).toEqual([TO_READINGS.length + 2, '', 0]);
    expect(told[0].entries[0].at).toBe('2026-07-14T15:00:00.000Z');
    expect(told.at(-1).entries[0].at).toBe('2026-07-14T15:01:00.000Z');
    expect(verdicts(told.at(-1))).toEqual(['section-fails-value']);
  });

  test('without --at it is now', async () => {
    const before = new Date().toISOString();
    const terminal = new Program();
    await terminal.next();
    const [entry] = (await terminal.types('d')).entries;
    expect(entry && entry.at >= before && entry.at <= new Date().toISOString()).toBe(true);
    await terminal.end();
  });

  test('a job is dated by --at also where it comes after the first object', async () => {
    const terminal = new Program();
    await terminal.next();
    expect((await terminal.set(at(0)).types('d')).entries[0]?.at).toBe('2026-07-14T15:00:00.000Z');
    expect((await terminal.say(at(-1))).error).toContain('does not go back');
    expect(await terminal.end()).toBe(0);
  });

  test('why, where and help are told and leave no entry', async () => {
    const terminal = new Program();
    await terminal.next();
    for (const word of ['why', 'where', 'help']) {
      const told = await terminal.say(word);
      expect([told.info !== null && told.info.length > 0, told.entries]).toEqual([true, []]);
    }
    await terminal.end();
  });
});

describe('replies', () => {
  test('a reply without client id and seq is given them', async () => {
    const terminal = new Program();
    await terminal.next();
    const told = await terminal.say({ kind: 'answer', parts: { choice: ['d'] } });
    expect(told.entries.map((e) => [e.kind, e.client !== null])).toContainEqual(['answered', true]);
    await terminal.end();
  });

  test('the same client id twice has one effect and the same response', async () => {
    const terminal = new Program();
    const { prompt } = await terminal.next();
    const reply = { kind: 'text', client: 'sent-twice', seq: prompt.seq, text: 'd' };
    const [first, second] = [await terminal.say(reply), await terminal.say(reply)];
    expect(second).toEqual(first);
    expect(second.prompt.last).toBe(first.prompt.last);
    await terminal.end();
  });

  test('back shows the earlier question, and the next line changes that answer', async () => {
    const terminal = new Program();
    await terminal.next();
    const [answered] = (await terminal.types('d', 'ecm')).entries;
    const again = await terminal.say('back');
    expect(again.prompt.amends).toBe(answered?.seq);
    const changed = await terminal.types('psc');
    expect(changed.entries.map((e) => e.kind)).toEqual(['amended']);
    expect([changed.prompt.amends, changed.prompt.place]).toEqual([null, 'dead:outdoor/fit']);
    await terminal.end();
  });

  test('a change that is refused keeps what was good of it, and nothing that was not typed', async () => {
    const terminal = new Program();
    await terminal.next();
    await terminal.types(...TO_READINGS, 'herm 44.6 fan 5.02 hf 4.51 case ol', 'back');
    const refused = await terminal.say('herm 44.5 hf 99999999');
    expect([refused.refusal?.parts, refused.prompt.amends !== null]).toEqual([['hf'], true]);
    const changed = await terminal.types('hf 4.52');
    const parts = changed.entries.flatMap((e) => (e.kind === 'amended' ? Object.keys(e.body.parts) : []));
    expect(parts.toSorted()).toEqual(['herm', 'hf']);
    await terminal.end();
  });

  test('what was good of a refused line is merged into the next one', async () => {
    const terminal = new Program();
    await terminal.next();
    await terminal.types('d', 'psc', 'yes');
    expect((await terminal.say('breaker, no other feed')).refusal?.parts).toEqual(['supply', 'source']);
    expect((await terminal.say('something else')).refusal?.code).toBe('unclear');
    const told = await terminal.types('two legs, outlet');
    expect(told.entries[0]).toMatchObject({
      kind: 'answered',
      body: { parts: { means: { chosen: ['breaker'] }, feeds: { chosen: ['none'] }, source: { chosen: ['outlet'] } } },
    });
    await terminal.end();
  });
});

describe('what can’t be used is an error, and it goes on', () => {
  let going: Program;
  beforeAll(async () => {
    going = new Program();
    await going.next();
  });
  afterAll(() => going.end());

  test.each<[string, string, RegExp]>([
    ['bad JSON', '{"kind": "text", ', /not valid JSON/],
    ['a list', '{"kind":"answer","parts":[1]}', /no reply: parts/],
    ['a kind that there is not', '{"kind":"order"}', /no reply: kind/],
    ['a client id with spaces', '{"kind":"text","client":"a b","text":"d"}', /no reply: client/],
    ['an unknown person', '--as nobody', /nobody called "nobody"/],
    ['no person', '--as', /needs a value/],
    ['a time without a zone', '--at 2026-07-14T15:00:00', /is no time/],
    ['a 30 February', '--at 2027-02-30T15:00:00Z', /is no time/],
    ['words for a time', '--at yesterday', /is no time/],
    ['text that is too long', 'x'.repeat(10_001), /10001 characters/],
  ])('%s', async (_, line, error) => {
    const told = await going.say(line);
    expect(Object.keys(told)).toEqual(['error']);
    expect(told.error).toMatch(error);
    expect((await going.types('where')).info).not.toBeNull();
  });

  test('10,000 characters, control characters and emoji are refused or kept, never lost', async () => {
    const terminal = new Program();
    await terminal.next();
    expect((await terminal.say('x'.repeat(10_000))).refusal?.code).toBe('too-long');
    const odd = await terminal.say('note \u001b[2J\u009b31m👨‍🔧 \u0007\u2028 end');
    expect(odd.entries.map((e) => e.kind)).toEqual(['noted']);
    expect((await terminal.types('d')).entries.at(-1)?.kind).toBe('answered');
    expect(await terminal.end()).toBe(0);
  });

  test('a person who does not take part is told so, in each line', async () => {
    const terminal = new Program('--as', 'nell');
    await terminal.next();
    expect((await terminal.set('--as idris').say('d')).error).toBe('This job is not yours to see.');
    expect((await terminal.set('--as greta').types('d')).entries.at(-1)?.by).toBe('greta');
    expect(await terminal.end()).toBe(0);
  });
});

describe('a database that stays', () => {
  test('a second process continues where the first one was killed', async () => {
    const first = new OwnProcess('--db', file('killed'), at(0).replace(' ', '='));
    const { prompt } = await first.next();
    const told = await first.types(...TO_READINGS.slice(0, 8));
    await first.kill();
    const second = new OwnProcess('--db', file('killed'), '--at', '2026-07-14T15:02:00Z');
    const resumed = await second.next();
    expect(resumed.prompt).toEqual(told.prompt);
    expect([resumed.prompt.job, resumed.entries]).toEqual([prompt.job, []]);
    const end = await second.types(...TO_READINGS.slice(8), 'herm 36.1 fan 5.02 hf 4.4 case ol');
    expect(verdicts(end)).toEqual(['section-fails-value']);
    expect(await second.end()).toBe(0);
  });

  test('killed after each reply: what was answered is there', async () => {
    let last = 3;
    for (const line of TO_READINGS.slice(0, 3)) {
      const terminal = new OwnProcess('--db', file('each'));
      expect((await terminal.next()).prompt.last).toBe(last);
      last = (await terminal.types(line)).prompt.last;
      await terminal.kill();
    }
    expect(last).toBeGreaterThan(5);
  });

  test('a reply that was answered and is sent again after a crash has no second effect', async () => {
    const first = new OwnProcess('--db', file('again'));
    const { prompt } = await first.next();
    const reply = { kind: 'text', client: 'once', seq: prompt.seq, text: 'd' };
    const told = await first.say(reply);
    await first.kill();
    const second = new Program('--db', file('again'));
    await second.next();
    expect((await second.say(reply)).entries).toEqual(told.entries);
    expect(await second.end()).toBe(0);
  });

  test('--new opens another, --job goes back to the first, and a finished one is not continued', async () => {
    const db = ['--db', file('several')];
    const idOf = async (...args: string[]): Promise<string> => {
      const terminal = new Program(...db, ...args);
      const { prompt } = await terminal.next();
      if (args.length > 0) await terminal.say('note seen');
      await terminal.end();
      return prompt.job;
    };
    const [one, two] = [await idOf('--new', 'One'), await idOf('--new', 'Two')];
    expect(two).not.toBe(one);
    expect(await idOf()).toBe(two);
    expect(await idOf('--job', one.slice(0, 10))).toBe(one);
    expect(await idOf()).toBe(one);
    const terminal = new Program(...db);
    await terminal.next();
    expect((await terminal.types('a', 'vrf', 'all quiet since noon')).prompt.kind).toBe('finished');
    await terminal.end();
    expect(await idOf()).toBe(two);
    expect([one, two]).not.toContain(await idOf('--as', 'idris'));
  });
});
