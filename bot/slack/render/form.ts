/** A question as a form: one field a part, the danger above it. */
import type { InputBlock, KnownBlock, ModalView, PlainTextOption } from '@slack/types';
import type { Given, GivenParts, Option, Part, Prompt } from '../../../engine/index.ts';
import { LIMITS } from '../limits.ts';
import { formData, SKIP } from '../parse.ts';
import { calloutBlocks } from './callouts.ts';
import { isolationBlock, type Names } from './isolation.ts';
import { drawn, fieldWords } from './parts.ts';
import { paragraphs, plain } from './text.ts';

/** `draft`: what is kept of an answer that was not whole; it is not asked again. */
export function form(prompt: Prompt, draft: GivenParts, names: Names): ModalView {
  const { parts, title, body, skippable, amends } = prompt;
  const asked = parts.filter((part) => part.kind !== 'photo' && draft[part.key] === undefined);
  const kept = parts.filter((part) => draft[part.key] !== undefined).map(({ ask }) => ask);
  // A form that can be sent half empty: what is missing is asked alone. A line that proves is taken whole or not at all.
  const loose = asked.length > 1 && prompt.class !== 'proving' && amends === null;
  const blocks: KnownBlock[] = [
    ...calloutBlocks(prompt),
    ...isolationBlock(prompt, names),
    ...paragraphs([title, ...body, ...(kept.length > 0 ? [`Kept: ${kept.join(', ')}.`] : [])]),
    ...asked.map((part) => input(part, loose || (skippable && amends === null), prompt)),
    ...(skippable && amends === null ? [skip()] : []),
  ];
  return {
    type: 'modal',
    callback_id: 'form',
    private_metadata: formData(drawn(prompt)),
    title: plain(amends === null ? 'Answer' : 'Change the answer', LIMITS.modalTitle),
    submit: plain('Send', LIMITS.modalTitle),
    close: plain('Not now', LIMITS.modalTitle),
    blocks,
  };
}

function skip(): InputBlock {
  return {
    type: 'input',
    block_id: SKIP,
    optional: true,
    label: plain('Can’t be done: the reason'),
    hint: plain('Leaves the question open and flagged. Leave this empty otherwise.'),
    element: { type: 'plain_text_input', action_id: `v.${SKIP}`, max_length: 1000 },
  };
}

function input(part: Part, mayBeEmpty: boolean, prompt: Prompt): InputBlock {
  const first = prompt.amends !== null && 'remembered' in part ? (part.remembered ?? undefined) : undefined;
  return inputOf(part, { empty: mayBeEmpty, hint: hintOf(part, mayBeEmpty, prompt), first, live: false });
}
interface Around {
  /** It may be left empty though the part is needed. */
  readonly empty: boolean;
  readonly hint: string;
  readonly first: Given | undefined;
  /** Each change is told at once, as it is made. */
  readonly live: boolean;
}
/** One part as a field. */
export function inputOf(part: Part, { empty, hint, first, live }: Around): InputBlock {
  const drawn = element(part, first);
  const letters = { dispatch_action_config: { trigger_actions_on: ['on_character_entered' as const] } };
  return {
    type: 'input',
    block_id: part.key,
    optional: part.optional || empty,
    label: plain(part.kind === 'field' ? fieldWords(part) : part.ask, LIMITS.label),
    ...(hint === '' ? {} : { hint: plain(hint, LIMITS.label) }),
    ...(live ? { dispatch_action: true } : {}),
    element: live && drawn.type === 'plain_text_input' ? { ...drawn, ...letters } : drawn,
  };
}
/** What was there before is said, not filled in: a reading is taken again, not sent again. */
function hintOf(part: Part, mayBeEmpty: boolean, { amends, class: of }: Prompt): string {
  const empty = of === 'proving' ? 'Needed: this line is taken whole.' : 'Needed. Left empty, it is asked alone.';
  const needed = mayBeEmpty && !part.optional ? [empty] : [];
  const was = amends !== null ? [] : wasOf(part);
  const printed = part.kind === 'label' ? ['As printed, for example 40/5 MFD ±6% 440 VAC.'] : [];
  return [...printed, ...needed, ...was].join(' ');
}
export function wasOf(part: Part): string[] {
  if (part.kind === 'choose') {
    const was = part.options.flatMap(({ id, label }) => (part.remembered.includes(id) ? [label] : []));
    return was.length === 0 ? [] : [`Last time: ${was.join(', ')}.`];
  }
  return 'remembered' in part && part.remembered !== null ? [`Last time: ${part.remembered}.`] : [];
}

function element(part: Part, first: Given | undefined): InputBlock['element'] {
  const text = (most: number, multiline: boolean): InputBlock['element'] => ({
    type: 'plain_text_input',
    action_id: `v.${part.key}`,
    max_length: most,
    multiline,
    ...(typeof first === 'string' && first !== '' ? { initial_value: first } : {}),
  });
  switch (part.kind) {
    case 'field':
      return text(60, false);
    case 'label':
      return text(400, false);
    case 'note':
    case 'photo':
      return text(LIMITS.input, part.kind === 'photo' || part.finds === undefined);
    case 'choose':
    case 'confirm':
    case 'act':
      return choice(part, part.kind === 'choose' && part.several, [first ?? []].flat());
  }
}
function choice(
  { key, options: of }: { readonly key: string; readonly options: readonly Option[] },
  several: boolean,
  chosen: readonly string[],
): InputBlock['element'] {
  const options: PlainTextOption[] = of.map(({ id, label }) => ({ text: plain(label, LIMITS.option), value: id }));
  const first = options.filter(({ value }) => chosen.includes(value ?? ''));
  const action_id = `v.${key}`;
  const few = options.length <= LIMITS.radios;
  if (several) {
    const initial = first.length > 0 ? { initial_options: first } : {};
    return few
      ? { type: 'checkboxes', action_id, options, ...initial }
      : { type: 'multi_static_select', action_id, options, ...initial };
  }
  const initial = first[0] ? { initial_option: first[0] } : {};
  return few
    ? { type: 'radio_buttons', action_id, options, ...initial }
    : { type: 'static_select', action_id, options, ...initial };
}
