/** A call in its thread: by buttons, by forms, by typing; what old buttons, others' taps, edits and repeats do. */
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Entry } from '../../engine/index.ts';
import { Conversation, TO_READINGS } from '../people.ts';
import { liveIn } from './fake/limits.ts';
import { elementsOf, wordsOf } from './fake/person.ts';
import { CREW, type Json, type Message } from './fake/wire.ts';
import { until, Workspace } from './workspace.ts';

let w: Workspace;
beforeAll(async () => {
  w = await Workspace.open();
});
afterAll(() => w.close());

const entries = async (job: string): Promise<Entry[]> => (await w.store.read(job)).entries;
const last = (messages: readonly Message[]): string =>
  messages.at(-1) ? `${messages.at(-1)?.text}\n${wordsOf(messages.at(-1) as Message)}` : '';
/** Types in the thread and waits for what comes of it. */
async function types(job: string, ...lines: string[]): Promise<void> {
  for (const line of lines) {
    const before = (await entries(job)).length;
    await w.ines.type(line, await w.thread(job));
    await until(async () => (await entries(job)).length > before, `"${line}" was not taken: ${last(w.ines.told)}`);
  }
}
/** What an entry says besides who, when and under which ids. */
const said = (list: readonly Entry[]): unknown[] =>
  list
    .filter(({ kind }) => kind !== 'opened' && kind !== 'set' && kind !== 'assigned')
    .map(({ kind, body }) => [kind, JSON.parse(JSON.stringify(body).replace(/"(ref|hash)":"[^"]*"/g, '"$1":""'))]);

describe('one call by buttons and forms, by typing, and in the engine', () => {
  const READINGS = 'herm 44.6 fan 5.03 hf 4.52 case ol';
  const LINES = [...TO_READINGS, READINGS];
  let byHand: string;
  let byLine: string;

  test('by buttons and forms', async () => {
    const job = await w.call();
    byHand = job;
    const tap = async (label: string, more: { option?: string } = {}): Promise<void> => {
      const asked = await w.asked(job);
      const before = (await entries(job)).length;
      await w.ines.tap(asked, label, more);
      await until(async () => (await entries(job)).length > before, `"${label}" was not taken: ${last(w.ines.told)}`);
    };
    const fill = async (values: Record<string, string | string[]>): Promise<void> => {
      const asked = await w.asked(job);
      const [open, before] = [w.slack.modals.length, (await entries(job)).length];
      const begun = performance.now();
      await w.ines.tap(asked, 'Answer');
      await until(() => w.slack.modals.length > open, 'no form was opened');
      expect(performance.now() - begun).toBeLessThan(1000);
      expect(await w.ines.submit(values)).toEqual({});
      await until(async () => (await entries(job)).length > before, `the form was not taken: ${last(w.ines.told)}`);
    };
    // The same lines typed in the engine say which option each answer is.
    const engine = new Conversation();
    for (const line of LINES) {
      const { prompt } = await w.view(job);
      engine.types(line);
      const taken = engine.entries.findLast((e) => e.kind === 'answered');
      if (taken?.kind !== 'answered') throw new Error(line);
      // What can't be answered is said in words, which are its reason.
      if (taken.body.skipped !== undefined) {
        await w.asked(job);
        await types(job, line);
        continue;
      }
      const { parts } = prompt;
      const only = parts.filter((p) => !p.optional);
      const choice =
        only.length === 1 && only[0] && 'options' in only[0] && !(only[0].kind === 'choose' && only[0].several)
          ? only[0]
          : null;
      if (choice) {
        const value = taken.body.parts[choice.key];
        const label = choice.options.find((o) => value?.kind === 'choice' && value.chosen[0] === o.id)?.label ?? '';
        await choose(tap, choice.options, label);
        continue;
      }
      const values = parts.flatMap((part): [string, string | string[]][] => {
        const value = taken.body.parts[part.key];
        if (!value || value.kind === 'untaken' || value.kind === 'photo' || value.kind === 'text') return [];
        if (value.kind === 'choice') {
          const labels =
            'options' in part ? part.options.flatMap((o) => (value.chosen.includes(o.id) ? [o.label] : [])) : [];
          return [[part.key, part.kind === 'choose' && part.several ? labels : (labels[0] ?? '')]];
        }
        return [[part.key, value.kind === 'label' ? '45+5 6% 440' : value.typed]];
      });
      await fill(Object.fromEntries(values));
    }
    expect(w.slack.refused).toEqual([]);
  }, 60_000);

  test('by typing', async () => {
    byLine = await w.call();
    for (const line of LINES) {
      await w.asked(byLine);
      await types(byLine, line);
    }
    await w.asked(byLine);
    expect(w.slack.refused).toEqual([]);
  }, 60_000);

  test('give the same entries as the engine alone', async () => {
    const engine = new Conversation();
    engine.types(...LINES);
    const wanted = said(engine.entries);
    expect(wanted.length).toBeGreaterThan(LINES.length);
    expect(said(await entries(byLine))).toEqual(wanted);
    // A figure typed into its own field and the same in a line are one figure; what was typed is kept as it was typed.
    const figures = (of: unknown): unknown => JSON.parse(JSON.stringify(of).replace(/"typed":"[^"]*"/g, '"typed":""'));
    expect(figures(said(await entries(byHand)))).toEqual(figures(wanted));
  });

  test('the channel holds the heads alone; a thread its own words; every message has a text to be read out', async () => {
    const [a, b] = [await w.thread(byHand), await w.thread(byLine)];
    const outside = w.slack.messages.filter((m) => m.channel === CREW && m.thread === undefined && m.to === undefined);
    expect(outside.every((m) => [a, b].includes(m.ts) || wordsOf(m).includes('Answer in this thread'))).toBe(true);
    for (const m of w.slack.messages.filter(({ user }) => user === 'U0BOT')) expect(m.text).not.toBe('');
    // Both were asked what the engine asks, and so the web, in its order.
    const engine = new Conversation();
    const titles = [...LINES, ''].map((line) => {
      const { title } = engine.prompt();
      if (line !== '') engine.types(line);
      return title;
    });
    for (const thread of [a, b]) {
      const asked = w.slack
        .thread(thread)
        .filter((m) => m.metadata && String((m.metadata.event_payload as Json).id).includes('.question.'));
      expect(asked.map((m, n) => (wordsOf(m).includes(titles[n] ?? '?') ? titles[n] : wordsOf(m)))).toEqual(titles);
    }
  });

  test('an answered question shows its answer and has no buttons any more', async () => {
    const [first] = w.slack
      .thread(await w.thread(byHand))
      .filter((m) => String((m.metadata?.event_payload as Json | undefined)?.id).includes('.question.'));
    expect(elementsOf(first?.blocks ?? [])).toEqual([]);
    expect(wordsOf(first as Message)).toMatch(/✓ .* \(Ines Vale\)/);
  });

  test('the head shows the isolation as it stands, and what was found', async () => {
    await w.settled();
    const head = await w.head(byLine);
    expect(wordsOf(head)).toMatch(
      /\[Outdoor unit: \*PROVED DEAD\*, until <!date\^\d+\^\{time\}\|\d\d:\d\d UTC>; since .*, lock: Ines Vale\]/,
    );
    expect(head.edited).toBeGreaterThan(0);
  });
});
const choose = (
  tap: (label: string, more?: { option?: string }) => Promise<void>,
  options: readonly unknown[],
  label: string,
): Promise<void> => (options.length > 5 ? tap('Send', { option: label }) : tap(label));

describe('what must change nothing', () => {
  let job: string;
  let thread: string;
  beforeAll(async () => {
    job = await w.call('Hums, nothing turns');
    thread = await w.thread(job);
  });
  const heard = async (member = w.ines, after = 0): Promise<string> => {
    await until(() => member.told.length > after, 'nothing was said to them');
    return last(member.told);
  };

  test('a button three turns old: nothing changes, and what stands now is shown to whoever tapped', async () => {
    const old = structuredClone(await w.asked(job));
    await types(job, 'd', 'psc', 'yes');
    const [before, told] = [await entries(job), w.ines.told.length];
    await w.ines.tap(old, 'Send', { option: 'Hum, nothing turns' });
    const words = await heard(w.ines, told);
    expect(words).toContain('Nothing was changed. This is what stands now.');
    expect(words).toContain((await w.view(job)).prompt.title);
    expect(await entries(job)).toEqual(before);
    // What was shown aside answers like the question itself.
    expect(elementsOf(w.ines.told.at(-1)?.blocks ?? []).some((e) => e.action_id === 'form')).toBe(true);
  });

  test('two taps at once, of two people or of one: one is taken, the other is told', async () => {
    const call = await w.call('Two taps');
    const asked = await w.asked(call);
    const [before, told] = [(await entries(call)).length, w.ines.told.length];
    await Promise.all([
      w.ines.tap(asked, 'Send', { option: 'Hum, nothing turns' }),
      w.ines.tap(asked, 'Send', { option: 'Hum, nothing turns' }),
    ]);
    expect(await heard(w.ines, told)).toContain('Nothing was changed');
    expect((await entries(call)).filter(({ kind }) => kind === 'answered')).toHaveLength(1);
    expect((await entries(call)).length).toBeGreaterThan(before);
  });

  test('taps and lines of others are refused to them alone', async () => {
    const asked = await w.asked(job);
    const before = await entries(job);
    const seen = w.slack.thread(thread).length;
    let told = w.tomas.told.length;
    await w.tomas.tap(asked, 'Answer');
    expect(await heard(w.tomas, told)).toContain('not yours to see');
    told = w.tomas.told.length;
    await w.tomas.type('pull-out, breaker, no other feed, two legs, outlet', thread);
    expect(await heard(w.tomas, told)).toMatch(/not yours to see|Only somebody who takes part/);
    told = w.nobody.told.length;
    await w.nobody.tap(asked, 'Answer');
    expect(await heard(w.nobody, told)).toContain('belongs to nobody of the crew');
    await w.settled();
    expect(await entries(job)).toEqual(before);
    // The line of another stands there; nothing of ours beside it.
    expect(w.slack.thread(thread).length).toBe(seen + 1);
  });

  test('danger is heard from anybody', async () => {
    const call = await w.call('Smoke');
    await w.tomas.type('there is smoke coming out of the unit', await w.thread(call));
    await until(async () => (await w.view(call)).prompt.kind === 'emergency', 'no emergency');
    const asked = await w.asked(call);
    expect(wordsOf(asked)).toMatch(/^:octagonal_sign: \*DANGER:\*/);
    expect(asked.text).toContain('DANGER: Every isolation of this job has ended');
    await w.settled();
    expect(last(w.ruth.told)).toContain('Smoke: EMERGENCY');
    expect(last(w.dana.told)).toContain('Smoke: EMERGENCY');
    expect(wordsOf(await w.head(call))).toContain('EMERGENCY');
  });

  test('the same line delivered four times has one effect', async () => {
    const before = (await entries(job)).length;
    await w.ines.type('pull-out, breaker, no other feed, two legs, outlet', thread, { retries: 3 });
    await until(async () => (await entries(job)).length > before, 'not taken');
    await w.settled();
    expect((await entries(job)).length).toBe(before + 1);
  });

  test('a mention comes as two events and counts once', async () => {
    const [before, told] = [(await entries(job)).length, w.ines.told.length];
    await w.ines.type('why', thread, { mention: true });
    await heard(w.ines, told);
    await w.settled();
    expect(w.ines.told.length).toBe(told + 1);
    expect((await entries(job)).length).toBe(before);
    expect(last(w.ines.told)).toContain('Source: ');
  });

  test('an edit and a deletion change nothing, and the record says so', async () => {
    const ts = await w.ines.type('yes', thread);
    await until(async () => (await w.view(job)).prompt.title.startsWith('Cover off'), 'not taken');
    const answers = (list: readonly Entry[]): unknown[] => list.filter(({ kind }) => kind === 'answered');
    const before = answers(await entries(job));
    await w.ines.edit(ts, 'no');
    await until(async () => (await entries(job)).at(-1)?.kind === 'noted', 'the edit was not noted');
    await w.ines.remove(ts);
    await until(
      async () => (await w.store.read(job)).texts.some(({ text }) => text.includes('was deleted')),
      'the deletion was not noted',
    );
    const { texts } = await w.store.read(job);
    expect(texts.map(({ text }) => text).join('\n')).toContain('It now reads: no');
    expect(answers(await entries(job))).toEqual(before);
  });

  test('its own messages, their changes and other bots are not answered', async () => {
    await w.settled();
    const before = w.slack.spoken;
    await w.slack.deliver('events_api', {
      type: 'event_callback',
      event_id: 'Ev1',
      team_id: 'T0SHOP',
      event: {
        type: 'message',
        channel: CREW,
        bot_id: 'B9',
        user: 'U8',
        text: 'help',
        ts: w.slack.ts(),
        thread_ts: thread,
      },
    });
    await w.settled();
    expect(w.slack.spoken).toBe(before);
  });

  test('a line in another thread or in the channel is left unread', async () => {
    const before = w.slack.spoken;
    await w.ines.type('there is smoke', undefined);
    await w.ines.type('there is smoke', '1700000000.000001');
    await w.settled();
    expect(w.slack.spoken).toBe(before);
  });
});

describe('what people type', () => {
  test('controls in it are shown, never obeyed', async () => {
    const evil = '<!channel> <@U2> <http://x.example|y> & *b*';
    const job = await w.call(`Porch ${evil}`);
    await w.web(job, `note ${evil}`);
    await w.web(job, `ask ${evil}`, 'ruth');
    await w.settled();
    const ours = [/^<!date\^/, /^<http:\/\/localhost:8080\/jobs\//, /^<http:\/\/127/, /^<@U1INES>$/];
    const all = w.slack.messages.filter(({ user }) => user === 'U0BOT');
    for (const m of all) {
      expect(liveIn(m.blocks, ours)).toEqual([]);
      expect(m.text.match(/<[!@h][^>]*>/g)?.filter((x) => !ours.some((o) => o.test(x))) ?? []).toEqual([]);
    }
    expect(all.map(({ text }) => text).join('\n')).toContain('&lt;!channel&gt; &lt;@U2&gt;');
    for (const member of [w.ines, w.ruth]) {
      await member.openHome();
      await until(() => JSON.stringify(member.home ?? '').includes('Porch'), 'no home');
      expect(liveIn(member.home?.blocks, ours)).toEqual([]);
    }
    const open = w.slack.modals.length;
    await w.ruth.tap('home', 'Look');
    await until(() => JSON.stringify(w.slack.modals[open]?.view ?? '').includes('Needs attention'), 'no window');
    for (const { view } of w.slack.modals) expect(liveIn(view.blocks, ours)).toEqual([]);
  });

  test('strange words are answered privately and at once', async () => {
    const job = await w.call('Strange');
    const thread = await w.thread(job);
    for (const text of ['x'.repeat(8000), '🧰🪛 ?!', 'שלום', 'a\u0007b\u0000c', 'qwertz']) {
      const [told, begun, before] = [w.ines.told.length, performance.now(), (await entries(job)).length];
      await w.ines.type(text, thread);
      // Some of it may be an answer: then the thread goes on.
      await until(
        async () =>
          w.ines.told.length > told ||
          (await entries(job)).at(-1)?.kind === 'answered' ||
          (await entries(job)).length > before + 1,
        () => `no answer to ${text.slice(0, 9)}: ${w.log.slice(-3).join()}`,
      );
      expect(performance.now() - begun).toBeLessThan(1000);
    }
    expect(w.slack.refused).toEqual([]);
  });
});
