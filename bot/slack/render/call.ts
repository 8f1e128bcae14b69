/** A call with the caller on the line: its questions as a form, what is known already, and what came of it. */
import type { InputBlock, KnownBlock, ModalView } from '@slack/types';
import type { CallStep, JobView, WhoGoes } from '../../../engine/desk/index.ts';
import { sayUrgency } from '../../../engine/index.ts';
import { LIMITS } from '../limits.ts';
import { formData, orderValue } from '../parse.ts';
import { calloutBlocks } from './callouts.ts';
import { inputOf, wasOf } from './form.ts';
import { modal, notice } from './modals.ts';
import { drawn } from './parts.ts';
import { cut, marked, paragraphs, plain } from './text.ts';

export const CALL_TITLE = 'Take a call';
/** Of a unit's history, as on the web; and characters of a line that only helps to find. */
const [HISTORY, LINE] = [3, 300];

/** While something is being fetched: a window has to be there within three seconds. */
export const waiting = (title = CALL_TITLE): ModalView => notice(title, ['One moment.']);

/** `lead`: said above the questions. `thread`: the address of a job's thread. */
export function callForm(step: CallStep, lead: readonly string[], thread: (job: string) => string | null): ModalView {
  const { asked, draft, left, view } = step;
  const not = left.length === 0 ? [] : ['The questions have changed meanwhile. Not taken of what you typed:', ...left];
  const above: KnownBlock[] = [
    ...calloutBlocks(asked),
    ...paragraphs([...lead, ...not, ...asked.notices.map(({ text }) => `» ${text}`)]),
    ...(view.training ? paragraphs(['Training: never counts.']) : []),
    { type: 'header', text: plain(cut(asked.title, LIMITS.header), LIMITS.header) },
    ...paragraphs(asked.body),
    ...asked.parts.flatMap((part): InputBlock[] =>
      part.kind === 'photo'
        ? []
        : [inputOf(part, { empty: false, hint: wasOf(part).join(' '), first: draft[part.key], live: true })],
    ),
  ];
  const away = row('away', [button('call.away', 'Line is gone: put it away', view.job)]);
  const blocks = [...above, ...asMany(knownBlocks(step, thread), LIMITS.viewBlocks - above.length - 2), away];
  return { ...modal('call', CALL_TITLE, 'Send', formData(drawn(asked)), blocks), notify_on_close: true };
}
/** As many as there is room for, each whole; and that there are more. */
function asMany(each: readonly (readonly KnownBlock[])[], room: number): KnownBlock[] {
  const shown: KnownBlock[] = [];
  for (const blocks of each) {
    if (shown.length + blocks.length > room)
      return [...shown, { type: 'context', elements: [plain('More is known, on the web.')] }];
    shown.push(...blocks);
  }
  return shown;
}

/** What the shop knows of what is being typed: open calls of the same caller or place, and the unit with its history. */
function knownBlocks({ known, unit: picked, view }: CallStep, thread: (job: string) => string | null): KnownBlock[][] {
  if (known === null) return [];
  const { calls, units } = known;
  if (calls.length === 0 && units.length === 0) return [paragraphs(['Nothing is known of this yet.'])];
  return [
    ...calls.map(({ job, state, title, opened, where }, n): KnownBlock[] => {
      const away = state === 'put-away';
      const at = thread(job);
      const link: KnownBlock[] =
        at === null ? [] : [{ type: 'context', elements: [marked(`<${at}|Open its thread>`)] }];
      return [
        ...paragraphs([
          `${away ? 'Put away before its end' : 'Open already'}: ${cut(title, LINE)}`,
          `since ${opened.slice(0, 10)}: ${cut(where, LINE)}`,
        ]),
        ...(away || state === 'taking'
          ? [row(`known.${n}`, [button(`call.go.${n}`, 'Go on with that one', job)])]
          : link),
      ];
    }),
    ...units.map(({ id, name, history }, n): KnownBlock[] => [
      ...paragraphs([
        cut(name, LINE),
        ...(history.length === 0 ? ['Nothing on record.'] : history.slice(0, HISTORY).map((line) => cut(line, LINE))),
      ]),
      picked === id
        ? { type: 'context', elements: [plain('✓ This unit')] }
        : row(`unit.${n}`, [button(`call.unit.${n}`, 'It is this unit', JSON.stringify([view.job, id]))]),
    ]),
  ];
}

/** How soon, what is likely, what to load, what was told: the same on a card and at the end of a call. */
export function callLines(call: JobView['call']): string[] {
  if (call === null) return [];
  return [
    ...(call.urgency === null ? [] : [`How soon: ${sayUrgency(call.urgency)}. ${call.reasons.join(' ')}`]),
    ...(call.causes.length === 0 ? [] : [`Likely: ${call.causes.map((c) => `${c.cause} (${c.because})`).join('; ')}.`]),
    ...(call.load.length === 0 ? [] : [`Load: ${call.load.join(' ')}`]),
    ...(call.certified ? ['Refrigerant is likely: a certified person should go.'] : []),
    ...(call.told.length === 0 ? [] : [`The caller was told: ${call.told.join('; ')}.`]),
  ];
}

/** It opened a job: what it came to, and who goes. */
export function opened(view: JobView, goes: WhoGoes): ModalView {
  const emergency = view.prompt.kind === 'emergency' ? calloutBlocks(view.prompt) : [];
  return give(goes, view.job, [...emergency, ...paragraphs([view.title, ...callLines(view.call)])]);
}
/** It opened none: it was settled on the phone, or a call about it is open. */
export function over({ prompt }: JobView): ModalView {
  const said = prompt.verdicts.flatMap(({ title, says, next }) => [title, ...says, ...next.map((text) => `→ ${text}`)]);
  return notice(CALL_TITLE, said.length === 0 ? [prompt.title, ...prompt.body] : said);
}

/** Who goes, the one who fits best first; with the reason. */
export function give({ who, hands, title }: WhoGoes, job: string, above?: readonly KnownBlock[]): ModalView {
  const lead = above ?? paragraphs([title]);
  const name = hands ? 'Hand over' : 'Who goes';
  const options = who.slice(0, LIMITS.menu).map(({ id, words }) => ({ text: plain(words, LIMITS.option), value: id }));
  const [first] = options;
  if (!first)
    return {
      ...notice(name, ['Nobody else can be sent.']),
      blocks: [...lead, ...paragraphs(['Nobody else can be sent.'])],
    };
  return modal('give', name, hands ? 'Hand over' : 'Give it', orderValue(job, 'hand over'), [
    ...lead,
    ...(hands
      ? paragraphs([
          'The next person accepts, and puts their own lock on first. Nothing that was proved counts for them.',
        ])
      : []),
    {
      type: 'input',
      block_id: 'to',
      label: plain(hands ? 'To whom' : 'Who goes'),
      element: { type: 'static_select', action_id: 'v.to', options, ...(hands ? {} : { initial_option: first }) },
    },
  ]);
}

const button = (action_id: string, label: string, value: string) => ({
  type: 'button' as const,
  action_id,
  text: plain(label, LIMITS.button),
  value,
});
const row = (block_id: string, elements: Extract<KnownBlock, { type: 'actions' }>['elements']): KnownBlock => ({
  type: 'actions',
  block_id,
  elements,
});
/** To go on with a call whose window is closed. */
export const goOnRow = (call: string): KnownBlock =>
  row('call', [
    button('call.go.0', 'Go on with the call', call),
    button('call.away', 'Line is gone: put it away', call),
  ]);
