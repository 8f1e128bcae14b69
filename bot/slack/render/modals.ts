/** The small forms beside the questions: a new call, a word of a senior, a change of hands, who somebody is. */
import type { ModalView } from '@slack/types';
import type { Person } from '../../../engine/desk/index.ts';
import { LIMITS } from '../limits.ts';
import type { orderValue, readOrder } from '../parse.ts';
import { paragraphs, plain } from './text.ts';

type Order = NonNullable<ReturnType<typeof readOrder>>['name'];
export const modal = (
  callback_id: string,
  title: string,
  submit: string,
  data: string,
  blocks: ModalView['blocks'],
): ModalView => ({
  type: 'modal',
  callback_id,
  private_metadata: data,
  title: plain(title, LIMITS.modalTitle),
  submit: plain(submit, LIMITS.modalTitle),
  close: plain('Not now', LIMITS.modalTitle),
  blocks,
});
const optionsOf = (crew: readonly Person[]) =>
  crew.slice(0, LIMITS.menu).map(({ id, name }) => ({ text: plain(name, LIMITS.option), value: id }));

export function newCall(crew: readonly Person[]): ModalView {
  const technicians = crew.filter(({ active, roles }) => active && roles.includes('technician'));
  return modal('new-call', 'New call', 'Open', '', [
    {
      type: 'input',
      block_id: 'title',
      label: plain('Where, and what the caller says'),
      hint: plain('Street or name and the complaint, in one line.'),
      element: { type: 'plain_text_input', action_id: 'v.title', max_length: 200 },
    },
    ...(technicians.length === 0
      ? []
      : [
          {
            type: 'input' as const,
            block_id: 'assign',
            optional: true,
            label: plain('Who goes'),
            element: { type: 'static_select' as const, action_id: 'v.assign', options: optionsOf(technicians) },
          },
        ]),
    {
      type: 'input',
      block_id: 'training',
      optional: true,
      label: plain('Training'),
      element: {
        type: 'checkboxes',
        action_id: 'v.training',
        options: [{ text: plain('A training call: never counts', LIMITS.option), value: 'yes' }],
      },
    },
  ]);
}

interface Review {
  readonly title: string;
  readonly label: string;
  readonly says: string;
  readonly needed: boolean;
}
const REVIEWS: Readonly<Partial<Record<Order, Review>>> = {
  release: {
    title: 'Release',
    label: 'The reason',
    says: 'The emergency ends, and the job goes on from the lock.',
    needed: true,
  },
  approve: { title: 'Approve', label: 'The reason', says: 'The job goes on.', needed: false },
  sign: { title: 'Sign', label: 'A word to it', says: 'You have read the record and stand for it.', needed: false },
  'send back': { title: 'Send back', label: 'What is missing', says: 'The job is open again.', needed: true },
  ask: {
    title: 'Ask',
    label: 'The question',
    says: 'It stands above the crew’s next question until it is answered.',
    needed: true,
  },
  note: { title: 'Note', label: 'The note', says: 'It goes on the record.', needed: true },
};

/** A second look before a word that counts: what it does, and the reason. Null for an order that has none. */
export function review(name: Order, value: ReturnType<typeof orderValue>, title: string): ModalView | null {
  const of = REVIEWS[name];
  if (!of) return null;
  return modal('review', of.title, of.title, value, [
    ...paragraphs([title, of.says]),
    {
      type: 'input',
      block_id: 'text',
      optional: !of.needed,
      label: plain(of.label),
      element: { type: 'plain_text_input', action_id: 'v.text', multiline: true, max_length: LIMITS.input },
    },
  ]);
}

export const join = (): ModalView =>
  modal('join', 'Who are you?', 'That’s me', '', [
    {
      type: 'input',
      block_id: 'link',
      label: plain('Your sign-in link'),
      hint: plain('The one your shop gave you. It works once; then this account is yours.'),
      element: { type: 'plain_text_input', action_id: 'v.link', max_length: 500 },
    },
  ]);

/** Something to read, in a window of its own. */
export const notice = (title: string, lines: readonly string[], link?: string): ModalView => ({
  type: 'modal',
  title: plain(title, LIMITS.modalTitle),
  close: plain('Close', LIMITS.modalTitle),
  blocks: [
    ...paragraphs(lines),
    ...(link === undefined
      ? []
      : [
          {
            type: 'actions' as const,
            elements: [{ type: 'button' as const, action_id: 'link', text: plain('Open', LIMITS.button), url: link }],
          },
        ]),
  ],
});
