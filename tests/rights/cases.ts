/** What is tried for each use case: a request over HTTP, and where it can be typed, the line. */
import { readFileSync } from 'node:fs';
import { DEFAULT_SETTINGS } from '../../engine/memory.ts';
import { MEANS } from '../engine/given.ts';
import type { PersonId } from '../people.ts';
import type { State } from './calls.ts';

/** What stands at the call when somebody tries something there. */
export interface There {
  readonly job: string;
  readonly client: string;
  /** The turn that the question on it asks to be answered. */
  readonly seq: number;
  /** The entry of the answer with this ending of its place. */
  readonly of: (place: string) => number;
  readonly photo: string;
  /** Ids of open links to its reports. */
  readonly shares: Readonly<Record<'customer' | 'shop', string>>;
  readonly by: PersonId | null;
  /** A session of this person and of Tomas, as they are named in the list. */
  readonly device: Readonly<Record<'own' | 'other', string>>;
}
export interface Asked {
  readonly path: string;
  readonly body?: object | Buffer;
  readonly method?: 'DELETE';
}
export interface Case {
  /** Null: about no call. */
  readonly state: State | null;
  readonly ask: (there: There) => Asked;
  /** The same as a line, for the doors where one types. */
  readonly line?: string;
  /** Where anybody gets an answer: whether it holds what was asked for. */
  readonly shows?: (text: string, there: There) => boolean;
  /** The answer is a stream. */
  readonly feed?: 'call' | 'all';
  /** Done, and the record grew. */
  readonly writes?: true;
}

const JPEG = readFileSync(new URL('../web-chat/pictures/gate.jpg', import.meta.url));
const get = (state: State | null, path: (there: There) => string, more: Partial<Case> = {}): Case => ({
  state,
  ask: (there) => ({ path: path(there) }),
  ...more,
});
const post = (state: State | null, path: (there: There) => string, body: (there: There) => object): Case => ({
  state,
  ask: (there) => ({ path: path(there), body: body(there) }),
});
const reply = (state: State, body: (there: There) => object, more: Partial<Case> = {}): Case => ({
  state,
  ask: (there) => ({ path: `/api/jobs/${there.job}/replies`, body: { client: there.client, ...body(there) } }),
  writes: true,
  ...more,
});
/** A line that is typed: the same in every door. */
const line = (state: State, text: string, more: Partial<Case> = {}): Case =>
  reply(state, ({ seq }) => ({ kind: 'text', seq, text }), { line: text, ...more });
const command = (state: State, name: string, text?: string, of?: (there: There) => number): Case =>
  reply(
    state,
    (there) => ({ kind: 'command', name, ...(text ? { text } : {}), ...(of ? { of: of(there) } : {}) }),
    of ? {} : { line: `${name} ${text ?? ''}`.trim() },
  );
const info = (name: string): Case => {
  const { writes: _, ...rest } = command('gate', name);
  return rest;
};
const NELL = { id: 'nell', name: 'Nell Harrow', initials: 'NH', roles: ['technician'], certified: true, active: true };
const share = (audience: 'customer' | 'shop'): Case =>
  post(
    'ended',
    ({ job }) => `/api/jobs/${job}/shares`,
    () => ({ for: audience, days: 7 }),
  );
const links = (audience: 'customer' | 'shop'): Case =>
  get('ended', ({ job }) => `/api/jobs/${job}/shares`, {
    shows: (text, there) => text.includes(there.shares[audience]),
  });
const endShare = (audience: 'customer' | 'shop'): Case => ({
  state: 'ended',
  ask: ({ job, shares }) => ({ path: `/api/jobs/${job}/shares/${shares[audience]}`, method: 'DELETE', body: {} }),
});
const report = (rest: string): Case => get('ended', ({ job }) => `/jobs/${job}/report/${rest}`);

const listed = (text: string, { job }: There): boolean => text.includes(job);
const at = (path: string) => (): string => path;
const ofJob =
  (path: string) =>
  ({ job }: There): string =>
    path.replace('JOB', job);

export const CASES: Readonly<Record<string, Case>> = {
  'open a call': post(null, at('/api/jobs'), ({ client }) => ({ title: 'No cool', client })),
  'open a call for somebody else': post(null, at('/api/jobs'), ({ client }) => ({
    title: 'Hum',
    client,
    assign: 'tess',
  })),
  'list of calls': get('gate', at('/api/jobs'), { shows: listed }),
  'look at a call': get('gate', ofJob('/api/jobs/JOB')),
  'page of a call': get('gate', ofJob('/jobs/JOB')),
  'page of the list': get('gate', at('/'), { shows: listed }),
  'who am I': get(null, at('/api/me')),
  'export a call': get('gate', ofJob('/api/jobs/JOB/export')),
  'answer with eyes': line('eyes', 'psc'),
  'answer a gate': line('gate', MEANS),
  'answer with hands inside': line('inside', 'herm 44.6 fan 5.03 hf 4.52 case ol'),
  'skip with hands inside': command('inside', 'skip', 'no meter for this'),
  why: info('why'),
  where: info('where'),
  help: info('help'),
  photo: info('photo'),
  back: command('eyes', 'back', 'c', ({ of }) => of('observation')),
  'change an answer': reply('inside', ({ of }) => ({ kind: 'amend', of: of('class'), parts: { choice: ['ecm'] } })),
  'change an answer, with a reason': reply('inside', ({ of }) => ({
    ...{ kind: 'amend', of: of('class'), parts: { choice: ['ecm'] }, reason: 'the plate says so' },
  })),
  'change a gate, with a reason': reply('inside', ({ of }) => ({
    ...{ kind: 'amend', of: of('proving'), parts: { l1g: '0.1' }, reason: 'misheard' },
  })),
  'take back a gate': reply('inside', ({ of }) => ({ kind: 'withdraw', of: of('proving') })),
  'take back a gate, with a reason': reply('inside', ({ of }) => ({
    kind: 'withdraw',
    of: of('proving'),
    reason: 'wrong unit',
  })),
  'keep a photo': { state: 'inside', ask: ({ job }) => ({ path: `/api/jobs/${job}/photos`, body: JPEG }) },
  'look at a photo': get('ended', ({ job, photo }) => `/api/jobs/${job}/photos/${photo}`),

  stop: command('gate', 'stop'),
  alarm: command('gate', 'alarm'),
  'words of danger': line('gate', 'I got shocked'),
  'power is back': command('gate', 'power is back'),
  'lock is off': command('gate', 'lock is off'),
  'call a senior': command('gate', 'senior'),
  note: command('gate', 'note', 'the gate sticks'),

  'go on': command('stopped', 'go on'),
  'hand over': command('gate', 'hand over', 'tess'),
  'take over': command('handed', 'take over'),
  assign: post('gate', ofJob('/api/jobs/JOB/assign'), ({ client }) => ({ to: 'tess', client })),

  happening: command('word', 'happening'),
  'old mark': command('word', 'old mark'),
  'not here': command('alarm', 'not here'),
  seen: command('alarm', 'seen'),
  release: command('alarm', 'release', 'seen on the spot'),
  'approvals awaited': get(null, at('/api/awaited')),
  'emergencies to know of': get('alarm', at('/api/alarms'), { shows: listed }),

  approve: command('approval', 'approve', 'the room is locked'),
  ask: command('gate', 'ask', 'what does the plate say'),
  'reply to a question': command('asked', 'reply', 'five tons'),
  sign: command('ended', 'sign'),
  'send back': command('ended', 'send back', 'the plate is missing'),
  'queue of review': get('ended', at('/api/review')),
  'page of the queue': get('ended', at('/review')),
  'review a call': get('ended', ofJob('/api/review/JOB')),
  'page of a review': get('ended', ofJob('/review/JOB')),
  recompute: post('ended', ofJob('/api/review/JOB/recompute'), () => ({})),
  counts: get('ended', at('/review/counts')),

  'page for the customer': report('customer'),
  'page for the customer as data': report('customer/json'),
  'record for the shop': report('shop'),
  'record for the shop as PDF': report('shop/pdf'),
  'record for the shop as data': report('shop/json'),
  'share the page': share('customer'),
  'share the record': share('shop'),
  'links to the page': links('customer'),
  'links to the record': links('shop'),
  'take back a link to the page': endShare('customer'),
  'take back a link to the record': endShare('shop'),

  'take a call': post(null, at('/api/calls'), ({ client }) => ({ client })),
  'look at a caller’s call': get('caller', ofJob('/api/jobs/JOB')),
  'page of a caller’s call': get('caller', ofJob('/calls/JOB')),
  'answer for a caller': line('caller', 'none'),
  'say which unit it is': post('caller', ofJob('/api/calls/JOB/unit'), ({ client }) => ({ unit: 'unit-1', client })),
  'what is known of a caller': post('gate', at('/api/known'), () => ({ typed: 'Quince' })),
  board: get('gate', at('/api/board'), { shows: listed }),
  'page of the board': get('gate', at('/board'), { shows: listed }),
  find: { ...post('gate', at('/api/find'), ({ job }) => ({ words: `Quince ${job.slice(0, 8)}` })), shows: listed },

  'crew and shop': get(null, at('/api/shop')),
  'page of crew and shop': get(null, at('/shop')),
  'save a person': post(null, at('/api/shop/people'), () => NELL),
  'save settings': post(null, at('/api/shop/settings'), () => DEFAULT_SETTINGS),
  'save a truck': post(null, at('/api/shop/trucks'), ({ client }) => ({
    ...{ id: client, name: 'Van 2', version: 0, items: [] },
  })),
  'link for a person': post(null, at('/api/shop/people/tess/link'), () => ({})),
  'sign a person out': post(null, at('/api/shop/people/tess/revoke'), () => ({})),
  'devices of a person': get(null, at('/api/shop/people/tess/devices')),
  'sign a device out': post(
    null,
    ({ device }) => `/api/shop/people/tess/devices/${device.other}/revoke`,
    () => ({}),
  ),
  'own devices': get(null, at('/api/me/devices')),
  'page of own devices': get(null, at('/devices')),
  'own units': post(null, at('/api/me/units'), () => ({ units: { temperature: '°C', pressure: 'kPa' } })),
  'sign an own device out': post(
    null,
    ({ device }) => `/api/me/devices/${device.own}/revoke`,
    () => ({}),
  ),
  'sign out': post(null, at('/sign-out'), () => ({})),

  'feed of a call': get('gate', ofJob('/api/jobs/JOB/feed'), { feed: 'call' }),
  'feed of all calls': get('gate', at('/api/feed'), { feed: 'all' }),

  'document of the API': get(null, at('/api/openapi.json')),
};
