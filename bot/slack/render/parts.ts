/** How a question is answered in a message: buttons, a menu with its own Send, or one that opens a form. */
import type { ActionsBlock, Button, ConfirmationDialog, KnownBlock, StaticSelect } from '@slack/types';
import { type Option, type Part, type Prompt, sayKey, sayUnit } from '../../../engine/index.ts';
import { LIMITS } from '../limits.ts';
import { buttonValue, type Drawn, orderValue } from '../parse.ts';
import { dangers } from './callouts.ts';
import { cut, plain } from './text.ts';

export const drawn = ({ job, seq, place, amends }: Prompt): Drawn => ({ job, seq, place, amends });

/** The one part that has to be answered, where it is one choice of few: it is tapped without a form. */
export function oneChoice(parts: readonly Part[]): Extract<Part, { options: Option[] }> | null {
  const needed = parts.filter(({ optional }) => !optional);
  const [part] = needed;
  if (needed.length !== 1 || !part || !('options' in part)) return null;
  if (part.kind === 'choose' && part.several) return null;
  return part.options.length <= LIMITS.menu && part.options.every(({ id }) => id.length <= LIMITS.option) ? part : null;
}
/** Answers that authorise nothing: they lead away from danger, so they are taken at once. */
const AWAY = new Set(['no', 'cant']);

export function answerBlocks(prompt: Prompt): KnownBlock[] {
  const { parts } = prompt;
  const choice = oneChoice(parts);
  const forForm = parts.filter(({ kind }) => kind !== 'photo');
  if (!choice) return forForm.length === 0 ? [] : [row([formButton(prompt)])];
  const more = forForm.length > 1 ? [formButton(prompt, 'Answer with more')] : [];
  if (choice.options.length <= LIMITS.buttons)
    return [row([...choice.options.map((o, n) => tap(prompt, choice, o, n)), ...more])];
  const menu: StaticSelect = {
    type: 'static_select',
    action_id: 'menu',
    placeholder: plain(choice.ask, 150),
    options: choice.options.map(({ id, label }) => ({ text: plain(label, LIMITS.option), value: id })),
  };
  const risky = isRisky(prompt, choice, null);
  const send: Button = {
    type: 'button',
    action_id: 'send',
    text: plain('Send', LIMITS.button),
    value: buttonValue(drawn(prompt), choice.key),
    ...(risky ? { confirm: twice(prompt, 'what you chose', 'Send it') } : {}),
  };
  return [row([menu, send, ...more])];
}
const row = (elements: ActionsBlock['elements']): ActionsBlock => ({ type: 'actions', block_id: 'answer', elements });

function tap(prompt: Prompt, part: Part, { id, label }: Option, n: number): Button {
  const risky = isRisky(prompt, part, id);
  return {
    type: 'button',
    action_id: `answer.${n}`,
    text: plain(label, LIMITS.button),
    value: buttonValue(drawn(prompt), part.key, id),
    ...(label.length > LIMITS.button ? { accessibility_label: cut(label, 75) } : {}),
    ...(risky ? { confirm: twice(prompt, label, 'Yes') } : {}),
  };
}
/** Hands on what could be live, and what stands under a danger: such a word is asked twice. */
function isRisky(prompt: Prompt, part: Part, option: string | null): boolean {
  if (option !== null && AWAY.has(option)) return false;
  return dangers(prompt).length > 0 || (part.kind !== 'choose' && prompt.class !== 'eyes');
}
function twice(prompt: Prompt, what: string, yes: string): ConfirmationDialog {
  const danger = dangers(prompt).map((text) => `DANGER: ${text}`);
  const words = [...danger, `${prompt.title} You say: ${what}.`].join('\n');
  return {
    title: plain(danger.length > 0 ? 'Danger. Are you sure?' : 'Are you sure?', LIMITS.confirmTitle),
    text: plain(words, LIMITS.confirmText),
    confirm: plain(yes, LIMITS.confirmButton),
    deny: plain('Not yet', LIMITS.confirmButton),
    style: 'danger',
  };
}
export function formButton(prompt: Prompt, label = 'Answer'): Button {
  return {
    type: 'button',
    action_id: 'form',
    text: plain(label, LIMITS.button),
    value: buttonValue(drawn(prompt)),
    ...(dangers(prompt).length > 0 ? { confirm: twice(prompt, 'you have the figures', 'Go on') } : {}),
  };
}

/** The words that work everywhere, to tap. */
export function alwaysRow(prompt: Prompt): ActionsBlock {
  const order = (name: Parameters<typeof orderValue>[1], label: string) => ({
    text: plain(label, LIMITS.option),
    value: orderValue(prompt.job, name),
  });
  return {
    type: 'actions',
    block_id: 'always',
    elements: [
      {
        type: 'overflow',
        action_id: 'order',
        options: [
          order('why', 'Why'),
          order('where', 'Where am I'),
          order('back', 'Change my last answer'),
          order('senior', 'A senior'),
          order('stop', 'Stop'),
        ],
      },
      {
        type: 'button',
        action_id: 'alarm',
        text: plain('Emergency', LIMITS.button),
        style: 'danger',
        value: orderValue(prompt.job, 'alarm'),
        confirm: {
          title: plain('Emergency?', LIMITS.confirmTitle),
          text: plain('Every isolation of this job ends, and the senior and the dispatcher are told. Get away first.'),
          confirm: plain('Emergency', LIMITS.confirmButton),
          deny: plain('No', LIMITS.confirmButton),
          style: 'danger',
        },
      },
    ],
  };
}

/** The parts in words, for those who type; what stands on buttons or in a menu is not said twice. */
export function partLines({ parts, title }: Prompt): string[] {
  const onButtons = oneChoice(parts);
  return parts.flatMap((part) => (part === onButtons ? [] : linesOf(part, parts.length > 1 && part.ask !== title)));
}
function linesOf(part: Part, headed: boolean): string[] {
  const optional = part.optional ? ', may be left out' : '';
  switch (part.kind) {
    case 'choose':
    case 'confirm':
    case 'act': {
      const several = part.kind === 'choose' && part.several;
      const head = headed || several ? [`${part.ask}${several ? ', one or more' : ''}${optional}:`] : [];
      return [...head, ...part.options.map(({ label }) => `· ${label}`)];
    }
    case 'field':
      return [`${sayKey(part.key)}: ${fieldWords(part)}${optional}`];
    case 'label':
      return [`${part.ask}${optional}: as printed, for example 40/5 MFD ±6% 440 VAC`];
    case 'photo':
      return [`${part.ask}${optional}: send it here, in this thread`];
    case 'note':
      return [`${part.ask}${optional}: in your own words`];
  }
}
export function fieldWords({ ask, unit, unitNeeded, over, prefers }: Extract<Part, { kind: 'field' }>): string {
  const other = prefers === undefined ? '' : `, or ${prefers} typed behind it`;
  return `${ask}${unit === 'count' ? '' : `, ${sayUnit(unit)}`}${other}${unitNeeded ? ', with its unit' : ''}${over ? ', or ol' : ''}`;
}
