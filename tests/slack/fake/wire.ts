/** What goes over the wire, and the names of the workspace. */
import { randomUUID } from 'node:crypto';

export type Json = Record<string, unknown>;
export const BOT_TOKEN = 'xoxb-fake-1';
export const APP_TOKEN = 'xapp-fake-1';
export const SECRET = 'shhh-signing-secret';
export const TEAM = 'T0SHOP';
export const BOT = { user: 'U0BOT', bot: 'B0BOT' };
export const CREW = 'C0CREW';

export interface Message {
  channel: string;
  ts: string;
  user: string;
  bot?: string;
  text: string;
  blocks: Json[];
  metadata?: Json;
  thread?: string;
  files?: Json[];
  /** Only this person sees it. */
  to?: string;
  edited?: number;
}
export const eventBody = (event: Json, id = `Ev${randomUUID().slice(0, 8)}`): Json => ({
  token: 'old',
  team_id: TEAM,
  api_app_id: 'A0',
  type: 'event_callback',
  event_id: id,
  event_time: Math.floor(Date.now() / 1000),
  authorizations: [{ enterprise_id: null, team_id: TEAM, user_id: BOT.user, is_bot: true }],
  event,
});

/** A message as the platform sends it. */
export const wire = (m: Message): Json => ({
  type: 'message',
  user: m.user,
  ...(m.bot ? { bot_id: m.bot } : {}),
  ts: m.ts,
  text: m.text,
  blocks: m.blocks,
  ...(m.metadata ? { metadata: m.metadata } : {}),
  ...(m.thread ? { thread_ts: m.thread } : {}),
  ...(m.files ? { files: m.files } : {}),
});

export function argsOf(type: string, bytes: Buffer): Json {
  const text = bytes.toString('utf8');
  if (type.startsWith('application/json')) return JSON.parse(text || '{}') as Json;
  return Object.fromEntries(
    [...new URLSearchParams(text)].map(([key, value]) => [key, /^[[{]/.test(value) ? (parsed(value) ?? value) : value]),
  );
}
function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}
