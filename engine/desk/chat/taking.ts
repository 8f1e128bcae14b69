/**
 * A call that is taken in a form of a chat, for any platform: which questions stand together, what was typed of them and not
 * taken yet, what the shop knows of what is being typed. What was sent is on the record; what was typed and not sent is
 * kept here while this process runs, so that a window that was closed opens again as it was.
 */
import { keepLatest } from '../../latest.ts';
import type { GivenParts, Part, Prompt } from '../../schema.ts';
import type { Desk, JobView, Known, Turn } from '../types.ts';

/** The questions that stand, as they are drawn. */
export interface CallStep {
  readonly view: JobView;
  readonly asked: Prompt;
  readonly draft: GivenParts;
  /** Null until something was typed that can be looked up. */
  readonly known: Known | null;
  /** The unit of the shop's records that somebody said it is. */
  readonly unit: string | null;
  /** Where others went on meanwhile: in words what was typed and could not be taken, so that nothing of it is lost. */
  readonly left: readonly string[];
}
/** Which questions a form was drawn for. */
export interface StepAsked {
  readonly seq: number;
  readonly place: string;
}
export interface Sent {
  readonly turn: Turn;
  readonly step: CallStep;
}
export interface Taking {
  /** The same client id again is the same call. */
  begin(by: string, client: string, training: boolean): Promise<CallStep>;
  look(by: string, call: string): Promise<CallStep>;
  /** Keeps what stands in the form so far. */
  typed(by: string, call: string, asked: StepAsked, parts: GivenParts): void;
  /** Looks up what was typed last of what can be looked up; null where nothing new is known by it. */
  lookUp(by: string, call: string): Promise<CallStep | null>;
  send(by: string, call: string, asked: StepAsked, parts: GivenParts, client: string): Promise<Sent>;
  pick(by: string, call: string, unit: string, client: string): Promise<CallStep>;
  /** The line went dead: nothing is opened, and it is found again. */
  putAway(by: string, call: string, client: string): Promise<Turn>;
  /** Goes on with one that was put away, or that somebody else began. */
  goOn(by: string, call: string, client: string): Promise<CallStep>;
}

interface Kept {
  /** Where the draft belongs. */
  place: string | null;
  /** As it was drawn last; null after a new start, until the call is looked at. */
  asked: Prompt | null;
  draft: GivenParts;
  known: Known | null;
  unit: string | null;
  left: string[];
  /** What was looked up last, and what is to be. */
  found: string;
  sought: string;
}
/** Characters from which on something is looked up; calls that are kept in mind. Our settings. */
const [ENOUGH, MOST] = [3, 200];

export function createTaking(desk: Desk): Taking {
  const minds = new Map<string, Kept>();
  const mind = (by: string, call: string): Kept => {
    const key = `${by} ${call}`;
    const kept = minds.get(key) ?? {
      place: null,
      asked: null,
      draft: {},
      known: null,
      unit: null,
      left: [],
      found: '',
      sought: '',
    };
    keepLatest(minds, key, kept, MOST);
    return kept;
  };
  const stepOf = (by: string, view: JobView): CallStep => {
    const kept = mind(by, view.job);
    const asked = view.form ?? view.prompt;
    if (kept.place !== null && kept.place !== asked.place) {
      const drawn = kept.asked?.parts ?? [];
      kept.left.push(...Object.entries(kept.draft).map(([key, given]) => wordsOf(drawn, key, given)));
      Object.assign(kept, { draft: {}, known: null, found: '', sought: '' });
    }
    Object.assign(kept, { asked, place: asked.place });
    return { view, asked, draft: kept.draft, known: kept.known, unit: kept.unit, left: [...kept.left] };
  };
  const look = async (by: string, call: string): Promise<CallStep> => stepOf(by, await desk.look(by, call));
  /** The turn alone may have moved, by a unit that was picked or a note: it is the questions that count. */
  const seqFor = async (by: string, call: string, { seq, place }: StepAsked): Promise<number> => {
    const { prompt } = await desk.look(by, call);
    return prompt.place === place ? prompt.seq : seq;
  };
  function sent(by: string, call: string, turn: Turn): Sent {
    if (!turn.refusal) Object.assign(mind(by, call), { draft: {}, left: [] });
    return { turn, step: stepOf(by, turn.view) };
  }

  return {
    async begin(by, client, training) {
      return stepOf(by, (await desk.dispatch.take(by, { client, training })).view);
    },
    look,
    typed(by, call, { place }, parts) {
      const kept = mind(by, call);
      kept.place ??= place;
      if (kept.place !== place) return;
      for (const part of kept.asked?.parts ?? []) {
        const [now, before] = [parts[part.key] ?? '', kept.draft[part.key] ?? ''];
        if (part.kind === 'note' && part.finds && typeof now === 'string' && now !== before) kept.sought = now.trim();
      }
      kept.draft = parts;
    },
    async lookUp(by, call) {
      const kept = mind(by, call);
      // Typed into a form of before a new start: nobody knows yet which of it can be looked up.
      if (kept.asked === null) kept.sought = findable((await look(by, call)).asked, kept.draft);
      const { sought } = kept;
      if (sought === kept.found) return null;
      const known = sought.length < ENOUGH ? { calls: [], units: [] } : await desk.dispatch.known(by, sought);
      // What was typed meanwhile is looked up by whoever typed it.
      if (sought !== kept.sought) return null;
      const view = await desk.look(by, call);
      // Where others went on meanwhile, nothing is drawn under the hands of whoever types.
      if ((view.form ?? view.prompt).place !== kept.asked?.place) return null;
      const others = { ...known, calls: known.calls.filter(({ job }) => job !== call) };
      const same = JSON.stringify(others) === JSON.stringify(kept.known);
      Object.assign(kept, { found: sought, known: others });
      return same ? null : stepOf(by, view);
    },
    async send(by, call, asked, parts, client) {
      const kept = mind(by, call);
      kept.place ??= asked.place;
      if (kept.place === asked.place) kept.draft = parts;
      const seq = await seqFor(by, call, asked);
      return sent(by, call, await desk.reply(by, call, { kind: 'answer', client, seq, parts }));
    },
    async pick(by, call, unit, client) {
      const { view } = await desk.dispatch.pick(by, call, unit, client);
      mind(by, call).unit = unit;
      return stepOf(by, view);
    },
    putAway: (by, call, client) => desk.reply(by, call, { kind: 'command', client, name: 'stop' }),
    async goOn(by, call, client) {
      const { prompt } = await desk.look(by, call);
      if (prompt.kind === 'paused') await desk.reply(by, call, { kind: 'command', client, name: 'go on' });
      return look(by, call);
    },
  };
}

const findable = ({ parts }: Prompt, draft: GivenParts): string => {
  const said = parts.flatMap((part) => (part.kind === 'note' && part.finds ? [draft[part.key]] : []));
  return said.findLast((one): one is string => typeof one === 'string' && one.trim() !== '')?.trim() ?? '';
};
/** `Name: Lena`, with the words of what was chosen. */
function wordsOf(drawn: readonly Part[], key: string, given: GivenParts[string] | undefined): string {
  const part = drawn.find((one) => one.key === key);
  const said = [given ?? []].flat().map((id) => {
    const option = part && 'options' in part ? part.options.find((one) => one.id === id) : undefined;
    return option?.label ?? id;
  });
  return `${part?.ask ?? 'Typed'}: ${said.join(', ')}`;
}
