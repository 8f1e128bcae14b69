/** What comes back from a button, a menu or a form → the question it answers and what is said to it. */
import * as z from 'zod/mini';
import type { Asked } from '../../engine/desk/index.ts';
import { CommandName, type GivenParts } from '../../engine/index.ts';

/** Which question a control was drawn for. It travels in the control itself, so an old one answers nothing else. */
export interface Drawn extends Asked {
  readonly job: string;
}
const Button = z.tuple([z.string(), z.number(), z.string(), z.nullable(z.number()), z.string(), z.string()]);
const Form = z.object({ job: z.string(), seq: z.number(), place: z.string(), amends: z.nullable(z.number()) });
const Order = z.tuple([z.string(), CommandName]);

export const buttonValue = ({ job, seq, place, amends }: Drawn, part = '', option = ''): string =>
  JSON.stringify([job, seq, place, amends, part, option]);
/** Null for what is none of ours. */
export function readButton(value: string | undefined): (Drawn & { part: string; option: string }) | null {
  const read = Button.safeParse(json(value));
  if (!read.success) return null;
  const [job, seq, place, amends, part, option] = read.data;
  return { job, seq, place, amends, part, option };
}
export const formData = ({ job, seq, place, amends }: Drawn): string => JSON.stringify({ job, seq, place, amends });
export function readForm(metadata: string | undefined): Drawn | null {
  const read = Form.safeParse(json(metadata));
  return read.success ? read.data : null;
}
export const orderValue = (job: string, name: z.infer<typeof CommandName>): string => JSON.stringify([job, name]);
export function readOrder(value: string | undefined): { job: string; name: z.infer<typeof CommandName> } | null {
  const read = Order.safeParse(json(value));
  return read.success ? { job: read.data[0], name: read.data[1] } : null;
}

/** One field of a form as the platform sends it. */
export interface Field {
  readonly value?: string | null;
  readonly selected_option?: { readonly value: string } | null;
  readonly selected_options?: readonly { readonly value: string }[];
}
export type State = Readonly<Record<string, Readonly<Record<string, Field>>>>;
/** Field of the form for the reason why a question is left open. No part is called so. */
export const SKIP = '!skip';

/** What was filled in, by part; what was left empty is left out. */
export function readState(state: State): { parts: GivenParts; skip: string | null } {
  const given = Object.entries(state).flatMap(([key, fields]) => {
    const [field] = Object.values(fields);
    const said = field === undefined ? null : saidIn(field);
    return said === null ? [] : [[key, said] as const];
  });
  const { [SKIP]: skip, ...parts } = Object.fromEntries(given);
  return { parts, skip: typeof skip === 'string' ? skip : null };
}
function saidIn({ value, selected_option, selected_options }: Field): string | string[] | null {
  if (selected_options) return selected_options.length === 0 ? null : selected_options.map((o) => o.value);
  if (selected_option) return [selected_option.value];
  return typeof value === 'string' && value.trim() !== '' ? value : null;
}

/** Null for what is none. */
export function json(text: string | undefined): unknown {
  try {
    return JSON.parse(text ?? '');
  } catch {
    return null;
  }
}
