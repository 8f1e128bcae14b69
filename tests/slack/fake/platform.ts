/**
 * The platform on loopback, as strict as its documents: Web API over HTTP, files, Socket Mode over a real WebSocket, signed
 * requests in HTTP mode. It refuses what the platform refuses, so a test fails where a workspace would.
 */
import { createHmac, randomUUID } from 'node:crypto';
import { once } from 'node:events';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { buffer } from 'node:stream/consumers';
import { setTimeout as sleep } from 'node:timers/promises';
import { type WebSocket, WebSocketServer } from 'ws';
import { wrongMessage, wrongView } from './limits.ts';
import {
  APP_TOKEN,
  argsOf,
  BOT,
  BOT_TOKEN,
  CREW,
  eventBody,
  type Json,
  type Message,
  SECRET,
  TEAM,
  wire,
} from './wire.ts';

export interface Call {
  method: string;
  args: Json;
  at: number;
  token: string;
}
/** What happens to the next call of a method. `accepted`: it took effect all the same. */
export interface Trouble {
  status?: number;
  retryAfter?: number;
  reset?: boolean;
  error?: string;
  accepted?: boolean;
  delay?: number;
}
export interface View {
  id: string;
  hash: string;
  view: Json;
  /** What stands in its fields, by block and element; it stays where both are drawn anew under the same ids. */
  state: Record<string, Json>;
  closed: boolean;
}
interface Waiting {
  envelope: Json;
  done: (ack: Json) => void;
  late: NodeJS.Timeout;
}

export class Slack {
  readonly messages: Message[] = [];
  readonly calls: Call[] = [];
  readonly homes = new Map<string, Json>();
  readonly modals: View[] = [];
  /** `stalls`: half of it comes, and then nothing more. */
  readonly files = new Map<string, { name: string; bytes: Buffer; type: string; alt: string; stalls?: boolean }>();
  /** What the platform would have refused, in its own words. */
  readonly refused: string[] = [];
  readonly acks: { ms: number; payload: Json }[] = [];
  readonly channels = new Set([CREW]);
  readonly #troubles = new Map<string, Trouble[]>();
  readonly #triggers = new Map<string, number>();
  readonly #waiting = new Map<string, Waiting>();
  #server: Server | undefined;
  #sockets: WebSocketServer | undefined;
  readonly #open = new Set<WebSocket>();
  #clock = 0;
  /** In HTTP mode: where the app listens. */
  appUrl: string | null = null;
  /** Milliseconds between the pings of a socket; the real one takes about 10 s. */
  pings = 0;
  echo = true;
  badToken = false;
  connections = 0;

  get url(): string {
    const address = this.#server?.address() as AddressInfo | undefined;
    return `http://127.0.0.1:${address?.port}/`;
  }
  get api(): string {
    return `${this.url}api/`;
  }

  static async start(): Promise<Slack> {
    const slack = new Slack();
    slack.#server = createServer((q, r) => void slack.#serve(q, r).catch(() => r.destroy()));
    slack.#sockets = new WebSocketServer({ server: slack.#server, path: '/link' });
    slack.#sockets.on('connection', (socket) => slack.#connected(socket));
    slack.#server.listen(0, '127.0.0.1');
    await once(slack.#server, 'listening');
    return slack;
  }
  async stop(): Promise<void> {
    for (const { late } of this.#waiting.values()) clearTimeout(late);
    for (const socket of this.#open) socket.terminate();
    this.#sockets?.close();
    this.#server?.closeAllConnections();
    await new Promise((done) => this.#server?.close(done));
  }

  /** The next calls of this method meet this, one after another. */
  trouble(method: string, ...troubles: Trouble[]): void {
    this.#troubles.set(method, [...(this.#troubles.get(method) ?? []), ...troubles]);
  }
  ts(): string {
    this.#clock += 1;
    return `17${String(Math.floor(Date.now() / 1000)).slice(2)}.${String(this.#clock).padStart(6, '0')}`;
  }
  trigger(age = 0): string {
    const id = `${Date.now()}.${randomUUID().slice(0, 8)}`;
    this.#triggers.set(id, Date.now() - age);
    return id;
  }
  thread(ts: string): Message[] {
    return this.messages.filter((m) => m.thread === ts && m.to === undefined);
  }
  /** Calls besides the drawing of homes, which follow their own pace. */
  get spoken(): number {
    return this.calls.filter(({ method }) => method !== 'views.publish').length;
  }
  called(method: string): Call[] {
    return this.calls.filter((call) => call.method === method);
  }

  // ------------------------------------------------------------------------------------------------ to the app

  /** Over the socket, or signed over HTTP where the app has a URL. Gives the body of its ack. */
  async deliver(type: 'events_api' | 'interactive' | 'slash_commands', payload: Json, retry = 0): Promise<Json> {
    return this.appUrl === null ? this.#envelope(type, payload, retry) : this.#post(type, payload, retry);
  }
  #envelope(type: string, payload: Json, retry: number): Promise<Json> {
    const envelope = {
      envelope_id: randomUUID(),
      type,
      payload,
      accepts_response_payload: type !== 'events_api',
      ...(retry > 0 ? { retry_attempt: retry, retry_reason: 'timeout' } : {}),
    };
    const begun = performance.now();
    return new Promise((resolve, reject) => {
      const late = setTimeout(() => {
        this.refused.push(`${type} was not acknowledged within 3 s`);
        this.#waiting.delete(envelope.envelope_id);
        // An event comes again, three times; a tap or a form shows its person an error.
        if (type === 'events_api' && retry < 3) this.#envelope(type, payload, retry + 1).then(resolve, reject);
        else reject(new Error(`no ack of ${type}`));
      }, 3000);
      const done = (ack: Json): void => {
        clearTimeout(late);
        this.acks.push({ ms: performance.now() - begun, payload: ack });
        resolve(ack);
      };
      this.#waiting.set(envelope.envelope_id, { envelope, done, late });
      this.#send(envelope);
    });
  }
  #send(envelope: Json): void {
    const [socket] = [...this.#open];
    socket?.send(JSON.stringify(envelope));
  }
  async #post(type: string, payload: Json, retry: number): Promise<Json> {
    const form = type === 'slash_commands' ? new URLSearchParams(payload as Record<string, string>).toString() : null;
    const body =
      form ??
      (type === 'interactive' ? `payload=${encodeURIComponent(JSON.stringify(payload))}` : JSON.stringify(payload));
    const contentType = type === 'events_api' ? 'application/json' : 'application/x-www-form-urlencoded';
    const answer = await this.request(body, { 'content-type': contentType }, { retry });
    if (answer.status !== 200) throw new Error(`the app answered ${answer.status}`);
    const text = await answer.text();
    return text === '' ? {} : text.startsWith('{') ? (JSON.parse(text) as Json) : { text };
  }
  /** One request in HTTP mode as the platform makes it, with what a test wants otherwise. */
  async request(
    body: string,
    headers: Record<string, string>,
    { age = 0, secret = SECRET, retry = 0, sign = true } = {},
  ): Promise<Response> {
    const stamp = String(Math.floor(Date.now() / 1000) - age);
    const signature = `v0=${createHmac('sha256', secret).update(`v0:${stamp}:${body}`).digest('hex')}`;
    return fetch(this.appUrl ?? '', {
      method: 'POST',
      body,
      headers: {
        ...headers,
        ...(sign ? { 'x-slack-signature': signature, 'x-slack-request-timestamp': stamp } : {}),
        ...(retry > 0 ? { 'x-slack-retry-num': String(retry), 'x-slack-retry-reason': 'http_timeout' } : {}),
      },
    });
  }
  #connected(socket: WebSocket): void {
    this.connections += 1;
    this.#open.add(socket);
    const beat = this.pings > 0 ? setInterval(() => socket.ping(), this.pings) : undefined;
    socket.on('close', () => {
      clearInterval(beat);
      this.#open.delete(socket);
    });
    socket.on('message', (data) => {
      const { envelope_id, payload } = JSON.parse(String(data)) as { envelope_id: string; payload?: Json };
      const waiting = this.#waiting.get(envelope_id);
      this.#waiting.delete(envelope_id);
      waiting?.done(payload ?? {});
    });
    socket.send(JSON.stringify({ type: 'hello', num_connections: this.#open.size, connection_info: { app_id: 'A0' } }));
    // What was not acknowledged on the old connection comes again on the new one.
    for (const { envelope } of this.#waiting.values())
      socket.send(JSON.stringify({ ...envelope, retry_attempt: 1, retry_reason: 'timeout' }));
  }
  /** As the platform does every few hours. */
  refresh(): void {
    for (const socket of this.#open) socket.send(JSON.stringify({ type: 'disconnect', reason: 'refresh_requested' }));
  }
  cut(): void {
    for (const socket of this.#open) socket.terminate();
  }
  raw(text: string): void {
    for (const socket of this.#open) socket.send(text);
  }
  get connected(): boolean {
    return this.#open.size > 0;
  }

  // ---------------------------------------------------------------------------------------------- from the app

  async #serve(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const url = new URL(request.url ?? '/', this.url);
    const bytes = await buffer(request);
    const token = String(request.headers.authorization ?? '').replace('Bearer ', '');
    if (url.pathname.startsWith('/files/')) return this.#file(url, token, request, bytes, response);
    const method = url.pathname.replace('/api/', '');
    const args = argsOf(String(request.headers['content-type']), bytes);
    this.calls.push({ method, args, at: Date.now(), token });
    const trouble = this.#troubles.get(method)?.shift();
    const answer = !trouble || trouble.accepted || trouble.delay ? this.#answer(method, args, token) : null;
    // It took effect at once; whoever waits hears of it late.
    if (trouble?.delay) await sleep(trouble.delay);
    if (trouble?.reset) return void response.destroy();
    const { status = 200, retryAfter, error } = trouble ?? {};
    if (retryAfter !== undefined) response.setHeader('retry-after', String(retryAfter));
    response.writeHead(status, { 'content-type': 'application/json' });
    response.end(JSON.stringify(error === undefined ? (answer ?? { ok: false }) : { ok: false, error }));
  }
  #answer(method: string, args: Json, token: string): Json {
    const wanted = method === 'apps.connections.open' ? APP_TOKEN : BOT_TOKEN;
    if (token === '') return { ok: false, error: 'not_authed' };
    if (token !== wanted || this.badToken) return { ok: false, error: 'invalid_auth' };
    const answer = this.#method(method, args);
    if (answer.ok !== true) this.refused.push(`${method}: ${JSON.stringify(answer)}`);
    return answer;
  }
  #method(method: string, args: Json): Json {
    const no = (error: string, more: readonly string[] = []): Json => ({
      ok: false,
      error,
      response_metadata: { messages: more },
    });
    switch (method) {
      case 'auth.test':
        return {
          ok: true,
          url: this.url,
          team: 'Shop',
          user: 'nocool',
          team_id: TEAM,
          user_id: BOT.user,
          bot_id: BOT.bot,
        };
      case 'apps.connections.open':
        return { ok: true, url: `${this.url.replace('http', 'ws')}link` };
      case 'chat.postMessage':
      case 'chat.postEphemeral': {
        // A message to an account goes to the conversation with it alone; an ephemeral one has none.
        const alone = method === 'chat.postMessage' && String(args.channel).startsWith('U');
        const channel = alone ? `D${String(args.channel).slice(1)}` : String(args.channel);
        if (!channel.startsWith('D') && !this.channels.has(channel)) return no('channel_not_found');
        if (channel.startsWith('D') && method === 'chat.postEphemeral') return no('user_not_in_channel');
        const wrong = wrongMessage(args);
        if (wrong.length > 0) return no('invalid_blocks', wrong);
        if (args.thread_ts !== undefined && !/^\d+\.\d{6}$/.test(String(args.thread_ts)))
          return no('invalid_thread_ts');
        const to = method === 'chat.postEphemeral' ? String(args.user) : undefined;
        if (to === 'undefined') return no('user_not_in_channel');
        const message = this.#keep(channel, args, to);
        return { ok: true, channel, ts: message.ts, message_ts: message.ts, message: wire(message) };
      }
      case 'chat.update': {
        const message = this.messages.find((m) => m.ts === args.ts && m.channel === args.channel && m.to === undefined);
        if (!message) return no('message_not_found');
        if (message.user !== BOT.user) return no('cant_update_message');
        const wrong = wrongMessage(args);
        if (wrong.length > 0) return no('invalid_blocks', wrong);
        const before = wire(message);
        message.text = String(args.text);
        message.blocks = (args.blocks ?? []) as Json[];
        message.edited = (message.edited ?? 0) + 1;
        if (this.echo)
          this.#echo({
            type: 'message',
            subtype: 'message_changed',
            hidden: true,
            channel: message.channel,
            message: wire(message),
            previous_message: before,
            ts: this.ts(),
            event_ts: this.ts(),
          });
        return { ok: true, channel: message.channel, ts: message.ts, text: message.text };
      }
      case 'conversations.replies':
      case 'conversations.history': {
        if (!this.channels.has(String(args.channel))) return no('channel_not_found');
        const all = args.include_all_metadata === 'true' || args.include_all_metadata === true;
        const found = this.messages.filter(
          (m) =>
            m.channel === args.channel &&
            m.to === undefined &&
            (method === 'conversations.history' ? m.thread === undefined : m.thread === args.ts || m.ts === args.ts) &&
            (args.oldest === undefined || m.ts > String(args.oldest)),
        );
        const messages = found.map((m) => (all ? wire(m) : { ...wire(m), metadata: undefined }));
        return {
          ok: true,
          messages: method === 'conversations.history' ? messages.reverse() : messages,
          has_more: false,
        };
      }
      case 'conversations.open': {
        const channel = `D${String(args.users).slice(1)}`;
        this.channels.add(channel);
        return { ok: true, channel: { id: channel } };
      }
      case 'views.push':
      case 'views.open': {
        const given = this.#triggers.get(String(args.trigger_id));
        this.#triggers.delete(String(args.trigger_id));
        if (given === undefined) return no('exchanged_trigger_id');
        if (Date.now() - given > 3000) return no('expired_trigger_id');
        if (method === 'views.push' && this.modals.every(({ closed }) => closed)) return no('no_view');
        return this.#show(args, no);
      }
      case 'views.update': {
        const open = this.modals.find(({ id }) => id === args.view_id);
        if (!open || open.closed) return no('not_found');
        const wrong = wrongView(args.view as Json);
        if (wrong.length > 0) return no('invalid_arguments', wrong);
        redraw(open, args.view as Json);
        return { ok: true, view: { id: open.id } };
      }
      case 'views.publish': {
        const wrong = wrongView(args.view as Json);
        if (wrong.length > 0) return no('invalid_arguments', wrong);
        this.homes.set(String(args.user_id), args.view as Json);
        return { ok: true, view: { id: 'V0' } };
      }
      case 'users.info':
        return { ok: true, user: { id: args.user, tz: 'America/Chicago', tz_offset: -18000 } };
      case 'files.getUploadURLExternal': {
        if (Number(args.length) <= 0 || args.filename === undefined) return no('invalid_arguments');
        const id = `F${this.files.size + 1}`;
        this.files.set(id, {
          name: String(args.filename),
          bytes: Buffer.alloc(0),
          type: '',
          alt: String(args.alt_txt ?? ''),
        });
        return { ok: true, upload_url: `${this.url}files/up/${id}`, file_id: id };
      }
      case 'files.completeUploadExternal': {
        const files = args.files as { id: string; title?: string }[];
        if (files.some(({ id }) => (this.files.get(id)?.bytes.length ?? 0) === 0)) return no('file_not_found');
        const channel = String(args.channel_id);
        if (!this.channels.has(channel)) return no('channel_not_found');
        const shared = files.map(({ id, title }) => ({ id, title, name: this.files.get(id)?.name }));
        this.#keep(channel, { text: args.initial_comment ?? '', thread_ts: args.thread_ts, files: shared });
        return { ok: true, files: files.map(({ id }) => ({ id })) };
      }
      default:
        return no('unknown_method');
    }
  }
  #show(args: Json, no: (error: string, more?: readonly string[]) => Json): Json {
    const view = args.view as Json;
    const wrong = wrongView(view);
    if (wrong.length > 0) return no('invalid_arguments', wrong);
    const open = { id: `V${this.modals.length + 1}`, hash: randomUUID(), view, state: {}, closed: false };
    this.modals.push(open);
    return { ok: true, view: { id: open.id, hash: open.hash } };
  }
  /** What becomes of a window by the answer to its Send. */
  submitted(open: View, ack: Json): void {
    switch (ack.response_action) {
      case undefined:
        open.closed = true;
        return;
      case 'clear':
        for (const each of this.modals) each.closed = true;
        return;
      case 'update': {
        const wrong = wrongView(ack.view as Json);
        if (wrong.length > 0) this.refused.push(`update: ${wrong.join(', ')}`);
        redraw(open, ack.view as Json);
        return;
      }
      case 'errors': {
        const inputs = (open.view.blocks as Json[]).flatMap((b) => (b.type === 'input' ? [String(b.block_id)] : []));
        const stray = Object.keys(ack.errors as Json).filter((key) => !inputs.includes(key));
        if (stray.length > 0) this.refused.push(`errors at no field: ${stray.join(', ')}`);
        return;
      }
      default:
        this.refused.push(`response_action ${String(ack.response_action)}`);
    }
  }
  #keep(channel: string, args: Json, to?: string): Message {
    const message: Message = {
      channel,
      ts: this.ts(),
      user: BOT.user,
      bot: BOT.bot,
      text: String(args.text ?? ''),
      blocks: (args.blocks ?? []) as Json[],
      ...(args.metadata ? { metadata: args.metadata as Json } : {}),
      ...(args.thread_ts ? { thread: String(args.thread_ts) } : {}),
      ...(args.files ? { files: args.files as Json[] } : {}),
      ...(to === undefined ? {} : { to }),
    };
    this.messages.push(message);
    if (this.echo && to === undefined) this.#echo({ type: 'message', ...wire(message), channel, event_ts: message.ts });
    return message;
  }
  /** What an app writes comes back to it as an event. */
  #echo(event: Json): void {
    if (this.appUrl === null && !this.connected) return;
    this.deliver('events_api', eventBody(event)).catch((error: unknown) => this.refused.push(String(error)));
  }
  #file(url: URL, token: string, request: IncomingMessage, bytes: Buffer, response: ServerResponse): void {
    const [, , what, id] = url.pathname.split('/');
    if (what === 'up' && request.method === 'POST') {
      const file = this.files.get(String(id));
      if (file) file.bytes = bytes;
      return void response.writeHead(file ? 200 : 404).end('OK');
    }
    const file = this.files.get(String(id));
    if (!file) return void response.writeHead(404).end();
    // Without a token the platform answers a sign-in page with 200.
    if (token !== BOT_TOKEN)
      return void response.writeHead(200, { 'content-type': 'text/html' }).end('<html>Sign in</html>');
    response.writeHead(200, { 'content-type': file.type });
    if (file.stalls) return void response.write(file.bytes.subarray(0, file.bytes.length / 2));
    response.end(file.bytes);
  }
}

function redraw(open: View, view: Json): void {
  const kept = (view.blocks as Json[]).flatMap((block): [string, Json][] => {
    const [id, element] = [String(block.block_id), block.element as Json | undefined];
    const state = open.state[id];
    return state && element && String(element.action_id) in state ? [[id, state]] : [];
  });
  Object.assign(open, { view, hash: randomUUID(), state: Object.fromEntries(kept) });
}
