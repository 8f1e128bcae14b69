/**
 * What the platform refuses of blocks and views: counts, lengths, ids. Sources: the limits printed in @slack/types beside each
 * block, docs.slack.dev/reference/block-kit, and for the total of a message an issue thread (bolt-js 2509: about 13,200).
 */
type Json = Record<string, unknown>;

export class Limits {
  readonly wrong: string[] = [];
  readonly #ids = new Set<string>();
  readonly #blocks = new Set<string>();

  say(what: string): void {
    this.wrong.push(what);
  }
  private most(what: string, value: unknown, most: number, least = 1): void {
    if (typeof value !== 'string') {
      this.say(`${what} is no text`);
      return;
    }
    if ([...value].length < least) this.say(`${what} is empty`);
    if (value.length > most) this.say(`${what} has ${value.length} characters, ${most} at most`);
  }
  private text(what: string, of: unknown, most: number, plain = false): void {
    const { type, text } = (of ?? {}) as Json;
    if (type !== 'plain_text' && (plain || type !== 'mrkdwn')) this.say(`${what} is ${String(type)}`);
    this.most(what, text, most);
  }
  private known(what: string, of: Json, ...keys: string[]): void {
    for (const key of Object.keys(of)) if (!keys.includes(key)) this.say(`${what} has ${key}`);
  }
  private id(of: Json): void {
    this.most('action_id', of.action_id, 255);
    const id = String(of.action_id);
    if (this.#ids.has(id)) this.say(`action_id ${id} twice`);
    this.#ids.add(id);
  }
  private confirm(of: unknown): void {
    if (of === undefined) return;
    const dialog = of as Json;
    this.known('confirm', dialog, 'title', 'text', 'confirm', 'deny', 'style');
    this.text('confirm title', dialog.title, 100, true);
    this.text('confirm text', dialog.text, 300);
    this.text('confirm yes', dialog.confirm, 30, true);
    this.text('confirm no', dialog.deny, 30, true);
  }
  private options(what: string, of: unknown, most: number, initial: unknown): void {
    const options = (Array.isArray(of) ? of : []) as Json[];
    if (options.length === 0 || options.length > most) this.say(`${what} has ${options.length} options, 1 to ${most}`);
    const values = new Set(options.map(({ value }) => value));
    if (values.size < options.length) this.say(`${what} has a value twice`);
    for (const option of options) {
      this.known('option', option, 'text', 'value', 'description');
      this.text('option', option.text, 75, what !== 'radio' && what !== 'checkboxes');
      this.most('option value', option.value, 75);
      if (option.description !== undefined) this.text('option description', option.description, 75);
    }
    const chosen = (initial === undefined ? [] : [initial].flat()) as Json[];
    const same = (a: Json): boolean => options.some((b) => JSON.stringify(a) === JSON.stringify(b));
    if (!chosen.every(same)) this.say(`${what} begins with an option that it does not have`);
    if (initial !== undefined && chosen.length === 0) this.say(`${what} begins with no option`);
  }
  private element(of: Json, where: 'actions' | 'input'): void {
    this.id(of);
    this.confirm(of.confirm);
    switch (of.type) {
      case 'button':
        this.text('button', of.text, 75, true);
        if (where !== 'actions') this.say('a button stands in an input');
        if (of.value !== undefined) this.most('button value', of.value, 2000);
        if (of.url !== undefined) this.most('url', of.url, 3000);
        if (of.accessibility_label !== undefined) this.most('accessibility_label', of.accessibility_label, 75);
        if (of.style !== undefined && of.style !== 'danger' && of.style !== 'primary') this.say('style');
        return;
      case 'static_select':
        this.options('menu', of.options, 100, of.initial_option);
        if (of.placeholder !== undefined) this.text('placeholder', of.placeholder, 150, true);
        return;
      case 'multi_static_select':
        this.options('menu', of.options, 100, of.initial_options);
        return;
      case 'overflow':
        this.options('overflow', of.options, 5, undefined);
        return;
      case 'radio_buttons':
        this.options('radio', of.options, 10, of.initial_option);
        return;
      case 'checkboxes':
        this.options('checkboxes', of.options, 10, of.initial_options);
        return;
      case 'plain_text_input':
        if (where !== 'input') this.say('a text input stands outside an input');
        if (of.initial_value !== undefined) this.most('initial_value', of.initial_value, 3000, 0);
        if (of.max_length !== undefined && Number(of.max_length) > 3000) this.say('max_length');
        if (of.placeholder !== undefined) this.text('placeholder', of.placeholder, 150, true);
        for (const when of ((of.dispatch_action_config as Json | undefined)?.trigger_actions_on ?? []) as unknown[])
          if (when !== 'on_enter_pressed' && when !== 'on_character_entered') this.say(`tells of ${String(when)}`);
        return;
      default:
        this.say(`no element is called ${String(of.type)}`);
    }
  }
  block(of: Json, surface: 'message' | 'modal' | 'home'): void {
    if (of.block_id !== undefined) {
      this.most('block_id', of.block_id, 255);
      if (this.#blocks.has(String(of.block_id))) this.say(`block_id ${String(of.block_id)} twice`);
      this.#blocks.add(String(of.block_id));
    }
    switch (of.type) {
      case 'header':
        this.text('header', of.text, 150, true);
        return;
      case 'divider':
        return;
      case 'section': {
        const fields = of.fields as unknown[] | undefined;
        if (of.text === undefined && fields === undefined) this.say('a section says nothing');
        if (of.text !== undefined) this.text('section', of.text, 3000);
        if (fields && fields.length > 10) this.say('more than 10 fields');
        for (const field of fields ?? []) this.text('field', field, 2000);
        if (of.accessory !== undefined) this.element(of.accessory as Json, 'actions');
        return;
      }
      case 'context': {
        const elements = (of.elements ?? []) as Json[];
        if (elements.length === 0 || elements.length > 10) this.say(`context has ${elements.length} elements`);
        for (const element of elements) this.text('context', element, 3000);
        return;
      }
      case 'actions': {
        const elements = (of.elements ?? []) as Json[];
        if (elements.length === 0 || elements.length > 25) this.say(`actions has ${elements.length} elements`);
        for (const element of elements) this.element(element, 'actions');
        return;
      }
      case 'input':
        if (surface === 'home') this.say('an input stands in a home');
        this.text('label', of.label, 2000, true);
        if (of.hint !== undefined) this.text('hint', of.hint, 2000, true);
        if (of.dispatch_action !== undefined && typeof of.dispatch_action !== 'boolean') this.say('dispatch_action');
        this.element(of.element as Json, 'input');
        return;
      default:
        this.say(`no block is called ${String(of.type)}`);
    }
  }
}

/** Every text inside of blocks, however deep. */
export function textsIn(of: unknown): string[] {
  if (Array.isArray(of)) return of.flatMap(textsIn);
  if (typeof of !== 'object' || of === null) return [];
  return Object.entries(of).flatMap(([key, value]) =>
    key === 'text' && typeof value === 'string' ? [value] : textsIn(value),
  );
}

export function wrongMessage(args: Json): string[] {
  const limits = new Limits();
  const { text, blocks, metadata } = args;
  // The platform only warns of a message without it; who can't see the blocks then hears nothing.
  if (typeof text !== 'string' || text.trim() === '') limits.say('text is empty');
  else if (text.length > 4000) limits.say(`text has ${text.length} characters`);
  const list = (Array.isArray(blocks) ? blocks : []) as Json[];
  if (list.length > 50) limits.say(`${list.length} blocks, 50 at most`);
  for (const block of list) limits.block(block, 'message');
  const total = textsIn(list).join('').length;
  if (total > 13_000) limits.say(`msg_blocks_too_long: ${total}`);
  if (metadata !== undefined) {
    const { event_type, event_payload } = metadata as Json;
    if (typeof event_type !== 'string' || typeof event_payload !== 'object') limits.say('metadata');
  }
  return limits.wrong;
}

export function wrongView(view: Json): string[] {
  const limits = new Limits();
  const modal = view.type === 'modal';
  if (!modal && view.type !== 'home') limits.say(`no view is called ${String(view.type)}`);
  const blocks = (view.blocks ?? []) as Json[];
  if (blocks.length > 100) limits.say(`${blocks.length} blocks, 100 at most`);
  for (const block of blocks) limits.block(block, modal ? 'modal' : 'home');
  if (JSON.stringify(view).length > 250_000) limits.say('larger than 250 kB');
  if (modal) {
    for (const key of ['title', 'submit', 'close']) {
      const text = (view[key] as Json | undefined)?.text;
      if (key === 'title' && text === undefined) limits.say('no title');
      if (text !== undefined && String(text).length > 24) limits.say(`${key} has ${String(text).length} characters`);
    }
    if (blocks.some(({ type }) => type === 'input') && view.submit === undefined) limits.say('inputs without submit');
    if (view.notify_on_close !== undefined && typeof view.notify_on_close !== 'boolean') limits.say('notify_on_close');
    if (String(view.callback_id ?? '').length > 255) limits.say('callback_id');
    if (String(view.private_metadata ?? '').length > 3000) limits.say('private_metadata');
  }
  return limits.wrong;
}

/** Texts that are read as markup. Plain ones are shown as they are. */
function markedIn(of: unknown): string[] {
  if (Array.isArray(of)) return of.flatMap(markedIn);
  if (typeof of !== 'object' || of === null) return [];
  const { type, text } = of as Json;
  return [...(type === 'mrkdwn' ? [String(text)] : []), ...Object.values(of).flatMap(markedIn)];
}
/** Control sequences that would become live: a mention, a link, a whole channel called. Ours are named. */
export const liveIn = (blocks: unknown, ours: readonly RegExp[] = []): string[] =>
  markedIn(blocks)
    .flatMap((text) => text.match(/<[!@#]?[^>\s][^>]*>/g) ?? [])
    .filter((found) => !ours.some((each) => each.test(found)));
