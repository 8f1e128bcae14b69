/** Every place of every manual and every kind of prompt, as messages and as forms: within the platform's limits, no word lost. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  buttonValue,
  formData,
  orderValue,
  readButton,
  readForm,
  readOrder,
  readState,
} from '../../bot/slack/parse.ts';
import { callForm, give, opened, over } from '../../bot/slack/render/call.ts';
import { form } from '../../bot/slack/render/form.ts';
import { home, stranger } from '../../bot/slack/render/home.ts';
import { join, newCall, review } from '../../bot/slack/render/modals.ts';
import { oneChoice } from '../../bot/slack/render/parts.ts';
import { question } from '../../bot/slack/render/question.ts';
import { look } from '../../bot/slack/render/review.ts';
import { escaped, paragraphs, unescaped, within } from '../../bot/slack/render/text.ts';
import { closed, event, verdict } from '../../bot/slack/render/told.ts';
import type { CallStep, JobCard, JobView, ReviewView } from '../../engine/desk/index.ts';
import { compile, formPrompt, type GivenParts, type Prompt, promptAgain } from '../../engine/index.ts';
import { planOf } from '../../engine/replay.ts';
import { CommandName, Prompt as PromptShape } from '../../engine/schema.ts';
import { SHELF } from '../../flows/index.ts';
import { personOf } from '../desk/shop.ts';
import { Conversation, PEOPLE, TO_READINGS } from '../people.ts';
import { PROMPTS } from '../web-chat/sample/prompts.ts';
import { liveIn, textsIn, wrongMessage, wrongView } from './fake/limits.ts';
import { elementsOf, wordsOf } from './fake/person.ts';
import type { Json } from './fake/wire.ts';

const names = (id: string): string => (id in PEOPLE ? PEOPLE[id as keyof typeof PEOPLE].name : id);
const around = { names, asked: 'Which colour was on C?' };
/** Ours: times, which each reader's own clock shows. */
const TIMES = [/^<!date\^\d+\^\{time\}\|\d\d:\d\d UTC>$/];
const json = (of: unknown): Json => JSON.parse(JSON.stringify(of)) as Json;

/** Every question of every version, as it first comes and as an earlier answer. */
const steps: [string, Prompt][] = SHELF.flatMap((manual) => {
  const talk = new Conversation({ machine: compile(manual) });
  return [...planOf(talk.standing).places.values()].flatMap((place): [string, Prompt][] => {
    if (!('parts' in place.step)) return [];
    const again = promptAgain(talk.standing, place.id, 1, talk.at);
    const name = `${manual.version} ${place.id}`;
    return [
      [name, { ...again, class: place.class, amends: null, skippable: true }],
      [`${name}, changed`, again],
    ];
  });
});
const kinds: [string, Prompt][] = Object.entries(PROMPTS);

function check(prompt: Prompt): void {
  const { text, blocks } = question(prompt, around);
  const message = json({ text, blocks });
  expect(wrongMessage(message)).toEqual([]);
  expect(liveIn(message.blocks, TIMES)).toEqual([]);
  const words = textsIn(message.blocks).join('\n');
  const said = [
    prompt.title,
    ...prompt.body,
    ...prompt.callouts.map((c) => `*${c.level.toUpperCase()}:* ${c.text}`),
    ...prompt.notices.map((n) => n.text),
    ...prompt.parts.flatMap((p) => ('options' in p ? p.options.map((o) => o.label) : [p.ask])),
    ...prompt.isolation.map((line) => line.words),
  ];
  expect(said.filter((each) => !words.includes(each) && !words.includes(escaped(each)))).toEqual([]);
  for (const each of [prompt.title, ...prompt.callouts.map((c) => c.text)]) expect(text).toContain(escaped(each));
  expect(words).not.toMatch(/undefined|\bnull\b|\[object/);
  // Danger stands before the question it belongs to.
  const danger = blocks.findIndex((b) => JSON.stringify(b).includes('DANGER:'));
  if (prompt.callouts.some(({ level }) => level === 'danger')) expect(danger).toBe(0);
  const view = json(form(prompt, {}, names));
  expect(wrongView(view)).toEqual([]);
  expect(liveIn(view.blocks, TIMES)).toEqual([]);
}

describe('every step of every manual', () => {
  test('there are many', () => expect(steps.length).toBeGreaterThan(120));
  test('each is drawn within the limits, as a message and as a form, with every word', () => {
    for (const [name, prompt] of steps) {
      try {
        check(prompt);
      } catch (error) {
        throw new Error(`${name}: ${error instanceof Error ? error.message : ''}`, { cause: error });
      }
    }
  });
  test('each can be answered: by its options, or by a form with a field for each part', () => {
    for (const [name, prompt] of steps) {
      const elements = elementsOf(json(question(prompt, around)).blocks as Json[]);
      const choice = oneChoice(prompt.parts);
      const inputs = (json(form(prompt, {}, names)).blocks as Json[]).flatMap((b) =>
        b.type === 'input' ? [b.block_id] : [],
      );
      const asked = prompt.parts.filter(({ kind }) => kind !== 'photo').map(({ key }) => key);
      expect(
        inputs.filter((key) => key !== '!skip'),
        name,
      ).toEqual(asked);
      const offered = elements
        .flatMap((e) => (e.type === 'button' ? [readButton(String(e.value))?.option ?? ''] : []))
        .filter((o) => o !== '');
      const menu = elements.find((e) => e.type === 'static_select');
      const options = menu ? (menu.options as { value: string }[]).map((o) => o.value) : offered;
      if (choice) expect(options, name).toEqual(choice.options.map(({ id }) => id));
      else if (asked.length > 0)
        expect(
          elements.some((e) => e.action_id === 'form'),
          name,
        ).toBe(true);
    }
  });
  test('what is said on hands inside or under a danger is asked twice; what leads away from it is not', () => {
    let [twice, once] = [0, 0];
    for (const [name, prompt] of steps) {
      const risky = prompt.class !== 'eyes' || prompt.callouts.some(({ level }) => level === 'danger');
      for (const e of elementsOf(json(question(prompt, around)).blocks as Json[])) {
        const option = e.type === 'button' ? readButton(String(e.value))?.option : undefined;
        if (option !== 'yes' && option !== 'done' && option !== 'no' && option !== 'cant') continue;
        const expected = risky && (option === 'yes' || option === 'done');
        expect(e.confirm !== undefined, `${name} ${option}`).toBe(expected);
        if (expected) twice += 1;
        else once += 1;
      }
    }
    expect(twice).toBeGreaterThan(5);
    expect(once).toBeGreaterThan(5);
  });
});

describe('every kind of prompt', () => {
  test.each(kinds)('%s', (_, prompt) => check(prompt));
  test('each kind but a plain step is named by words of its own', () => {
    const base = PROMPTS.note as Prompt;
    const heads = PromptShape.shape.kind.options.map((kind) =>
      wordsOf({ blocks: json(question({ ...base, kind }, around)).blocks as Json[] }),
    );
    expect(new Set(heads).size).toBe(heads.length);
  });
  test('verdicts, answers and events', () => {
    const call = new Conversation().types(...TO_READINGS).types('herm 36.1 fan 5.02 hf 4.4 case ol');
    const found = call.prompt().verdicts;
    expect(found.length).toBeGreaterThan(0);
    for (const each of [...found, ...kinds.flatMap(([, p]) => p.verdicts)]) {
      const message = json(verdict(each));
      expect(wrongMessage(message)).toEqual([]);
      const words = wordsOf({ blocks: message.blocks as Json[] });
      for (const finding of each.findings)
        for (const part of [
          finding.name,
          finding.reading,
          finding.word.toUpperCase(),
          finding.limits ?? '',
          finding.text,
        ])
          expect(words).toContain(part);
    }
    const line = {
      seq: 3,
      at: '',
      by: 'ines',
      title: 'Asked <!channel>',
      says: ['a & b'],
      kind: 'asked',
      standing: 'event',
      place: null,
      amendable: false,
      photos: [] as string[],
    } as const;
    for (const told of [
      event({ ...line, says: [...line.says] }, names, ['U1INES']),
      closed([{ ...line, says: [...line.says] }], names),
      closed([], names),
    ]) {
      expect(wrongMessage(json(told))).toEqual([]);
      expect(liveIn(json(told).blocks, [/^<@U1INES>$/])).toEqual([]);
      expect(told.text).not.toContain('<!');
    }
  });
});

const states = ['under-way', 'held', 'paused', 'emergency', 'finished', 'signed', 'unreadable', 'taking'] as const;
/** Calls in every state, with words that are long and would give orders. */
function cardsOf(count: number): JobCard[] {
  return Array.from({ length: count }, (_, i) => ({
    job: `job-${i}`,
    title: `Call ${i} <!channel> ${'long '.repeat(80)}`,
    state: states[i % states.length] ?? 'held',
    where: `Where <@U2> ${'w'.repeat(500)}`,
    assigned: ['ines'],
    verdict: i % 2 === 0 ? 'v'.repeat(500) : null,
    updated: '',
    isolation: 'Outdoor unit: PROVED DEAD',
    until: '2026-07-14T15:30:00.000Z',
    training: false,
    opened: '2026-07-14T14:00:00.000Z',
    begun: true,
    urgency: null,
    certified: false,
    causes: [],
    load: [],
    alarm: null,
  }));
}

describe('homes and small forms', () => {
  const crew = Object.values(PEOPLE).map((p) => personOf(p));
  const person = (id: keyof typeof PEOPLE) => personOf(PEOPLE[id]);
  const cards = cardsOf(300);
  test('three hundred calls are a home within the limits, and it says how many it leaves out', () => {
    for (const id of ['ines', 'ruth', 'dana', 'otto'] as const) {
      const all = id !== 'ines';
      const reviews = id === 'ruth' || id === 'otto';
      const attention = Array.from({ length: 30 }, (_, n) => ({
        ...{ kind: 'hazard' as const, seq: n, head: 'Hazard' },
        words: `<!here> ${'w'.repeat(2000)}`,
      }));
      const view = json(
        home(
          {
            ...{ person: person(id), all, open: cards, waits: all ? cards : [], taking: all ? cards : null },
            review: reviews ? { jobs: cards.map((card) => ({ ...card, attention })), next: 'more' } : null,
            low: cards.map((_, n) => ({ truck: `Van <@U${n}>`, item: 'x'.repeat(100), left: 0, low: 1 })),
          },
          (job) => `https://shop.slack.com/archives/C0/${job}`,
        ),
      );
      expect(wrongView(view)).toEqual([]);
      expect(liveIn(view.blocks, [...TIMES, /^<https:\/\/shop\.slack\.com/])).toEqual([]);
      expect(textsIn(view.blocks).join('\n')).toMatch(/And \d+ more, on the web\./);
    }
    expect(wrongView(json(stranger()))).toEqual([]);
  });
  test('every small form', () => {
    for (const name of CommandName.options) {
      const view = review(name, orderValue('j', name), 't'.repeat(5000));
      if (view) expect(wrongView(json(view))).toEqual([]);
    }
    const who = Array.from({ length: 150 }, (_, n) => ({ id: `p${n}`, words: `Person ${n}: ${'far '.repeat(40)}` }));
    const gives = [true, false].map((hands) => give({ title: 't'.repeat(5000), hands, who }, 'j'));
    for (const view of [newCall(crew), ...gives, give({ title: '', hands: false, who: [] }, 'j'), join()])
      expect(wrongView(json(view))).toEqual([]);
  });
});

describe('a call with the caller on the line', () => {
  const manual = SHELF.find(({ caller }) => caller);
  const machine = compile(manual ?? SHELF[0]);
  const evil = `<!channel> ${'w'.repeat(2_900)}`;
  const known: CallStep['known'] = {
    calls: cardsOf(6),
    units: Array.from({ length: 6 }, (_, n) => ({ id: `u${n}`, name: evil, history: Array(9).fill(evil) })),
  };
  /** Everything filled in, as long as it may be. */
  const full = ({ parts }: Prompt): GivenParts =>
    Object.fromEntries(
      parts.map((p) => [
        p.key,
        'options' in p
          ? p.options.slice(0, p.kind === 'choose' && p.several ? 9 : 1).map(({ id }) => id)
          : evil.slice(0, 60),
      ]),
    );
  const EXAMPLES = (manual?.root.examples ?? []).map((example) => [example.title, example.lines] as const);
  test('there are worked ones', () => expect(EXAMPLES.length).toBeGreaterThan(5));
  test.each(EXAMPLES)('each form of it is a window within the limits, with every part: %s', (_, lines) => {
    const talk = new Conversation({ machine, assigned: [] });
    for (const line of [...lines, '']) {
      const asked = formPrompt(talk.standing, talk.at) ?? talk.prompt();
      const view = { job: asked.job, training: true, prompt: asked } as JobView;
      const bare: CallStep = { view, asked, draft: {}, known: null, unit: null, left: [] };
      for (const step of [bare, { ...bare, draft: full(asked), known, unit: 'u1', left: Array(20).fill(evil) }]) {
        const drawn = json(callForm(step, [evil], (job) => `https://shop.slack.com/archives/C0/${job}`));
        expect(wrongView(drawn)).toEqual([]);
        expect(liveIn(drawn.blocks, [/^<https:\/\/shop\.slack\.com/])).toEqual([]);
        const said = textsIn(drawn.blocks).join('\n');
        const fields = (drawn.blocks as Json[]).flatMap((b) => (b.type === 'input' ? [b.block_id] : []));
        expect(fields).toEqual(asked.parts.map(({ key }) => key));
        for (const { level, text } of asked.callouts) expect(said).toContain(`*${level.toUpperCase()}:* ${text}`);
        for (const part of asked.parts) expect(said).toContain(part.ask);
      }
      if (line !== '') talk.type(line, 'dana');
    }
    expect(talk.prompt().kind).toBe('finished');
    expect(wrongView(json(over({ prompt: talk.prompt() } as JobView)))).toEqual([]);
  });
  test('what it came to, and what a senior looks at, are windows within the limits', () => {
    const prompt = kinds.find(([, p]) => p.kind === 'emergency')?.[1] as Prompt;
    const call = {
      ...{ urgency: 'now', reasons: Array(9).fill(evil), load: Array(9).fill(evil), certified: true },
      ...{ causes: Array.from({ length: 9 }, () => ({ cause: evil, because: evil })), told: Array(9).fill(evil) },
    };
    const view = { job: 'j', title: evil, training: true, prompt, call, people: {}, ticket: [] } as unknown as JobView;
    const end = json(opened(view, { title: evil, hands: false, who: [{ id: 'p', words: evil }] }));
    expect(wrongView(end)).toEqual([]);
    expect(liveIn(end.blocks)).toEqual([]);
    const attention = Array.from({ length: 90 }, (_, seq) => ({ kind: 'hazard', seq, head: 'Hazard', words: evil }));
    const may = ['release', 'approve', 'ask', 'sign', 'send back'];
    const review = { view, attention, evidence: [], trends: [], may } as unknown as ReviewView;
    const seen = json(look(review, `https://shop.example/sign-in/${'x'.repeat(43)}`, 'https://shop.slack.com/x'));
    expect(wrongView(seen)).toEqual([]);
    expect(liveIn(seen.blocks, [...TIMES, /^<https:\/\/shop\.slack\.com/])).toEqual([]);
    expect(textsIn(seen.blocks)[0]).toContain('DANGER');
  });
});

describe('words of people', () => {
  test('never become control sequences, and come back as they were typed', () => {
    const controls = fc.constantFrom('<!channel>', '<@U2>', '<http://x|y>', '&', '*b*', '&lt;', '<', '>');
    fc.assert(
      fc.property(fc.array(fc.oneof(controls, fc.string({ unit: 'grapheme' }))), (pieces) => {
        const text = pieces.join('');
        expect(escaped(text)).not.toMatch(/[<>]/);
        // biome-ignore lint/suspicious/noControlCharactersInRegex: controls are shown, so they don't come back
        if (!/[\u0000-\u001f\u007f-\u009f\u061c\u200b\u200e\u200f\u202a-\u202e\u2060-\u2069\ufeff]/.test(text))
          expect(unescaped(escaped(text))).toBe(text);
      }),
    );
    expect(unescaped('see &lt;that&gt; <http://x.example|x> <@U2> <!channel>')).toBe('see <that> x @U2 @channel');
  });
  test('paragraphs lose no word and keep to the length', () => {
    fc.assert(
      fc.property(fc.array(fc.string({ maxLength: 7000, unit: 'grapheme-ascii' }), { maxLength: 6 }), (lines) => {
        const blocks = json({ blocks: paragraphs(lines) }).blocks as Json[];
        expect(textsIn(blocks).every((text) => text.length <= 3000)).toBe(true);
        const squeezed = (text: string): string => text.replace(/\s+/g, '');
        expect(squeezed(textsIn(blocks).join(''))).toBe(squeezed(lines.join('')));
      }),
      { numRuns: 30 },
    );
  });
  test('danger is never shortened, whatever stands behind it', () => {
    const danger = Array.from({ length: 5 }, (_, i) => ({
      level: 'danger' as const,
      text: `${i} ${'keep out '.repeat(55)}`,
    }));
    const body = Array.from({ length: 30 }, (_, i) => `${i} ${'x'.repeat(1500)}`);
    const { text, blocks } = question({ ...(PROMPTS.note as Prompt), callouts: danger, body }, around);
    expect(wrongMessage(json({ text, blocks }))).toEqual([]);
    for (const each of danger) expect(textsIn(json({ blocks }).blocks).join('\n')).toContain(each.text);
    expect(elementsOf(json({ blocks }).blocks as Json[]).some((e) => e.action_id === 'form')).toBe(true);
  });
  test('what is too much for one message is shortened from the end, and it is said', () => {
    const blocks = within(paragraphs(Array.from({ length: 40 }, (_, i) => `${i} ${'x'.repeat(2000)}`)));
    expect(wrongMessage(json({ text: 'x', blocks }))).toEqual([]);
    expect(textsIn(json({ blocks })).at(-1)).toBe('Shortened here. The whole is on the web.');
  });
});

describe('what controls carry', () => {
  const drawn = { job: 'f'.repeat(32), seq: 7, place: 'dead:outdoor/proving', amends: null };
  test('comes back as it was', () => {
    expect(readButton(buttonValue(drawn, 'ok', 'yes'))).toEqual({ ...drawn, part: 'ok', option: 'yes' });
    expect(readForm(formData({ ...drawn, amends: 4 }))).toEqual({ ...drawn, amends: 4 });
    expect(readOrder(orderValue('j', 'send back'))).toEqual({ job: 'j', name: 'send back' });
  });
  test('is nothing where it is none of ours', () => {
    for (const value of [undefined, '', 'null', '[]', '{"job":1}', '["j",1]', '["j","no command"]', 'x'.repeat(3000)]) {
      expect(readButton(value)).toBeNull();
      expect(readForm(value)).toBeNull();
      expect(readOrder(value)).toBeNull();
    }
  });
  test('a form gives what was filled in and leaves out what was not', () => {
    const state = {
      herm: { v: { value: ' 38,4 ' } },
      fan: { v: { value: null } },
      means: { v: { selected_options: [{ value: 'a' }, { value: 'b' }] } },
      none: { v: { selected_options: [] } },
      ok: { v: { selected_option: { value: 'yes' } } },
      not: { v: { selected_option: null } },
      '!skip': { v: { value: 'no meter' } },
    };
    expect(readState(state)).toEqual({ parts: { herm: ' 38,4 ', means: ['a', 'b'], ok: ['yes'] }, skip: 'no meter' });
  });
});
